package dryfit.shop.setting;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.fit.PartSides;
import dryfit.geometry.Vec3;
import dryfit.measure.Angle;
import dryfit.measure.BenchAngle;
import dryfit.shop.Setout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where the mouth of a mortise is knifed on its face: from one end of the part and from one edge of
 * the face, or on a round part from a line along it; measured from the faces that the bench book
 * measures from, {@link Setout}.
 *
 * @param readings lengths from the end, then from the edge
 */
record Mouth(List<Reading> readings, List<String> notes) {
  /** What is no more than this off a line is on it to a maker, mm. */
  private static final double ON = 0.05;

  private static final String MIDDLE = "a line along its middle";

  static Optional<Mouth> of(Chair chair, Joint joint) {
    Part part = chair.parts().get(joint.mortised());
    Vec3 n = joint.mouth().normal();
    Vec3 along = part.lengthNear(joint.at());
    boolean inEnd = Math.abs(along.dot(n)) > Math.sqrt(0.5);
    if (joint.mortise().isEmpty() || inEnd) {
      return Optional.empty();
    }
    if (part.bend().isPresent()) {
      return Optional.of(
          new Mouth(
              List.of(new Reading.Said("on a bent part", "no face or edge to measure from")),
              List.of(
                  "Mark its middle line along the curve, and take the place and the shape of the"
                      + " mouth from its full-size print (templates --mouths).")));
    }
    return Optional.of(new Setter(chair, joint, part).mouth());
  }

  /** The lengths of one mouth. */
  private static final class Setter {
    private final Joint joint;
    private final Part part;
    private final PartSides sides;
    private final Setout setout;
    private final List<Reading> readings = new ArrayList<>();

    Setter(Chair chair, Joint joint, Part part) {
      this.joint = joint;
      this.part = part;
      this.sides = PartSides.of(chair, part, joint.hand());
      this.setout = Setout.ofMortise(chair, joint);
    }

    Mouth mouth() {
      boolean round = joint.plan().diameter().isPresent();
      int number = 0;
      for (Setout.Mark mark : setout.marks()) {
        number++;
        String which = setout.marks().size() > 1 ? number + ": " : "";
        along(which, mark, round);
        across(which, mark, round);
      }
      boolean askew = number > 0 && !round && !corner().isSquare();
      List<String> notes = new ArrayList<>();
      if (askew) {
        notes.add(
            "The mouth is no rectangle: its corners are "
                + Angle.degrees(corner().offSquare())
                + " off square. The lengths are those of its outermost corners; take its shape"
                + " from the full-size print.");
      }
      return new Mouth(List.copyOf(readings), List.copyOf(notes));
    }

    /** From the end that is nearer. */
    private void along(String which, Setout.Mark mark, boolean round) {
      Setout.Span low = setout.alongFrom(true, mark.corners());
      Setout.Span high = setout.alongFrom(false, mark.corners());
      boolean start = low.from() <= high.from();
      Vec3 out = new Vec3(start ? -1 : 1, 0, 0);
      String origin = "the " + word(out) + " end" + later(setout.isEndCutAway(start));
      stretch(which + "along the part", start ? low : high, origin, round);
    }

    private void across(String which, Setout.Mark mark, boolean round) {
      if (setout.isRound()) {
        aroundMiddle(which, mark, round);
        return;
      }
      boolean width = Math.abs(mark.face().z()) > 0.5;
      Setout.Span span = setout.across(mark.corners(), width);
      Optional<Vec3> face = width ? setout.acrossWidth() : setout.acrossThickness();
      String origin =
          face.map(f -> "the " + word(f) + " edge" + later(setout.isCutAway(width))).orElse(MIDDLE);
      stretch(which + "across it", span, origin, round);
    }

    /** What is turned has no faces: from the line along it that looks the way the mouth does. */
    private void aroundMiddle(String which, Setout.Mark mark, boolean round) {
      Vec3 n = part.frame().localDirection(joint.mouth().normal());
      Vec3 across = new Vec3(1, 0, 0).cross(n).unit();
      double[] off = mark.corners().stream().mapToDouble(p -> p.dot(across)).sorted().toArray();
      double least = off[0];
      double most = off[off.length - 1];
      double middle = (least + most) / 2;
      String towards = "towards the " + word(middle < 0 ? across.negated() : across);
      if (Math.abs(middle) < ON) {
        readings.add(
            round
                ? new Reading.Said(which + "across it", "on " + MIDDLE)
                : new Reading.Size(
                    which + "across it", most - least, "half on each side of " + MIDDLE));
      } else if (round) {
        readings.add(
            new Reading.Size(which + "its middle, from " + MIDDLE, Math.abs(middle), towards));
      } else {
        readings.add(
            new Reading.Span(
                which + "across it",
                middle > 0 ? least : -most,
                middle > 0 ? most : -least,
                MIDDLE,
                towards));
      }
    }

    /** A hole is bored where its middle is; of any other mouth both its lines are knifed. */
    private void stretch(String what, Setout.Span span, String origin, boolean round) {
      readings.add(
          round
              ? new Reading.Size(what + ", its middle", span.middle(), "from " + origin)
              : new Reading.Span(what, span.from(), span.to(), origin, ""));
    }

    private static String later(boolean cutAway) {
      return cutAway ? " of the squared blank" : "";
    }

    private String word(Vec3 own) {
      return sides.nearest(part.frame().turn(own));
    }

    /** How far the corners of the mouth are off square. */
    private BenchAngle corner() {
      Vec3 cheek = onFace(joint.thick());
      Vec3 edge = onFace(joint.wide());
      return BenchAngle.of(Math.PI / 2 - cheek.angleTo(edge));
    }

    private Vec3 onFace(Vec3 step) {
      Vec3 n = joint.mouth().normal();
      return step.minus(joint.entry().times(step.dot(n) / joint.entry().dot(n)));
    }
  }
}
