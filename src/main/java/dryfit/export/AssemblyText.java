package dryfit.export;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.document.Design;
import dryfit.fit.order.Assembling;
import dryfit.fit.order.Step;
import dryfit.fit.order.Step.Move;
import dryfit.fit.order.Stuck;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The order of assembly as text for a terminal of eighty columns; the answer is the last line. */
public final class AssemblyText {
  private static final String CAUTION =
      "Caution: this is found on rigid solids of the sizes as drawn. Rehearse every step dry, with"
          + " the clamps you will use, before there is glue on it, and mind how long your glue"
          + " stays open. Clamps can slip and crush: keep hands clear and follow the makers' manuals.";

  private static final String GLUE =
      "Glue goes on the joints that a step closes. What an earlier step made moves as one piece: no"
          + " joint that is closed has to open or shift again.";

  /** A share that prints as less than 1.00. */
  private static final double ALIKE = 0.995;

  private static final String INDENT = "     ";

  private final Assembling order;
  private final AssemblyWords words;
  private final TextStyle style;
  private final StringBuilder out = new StringBuilder();

  private AssemblyText(Assembling order, TextStyle style) {
    this.order = order;
    this.words = new AssemblyWords(order, style);
    this.style = style;
  }

  /** The whole report, each line ended by a line feed. */
  public static String of(Assembling order, TextStyle style) {
    AssemblyText text = new AssemblyText(order, style);
    text.heading();
    // What locks comes first: nobody begins with the rest.
    text.stuck();
    text.steps();
    text.marks();
    text.line("");
    text.wrapped("", "", CAUTION);
    text.line("");
    text.line(text.answer());
    return text.out.toString();
  }

  /** One step of the order in a sentence, and the motions of those that go together. */
  public static List<String> sentences(Assembling order, int step, TextStyle style) {
    AssemblyText text = new AssemblyText(order, style);
    Step one = order.steps().get(step);
    List<String> out = new ArrayList<>(List.of(text.sentence(one, step)));
    if (one.kind() == Step.Kind.TOGETHER) {
      one.moves().forEach(m -> out.add(text.words.group(m.parts(), step) + ": " + text.motion(m)));
    }
    if (!one.held().isEmpty()) {
      out.add(text.held(one));
    }
    return out;
  }

  /** Which parts also go in wrong, and the mark that prevents it. */
  public static List<String> marks(Assembling order, TextStyle style) {
    return new AssemblyWords(order, style).marks();
  }

  /** Why parts do not go together; nothing if they all do. */
  public static List<String> stuck(Assembling order, TextStyle style) {
    AssemblyWords words = new AssemblyWords(order, style);
    return Stream.concat(
            order.stuck().stream().flatMap(s -> words.why(s).stream()), words.openings().stream())
        .toList();
  }

  private void line(String text) {
    out.append(text.stripTrailing()).append('\n');
  }

  private void wrapped(String first, String rest, String text) {
    Wrapped.lines(first, rest, text).forEach(this::line);
  }

  private void heading() {
    Chair chair = order.chair();
    Design design = chair.design();
    line(style.bold(design.name()) + " · " + design.variant());
    line(chair.parts().size() + " parts, " + chair.joints().size() + " joints");
    line(
        design.labels() == Design.Labels.AS_SEATED
            ? "Left and right are as you sit in the chair."
            : "Left and right are as you face the chair.");
    for (List<Integer> glued : order.glued()) {
      wrapped("", "", "Put together beforehand: " + words.labels(glued) + ".");
    }
  }

  private void steps() {
    if (!order.steps().isEmpty()) {
      line("");
      line(style.bold(order.possible() ? "ORDER" : "ORDER OF THE REST, ONCE THAT IS FREE"));
      wrapped("", "", GLUE);
    }
    if (!order.steps().isEmpty() && order.asOne().size() == 1) {
      wrapped(
          "",
          "",
          "What is locked counts as one piece: " + words.labels(order.asOne().get(0)) + ".");
    }
    for (int i = 0; i < order.steps().size(); i++) {
      Step step = order.steps().get(i);
      String first = String.format(Locale.ROOT, "%3d  ", i + 1);
      wrapped(first, INDENT, sentence(step, i));
      if (step.kind() == Step.Kind.TOGETHER) {
        for (Move m : step.moves()) {
          wrapped(INDENT + "- ", INDENT + "  ", words.group(m.parts(), i) + ": " + motion(m));
        }
      }
      if (!step.closes().isEmpty()) {
        List<String> joints = step.closes().stream().map(Joint::label).toList();
        wrapped(INDENT + "closes ", INDENT + "  ", String.join("; ", joints));
      }
      for (Step.Aside aside : step.aside()) {
        wrapped(INDENT, INDENT + "  ", gives(aside));
      }
      if (!step.held().isEmpty()) {
        wrapped(INDENT, INDENT + "  ", held(step));
      }
    }
  }

  private String gives(Step.Aside aside) {
    return aside.joint().label()
        + ": goes in "
        + AssemblyWords.degrees(aside.off())
        + " off its own way; its clearance has to give "
        + style.length(aside.aside());
  }

  private String held(Step step) {
    return words.labels(step.held())
        + (step.held().size() == 1
            ? " is held from now on and must be in"
            : " are held from now on and must be in")
        + " before this step";
  }

  private String sentence(Step step, int index) {
    String onto = words.onto(step, index);
    if (step.kind() == Step.Kind.TOGETHER) {
      return "Start these joints all round, then close them together, a little at each in turn; "
          + onto
          + " stays where it is.";
    }
    Move move = step.moves().get(0);
    String what = words.group(move.parts(), index);
    String push = words.direction(move.push()) + " " + words.joining(step) + " " + onto;
    if (move.tip().isPresent()) {
      String angle = AssemblyWords.degrees(move.tip().get().angle());
      return "Tip " + what + " by " + angle + ", push it " + push + ", then turn it home.";
    }
    if (move.last().isPresent()) {
      Step.Leg last = move.last().get();
      return "Push "
          + what
          + " "
          + words.direction(move.push())
          + ", held "
          + style.length(last.far())
          + " off its place, then "
          + words.direction(last.push())
          + " "
          + words.joining(step)
          + " "
          + onto
          + ".";
    }
    return (step.closes().isEmpty() ? "Put " : "Push ") + what + " " + push + ".";
  }

  private String motion(Move move) {
    return words.direction(move.push())
        + (move.share() < ALIKE ? String.format(Locale.ROOT, ", %.2f as far", move.share()) : "");
  }

  private void stuck() {
    if (!order.possible()) {
      line("");
      line(style.red("CANNOT BE PUT TOGETHER"));
    }
    int number = 1;
    for (Stuck stuck : order.stuck()) {
      List<String> lines = new ArrayList<>(words.why(stuck));
      wrapped(String.format(Locale.ROOT, "%3d  ", number++), INDENT, lines.remove(0));
      for (String more : lines) {
        wrapped(INDENT + "- ", INDENT + "  ", more);
      }
    }
    for (String tried : words.openings()) {
      wrapped("  -  ", INDENT, tried);
    }
  }

  private void marks() {
    if (!order.marks().isEmpty()) {
      line("");
      line(style.bold("MARK THESE"));
      words.marks().forEach(m -> wrapped("  -  ", INDENT, m));
    }
  }

  private String answer() {
    if (order.possible()) {
      int n = order.steps().size();
      return style.green("GOES TOGETHER") + ": in " + n + (n == 1 ? " step" : " steps");
    }
    int n = order.stuck().size();
    return style.red("DOES NOT GO TOGETHER")
        + ": "
        + (n == 1 ? "one group of parts locks" : n + " groups of parts lock");
  }
}
