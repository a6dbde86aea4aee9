package dryfit.shop.jig;

import dryfit.build.Part;
import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a block sits on the face of a part: flat on it with a fence down one edge, or as a saddle on
 * a face that is not flat. In the coordinates of the bed, on which the block lies with its top, so
 * that the part is above it: the mouth is z = {@code high}.
 *
 * @param high how high the block is, mm
 * @param wood what it sits on
 * @param flat the face of the wood in the mouth; empty for a saddle
 * @param fence the face along the edge that its fence lies against; empty if there is none
 * @param side on which side of the middle the fence is, along y: 1 or -1
 * @param drop how far fence or saddle reach past the mouth
 * @param fenced whether the fence has a face to lie against, and not only lines of a curved edge
 */
record Seat(
    double high,
    LocalWood wood,
    Optional<List<Vec3>> flat,
    Optional<Plane> fence,
    int side,
    double drop,
    boolean fenced) {

  /** How far a fence reaches down the edge, mm (common practice, no source). */
  private static final double FENCE_DROP = 12;

  /** A fence may lean from the square of the face as far as this: sine. */
  private static final double FENCE_LEANS = 0.5;

  /** Less wood than this in a plane is no face to rest on, mm2 (common practice, no source). */
  static final double LEAST_REST = 120;

  static Seat of(Part part, Frame bed, double high, double halfLength, double halfHole) {
    double far = 90;
    Box within =
        new Box(new Vec3(-halfLength, -far, high - 30), new Vec3(halfLength, far, high + far));
    LocalWood wood = LocalWood.of(part, bed, within);
    Plane mouth = new Plane(Vec3.UP.negated(), -high);
    Optional<List<Vec3>> flat =
        wood.faceIn(mouth)
            .filter(
                face ->
                    face.stream().mapToDouble(Vec3::y).max().orElse(0) > halfHole + 2
                        && face.stream().mapToDouble(Vec3::y).min().orElse(0) < -halfHole - 2);
    double thick = wood.hull().reach(Vec3.UP) - high;
    if (flat.isEmpty()) {
      return new Seat(high, wood, flat, Optional.empty(), 1, Math.min(12, 0.34 * thick), false);
    }
    double drop = Math.min(FENCE_DROP, 0.6 * thick);
    // Only what the fence reaches counts: below it a rail may stand out under its rebate.
    LocalWood edges =
        LocalWood.of(part, bed, new Box(within.low(), new Vec3(halfLength, far, high + drop)));
    int best = 0;
    Plane fence = null;
    double most = Double.NEGATIVE_INFINITY;
    for (int s : new int[] {1, -1}) {
      Vec3 out = Vec3.BACK.times(s);
      Plane p = edges.facing(out);
      boolean good =
          edges.endsTowards(out)
              && p.normal().dot(out) > Math.sqrt(1 - FENCE_LEANS * FENCE_LEANS)
              && Math.abs(p.normal().x()) < 0.25;
      double outside = outside(bed, p);
      if (good && outside > most + 1e-6) {
        most = outside;
        best = s;
        fence = p;
      }
    }
    return new Seat(
        high,
        wood,
        flat,
        Optional.ofNullable(fence),
        best == 0 ? 1 : best,
        drop,
        fence != null && isWide(edges, fence));
  }

  /** How much a face looks to the outside and the front of the chair, where makers work from. */
  private static double outside(Frame bed, Plane face) {
    Vec3 n = bed.turn(face.normal());
    double side = Math.signum(Math.rint(bed.origin().x()));
    return n.x() * side - 0.5 * n.y() + 0.1 * n.z();
  }

  /** Its faces that have to touch the wood, bed coordinates, normals out of the wood. */
  List<Plane> rests() {
    List<Plane> out = new ArrayList<>();
    flat.ifPresent(f -> out.add(new Plane(Vec3.UP.negated(), -high)));
    // Against a curved edge the fence touches along lines, and there is no face to touch.
    fence.filter(f -> fenced).ifPresent(out::add);
    return out;
  }

  private static boolean isWide(LocalWood wood, Plane face) {
    if (wood.areaIn(face) < LEAST_REST) {
      return false;
    }
    List<Vec3> corners = wood.faceIn(face).orElse(List.of());
    double low = corners.stream().mapToDouble(Vec3::x).min().orElse(0);
    double most = corners.stream().mapToDouble(Vec3::x).max().orElse(0);
    return most - low > 30;
  }

  /** How far out along y the outer side of the block has to be for a fence so thick. */
  double outer(double x0, double x1, double thick) {
    if (fence.isEmpty()) {
      return 0;
    }
    double most = 0;
    for (double x : new double[] {x0, x1}) {
      for (double z : new double[] {high, high + drop}) {
        Plane p = fence.get();
        double y = (p.offset() - p.normal().x() * x - p.normal().z() * z) / p.normal().y();
        most = Math.max(most, side * y);
      }
    }
    return most + thick;
  }

  /** The body of the block over a rectangle; with its fence, or hollowed to sit on the wood. */
  void build(JigShape shape, double x0, double x1, double y0, double y1) {
    if (flat.isPresent()) {
      shape.add(new Box(new Vec3(x0, y0, 0), new Vec3(x1, y1, high)));
      if (fence.isPresent()) {
        double near = side > 0 ? Math.max(0, y0) : y0;
        double outer = side > 0 ? y1 : Math.min(0, y1);
        shape.add(
            new Box(new Vec3(x0, near, 0), new Vec3(x1, outer, high + drop)),
            fence.get().flipped());
      }
      return;
    }
    shape.add(new Box(new Vec3(x0, y0, 0), new Vec3(x1, y1, high + drop)));
    shape.cut(wood.hull());
  }

  /** Half of how wide the wood is at the lowest place of a saddle. */
  double saddleReach() {
    Optional<Convex> near = wood.hull().clipped(new Plane(Vec3.UP, high + drop));
    return near.map(c -> Math.max(c.reach(Vec3.BACK), c.reach(Vec3.BACK.negated()))).orElse(0.0);
  }
}
