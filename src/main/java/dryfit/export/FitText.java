package dryfit.export;

import dryfit.build.Chair;
import dryfit.document.Design;
import dryfit.fit.Finding;
import dryfit.fit.Finding.Severity;
import dryfit.fit.FitReport;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/**
 * The dry fit as text for a terminal of eighty columns: the joints first, then what was found, and
 * the answer as the last line.
 */
public final class FitText {
  private static final String CAUTION =
      "Caution: a solid that fits says nothing about strength, the wood in your hand, or how it"
          + " will move. Use guards and sharp tools, and follow your machines' manuals and local"
          + " codes. Where people depend on a load being carried, ask a licensed professional.";

  private final FitReport report;
  private final TextStyle style;
  private final boolean all;
  private final StringBuilder out = new StringBuilder();

  private FitText(FitReport report, TextStyle style, boolean all) {
    this.report = report;
    this.style = style;
    this.all = all;
  }

  /** The whole report, each line ended by a line feed. */
  public static String of(FitReport report, TextStyle style) {
    return of(report, style, false);
  }

  /**
   * The whole report, each line ended by a line feed.
   *
   * @param all with every side of every joint, the grain, and the wood between mortises
   */
  public static String of(FitReport report, TextStyle style, boolean all) {
    FitText text = new FitText(report, style, all);
    text.heading();
    text.joints();
    text.whole();
    text.findings();
    text.line("");
    Wrapped.lines("", "", CAUTION).forEach(text::line);
    text.line("");
    text.line(text.answer());
    return text.out.toString();
  }

  /** The last line on its own: whether it fits, and what was found. */
  public static String answer(FitReport report, TextStyle style) {
    return new FitText(report, style, false).answer();
  }

  private void line(String text) {
    out.append(text.stripTrailing()).append('\n');
  }

  private void heading() {
    Chair chair = report.chair();
    Design design = chair.design();
    line(style.bold(design.name()) + " · " + design.variant());
    if (!design.about().isBlank()) {
      Wrapped.lines("", "", design.about()).forEach(this::line);
    }
    String unit = design.unit() == Design.LengthUnit.IN ? "inches" : "millimetres";
    line(
        count(chair.parts().size(), "part")
            + ", "
            + count(chair.joints().size(), "joint")
            + " · "
            + design.timber()
            + " · lengths in "
            + unit);
    line(
        design.labels() == Design.Labels.AS_SEATED
            ? "Left and right are as you sit in the chair."
            : "Left and right are as you face the chair.");
    divisions();
  }

  /** What stands in brackets behind a fraction of an inch. */
  private void divisions() {
    if (style.inches() && !style.decimals()) {
      Wrapped.lines(
              "",
              "",
              "Inches to the nearest 1/"
                  + style.denominator()
                  + "; (−0.004) behind one is 4 thousandths less than it says, (+0.004) more.")
          .forEach(this::line);
    }
  }

  private void joints() {
    JointText text = new JointText(report.chair(), style, all);
    for (List<String> block : text.blocks(report.joints())) {
      line("");
      line(style.bold(block.get(0)));
      block.subList(1, block.size()).forEach(this::line);
    }
  }

  private void whole() {
    List<String> lines = WholeText.lines(report.whole(), style, all);
    if (!lines.isEmpty()) {
      line("");
      line(style.bold("the chair together"));
      lines.forEach(this::line);
    }
  }

  private void findings() {
    int number = 1;
    number = section(number, Severity.STOPS, false, "STOPS THE BUILD", style::red);
    number = section(number, Severity.LOOK, false, "LOOK AT THIS", style::amber);
    number = section(number, Severity.KNOW, false, "FOR YOUR INFORMATION", style::bold);
    section(number, null, true, "ACCEPTED BY THE MAKER", style::bold);
  }

  private int section(
      int from, Severity severity, boolean waived, String title, UnaryOperator<String> ink) {
    List<Finding> found =
        report.findings().stream()
            .filter(f -> f.waived().isPresent() == waived)
            .filter(f -> waived || f.severity() == severity)
            .toList();
    if (!found.isEmpty()) {
      line("");
      line(ink.apply(title));
    }
    int number = from;
    for (List<Finding> alike : FindingText.alike(found)) {
      FindingText.lines(number++, alike, style).forEach(this::line);
    }
    return number;
  }

  private String answer() {
    List<String> rest = new ArrayList<>();
    counted(Finding::stopsTheBuild, "stops the build", "stop the build").ifPresent(rest::add);
    counted(open(Severity.LOOK), "to look at", "to look at").ifPresent(rest::add);
    counted(open(Severity.KNOW), "to know", "to know").ifPresent(rest::add);
    counted(f -> f.waived().isPresent(), "accepted by the maker", "accepted by the maker")
        .ifPresent(rest::add);
    String tail = String.join(", ", rest);
    if (!report.fits()) {
      return style.red("DOES NOT FIT") + ": " + tail;
    }
    String seated = count(report.joints().size(), "joint") + " seated, nothing stops the build";
    Optional<String> taken =
        counted(
            Finding::wouldStopTheBuild,
            "would stop the build, had you not accepted it",
            "would stop the build, had you not accepted them");
    if (taken.isPresent()) {
      return style.amber("FITS ONLY AS ACCEPTED")
          + ": "
          + taken.get()
          + (tail.isEmpty() ? "" : "; " + tail);
    }
    return style.green("FITS") + ": " + seated + (tail.isEmpty() ? "" : "; " + tail);
  }

  /** So many as the list has numbers; those of both hands are told as one there. */
  private Optional<String> counted(Predicate<Finding> which, String one, String more) {
    List<Finding> found = report.findings().stream().filter(which).toList();
    int listed = FindingText.alike(found).size();
    if (listed == 0) {
      return Optional.empty();
    }
    String text = listed + " " + (listed == 1 ? one : more);
    return Optional.of(
        listed == found.size() ? text : text + " (" + found.size() + " counting both hands)");
  }

  private static Predicate<Finding> open(Severity severity) {
    return f -> f.waived().isEmpty() && f.severity() == severity;
  }

  private static String count(int n, String thing) {
    return String.format(Locale.ROOT, "%d %s%s", n, thing, n == 1 ? "" : "s");
  }
}
