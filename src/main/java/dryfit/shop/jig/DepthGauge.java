package dryfit.shop.jig;

import dryfit.build.Part;
import dryfit.document.JigKind;
import dryfit.document.Printing;
import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import java.util.Comparator;
import java.util.List;

/**
 * The depth gauge: a bar that lies on the mortised face with a tongue down the way in. When the bar
 * sits, the tongue's end is at the bottom of a finished mortise. It lies flat on the bed, in the
 * plane of the mortise's width.
 */
final class DepthGauge {
  private static final double MOST_THICK = 10;
  private static final double BAR = 18;
  private static final double ARM = 14;

  /** Face that has to be left beside the hole, on one side at least, for the bar to lie on, mm. */
  private static final double LEAST_BESIDE = 4;

  private DepthGauge() {}

  static Jig of(JigSite site) {
    if (site.holes().isEmpty() || site.joint().through()) {
      throw new NoJig("its hole has no bottom to measure to");
    }
    if (site.joint().lean() > JigSite.STEEPEST) {
      throw new NoJig("it goes in at more than 45 degrees off square");
    }
    Printing p = site.printing();
    Vec3 entry = site.joint().entry();
    Vec3 wide = site.joint().wide();
    Vec3 thick = site.joint().thick();
    Convex hole = site.holes().get(0);
    double t = hole.reach(thick) + hole.reach(thick.negated());
    double w = hole.reach(wide) + hole.reach(wide.negated());
    double room = 2 * p.slideAllowance();
    // In a round hole the tongue is a square whose corners still have their room.
    double tongueThick = Math.min(MOST_THICK, site.isRound() ? t * 0.6 : t - room);
    double tongueWide = Math.min(24, (site.isRound() ? t * 0.7 : w) - room);
    if (tongueThick < p.leastWall() || tongueWide < 2 * p.leastWall()) {
      throw new NoJig("the hole is too narrow for a tongue of two printed lines");
    }
    Vec3 middle = middle(hole, thick, wide, entry, site);
    Plane bottom = floor(hole, entry);
    // x along the tongue, y across it, z its thickness.
    Frame bed = Frame.of(middle.minus(thick.times(tongueThick / 2)), entry.negated(), wide);
    if (bed.z().dot(thick) < 0) {
      bed = Frame.of(middle.plus(thick.times(tongueThick / 2)), entry.negated(), wide);
    }
    JigShape shape = new JigShape(bed);
    double deep = bottom.along(middle, entry);
    List<String> words =
        site.letters(
            site.mortised(),
            JigSite.degrees(site.joint().lean()),
            JigLength.engraved(deep, site.chair().design()),
            "DEEP",
            JigSite.upWord(bed.z()));
    double half =
        Math.max(
            (site.isRound() ? tongueWide : w) / 2 + ARM,
            (Engraving.leastWidth(words, Engraving.mostLines(BAR - 3)) + 19) / 2);
    Plane mouth = site.joint().mouth();
    double reach = 2 * half + tongueThick;
    Frame on = Frame.of(site.joint().at(), mouth.normal(), wide.across(mouth.normal()));
    LocalWood wood =
        LocalWood.of(
            site.mortised(),
            on,
            new Box(new Vec3(-20, -reach, -reach), new Vec3(40, reach, reach)));
    List<Vec3> ends = List.of(on.local(hole.extreme(wide)), on.local(hole.extreme(wide.negated())));
    if (beside(wood.hull().points(), ends, on.localDirection(wide)) < LEAST_BESIDE) {
      throw new NoJig(
          "its hole runs out at both sides, and the bar would lie on nothing: set its depth with a"
              + " marking gauge from the face");
    }
    // On a round or curved part the bar lies on what stands highest, which is a line and no face.
    boolean flat =
        !JigSite.isRound(site.mortised())
            && beside(wood.faceIn(on.local(mouth)).orElse(List.of()), ends, on.localDirection(wide))
                >= LEAST_BESIDE;
    Plane face = shape.local(mouth.moved(flat ? 0 : wood.hull().reach(Vec3.RIGHT)).flipped());
    double lean = Math.tan(site.joint().lean());
    double slope = half * lean + tongueThick * lean + 1;
    shape.add(new Box(new Vec3(-slope, -half, 0), new Vec3(BAR + slope, half, tongueThick)), face);
    shape.add(
        new Box(
            new Vec3(-deep - tongueWide, -tongueWide / 2, 0),
            new Vec3(BAR, tongueWide / 2, tongueThick)),
        shape.local(bottom));
    Vec3 up = JigSite.upOn(bed.z());
    Vec3 arrow = bed.localDirection(up);
    Engraving.arrow(
            new Vec3(slope + BAR / 2, half - 8, tongueThick).minus(arrow.times(4)),
            arrow,
            Vec3.UP,
            8)
        .forEach(shape::cutLate);
    shape.engrave(
        words,
        new Panel(
            new Vec3(slope + 1.5, half - 15, tongueThick),
            Vec3.BACK.negated(),
            Vec3.RIGHT,
            2 * half - 18,
            BAR - 3));
    String name = site.name(JigKind.DEPTH_GAUGE, "");
    Vec3 tip = middle.plus(entry.times(deep));
    Part part = site.mortised();
    if (!part.solid().rays().placed(part.frame()).inside(tip.plus(entry.times(0.5)))) {
      throw new NoJig("its hole runs into another and has no bottom there");
    }
    Plane floor = bottom.flipped();
    return new Jig(
        JigKind.DEPTH_GAUGE,
        name,
        site.joint().mortised(),
        site.number(),
        site.hand(),
        words,
        List.of(shape.piece(name, site.kernel(), p.relief())),
        flat ? List.of(mouth, floor) : List.of(floor),
        List.of(),
        List.of(),
        List.of(
            "the tongue is "
                + JigLength.told(deep, site.chair().design())
                + " along the hole, measured in its middle"));
  }

  /** How far places go beyond the ends of the hole, on the side where they go farther. */
  private static double beside(List<Vec3> places, List<Vec3> ends, Vec3 wide) {
    double most = Double.NEGATIVE_INFINITY;
    for (Vec3 p : places) {
      most = Math.max(most, p.dot(wide) - ends.get(0).dot(wide));
      most = Math.max(most, ends.get(1).dot(wide) - p.dot(wide));
    }
    return most;
  }

  /** The bottom of the hole: square to the way in, or along the face of a part that is housed. */
  private static Plane floor(Convex hole, Vec3 entry) {
    return hole.planes().stream()
        .max(Comparator.comparingDouble(p -> p.normal().dot(entry)))
        .orElseThrow();
  }

  private static Vec3 middle(Convex hole, Vec3 thick, Vec3 wide, Vec3 entry, JigSite site) {
    Vec3 m =
        thick
            .times((hole.reach(thick) - hole.reach(thick.negated())) / 2)
            .plus(wide.times((hole.reach(wide) - hole.reach(wide.negated())) / 2));
    double along = site.joint().mouth().along(m, entry);
    return m.plus(entry.times(along));
  }
}
