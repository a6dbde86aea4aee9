package dryfit.export.picture;

import dryfit.export.paper.PngWriter;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;

/**
 * Chairs seen by one camera, so that their pictures can be laid side by side or over each other.
 * Laid over, the first is drawn in blue and the other in orange; where they agree it is grey.
 */
public final class Overlay {
  private final List<List<Figure>> chairs;

  /**
   * @throws IllegalArgumentException if there is no chair
   */
  public Overlay(List<List<Figure>> chairs) {
    if (chairs.isEmpty()) {
      throw new IllegalArgumentException("nothing to draw");
    }
    this.chairs = chairs.stream().map(List::copyOf).toList();
  }

  /** One chair as a PNG file, where all of them would be in the picture. */
  public byte[] alone(int chair, View view, int size) {
    return PngWriter.bytes(draw(chair, view, size));
  }

  /** The first and another as a PNG file, laid over each other. */
  public byte[] over(int other, View view, int size) {
    BufferedImage first = draw(0, view, size);
    BufferedImage second = draw(other, view, size);
    BufferedImage both = new BufferedImage(size, size, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < size; y++) {
      for (int x = 0; x < size; x++) {
        int a = grey(first.getRGB(x, y));
        int b = grey(second.getRGB(x, y));
        // Dark ink of the first takes red away and leaves blue; of the other it takes blue away.
        both.setRGB(x, y, a << 16 | (a + b) / 2 << 8 | b);
      }
    }
    return PngWriter.bytes(both);
  }

  private BufferedImage draw(int chair, View view, int size) {
    return new Picture(chairs.get(chair), List.of()).draw(camera(view), size, size);
  }

  private Camera camera(View view) {
    List<Figure> all = new ArrayList<>();
    chairs.forEach(all::addAll);
    return new Picture(all, List.of()).camera(view, 1);
  }

  /** Brightness as the eye weighs it (ITU-R BT.601), 0 to 255. */
  private static int grey(int rgb) {
    int red = rgb >> 16 & 0xff;
    int green = rgb >> 8 & 0xff;
    int blue = rgb & 0xff;
    return (299 * red + 587 * green + 114 * blue) / 1000;
  }
}
