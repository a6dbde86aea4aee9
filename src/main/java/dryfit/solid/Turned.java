package dryfit.solid;

import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A solid turned about its local x axis: rings of a radius at a place along it, with straight
 * facets between them. The corners lie on the true radius, one of them on +y, so that a ring with a
 * multiple of four facets is exactly as wide and as thick as its diameter.
 */
public final class Turned {
  private final List<double[]> points = new ArrayList<>();
  private final List<int[]> faces = new ArrayList<>();
  private final List<double[]> circle;

  private Turned(int facets) {
    this.circle = circle(facets);
  }

  /**
   * A ring of a turning.
   *
   * @param along millimetres along local x
   * @param radius millimetres, not negative
   */
  public record Ring(double along, double radius) {}

  /**
   * How many facets keep the chord error within bounds: a multiple of four, at least twelve.
   *
   * @param radius millimetres
   * @param chordError the greatest distance allowed between circle and facet
   */
  public static int facetsFor(double radius, double chordError) {
    int most = 12;
    if (chordError < radius) {
      most = Math.max(most, (int) Math.ceil(Math.PI / Math.acos(1 - chordError / radius)));
    }
    return (most + 3) / 4 * 4;
  }

  /**
   * @param rings in order along x; two at one place make a square step; only the first and the last
   *     may have radius 0
   * @param facets flat faces round it, a multiple of four
   * @param origin the JSON pointer all faces carry
   * @throws IllegalArgumentException if the rings are out of order or leave no volume
   */
  public static Csg.Leaf of(List<Ring> rings, int facets, String origin) {
    List<Ring> distinct = distinct(rings);
    require(distinct, facets);
    Turned turned = new Turned(facets);
    int last = distinct.size() - 1;
    int[] before = turned.ring(distinct.get(0));
    if (before.length > 1) {
      turned.faces.add(reversed(before));
    }
    List<Convex> cells = new ArrayList<>();
    for (int i = 1; i <= last; i++) {
      int[] ring = turned.ring(distinct.get(i));
      turned.side(before, ring);
      if (distinct.get(i).along() > distinct.get(i - 1).along()) {
        cells.add(turned.cell(before, ring));
      }
      before = ring;
    }
    if (before.length > 1) {
      turned.faces.add(before);
    }
    return new Csg.Leaf(turned.mesh(origin), cells);
  }

  /** Drops rings that repeat the one before. */
  private static List<Ring> distinct(List<Ring> rings) {
    List<Ring> out = new ArrayList<>();
    for (Ring ring : rings) {
      Ring before = out.isEmpty() ? null : out.get(out.size() - 1);
      if (before == null
          || Math.abs(ring.along() - before.along()) > Tolerances.coincident()
          || Math.abs(ring.radius() - before.radius()) > Tolerances.coincident()) {
        out.add(ring);
      }
    }
    return out;
  }

  private static void require(List<Ring> rings, int facets) {
    if (facets < 4 || facets % 4 != 0) {
      throw new IllegalArgumentException("a turning with " + facets + " facets");
    }
    int last = rings.size() - 1;
    if (last < 1 || !(rings.get(0).along() < rings.get(last).along())) {
      throw new IllegalArgumentException("a turning needs a length");
    }
    for (int i = 0; i <= last; i++) {
      Ring ring = rings.get(i);
      boolean end = i == 0 || i == last;
      if (!(ring.radius() > Tolerances.coincident()) && !(end && ring.radius() == 0)) {
        throw new IllegalArgumentException("a turning with no radius at " + ring.along());
      }
      if (i > 0 && !stepsForward(rings.get(i - 1), ring)) {
        throw new IllegalArgumentException("rings out of order at " + ring.along());
      }
    }
  }

  private static boolean stepsForward(Ring before, Ring ring) {
    return ring.along() == before.along()
        ? ring.radius() > 0 && before.radius() > 0
        : ring.along() - before.along() > Tolerances.coincident();
  }

  /** Unit circle in y and z from +y; the other quarters repeat the first to the last bit. */
  private static List<double[]> circle(int facets) {
    List<double[]> all = new ArrayList<>();
    int quarter = facets / 4;
    for (int turn = 0; turn < 4; turn++) {
      for (int i = 0; i < quarter; i++) {
        double angle = i * Math.PI / (2 * quarter);
        double y = Math.cos(angle);
        double z = Math.sin(angle);
        for (int k = 0; k < turn; k++) {
          double keep = y;
          y = -z;
          z = keep;
        }
        all.add(new double[] {y, z});
      }
    }
    return all;
  }

  /** The point numbers of a ring, anticlockwise seen from +x; a single one if it has no radius. */
  private int[] ring(Ring ring) {
    int count = ring.radius() == 0 ? 1 : circle.size();
    int[] numbers = new int[count];
    for (int i = 0; i < count; i++) {
      numbers[i] = points.size();
      double[] at = circle.get(i);
      points.add(new double[] {ring.along(), at[0] * ring.radius(), at[1] * ring.radius()});
    }
    return numbers;
  }

  private void side(int[] a, int[] b) {
    int n = circle.size();
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      if (a.length == 1) {
        faces.add(new int[] {a[0], b[j], b[i]});
      } else if (b.length == 1) {
        faces.add(new int[] {a[i], a[j], b[0]});
      } else {
        faces.add(new int[] {a[i], a[j], b[j], b[i]});
      }
    }
  }

  private Convex cell(int[] a, int[] b) {
    int n = circle.size();
    List<Vec3> low = new ArrayList<>(n);
    List<Vec3> high = new ArrayList<>(n);
    for (int i = 0; i < n; i++) {
      low.add(point(a[i % a.length]));
      high.add(point(b[i % b.length]));
    }
    return Convex.loft(low, high);
  }

  private Vec3 point(int i) {
    double[] p = points.get(i);
    return new Vec3(p[0], p[1], p[2]);
  }

  private static int[] reversed(int[] loop) {
    int[] out = new int[loop.length];
    for (int i = 0; i < loop.length; i++) {
      out[i] = loop[loop.length - 1 - i];
    }
    return out;
  }

  private Mesh mesh(String origin) {
    double[] xyz = points.stream().flatMapToDouble(Arrays::stream).toArray();
    int[][][] loops = faces.stream().map(loop -> new int[][] {loop}).toArray(int[][][]::new);
    int triangleCount = faces.stream().mapToInt(loop -> loop.length - 2).sum();
    int[] triangles = new int[3 * triangleCount];
    int[] faceOf = new int[triangleCount];
    int t = 0;
    for (int f = 0; f < loops.length; f++) {
      int[] loop = loops[f][0];
      for (int i = 2; i < loop.length; i++) {
        triangles[3 * t] = loop[0];
        triangles[3 * t + 1] = loop[i - 1];
        triangles[3 * t + 2] = loop[i];
        faceOf[t++] = f;
      }
    }
    return new Mesh(xyz, loops, triangles, faceOf, new int[loops.length], List.of(origin));
  }
}
