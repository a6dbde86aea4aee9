package dryfit.export;

import dryfit.build.Chair;
import dryfit.shop.setting.Reading;
import dryfit.shop.setting.Setting;
import dryfit.shop.setting.Settings;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.function.Function;

/**
 * Settings for a spreadsheet: comma-separated values after RFC 4180, lines ended by CR LF, UTF-8;
 * one line a reading, millimetres and degrees, decimal points.
 */
public final class SettingsCsv {
  private SettingsCsv() {}

  /** A line of headings, then one line a reading. */
  public static byte[] bytes(Settings settings) {
    StringBuilder out = new StringBuilder();
    out.append("tool,part,joint,where,reading,off square deg,length mm,to mm,count,from,sense\r\n");
    for (Setting s : settings.all()) {
      s.readings().forEach(r -> line(out, settings.chair(), s, r));
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static void line(StringBuilder out, Chair chair, Setting s, Reading r) {
    String[] cells = {
      s.tool().word(),
      chair.parts().get(s.part()).label(),
      s.joint().isPresent() ? chair.joints().get(s.joint().getAsInt()).label() : "",
      s.where(),
      r.what(),
      "",
      "",
      "",
      "",
      "",
      r.sense()
    };
    Function<Double, String> degrees = a -> String.format(Locale.ROOT, "%.2f", Math.toDegrees(a));
    Function<Double, String> length = mm -> String.format(Locale.ROOT, "%.2f", mm);
    if (r instanceof Reading.Bevel bevel) {
      cells[5] = degrees.apply(bevel.angle().offSquare());
      cells[9] = bevel.edge();
    } else if (r instanceof Reading.Scale scale) {
      cells[5] = degrees.apply(scale.angle().offSquare());
    } else if (r instanceof Reading.Line line) {
      cells[5] = degrees.apply(line.angle());
      cells[9] = line.from();
    } else if (r instanceof Reading.Size size) {
      cells[6] = length.apply(size.mm());
    } else if (r instanceof Reading.Span span) {
      cells[6] = length.apply(span.from());
      cells[7] = length.apply(span.to());
      cells[9] = span.origin();
    } else if (r instanceof Reading.Count count) {
      cells[8] = Integer.toString(count.number());
    }
    for (int i = 0; i < cells.length; i++) {
      out.append(i == 0 ? "" : ",").append(quoted(cells[i]));
    }
    out.append("\r\n");
  }

  private static String quoted(String cell) {
    return cell.contains(",") || cell.contains("\"")
        ? '"' + cell.replace("\"", "\"\"") + '"'
        : cell;
  }
}
