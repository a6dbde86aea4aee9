package dryfit.view;

import dryfit.export.picture.WoodTone;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;

/** A face of a board: growth rings run along it, drawn so that it joins to itself on all sides. */
final class WoodTexture {
  private static final int LONG = 512;
  private static final int WIDE = 256;

  /** Places in a table; a power of two. */
  private static final int STEPS = 8192;

  /** Rings in one repeat; whole numbers, so that the edges meet. */
  private static final int[] RINGS = {9, 17, 31, 57};

  private WoodTexture() {}

  static WritableImage of(String timber) {
    WoodTone tone = WoodTone.of(timber);
    double[] wave = wave();
    double[] rings = rings();
    int[] pixels = new int[LONG * WIDE];
    for (int v = 0; v < WIDE; v++) {
      for (int u = 0; u < LONG; u++) {
        // Across the grain, wandering a little along it.
        double at =
            (double) v / WIDE
                + 0.012 * at(wave, (double) u / LONG)
                + 0.006 * at(wave, 3.0 * u / LONG + (double) v / WIDE);
        double shade = 1 + 0.75 * tone.figure() * at(rings, at);
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
        .setPixels(0, 0, LONG, WIDE, PixelFormat.getIntArgbPreInstance(), pixels, 0, LONG);
    return image;
  }

  /** One turn of a sine; half a million of them would hold up the first picture. */
  private static double[] wave() {
    double[] wave = new double[STEPS];
    for (int i = 0; i < STEPS; i++) {
      wave[i] = Math.sin(2 * Math.PI * i / STEPS);
    }
    return wave;
  }

  /** From -1 to 1 over one repeat: a sum of waves across the grain. */
  private static double[] rings() {
    double[] wave = wave();
    double[] rings = new double[STEPS];
    for (int i = 0; i < STEPS; i++) {
      for (int k = 0; k < RINGS.length; k++) {
        rings[i] += at(wave, (double) RINGS[k] * i / STEPS + 0.37 * k * k) / RINGS.length;
      }
    }
    return rings;
  }

  /** What a table of one repeat says of a place, which may lie in any repeat. */
  private static double at(double[] table, double place) {
    return table[(int) Math.floor(place * STEPS) & (STEPS - 1)];
  }

  private static int channel(double share) {
    return (int) Math.round(255 * Math.max(0, Math.min(1, share)));
  }
}
