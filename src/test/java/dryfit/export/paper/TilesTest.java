package dryfit.export.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.export.paper.Ink.Colour;
import dryfit.export.paper.Ink.Line;
import dryfit.export.paper.Page.Paper;
import dryfit.geometry.Vec2;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

/** A drawing on several sheets, measured in the file that goes to the printer. */
class TilesTest {
  /** Units of a PDF page in a millimetre: 72 in an inch, ISO 32000-1, 8.3.2.3. */
  private static final double POINTS = 72 / 25.4;

  private static Drawing bar(double length) {
    Vec2 low = new Vec2(0, 0);
    Vec2 high = new Vec2(length, 30);
    List<Vec2> loop = List.of(low, new Vec2(length, 0), high, new Vec2(0, 30));
    return new Drawing(List.of(new Line(loop, true, 0.35, Colour.BLACK)), low, high);
  }

  private static Ink.Window window(Page page) {
    return (Ink.Window) page.ink().get(0);
  }

  @Test
  void neighboursOverlapByWhatIsSaidAndTogetherCoverTheDrawing() {
    Tiles tiles = Tiles.of(bar(600), Paper.A4);
    List<Page> pages = tiles.pages("Demo");
    assertThat(pages).hasSize(tiles.count()).hasSizeGreaterThan(1);
    for (int i = 0; i + 1 < pages.size(); i++) {
      Ink.Window one = window(pages.get(i));
      Ink.Window next = window(pages.get(i + 1));
      double ends = one.high().x() - one.shift().x();
      double begins = next.low().x() - next.shift().x();
      assertThat(ends - begins).isCloseTo(Tiles.OVERLAP, within(1e-9));
    }
    Ink.Window first = window(pages.get(0));
    Ink.Window last = window(pages.get(pages.size() - 1));
    assertThat(first.low().x() - first.shift().x()).isLessThanOrEqualTo(0);
    assertThat(last.high().x() - last.shift().x()).isGreaterThanOrEqualTo(600);
  }

  @Test
  void aSheetWithNothingOnItIsLeftOut() {
    List<Ink> ink = new ArrayList<>();
    Vec2 far = new Vec2(900, 900);
    ink.add(Line.of(new Vec2(0, 0), new Vec2(40, 0), 0.3, Colour.BLACK));
    ink.add(Line.of(new Vec2(860, 900), far, 0.3, Colour.BLACK));
    assertThat(Tiles.of(new Drawing(ink, new Vec2(0, 0), far), Paper.A4).count()).isEqualTo(2);
  }

  @Test
  void everySheetHasBarsOf100MmAnd4InBothWaysInItsPdf() throws IOException {
    byte[] pdf = PdfFile.bytes(Tiles.of(bar(600), Paper.LETTER).pages("Demo"), "Demo");
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (int i = 0; i < document.getNumberOfPages(); i++) {
        List<double[]> strokes = strokes(document, i);
        for (double length : new double[] {100, 4 * 25.4}) {
          assertThat(strokes)
              .anyMatch(s -> near(s[2] - s[0], length * POINTS) && near(s[3], s[1]))
              .anyMatch(s -> near(s[3] - s[1], length * POINTS) && near(s[2], s[0]));
        }
      }
    }
  }

  @Test
  void aLineOf600MmIsThatLongInThePdf() throws IOException {
    byte[] pdf = PdfFile.bytes(Tiles.of(bar(600), Paper.A4).pages("Demo"), "Demo");
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertThat(strokes(document, 0))
          .anyMatch(s -> near(s[2] - s[0], 600 * POINTS) && near(s[3], s[1]));
    }
  }

  private static boolean near(double a, double b) {
    return Math.abs(a - b) < 0.01;
  }

  /** The straight strokes of a page, from and to, in units of the page but for where they are. */
  private static List<double[]> strokes(PDDocument document, int page) throws IOException {
    PDFStreamParser parser = new PDFStreamParser(document.getPage(page));
    List<double[]> out = new ArrayList<>();
    List<Double> numbers = new ArrayList<>();
    double scale = 1;
    double[] at = new double[2];
    for (Object token = parser.parseNextToken(); token != null; token = parser.parseNextToken()) {
      if (token instanceof COSNumber number) {
        numbers.add((double) number.floatValue());
      } else if (token instanceof Operator operator) {
        switch (operator.getName()) {
          case "cm" -> scale *= numbers.get(0);
          case "m" -> at = new double[] {numbers.get(0) * scale, numbers.get(1) * scale};
          case "l" -> {
            double[] to = {numbers.get(0) * scale, numbers.get(1) * scale};
            out.add(new double[] {at[0], at[1], to[0], to[1]});
            at = to;
          }
          default -> {}
        }
        numbers.clear();
      } else {
        numbers.clear();
      }
    }
    return out;
  }
}
