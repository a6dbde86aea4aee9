package dryfit.export;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.document.JointPlan;
import dryfit.fit.JointFit;
import dryfit.fit.KnifeLine;
import dryfit.fit.MortiseAngles;
import dryfit.fit.SawSet;
import dryfit.fit.ShoulderAngles;
import dryfit.measure.Angle;
import dryfit.measure.BenchAngle;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The angles of one joint in short lines; each in every reading, and with its sense in words. */
final class AngleText {
  private static final String DOT = " · ";

  private final TextStyle style;

  AngleText(TextStyle style) {
    this.style = style;
  }

  /** {@code 8.88° off square · 81.12° from the face · 15.6 mm over 100 mm}. */
  String readings(BenchAngle angle, String edge) {
    return Angle.degrees(angle.offSquare())
        + " off square"
        + DOT
        + Angle.degrees(angle.fromLongEdge())
        + " from "
        + edge
        + DOT
        + slope(angle);
  }

  String slope(BenchAngle angle) {
    return angle.slope(style.unit(), style.denominator());
  }

  /** The lean of a mortise: whole, and its two shares where it has two. */
  List<String> lean(MortiseAngles mortise) {
    if (mortise.lean().isSquare()) {
      return List.of("none, square to the face");
    }
    List<String> out = new ArrayList<>();
    boolean compound = !mortise.along().angle().isSquare() && !mortise.across().angle().isSquare();
    if (!compound) {
      MortiseAngles.Share only =
          mortise.along().angle().isSquare() ? mortise.across() : mortise.along();
      out.add("going in, towards the " + only.towards());
      out.add("  " + readings(mortise.lean(), "the face"));
      return out;
    }
    out.add("compound, in all");
    out.add("  " + readings(mortise.lean(), "the face"));
    for (MortiseAngles.Share share : List.of(mortise.along(), mortise.across())) {
      out.add("going in, towards the " + share.towards());
      out.add("  " + readings(share.angle(), "the face"));
    }
    return out;
  }

  /** That a shoulder is hollowed to the face it meets; nothing of a flat one. */
  static List<String> scribed(Chair chair, Joint joint) {
    return joint.plan().shoulder() == JointPlan.Shoulder.SCRIBED
        ? List.of("scribed to " + chair.parts().get(joint.mortised()).name() + "; in its middle")
        : List.of();
  }

  /** The shoulder: the two lines a knife follows. */
  List<String> shoulder(ShoulderAngles shoulder) {
    if (shoulder.offSquare().isSquare()) {
      return List.of("square both ways");
    }
    if (shoulder.wide().isEmpty()) {
      return List.of(
          "long at the " + shoulder.longest(), "  " + readings(shoulder.offSquare(), "the side"));
    }
    List<String> out = new ArrayList<>();
    shoulder.wide().ifPresent(line -> line(out, line));
    shoulder.narrow().ifPresent(line -> line(out, line));
    return out;
  }

  private void line(List<String> out, KnifeLine line) {
    out.add(face(line));
    if (!line.angle().isSquare()) {
      out.add("  " + readings(line.angle(), "the " + line.longEdge() + " edge"));
    }
  }

  private String face(KnifeLine line) {
    return "on the "
        + line.face()
        + " and "
        + line.opposite()
        + (line.angle().isSquare()
            ? ": square"
            : ": " + line.longEdge() + " edge long by " + style.length(line.longer()));
  }

  /** The shoulder with both readings from the edges, and the corner that is longest. */
  List<String> shoulderInFull(ShoulderAngles shoulder) {
    List<String> out = new ArrayList<>();
    boolean compound = true;
    for (KnifeLine line :
        Stream.concat(shoulder.wide().stream(), shoulder.narrow().stream()).toList()) {
      compound &= !line.angle().isSquare();
      out.add(face(line));
      if (!line.angle().isSquare()) {
        out.add(
            "  "
                + Angle.degrees(line.angle().offSquare())
                + " off square"
                + DOT
                + slope(line.angle()));
        out.add(
            "  "
                + Angle.degrees(line.angle().fromLongEdge())
                + " from the "
                + line.longEdge()
                + " edge"
                + DOT
                + Angle.degrees(line.angle().fromShortEdge())
                + " from the "
                + line.shortEdge()
                + " edge");
      }
    }
    if (out.isEmpty() || shoulder.offSquare().isSquare()) {
      return shoulder(shoulder);
    }
    if (compound) {
      out.add("longest at the " + shoulder.longest() + " corner");
    }
    return out;
  }

  /**
   * The saw's setting.
   *
   * @param hands what the hands are called whose parts this is about, the one measured first; one
   *     empty text for a part of its own
   */
  List<String> saw(SawSet saw, List<String> hands) {
    List<String> out = new ArrayList<>();
    out.add("stock flat, its " + saw.up() + " up, its end pointing away from you");
    out.add("  gauge " + gauge(saw.mitre()));
    out.add("  blade " + gauge(saw.tilt()));
    if (!saw.mitre().isSquare()) {
      String near = saw.longOnRight() ? "right" : "left";
      String far = saw.longOnRight() ? "left" : "right";
      String sense = "  the long edge lies on your " + near;
      if (hands.size() > 1) {
        boolean rightFirst = hands.get(0).equals("right");
        sense =
            "  long edge on your "
                + (rightFirst ? near : far)
                + " for the right-hand part, on your "
                + (rightFirst ? far : near)
                + " for the left-hand one";
      }
      out.add(sense);
    }
    if (!saw.tilt().isSquare()) {
      out.add("  the long face is the " + (saw.longUp() ? "upper" : "lower") + " one");
    }
    return out;
  }

  /** One setting as both kinds of scale read it. */
  private static String gauge(BenchAngle angle) {
    return angle.isSquare()
        ? "square"
        : Angle.degrees(angle.offSquare())
            + " where the scale reads 0 at square · "
            + Angle.degrees(angle.fromLongEdge())
            + " where 90";
  }

  /** The one line to lean over; none where a single view shows the whole lean. */
  List<String> sight(MortiseAngles mortise) {
    if (mortise.along().angle().isSquare() || mortise.across().angle().isSquare()) {
      return List.of();
    }
    MortiseAngles.SightLine sight = mortise.sight();
    return List.of(
        "over a line towards the " + sight.towards() + ", going in",
        "  " + Angle.degrees(sight.angle()) + " from " + sight.from(),
        "  " + Angle.degrees(sight.otherAngle()) + " from " + sight.otherFrom());
  }

  /** The outline on the face, and which side of the tenon enters first. */
  List<String> opening(MortiseAngles mortise) {
    List<String> out = new ArrayList<>();
    mortise
        .opening()
        .ifPresent(
            o -> {
              String askew =
                  o.corner().isSquare()
                      ? ""
                      : ", its corners " + Angle.degrees(o.corner().offSquare()) + " off square";
              out.add(
                  style.length(o.acrossCheeks())
                      + " by "
                      + style.length(o.acrossEdges())
                      + " on the face"
                      + askew);
              sooner(out, o.firstCheek(), "cheek", o.cheekSooner());
              sooner(out, o.firstEdge(), o.isRound() ? "side" : "edge", o.edgeSooner());
            });
    return out;
  }

  private void sooner(List<String> out, String side, String what, double by) {
    if (!side.isEmpty()) {
      out.add("the " + side + " " + what + " enters " + style.length(by) + " sooner");
    }
  }

  /** The depth as a gauge reads it, as a mark on the tool reads it, and where it is deepest. */
  List<String> depth(JointFit fit, MortiseAngles mortise) {
    List<String> out = new ArrayList<>();
    out.add(style.length(fit.depthSquare()) + " square to the face, at the middle");
    if (!mortise.lean().isSquare()) {
      out.add(style.length(fit.depthAlong()) + " along the tool: the mark or the stop");
      mortise
          .deepEdge()
          .ifPresent(d -> out.add(style.length(d) + " square to the face, at the deepest edge"));
    }
    return out;
  }
}
