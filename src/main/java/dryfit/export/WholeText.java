package dryfit.export;

import dryfit.fit.ChairMeasure;
import dryfit.fit.ChairMeasure.FrameSquare;
import dryfit.fit.ChairMeasure.GrainRun;
import dryfit.fit.ChairMeasure.MortisePair;
import dryfit.fit.ChairMeasure.SeatLevel;
import dryfit.fit.ChairMeasure.Stance;
import dryfit.measure.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The chair as a whole in a few lines: how it stands, whether it is square and level. */
final class WholeText {
  private WholeText() {}

  /**
   * The lines, without a heading; none if nothing was measured.
   *
   * @param all with the grain of every part and the wood between mortises
   */
  static List<String> lines(ChairMeasure whole, TextStyle style, boolean all) {
    List<String> out = new ArrayList<>();
    whole.stance().ifPresent(s -> add(out, "stands", stance(s, style)));
    whole.frames().forEach(f -> add(out, f.which(), frame(f, style)));
    if (!whole.frames().isEmpty()) {
      add(out, "", "from middle to middle of the legs, at the rails; front and back from a foot");
    }
    whole.level().ifPresent(l -> add(out, "level", level(l, style)));
    if (all) {
      whole.grain().forEach(g -> add(out, "grain", grain(g, style)));
      whole.mortises().stream()
          .filter(m -> m.plug().isEmpty())
          .forEach(m -> add(out, "between", between(m, style)));
    }
    return out;
  }

  private static void add(List<String> out, String name, String text) {
    String start = String.format(Locale.ROOT, "  %-10s", name);
    out.addAll(Wrapped.lines(start, " ".repeat(start.length()), text));
  }

  private static String stance(Stance s, TextStyle style) {
    if (!s.stands()) {
      return "not by itself: its weight is not between its feet";
    }
    String feet = "on " + s.feet().size() + " feet";
    return style.gap(s.rock()).equals(style.gap(0))
        ? feet + ", does not rock"
        : feet + ", rocks by " + style.gap(s.rock());
  }

  private static String frame(FrameSquare f, TextStyle style) {
    if (style.gap(Math.abs(f.difference())).equals(style.gap(0))) {
      return "square, both diagonals " + style.length(f.fromLeft());
    }
    return "diagonals "
        + style.length(f.fromLeft())
        + " and "
        + style.length(f.fromRight())
        + ", "
        + style.gap(Math.abs(f.difference()))
        + " apart: out of square by "
        + style.gap(Math.abs(f.shift()))
        + ", "
        + Angle.degrees(Math.abs(f.angle()));
  }

  private static String level(SeatLevel l, TextStyle style) {
    String sideways =
        style.gap(l.outOfLevel()).equals(style.gap(0))
            ? "level from side to side"
            : "out of level from side to side by " + style.gap(l.outOfLevel());
    String text = "the seat is " + sideways;
    double fall = -l.foreAft();
    return Math.abs(fall) < Math.toRadians(0.005)
        ? text + " and from front to back"
        : text
            + ", and "
            + (fall > 0 ? "falls " : "rises ")
            + Angle.degrees(Math.abs(fall))
            + " to the back";
  }

  private static String grain(GrainRun g, TextStyle style) {
    String text =
        g.part()
            + ": at most "
            + Angle.degrees(g.slope())
            + " off its line, "
            + style.length(g.steepest().z())
            + " above the floor";
    return Double.isInfinite(g.fibre())
        ? text + "; every fibre whole"
        : text + "; shortest fibre " + style.length(g.fibre());
  }

  private static String between(MortisePair m, TextStyle style) {
    return style.length(m.wood())
        + " in "
        + m.part()
        + ", between \""
        + m.first()
        + "\" and \""
        + m.second()
        + "\"";
  }
}
