package dryfit.cli;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;

/** What is in a file, however it is packed: another zlib packs the same into other bytes. */
final class Unpacked {
  private static final Pattern PICTURE = Pattern.compile("data:image/png;base64,([A-Za-z0-9+/=]+)");

  private Unpacked() {}

  /** Whether two files of one name are the same, or hold the same. */
  static boolean same(String name, byte[] a, byte[] b) throws IOException {
    return Arrays.equals(a, b) || of(name, a).equals(of(name, b));
  }

  private static String of(String name, byte[] bytes) throws IOException {
    if (name.endsWith(".png")) {
      return pixels(bytes);
    } else if (name.endsWith(".pdf")) {
      return pdf(bytes);
    }
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    return PICTURE.matcher(text).replaceAll(m -> pixels(Base64.getDecoder().decode(m.group(1))));
  }

  private static String pixels(byte[] png) {
    try {
      BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
      int wide = image.getWidth();
      int[] all = image.getRGB(0, 0, wide, image.getHeight(), null, 0, wide);
      return wide + ":" + Arrays.toString(all);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  /** Every object of the file, its streams as they are once unpacked. */
  private static String pdf(byte[] bytes) throws IOException {
    StringBuilder all = new StringBuilder();
    try (PDDocument document = Loader.loadPDF(bytes)) {
      for (COSObjectKey key :
          document.getDocument().getXrefTable().keySet().stream().sorted().toList()) {
        var object = document.getDocument().getObjectFromPool(key).getObject();
        all.append(key).append(' ');
        if (object instanceof COSStream stream) {
          COSDictionary plain = new COSDictionary(stream);
          plain.removeItem(COSName.LENGTH);
          byte[] unpacked = stream.createInputStream().readAllBytes();
          all.append(plain).append(new String(unpacked, StandardCharsets.ISO_8859_1));
        } else {
          all.append(object);
        }
      }
    }
    return all.toString();
  }
}
