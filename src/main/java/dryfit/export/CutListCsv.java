package dryfit.export;

import dryfit.measure.Length;
import dryfit.shop.CutList;
import dryfit.shop.CutList.Row;
import dryfit.shop.ThicknessClass;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * A cut list for a spreadsheet: comma-separated values after RFC 4180, lines ended by CR LF, UTF-8;
 * lengths in the unit that its headings name, with decimal points.
 */
public final class CutListCsv {
  private CutListCsv() {}

  /**
   * One line a row of the list, a line of headings first.
   *
   * @param unit of the lengths: a spreadsheet adds up what the maker measures
   */
  public static byte[] bytes(CutList list, Length.Unit unit) {
    StringBuilder out = new StringBuilder();
    out.append(
        String.format(
            Locale.ROOT,
            "part,count,pair,timber,thickness class,finished length %1$s,finished width %1$s,"
                + "finished thickness %1$s,blank length %1$s,blank width %1$s,blank thickness %1$s,"
                + "board feet each,finished mass kg each\r\n",
            unit.symbol()));
    list.groups()
        .forEach(
            g ->
                g.rows()
                    .forEach(
                        r ->
                            line(
                                out,
                                r,
                                g.from().map(ThicknessClass::word).orElse("glue up"),
                                unit)));
    list.pieces().forEach(r -> line(out, r, "piece", unit));
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static void line(StringBuilder out, Row r, String from, Length.Unit unit) {
    // Part names, timbers and classes have neither commas nor quotes, so nothing needs quoting.
    out.append(
        String.format(
            Locale.ROOT,
            "%s,%d,%s,%s,%s,%s,%s,%s,%s,%s,%s,%.3f,%.3f\r\n",
            r.name(),
            r.count(),
            r.pair() ? "yes" : "no",
            r.timber(),
            from,
            number(r.finished().length(), unit),
            number(r.finished().width(), unit),
            number(r.finished().thickness(), unit),
            number(r.rough().length(), unit),
            number(r.rough().width(), unit),
            number(r.rough().thickness(), unit),
            r.boardFeet(),
            r.mass()));
  }

  /** Tenths of a millimetre, or thousandths of an inch. */
  private static String number(double mm, Length.Unit unit) {
    return String.format(Locale.ROOT, unit == Length.Unit.IN ? "%.3f" : "%.1f", mm / unit.mm());
  }
}
