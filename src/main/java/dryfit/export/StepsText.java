package dryfit.export;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.document.Hand;
import dryfit.measure.Angle;
import dryfit.shop.Step;
import dryfit.shop.Steps;
import java.util.List;
import java.util.Locale;

/** The order of cuts of every part as text for a terminal of eighty columns. */
public final class StepsText {
  private static final String CAUTION =
      "Caution: this order is a plan, not an instruction for your machine. Keep its guard and its"
          + " manual, hold the work so that it cannot turn, and wear protection for eyes, ears and"
          + " lungs.";

  /** Why edges come after everything else. */
  private static final String LAST = ", now that no line is measured from them.";

  private final TextStyle style;

  private StepsText(TextStyle style) {
    this.style = style;
  }

  /** Every part once; of a pair the right-hand one. Each line ended by a line feed. */
  public static String of(Chair chair, TextStyle style) {
    StepsText text = new StepsText(style);
    StringBuilder out = new StringBuilder();
    out.append(style.bold(chair.design().name() + ": the order of cuts")).append('\n');
    for (Steps steps : Steps.of(chair)) {
      Part part = chair.parts().get(steps.part());
      if (part.hand() == Hand.LEFT) {
        continue;
      }
      boolean pair = part.hand() == Hand.RIGHT;
      out.append('\n')
          .append(style.bold(pair ? part.label() + " (the other one mirrored)" : part.label()))
          .append('\n');
      int number = 1;
      for (Step step : steps.steps()) {
        String first = String.format(Locale.ROOT, "%3d  ", number++);
        append(out, Wrapped.lines(first, "     ", text.sentence(step)));
      }
    }
    out.append('\n');
    append(out, Wrapped.lines("", "", CAUTION));
    return out.toString();
  }

  private static void append(StringBuilder out, List<String> lines) {
    lines.forEach(line -> out.append(line.stripTrailing()).append('\n'));
  }

  /** One step in one sentence. */
  public static String sentence(Step step, TextStyle style) {
    return new StepsText(style).sentence(step);
  }

  private String sentence(Step step) {
    String about = "\"" + step.about() + "\"";
    return switch (step.kind()) {
      case CUT_OUT -> "Cut the blank out, " + block(step) + " as in the cut list.";
      case SQUARE -> "Square it to " + block(step) + ".";
      case MARK -> "Mark face side and face edge, and which way is up, front and outside.";
      case BEND ->
          "Bend it, and let it keep its shape before any joint is marked: "
              + size(step, 0)
              + " along its middle, no tighter than a radius of "
              + size(step, 1)
              + ".";
      case FINISH_PLANE ->
          "Finish-plane it now: planed after its housing is cut it would be loose in it.";
      case FOOT ->
          "Cut the foot, "
              + angle(step.angle())
              + ", before any height is measured from it: "
              + size(step, 0)
              + " on the long side, "
              + size(step, 1)
              + " on the short side.";
      case HEAD -> "Cut the top level, " + angle(step.angle()) + ".";
      case MORTISE ->
          "Cut the mortise of "
              + about
              + " in the "
              + step.face()
              + " face, "
              + size(step, 0)
              + " deep, "
              + angle(step.angle())
              + ".";
      case MORTISE_BEFORE_SAWING ->
          "Cut the mortise of "
              + about
              + " square from the "
              + step.face()
              + " face of the blank, while that is flat: "
              + size(step, 0)
              + " deep"
              + (step.sizes().get(1) < 0.05
                  ? "."
                  : ", of which " + size(step, 1) + " are sawn or turned away later.");
      case MORTISE_LYING_FLAT ->
          onFinishedFace(step, about, "with the part lying on its " + step.face() + " face");
      case MORTISE_IN_OFFCUTS ->
          onFinishedFace(step, about, "with the part held between its own offcuts");
      case MORTISE_IN_A_CRADLE -> onFinishedFace(step, about, "with the part in a V-shaped cradle");
      case FLARE ->
          "Open the mortise of "
              + about
              + " from inside to the far face, "
              + style.gap(step.sizes().get(0))
              + " at each end, for the wedges to press against.";
      case PILOT ->
          "Bore the pilot holes of "
              + about
              + ", "
              + size(step, 0)
              + " deep, "
              + size(step, 1)
              + " wide.";
      case CLEARANCE -> clearance(step, about);
      case SLANT ->
          "That tenon slants in its part: "
              + angle(step.angle())
              + ", its cheeks "
              + style.gap(step.sizes().get(0))
              + " aside at the tip. Mark both edges before you saw.";
      case KERF ->
          "Saw "
              + (step.sizes().get(0) == 1
                  ? "one cut for a wedge"
                  : String.format(Locale.ROOT, "%.0f cuts for wedges", step.sizes().get(0)))
              + " into the tenon of "
              + about
              + ", across the grain of the mortised part, "
              + size(step, 1)
              + " from its far face towards the shoulder, "
              + style.gap(step.sizes().get(2))
              + " wide.";
      case PIN_HOLE ->
          "Bore for the pin of " + about + " through the mortise, before the tenon goes in.";
      case PIN_HOLE_IN_TENON ->
          step.sizes().get(0) > 0
              ? "Mark the pin's hole in the tenon of "
                  + about
                  + " through the mortise, and bore it "
                  + style.gap(step.sizes().get(0))
                  + " nearer to the shoulder."
              : "Bore for the pin of " + about + " in the tenon.";
      case REBATE ->
          "Cut the rebate at the edge "
              + step.about()
              + ", "
              + size(step, 0)
              + " wide, "
              + size(step, 1)
              + " deep.";
      case GROOVE -> "Plough the groove for " + step.about() + ", " + size(step, 0) + " deep.";
      case TENON ->
          "Cut shoulders, "
              + angle(step.angle())
              + ", and tenon of "
              + about
              + ", "
              + size(step, 0)
              + " long, while there are flat faces to mark from.";
      case TENON_ON_BENT ->
          "Cut shoulders, "
              + angle(step.angle())
              + ", and tenon of "
              + about
              + ", "
              + size(step, 0)
              + " long, marked from the end as it runs there.";
      case TURN_TENON ->
          "Turn the tenon of "
              + about
              + ", "
              + size(step, 0)
              + " long, its shoulder square as the lathe leaves it.";
      case TURN_END ->
          "Turn the end that goes in, "
              + about
              + ", "
              + size(step, 0)
              + " long; it has no shoulder.";
      case PARE_SHOULDER ->
          "Saw or pare the shoulder of "
              + about
              + " to lean "
              + angle(step.angle(), "the side")
              + "; it was turned square where its long side comes.";
      case SCRIBE ->
          "Scribe the shoulder of "
              + about
              + " to the face it meets, left long by what the settings tell for coping, and pare it"
              + " by trial; through its middle it runs "
              + angle(step.angle(), "the side")
              + ".";
      case HOUSED_END -> "Cut the end that is let in, " + about + ", " + size(step, 0) + " deep.";
      case SAW_FIRST -> "Saw the " + step.about() + " outline and keep the offcuts.";
      case SAW_SECOND ->
          "Put the offcuts back in their places and saw the " + step.about() + " outline.";
      case SAW ->
          step.about().equals("outline")
              ? "Saw the outline."
              : "Saw the " + step.about() + " outline.";
      case TAPER ->
          "Taper the "
              + step.about()
              + ", beginning "
              + size(step, 0)
              + " from its first end, until "
              + size(step, 2)
              + " are left "
              + (step.sizes().get(1) < 0.05 ? "at that end" : size(step, 1) + " from it")
              + ", now that the joints are cut.";
      case TURN -> "Turn it.";
      case BLOCK_END -> "Saw the end at " + step.about() + ", " + angle(step.angle()) + ".";
      case NOTCH ->
          "Cut it round "
              + step.about()
              + " with "
              + style.gap(step.sizes().get(0))
              + " to spare along the grain and "
              + style.gap(step.sizes().get(1))
              + " across it.";
      case HOLLOW -> "Hollow the top, " + size(step, 0) + " at the deepest place.";
      case EASE_FOOT -> "Chamfer the edge of the foot, " + size(step, 0) + ".";
      case EASE -> "Ease " + step.about() + ", " + size(step, 0) + " across the flat" + LAST;
      case CHAMFER -> "Chamfer " + step.about() + ", " + size(step, 0) + " on both faces" + LAST;
      case ROUND_OVER -> "Round over " + step.about() + ", radius " + size(step, 0) + LAST;
      case BREAK_EDGES ->
          "Take the sharpness off the edges, which are drawn square; do it last, for until now"
              + " lines are measured from them.";
    };
  }

  private String clearance(Step step, String about) {
    double slot = step.sizes().get(1);
    double head = step.sizes().get(2);
    return "Bore the clearance holes of "
        + about
        + ", "
        + size(step, 0)
        + " wide"
        + (slot > 0 ? ", and lengthen each by " + size(step, 1) + " across the grain" : "")
        + (head > 0 ? "; sink the heads by " + size(step, 2) : "")
        + ".";
  }

  private String onFinishedFace(Step step, String about, String held) {
    return "Cut the mortise of "
        + about
        + " on the finished face, for no flat face of the blank is square to it: "
        + size(step, 0)
        + " deep, "
        + angle(step.angle())
        + ", "
        + held
        + ".";
  }

  private String block(Step step) {
    return size(step, 0) + " × " + size(step, 1) + " × " + size(step, 2);
  }

  private String size(Step step, int i) {
    return style.length(step.sizes().get(i));
  }

  private static String angle(double radians) {
    return angle(radians, "the face");
  }

  private static String angle(double radians, String from) {
    // Less than shows in the two decimals of a degree.
    if (Math.abs(radians) < Math.toRadians(0.005)) {
      return "square";
    }
    return Angle.degrees(radians)
        + " off square ("
        + Angle.degrees(Math.PI / 2 - radians)
        + " from "
        + from
        + ")";
  }
}
