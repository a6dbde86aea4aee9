package dryfit.export.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.export.paper.Ink.Align;
import dryfit.export.paper.Ink.Area;
import dryfit.export.paper.Ink.Colour;
import dryfit.export.paper.Ink.Line;
import dryfit.export.paper.Ink.Window;
import dryfit.export.paper.Ink.Words;
import dryfit.geometry.Vec2;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** Pages as files, read back by other programs than wrote them. */
class PaperFilesTest {
  private static final Vec2 LOW = new Vec2(20, 30);
  private static final Vec2 HIGH = new Vec2(120, 130);

  private static Page page() {
    return new Page(
        210,
        297,
        List.of(
            new Area(
                List.of(List.of(LOW, new Vec2(120, 30), HIGH, new Vec2(20, 130))), Colour.BLACK),
            new Words(new Vec2(20, 200), "leg – 8 3/4″ × 12°, <oak & ash>", 5, Align.LEFT),
            new Window(
                new Vec2(150, 30),
                new Vec2(160, 40),
                new Vec2(100, 0),
                List.of(Line.of(new Vec2(0, 35), new Vec2(100, 35), 2, Colour.BLACK)))));
  }

  private static byte[] pdf() {
    return PdfFile.bytes(List.of(page()), "Demo");
  }

  @Test
  void theSamePagesGiveTheSameBytes() {
    assertThat(pdf()).isEqualTo(pdf());
    assertThat(new String(pdf(), StandardCharsets.ISO_8859_1)).doesNotContain("CreationDate");
  }

  @Test
  void aMillimetreIsAMillimetreOnThePdfPage() throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf())) {
      assertThat(document.getPage(0).getMediaBox().getWidth() / 72 * 25.4)
          .isCloseTo(210, within(1e-3));
      // Ten dots to the millimetre.
      BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, 254);
      assertThat(blackFrom(image, 2970 - 800)).isCloseTo(200, within(1));
      assertThat(blackTo(image, 2970 - 800)).isCloseTo(1200, within(1));
      assertThat(blackFrom(image, 2970 - 350)).isCloseTo(200, within(1));
      assertThat(blackTo(image, 2970 - 350)).isCloseTo(1600, within(1));
      assertThat(blackTo(image, 2970 - 295)).isEqualTo(-1);
    }
  }

  @Test
  void wordsCanBeReadOutOfThePdf() throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf())) {
      assertThat(new PDFTextStripper().getText(document))
          .contains("leg – 8 3/4″ × 12°, <oak & ash>");
    }
  }

  @Test
  void aUnitOfTheSvgIsAMillimetre() throws Exception {
    byte[] svg = SvgFile.bytes(page(), "Demo <1>");
    assertThat(new String(svg, StandardCharsets.UTF_8))
        .contains("width=\"210mm\" height=\"297mm\" viewBox=\"0 0 210 297\"")
        .contains("M 20 267 L 120 267 L 120 167 L 20 167 Z")
        .contains("&lt;oak &amp; ash&gt;");
    // It is XML that a parser takes.
    var parsed =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(svg));
    assertThat(parsed.getElementsByTagName("text").getLength()).isEqualTo(1);
  }

  private static int blackFrom(BufferedImage image, int y) {
    for (int x = 0; x < image.getWidth(); x++) {
      if (isBlack(image, x, y)) {
        return x;
      }
    }
    return -1;
  }

  private static int blackTo(BufferedImage image, int y) {
    for (int x = image.getWidth() - 1; x >= 0; x--) {
      if (isBlack(image, x, y)) {
        return x + 1;
      }
    }
    return -1;
  }

  private static boolean isBlack(BufferedImage image, int x, int y) {
    return (image.getRGB(x, y) & 0xff) < 128;
  }
}
