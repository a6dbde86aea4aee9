package dryfit.export.picture;

import dryfit.geometry.Vec3;

/**
 * The ink lines of a surface: creases, and the outline where it turns away from the eye. What lies
 * behind other wood is left out, by comparing depths along each line.
 */
final class InkLines {
  /** Wood this much nearer than a line still lets it through, mm; hides where surfaces touch. */
  private static final double BEHIND = 0.25;

  private final Camera.Sheet sheet;
  private final Canvas canvas;
  private final Pen pen;
  private final double thick;

  /**
   * @param thick width of the thinner lines in samples
   */
  InkLines(Camera.Sheet sheet, Canvas canvas, double thick) {
    this.sheet = sheet;
    this.canvas = canvas;
    this.pen = new Pen(canvas.ink, canvas.width, canvas.height);
    this.thick = thick;
  }

  void draw(Surface surface) {
    Vec3 eye = sheet.camera().eye();
    for (int e = 0; e < surface.crease.length; e++) {
      boolean one = surface.facesEye(surface.edges[4 * e + 2], eye.x(), eye.y(), eye.z());
      boolean other = surface.facesEye(surface.edges[4 * e + 3], eye.x(), eye.y(), eye.z());
      boolean outline = one != other;
      if (outline || (surface.crease[e] && one)) {
        line(
            point(surface, surface.edges[4 * e]),
            point(surface, surface.edges[4 * e + 1]),
            outline ? 1.45 * thick : thick,
            outline ? 0.92 : 0.72);
      }
    }
  }

  private static Vec3 point(Surface surface, int i) {
    return new Vec3(surface.xyz[3 * i], surface.xyz[3 * i + 1], surface.xyz[3 * i + 2]);
  }

  /** Walks along a line sample by sample and draws the stretches that are seen. */
  private void line(Vec3 a, Vec3 b, double wide, double strength) {
    double wa = 1 / sheet.camera().depth(a);
    double wb = 1 / sheet.camera().depth(b);
    double xa = sheet.x(a);
    double ya = sheet.y(a);
    double dx = sheet.x(b) - xa;
    double dy = sheet.y(b) - ya;
    int steps = Math.max(2, (int) Math.ceil(Math.max(Math.abs(dx), Math.abs(dy))));
    double from = Double.NaN;
    for (int i = 0; i <= steps; i++) {
      double t = (double) i / steps;
      boolean seen = seen(xa + t * dx, ya + t * dy, wa + t * (wb - wa));
      if (seen && Double.isNaN(from)) {
        from = t;
      }
      if (!Double.isNaN(from) && (!seen || i == steps)) {
        pen.line(xa + from * dx, ya + from * dy, xa + t * dx, ya + t * dy, wide, strength);
        from = Double.NaN;
      }
    }
  }

  /** Whether nothing stands before a point, at it or at any sample beside it. */
  private boolean seen(double x, double y, double w) {
    double limit = 1 / (1 / w - BEHIND);
    int cx = (int) Math.floor(x);
    int cy = (int) Math.floor(y);
    for (int py = Math.max(0, cy - 1); py <= Math.min(canvas.height - 1, cy + 1); py++) {
      for (int px = Math.max(0, cx - 1); px <= Math.min(canvas.width - 1, cx + 1); px++) {
        if (canvas.nearness[py * canvas.width + px] <= limit) {
          return true;
        }
      }
    }
    return false;
  }
}
