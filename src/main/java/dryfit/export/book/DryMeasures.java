package dryfit.export.book;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.document.JointPlan;
import dryfit.export.TextStyle;
import dryfit.fit.ChairMeasure;
import dryfit.fit.FitReport;
import dryfit.fit.JointDetail.Setback;
import dryfit.fit.JointFit;
import dryfit.fit.order.Assembling;
import dryfit.fit.order.Step;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** What can be measured while the chair is together dry, and what the fit measured there. */
final class DryMeasures {
  private final FitReport report;
  private final Chair chair;
  private final Assembling order;
  private final TextStyle style;
  private final List<Measure> all = new ArrayList<>();

  private DryMeasures(FitReport report, Assembling order, TextStyle style) {
    this.report = report;
    this.chair = report.chair();
    this.order = order;
    this.style = style;
  }

  /**
   * One measure.
   *
   * @param after number of the step of assembly after which it can be taken, from 1
   * @param value as the fit measured it, mm
   */
  record Measure(int after, String what, String expected, double value) {}

  /** All of them, in the order in which they can be taken. */
  static List<Measure> of(FitReport report, Assembling order, TextStyle style) {
    DryMeasures measures = new DryMeasures(report, order, style);
    report.joints().stream()
        .filter(j -> j.joint().plan().kind() != JointPlan.Kind.GROOVE)
        .forEach(measures::joint);
    report.whole().frames().forEach(measures::frame);
    report.whole().level().ifPresent(measures::level);
    report.whole().stance().ifPresent(measures::stance);
    return measures.all.stream().sorted(Comparator.comparingInt(Measure::after)).toList();
  }

  private void joint(JointFit fit) {
    int after = after(Set.of(fit.joint().tenoned(), fit.joint().mortised()));
    String label = fit.joint().label();
    fit.detail()
        .reveal()
        .ifPresent(
            reveal -> {
              for (Setback s : reveal.sides()) {
                String how = s.by() < 0 ? " stands proud" : " stands back";
                add(
                    after,
                    label + ": " + s.face() + how,
                    length(Math.abs(s.by())),
                    Math.abs(s.by()));
              }
            });
    if (fit.joint().through() && fit.joint().plan().proud() > 0) {
      double proud = fit.joint().length() - fit.depthAlong();
      add(after, label + ": tenon stands proud", length(proud), proud);
    }
    fit.shoulder().greatest().stream()
        .boxed()
        .filter(g -> !style.gap(g).equals(style.gap(0)))
        .forEach(g -> add(after, label + ": gap at the shoulder, at most", style.gap(g), g));
  }

  private void frame(ChairMeasure.FrameSquare frame) {
    int after = after(legs(frame.which()));
    String seat = frame.which().equals("seat") ? "front " : "";
    String name = frame.which() + " frame, diagonal from the " + seat;
    boolean seated = chair.design().labels() == dryfit.document.Design.Labels.AS_SEATED;
    String foot = seat.isEmpty() ? " foot" : "";
    add(
        after,
        name + (seated ? "right" : "left") + foot,
        length(frame.fromLeft()),
        frame.fromLeft());
    add(
        after,
        name + (seated ? "left" : "right") + foot,
        length(frame.fromRight()),
        frame.fromRight());
  }

  private void level(ChairMeasure.SeatLevel level) {
    for (int i = 0; i < level.corners().size(); i++) {
      double height = level.heights().get(i);
      add(
          order.steps().size(),
          "seat above the floor at " + level.corners().get(i).part(),
          length(height),
          height);
    }
  }

  private void stance(ChairMeasure.Stance stance) {
    add(order.steps().size(), "it rocks by", style.gap(stance.rock()), stance.rock());
  }

  private String length(double mm) {
    return style.length(mm);
  }

  private void add(int after, String what, String expected, double value) {
    all.add(new Measure(after, what, expected, value));
  }

  /** The feet that a frame stands on: the two in front, the two behind, or all. */
  private Set<Integer> legs(String which) {
    List<String> feet =
        report.whole().stance().stream()
            .flatMap(s -> s.feet().stream())
            .sorted(Comparator.comparingDouble(f -> f.at().y()))
            .map(ChairMeasure.Foot::part)
            .toList();
    List<String> labels =
        switch (which) {
          case "front" -> feet.subList(0, Math.min(2, feet.size()));
          case "back" -> feet.subList(Math.max(0, feet.size() - 2), feet.size());
          default -> feet;
        };
    Set<Integer> out = new TreeSet<>();
    List<Part> parts = chair.parts();
    for (int i = 0; i < parts.size(); i++) {
      if (labels.contains(parts.get(i).label())) {
        out.add(i);
      }
    }
    return out;
  }

  /** The first step that has all these parts in one group; the last if none has. */
  private int after(Set<Integer> parts) {
    for (int i = 0; i < order.steps().size(); i++) {
      Step step = order.steps().get(i);
      Set<Integer> group = new TreeSet<>(step.onto());
      step.moves().forEach(m -> group.addAll(m.parts()));
      if (group.containsAll(parts)) {
        return i + 1;
      }
    }
    return order.steps().size();
  }
}
