package dryfit.export;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.document.Hand;
import dryfit.document.JointPlan;
import dryfit.document.JointPlan.Kind;
import dryfit.fit.FitReport;
import dryfit.fit.JointAngles;
import dryfit.fit.JointFit;
import dryfit.fit.JointFit.Gap;
import java.util.ArrayList;
import java.util.List;

/** A joint's figures as a few lines. A pair whose lines are alike is written once. */
public final class JointText {
  /** Stands for a blank at which a line is not to be broken. */
  static final char KEEP = '\u00a0';

  private final Chair chair;
  private final TextStyle style;
  private final boolean all;
  private final AngleText angleText;

  /**
   * @param all with every side by itself
   */
  JointText(Chair chair, TextStyle style, boolean all) {
    this.chair = chair;
    this.style = style;
    this.all = all;
    this.angleText = new AngleText(style);
  }

  /** One joint, or both of a pair that are alike, and what is told of it. */
  public record Joints(JointFit fit, boolean both, Told told) {}

  /**
   * All joints of a fit with every side by itself, those of a pair once if their main figures are
   * alike: then as the first of them is.
   */
  public static List<Joints> told(FitReport report, TextStyle style) {
    JointText full = new JointText(report.chair(), style, true);
    return new JointText(report.chair(), style, false)
        .told(report.joints()).stream()
            .map(j -> new Joints(j.fit(), j.both(), full.told(j.fit(), j.both())))
            .toList();
  }

  /** One block for each joint, or for both of a pair, in the order given. */
  List<List<String>> blocks(List<JointFit> joints) {
    return told(joints).stream().map(j -> block(j.told())).toList();
  }

  private List<Joints> told(List<JointFit> joints) {
    List<Joints> out = new ArrayList<>();
    boolean[] done = new boolean[joints.size()];
    for (int i = 0; i < joints.size(); i++) {
      if (!done[i]) {
        int twin = twin(joints, i, done);
        if (twin >= 0) {
          done[twin] = true;
        }
        out.add(new Joints(joints.get(i), twin >= 0, told(joints.get(i), twin >= 0)));
      }
    }
    return out;
  }

  /** The joint of the other hand that would be written just the same; -1 if there is none. */
  private int twin(List<JointFit> joints, int i, boolean[] done) {
    JointFit one = joints.get(i);
    for (int k = i + 1; k < joints.size(); k++) {
      JointFit other = joints.get(k);
      boolean pair =
          !done[k]
              && one.joint().hand() != Hand.NONE
              && one.joint().hand() == other.joint().hand().other()
              && one.joint().name().equals(other.joint().name());
      if (pair && told(one, true).equals(told(other, true))) {
        return k;
      }
    }
    return -1;
  }

  private static List<String> block(Told told) {
    List<String> out = new ArrayList<>(List.of(told.title()));
    for (Told.Row row : told.rows()) {
      String start = String.format(java.util.Locale.ROOT, "  %-10s", row.name());
      Wrapped.lines(start, " ".repeat(start.length()), row.text())
          .forEach(line -> out.add(line.replace(KEEP, ' ')));
    }
    return out;
  }

  private Told told(JointFit fit, boolean both) {
    JointPlan plan = fit.joint().plan();
    List<Told.Row> out = new ArrayList<>();
    String hand = both ? "both hands" : printed(fit.joint().label(), fit.joint().hand());
    String title = fit.joint().name() + (hand.isEmpty() ? "" : ", " + hand);
    if (chair.isHeldByPieces(fit.joint())) {
      title += ", in " + chair.parts().get(fit.joint().mortised()).name();
    }
    title += "  (" + plan.kind().word().replace('-', ' ') + ")";
    row(out, "", who(fit, both));
    new KindText(chair, style).rows(fit.joint()).forEach(r -> row(out, r.name(), r.text()));
    row(out, "gaps", gaps(fit));
    fit.wall().ifPresent(w -> row(out, "wall", style.length(w) + wallFace(fit)));
    JointAngles angles = JointAngles.of(chair, fit.joint());
    angles.mortise().ifPresent(m -> rows(out, "lean", angleText.lean(m)));
    if (plan.kind() != Kind.GLUED) {
      row(out, "depth", depth(fit));
    }
    angles
        .shoulder()
        .ifPresent(
            s -> {
              List<String> lines = new ArrayList<>(AngleText.scribed(chair, fit.joint()));
              lines.addAll(angleText.shoulder(s));
              rows(out, "shoulder", lines);
            });
    if (fit.glueLong() + fit.glueOther() > 0) {
      row(out, plan.kind() == Kind.SCREWED ? "contact" : "glue", glue(fit));
    }
    if (all) {
      DetailText.rows(fit.detail(), style).forEach(r -> row(out, r.name(), r.text()));
    }
    return new Told(title, out);
  }

  /** The hand as the label has it: labels may be meant as seated. */
  private static String printed(String label, Hand hand) {
    if (hand == Hand.NONE) {
      return "";
    }
    for (String word : List.of("right", "left")) {
      if (label.endsWith(word)) {
        return word;
      }
    }
    return hand.suffix().strip();
  }

  private String who(JointFit fit, boolean both) {
    Part tenoned = chair.parts().get(fit.joint().tenoned());
    Part mortised = chair.parts().get(fit.joint().mortised());
    if (chair.isHeldByPieces(fit.joint())) {
      String pieces = fit.joint().tenons().size() == 1 ? "the same piece" : "the same pieces";
      return pieces + ", into " + (both ? mortised.name() : mortised.label());
    }
    if (fit.joint().plan().tenon().end() == JointPlan.End.MIDDLE) {
      return both
          ? tenoned.name() + ", to " + mortised.name()
          : tenoned.label() + ", to " + mortised.label();
    }
    boolean oneBetweenTwo = fit.joint().plan().tenon().end() == JointPlan.End.BOTH && both;
    String end = oneBetweenTwo ? "both ends" : chair.endWord(fit.joint()) + " end";
    return both
        ? tenoned.name() + ", " + end + ", into " + mortised.name()
        : tenoned.label() + ", " + end + ", into " + mortised.label();
  }

  private String gaps(JointFit fit) {
    List<String> out = new ArrayList<>();
    gap(out, "cheek", fit.cheek());
    gap(out, "edge", fit.edge());
    gap(out, "bottom", fit.bottom());
    gap(out, "shoulder", fit.shoulder());
    return together(out);
  }

  private void gap(List<String> out, String name, Gap gap) {
    if (gap.least().isPresent() && gap.greatest().isPresent()) {
      String least = style.gap(gap.least().getAsDouble());
      String greatest = style.gap(gap.greatest().getAsDouble());
      String number = least.substring(0, least.indexOf(' '));
      out.add(name + " " + (least.equals(greatest) ? least : number + " to " + greatest));
    }
  }

  /** Joined by dots, breaking only at the dots. */
  private static String together(List<String> items) {
    return String.join(" · ", items.stream().map(i -> i.replace(' ', KEEP)).toList());
  }

  private static String wallFace(JointFit fit) {
    return fit.wallFace().isEmpty() ? " left" : " left, to " + fit.wallFace();
  }

  private String depth(JointFit fit) {
    String square = style.length(fit.depthSquare());
    String along = style.length(fit.depthAlong());
    return square.equals(along)
        ? square
        : together(List.of(square + " square to the face", along + " along the tenon"));
  }

  private String glue(JointFit fit) {
    String text = style.area(fit.glueLong()) + " long grain to long grain";
    return fit.glueOther() > 0 ? text + ", " + style.area(fit.glueOther()) + " end grain" : text;
  }

  /** Lines that stand under one name; one that begins with blanks keeps them. */
  private static void rows(List<Told.Row> out, String name, List<String> lines) {
    for (int i = 0; i < lines.size(); i++) {
      String text = lines.get(i);
      String kept = text.startsWith("  ") ? KEEP + "" + KEEP + text.strip() : text;
      row(out, i == 0 ? name : "", kept);
    }
  }

  private static void row(List<Told.Row> out, String name, String text) {
    if (!text.isEmpty()) {
      out.add(new Told.Row(name, text));
    }
  }
}
