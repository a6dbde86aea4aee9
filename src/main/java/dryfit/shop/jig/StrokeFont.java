package dryfit.shop.jig;

import dryfit.geometry.Vec2;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Letters as single strokes, for grooves: our own plain capitals on a field four wide and six high,
 * five from one letter to the next.
 */
final class StrokeFont {
  /** From the foot of a letter to its top, in units of the field. */
  static final double HIGH = 6;

  /** From one letter to the next. */
  static final double STEP = 5.6;

  private static final Map<Character, String> GLYPHS = new HashMap<>();

  static {
    String[] all = {
      "A", "00 26 40;12 32",
      "B", "00 06 36 45 44 33 03;33 42 41 30 00",
      "C", "45 36 16 05 01 10 30 41",
      "D", "00 06 26 44 42 20 00",
      "E", "46 06 00 40;03 33",
      "F", "46 06 00;03 33",
      "G", "45 36 16 05 01 10 30 41 43 23",
      "H", "00 06;40 46;03 43",
      "I", "20 26;16 36;10 30",
      "J", "46 41 30 10 01",
      "K", "00 06;46 03 40",
      "L", "06 00 40",
      "M", "00 06 23 46 40",
      "N", "00 06 40 46",
      "O", "10 01 05 16 36 45 41 30 10",
      "P", "00 06 36 45 44 33 03",
      "Q", "10 01 05 16 36 45 41 30 10;22 40",
      "R", "00 06 36 45 44 33 03;23 40",
      "S", "45 36 16 05 04 13 33 42 41 30 10 01",
      "T", "06 46;26 20",
      "U", "06 01 10 30 41 46",
      "V", "06 20 46",
      "W", "06 10 23 30 46",
      "X", "00 46;06 40",
      "Y", "06 23 46;23 20",
      "Z", "06 46 00 40",
      "0", "10 01 05 16 36 45 41 30 10;01 45",
      "1", "14 26 20;10 30",
      "2", "05 16 36 45 44 00 40",
      "3", "05 16 36 45 44 33 13;33 42 41 30 10 01",
      "4", "30 36 02 42",
      "5", "46 06 03 33 42 41 30 10 01",
      "6", "36 16 05 01 10 30 41 42 33 03",
      "7", "06 46 10",
      "8", "13 04 05 16 36 45 44 33 13 02 01 10 30 41 42 33",
      "9", "01 10 30 41 45 36 16 05 04 13 43",
      "-", "13 33",
      "+", "13 33;22 24",
      ".", "20 21",
      ",", "10 21",
      "/", "00 46",
      "°", "24 15 26 35 24",
      "=", "12 32;14 34",
      "(", "36 24 22 30",
      ")", "16 24 22 10",
    };
    for (int i = 0; i < all.length; i += 2) {
      GLYPHS.put(all[i].charAt(0), all[i + 1]);
    }
  }

  private StrokeFont() {}

  /** The text in letters that there are: capitals, without accents; a hyphen for the rest. */
  static String plain(String text) {
    String bare =
        Normalizer.normalize(text.replace('−', '-'), Normalizer.Form.NFD)
            .replaceAll("\\p{M}", "")
            .toUpperCase(Locale.ROOT);
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < bare.length(); i++) {
      char c = bare.charAt(i);
      out.append(c == ' ' || GLYPHS.containsKey(c) ? c : '-');
    }
    return out.toString();
  }

  /** How wide a line is, in units of the field. */
  static double width(String text) {
    return text.isEmpty() ? 0 : STEP * (text.length() - 1) + 4;
  }

  /** The strokes of a line that starts at zero, in units of the field; each from point to point. */
  static List<Vec2[]> strokes(String text) {
    List<Vec2[]> out = new ArrayList<>();
    for (int i = 0; i < text.length(); i++) {
      String glyph = GLYPHS.getOrDefault(text.charAt(i), "");
      for (String line : glyph.isEmpty() ? new String[0] : glyph.split(";", -1)) {
        String[] at = line.split(" ", -1);
        for (int k = 1; k < at.length; k++) {
          out.add(new Vec2[] {point(at[k - 1], i), point(at[k], i)});
        }
      }
    }
    return out;
  }

  private static Vec2 point(String two, int letter) {
    return new Vec2(two.charAt(0) - '0' + STEP * letter, two.charAt(1) - '0');
  }
}
