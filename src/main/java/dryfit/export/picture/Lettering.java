package dryfit.export.picture;

import java.util.Locale;
import java.util.Map;

/**
 * Single-stroke capitals, drawn with the pen, so that a picture needs no font of the machine it is
 * made on. A letter is 4 wide and 6 high; a glyph is a list of strokes, each a run of points given
 * as two digits, x then y upwards from the base line.
 */
final class Lettering {
  private static final double ADVANCE = 5.4;

  private static final Map<Character, String> GLYPHS =
      Map.ofEntries(
          Map.entry('A', "002640 1232"),
          Map.entry('B', "00063645443303 3342413000"),
          Map.entry('C', "4536160501103041"),
          Map.entry('D', "00062644422000"),
          Map.entry('E', "46060040 0333"),
          Map.entry('F', "460600 0333"),
          Map.entry('G', "45361605011030414323"),
          Map.entry('H', "0006 4046 0343"),
          Map.entry('I', "1030 2026 1636"),
          Map.entry('J', "4641301001"),
          Map.entry('K', "0006 4603 1440"),
          Map.entry('L', "060040"),
          Map.entry('M', "0006234640"),
          Map.entry('N', "00064046"),
          Map.entry('O', "100105163645413010"),
          Map.entry('P', "00063645443303"),
          Map.entry('Q', "100105163645413010 2240"),
          Map.entry('R', "00063645443303 2340"),
          Map.entry('S', "453616050413334241301001"),
          Map.entry('T', "2026 0646"),
          Map.entry('U', "060110304146"),
          Map.entry('V', "062046"),
          Map.entry('W', "0610243046"),
          Map.entry('X', "0046 0640"),
          Map.entry('Y', "062346 2320"),
          Map.entry('Z', "06460040"),
          Map.entry('0', "100105163645413010"),
          Map.entry('1', "052620 1030"),
          Map.entry('2', "05163645440040"),
          Map.entry('3', "05163645443313 334241301001"),
          Map.entry('4', "360242 3630"),
          Map.entry('5', "460603334241301001"),
          Map.entry('6', "4536160501103041423303"),
          Map.entry('7', "064610"),
          Map.entry('8', "130405163645443313 1302011030414233"),
          Map.entry('9', "0110304145361605041343"),
          Map.entry('.', "2021"),
          Map.entry(',', "1021"),
          Map.entry(':', "2021 2425"),
          Map.entry('-', "1333"),
          Map.entry('+', "0343 2125"),
          Map.entry('/', "0046"),
          Map.entry('(', "36151130"),
          Map.entry(')', "16353110"));

  private final Pen pen;

  Lettering(Pen pen) {
    this.pen = pen;
  }

  /** Width of a line of lettering {@code high} samples high. */
  static double width(String text, double high) {
    return Math.max(0, text.length() * ADVANCE - (ADVANCE - 4)) * high / 6;
  }

  /** Writes from the left end of the base line; what has no glyph leaves a space. */
  void write(String text, double x, double base, double high, double thick) {
    double unit = high / 6;
    double left = x;
    for (char c : text.toUpperCase(Locale.ROOT).toCharArray()) {
      for (String stroke : GLYPHS.getOrDefault(c, "").split(" ", -1)) {
        stroke(stroke, left, base, unit, thick);
      }
      left += ADVANCE * unit;
    }
  }

  private void stroke(String points, double left, double base, double unit, double thick) {
    for (int i = 0; i + 3 < points.length(); i += 2) {
      pen.line(
          left + digit(points, i) * unit,
          base - digit(points, i + 1) * unit,
          left + digit(points, i + 2) * unit,
          base - digit(points, i + 3) * unit,
          thick,
          1);
    }
  }

  private static int digit(String points, int at) {
    return points.charAt(at) - '0';
  }
}
