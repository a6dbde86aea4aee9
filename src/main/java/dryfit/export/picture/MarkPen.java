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
    double radius = 0.02 * sheet.height();
    double high = 0.019 * sheet.height();
    MarkLayout layout = new MarkLayout(sheet, radius, high);
    for (MarkLayout.Ring ring : layout.rings(marks)) {
      pen.ring(ring.x(), ring.y(), radius, 1.5 * thick);
      pen.line(ring.x(), ring.y(), ring.x(), ring.y(), 3 * thick, 1);
      if (!ring.label().isEmpty()) {
        MarkLayout.Label label = layout.beside(ring);
        pen.line(
            ring.x() + ring.towardsX(label) * radius,
            ring.y() + ring.towardsY(label) * radius,
            label.anchorX(),
            label.anchorY(),
            thick,
            1);
        double base = label.middleY() + high / 2;
        new Lettering(under).write(ring.label(), label.left(), base, high, 6 * thick);
        new Lettering(pen).write(ring.label(), label.left(), base, high, 1.3 * thick);
      }
    }
    return inks;
  }
}
