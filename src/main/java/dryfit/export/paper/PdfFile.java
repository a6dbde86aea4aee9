package dryfit.export.paper;

import dryfit.export.paper.Ink.Align;
import dryfit.export.paper.Ink.Area;
import dryfit.export.paper.Ink.Colour;
import dryfit.export.paper.Ink.Line;
import dryfit.export.paper.Ink.Picture;
import dryfit.export.paper.Ink.Window;
import dryfit.export.paper.Ink.Words;
import dryfit.geometry.Vec2;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.util.Matrix;

/**
 * Pages as PDF (ISO 32000-1), true to size: a millimetre is 72/25.4 of the format's units. The font
 * is embedded, so it prints alike everywhere. The file has neither a date nor a random mark: the
 * same pages give the same bytes.
 */
public final class PdfFile {
  /** Units of the format in a millimetre: 72 in an inch, ISO 32000-1, 8.3.2.3. */
  static final double POINTS = 72 / 25.4;

  /** Any number does, as long as it is always the same: it keeps the clock out of the file's id. */
  private static final long ID = 1;

  private final PDDocument document;
  private final PDPageContentStream out;
  private final PDFont font;

  private PdfFile(PDDocument document, PDPageContentStream out, PDFont font) {
    this.document = document;
    this.out = out;
    this.font = font;
  }

  /** The file. Asks programs that print it not to scale it. */
  public static byte[] bytes(List<Page> pages, String title) {
    try (PDDocument document = new PDDocument();
        InputStream in = PDDocument.class.getResourceAsStream(Typeface.FONT)) {
      document.setDocumentId(ID);
      document.getDocumentInformation().setTitle(title);
      document.getDocumentInformation().setProducer("dryfit");
      PDViewerPreferences preferences =
          new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
      preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
      document.getDocumentCatalog().setViewerPreferences(preferences);
      PDFont font = PDType0Font.load(document, in, true);
      for (Page page : pages) {
        PDPage sheet =
            new PDPage(
                new PDRectangle((float) (page.width() * POINTS), (float) (page.height() * POINTS)));
        document.addPage(sheet);
        try (PDPageContentStream stream = new PDPageContentStream(document, sheet)) {
          PdfFile pen = new PdfFile(document, stream, font);
          stream.transform(Matrix.getScaleInstance((float) POINTS, (float) POINTS));
          stream.setLineCapStyle(0);
          pen.draw(page.ink());
        }
      }
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      document.save(bytes, CompressParameters.NO_COMPRESSION);
      return bytes.toByteArray();
    } catch (IOException e) {
      // Nothing is read or written but memory and the font of the library.
      throw new UncheckedIOException(e);
    }
  }

  private void draw(List<Ink> all) throws IOException {
    for (Ink ink : all) {
      if (ink instanceof Line line) {
        line(line);
      } else if (ink instanceof Area area) {
        out.setNonStrokingColor(
            part(area.colour().red()), part(area.colour().green()), part(area.colour().blue()));
        area.loops().forEach(loop -> path(loop, true));
        out.fillEvenOdd();
      } else if (ink instanceof Words words) {
        words(words);
      } else if (ink instanceof Picture picture) {
        picture(picture);
      } else if (ink instanceof Window window) {
        out.saveGraphicsState();
        Vec2 size = window.high().minus(window.low());
        out.addRect(
            (float) window.low().x(), (float) window.low().y(), (float) size.x(), (float) size.y());
        out.clip();
        out.transform(
            Matrix.getTranslateInstance((float) window.shift().x(), (float) window.shift().y()));
        draw(window.ink());
        out.restoreGraphicsState();
      }
    }
  }

  private void picture(Picture picture) throws IOException {
    Vec2 size = picture.high().minus(picture.low());
    out.drawImage(
        PDImageXObject.createFromByteArray(document, picture.png().bytes(), null),
        (float) picture.low().x(),
        (float) picture.low().y(),
        (float) size.x(),
        (float) size.y());
  }

  private void line(Line line) throws IOException {
    Colour c = line.colour();
    out.setStrokingColor(part(c.red()), part(c.green()), part(c.blue()));
    out.setLineWidth((float) line.width());
    float[] dashes = new float[line.dashes().size()];
    for (int i = 0; i < dashes.length; i++) {
      dashes[i] = line.dashes().get(i).floatValue();
    }
    out.setLineDashPattern(dashes, 0);
    path(line.points(), line.closed());
    out.stroke();
  }

  private static float part(int of255) {
    return of255 / 255f;
  }

  private void path(List<Vec2> points, boolean closed) {
    try {
      out.moveTo((float) points.get(0).x(), (float) points.get(0).y());
      for (Vec2 p : points.subList(1, points.size())) {
        out.lineTo((float) p.x(), (float) p.y());
      }
      if (closed) {
        out.closePath();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void words(Words words) throws IOException {
    String text = encodable(words.text());
    double wide = font.getStringWidth(text) / 1000 * words.size();
    double back = words.align() == Align.LEFT ? 0 : words.align() == Align.RIGHT ? wide : wide / 2;
    Colour c = words.colour();
    out.setNonStrokingColor(part(c.red()), part(c.green()), part(c.blue()));
    out.beginText();
    out.setFont(font, (float) words.size());
    Matrix at =
        Matrix.getRotateInstance(words.turn(), (float) words.at().x(), (float) words.at().y());
    at.translate((float) -back, 0);
    out.setTextMatrix(at);
    out.showText(text);
    out.endText();
  }

  /** What the font has no sign for becomes a question mark. */
  private String encodable(String text) {
    StringBuilder kept = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              String sign = Character.toString(c);
              kept.append(has(sign) ? sign : "?");
            });
    return kept.toString();
  }

  private boolean has(String sign) {
    try {
      font.encode(sign);
      return true;
    } catch (IllegalArgumentException e) {
      return false;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
