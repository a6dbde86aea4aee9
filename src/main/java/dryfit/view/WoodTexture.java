package dryfit.view;

import dryfit.export.picture.WoodTone;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;

/** A face of a board: growth rings run along it, drawn so that it joins to itself on all sides. */
final class WoodTexture {
  private static final int LONG = 512;
  private static final int WIDE = 256;

  /** Rings in one repeat; whole numbers, so that the edges meet. */
  private static final int[] RINGS = {9, 17, 31, 57};

  private WoodTexture() {}

  static WritableImage of(String timber) {
    WoodTone tone = WoodTone.of(timber);
    int[] pixels = new int[LONG * WIDE];
    for (int v = 0; v < WIDE; v++) {
      for (int u = 0; u < LONG; u++) {
        double shade = 1 + 0.75 * tone.figure() * rings((double) u / LONG, (double) v / WIDE);
        pixels[v * LONG + u] =
            0xFF000000
                | channel(tone.red() * shade) << 16
                | channel(tone.green() * shade) << 8
                | channel(tone.blue() * shade);
      }
    }
    WritableImage image = new WritableImage(LONG, WIDE);
    image
        .getPixelWriter()
        .setPixels(0, 0, LONG, WIDE, PixelFormat.getIntArgbInstance(), pixels, 0, LONG);
    return image;
  }

  /** From -1 to 1: a sum of waves across the grain that wander a little along it. */
  private static double rings(double u, double v) {
    double wander = 0.012 * Math.sin(2 * Math.PI * u) + 0.006 * Math.sin(2 * Math.PI * (3 * u + v));
    double sum = 0;
    for (int i = 0; i < RINGS.length; i++) {
      sum += Math.sin(2 * Math.PI * (RINGS[i] * (v + wander) + 0.37 * i * i)) / RINGS.length;
    }
    return sum;
  }

  private static int channel(double share) {
    return (int) Math.round(255 * Math.max(0, Math.min(1, share)));
  }
}
