package dryfit.export.book;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.export.picture.Inked;
import dryfit.export.picture.WoodTone;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;

/**
 * The solids of a chair, small enough to be carried within a page: places to a tenth of a
 * millimetre in two bytes each, triangles and lines as numbers of places.
 */
final class Turnable {
  /** Numbers of places that two bytes hold. */
  private static final int TWO_BYTES = 0xFFFF;

  private Turnable() {}

  /** As JSON; no name in it can end the element of the page that it stands in. */
  static String json(Chair chair, String hint) {
    List<String> parts = new ArrayList<>();
    for (Part part : chair.parts()) {
      parts.add(part(part));
    }
    return "{\"hint\":" + text(hint) + ",\"parts\":[\n" + String.join(",\n", parts) + "]}";
  }

  private static String part(Part part) {
    Inked inked = Inked.of(part.placedMesh());
    boolean wide = inked.xyz().length / 3 > TWO_BYTES;
    WoodTone tone = WoodTone.of(part.plan().common().timber());
    return "{\"name\":"
        + text(part.label())
        + ",\"wide\":"
        + wide
        + ",\"colour\":["
        + level(tone.red())
        + ","
        + level(tone.green())
        + ","
        + level(tone.blue())
        + "],\"points\":\""
        + points(inked.xyz())
        + "\",\"triangles\":\""
        + numbers(inked.triangles(), wide)
        + "\",\"lines\":\""
        + numbers(inked.creases(), wide)
        + "\"}";
  }

  private static long level(double share) {
    return Math.round(255 * share);
  }

  private static String points(double[] xyz) {
    ByteBuffer out = ByteBuffer.allocate(2 * xyz.length).order(ByteOrder.LITTLE_ENDIAN);
    for (double d : xyz) {
      // Three metres to each side of the middle of the seat is more than any settee takes.
      long tenths = Math.round(10 * d);
      out.putShort((short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, tenths)));
    }
    return Base64.getEncoder().encodeToString(out.array());
  }

  private static String numbers(int[] numbers, boolean wide) {
    ByteBuffer out =
        ByteBuffer.allocate((wide ? 4 : 2) * numbers.length).order(ByteOrder.LITTLE_ENDIAN);
    for (int n : numbers) {
      if (wide) {
        out.putInt(n);
      } else {
        out.putShort((short) n);
      }
    }
    return Base64.getEncoder().encodeToString(out.array());
  }

  private static String text(String value) {
    StringBuilder out = new StringBuilder("\"");
    value
        .chars()
        .forEach(
            c -> {
              boolean plain = c >= 0x20 && c < 0x7F && "\"\\<>&".indexOf(c) < 0;
              out.append(
                  plain
                      ? Character.toString(c)
                      : String.format(java.util.Locale.ROOT, "\\u%04x", c));
            });
    return out.append('"').toString();
  }
}
