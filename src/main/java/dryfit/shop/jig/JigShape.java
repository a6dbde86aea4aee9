package dryfit.shop.jig;

import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Mesh;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.solid.Cells;
import dryfit.solid.Convex;
import dryfit.solid.Csg;
import dryfit.solid.Kernel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A piece of a jig being made, in the coordinates of the printer's bed: z up, the bed at z = 0.
 * What is added is joined, then cut; then the edge on the bed is relieved; last come grooves and
 * bores, whose rims on the bed get a countersink instead.
 */
final class JigShape {
  private final Frame bed;
  private final List<Csg> adds = new ArrayList<>();
  private final List<Csg> cuts = new ArrayList<>();
  private final List<Csg> late = new ArrayList<>();

  /**
   * @param bed takes the bed's coordinates to chair space
   */
  JigShape(Frame bed) {
    this.bed = bed;
  }

  Frame bed() {
    return bed;
  }

  Plane local(Plane plane) {
    return bed.local(plane);
  }

  JigShape add(Convex cell) {
    adds.add(cell.asLeaf(""));
    return this;
  }

  /** A box, cut by planes whose normals point away from what is kept. */
  JigShape add(Box box, Plane... planes) {
    Optional<Convex> cell = Optional.of(Convex.box(box));
    for (Plane plane : planes) {
      cell = cell.flatMap(c -> c.clipped(plane));
    }
    return add(cell.orElseThrow(() -> new NoJig("there is no room for it on the part")));
  }

  JigShape cut(Convex cell) {
    cuts.add(cell.asLeaf(""));
    return this;
  }

  /** Cut after the edge on the bed is relieved. */
  JigShape cutLate(Convex cell) {
    late.add(cell.asLeaf(""));
    return this;
  }

  /** Letters; says so if they do not fit. */
  JigShape engrave(List<String> words, Panel panel) {
    List<Convex> grooves =
        Engraving.of(words, panel)
            .orElseThrow(
                () ->
                    new NoJig(
                        "it is too small for its part, joint and hand to be read on it, and one"
                            + " without them goes on the wrong part"));
    grooves.forEach(this::cutLate);
    return this;
  }

  /**
   * A round hole with flat facets that stand outside its circle.
   *
   * @param at a place on its middle line
   * @param axis unit direction, not level
   * @param acrossFlats diameter of the circle that fits in it
   */
  JigShape bore(Vec3 at, Vec3 axis, double acrossFlats, double from, double to, double relief) {
    List<Vec3> ring = ring(at, axis, acrossFlats);
    // Its ends are square to it, so they have to be far enough out on the side where it leans.
    Vec3 start = axis.times((from - acrossFlats - at.z()) / axis.z());
    Vec3 way = axis.times((to - from + 2 * acrossFlats) / axis.z());
    cutLate(Convex.prism(ring.stream().map(p -> p.plus(start)).toList(), way));
    if (relief > 0) {
      List<Vec3> rim =
          ring.stream().map(p -> p.plus(axis.times((relief - p.z()) / axis.z()))).toList();
      Vec3 middle = at.plus(axis.times((relief - at.z()) / axis.z()));
      // Less by the lean, so that no side of the countersink hangs over more than 45 degrees.
      double wider = 1 + 1.9 * relief * axis.z() / (acrossFlats / 2);
      Vec3 below = Vec3.UP.times(-2 * relief);
      List<Vec3> wide =
          rim.stream().map(p -> middle.plus(p.minus(middle).times(wider)).plus(below)).toList();
      cutLate(Convex.loft(wide, rim));
    }
    return this;
  }

  /** The corners of a hole round its middle line; at least 24, more where 0.05 mm asks for it. */
  private static List<Vec3> ring(Vec3 at, Vec3 axis, double acrossFlats) {
    double r = acrossFlats / 2;
    int n = Math.max(24, dryfit.solid.Turned.facetsFor(r, dryfit.measure.Tolerances.facet()));
    Vec3 u = (Math.abs(axis.x()) < 0.6 ? Vec3.RIGHT : Vec3.BACK).across(axis).unit();
    Vec3 v = axis.cross(u);
    double corner = r / Math.cos(Math.PI / n);
    List<Vec3> ring = new ArrayList<>();
    for (int k = 0; k < n; k++) {
      double a = 2 * Math.PI * (k + 0.5) / n;
      ring.add(at.plus(u.times(corner * Math.cos(a))).plus(v.times(corner * Math.sin(a))));
    }
    return ring;
  }

  /** The finished piece. */
  JigPiece piece(String name, Kernel kernel, double relief) {
    return new JigPiece(name, mesh(kernel, relief), Cells.of(plain()), bed);
  }

  private Csg plain() {
    return adds.get(0).plus(adds.subList(1, adds.size())).minus(cuts);
  }

  /** The finished surface, as it lies on the bed. */
  private Mesh mesh(Kernel kernel, double relief) {
    Csg plain = plain();
    Mesh rough = kernel.evaluate(plain);
    if (rough.isEmpty()) {
      throw new NoJig("nothing is left of it");
    }
    List<Csg> tools = new ArrayList<>();
    BedEdge.cutters(rough, relief).forEach(c -> tools.add(c.asLeaf("")));
    tools.addAll(late);
    return kernel.evaluate(plain.minus(tools));
  }
}
