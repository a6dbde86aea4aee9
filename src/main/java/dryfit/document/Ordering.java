package dryfit.document;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Things in an order in which each comes after all it rests on. Depth first, without recursion, so
 * that a chain of a thousand costs no stack.
 *
 * @param sound those that rest on no cycle, each after what it rests on
 * @param cycles each cycle once, beginning at whichever of it the search met first
 */
record Ordering(List<String> sound, List<List<String>> cycles) {

  /**
   * @param needs what each rests on; every name in it must be a key too
   */
  static Ordering of(Map<String, Set<String>> needs) {
    return new Search(needs).run();
  }

  private static final class Search {
    private final Map<String, Set<String>> needs;
    private final List<List<String>> cycles = new ArrayList<>();
    private final Map<String, Boolean> done = new LinkedHashMap<>();
    private final Set<String> path = new LinkedHashSet<>();
    private final Deque<Iterator<String>> ahead = new ArrayDeque<>();

    Search(Map<String, Set<String>> needs) {
      this.needs = needs;
    }

    Ordering run() {
      for (String start : needs.keySet()) {
        if (!done.containsKey(start)) {
          enter(start);
          walk();
        }
      }
      List<String> sound = new ArrayList<>();
      done.forEach(
          (name, isSound) -> {
            if (isSound) {
              sound.add(name);
            }
          });
      return new Ordering(sound, cycles);
    }

    private void enter(String name) {
      path.add(name);
      ahead.push(needs.get(name).iterator());
    }

    private void walk() {
      while (!ahead.isEmpty()) {
        if (!ahead.peek().hasNext()) {
          leave();
          continue;
        }
        String next = ahead.peek().next();
        if (path.contains(next)) {
          List<String> walked = new ArrayList<>(path);
          cycles.add(walked.subList(walked.indexOf(next), walked.size()));
        } else if (!done.containsKey(next)) {
          enter(next);
        }
      }
    }

    /** The last of the path is finished; it is sound if all it rests on is. */
    private void leave() {
      ahead.pop();
      List<String> walked = new ArrayList<>(path);
      String name = walked.get(walked.size() - 1);
      path.remove(name);
      done.put(name, needs.get(name).stream().allMatch(need -> done.getOrDefault(need, false)));
    }
  }
}
