package dryfit.export;

import dryfit.build.Chair;
import dryfit.document.BoardsPlan;
import dryfit.shop.BoardMeasure;
import dryfit.shop.CutList;
import dryfit.shop.CutList.Group;
import dryfit.shop.CutList.Row;
import dryfit.timber.Species;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** A cut list as text for a terminal of eighty columns. */
public final class CutListText {
  private static final String CAUTION =
      "Parts are shown finished with their tenons; blanks have what you allow for sawing and"
          + " planing. Rough sizes come from charts, and a rough board is not flat: measure yours.";

  /** Columns for names: at least so many, and no more than leaves the sizes in their place. */
  private static final int NAMES = 20;

  private static final int WIDEST = 30;

  private final TextStyle style;
  private final int names;

  private CutListText(TextStyle style, CutList list) {
    this.style = style;
    this.names =
        Stream.concat(
                list.groups().stream().flatMap(g -> g.rows().stream()), list.pieces().stream())
            .mapToInt(row -> name(row).length())
            .filter(length -> length <= WIDEST)
            .reduce(NAMES, Math::max);
  }

  /** The list; each line ended by a line feed. */
  public static String of(Chair chair, CutList list, TextStyle style) {
    CutListText text = new CutListText(style, list);
    StringBuilder out = new StringBuilder();
    out.append(style.bold(chair.design().name() + ": cut list")).append('\n');
    for (Group group : list.groups()) {
      out.append('\n').append(style.bold(title(group, style))).append('\n');
      out.append(text.heading());
      group.rows().forEach(row -> out.append(text.row(row)));
      Wrapped.lines("  ", "  ", sum(group, list.plan()))
          .forEach(line -> out.append(line).append('\n'));
    }
    if (!list.pieces().isEmpty()) {
      out.append('\n').append(style.bold("Small pieces, from offcuts or rod")).append('\n');
      out.append(text.heading());
      list.pieces().forEach(row -> out.append(text.row(row)));
    }
    out.append('\n');
    for (String line : total(list, style)) {
      Wrapped.lines("", "", line).forEach(l -> out.append(l).append('\n'));
    }
    Wrapped.lines("", "", CAUTION).forEach(l -> out.append(l).append('\n'));
    return out.toString();
  }

  private String heading() {
    return line("", "", "finished", "blank");
  }

  /** A name that is too long for its column has a line to itself. */
  private String row(Row row) {
    String name = name(row);
    boolean fits = name.length() <= names;
    String sizes =
        line(
            fits ? name : "",
            Integer.toString(row.count()),
            size(row.finished(), style),
            roomFor(row.rough(), style));
    return fits ? sizes : "  " + name + "\n" + sizes;
  }

  private static String name(Row row) {
    return row.name() + (row.pair() ? " (pair)" : "");
  }

  private String line(String name, String count, String finished, String blank) {
    String format = "  %-" + names + "s %3s  %-24s  %-24s";
    return String.format(Locale.ROOT, format, name, count, finished, blank).stripTrailing() + "\n";
  }

  /** {@code 648 × 42 × 42}; inches to the nearest division, without what that leaves out. */
  static String size(dryfit.shop.Blank.Size size, TextStyle style) {
    return style.bare(size.length())
        + " × "
        + style.bare(size.width())
        + " × "
        + style.bare(size.thickness());
  }

  /** A size that is sawn to, so never told smaller than it is. */
  static String roomFor(dryfit.shop.Blank.Size size, TextStyle style) {
    return style.bareUp(size.length())
        + " × "
        + style.bareUp(size.width())
        + " × "
        + style.bareUp(size.thickness());
  }

  static String title(Group group, TextStyle style) {
    String timber = Species.named(group.timber()).map(Species::name).orElse(group.timber());
    return group
        .from()
        .map(
            c ->
                timber
                    + ", "
                    + c.word()
                    + " ("
                    + style.bare(c.rough())
                    + " rough, "
                    + style.bare(c.surfaced())
                    + " planed, "
                    + style.unit().symbol()
                    + ")")
        .orElse(timber + ", thicker than is sawn: glue up");
  }

  static String sum(Group group, BoardsPlan plan) {
    return String.format(
        Locale.ROOT,
        "%d %s, %.2f board feet (%.4f m³), %.1f kg; with %.0f %% for waste buy %d board feet",
        group.count(),
        group.count() == 1 ? "blank" : "blanks",
        group.boardFeet(),
        group.cubicMetres(),
        group.mass(),
        plan.waste() * 100,
        BoardMeasure.toBuy(group.boardFeet(), plan.waste()));
  }

  static List<String> total(CutList list, TextStyle style) {
    List<String> lines = new ArrayList<>();
    BoardsPlan plan = list.plan();
    lines.add(
        String.format(
            Locale.ROOT,
            "All blanks: %.2f board feet, %.3f m³. The finished chair weighs about %.1f kg.",
            list.boardFeet(),
            BoardMeasure.cubicMetres(list.boardFeet()),
            list.mass()));
    lines.add(
        "Allowed over all: "
            + style.length(plan.allow().length())
            + " in length, "
            + style.length(plan.allow().width())
            + " in width, "
            + style.length(plan.allow().thickness())
            + " in thickness beyond planing.");
    return lines;
  }
}
