package dryfit.export;

import java.util.List;
import java.util.Locale;

/**
 * A line through points as a drawing in SVG, with the ranges in which the chair fits behind it.
 * Written out as text: the same numbers give the same bytes wherever they are drawn.
 */
final class PlotSvg {
  private static final double WIDTH = 640;
  private static final double HEIGHT = 300;
  private static final double LEFT = 90;
  private static final double RIGHT = 30;
  private static final double TOP = 34;
  private static final double BOTTOM = 44;

  private PlotSvg() {}

  /** A place on the plot, in the units that are printed. */
  record At(double x, double y) {}

  /** A stretch of the x axis. */
  record Band(double from, double to) {}

  /**
   * The drawing, an {@code svg} element.
   *
   * @param title for those who hear the page read; it is not drawn
   * @param points at least one, from left to right
   * @param good where the chair fits
   * @param beyond where the document does not let it be
   */
  static String of(
      String title,
      String xName,
      String yName,
      List<At> points,
      List<Band> good,
      List<Band> beyond) {
    double lowX = points.get(0).x();
    double highX = points.get(points.size() - 1).x();
    double lowY = points.stream().mapToDouble(At::y).min().orElseThrow();
    double highY = points.stream().mapToDouble(At::y).max().orElseThrow();
    Scale x = new Scale(lowX, highX, LEFT, WIDTH - RIGHT);
    double room = highY > lowY ? (highY - lowY) * 0.08 : Math.max(1, Math.abs(highY) * 0.1);
    Scale y = new Scale(lowY - room, highY + room, HEIGHT - BOTTOM, TOP);
    StringBuilder out = new StringBuilder();
    out.append(
        format(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-label=\"%s\""
                + " viewBox=\"0 0 %.0f %.0f\" font-family=\"serif\" font-size=\"15\">\n",
            ComparePage.escaped(title), WIDTH, HEIGHT));
    beyond.forEach(b -> out.append(band("beyond", "#e6e2da", x, b)));
    good.forEach(b -> out.append(band("good", "#e3efe0", x, b)));
    axis(out, x, y, lowX, highX, lowY, highY);
    out.append(text(WIDTH / 2, HEIGHT - 8, "middle", xName));
    out.append(text(LEFT - 8, TOP - 2, "end", yName));
    StringBuilder line = new StringBuilder();
    for (At p : points) {
      line.append(format("%.2f,%.2f ", x.at(p.x()), y.at(p.y())));
    }
    out.append(
        format(
            "<polyline points=\"%s\" class=\"line\" fill=\"none\" stroke=\"#1f4e79\" stroke-width=\"2\"/>\n",
            line.toString().strip()));
    for (At p : points) {
      out.append(
          format(
              "<circle cx=\"%.2f\" cy=\"%.2f\" r=\"3\" class=\"at\" fill=\"#1f4e79\"/>\n",
              x.at(p.x()), y.at(p.y())));
    }
    return out.append("</svg>\n").toString();
  }

  private static String band(String kind, String fill, Scale x, Band b) {
    return format(
        "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"%.2f\" class=\"%s\" fill=\"%s\"/>\n",
        x.at(b.from()),
        TOP,
        Math.max(1, x.at(b.to()) - x.at(b.from())),
        HEIGHT - TOP - BOTTOM,
        kind,
        fill);
  }

  private static void axis(
      StringBuilder out, Scale x, Scale y, double lowX, double highX, double lowY, double highY) {
    out.append(
        format(
            "<path d=\"M%.2f %.2fV%.2fH%.2f\" class=\"axis\" fill=\"none\" stroke=\"#444\"/>\n",
            LEFT, TOP, HEIGHT - BOTTOM, WIDTH - RIGHT));
    for (double at : lowX < highX ? new double[] {lowX, (lowX + highX) / 2, highX} : one(lowX)) {
      out.append(text(x.at(at), HEIGHT - BOTTOM + 16, "middle", format("%.2f", at)));
    }
    double middle = (lowY + highY) / 2;
    for (double at : lowY < highY ? new double[] {lowY, middle, highY} : one(lowY)) {
      out.append(
          format(
              "<path d=\"M%.2f %.2fH%.2f\" class=\"grid-line\" stroke=\"#ccc\"/>\n",
              LEFT, y.at(at), WIDTH - RIGHT));
      out.append(text(LEFT - 8, y.at(at) + 4, "end", format("%.2f", at)));
    }
  }

  private static double[] one(double at) {
    return new double[] {at};
  }

  private static String text(double x, double y, String anchor, String words) {
    return format(
        "<text x=\"%.2f\" y=\"%.2f\" text-anchor=\"%s\">%s</text>\n",
        x, y, anchor, ComparePage.escaped(words));
  }

  private static String format(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }

  /** From values to places; a single value is in the middle. */
  private record Scale(double low, double high, double from, double to) {
    double at(double value) {
      double share = high > low ? (value - low) / (high - low) : 0.5;
      return from + share * (to - from);
    }
  }
}
