package dryfit.export;

import dryfit.document.Design;
import dryfit.fit.compare.Datum;
import dryfit.fit.spread.Cut;
import dryfit.fit.spread.Spread;
import dryfit.fit.spread.Spreads;
import dryfit.measure.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What the cuts of a chair add up to, as text; both hands as one. The last line is the answer. */
public final class SpreadText {
  private static final int SHORT = 10;
  private static final int CUTS = 3;

  /** A share of the variance below which a cut is not worth a word. */
  private static final double TELLS = 0.05;

  private final Spreads spreads;
  private final TextStyle style;
  private final StringBuilder out = new StringBuilder();

  private SpreadText(Spreads spreads, TextStyle style) {
    this.spreads = spreads;
    this.style = style;
  }

  /**
   * The report, each line ended by a line feed.
   *
   * @param all every figure, not only those most likely to be beyond their limits
   */
  public static String of(Spreads spreads, TextStyle style, boolean all) {
    SpreadText text = new SpreadText(spreads, style);
    text.asDrawn();
    text.figures(all);
    text.matters();
    text.reckoned();
    text.answer();
    return text.out.toString();
  }

  private void line(String text) {
    out.append(text).append('\n');
  }

  private void wrapped(String first, String rest, String text) {
    Wrapped.lines(first, rest, text).forEach(this::line);
  }

  private void asDrawn() {
    int stops = spreads.stops();
    if (stops > 0) {
      String found = stops + (stops == 1 ? " finding stops" : " findings stop");
      wrapped(
          "",
          "",
          style.red("DOES NOT FIT")
              + " as drawn: "
              + found
              + " the build, see \"fit\". Mend that first.");
      line("");
    }
  }

  private void figures(boolean all) {
    List<Spreads.Folded> folded = spreads.folded();
    List<Spreads.Folded> shown =
        all
            ? folded
            : folded.stream()
                .filter(f -> f.worst().chance() > 0 && !f.worst().beyondAsDrawn())
                .limit(SHORT)
                .toList();
    line(style.bold(all ? "Every figure" : "Most likely beyond their limit"));
    if (shown.isEmpty()) {
      line("  none");
    }
    shown.forEach(this::figure);
    long drawn = folded.stream().filter(f -> f.worst().beyondAsDrawn()).count();
    if (drawn > 0) {
      line("");
      wrapped(
          "",
          "",
          (drawn == 1 ? "One figure is" : drawn + " figures are")
              + " beyond the limit as drawn: see \"fit\".");
    }
  }

  private void figure(Spreads.Folded f) {
    Spread s = f.worst();
    line("");
    String subject = f.subject().isEmpty() ? "" : f.subject() + ": ";
    String hands = f.hands() > 1 ? " (" + f.hands() + " alike)" : "";
    wrapped("  ", "    ", subject + f.what() + hands);
    String chance = s.limited() ? "; " + chance(s) : "";
    wrapped(
        "    ",
        "    ",
        "planned "
            + value(s.figure().value())
            + "; 95 of 100: "
            + value(s.low())
            + " to "
            + value(s.high())
            + "; worst "
            + value(s.worstLow())
            + " to "
            + value(s.worstHigh())
            + chance);
    List<String> cuts = new ArrayList<>();
    Spreads.parts(s).stream()
        .limit(CUTS)
        .filter(p -> p.of() >= TELLS)
        .forEach(p -> cuts.add(percent(p.of()) + " " + name(p.subject(), p.what())));
    if (!cuts.isEmpty()) {
      wrapped("    ", "      ", "from: " + String.join("; ", cuts));
    }
  }

  private String chance(Spread s) {
    List<String> limits = new ArrayList<>();
    if (Double.isFinite(s.least())) {
      limits.add("below " + style.gap(rounded(s.least())));
    }
    if (Double.isFinite(s.most())) {
      limits.add("above " + style.gap(rounded(s.most())));
    }
    String text = percent(s.chance()) + " " + String.join(" or ", limits);
    return s.chance() > Spreads.LIKELY ? style.amber(text) : text;
  }

  /** Without what a limit allows for arithmetic, and never as a zero with a sign. */
  private static double rounded(double mm) {
    double hundredths = Math.rint(mm * 100) / 100;
    return hundredths == 0 ? 0 : hundredths;
  }

  private String value(double mm) {
    return style.gap(rounded(mm));
  }

  private static String percent(double share) {
    double percent = 100 * share;
    if (percent > 0 && percent < 1) {
      return "under 1%";
    }
    return String.format(Locale.ROOT, "%.0f%%", percent);
  }

  private static String name(String subject, String what) {
    return what.isEmpty() ? "dimension " + subject : subject + ": " + what;
  }

  private void matters() {
    List<Spreads.Matter> matters =
        spreads.matters().stream().filter(m -> m.share() >= TELLS / CUTS).limit(CUTS + 2).toList();
    if (matters.isEmpty()) {
      return;
    }
    line("");
    line(style.bold("Take most care with"));
    List<String> sorts = new ArrayList<>();
    spreads.sorts().forEach((sort, share) -> sorts.add(percent(share) + " " + sort));
    wrapped("  ", "    ", "of what may go wrong: " + String.join(", ", sorts));
    for (Spreads.Matter m : matters) {
      wrapped(
          "  ",
          "    ",
          name(m.subject(), m.what())
              + ", now within "
              + accuracy(m.cut())
              + ": "
              + percent(m.share())
              + ", a tenth or more in "
              + m.figures()
              + (m.figures() == 1 ? " figure" : " figures"));
    }
  }

  private String accuracy(Cut cut) {
    return "±" + amount(cut.kind(), cut.accuracy());
  }

  private String amount(Datum.Kind kind, double value) {
    return switch (kind) {
      case LENGTH, GAP -> style.gap(value);
      case ANGLE -> Angle.degrees(value);
      default -> DatumText.of(kind, value, style);
    };
  }

  private void reckoned() {
    Design.Accuracy a = spreads.chair().design().accuracy();
    line("");
    line(style.bold("How it was reckoned"));
    wrapped(
        "  ",
        "  ",
        "Every length within ±"
            + style.gap(a.length())
            + ", every angle within ±"
            + Angle.degrees(a.angle())
            + ", bored holes within ±"
            + Angle.degrees(a.bored())
            + ", tenons and mortises within ±"
            + style.gap(a.fit())
            + ", any size in that range as likely as any other (key \"accuracy\" of the document); "
            + String.format(Locale.ROOT, "%d", spreads.draws())
            + " chairs made by chance, always the same ones. Parts are rigid. A shoulder is told as"
            + " if all other joints closed as well as they can; clamps, and play in the joints,"
            + " close part of it. An angle at one joint counts at another only beyond the play of its"
            + " own tenon. Mortises are set out from the foot of a leg. The wood between two mortises"
            + " in one part, rake, splay and rock are not among the figures. Tenons are cut to the drawing: fit each one to its own mortise, and"
            + " what is told of its cheeks and edges goes away. Parts already measured count as"
            + " not yet made.");
    spreads
        .unbuilt()
        .forEach(
            (name, why) ->
                wrapped("  ", "  ", "Left out: " + name + " cannot be as far off as said. " + why));
  }

  private void answer() {
    int likely = spreads.likely().size();
    line("");
    line(
        likely == 0
            ? style.green("HOLDS") + ": nothing that fits as drawn is likely to go beyond its limit"
            : style.amber("LOOK")
                + ": "
                + likely
                + (likely == 1 ? " figure goes" : " figures go")
                + " beyond the limit in more than 5 of 100 chairs");
  }
}
