package dryfit.geometry;

import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Fills a flat outline with holes with triangles by cutting ears, the fattest first.
 *
 * <p>Every given corner is kept, also those in the middle of a straight side, so that the triangles
 * fit those of the neighbouring faces without a gap. With n corners and h holes there are always n
 * - 2 + 2h triangles (two fewer for a hole that touches). Loops may touch themselves and each other
 * in corners, not along sides. The same input gives the same triangles.
 *
 * <p>Holes are joined to the outline by bridges, leftmost hole first: G. H. Meisters, "Polygons
 * have ears", American Mathematical Monthly 82 (1975); D. Eberly, "Triangulation by Ear Clipping"
 * (2002). An ear here must also leave no corner on its cut, so that no corner is lost.
 */
public final class Triangulation {
  private Triangulation() {}

  /**
   * Triangles of a flat face in space.
   *
   * @param xyz 3 numbers a point
   * @param loops point numbers, the outer loop anticlockwise from outside, holes clockwise
   * @return 3 point numbers a triangle, anticlockwise from outside
   * @throws IllegalArgumentException if the face has no area or crosses itself
   */
  public static int[] ofFace(double[] xyz, int[][] loops) {
    int count = 0;
    for (int[] loop : loops) {
      count += loop.length;
    }
    // Only the face's own points are flattened: a mesh may be far larger than one of its faces.
    int[] global = new int[count];
    double[] own = new double[3 * count];
    int[][] local = new int[loops.length][];
    int next = 0;
    for (int i = 0; i < loops.length; i++) {
      local[i] = new int[loops[i].length];
      for (int j = 0; j < loops[i].length; j++) {
        global[next] = loops[i][j];
        System.arraycopy(xyz, 3 * loops[i][j], own, 3 * next, 3);
        local[i][j] = next++;
      }
    }
    double[] xy = PlaneAxes.facing(normal(xyz, loops)).flatten(own);
    int[] triangles = of(xy, local);
    for (int i = 0; i < triangles.length; i++) {
      triangles[i] = global[triangles[i]];
    }
    return triangles;
  }

  /** Twice the area of the loops, as a vector along the face's normal (Newell's sum). */
  public static Vec3 normal(double[] xyz, int[][] loops) {
    double x = 0;
    double y = 0;
    double z = 0;
    int o = 3 * loops[0][0];
    for (int[] loop : loops) {
      for (int i = 0; i < loop.length; i++) {
        int a = 3 * loop[i];
        int b = 3 * loop[(i + 1) % loop.length];
        double ax = xyz[a] - xyz[o];
        double ay = xyz[a + 1] - xyz[o + 1];
        double az = xyz[a + 2] - xyz[o + 2];
        double bx = xyz[b] - xyz[o];
        double by = xyz[b + 1] - xyz[o + 1];
        double bz = xyz[b + 2] - xyz[o + 2];
        x += ay * bz - az * by;
        y += az * bx - ax * bz;
        z += ax * by - ay * bx;
      }
    }
    return new Vec3(x, y, z);
  }

  /**
   * Triangles of a region of the plane.
   *
   * @param xy 2 numbers a point
   * @param loops point numbers, the outer loop anticlockwise, holes clockwise
   * @return 3 point numbers a triangle, anticlockwise
   * @throws IllegalArgumentException if the region has no area or crosses itself
   */
  public static int[] of(double[] xy, int[][] loops) {
    for (int[] loop : loops) {
      if (loop.length < 3) {
        throw new IllegalArgumentException("a loop needs three corners");
      }
    }
    double area = 0;
    for (int[] loop : loops) {
      area += signedArea(xy, loop);
    }
    if (!(area > 0)) {
      throw new IllegalArgumentException("the outline encloses no area");
    }
    int[] ring = loops.length == 1 ? loops[0] : bridged(xy, loops);
    int[] triangles = new EarCutter(xy, ring).triangles();
    double filled = 0;
    for (int i = 0; i < triangles.length; i += 3) {
      filled += Math.abs(signedArea(xy, Arrays.copyOfRange(triangles, i, i + 3)));
    }
    double slack = Tolerances.weld() * perimeter(xy, loops);
    if (Math.abs(filled - area) > slack) {
      throw new IllegalArgumentException("the outline crosses itself");
    }
    return triangles;
  }

  private static double signedArea(double[] xy, int[] loop) {
    double sum = 0;
    double ox = xy[2 * loop[0]];
    double oy = xy[2 * loop[0] + 1];
    for (int i = 0; i < loop.length; i++) {
      int a = 2 * loop[i];
      int b = 2 * loop[(i + 1) % loop.length];
      sum += (xy[a] - ox) * (xy[b + 1] - oy) - (xy[b] - ox) * (xy[a + 1] - oy);
    }
    return sum / 2;
  }

  private static double perimeter(double[] xy, int[][] loops) {
    double sum = 0;
    for (int[] loop : loops) {
      for (int i = 0; i < loop.length; i++) {
        int a = 2 * loop[i];
        int b = 2 * loop[(i + 1) % loop.length];
        sum += Math.hypot(xy[a] - xy[b], xy[a + 1] - xy[b + 1]);
      }
    }
    return sum;
  }

  /** One ring that runs along the outline and, over bridges walked both ways, round every hole. */
  private static int[] bridged(double[] xy, int[][] loops) {
    List<int[]> waiting = new ArrayList<>();
    for (int i = 1; i < loops.length; i++) {
      waiting.add(startingLeftmost(xy, loops[i]));
    }
    waiting.sort(
        Comparator.<int[]>comparingDouble(h -> xy[2 * h[0]])
            .thenComparingDouble(h -> xy[2 * h[0] + 1]));
    int[] ring = loops[0];
    for (int h = 0; h < waiting.size(); h++) {
      int[] hole = waiting.get(h);
      List<int[]> walls = new ArrayList<>(waiting.subList(h, waiting.size()));
      walls.add(ring);
      int at = bridgeEnd(xy, ring, hole, walls);
      ring = joined(ring, at, hole, new Sight(xy).same(ring[at], hole[0]));
    }
    return ring;
  }

  private static int[] joined(int[] ring, int at, int[] hole, boolean touching) {
    // Where the hole touches the ring there is no bridge to walk: its first corner is the ring's.
    int from = touching ? 1 : 0;
    int[] longer = new int[ring.length + hole.length + (touching ? 0 : 2)];
    System.arraycopy(ring, 0, longer, 0, at + 1);
    int size = at + 1;
    System.arraycopy(hole, from, longer, size, hole.length - from);
    size += hole.length - from;
    longer[size++] = hole[0];
    int rest = touching ? at + 1 : at;
    System.arraycopy(ring, rest, longer, size, ring.length - rest);
    return longer;
  }

  private static int[] startingLeftmost(double[] xy, int[] loop) {
    int best = 0;
    for (int i = 1; i < loop.length; i++) {
      int c = Double.compare(xy[2 * loop[i]], xy[2 * loop[best]]);
      if (c < 0 || (c == 0 && xy[2 * loop[i] + 1] < xy[2 * loop[best] + 1])) {
        best = i;
      }
    }
    int[] turned = new int[loop.length];
    for (int i = 0; i < loop.length; i++) {
      turned[i] = loop[(best + i) % loop.length];
    }
    return turned;
  }

  /** The place in {@code ring} of the nearest corner that sees the first corner of the hole. */
  private static int bridgeEnd(double[] xy, int[] ring, int[] hole, List<int[]> walls) {
    double hx = xy[2 * hole[0]];
    double hy = xy[2 * hole[0] + 1];
    List<Integer> nearestFirst = new ArrayList<>();
    for (int i = 0; i < ring.length; i++) {
      nearestFirst.add(i);
    }
    nearestFirst.sort(
        Comparator.<Integer>comparingDouble(
                i -> Math.hypot(xy[2 * ring[i]] - hx, xy[2 * ring[i] + 1] - hy))
            .thenComparingInt(i -> i));
    Sight sight = new Sight(xy);
    for (int i : nearestFirst) {
      int before = ring[(i + ring.length - 1) % ring.length];
      int after = ring[(i + 1) % ring.length];
      boolean sees =
          sight.same(ring[i], hole[0])
              ? sight.within(before, ring[i], after, hole[1])
              : sight.within(before, ring[i], after, hole[0])
                  && sight.within(hole[hole.length - 1], hole[0], hole[1], ring[i])
                  && sight.clear(ring[i], hole[0], walls);
      if (sees) {
        return i;
      }
    }
    throw new IllegalArgumentException("a hole lies outside its outline or crosses it");
  }
}
