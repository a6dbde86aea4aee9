package dryfit.solid.jcsg;

import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Sews fragments together: corners that are one place get one number, and every side is divided at
 * each corner that lies on it. After that, sides of neighbours match one to one.
 */
final class Seams {
  private final List<Vec3> points = new ArrayList<>();
  private final Map<Long, List<Integer>> cells = new HashMap<>();
  private final List<int[]> loops = new ArrayList<>();

  /**
   * @param best places that others give way to when they are one
   */
  static Seams of(List<Fragment> fragments, List<Vec3> best) {
    Seams seams = new Seams();
    best.forEach(seams::number);
    for (Fragment f : fragments) {
      seams.loops.add(seams.numbered(f.corners()));
    }
    seams.divideSides();
    return seams;
  }

  /** The loop of each fragment, by point number; empty if nothing of it is left. */
  List<int[]> loops() {
    return loops;
  }

  /** 3 numbers a point. */
  double[] coordinates() {
    double[] xyz = new double[3 * points.size()];
    for (int i = 0; i < points.size(); i++) {
      xyz[3 * i] = points.get(i).x();
      xyz[3 * i + 1] = points.get(i).y();
      xyz[3 * i + 2] = points.get(i).z();
    }
    return xyz;
  }

  /** The number of the nearest known place within welding distance, or a new one. */
  private int number(Vec3 p) {
    double weld = Tolerances.weld();
    int nearest = -1;
    double least = weld;
    for (long x = cell(p.x() - weld); x <= cell(p.x() + weld); x++) {
      for (long y = cell(p.y() - weld); y <= cell(p.y() + weld); y++) {
        for (long z = cell(p.z() - weld); z <= cell(p.z() + weld); z++) {
          for (int i : cells.getOrDefault(key(x, y, z), List.of())) {
            double d = points.get(i).distance(p);
            if (d < least || (nearest < 0 && d == least)) {
              nearest = i;
              least = d;
            }
          }
        }
      }
    }
    if (nearest < 0) {
      nearest = points.size();
      points.add(p);
      cells
          .computeIfAbsent(key(cell(p.x()), cell(p.y()), cell(p.z())), k -> new ArrayList<>(1))
          .add(nearest);
    }
    return nearest;
  }

  /** Cells are a few welds wide, and set off so that whole millimetres are not on their borders. */
  private static long cell(double v) {
    return (long) Math.floor(v / (4 * Tolerances.weld()) + 0.37);
  }

  /** Cells that happen to share a key only cost a look: distance decides. */
  private static long key(long x, long y, long z) {
    return (x * 73_856_093L) ^ (y * 19_349_663L) ^ (z * 83_492_791L);
  }

  private int[] numbered(List<Vec3> corners) {
    List<Integer> out = new ArrayList<>();
    for (Vec3 corner : corners) {
      int n = number(corner);
      if (out.isEmpty() || out.get(out.size() - 1) != n) {
        out.add(n);
      }
    }
    while (out.size() > 1 && out.get(0).equals(out.get(out.size() - 1))) {
      out.remove(out.size() - 1);
    }
    return out.size() < 3 ? new int[0] : out.stream().mapToInt(i -> i).toArray();
  }

  private void divideSides() {
    int[] used =
        loops.stream().flatMapToInt(java.util.Arrays::stream).sorted().distinct().toArray();
    PointTree tree = new PointTree(coordinates(), used);
    Map<Long, int[]> known = new HashMap<>();
    for (int l = 0; l < loops.size(); l++) {
      int[] loop = loops.get(l);
      List<Integer> out = new ArrayList<>();
      for (int i = 0; i < loop.length; i++) {
        int a = loop[i];
        int b = loop[(i + 1) % loop.length];
        int low = Math.min(a, b);
        int high = Math.max(a, b);
        int[] between =
            known.computeIfAbsent(((long) low << 32) | high, k -> between(low, high, tree));
        out.add(a);
        for (int k = 0; k < between.length; k++) {
          out.add(between[a == low ? k : between.length - 1 - k]);
        }
      }
      loops.set(l, out.stream().mapToInt(i -> i).toArray());
    }
  }

  /** The points on the way from a to b, in their order. */
  private int[] between(int a, int b, PointTree tree) {
    Vec3 from = points.get(a);
    Vec3 to = points.get(b);
    double length = from.distance(to);
    Vec3 way = to.minus(from).unit();
    double weld = Tolerances.weld();
    // The box of a slanting side is large, so long ones are looked at in short pieces.
    List<Integer> near = new ArrayList<>();
    int pieces = slants(way) ? 16 : 1;
    for (int i = 0; i < pieces; i++) {
      Vec3 p = from.plus(way.times(length * i / pieces));
      Vec3 q = from.plus(way.times(length * (i + 1) / pieces));
      for (int n :
          tree.inBox(
              new double[] {
                Math.min(p.x(), q.x()) - weld,
                Math.min(p.y(), q.y()) - weld,
                Math.min(p.z(), q.z()) - weld
              },
              new double[] {
                Math.max(p.x(), q.x()) + weld,
                Math.max(p.y(), q.y()) + weld,
                Math.max(p.z(), q.z()) + weld
              })) {
        Vec3 arm = points.get(n).minus(from);
        double t = arm.dot(way);
        if (n != a && n != b && t > 0 && t < length && arm.across(way).length() <= weld) {
          near.add(n);
        }
      }
    }
    return near.stream()
        .distinct()
        .sorted(
            Comparator.<Integer>comparingDouble(n -> points.get(n).minus(from).dot(way))
                .thenComparingInt(n -> n))
        .mapToInt(n -> n)
        .toArray();
  }

  private static boolean slants(Vec3 way) {
    double x = Math.abs(way.x());
    double y = Math.abs(way.y());
    double z = Math.abs(way.z());
    return Math.max(x, Math.max(y, z)) < 0.999;
  }
}
