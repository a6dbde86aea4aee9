package dryfit.app;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.document.Design;
import dryfit.export.MouthPages;
import dryfit.export.TemplatePages;
import dryfit.export.TextStyle;
import dryfit.export.paper.Page;
import dryfit.export.paper.Page.Paper;
import dryfit.export.paper.PdfFile;
import dryfit.export.paper.SvgFile;
import dryfit.measure.Length;
import dryfit.shop.template.MouthPrint;
import dryfit.shop.template.MouthPrints;
import dryfit.shop.template.Template;
import dryfit.shop.template.TemplateMaker;
import dryfit.shop.template.Wanted;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Draws the templates of parts and writes them: a PDF with all faces of a part, or an SVG for each
 * face.
 *
 * @param folder where the files go; made if it is missing
 * @param paper the sheets of the printer; none for one sheet as large as the drawing
 */
public record DrawTemplates(
    Path folder, Wanted wanted, TextStyle style, Optional<Paper> paper, PaperFormat format) {

  /** Two to three inches at each end are enough for two screws (common practice, no source). */
  private static final double WASTE_IN = 2.5;

  private static final double WASTE_MM = 65;
  private static final double DEPTHS_IN = 0.25;
  private static final double DEPTHS_MM = 5;

  /** Thirty-seconds: finer than a pencil line is no use on a template that is printed. */
  public static final int FRACTIONS = 32;

  /** How templates are wanted where nothing else is said: one for both hands, without a bush. */
  public static Wanted usual(Design design) {
    boolean inches = design.unit() == Design.LengthUnit.IN;
    return new Wanted(
        inches ? Length.Unit.IN.mm(WASTE_IN) : WASTE_MM,
        Optional.empty(),
        Wanted.Hands.BOTH,
        inches ? Length.Unit.IN.mm(DEPTHS_IN) : DEPTHS_MM);
  }

  /** The names of all parts a document has, those that a joint brings along left out. */
  public static List<String> parts(Chair chair) {
    return chair.parts().stream().filter(p -> !p.isPiece()).map(Part::name).distinct().toList();
  }

  /** What there is to tell, in its order. */
  public sealed interface Told {
    /** A template cannot be drawn, and why. */
    record NotDrawn(String part, String because) implements Told {}

    /** So many of all parts are done with. */
    record Done(int parts, int of) implements Told {}

    /** What came of writing a file. */
    record File(WrittenFiles result) implements Told {}
  }

  /** Draws the mouths of the mortises in the parts that are named, to be stuck on and knifed. */
  public Exit mouths(Chair chair, List<String> parts, Consumer<Told> each) {
    List<MouthPrint> prints = new ArrayList<>();
    for (MouthPrints.Made made : MouthPrints.of(chair, parts)) {
      if (made instanceof MouthPrints.Made.Ready ready) {
        prints.add(ready.print());
      } else if (made instanceof MouthPrints.Made.Without without) {
        each.accept(new Told.NotDrawn(without.joint(), without.because()));
      }
    }
    if (prints.isEmpty()) {
      return Exit.FITS;
    }
    MouthPages pages = new MouthPages(chair, prints, style);
    if (format == PaperFormat.PDF && paper.isPresent()) {
      return put("mouths", PdfFile.bytes(pages.sheets(paper.get()), pages.title()), each);
    }
    byte[] bytes =
        format == PaperFormat.PDF
            ? PdfFile.bytes(List.of(pages.one()), pages.title())
            : SvgFile.bytes(pages.one(), pages.title());
    return put("mouths", bytes, each);
  }

  /**
   * Draws the parts that are named.
   *
   * @return how it ended: with the first file that is not written
   */
  public Exit draw(Chair chair, List<String> parts, Consumer<Told> each) {
    FileNames names = new FileNames();
    for (int i = 0; i < parts.size(); i++) {
      String part = parts.get(i);
      each.accept(new Told.Done(i, parts.size()));
      List<TemplatePages> pages = new ArrayList<>();
      for (TemplateMaker.Made made : new TemplateMaker(chair, wanted).of(part)) {
        if (made instanceof TemplateMaker.Made.Ready ready) {
          pages.add(pages(chair, ready.template()));
        } else if (made instanceof TemplateMaker.Made.Without without) {
          each.accept(new Told.NotDrawn(without.part(), without.because()));
        }
      }
      Exit exit = pages.isEmpty() ? Exit.FITS : write(part, pages, names, each);
      if (exit != Exit.FITS) {
        return exit;
      }
    }
    each.accept(new Told.Done(parts.size(), parts.size()));
    return Exit.FITS;
  }

  private TemplatePages pages(Chair chair, Template template) {
    return new TemplatePages(chair, template, wanted, style);
  }

  private Exit write(String part, List<TemplatePages> faces, FileNames names, Consumer<Told> each) {
    if (format == PaperFormat.PDF) {
      List<Page> all = new ArrayList<>();
      faces.forEach(f -> all.addAll(paper.isPresent() ? f.sheets(paper.get()) : List.of(f.one())));
      return put(names.next(part), PdfFile.bytes(all, faces.get(0).title()), each);
    }
    for (TemplatePages face : faces) {
      String name = names.next(part + "-" + face.face());
      Exit exit = put(name, SvgFile.bytes(face.one(), face.title()), each);
      if (exit != Exit.FITS) {
        return exit;
      }
    }
    return Exit.FITS;
  }

  private Exit put(String name, byte[] bytes, Consumer<Told> each) {
    WrittenFiles result = WrittenFiles.of(folder.resolve(name + "." + format.word()), bytes);
    each.accept(new Told.File(result));
    return result.exit();
  }
}
