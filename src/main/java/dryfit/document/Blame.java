package dryfit.document;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Faults of values that may lie in the dimensions they rest on. A dimension that is of the wrong
 * kind in every place of several where it is used by itself, or that is too small for a size, is
 * told once at its own place; what follows from it is only counted. Filled while one document is
 * read, then told.
 */
final class Blame {
  /** One faulty value. */
  private record Use(Json node, ExpressionFault fault, Set<String> names) {}

  /** A dimension as written, and the names in its formula. */
  private record Written(Json value, Set<String> needs) {}

  private final Map<String, Written> dimensions = new LinkedHashMap<>();

  /** Names that were right where they stood by themselves. */
  private final Set<String> right = new LinkedHashSet<>();

  private final Map<String, List<Use>> alone = new LinkedHashMap<>();
  private final List<Use> mixed = new ArrayList<>();

  /** Where a dimension's value is written, and what it is worked out from. */
  void written(String name, Json value, Optional<Expression> formula) {
    Set<String> needs = new LinkedHashSet<>();
    formula.ifPresent(f -> f.collectNames(needs));
    dimensions.put(name, new Written(value, needs));
  }

  /** The names, and all that they rest on. */
  private Set<String> all(Set<String> names) {
    Set<String> out = new LinkedHashSet<>();
    Deque<String> open = new ArrayDeque<>(names);
    while (!open.isEmpty()) {
      String name = open.pop();
      if (dimensions.containsKey(name) && out.add(name)) {
        open.addAll(dimensions.get(name).needs());
      }
    }
    return out;
  }

  /** The value was of the kind that is wanted. */
  void right(Expression of) {
    lone(of).ifPresent(right::add);
  }

  /**
   * Keeps a fault, if a dimension may be to blame for it.
   *
   * @return whether it is kept; if not, it is to be told where it stands
   */
  boolean keeps(Json node, Expression of, ExpressionFault fault) {
    Set<String> names = new LinkedHashSet<>();
    of.collectNames(names);
    names.retainAll(dimensions.keySet());
    if (names.isEmpty() || fault.code().isEmpty() || fault.code().equals("unknown-name")) {
      return false;
    }
    Use use = new Use(node, fault, names);
    Optional<String> lone = lone(of);
    if (lone.isPresent()) {
      alone.computeIfAbsent(lone.get(), name -> new ArrayList<>()).add(use);
    } else {
      mixed.add(use);
    }
    return true;
  }

  private static Optional<String> lone(Expression of) {
    return of instanceof Expression.Name name ? Optional.of(name.name()) : Optional.empty();
  }

  /** Tells all that was kept. */
  void tell(Problems problems) {
    Set<String> blamed = new LinkedHashSet<>();
    Set<String> following = new LinkedHashSet<>();
    alone.forEach(
        (name, uses) -> {
          Set<String> deeper = all(dimensions.get(name).needs());
          if (deeper.stream().anyMatch(alone::containsKey) && !deeper.contains(name)) {
            following.add(name);
            return;
          }
          boolean wrongKind = uses.get(0).fault().code().equals("wrong-unit");
          boolean more = uses.size() + follows(name) > 1;
          if (!wrongKind || more && !right.contains(name)) {
            blamed.add(name);
          }
        });
    alone.forEach(
        (name, uses) -> {
          boolean follows = following.contains(name) && rests(Set.of(name), blamed);
          if (follows) {
            return;
          }
          if (blamed.contains(name)) {
            tell(name, uses, follows(name), problems);
          } else {
            uses.forEach(use -> Numbers.report(use.node(), use.fault(), problems));
          }
        });
    for (Use use : mixed) {
      if (!rests(use.names(), blamed)) {
        Numbers.report(use.node(), use.fault(), problems);
      }
    }
  }

  private boolean rests(Set<String> names, Set<String> blamed) {
    return all(names).stream().anyMatch(blamed::contains);
  }

  /** How many other values are at fault only because a dimension is. */
  private int follows(String name) {
    long ofOthers =
        alone.entrySet().stream()
            .filter(e -> !e.getKey().equals(name) && all(Set.of(e.getKey())).contains(name))
            .mapToLong(e -> e.getValue().size())
            .sum();
    return (int) (ofOthers + mixed.stream().filter(use -> all(use.names()).contains(name)).count());
  }

  private void tell(String name, List<Use> uses, int follows, Problems problems) {
    Json value = dimensions.get(name).value();
    int more = uses.size() + follows - 1;
    String others =
        more == 0 ? "" : more == 1 ? " and one more place" : " and " + more + " more places";
    problems.add(
        uses.get(0).fault().code(),
        value.at(),
        value.shown(),
        "a number with the right unit",
        Problems.quoted(name)
            + " is written "
            + value.shown()
            + ": "
            + uses.get(0).fault().getMessage()
            + "; it is used at "
            + uses.get(0).node().pointer()
            + others);
  }
}
