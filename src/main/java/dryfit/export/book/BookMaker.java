package dryfit.export.book;

import dryfit.document.Design;
import dryfit.export.RakeText;
import dryfit.export.SettingsText;
import dryfit.export.TextStyle;
import dryfit.export.Told;
import dryfit.export.book.Block.Text;
import dryfit.export.book.Book.Chapter;
import dryfit.export.book.Book.Sheet;
import dryfit.export.paper.Page.Paper;
import dryfit.fit.FitReport;
import dryfit.fit.order.Assembling;
import dryfit.shop.setting.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Makes the bench book of a chair that has been fitted and whose order of assembly is known. */
public final class BookMaker {
  /** 358 of the 390 points that a common phone is wide, at 96 to the inch (CSS), mm. */
  private static final Room PHONE = new Room(94, 260);

  private BookMaker() {}

  /**
   * The book.
   *
   * @param paper decides how large drawings may be
   */
  public static Book of(FitReport report, Assembling order, TextStyle style, Paper paper) {
    return of(
        report,
        order,
        style,
        new Room(BookPages.width(paper), paper.height() - 2 * BookPages.MARGIN));
  }

  /** The book with drawings that a phone held upright shows in their full width. */
  public static Book forPhone(FitReport report, Assembling order, TextStyle style) {
    return of(report, order, style, PHONE);
  }

  private static Book of(FitReport report, Assembling order, TextStyle style, Room room) {
    Design design = report.chair().design();
    List<Chapter> chapters = new ArrayList<>();
    chapters.add(new Chapter("the chair", CoverSheets.of(report, style)));
    chapters.add(new Chapter("parts", PartSheets.of(report, style, room)));
    chapters.add(new Chapter("joints", JointSheets.of(report, style, room)));
    List<Sheet> settings = settings(report, style);
    if (!settings.isEmpty()) {
      chapters.add(new Chapter("settings", settings));
    }
    chapters.add(new Chapter("order of work", WorkSheets.of(report, order, style)));
    chapters.add(new Chapter("cautions", List.of(Cautions.sheet(report.chair()))));
    return new Book(title(design), isDemo(design) ? "demo data, invented" : "", chapters);
  }

  /** The room on a page below its title, mm. */
  record Room(double width, double height) {}

  private static String title(Design design) {
    return design.variant().equals(Design.AS_DRAWN)
        ? design.name()
        : design.name() + ", " + design.variant();
  }

  /** A document says itself, in what it tells about the chair, that its numbers are invented. */
  private static boolean isDemo(Design design) {
    return design.about().toLowerCase(Locale.ROOT).contains("demo data");
  }

  private static List<Sheet> settings(FitReport report, TextStyle style) {
    Settings settings = Settings.of(report);
    List<Sheet> out = new ArrayList<>();
    List<Told> uprights = RakeText.told(report.chair(), style);
    if (!uprights.isEmpty()) {
      out.add(
          new Sheet(
              "How the upright parts lean",
              told(CoverSheets.hands(report.chair().design()), uprights)));
    }
    List<Told> told = SettingsText.told(settings, style);
    if (!told.isEmpty()) {
      List<Block> blocks = told(SettingsText.granted(settings, style), told);
      settings.cautions().forEach(c -> blocks.add(new Block.Caution(c)));
      out.add(new Sheet("What each tool is set to", blocks));
    }
    return out;
  }

  private static List<Block> told(String first, List<Told> told) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Text(first));
    for (Told t : told) {
      blocks.add(new Block.Heading(t.title()));
      blocks.add(table(t));
    }
    return blocks;
  }

  /** Rows of a name and a text; what has no name stands below what it belongs to. */
  static Block.Table table(Told told) {
    List<List<String>> rows = new ArrayList<>();
    for (Told.Row row : told.rows()) {
      if (row.name().isEmpty() && !rows.isEmpty()) {
        List<String> last = rows.get(rows.size() - 1);
        rows.set(rows.size() - 1, List.of(last.get(0), last.get(1) + "\n" + row.text().strip()));
      } else {
        rows.add(List.of(row.name(), row.text().strip()));
      }
    }
    return new Block.Table(List.of("", ""), rows, List.of(0.16, 0.84), false);
  }
}
