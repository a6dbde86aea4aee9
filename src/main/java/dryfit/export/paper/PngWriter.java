package dryfit.export.paper;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * Pictures as PNG (ISO/IEC 15948), eight bits of red, green and blue. Packed as small as the format
 * allows: each row has the filter whose differences are least (its clause 12.7), and takes its
 * time.
 */
public final class PngWriter {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};

  /** Bytes of a pixel. */
  private static final int PIXEL = 3;

  /** None, sub, up, average, Paeth; clause 9.2. */
  private static final int FILTERS = 5;

  private PngWriter() {}

  /** The bytes of the file; what shines through the picture is left out. */
  public static byte[] bytes(BufferedImage image) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(SIGNATURE);
    ByteBuffer header = ByteBuffer.allocate(13).putInt(image.getWidth()).putInt(image.getHeight());
    // Eight bits each of three colours; packed and filtered in the only way there is; not woven.
    chunk(out, "IHDR", header.put(new byte[] {8, 2, 0, 0, 0}).array());
    chunk(out, "IDAT", packed(filtered(image)));
    chunk(out, "IEND", new byte[0]);
    return out.toByteArray();
  }

  private static void chunk(ByteArrayOutputStream out, String name, byte[] data) {
    byte[] word = name.getBytes(StandardCharsets.US_ASCII);
    CRC32 crc = new CRC32();
    crc.update(word);
    crc.update(data);
    out.writeBytes(ByteBuffer.allocate(4).putInt(data.length).array());
    out.writeBytes(word);
    out.writeBytes(data);
    out.writeBytes(ByteBuffer.allocate(4).putInt((int) crc.getValue()).array());
  }

  private static byte[] packed(byte[] plain) {
    Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION);
    try {
      deflater.setInput(plain);
      deflater.finish();
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      byte[] some = new byte[1 << 16];
      while (!deflater.finished()) {
        out.write(some, 0, deflater.deflate(some));
      }
      return out.toByteArray();
    } finally {
      deflater.end();
    }
  }

  private static byte[] filtered(BufferedImage image) {
    int width = PIXEL * image.getWidth();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    int[] above = new int[PIXEL + width];
    for (int y = 0; y < image.getHeight(); y++) {
      int[] row = row(image, y);
      byte[] best = new byte[0];
      long least = Long.MAX_VALUE;
      for (int filter = 0; filter < FILTERS; filter++) {
        byte[] tried = new byte[1 + width];
        tried[0] = (byte) filter;
        long sum = 0;
        for (int i = 0; i < width; i++) {
          byte left = (byte) (row[PIXEL + i] - guess(filter, row, above, i));
          tried[1 + i] = left;
          sum += Math.abs(left);
        }
        if (sum < least) {
          least = sum;
          best = tried;
        }
      }
      out.writeBytes(best);
      above = row;
    }
    return out.toByteArray();
  }

  /** A row of colours, with an empty pixel before it. */
  private static int[] row(BufferedImage image, int y) {
    int[] row = new int[PIXEL * (1 + image.getWidth())];
    for (int x = 0; x < image.getWidth(); x++) {
      int rgb = image.getRGB(x, y);
      row[PIXEL * (x + 1)] = rgb >> 16 & 0xff;
      row[PIXEL * (x + 1) + 1] = rgb >> 8 & 0xff;
      row[PIXEL * (x + 1) + 2] = rgb & 0xff;
    }
    return row;
  }

  /** What a filter takes away from a byte of a row. */
  private static int guess(int filter, int[] row, int[] above, int i) {
    int left = row[i];
    int up = above[PIXEL + i];
    int corner = above[i];
    return switch (filter) {
      case 0 -> 0;
      case 1 -> left;
      case 2 -> up;
      case 3 -> (left + up) / 2;
      default -> nearest(left, up, corner);
    };
  }

  /** Of the three the one nearest to left + up - corner, in this order; clause 9.4. */
  private static int nearest(int left, int up, int corner) {
    int guess = left + up - corner;
    int toLeft = Math.abs(guess - left);
    int toUp = Math.abs(guess - up);
    int toCorner = Math.abs(guess - corner);
    return toLeft <= toUp && toLeft <= toCorner ? left : toUp <= toCorner ? up : corner;
  }
}
