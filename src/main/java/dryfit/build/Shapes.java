package dryfit.build;

import dryfit.geometry.Frame;
import dryfit.geometry.Meshes;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import dryfit.solid.Csg;
import java.util.List;
import java.util.function.Predicate;

/** Moving and trimming of shapes. */
final class Shapes {
  private Shapes() {}

  /** The same shape seen from chair space. */
  static Csg placed(Csg shape, Frame frame) {
    if (shape instanceof Csg.Leaf leaf) {
      return new Csg.Leaf(
          leaf.mesh().placed(frame), leaf.cells().stream().map(c -> c.placed(frame)).toList());
    } else if (shape instanceof Csg.Union union) {
      return new Csg.Union(union.of().stream().map(s -> placed(s, frame)).toList());
    } else if (shape instanceof Csg.Common common) {
      return new Csg.Common(common.of().stream().map(s -> placed(s, frame)).toList());
    } else if (shape instanceof Csg.Cut cut) {
      return new Csg.Cut(
          placed(cut.from(), frame), cut.tools().stream().map(s -> placed(s, frame)).toList());
    }
    throw new IllegalStateException("unknown shape " + shape);
  }

  /** A chair-space shape seen from {@code frame}. */
  static Csg localTo(Csg shape, Frame frame) {
    return placed(shape, inverse(frame));
  }

  private static Frame inverse(Frame f) {
    return new Frame(
        f.local(Vec3.ZERO),
        new Vec3(f.x().x(), f.y().x(), f.z().x()),
        new Vec3(f.x().y(), f.y().y(), f.z().y()),
        new Vec3(f.x().z(), f.y().z(), f.z().z()));
  }

  static Csg mirroredZ(Csg shape) {
    if (shape instanceof Csg.Leaf leaf) {
      return new Csg.Leaf(
          Meshes.mirroredZ(leaf.mesh()), leaf.cells().stream().map(Convex::mirroredZ).toList());
    } else if (shape instanceof Csg.Union union) {
      return new Csg.Union(union.of().stream().map(Shapes::mirroredZ).toList());
    } else if (shape instanceof Csg.Common common) {
      return common.mirrored(Shapes::mirroredZ);
    } else if (shape instanceof Csg.Cut cut) {
      return new Csg.Cut(
          mirroredZ(cut.from()), cut.tools().stream().map(Shapes::mirroredZ).toList());
    }
    throw new IllegalStateException("unknown shape " + shape);
  }

  /** The shape less what lies outside {@code plane}; all in one frame. */
  static Csg trimmed(Csg shape, Plane plane, String origin) {
    return trimmed(shape, plane, p -> true, origin);
  }

  /**
   * @param near tells places that may be taken away from other stretches of the same shape
   */
  static Csg trimmed(Csg shape, Plane plane, Predicate<Vec3> near, String origin) {
    if (shape instanceof Csg.Leaf leaf && leaf.cells().size() == 1) {
      return leaf.cells()
          .get(0)
          .clipped(plane)
          .<Csg>map(c -> c.asLeaf(leaf.mesh().origin(0)))
          .orElse(shape);
    }
    List<Convex> beyond =
        dryfit.solid.Cells.of(shape).stream()
            .flatMap(c -> c.clipped(plane.flipped()).stream())
            .filter(c -> near.test(c.middle()))
            .toList();
    if (beyond.isEmpty()) {
      return shape;
    }
    return new Csg.Cut(shape, List.of(slab(beyond, plane).asLeaf(origin)));
  }

  /** A box on the outer side of the plane that holds all the cells with room to spare. */
  private static Convex slab(List<Convex> cells, Plane plane) {
    Vec3 n = plane.normal();
    Vec3 helper = Math.abs(n.x()) < 0.6 ? Vec3.RIGHT : Vec3.BACK;
    Frame f = Frame.of(n.times(plane.offset()), n, helper);
    List<Vec3> local = cells.stream().flatMap(c -> c.points().stream()).map(f::local).toList();
    dryfit.geometry.Box box = dryfit.geometry.Box.around(local).grown(SPARE);
    return Convex.box(
            new dryfit.geometry.Box(
                new Vec3(0, box.low().y(), box.low().z()),
                new Vec3(box.high().x(), box.high().y(), box.high().z())))
        .placed(f);
  }

  /** Room that a cutting tool has beyond the wood it cuts, so that no faces coincide, mm. */
  static final double SPARE = 5;
}
