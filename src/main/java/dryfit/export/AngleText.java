package dryfit.export;

import dryfit.fit.KnifeLine;
import dryfit.fit.MortiseAngles;
import dryfit.fit.ShoulderAngles;
import dryfit.measure.Angle;
import dryfit.measure.BenchAngle;
import java.util.ArrayList;
import java.util.List;

/** The angles of one joint in short lines; each in every reading, and with its sense in words. */
final class AngleText {
  private static final String DOT = " · ";

  private final TextStyle style;

  AngleText(TextStyle style) {
    this.style = style;
  }

  /** {@code 8.88° off square · 81.12° from the face · 15.6 in 100}. */
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
    out.add("compound: " + readings(mortise.lean(), "the face"));
    for (MortiseAngles.Share share : List.of(mortise.along(), mortise.across())) {
      out.add("going in, towards the " + share.towards());
      out.add("  " + readings(share.angle(), "the face"));
    }
    return out;
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
    String faces = "on the " + line.face() + " and " + line.opposite() + ": ";
    if (line.angle().isSquare()) {
      out.add(faces + "square");
      return;
    }
    out.add(faces + line.longEdge() + " edge long by " + style.length(line.longer()));
    out.add("  " + readings(line.angle(), "the " + line.longEdge() + " edge"));
  }
}
