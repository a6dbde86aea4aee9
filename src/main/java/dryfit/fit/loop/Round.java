package dryfit.fit.loop;

import dryfit.build.Chair;
import dryfit.build.Joint;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The shortest way round from what a joint's tenon goes into to the part of that tenon, by other
 * joints; among ways as short, the first in the order of the chair.
 */
final class Round {
  private Round() {}

  /**
   * One joint of the way.
   *
   * @param joint its index
   * @param from the part it is reached from
   * @param to the part it leads to
   */
  record Step(int joint, int from, int to) {}

  /** The way; nothing if no closed frame goes through the joint. */
  static List<Step> of(Chair chair, List<Integer> ties, int open) {
    int start = chair.joints().get(open).mortised();
    int end = chair.joints().get(open).tenoned();
    Map<Integer, Step> reached = new HashMap<>();
    Deque<Integer> next = new ArrayDeque<>(List.of(start));
    while (!next.isEmpty() && !reached.containsKey(end)) {
      int part = next.remove();
      for (int i : ties) {
        Joint j = chair.joints().get(i);
        boolean here = j.mortised() == part || j.tenoned() == part;
        int other = j.mortised() == part ? j.tenoned() : j.mortised();
        if (i != open && here && other != start && !reached.containsKey(other)) {
          reached.put(other, new Step(i, part, other));
          next.add(other);
        }
      }
    }
    List<Step> way = new ArrayList<>();
    for (int part = end; reached.containsKey(part); part = reached.get(part).from()) {
      way.add(reached.get(part));
    }
    Collections.reverse(way);
    return way;
  }
}
