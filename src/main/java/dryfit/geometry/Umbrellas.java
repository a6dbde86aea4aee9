package dryfit.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Takes apart solids that only touch along an edge or in a point. Around every point of the result
 * the triangles form one fan, an umbrella; a point shared by several umbrellas is doubled.
 *
 * <p>Where more than two triangles meet in an edge they are sorted by angle around it, and those
 * two are paired that have wood between them. So two cubes that share an edge become two shells.
 */
final class Umbrellas {
  private final double[] xyz;
  private final int[] triangles;
  private final int[] faces;
  private final int[] parent;

  private Umbrellas(Triangles of) {
    this.xyz = of.xyz();
    this.triangles = of.corners();
    this.faces = of.faces();
    this.parent = new int[triangles.length];
    for (int i = 0; i < parent.length; i++) {
      parent[i] = i;
    }
  }

  /**
   * The triangles in their order over the points they use, in the order of the points given.
   *
   * @throws MeshFailure if the triangles are not closed
   */
  static Triangles of(Triangles triangles) {
    return new Umbrellas(triangles).split();
  }

  private Triangles split() {
    Map<Long, List<Integer>> sides = new TreeMap<>();
    for (int h = 0; h < triangles.length; h++) {
      sides.computeIfAbsent(undirected(h), k -> new ArrayList<>(2)).add(h);
    }
    for (List<Integer> around : sides.values()) {
      pair(around);
    }
    return renumbered();
  }

  private long undirected(int side) {
    int a = triangles[side];
    int b = triangles[next(side)];
    return ((long) Math.min(a, b) << 32) | Math.max(a, b);
  }

  private static int next(int side) {
    return side % 3 == 2 ? side - 2 : side + 1;
  }

  private boolean forward(int side) {
    return triangles[side] < triangles[next(side)];
  }

  private void pair(List<Integer> around) {
    List<Integer> forward = around.stream().filter(this::forward).toList();
    List<Integer> backward = around.stream().filter(s -> !forward(s)).toList();
    if (forward.size() != backward.size()) {
      int side = around.get(0);
      throw new MeshFailure(
          "the surface is open along the edge from "
              + point(triangles[side])
              + " to "
              + point(triangles[next(side)]));
    }
    if (forward.size() == 1) {
      join(forward.get(0), backward.get(0));
      return;
    }
    // A triangle whose side runs forward has wood just below its angle, one that runs backward just
    // above: so from a backward one, counting up, the wood ends at the next forward one.
    List<Integer> open = new ArrayList<>(sortedByAngle(forward));
    for (int b : sortedByAngle(backward)) {
      double from = angle(b);
      int f =
          open.stream()
              .min(Comparator.comparingDouble(s -> turnFrom(from, angle(s))))
              .orElseThrow();
      open.remove(Integer.valueOf(f));
      join(f, b);
    }
  }

  private List<Integer> sortedByAngle(List<Integer> sides) {
    return sides.stream()
        .sorted(Comparator.<Integer>comparingDouble(this::angle).thenComparingInt(s -> s))
        .toList();
  }

  private static double turnFrom(double from, double to) {
    double turn = to - from;
    return turn > 0 ? turn : turn + 2 * Math.PI;
  }

  /** The angle of the triangle's third corner round its side, forward towards the viewer. */
  private double angle(int side) {
    int low = Math.min(triangles[side], triangles[next(side)]);
    int high = Math.max(triangles[side], triangles[next(side)]);
    Vec3 axis = point(high).minus(point(low)).unit();
    Vec3 start = leastAlong(axis).across(axis).unit();
    Vec3 arm = point(triangles[next(next(side))]).minus(point(low)).across(axis);
    return Math.atan2(axis.cross(start).dot(arm), start.dot(arm));
  }

  private static Vec3 leastAlong(Vec3 axis) {
    double x = Math.abs(axis.x());
    double y = Math.abs(axis.y());
    double z = Math.abs(axis.z());
    if (x <= y && x <= z) {
      return Vec3.RIGHT;
    }
    return y <= z ? Vec3.BACK : Vec3.UP;
  }

  private Vec3 point(int i) {
    return new Vec3(xyz[3 * i], xyz[3 * i + 1], xyz[3 * i + 2]);
  }

  private void join(int forward, int backward) {
    unite(forward, next(backward));
    unite(next(forward), backward);
  }

  private int root(int corner) {
    int r = corner;
    while (parent[r] != r) {
      r = parent[r];
    }
    int walk = corner;
    while (parent[walk] != r) {
      int up = parent[walk];
      parent[walk] = r;
      walk = up;
    }
    return r;
  }

  private void unite(int a, int b) {
    int ra = root(a);
    int rb = root(b);
    parent[Math.max(ra, rb)] = Math.min(ra, rb);
  }

  /** New numbers follow the old points' order, so that an already good mesh keeps its numbers. */
  private Triangles renumbered() {
    List<Integer> roots = new ArrayList<>();
    for (int corner = 0; corner < triangles.length; corner++) {
      if (root(corner) == corner) {
        roots.add(corner);
      }
    }
    roots.sort(Comparator.<Integer>comparingInt(r -> triangles[r]).thenComparingInt(r -> r));
    int[] number = new int[triangles.length];
    double[] points = new double[3 * roots.size()];
    for (int i = 0; i < roots.size(); i++) {
      number[roots.get(i)] = i;
      System.arraycopy(xyz, 3 * triangles[roots.get(i)], points, 3 * i, 3);
    }
    int[] out = new int[triangles.length];
    for (int corner = 0; corner < out.length; corner++) {
      out[corner] = number[root(corner)];
    }
    return new Triangles(points, out, faces);
  }
}
