package dryfit.export;

import dryfit.shop.CutList;
import dryfit.shop.CutList.Row;
import dryfit.shop.ThicknessClass;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * A cut list for a spreadsheet: comma-separated values after RFC 4180, lines ended by CR LF, UTF-8;
 * millimetres, decimal points.
 */
public final class CutListCsv {
  private CutListCsv() {}

  /** One line a row of the list, a line of headings first. */
  public static byte[] bytes(CutList list) {
    StringBuilder out = new StringBuilder();
    out.append(
        "part,count,pair,timber,thickness class,finished length mm,finished width mm,"
            + "finished thickness mm,blank length mm,blank width mm,blank thickness mm,"
            + "board feet each,finished mass kg each\r\n");
    list.groups()
        .forEach(
            g ->
                g.rows()
                    .forEach(
                        r -> line(out, r, g.from().map(ThicknessClass::word).orElse("glue up"))));
    list.pieces().forEach(r -> line(out, r, "piece"));
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static void line(StringBuilder out, Row r, String from) {
    // Part names, timbers and classes have neither commas nor quotes, so nothing needs quoting.
    out.append(
        String.format(
            Locale.ROOT,
            "%s,%d,%s,%s,%s,%.1f,%.1f,%.1f,%.1f,%.1f,%.1f,%.3f,%.3f\r\n",
            r.name(),
            r.count(),
            r.pair() ? "yes" : "no",
            r.timber(),
            from,
            r.finished().length(),
            r.finished().width(),
            r.finished().thickness(),
            r.rough().length(),
            r.rough().width(),
            r.rough().thickness(),
            r.boardFeet(),
            r.mass()));
  }
}
