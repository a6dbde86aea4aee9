package dryfit.export.paper;

import dryfit.export.paper.Ink.Align;
import dryfit.export.paper.Ink.Area;
import dryfit.export.paper.Ink.Colour;
import dryfit.export.paper.Ink.Line;
import dryfit.export.paper.Ink.Picture;
import dryfit.export.paper.Ink.Window;
import dryfit.export.paper.Ink.Words;
import dryfit.geometry.Vec2;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A page as SVG 1.1 (W3C). Its width and height are in millimetres and its view box has the same
 * numbers, so a unit of the drawing is a millimetre whatever a program takes a pixel for.
 */
public final class SvgFile {
  private static final int DECIMALS = 4;

  /** How an element ends that has nothing in it. */
  private static final String END = "\"/>\n";

  private final double height;
  private final StringBuilder out = new StringBuilder();
  private int windows;
  private String id = "window";

  /** The pen of the last line, and where its element ends. */
  private String lastPen = "";

  private int lastLine;

  private SvgFile(double height) {
    this.height = height;
  }

  /** The file. */
  public static byte[] bytes(Page page, String title) {
    SvgFile svg = new SvgFile(page.height());
    String w = number(page.width());
    String h = number(page.height());
    svg.out
        .append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
        .append("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"")
        .append(w + "mm\" height=\"" + h + "mm\" viewBox=\"0 0 " + w + " " + h + "\">\n")
        .append("<title>" + escaped(title) + "</title>\n");
    svg.draw(page.ink(), new Vec2(0, 0));
    svg.out.append("</svg>\n");
    return svg.out.toString().getBytes(StandardCharsets.UTF_8);
  }

  /**
   * The page as an element within an HTML page: as wide as it is drawn, or narrower where there is
   * no room.
   *
   * @param id begins the names of what the drawing refers to; each on a page has its own
   */
  public static String element(Page page, String title, String id) {
    SvgFile svg = new SvgFile(page.height());
    svg.id = id;
    svg.out
        .append("<svg role=\"img\" width=\"" + number(page.width()))
        .append("mm\" viewBox=\"0 0 " + number(page.width()) + " " + number(page.height()))
        .append("\">\n<title>" + escaped(title) + "</title>\n");
    svg.draw(page.ink(), new Vec2(0, 0));
    return svg.out.append("</svg>").toString();
  }

  private void draw(List<Ink> all, Vec2 shift) {
    for (Ink ink : all) {
      if (ink instanceof Line line) {
        line(line, shift);
      } else if (ink instanceof Area area) {
        String d =
            area.loops().stream()
                .map(loop -> path(loop, true, shift))
                .collect(Collectors.joining(" "));
        out.append("<path fill=\"" + colour(area.colour()))
            .append("\" fill-rule=\"evenodd\" d=\"" + d + "\"/>\n");
      } else if (ink instanceof Words words) {
        words(words, shift);
      } else if (ink instanceof Picture picture) {
        picture(picture, shift);
      } else if (ink instanceof Window window) {
        window(window, shift);
      }
    }
  }

  private void picture(Picture picture, Vec2 shift) {
    Vec2 low = picture.low().plus(shift);
    Vec2 size = picture.high().minus(picture.low());
    out.append("<image x=\"" + number(low.x()))
        .append("\" y=\"" + number(height - low.y() - size.y()))
        .append("\" width=\"" + number(size.x()) + "\" height=\"" + number(size.y()))
        .append("\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" xlink:href=\"")
        .append(picture.png().address() + "\"/>\n");
  }

  /** Lines one after the other by the same pen are one element: a drawing has thousands. */
  private void line(Line line, Vec2 shift) {
    String pen =
        "<path fill=\"none\" stroke=\""
            + colour(line.colour())
            + "\" stroke-width=\""
            + number(line.width());
    if (!line.dashes().isEmpty()) {
      String dashes = line.dashes().stream().map(SvgFile::number).collect(Collectors.joining(" "));
      pen += "\" stroke-dasharray=\"" + dashes;
    }
    if (out.length() == lastLine && pen.equals(lastPen)) {
      out.setLength(lastLine - END.length());
      out.append(" ");
    } else {
      out.append(pen).append("\" d=\"");
    }
    out.append(path(line.points(), line.closed(), shift)).append(END);
    lastPen = pen;
    lastLine = out.length();
  }

  private String path(List<Vec2> points, boolean closed, Vec2 shift) {
    String d = points.stream().map(p -> place(p.plus(shift))).collect(Collectors.joining(" L "));
    return "M " + d + (closed ? " Z" : "");
  }

  private void words(Words words, Vec2 shift) {
    Vec2 at = words.at().plus(shift);
    String anchor =
        words.align() == Align.LEFT ? "start" : words.align() == Align.RIGHT ? "end" : "middle";
    out.append("<text x=\"" + number(at.x()) + "\" y=\"" + number(height - at.y()))
        .append("\" font-family=\"Liberation Sans, Arial, Helvetica, sans-serif\" font-size=\"")
        .append(number(words.size()) + "\" text-anchor=\"" + anchor)
        .append("\" fill=\"" + colour(words.colour()) + "\"");
    if (words.turn() != 0) {
      out.append(" transform=\"rotate(" + number(-Math.toDegrees(words.turn())))
          .append(" " + number(at.x()) + " " + number(height - at.y()) + ")\"");
    }
    out.append(">" + escaped(words.text()) + "</text>\n");
  }

  private void window(Window window, Vec2 shift) {
    String name = id + ++windows;
    Vec2 low = window.low().plus(shift);
    Vec2 size = window.high().minus(window.low());
    out.append("<clipPath id=\"" + name + "\"><rect x=\"" + number(low.x()))
        .append("\" y=\"" + number(height - low.y() - size.y()))
        .append("\" width=\"" + number(size.x()) + "\" height=\"" + number(size.y()))
        .append("\"/></clipPath>\n<g clip-path=\"url(#" + name + ")\">\n");
    draw(window.ink(), shift.plus(window.shift()));
    out.append("</g>\n");
  }

  private String place(Vec2 p) {
    return number(p.x()) + " " + number(height - p.y());
  }

  private static String colour(Colour c) {
    return String.format(Locale.ROOT, "#%02x%02x%02x", c.red(), c.green(), c.blue());
  }

  private static String number(double value) {
    BigDecimal rounded = new BigDecimal(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** XML has no place for control signs, written or escaped. */
  private static String escaped(String text) {
    return text.replaceAll("\\p{Cntrl}", " ")
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;");
  }
}
