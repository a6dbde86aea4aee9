package dryfit.export;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.document.Design;
import dryfit.document.Hand;
import dryfit.fit.FitReport;
import dryfit.fit.JointAngles;
import dryfit.fit.JointFit;
import dryfit.fit.RakeAndSplay;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Every angle of a chair for the bench, in eighty columns: how the upright parts lean, and for each
 * joint that is not square its shoulder, its saw setting and its mortise. A pair is written once,
 * with what changes from hand to hand.
 */
public final class AnglesText {
  private final FitReport report;
  private final Chair chair;
  private final TextStyle style;
  private final StringBuilder out = new StringBuilder();

  private AnglesText(FitReport report, TextStyle style) {
    this.report = report;
    this.chair = report.chair();
    this.style = style;
  }

  /** The whole text, each line ended by a line feed. */
  public static String of(FitReport report, TextStyle style) {
    AnglesText text = new AnglesText(report, style);
    text.heading();
    text.uprights();
    text.joints();
    return text.out.toString();
  }

  private void line(String text) {
    out.append(text.stripTrailing()).append('\n');
  }

  private void paragraph(String text) {
    Wrapped.lines("", "", text).forEach(this::line);
  }

  private void heading() {
    Design design = chair.design();
    line(style.bold(design.name()) + " · " + design.variant() + " · angles to set out");
    paragraph(
        "Each angle is given off square (0 is square), from an edge (90 is square), and as a slope,"
            + " rise over run. Left and right are as you "
            + (design.labels() == Design.Labels.AS_SEATED ? "sit in" : "face")
            + " the chair.");
  }

  private void uprights() {
    RakeText text = new RakeText(chair, style);
    List<List<String>> blocks = text.blocks(RakeAndSplay.of(chair));
    if (!blocks.isEmpty()) {
      line("");
      line(style.bold("UPRIGHT PARTS"));
    }
    blocks.forEach(this::block);
  }

  private void block(List<String> lines) {
    line("");
    line(style.bold(lines.get(0)));
    lines.subList(1, lines.size()).forEach(this::line);
  }

  private void joints() {
    Set<String> square = new LinkedHashSet<>();
    List<JointFit> joints = report.joints();
    boolean[] done = new boolean[joints.size()];
    boolean titled = false;
    for (int i = 0; i < joints.size(); i++) {
      if (done[i]) {
        continue;
      }
      JointFit fit = joints.get(i);
      JointAngles angles = JointAngles.of(chair, fit.joint());
      if (isSquare(angles)) {
        square.add(fit.joint().name());
        continue;
      }
      if (!titled) {
        line("");
        line(style.bold("JOINTS"));
        titled = true;
      }
      List<String> both = lines(fit, angles, true);
      int twin = twin(joints, i, both);
      if (twin >= 0) {
        done[twin] = true;
      }
      block(twin >= 0 ? both : lines(fit, angles, false));
    }
    if (!square.isEmpty()) {
      line("");
      paragraph("Square in every way: " + String.join("; ", square) + ".");
    }
  }

  private static boolean isSquare(JointAngles angles) {
    return angles.shoulder().map(s -> s.offSquare().isSquare()).orElse(true)
        && angles.mortise().map(m -> m.lean().isSquare()).orElse(true);
  }

  private int twin(List<JointFit> joints, int i, List<String> both) {
    Joint one = joints.get(i).joint();
    for (int k = i + 1; k < joints.size(); k++) {
      Joint other = joints.get(k).joint();
      if (one.hand() != Hand.NONE
          && one.hand() == other.hand().other()
          && one.name().equals(other.name())
          && both.equals(lines(joints.get(k), JointAngles.of(chair, other), true))) {
        return k;
      }
    }
    return -1;
  }

  private List<String> lines(JointFit fit, JointAngles angles, boolean both) {
    Joint joint = fit.joint();
    Rows rows = new Rows(both ? joint.name() + ", both hands" : joint.label());
    rows.add("", chair.parts().get(joint.tenoned()).name() + ", " + end(joint, both));
    AngleText text = new AngleText(style);
    angles
        .shoulder()
        .ifPresent(
            shoulder -> {
              List<String> scribed = AngleText.scribed(chair, joint);
              List<String> told = new ArrayList<>(scribed);
              told.addAll(text.shoulderInFull(shoulder));
              rows.addAll("shoulder", told);
              shoulder
                  .saw()
                  .filter(saw -> scribed.isEmpty() && !shoulder.offSquare().isSquare())
                  .ifPresent(saw -> rows.addAll("saw", text.saw(saw, hands(joint, both))));
            });
    angles
        .mortise()
        .ifPresent(
            mortise -> {
              rows.add("", "mortise in " + chair.parts().get(joint.mortised()).name());
              rows.addAll("lean", text.lean(mortise));
              if (!mortise.lean().isSquare()) {
                rows.addAll("sight", text.sight(mortise));
                rows.addAll("opening", text.opening(mortise));
              }
              rows.addAll("depth", text.depth(fit, mortise));
            });
    return rows.lines();
  }

  private String end(Joint joint, boolean both) {
    String word = chair.endWord(joint);
    boolean ownEnds = word.equals("left") || word.equals("right");
    return both && ownEnds ? "both ends" : word + " end";
  }

  /** The printed words of the hands a block stands for, the joint's own first. */
  private List<String> hands(Joint joint, boolean both) {
    if (joint.hand() == Hand.NONE) {
      return List.of("");
    }
    boolean seated = chair.design().labels() == Design.Labels.AS_SEATED;
    List<String> words = new ArrayList<>();
    words.add(word(joint.hand(), seated));
    if (both) {
      words.add(word(joint.hand().other(), seated));
    }
    return words;
  }

  private static String word(Hand hand, boolean seated) {
    Hand printed = seated ? hand.other() : hand;
    return printed.name().toLowerCase(Locale.ROOT);
  }
}
