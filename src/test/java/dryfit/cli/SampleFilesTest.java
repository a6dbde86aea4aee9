package dryfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SampleFilesTest {
  private static final String ANEW =
      "if the change is meant, make the samples anew as exports/README.md says: ";

  @TempDir Path folder;

  @Test
  void everySampleIsWhatItsCommandWrites() throws IOException {
    SampleFiles.write(folder);
    for (String file : SampleFiles.commands().keySet()) {
      Path kept = SampleFiles.EXPORTS.resolve(file);
      assertThat(kept).as(ANEW + file).exists();
      boolean same =
          Unpacked.same(file, Files.readAllBytes(kept), Files.readAllBytes(folder.resolve(file)));
      assertThat(same).as(ANEW + file).isTrue();
    }
  }

  @Test
  void nothingLiesThereThatThePageDoesNotName() throws IOException {
    TreeSet<String> there = new TreeSet<>();
    for (String part : List.of("samples", "pictures")) {
      try (Stream<Path> files = Files.walk(SampleFiles.EXPORTS.resolve(part))) {
        files
            .filter(Files::isRegularFile)
            .map(f -> SampleFiles.EXPORTS.relativize(f).toString().replace('\\', '/'))
            .forEach(there::add);
      }
    }
    TreeSet<String> named = new TreeSet<>(SampleFiles.commands().keySet());
    named.add("pictures/window.png");
    assertThat(there).isEqualTo(named);
  }

  /** A comparison of what is inside must still see one dot that differs. */
  @Test
  void aDotOfAPictureIsSeenHoweverItIsPacked() throws IOException {
    byte[] a = picture(0x204060);
    byte[] b = picture(0x204061);
    assertThat(Unpacked.same("a.png", a, b)).isFalse();
    assertThat(Unpacked.same("a.html", page(a), page(b))).isFalse();
    byte[] other = dryfit.export.paper.PngWriter.bytes(image(0x204060));
    assertThat(other).isNotEqualTo(a);
    assertThat(Unpacked.same("a.png", a, other)).isTrue();
    assertThat(Unpacked.same("a.html", page(a), page(other))).isTrue();
  }

  @Test
  void aLineOfAPdfIsSeenHoweverItIsPacked() throws IOException {
    assertThat(Unpacked.same("a.pdf", pdf(10, true), pdf(11, true))).isFalse();
    assertThat(pdf(10, true)).isNotEqualTo(pdf(10, false));
  }

  private static BufferedImage image(int dot) {
    BufferedImage image = new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB);
    image.setRGB(7, 5, dot);
    return image;
  }

  private static byte[] picture(int dot) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image(dot), "png", out);
    return out.toByteArray();
  }

  private static byte[] page(byte[] png) {
    String address = "data:image/png;base64," + Base64.getEncoder().encodeToString(png);
    return ("<img src=\"" + address + "\">").getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] pdf(int x, boolean packed) throws IOException {
    try (PDDocument document = new PDDocument()) {
      document.setDocumentId(1L);
      PDPage page = new PDPage();
      document.addPage(page);
      try (PDPageContentStream stream =
          new PDPageContentStream(
              document, page, PDPageContentStream.AppendMode.OVERWRITE, packed)) {
        stream.moveTo(x, 0);
        stream.lineTo(100, 100);
        stream.stroke();
      }
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out, CompressParameters.NO_COMPRESSION);
      return out.toByteArray();
    }
  }
}
