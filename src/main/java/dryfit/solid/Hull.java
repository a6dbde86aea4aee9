package dryfit.solid;

import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The convex hull of a few points by wrapping: from each edge the plane is turned until it meets
 * the next points, and all points in that plane make one face together. The work is faces times
 * points, which suits the few dozen points of a cell.
 *
 * <p>Points that stand off a plane by about as much as counts as in it can be in it seen from one
 * edge and not from the next, and then the wrapping does not close. It is begun anew with another
 * measure of flat, one that leaves them all out and then ones that take ever more of them in.
 */
final class Hull {
  private final List<Vec3> points;

  /** Points no farther from a plane are in it, mm. */
  private final double flat;

  private final List<int[]> faces = new ArrayList<>();
  private final List<Vec3> normals = new ArrayList<>();
  private final Set<Long> edges = new HashSet<>();

  private Hull(List<Vec3> points, double flat) {
    this.points = points;
    this.flat = flat;
  }

  /** The hull, or nothing if the points do not span a solid thicker than a sliver. */
  static Optional<Convex> around(double[] xyz) {
    List<Vec3> distinct = distinct(xyz);
    if (distinct.size() < 4) {
      return Optional.empty();
    }
    for (double flat : FLAT) {
      Optional<Convex> cell = new Hull(distinct, flat).wrapped();
      if (cell.isPresent()) {
        return cell;
      }
    }
    return Optional.empty();
  }

  private static final double[] FLAT = {
    Tolerances.sliver(),
    Tolerances.onPlane(),
    4 * Tolerances.sliver(),
    16 * Tolerances.sliver(),
    64 * Tolerances.sliver(),
    Tolerances.contact()
  };

  private static List<Vec3> distinct(double[] xyz) {
    List<Vec3> all = new ArrayList<>();
    for (int i = 0; i < xyz.length; i += 3) {
      Vec3 p = new Vec3(xyz[i], xyz[i + 1], xyz[i + 2]);
      if (all.stream().noneMatch(q -> q.distance(p) <= Tolerances.sliver())) {
        all.add(p);
      }
    }
    return all;
  }

  private Optional<Convex> wrapped() {
    if (!firstFace()) {
      return Optional.empty();
    }
    ArrayDeque<int[]> open = new ArrayDeque<>();
    enqueue(open, 0);
    while (!open.isEmpty()) {
      int[] edge = open.remove();
      if (edges.contains(key(edge[1], edge[0]))) {
        continue;
      }
      Vec3 a = points.get(edge[0]);
      Vec3 axis = points.get(edge[1]).minus(a).unit();
      Vec3 normal = turned(a, axis, normals.get(edge[2]));
      int[] loop = normal == null ? null : ring(a, normal);
      if (loop == null || !addFace(loop)) {
        return Optional.empty();
      }
      enqueue(open, faces.size() - 1);
    }
    return cell();
  }

  /** Turns a plane about the lowest point until it holds a face. */
  private boolean firstFace() {
    Vec3 a =
        points.stream()
            .min(
                Comparator.comparingDouble(Vec3::x)
                    .thenComparingDouble(Vec3::y)
                    .thenComparingDouble(Vec3::z))
            .orElseThrow();
    Vec3 normal = new Vec3(-1, 0, 0);
    Vec3 axis = Vec3.UP;
    // A plane that touches one point is turned about an axis in it to touch two, then three.
    for (int turn = 0; turn < 3; turn++) {
      int[] loop = ring(a, normal);
      if (loop != null) {
        return addFace(loop);
      }
      Vec3 from = a;
      Vec3 facing = normal;
      Vec3 second =
          points.stream()
              .filter(p -> Math.abs(facing.dot(p.minus(from))) <= flat)
              .max(Comparator.comparingDouble(p -> p.distance(from)))
              .orElseThrow();
      if (second.distance(a) > Tolerances.sliver()) {
        axis = second.minus(a).across(normal).unit();
      }
      normal = turned(a, axis, normal);
      if (normal == null) {
        return false;
      }
    }
    int[] loop = ring(a, normal);
    return loop != null && addFace(loop);
  }

  /**
   * The outward normal of the next supporting plane about the line from {@code a} along {@code
   * axis}, where {@code normal} is that of the plane so far; null if all points are on the line.
   */
  private Vec3 turned(Vec3 a, Vec3 axis, Vec3 normal) {
    Vec3 inward = normal.cross(axis);
    double bestIn = 0;
    double bestDown = 0;
    double inLineWithin = flat * Tolerances.onPlane() / Tolerances.sliver();
    boolean found = false;
    for (Vec3 p : points) {
      Vec3 w = p.minus(a);
      double in = w.dot(inward);
      double down = -w.dot(normal);
      if (Math.hypot(in, down) <= flat) {
        continue;
      }
      // Turning on from (bestIn, bestDown), away from the face so far; the farther of two in line.
      double cross = bestIn * down - bestDown * in;
      double scale = Math.hypot(bestIn, bestDown);
      boolean further = cross > inLineWithin * scale;
      boolean inLine = Math.abs(cross) <= inLineWithin * scale;
      if (!found || further || (inLine && Math.hypot(in, down) > scale)) {
        bestIn = in;
        bestDown = down;
        found = true;
      }
    }
    if (!found) {
      return null;
    }
    // The new plane holds the axis and this direction; its outside is away from the old face.
    Vec3 along = inward.times(bestIn).plus(normal.times(-bestDown)).unit();
    return axis.cross(along).times(-1);
  }

  /**
   * The points in a plane as a convex loop, anticlockwise from outside; null if they are in line.
   */
  private int[] ring(Vec3 a, Vec3 normal) {
    List<Integer> inPlane = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      if (Math.abs(normal.dot(points.get(i).minus(a))) <= flat) {
        inPlane.add(i);
      }
    }
    Vec3 side = Math.abs(normal.x()) < 0.6 ? Vec3.RIGHT : Vec3.BACK;
    Vec3 u = side.across(normal).unit();
    Vec3 v = normal.cross(u);
    double[] x = new double[points.size()];
    double[] y = new double[points.size()];
    for (int i : inPlane) {
      Vec3 w = points.get(i).minus(a);
      x[i] = w.dot(u);
      y[i] = w.dot(v);
    }
    sortByColumns(inPlane, x, y);
    int[] loop = new int[2 * inPlane.size() + 2];
    int n = chain(inPlane, loop, 0, x, y);
    java.util.Collections.reverse(inPlane);
    n = chain(inPlane, loop, n - 1, x, y) - 1;
    return n < 3 ? null : Arrays.copyOf(loop, n);
  }

  /**
   * By x, and by y among points of one x. Points whose x differ by rounding alone are of one x, or
   * the chain would begin in the middle of a side and lose its ends.
   */
  private static void sortByColumns(List<Integer> flat, double[] x, double[] y) {
    flat.sort(Comparator.comparingDouble(i -> x[i]));
    int from = 0;
    while (from < flat.size()) {
      int to = from + 1;
      while (to < flat.size() && x[flat.get(to)] - x[flat.get(from)] <= Tolerances.sliver()) {
        to++;
      }
      flat.subList(from, to).sort(Comparator.comparingDouble(i -> y[i]));
      from = to;
    }
  }

  /** Andrew's monotone chain over sorted points; those nearly in line are dropped. */
  private int chain(List<Integer> sorted, int[] loop, int from, double[] x, double[] y) {
    int n = from;
    for (int i : sorted) {
      while (n - from >= 2 && !leftTurn(loop[n - 2], loop[n - 1], i, x, y)) {
        n--;
      }
      loop[n++] = i;
    }
    return n;
  }

  private boolean leftTurn(int a, int b, int c, double[] x, double[] y) {
    double bx = x[b] - x[a];
    double by = y[b] - y[a];
    double cx = x[c] - x[a];
    double cy = y[c] - y[a];
    return bx * cy - by * cx > flat * Math.hypot(cx, cy);
  }

  private boolean addFace(int[] loop) {
    Vec3 normal = Vec3.ZERO;
    Vec3 a = points.get(loop[0]);
    for (int i = 2; i < loop.length; i++) {
      normal = normal.plus(points.get(loop[i - 1]).minus(a).cross(points.get(loop[i]).minus(a)));
    }
    for (int i = 0; i < loop.length; i++) {
      if (!edges.add(key(loop[i], loop[(i + 1) % loop.length]))) {
        return false;
      }
    }
    faces.add(loop);
    normals.add(normal.unit());
    return true;
  }

  private void enqueue(ArrayDeque<int[]> open, int face) {
    int[] loop = faces.get(face);
    for (int i = 0; i < loop.length; i++) {
      open.add(new int[] {loop[i], loop[(i + 1) % loop.length], face});
    }
  }

  private long key(int a, int b) {
    return (long) a * points.size() + b;
  }

  private Optional<Convex> cell() {
    int[] renamed = new int[points.size()];
    Arrays.fill(renamed, -1);
    List<Vec3> used = new ArrayList<>();
    int[][] loops = new int[faces.size()][];
    for (int f = 0; f < loops.length; f++) {
      loops[f] = faces.get(f).clone();
      for (int i = 0; i < loops[f].length; i++) {
        int p = loops[f][i];
        if (renamed[p] < 0) {
          renamed[p] = used.size();
          used.add(points.get(p));
        }
        loops[f][i] = renamed[p];
      }
    }
    double[] packed = Convex.packed(used);
    Convex cell = new Convex(packed, loops, FacePlanes.of(packed, loops));
    return cell.volume() > 0 && cell.thickness() > Tolerances.sliver() && holdsAll(cell)
        ? Optional.of(cell)
        : Optional.empty();
  }

  /** Whether no point is left outside by much more than what counts as flat. */
  private boolean holdsAll(Convex cell) {
    double[] all = Convex.packed(points);
    for (int f = 0; f < cell.faceCount(); f++) {
      if (cell.highest(f, all) > 4 * flat + Tolerances.coincident()) {
        return false;
      }
    }
    return true;
  }
}
