package dryfit.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Makes meshes. All lengths in millimetres. */
public final class Meshes {
  private Meshes() {}

  /**
   * A mesh of flat faces. Where two faces meet, both must name the same points.
   *
   * @param points at most one for each place
   * @param faces for each face its loops of point numbers, seen from outside the outer loop
   *     anticlockwise and first, the holes clockwise
   * @param origin JSON pointer of what made the shape
   * @throws IllegalArgumentException if a face has no area or crosses itself
   */
  public static Mesh ofFaces(List<Vec3> points, int[][][] faces, String origin) {
    double[] xyz = new double[3 * points.size()];
    for (int i = 0; i < points.size(); i++) {
      xyz[3 * i] = points.get(i).x();
      xyz[3 * i + 1] = points.get(i).y();
      xyz[3 * i + 2] = points.get(i).z();
    }
    return filled(xyz, faces, new int[faces.length], List.of(origin));
  }

  /**
   * A mesh of flat faces with an origin each, as the arrays of {@link Mesh} but without triangles.
   *
   * @throws IllegalArgumentException if a face has no area or crosses itself
   */
  public static Mesh filled(
      double[] xyz, int[][][] faces, int[] originOfFace, List<String> origins) {
    List<int[]> each = new ArrayList<>();
    int count = 0;
    for (int[][] face : faces) {
      int[] triangles = Triangulation.ofFace(xyz, face);
      each.add(triangles);
      count += triangles.length;
    }
    int[] triangles = new int[count];
    int[] faceOfTriangle = new int[count / 3];
    int size = 0;
    for (int f = 0; f < faces.length; f++) {
      int[] own = each.get(f);
      System.arraycopy(own, 0, triangles, size, own.length);
      Arrays.fill(faceOfTriangle, size / 3, (size + own.length) / 3, f);
      size += own.length;
    }
    return new Mesh(xyz, faces, triangles, faceOfTriangle, originOfFace, origins);
  }

  /**
   * A mesh of triangles that need not be manifold: solids that touch along an edge or in a point
   * are taken apart there by doubling the point. Triangles without area are exchanged with their
   * neighbours. Points no triangle uses are left out, and the loops of the faces are found from the
   * triangles. Every directed edge must be matched by its reverse. An edge along which a solid
   * touches itself gets a point in its middle if its ends cannot be taken apart.
   *
   * @param xyz 3 numbers a point
   * @param triangles 3 point numbers a triangle
   * @param faceOfTriangle the face of each triangle; a face without triangles is left out
   * @param originOfFace for each face an index into {@code origins}
   * @throws MeshFailure if the triangles are not closed
   */
  public static Mesh ofTriangles(
      double[] xyz,
      int[] triangles,
      int[] faceOfTriangle,
      int[] originOfFace,
      List<String> origins) {
    Triangles split = Umbrellas.of(Slivers.removed(new Triangles(xyz, triangles, faceOfTriangle)));
    Triangles halved = DoubledEdges.halved(split);
    if (halved != split) {
      split = Umbrellas.of(halved);
    }
    double[] own = split.xyz();
    int[] used =
        new TreeSet<>(Arrays.stream(split.faces()).boxed().toList())
            .stream().mapToInt(f -> f).toArray();
    int[] faceNumber = new int[originOfFace.length];
    int[] usedOrigins = new int[used.length];
    List<List<int[]>> ofFace = new ArrayList<>();
    for (int i = 0; i < used.length; i++) {
      faceNumber[used[i]] = i;
      usedOrigins[i] = originOfFace[used[i]];
      ofFace.add(new ArrayList<>());
    }
    int[] faceOf = new int[split.faces().length];
    for (int t = 0; t < faceOf.length; t++) {
      faceOf[t] = faceNumber[split.faces()[t]];
      ofFace.get(faceOf[t]).add(Arrays.copyOfRange(split.corners(), 3 * t, 3 * t + 3));
    }
    int[][][] loops = new int[used.length][][];
    for (int f = 0; f < used.length; f++) {
      loops[f] = loopsAround(own, ofFace.get(f));
    }
    return new Mesh(own, loops, split.corners(), faceOf, usedOrigins, origins);
  }

  /** The boundary of some triangles of one plane, the loop of the greatest area first. */
  private static int[][] loopsAround(double[] xyz, List<int[]> triangles) {
    Set<Long> all = new HashSet<>();
    for (int[] t : triangles) {
      for (int k = 0; k < 3; k++) {
        all.add(edge(t[k], t[(k + 1) % 3]));
      }
    }
    List<int[]> rim = new ArrayList<>();
    for (int[] t : triangles) {
      for (int k = 0; k < 3; k++) {
        if (!all.contains(edge(t[(k + 1) % 3], t[k]))) {
          rim.add(new int[] {t[k], t[(k + 1) % 3]});
        }
      }
    }
    Vec3 normal = Triangulation.normal(xyz, triangles.toArray(int[][]::new));
    List<int[]> loops = new ArrayList<>(Regions.loops(xyz, normal, rim));
    loops.sort(
        Comparator.comparingDouble(
            loop -> -Triangulation.normal(xyz, new int[][] {loop}).dot(normal)));
    return loops.toArray(int[][]::new);
  }

  private static long edge(int from, int to) {
    return ((long) from << 32) | to;
  }

  /** A box of six faces. */
  public static Mesh box(Box box, String origin) {
    Vec3 a = box.low();
    Vec3 b = box.high();
    return prism(
        List.of(
            new double[] {a.x(), a.y()},
            new double[] {b.x(), a.y()},
            new double[] {b.x(), b.y()},
            new double[] {a.x(), b.y()}),
        a.z(),
        b.z(),
        origin);
  }

  /**
   * An upright prism.
   *
   * @param outline x and y of each corner, anticlockwise seen from above, without repeats
   * @param z0 its bottom, below {@code z1}
   * @throws IllegalArgumentException if the outline encloses no area or crosses itself, or the
   *     prism has no height
   */
  public static Mesh prism(List<double[]> outline, double z0, double z1, String origin) {
    if (!(z1 > z0)) {
      throw new IllegalArgumentException("a prism needs a height, not from " + z0 + " to " + z1);
    }
    int n = outline.size();
    List<Vec3> points = new ArrayList<>();
    for (double z : new double[] {z0, z1}) {
      for (double[] p : outline) {
        points.add(new Vec3(p[0], p[1], z));
      }
    }
    int[][][] faces = new int[n + 2][1][];
    int[] bottom = new int[n];
    int[] top = new int[n];
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      bottom[i] = n - 1 - i;
      top[i] = n + i;
      faces[i + 2][0] = new int[] {i, j, n + j, n + i};
    }
    faces[0][0] = bottom;
    faces[1][0] = top;
    return ofFaces(points, faces, origin);
  }

  /**
   * The mirror image in the plane z = 0, turned outside out again.
   *
   * <p>Together with {@link Frame#mirrored()} this makes the other part of a pair.
   */
  public static Mesh mirroredZ(Mesh mesh) {
    double[] xyz = mesh.coordinates();
    for (int i = 2; i < xyz.length; i += 3) {
      xyz[i] = -xyz[i] + 0.0;
    }
    int[][][] faces = new int[mesh.faceCount()][][];
    int[] originOfFace = new int[faces.length];
    List<String> origins = new ArrayList<>();
    for (int f = 0; f < faces.length; f++) {
      faces[f] = mesh.loops(f);
      for (int[] loop : faces[f]) {
        reverse(loop);
      }
      int known = origins.indexOf(mesh.origin(f));
      originOfFace[f] = known < 0 ? origins.size() : known;
      if (known < 0) {
        origins.add(mesh.origin(f));
      }
    }
    int[] triangles = mesh.triangles();
    int[] faceOf = new int[mesh.triangleCount()];
    for (int t = 0; t < faceOf.length; t++) {
      faceOf[t] = mesh.faceOf(t);
      int swap = triangles[3 * t + 1];
      triangles[3 * t + 1] = triangles[3 * t + 2];
      triangles[3 * t + 2] = swap;
    }
    return new Mesh(xyz, faces, triangles, faceOf, originOfFace, origins);
  }

  /**
   * The mesh written in the one way that does not depend on how it was made: points rounded to
   * multiples of {@code step}, mm, all in rising order.
   */
  public static Mesh canonical(Mesh mesh, double step) {
    return CanonicalMesh.of(mesh, step);
  }

  private static void reverse(int[] loop) {
    for (int i = 0, j = loop.length - 1; i < j; i++, j--) {
      int swap = loop[i];
      loop[i] = loop[j];
      loop[j] = swap;
    }
  }
}
