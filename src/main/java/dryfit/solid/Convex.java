package dryfit.solid;

import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;

/**
 * A closed convex solid: points and flat faces, anticlockwise from outside. Immutable, millimetres.
 * Planes and box are computed when it is made, volume and centroid when they are first asked for:
 * most cells are only a step on the way to another.
 */
public final class Convex {
  /** Three numbers a point. */
  final double[] xyz;

  final int[][] faces;

  /** Four numbers a face: the outward unit normal and the offset. */
  final double[] planes;

  /** Lowest x, y, z and highest x, y, z. */
  final double[] box;

  /** Null until it was asked for; two threads that both work it out come to the same. */
  private Mass mass;

  /** Holds the edges once they were asked for; placed copies share them, for they are numbers. */
  private final AtomicReference<int[]> edges;

  /** A cell whose arrays are known to be right; they are kept, not copied. */
  Convex(double[] xyz, int[][] faces, double[] planes) {
    this.xyz = xyz;
    this.faces = faces;
    this.planes = planes;
    this.box = Moments.boxAround(xyz);
    this.edges = new AtomicReference<>();
  }

  /** A moved copy, or a mirrored one, of what weighs as much. */
  private Convex(
      double[] xyz, int[][] faces, double[] planes, Mass mass, AtomicReference<int[]> edges) {
    this.xyz = xyz;
    this.faces = faces;
    this.planes = planes;
    this.edges = edges;
    this.box = Moments.boxAround(xyz);
    this.mass = mass;
  }

  private record Mass(double volume, Vec3 middle) {}

  private Mass mass() {
    Mass known = mass;
    if (known == null) {
      double[] moments = Moments.of(xyz, faces, box);
      known = new Mass(moments[0], new Vec3(moments[1], moments[2], moments[3]));
      mass = known;
    }
    return known;
  }

  /**
   * The cell with these points and faces.
   *
   * @param faces loops of point numbers, anticlockwise from outside
   * @throws IllegalArgumentException if a face has fewer than three corners or no area, or if a
   *     point stands outside a face by more than {@link Tolerances#coincident}
   */
  public static Convex of(List<Vec3> points, int[][] faces) {
    double[] xyz = packed(points);
    int[][] loops = Arrays.stream(faces).map(int[]::clone).toArray(int[][]::new);
    Convex cell = new Convex(xyz, loops, FacePlanes.of(xyz, loops));
    for (int f = 0; f < loops.length; f++) {
      if (cell.highest(f, xyz) > Tolerances.coincident()) {
        throw new IllegalArgumentException("face " + f + " has a point outside it: not convex");
      }
    }
    if (!(cell.volume() > 0)) {
      throw new IllegalArgumentException("a cell without volume");
    }
    return cell;
  }

  /**
   * @throws IllegalArgumentException if the box has no volume
   */
  public static Convex box(Box box) {
    Vec3 a = box.low();
    Vec3 b = box.high();
    return prism(
        List.of(
            a,
            new Vec3(b.x(), a.y(), a.z()),
            new Vec3(b.x(), b.y(), a.z()),
            new Vec3(a.x(), b.y(), a.z())),
        new Vec3(0, 0, b.z() - a.z()));
  }

  /**
   * The solid that a convex flat loop sweeps when moved by {@code along}; the loop may run either
   * way round.
   *
   * @throws IllegalArgumentException if the loop is not convex or the solid has no volume
   */
  public static Convex prism(List<Vec3> loop, Vec3 along) {
    return loft(loop, loop.stream().map(p -> p.plus(along)).toList());
  }

  /**
   * The solid between two convex flat loops with as many points each, point by point. Sides that
   * are not flat are split along the diagonal that bulges. Points of one loop may coincide, as at
   * an apex.
   *
   * @throws IllegalArgumentException if the solid would not be convex or has no volume
   */
  public static Convex loft(List<Vec3> a, List<Vec3> b) {
    return Loft.between(a, b);
  }

  /**
   * The smallest convex solid around the points; points in one plane make one face.
   *
   * @throws IllegalArgumentException if they do not span a solid
   */
  public static Convex hull(Collection<Vec3> points) {
    return Hull.around(packed(points))
        .orElseThrow(() -> new IllegalArgumentException("the points do not span a solid"));
  }

  public int pointCount() {
    return xyz.length / 3;
  }

  public Vec3 point(int i) {
    return new Vec3(xyz[3 * i], xyz[3 * i + 1], xyz[3 * i + 2]);
  }

  public List<Vec3> points() {
    List<Vec3> all = new ArrayList<>(pointCount());
    for (int i = 0; i < pointCount(); i++) {
      all.add(point(i));
    }
    return Collections.unmodifiableList(all);
  }

  public int faceCount() {
    return faces.length;
  }

  /** Loops of point numbers, anticlockwise from outside; a copy. */
  public int[][] faces() {
    return Arrays.stream(faces).map(int[]::clone).toArray(int[][]::new);
  }

  /** The plane of a face, normal outwards. */
  public Plane plane(int face) {
    return new Plane(
        new Vec3(planes[4 * face], planes[4 * face + 1], planes[4 * face + 2]),
        planes[4 * face + 3]);
  }

  /** The planes of the faces in their order, normals outwards. */
  public List<Plane> planes() {
    List<Plane> all = new ArrayList<>(faces.length);
    for (int f = 0; f < faces.length; f++) {
      all.add(plane(f));
    }
    return Collections.unmodifiableList(all);
  }

  /** Cubic millimetres. */
  public double volume() {
    return mass().volume();
  }

  /** The centroid. */
  public Vec3 middle() {
    return mass().middle();
  }

  public Box bounds() {
    return new Box(new Vec3(box[0], box[1], box[2]), new Vec3(box[3], box[4], box[5]));
  }

  /** Whether the box around the cell is wholly on one side of the plane: it need not be cut. */
  public boolean isBeside(Plane plane) {
    Vec3 n = plane.normal();
    double low = -plane.offset();
    double high = low;
    double[] per = {n.x(), n.y(), n.z()};
    for (int axis = 0; axis < 3; axis++) {
      double a = per[axis] * box[axis];
      double b = per[axis] * box[axis + 3];
      low += Math.min(a, b);
      high += Math.max(a, b);
    }
    return low > Tolerances.onPlane() || high < -Tolerances.onPlane();
  }

  /** Whether the point is inside or on the surface, {@link Tolerances#onPlane} allowed. */
  public boolean contains(Vec3 p) {
    for (int f = 0; f < faces.length; f++) {
      if (height(f, p.x(), p.y(), p.z()) > Tolerances.onPlane()) {
        return false;
      }
    }
    return true;
  }

  /** The greatest {@code direction . p} over the solid: how far it reaches that way. */
  public double reach(Vec3 direction) {
    int i = farthest(direction.x(), direction.y(), direction.z());
    return direction.dot(point(i));
  }

  /** A corner farthest along {@code direction}; the first such corner if there are several. */
  public Vec3 extreme(Vec3 direction) {
    return point(farthest(direction.x(), direction.y(), direction.z()));
  }

  /** The smallest distance between a face and the corner farthest below it. */
  public double thickness() {
    double least = Double.POSITIVE_INFINITY;
    for (int f = 0; f < faces.length; f++) {
      least = Math.min(least, -lowest(f, xyz));
    }
    return least;
  }

  /** What lies inside {@code plane} (its normal points away from what is kept). */
  public Optional<Convex> clipped(Plane plane) {
    Vec3 n = plane.normal();
    return Optional.ofNullable(Clip.inside(this, n.x(), n.y(), n.z(), plane.offset()));
  }

  /** What two cells share, if it is thicker than {@link Tolerances#sliver}. */
  public Optional<Convex> common(Convex other) {
    return Optional.ofNullable(Clip.common(this, other));
  }

  /** The two sides of a cut; a side thinner than {@link Tolerances#sliver} goes to the other. */
  public record Split(Optional<Convex> inside, Optional<Convex> outside) {}

  /** This cut in two by {@code plane}. */
  public Split split(Plane plane) {
    Vec3 n = plane.normal();
    double out = reach(n) - plane.offset();
    double in = plane.offset() + reach(n.negated());
    if (out <= Tolerances.sliver()) {
      return new Split(Optional.of(this), Optional.empty());
    }
    if (in <= Tolerances.sliver()) {
      return new Split(Optional.empty(), Optional.of(this));
    }
    return new Split(clipped(plane), clipped(plane.flipped()));
  }

  /** This taken through {@code frame} from local to chair space. */
  public Convex placed(Frame frame) {
    double[] moved = new double[xyz.length];
    Vec3 x = frame.x();
    Vec3 y = frame.y();
    Vec3 z = frame.z();
    Vec3 o = frame.origin();
    for (int i = 0; i < xyz.length; i += 3) {
      double a = xyz[i];
      double b = xyz[i + 1];
      double c = xyz[i + 2];
      moved[i] = o.x() + (a * x.x() + b * y.x() + c * z.x());
      moved[i + 1] = o.y() + (a * x.y() + b * y.y() + c * z.y());
      moved[i + 2] = o.z() + (a * x.z() + b * y.z() + c * z.z());
    }
    double[] turned = new double[planes.length];
    for (int f = 0; f < faces.length; f++) {
      FacePlanes.store(turned, f, frame.place(plane(f)));
    }
    Mass own = new Mass(volume(), frame.place(middle()));
    return new Convex(moved, faces, turned, own, edges);
  }

  /** This taken from chair space to the coordinates of {@code frame}. */
  public Convex localTo(Frame frame) {
    double[] moved = new double[xyz.length];
    for (int i = 0; i < pointCount(); i++) {
      Vec3 p = frame.local(point(i));
      moved[3 * i] = p.x();
      moved[3 * i + 1] = p.y();
      moved[3 * i + 2] = p.z();
    }
    double[] turned = new double[planes.length];
    for (int f = 0; f < faces.length; f++) {
      FacePlanes.store(turned, f, frame.local(plane(f)));
    }
    Mass own = new Mass(volume(), frame.local(middle()));
    return new Convex(moved, faces, turned, own, edges);
  }

  /** This mirrored in its own z = 0. */
  public Convex mirroredZ() {
    double[] mirrored = xyz.clone();
    for (int i = 2; i < mirrored.length; i += 3) {
      mirrored[i] = 0.0 - mirrored[i];
    }
    double[] turned = planes.clone();
    for (int i = 2; i < turned.length; i += 4) {
      turned[i] = 0.0 - turned[i];
    }
    int[][] reversed = new int[faces.length][];
    for (int f = 0; f < faces.length; f++) {
      int n = faces[f].length;
      reversed[f] = new int[n];
      for (int i = 0; i < n; i++) {
        reversed[f][i] = faces[f][n - 1 - i];
      }
    }
    Vec3 at = middle();
    Mass own = new Mass(volume(), new Vec3(at.x(), at.y(), -at.z()));
    return new Convex(mirrored, reversed, turned, own, new AtomicReference<>());
  }

  /** This as a shape of its own, every face with the given origin (a JSON pointer). */
  public Csg.Leaf asLeaf(String origin) {
    return new Csg.Leaf(CellMesh.of(this, origin), List.of(this));
  }

  /** Four numbers an edge: its ends, and the faces to its left and right. */
  int[] edges() {
    int[] known = edges.get();
    if (known == null) {
      known = CellEdges.of(faces);
      edges.set(known);
    }
    return known;
  }

  double height(int face, double x, double y, double z) {
    int k = 4 * face;
    return planes[k] * x + planes[k + 1] * y + planes[k + 2] * z - planes[k + 3];
  }

  /** The greatest height of any of the points over a face of this. */
  double highest(int face, double[] points) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < points.length; i += 3) {
      double h = height(face, points[i], points[i + 1], points[i + 2]);
      most = h > most ? h : most;
    }
    return most;
  }

  /** The least height of any of the points over a face of this. */
  double lowest(int face, double[] points) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < points.length; i += 3) {
      double h = height(face, points[i], points[i + 1], points[i + 2]);
      least = h < least ? h : least;
    }
    return least;
  }

  int farthest(double dx, double dy, double dz) {
    int best = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < xyz.length; i += 3) {
      double at = dx * xyz[i] + dy * xyz[i + 1] + dz * xyz[i + 2];
      if (at > most) {
        most = at;
        best = i / 3;
      }
    }
    return best;
  }

  static double[] packed(Collection<Vec3> points) {
    double[] xyz = new double[3 * points.size()];
    int i = 0;
    for (Vec3 p : points) {
      xyz[i++] = p.x();
      xyz[i++] = p.y();
      xyz[i++] = p.z();
    }
    return xyz;
  }
}
