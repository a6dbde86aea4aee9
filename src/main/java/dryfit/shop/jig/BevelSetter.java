package dryfit.shop.jig;

import dryfit.build.Part;
import dryfit.document.Hand;
import dryfit.document.JigKind;
import dryfit.document.JointPlan;
import dryfit.geometry.EndCut;
import dryfit.geometry.Frame;
import dryfit.geometry.Lean;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.BenchAngle;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;

/**
 * The bevel setter: a plate with a straight base whose two ends lean by the two angles of a
 * shoulder or of a mortise. The stock of the bevel gauge goes against the base, its blade against
 * an end. Its ends are lands and not points, so that nothing is thinner than a printed line.
 */
final class BevelSetter {
  private static final double LONG = 92;
  private static final double TALL = 50;
  private static final double THICK = 8;

  /** An end may lean so far before the plate gets too small at its top, radians. */
  private static final double MOST = Math.toRadians(40);

  private BevelSetter() {}

  /** The lines to knife round the shoulder: on the wide faces at the left end, the others right. */
  static Jig forShoulder(JigSite site) {
    Part part = site.tenoned();
    Vec3 length = part.lengthNear(site.joint().at());
    boolean atEnd =
        site.joint().plan().tenon().end() != JointPlan.End.MIDDLE
            && !part.isPiece()
            && Math.abs(site.joint().mouth().normal().dot(length)) > Tolerances.nearlyParallel();
    if (!atEnd || JigSite.isRound(part)) {
      throw new NoJig("it has no shoulder with straight knife lines");
    }
    EndCut cut = EndCut.of(site.joint().mouth().flipped(), part.frameNear(site.joint().at()));
    boolean flat = part.blank().thickness() > part.blank().width();
    double wide = flat ? cut.onNarrowFace() : cut.onWideFace();
    double narrow = flat ? cut.onWideFace() : cut.onNarrowFace();
    return make(site, part, "shoulder", wide, "WIDE", narrow, "NARROW");
  }

  /** How the mortise leans: along its part at the left end, across it at the right. */
  static Jig forMortise(JigSite site) {
    if (site.holes().isEmpty()) {
      throw new NoJig("nothing is cut into a face for it");
    }
    if (site.joint().lean() > JigSite.STEEPEST) {
      throw new NoJig("it goes in at more than 45 degrees off square");
    }
    Lean lean = site.lean();
    return make(site, site.mortised(), "mortise", lean.rake(), "ALONG", lean.splay(), "ACROSS");
  }

  private static Jig make(
      JigSite site,
      Part part,
      String what,
      double left,
      String leftWord,
      double right,
      String rightWord) {
    if (BenchAngle.of(left).isSquare() && BenchAngle.of(right).isSquare()) {
      throw new NoJig("both angles are square, and a try square sets those");
    }
    if (Math.max(Math.abs(left), Math.abs(right)) > MOST) {
      throw new NoJig("an angle of more than 40 degrees off square does not fit on its plate");
    }
    double l = TALL * Math.tan(Math.abs(left));
    double r = TALL * Math.tan(Math.abs(right));
    double x1 = LONG + l + r;
    List<Vec3> outline =
        List.of(Vec3.ZERO, new Vec3(x1, 0, 0), new Vec3(x1 - r, TALL, 0), new Vec3(l, TALL, 0));
    JigShape shape = new JigShape(Frame.CHAIR);
    shape.add(Convex.prism(outline, Vec3.UP.times(THICK)));
    List<String> words = site.letters(part);
    String leftText = leftWord + " " + JigSite.degrees(left);
    String rightText = rightWord + " " + JigSite.degrees(right);
    double mid = x1 / 2;
    shape.engrave(
        StrokeFont.plain(leftText).lines().toList(),
        new Panel(new Vec3(l / 2 + 5, 3, THICK), Vec3.RIGHT, Vec3.BACK, mid - l / 2 - 8, 7));
    shape.engrave(
        StrokeFont.plain(rightText).lines().toList(),
        new Panel(new Vec3(mid + 2, 3, THICK), Vec3.RIGHT, Vec3.BACK, x1 - mid - r / 2 - 8, 7));
    List<String> top = new ArrayList<>(words);
    top.add("UP");
    shape.engrave(
        top, new Panel(new Vec3(l + 13, 13, THICK), Vec3.RIGHT, Vec3.BACK, LONG - 17, TALL - 16));
    Engraving.arrow(new Vec3(l + 7, TALL - 20, THICK), Vec3.BACK, Vec3.UP, 12)
        .forEach(shape::cutLate);
    String name = site.name(JigKind.BEVEL_SETTER, what);
    words.add(leftText);
    words.add(rightText);
    List<Plane> ends = new ArrayList<>();
    ends.add(Plane.through(Vec3.ZERO, new Vec3(-TALL, l, 0)));
    ends.add(Plane.through(new Vec3(x1, 0, 0), new Vec3(TALL, r, 0)));
    return new Jig(
        JigKind.BEVEL_SETTER,
        name,
        -1,
        site.number(),
        Hand.NONE,
        words,
        List.of(shape.piece(name, site.kernel(), site.printing().relief())),
        List.of(),
        ends,
        List.of(),
        List.of("the stock of the bevel gauge goes against the long base"));
  }
}
