package dryfit.export.picture;

import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Turns what is seen at each sample into colour, and samples into pixels. */
final class Developer {
  private static final double[] PAPER_MIDDLE = {0.992, 0.984, 0.965};
  private static final double[] PAPER_EDGE = {0.937, 0.910, 0.862};
  private static final double[] INK = {0.235, 0.165, 0.110};
  private static final double[] RED_INK = {0.72, 0.10, 0.08};
  private static final double[] SHADE = {0.40, 0.36, 0.33};

  /** How much of the red goes into a tinted part. */
  private static final double TINT = 0.45;

  /** How many rings there are in good years where there is one on average. */
  private static final double NARROWEST = 2;

  private final Camera.Sheet sheet;
  private final Canvas canvas;
  private final MarkPen.Inks marks;
  private final GroundShadow shadow;
  private final List<Wood> woods = new ArrayList<>();

  /** A figure's colour and rings. */
  private record Wood(WoodTone tone, Grain grain, boolean marked) {}

  /**
   * @param marks what the marks put on top
   * @param shadow the shadow on the floor, or null if no floor is seen
   */
  Developer(
      Camera.Sheet sheet,
      Canvas canvas,
      List<Figure> figures,
      MarkPen.Inks marks,
      GroundShadow shadow) {
    this.sheet = sheet;
    this.canvas = canvas;
    this.marks = marks;
    this.shadow = shadow;
    for (Figure f : figures) {
      WoodTone tone = WoodTone.of(f.timber());
      Frame frame = f.grain();
      woods.add(new Wood(tone, new Grain(frame, tone, f.label()), f.marked()));
    }
  }

  Camera.Sheet sheet() {
    return sheet;
  }

  /** Works out one row of pixels, each the mean of {@code fine} by {@code fine} samples. */
  void row(int y, int fine, int[] pixels, int start, int count) {
    double[] colour = new double[3];
    double[] sum = new double[3];
    double[] radii = new double[fine * fine];
    double share = 255.0 / (fine * fine);
    for (int x = 0; x < count; x++) {
      Arrays.fill(sum, 0);
      double shown = ringsShown(fine * x, fine * y, fine, radii);
      for (int i = 0; i < radii.length; i++) {
        sample(fine * x + i % fine, fine * y + i / fine, radii[i], shown, colour);
        for (int k = 0; k < 3; k++) {
          sum[k] += colour[k];
        }
      }
      pixels[start + x] =
          level(sum[0] * share) << 16 | level(sum[1] * share) << 8 | level(sum[2] * share);
    }
  }

  /**
   * Finds how far from the pith each sample of a pixel is, and from that how clearly rings can be
   * shown there, 0 to 1: those finer than the pixel would only shimmer.
   */
  private double ringsShown(int left, int top, int fine, double[] radii) {
    double least = Double.POSITIVE_INFINITY;
    double greatest = Double.NEGATIVE_INFINITY;
    double ring = Double.POSITIVE_INFINITY;
    int first = canvas.figure[top * canvas.width + left];
    for (int i = 0; i < radii.length; i++) {
      int x = left + i % fine;
      int y = top + i / fine;
      int at = y * canvas.width + x;
      if (canvas.figure[at] > 0) {
        Wood wood = woods.get(canvas.figure[at] - 1);
        double depth = 1 / canvas.nearness[at];
        Vec3 ray = sheet.ray(x + 0.5, y + 0.5);
        Vec3 eye = sheet.camera().eye();
        radii[i] =
            wood.grain.radius(
                eye.x() + depth * ray.x(), eye.y() + depth * ray.y(), eye.z() + depth * ray.z());
        if (canvas.figure[at] == first) {
          least = Math.min(least, radii[i]);
          greatest = Math.max(greatest, radii[i]);
          ring = wood.tone.ring();
        }
      }
    }
    double ringsAcross = Math.max(0, greatest - least) * NARROWEST / ring;
    return Math.max(0, Math.min(1, (0.8 - ringsAcross) / 0.5));
  }

  private static int level(double v) {
    return Math.max(0, Math.min(255, (int) (v + 0.5)));
  }

  private void sample(int x, int y, double radius, double shown, double[] colour) {
    int at = y * canvas.width + x;
    if (canvas.figure[at] == 0) {
      paper(x + 0.5, y + 0.5, colour);
    } else {
      wood(at, radius, shown, colour);
    }
    blend(colour, INK, canvas.ink[at]);
    if (marks.red.length > 0) {
      blend(colour, PAPER_MIDDLE, 0.88 * marks.backing[at]);
      blend(colour, RED_INK, marks.red[at]);
    }
  }

  private static void blend(double[] colour, double[] over, double share) {
    for (int k = 0; k < 3; k++) {
      colour[k] += share * (over[k] - colour[k]);
    }
  }

  private void paper(double x, double y, double[] colour) {
    double u = (x / canvas.width - 0.5) * 1.5;
    double v = (y / canvas.height - 0.46) * 1.5;
    double away = Math.min(1, u * u + v * v);
    double dark = shadow == null ? 0 : floorShade(x, y);
    for (int k = 0; k < 3; k++) {
      double paper = PAPER_MIDDLE[k] + away * (PAPER_EDGE[k] - PAPER_MIDDLE[k]);
      colour[k] = paper * (1 - dark) + SHADE[k] * dark;
    }
  }

  private double floorShade(double x, double y) {
    Vec3 ray = sheet.ray(x, y);
    Vec3 eye = sheet.camera().eye();
    if (ray.z() >= 0) {
      return 0;
    }
    double far = -eye.z() / ray.z();
    // Where the floor is seen edge-on the shadow would be a hard dark line; let it go instead.
    double grazing = Math.min(1, -ray.z() / ray.length() / 0.25);
    return grazing * shadow.at(eye.x() + far * ray.x(), eye.y() + far * ray.y());
  }

  private void wood(int at, double radius, double shown, double[] colour) {
    Wood wood = woods.get(canvas.figure[at] - 1);
    double late = wood.grain.late(radius);
    double dim = wood.tone.figure() * shown * (late - 0.3);
    double[] base = {wood.tone.red(), wood.tone.green(), wood.tone.blue()};
    if (wood.marked) {
      blend(base, RED_INK, TINT);
    }
    for (int k = 0; k < 3; k++) {
      double light = Lights.on(canvas.key[at], canvas.upward[at], k);
      // Late wood is browner: it takes most from blue and least from red.
      double ring = 1 - dim * (0.7 + 0.3 * k);
      colour[k] = Math.min(1, base[k] * light * ring);
    }
  }
}
