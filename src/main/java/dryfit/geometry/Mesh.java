package dryfit.geometry;

import java.util.List;
import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * A closed surface: shared points, flat faces with holes, and the triangles that fill them.
 * Immutable. Millimetres. Seen from outside, outer loops and triangles run anticlockwise and holes
 * clockwise.
 *
 * <p>A mesh that left the {@code solid} floor is closed: every directed edge of a triangle is
 * matched exactly once by its reverse, no triangle is degenerate, and no point is unused. Where
 * wood only touches wood along an edge or at a corner, each side has points of its own in that
 * place; everywhere else one place is one point. The loops of the faces run through every point
 * that lies on them, so loops are closed against each other in the same way.
 *
 * <p>Every face carries its origin: a JSON pointer to the part or joint in the document that made
 * it.
 */
public final class Mesh {
  /** The mesh of nothing. */
  public static final Mesh EMPTY =
      new Mesh(new double[0], new int[0][][], new int[0], new int[0], new int[0], List.of());

  private final double[] xyz;
  private final int[][][] faces;
  private final int[] triangles;
  private final int[] faceOfTriangle;
  private final int[] originOfFace;
  private final List<String> origins;

  /** Worked out when first asked for: looks into a mesh ask for few, checks of walls for all. */
  private final AtomicReferenceArray<Vec3> normals;

  /**
   * @param xyz 3 numbers a point
   * @param faces for each face its loops of point numbers, the outer loop first, then the holes
   * @param triangles 3 point numbers a triangle
   * @param faceOfTriangle the face each triangle belongs to
   * @param originOfFace for each face an index into {@code origins}
   * @param origins JSON pointers
   */
  public Mesh(
      double[] xyz,
      int[][][] faces,
      int[] triangles,
      int[] faceOfTriangle,
      int[] originOfFace,
      List<String> origins) {
    if (xyz.length % 3 != 0
        || triangles.length != 3 * faceOfTriangle.length
        || originOfFace.length != faces.length) {
      throw new IllegalArgumentException("the arrays of a mesh do not belong together");
    }
    this.xyz = xyz.clone();
    this.faces = new int[faces.length][][];
    for (int f = 0; f < faces.length; f++) {
      this.faces[f] = copy(faces[f]);
    }
    this.triangles = triangles.clone();
    this.faceOfTriangle = faceOfTriangle.clone();
    this.originOfFace = originOfFace.clone();
    this.origins = List.copyOf(origins);
    normals = new AtomicReferenceArray<>(faces.length);
  }

  /** The same faces over other points, which are kept, not copied. */
  private Mesh(Mesh of, double[] xyz) {
    this.xyz = xyz;
    this.faces = of.faces;
    this.triangles = of.triangles;
    this.faceOfTriangle = of.faceOfTriangle;
    this.originOfFace = of.originOfFace;
    this.origins = of.origins;
    normals = new AtomicReferenceArray<>(faces.length);
  }

  private static int[][] copy(int[][] loops) {
    int[][] out = new int[loops.length][];
    for (int i = 0; i < out.length; i++) {
      out[i] = loops[i].clone();
    }
    return out;
  }

  public int pointCount() {
    return xyz.length / 3;
  }

  public Vec3 point(int i) {
    return new Vec3(xyz[3 * i], xyz[3 * i + 1], xyz[3 * i + 2]);
  }

  public int triangleCount() {
    return faceOfTriangle.length;
  }

  /** The point number of corner 0, 1 or 2 of a triangle. */
  public int corner(int triangle, int corner) {
    return triangles[3 * triangle + corner];
  }

  public int faceOf(int triangle) {
    return faceOfTriangle[triangle];
  }

  public int faceCount() {
    return faces.length;
  }

  /** Loops of point numbers, the outer one first, then holes; a copy. */
  public int[][] loops(int face) {
    return copy(faces[face]);
  }

  /**
   * Which way a face looks, a unit vector; zero if it has no area. Of all its corners (Newell's
   * method), for one triangle of it may be a sliver that looks wherever rounding has turned it.
   */
  public Vec3 normal(int face) {
    Vec3 known = normals.getAcquire(face);
    if (known == null) {
      known = newell(face);
      normals.setRelease(face, known);
    }
    return known;
  }

  private Vec3 newell(int face) {
    Vec3 twice = Vec3.ZERO;
    Vec3 base = point(faces[face][0][0]);
    for (int[] loop : faces[face]) {
      Vec3 last = point(loop[loop.length - 1]).minus(base);
      for (int corner : loop) {
        Vec3 next = point(corner).minus(base);
        twice = twice.plus(last.cross(next));
        last = next;
      }
    }
    return twice.length() > 0 ? twice.unit() : Vec3.ZERO;
  }

  /** The JSON pointer of what made this face. */
  public String origin(int face) {
    return origins.get(originOfFace[face]);
  }

  public boolean isEmpty() {
    return faceOfTriangle.length == 0;
  }

  /** This mesh with all points taken through {@code frame} from local to chair space. */
  public Mesh placed(Frame frame) {
    double[] out = new double[xyz.length];
    for (int i = 0; i < pointCount(); i++) {
      Vec3 p = frame.place(point(i));
      out[3 * i] = p.x();
      out[3 * i + 1] = p.y();
      out[3 * i + 2] = p.z();
    }
    return new Mesh(this, out);
  }

  /** A copy of the coordinates, 3 a point. */
  public double[] coordinates() {
    return xyz.clone();
  }

  /** A copy of the triangles, 3 point numbers each. */
  public int[] triangles() {
    return triangles.clone();
  }

  /** A copy of the face of each triangle. */
  public int[] faceOfTriangle() {
    return faceOfTriangle.clone();
  }

  public Box bounds() {
    List<Vec3> all = new java.util.ArrayList<>();
    for (int i = 0; i < pointCount(); i++) {
      all.add(point(i));
    }
    return Box.around(all);
  }
}
