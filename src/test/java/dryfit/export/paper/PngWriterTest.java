package dryfit.export.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.SplittableRandom;
import java.util.function.IntBinaryOperator;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** Read back with the reader of the JDK, which knows nothing of the writer. */
class PngWriterTest {
  private static BufferedImage image(int wide, int high, IntBinaryOperator colour) {
    BufferedImage image = new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < high; y++) {
      for (int x = 0; x < wide; x++) {
        image.setRGB(x, y, colour.applyAsInt(x, y));
      }
    }
    return image;
  }

  private static void same(BufferedImage image) throws IOException {
    BufferedImage read = ImageIO.read(new ByteArrayInputStream(PngWriter.bytes(image)));
    assertThat(read.getWidth()).isEqualTo(image.getWidth());
    assertThat(read.getHeight()).isEqualTo(image.getHeight());
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        assertThat(read.getRGB(x, y)).as("%d %d", x, y).isEqualTo(image.getRGB(x, y));
      }
    }
  }

  @Test
  void anyColoursReadBackAsTheyWere() throws IOException {
    SplittableRandom random = new SplittableRandom(3);
    same(image(37, 23, (x, y) -> random.nextInt(1 << 24)));
    same(image(1, 1, (x, y) -> 0xffffff));
  }

  /** Each row asks for another filter: flat, along, down, in between, across the corner. */
  @Test
  void everyFilterReadsBack() throws IOException {
    same(image(64, 16, (x, y) -> 0x102030));
    same(image(64, 16, (x, y) -> (3 * x % 256) * 0x010101));
    SplittableRandom random = new SplittableRandom(5);
    int[] row = random.ints(64, 0, 1 << 24).toArray();
    same(image(64, 16, (x, y) -> row[x]));
    same(image(64, 64, (x, y) -> (x + y + x * y / 16) % 256 * 0x010101));
    same(image(64, 64, (x, y) -> ((int) (90 * Math.sin(x / 7.0) * Math.cos(y / 5.0)) + 120) << 8));
  }

  @Test
  void aSlopeOfColourIsPackedToNearlyNothing() {
    byte[] bytes = PngWriter.bytes(image(200, 200, (x, y) -> (x + y) / 2 * 0x010101));
    // Its differences are all alike; unfiltered it would be 120 kB.
    assertThat(bytes.length).isLessThan(2000);
  }
}
