package dryfit.export.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** How wide text is in the type that our pages are set in, and where it breaks into lines. */
public final class Typeface {
  /** The font that the library brings along; the metrics are those of a common sans serif. */
  static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  /** Letters whose widths are looked up once. */
  private static final int PLAIN = 0x180;

  /** Taken for any other sign, thousandths of the size: a little more than most are wide. */
  private static final double UNKNOWN = 600;

  private Typeface() {}

  /** Read when it is first asked for, and never changed. */
  private static final class Widths {
    private static final double[] OF = read();

    private static double[] read() {
      double[] out = new double[PLAIN];
      try (PDDocument document = new PDDocument();
          InputStream in = PDDocument.class.getResourceAsStream(FONT)) {
        PDFont font = PDType0Font.load(document, in, true);
        for (int c = 0; c < PLAIN; c++) {
          out[c] = width(font, c);
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      return out;
    }

    private static double width(PDFont font, int c) throws IOException {
      try {
        return font.getStringWidth(Character.toString(c));
      } catch (IllegalArgumentException e) {
        return UNKNOWN;
      }
    }
  }

  /**
   * How wide a line of text is, mm.
   *
   * @param size of the type, mm
   */
  public static double width(String text, double size) {
    return text.codePoints().mapToDouble(c -> c < PLAIN ? Widths.OF[c] : UNKNOWN).sum()
        / 1000
        * size;
  }

  /**
   * Lines no wider than a measure, broken at blanks; a word that is wider by itself is broken where
   * it has to be. A no-break space is never broken at.
   */
  public static List<String> lines(String text, double size, double measure) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String whole : text.strip().split("[ \n]+")) {
      for (String word : broken(whole, size, measure)) {
        String longer = line.isEmpty() ? word : line + " " + word;
        if (!line.isEmpty() && width(longer, size) > measure) {
          lines.add(line);
          longer = word;
        }
        line = longer;
      }
    }
    lines.add(line);
    return lines;
  }

  private static List<String> broken(String word, double size, double measure) {
    if (width(word, size) <= measure) {
      return List.of(word);
    }
    List<String> out = new ArrayList<>();
    StringBuilder piece = new StringBuilder();
    for (int c : word.codePoints().toArray()) {
      String sign = Character.toString(c);
      if (!piece.isEmpty() && width(piece + sign, size) > measure) {
        out.add(piece.toString());
        piece.setLength(0);
      }
      piece.append(sign);
    }
    out.add(piece.toString());
    return out;
  }
}
