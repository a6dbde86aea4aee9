package dryfit.export;

import dryfit.measure.Angle;
import dryfit.measure.BenchAngle;
import dryfit.shop.setting.Reading;
import dryfit.shop.setting.Setting;
import java.util.ArrayList;
import java.util.List;

/**
 * A setting in short lines, the same on a terminal and on paper. A line that begins with two blanks
 * belongs to the one before it.
 */
public final class SettingWords {
  private static final String DOT = " · ";

  private final TextStyle style;

  public SettingWords(TextStyle style) {
    this.style = style;
  }

  /** Where it is, its readings, and its notes. */
  public List<String> lines(Setting setting) {
    List<String> out = new ArrayList<>();
    out.add(setting.where());
    setting.readings().forEach(r -> out.addAll(reading(r)));
    out.addAll(setting.notes());
    return out;
  }

  /** One reading, each way that it can be read. */
  public List<String> reading(Reading reading) {
    List<String> out = new ArrayList<>();
    if (reading instanceof Reading.Bevel bevel) {
      out.add(bevel.what());
      out.addAll(bevel(bevel));
    } else if (reading instanceof Reading.Scale scale) {
      out.add(scale.what() + " " + onScale(scale.angle()));
    } else if (reading instanceof Reading.Line line) {
      out.add(line.what() + " " + Angle.degrees(line.angle()) + " from " + line.from());
    } else if (reading instanceof Reading.Size size) {
      out.add(size.what() + " " + style.length(size.mm()));
    } else if (reading instanceof Reading.Span span) {
      out.add(
          span.what()
              + " "
              + style.bare(span.from())
              + " to "
              + style.length(span.to())
              + " from "
              + span.origin());
    } else if (reading instanceof Reading.Count count) {
      out.add(count.what() + " " + count.number());
    } else {
      out.add(reading.what());
    }
    if (!reading.sense().isEmpty()) {
      boolean first = reading instanceof Reading.Said;
      out.set(0, first ? out.get(0) + ": " + reading.sense() : out.get(0));
      if (!first) {
        out.add("  " + reading.sense());
      }
    }
    return out;
  }

  private List<String> bevel(Reading.Bevel bevel) {
    BenchAngle angle = bevel.angle();
    String slope = angle.slope(style.unit(), style.denominator());
    List<String> out = new ArrayList<>();
    out.add("  " + Angle.degrees(angle.offSquare()) + " off square" + DOT + slope);
    out.add(
        "  "
            + Angle.degrees(angle.fromLongEdge())
            + " from "
            + bevel.edge()
            + (bevel.opposite().isEmpty()
                ? ""
                : DOT + Angle.degrees(angle.fromShortEdge()) + " from " + bevel.opposite()));
    return out;
  }

  /** As a scale reads it that shows 0 at square, and as one that shows 90. */
  static String onScale(BenchAngle angle) {
    return Angle.degrees(angle.offSquare())
        + DOT
        + Angle.degrees(angle.fromLongEdge())
        + " where square reads 90";
  }
}
