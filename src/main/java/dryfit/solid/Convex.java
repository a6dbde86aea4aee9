package dryfit.solid;

import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import java.util.List;
import java.util.Optional;

/** A closed convex solid: points and flat faces, anticlockwise from outside. Immutable. */
public final class Convex {
  private final List<Vec3> points;
  private final int[][] faces;
  private final List<Plane> planes;

  private Convex(List<Vec3> points, int[][] faces, List<Plane> planes) {
    this.points = List.copyOf(points);
    this.faces = faces;
    this.planes = List.copyOf(planes);
  }

  // STUB: to be written (see the contract)
  public static Convex of(List<Vec3> points, int[][] faces) {
    return new Convex(points, faces, List.of());
  }

  public List<Vec3> points() {
    return points;
  }

  public int[][] faces() {
    return faces.clone();
  }

  public List<Plane> planes() {
    return planes;
  }

  /** What lies inside {@code plane} (its normal points away from what is kept). */
  public Optional<Convex> clipped(Plane plane) {
    return Optional.of(this);
  }

  public double volume() {
    return 0;
  }

  public Vec3 middle() {
    return points.get(0);
  }

  public Box bounds() {
    return Box.around(points);
  }

  public Convex placed(Frame frame) {
    return this;
  }

  public Convex localTo(Frame frame) {
    return this;
  }
}
