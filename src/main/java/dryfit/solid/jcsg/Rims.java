package dryfit.solid.jcsg;

import dryfit.geometry.MeshFailure;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;

/**
 * The directed edges round the faces of each group, a group being a plane and the side it faces. An
 * edge and its reverse in one group cancel: that is how fragments become faces.
 */
final class Rims {
  /**
   * How often an edge is there, and the first sheet whose fragment brought it. More than once is a
   * passing state: a fragment thinner than the weld runs there and back along one line.
   */
  private record Use(int times, int sheet) {
    Use with(Use other) {
      return new Use(times + other.times, Math.min(sheet, other.sheet));
    }

    Use once() {
      return new Use(1, sheet);
    }
  }

  /** Group to edge to its use; sorted, so that the order of the answer is fixed. */
  private final NavigableMap<Integer, NavigableMap<Long, Use>> byGroup = new TreeMap<>();

  static long edge(int from, int to) {
    return ((long) from << 32) | to;
  }

  static int[] ends(long edge) {
    return new int[] {(int) (edge >>> 32), (int) edge};
  }

  private static long reverse(long edge) {
    return (edge << 32) | (edge >>> 32);
  }

  /** The groups that have a face, in order. */
  Set<Integer> groups() {
    return byGroup.keySet();
  }

  List<int[]> edges(int group) {
    return byGroup.get(group).keySet().stream().map(Rims::ends).toList();
  }

  int sheet(int group, int from, int to) {
    return byGroup.get(group).get(edge(from, to)).sheet();
  }

  void add(int group, int from, int to, int sheet) {
    NavigableMap<Long, Use> rim = byGroup.computeIfAbsent(group, g -> new TreeMap<>());
    Use back = rim.remove(edge(to, from));
    if (back == null) {
      rim.merge(edge(from, to), new Use(1, sheet), Use::with);
    } else if (back.times() > 1) {
      rim.put(edge(to, from), new Use(back.times() - 1, back.sheet()));
    }
  }

  /**
   * @throws MeshFailure if an edge is not matched by one of another group, or fragments of one
   *     group lie over each other
   */
  void requireClosed(double[] xyz) {
    Map<Long, Integer> balance = new TreeMap<>();
    for (NavigableMap<Long, Use> rim : byGroup.values()) {
      for (Map.Entry<Long, Use> entry : rim.entrySet()) {
        long e = entry.getKey();
        if (entry.getValue().times() > 1) {
          throw new MeshFailure("pieces of one face lie over each other");
        }
        balance.merge(Math.min(e, reverse(e)), e < reverse(e) ? 1 : -1, Integer::sum);
      }
    }
    List<Long> open =
        balance.entrySet().stream().filter(e -> e.getValue() != 0).map(Map.Entry::getKey).toList();
    if (!open.isEmpty()) {
      int[] ends = ends(open.get(0));
      throw new MeshFailure(
          open.size()
              + " edges stay open, the first from "
              + point(xyz, ends[0])
              + " to "
              + point(xyz, ends[1]));
    }
  }

  private record Step(int group, int to) {}

  /** A corner in the middle of an edge between two faces is not a corner of either. */
  void dissolveStraightCorners(double[] xyz) {
    Map<Integer, List<Step>> leaving = new TreeMap<>();
    byGroup.forEach(
        (group, rim) -> {
          for (long e : rim.keySet()) {
            int[] ends = ends(e);
            leaving.computeIfAbsent(ends[0], k -> new ArrayList<>(2)).add(new Step(group, ends[1]));
          }
        });
    for (int v : List.copyOf(leaving.keySet())) {
      List<Step> steps = leaving.get(v);
      if (steps.size() == 2) {
        dissolve(v, steps.get(0), steps.get(1), leaving, xyz);
      }
    }
  }

  private void dissolve(int v, Step one, Step two, Map<Integer, List<Step>> leaving, double[] xyz) {
    int a = two.to();
    int b = one.to();
    NavigableMap<Long, Use> first = byGroup.get(one.group());
    NavigableMap<Long, Use> second = byGroup.get(two.group());
    boolean passes =
        a != b
            && one.group() != two.group()
            && first.containsKey(edge(a, v))
            && second.containsKey(edge(b, v))
            && !first.containsKey(edge(a, b))
            && !second.containsKey(edge(b, a))
            && straight(point(xyz, a), point(xyz, v), point(xyz, b));
    if (!passes) {
      return;
    }
    first.put(edge(a, b), first.remove(edge(a, v)).with(first.remove(edge(v, b))).once());
    second.put(edge(b, a), second.remove(edge(b, v)).with(second.remove(edge(v, a))).once());
    leaving.remove(v);
    leaving.get(a).remove(new Step(one.group(), v));
    leaving.get(a).add(new Step(one.group(), b));
    leaving.get(b).remove(new Step(two.group(), v));
    leaving.get(b).add(new Step(two.group(), a));
  }

  private static boolean straight(Vec3 a, Vec3 v, Vec3 b) {
    Vec3 way = b.minus(a);
    double length = way.length();
    double t = v.minus(a).dot(way);
    return t > 0
        && t < length * length
        && v.minus(a).cross(way).length() <= Tolerances.coincident() * length;
  }

  private static Vec3 point(double[] xyz, int i) {
    return new Vec3(xyz[3 * i], xyz[3 * i + 1], xyz[3 * i + 2]);
  }
}
