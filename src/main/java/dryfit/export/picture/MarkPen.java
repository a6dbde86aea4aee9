package dryfit.export.picture;

import java.util.List;

/** Rings the places to look at in red ink, with their labels beside them. */
final class MarkPen {
  private final Camera.Sheet sheet;
  private final double thick;

  MarkPen(Camera.Sheet sheet, double thick) {
    this.sheet = sheet;
    this.thick = thick;
  }

  /** What the marks put on the picture, by sample, 0 to 1; both empty if there is no mark. */
  static final class Inks {
    /** Paper laid under the letters, so that they are read on dark wood too. */
    final float[] backing;

    /** Red ink. */
    final float[] red;

    Inks(int samples) {
      backing = new float[samples];
      red = new float[samples];
    }
  }

  Inks draw(List<Mark> marks) {
    if (marks.isEmpty()) {
      return new Inks(0);
    }
    Inks inks = new Inks(sheet.width() * sheet.height());
    Pen pen = new Pen(inks.red, sheet.width(), sheet.height());
    Pen under = new Pen(inks.backing, sheet.width(), sheet.height());
    double radius = 0.022 * sheet.height();
    double high = 0.017 * sheet.height();
    for (Mark mark : marks) {
      if (sheet.camera().depth(mark.at()) > 0) {
        double x = sheet.x(mark.at());
        double y = sheet.y(mark.at());
        pen.ring(x, y, radius, 1.5 * thick);
        pen.line(x, y, x, y, 3 * thick, 1);
        label(pen, under, mark.label(), x, y, radius, high);
      }
    }
    return inks;
  }

  /** To the right of the ring, or to its left where the picture ends. */
  private void label(
      Pen pen, Pen under, String text, double x, double y, double radius, double high) {
    if (text.isEmpty()) {
      return;
    }
    double wide = Lettering.width(text, high);
    boolean right = x + 3 * radius + wide < sheet.width();
    double way = right ? 1 : -1;
    double turn = Math.sqrt(0.5);
    double elbowX = x + way * 1.9 * radius;
    double elbowY = y - 1.9 * radius;
    pen.line(x + way * turn * radius, y - turn * radius, elbowX, elbowY, thick, 1);
    double start = right ? elbowX + 0.3 * radius : elbowX - 0.3 * radius - wide;
    double base = elbowY + high / 2;
    new Lettering(under).write(text, start, base, high, 6 * thick);
    new Lettering(pen).write(text, start, base, high, 1.15 * thick);
  }
}
