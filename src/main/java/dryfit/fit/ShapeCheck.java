package dryfit.fit;

import dryfit.document.Design;
import dryfit.document.FitLimit;
import dryfit.fit.ChairMeasure.Foot;
import dryfit.fit.ChairMeasure.FrameSquare;
import dryfit.fit.ChairMeasure.SeatLevel;
import dryfit.fit.ChairMeasure.Stance;
import dryfit.fit.Finding.Severity;
import dryfit.measure.Angle;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * How the chair stands and whether it is square. {@code rocks}: a foot off the floor by more than
 * the limit. {@code tips-over}: its own weight is not between its feet. {@code out-of-square}: the
 * diagonals of a frame differ by more than the limit. {@code out-of-level}: the seat is higher on
 * one side by more than the limit. Exactly at a limit passes.
 */
final class ShapeCheck {
  private ShapeCheck() {}

  static List<Finding> findings(Assembly assembly, ChairMeasure whole) {
    List<Finding> out = new ArrayList<>();
    whole.stance().ifPresent(s -> stance(assembly, s, out));
    whole.frames().forEach(f -> square(assembly, f, out));
    whole.level().ifPresent(l -> level(assembly, l, out));
    return out;
  }

  private static void stance(Assembly assembly, Stance stance, List<Finding> out) {
    if (!stance.stands()) {
      out.add(
          feet(stance, Found.of("tips-over", Severity.LOOK))
              .source(Source.geometry("a chair stands only with its weight between its feet"))
              .says(
                  "The chair would tip over by itself: its weight is not between its feet; move the"
                      + " feet out. A chair that tips can hurt its sitter: try it with a weight on"
                      + " the seat, and follow the standards that hold where you are.",
                  "/parts",
                  stance.middle()));
      return;
    }
    Limit limit = Limit.of(assembly.chair().design(), FitLimit.ROCK);
    double rock = stance.rock();
    if (rock <= limit.value() + Tolerances.contact()) {
      return;
    }
    Foot high = stance.feet().stream().reduce((a, b) -> b.gap() > a.gap() ? b : a).orElseThrow();
    List<Foot> trimmed = stance.feet().stream().filter(f -> f.trim() > 0).toList();
    String cure =
        trimmed.size() == 2
            ? "take "
                + assembly.gap(trimmed.get(0).trim())
                + " off the feet of "
                + trimmed.get(0).part()
                + " and "
                + trimmed.get(1).part()
                + ", or lengthen "
                + high.part()
                + " by "
                + assembly.gap(high.gap())
            : "shorten the others until it stands, or lengthen it by " + assembly.gap(high.gap());
    out.add(
        feet(stance, Found.of("rocks", Severity.LOOK))
            .atMost(limit.value(), rock)
            .source(limit.source())
            .says(
                "The chair rocks: the foot of "
                    + high.part()
                    + " is "
                    + assembly.gap(rock)
                    + " off the floor; "
                    + cure
                    + ".",
                "/parts",
                high.at()));
  }

  private static Found feet(Stance stance, Found found) {
    stance.feet().forEach(f -> found.part(f.part()));
    return found;
  }

  private static void square(Assembly assembly, FrameSquare frame, List<Finding> out) {
    Limit limit = Limit.of(assembly.chair().design(), FitLimit.OUT_OF_SQUARE);
    double difference = Math.abs(frame.difference());
    if (difference <= limit.value() + Tolerances.contact()) {
      return;
    }
    String side = left(assembly) == frame.difference() > 0 ? "left" : "right";
    String what = frame.which().equals("seat") ? "its front" : "its feet";
    out.add(
        Found.of("out-of-square", Severity.LOOK)
            .atMost(limit.value(), difference)
            .source(limit.source())
            .says(
                "The "
                    + frame.which()
                    + " frame is out of square: its diagonals differ by "
                    + assembly.gap(difference)
                    + "; "
                    + what
                    + " must come "
                    + assembly.gap(Math.abs(frame.shift()))
                    + " ("
                    + Angle.degrees(Math.abs(frame.angle()))
                    + ") away from the "
                    + side
                    + ".",
                "/parts",
                frame.at()));
  }

  /** Whether printed left is the left as you face the chair. */
  private static boolean left(Assembly assembly) {
    return assembly.chair().design().labels() == Design.Labels.AS_YOU_FACE_IT;
  }

  private static void level(Assembly assembly, SeatLevel level, List<Finding> out) {
    Limit limit = Limit.of(assembly.chair().design(), FitLimit.OUT_OF_LEVEL);
    double off = level.outOfLevel();
    if (off <= limit.value() + Tolerances.contact()) {
      return;
    }
    boolean rightUp = level.sideways() > 0;
    out.add(
        Found.of("out-of-level", Severity.LOOK)
            .part(level.corners().get(0).part())
            .part(level.corners().get(1).part())
            .atMost(limit.value(), off)
            .source(limit.source())
            .says(
                "The seat slopes sideways by "
                    + Angle.degrees(Math.abs(level.sideways()))
                    + ": it is "
                    + assembly.gap(off)
                    + " higher on the "
                    + (rightUp == left(assembly) ? "right" : "left")
                    + "; make the legs of that side so much shorter, and see that front and back"
                    + " legs have not changed places.",
                "/parts",
                level.corners().get(rightUp ? 1 : 0).at()));
  }
}
