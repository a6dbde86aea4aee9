package dryfit.export.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Hand;
import dryfit.export.JointText;
import dryfit.export.paper.Ink;
import dryfit.export.paper.Ink.Align;
import dryfit.export.paper.Page;
import dryfit.export.paper.Page.Paper;
import dryfit.export.paper.PdfFile;
import dryfit.export.paper.Typeface;
import dryfit.fit.ChairMeasure.FrameSquare;
import dryfit.fit.JointDetail;
import dryfit.fit.JointFit;
import dryfit.geometry.Mesh;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import dryfit.shop.Setout;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** The bench book on paper, read back by a reader of PDF, and held against the solids. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BookPagesTest {
  private Chairs harbour;
  private Book book;
  private List<Page> pages;
  private List<String> texts;

  @BeforeAll
  void make() throws IOException {
    harbour = Chairs.of("harbour-armchair");
    book = BookMaker.of(harbour.report(), harbour.order(), harbour.style(), Paper.A4);
    pages = BookPages.of(book, Paper.A4);
    texts = texts(PdfFile.bytes(pages, book.title()));
  }

  private static List<String> texts(byte[] pdf) throws IOException {
    List<String> out = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFTextStripper stripper = new PDFTextStripper();
      for (int i = 1; i <= document.getNumberOfPages(); i++) {
        stripper.setStartPage(i);
        stripper.setEndPage(i);
        out.add(stripper.getText(document));
      }
    }
    return out;
  }

  /** The pages that begin under a title, those it is continued on too. */
  private String pagesOf(String title) {
    StringBuilder out = new StringBuilder();
    for (String text : texts) {
      if (text.lines().limit(3).anyMatch(l -> l.equals(title) || l.equals(title + ", continued"))) {
        out.append(text);
      }
    }
    return out.toString();
  }

  @Test
  void everyPartHasItsPageAndAPairHasOneForBoth() {
    for (Part part : harbour.chair().parts()) {
      String title = part.name() + (part.hand() == Hand.NONE ? "" : " (a pair)");
      assertThat(pagesOf(title)).as(part.label()).contains("How it is made", "reference end");
    }
    assertThat(pagesOf("front-leg (a pair)")).contains("mirror image", "outside stays outside");
  }

  @Test
  void everyJointHasItsPage() {
    List<JointText.Joints> told = JointText.told(harbour.report(), harbour.style());
    for (JointText.Joints joint : told) {
      // A round tenon has neither cheeks nor edges.
      boolean round = joint.fit().joint().plan().diameter().isPresent();
      assertThat(pagesOf(JointSheets.title(joint)))
          .as(joint.told().title())
          .contains(
              round ? "one way" : "across the cheeks",
              round ? "the other way" : "across the edges");
    }
    for (JointFit fit : harbour.report().joints()) {
      assertThat(told.stream().map(j -> j.fit().joint().name())).contains(fit.joint().name());
    }
  }

  @Test
  void aMortiseIsDimensionedAsItIsFoundOnTheSolid() {
    Setout setout = Setout.of(harbour.chair(), index("front-leg right"));
    Part leg = setout.part();
    Joint joint =
        harbour.chair().joints().stream()
            .filter(j -> j.label().equals("front rail to leg, right"))
            .findFirst()
            .orElseThrow();
    // The corners of the mortise's own faces that lie in the mouth, as the kernel left them.
    Mesh mesh = leg.solid().mesh();
    Plane mouth = leg.frame().local(joint.mouth());
    List<Double> along = new ArrayList<>();
    for (int f = 0; f < mesh.faceCount(); f++) {
      if (mesh.origin(f).equals(joint.plan().pointer())) {
        for (int[] loop : mesh.loops(f)) {
          for (int corner : loop) {
            Vec3 p = mesh.point(corner);
            if (Math.abs(mouth.height(p)) < 1e-3) {
              along.add(p.x() - mesh.bounds().low().x());
            }
          }
        }
      }
    }
    double from = along.stream().mapToDouble(d -> d).min().orElseThrow();
    double to = along.stream().mapToDouble(d -> d).max().orElseThrow();
    String page = pagesOf("front-leg (a pair)");
    assertThat(page)
        .contains("A " + harbour.style().bare(from), "A " + harbour.style().bare(to))
        .contains(harbour.style().length(from) + " to");
    assertThat(to - from).isCloseTo(59, within(0.01));
  }

  private int index(String label) {
    List<Part> parts = harbour.chair().parts();
    for (int i = 0; i < parts.size(); i++) {
      if (parts.get(i).label().equals(label)) {
        return i;
      }
    }
    throw new AssertionError(label);
  }

  @Test
  void theScaleThatIsToldIsTrue() {
    Setout setout = Setout.of(harbour.chair(), index("front-rail"));
    Block.Drawing drawing = drawing("front-rail");
    double factor = drawing.scale();
    int wood = (int) Math.round(1 / factor);
    assertThat(drawing.caption()).startsWith("Drawn 1 : " + wood + ".");
    List<Double> xs = new ArrayList<>();
    outlines(drawing.ink(), new Vec2(0, 0), xs);
    double drawn =
        xs.stream().mapToDouble(x -> x).max().orElseThrow()
            - xs.stream().mapToDouble(x -> x).min().orElseThrow();
    assertThat(drawn / factor).isCloseTo(setout.bounds().size().x(), within(0.01));
  }

  private Block.Drawing drawing(String title) {
    return book.chapters().stream()
        .flatMap(c -> c.sheets().stream())
        .filter(s -> s.title().equals(title))
        .flatMap(s -> s.blocks().stream())
        .filter(Block.Drawing.class::isInstance)
        .map(Block.Drawing.class::cast)
        .findFirst()
        .orElseThrow();
  }

  /** Where black lines that do not stop begin and end, from left to right. */
  private static void outlines(List<Ink> ink, Vec2 shift, List<Double> xs) {
    for (Ink one : ink) {
      if (one instanceof Ink.Window window) {
        outlines(window.ink(), shift.plus(window.shift()), xs);
      } else if (one instanceof Ink.Line line && line.colour() == Ink.Colour.BLACK) {
        line.points().forEach(p -> xs.add(p.x() + shift.x()));
      }
    }
  }

  @Test
  void noWordsRunOffThePageOrIntoEachOther() {
    for (int i = 0; i < pages.size(); i++) {
      List<Placed> words = new ArrayList<>();
      words(pages.get(i).ink(), new Vec2(0, 0), words);
      for (int k = 0; k < words.size(); k++) {
        Placed one = words.get(k);
        assertThat(one.isWithin(5, Paper.A4.width() - 5, 5, Paper.A4.height() - 5))
            .as("page %d: %s", i + 1, one)
            .isTrue();
        for (Placed other : words.subList(k + 1, words.size())) {
          assertThat(one.meets(other)).as("page %d: %s and %s", i + 1, one, other).isFalse();
        }
      }
    }
  }

  /** Some words and the room they take: from the base line to the height of a capital. */
  private record Placed(String text, double x0, double y0, double x1, double y1) {
    boolean isWithin(double left, double right, double low, double high) {
      return x0 >= left && x1 <= right && y0 >= low && y1 <= high;
    }

    boolean meets(Placed o) {
      return x0 < o.x1 && o.x0 < x1 && y0 < o.y1 && o.y0 < y1;
    }
  }

  private static void words(List<Ink> ink, Vec2 shift, List<Placed> out) {
    for (Ink one : ink) {
      if (one instanceof Ink.Window window) {
        words(window.ink(), shift.plus(window.shift()), out);
      } else if (one instanceof Ink.Words w) {
        double wide = Typeface.width(w.text(), w.size());
        double back = w.align() == Align.LEFT ? 0 : w.align() == Align.RIGHT ? wide : wide / 2;
        double high = 0.72 * w.size();
        Vec2 at = w.at().plus(shift);
        out.add(
            w.turn() == 0
                ? new Placed(w.text(), at.x() - back, at.y(), at.x() - back + wide, at.y() + high)
                : new Placed(w.text(), at.x() - high, at.y() - back, at.x(), at.y() - back + wide));
      }
    }
  }

  @Test
  void whatIsExpectedAtTheDryFitIsWhatTheFitMeasured() {
    String page = pagesOf("What to measure at the dry fit");
    List<FrameSquare> frames = harbour.report().whole().frames();
    assertThat(frames).isNotEmpty();
    for (FrameSquare frame : frames) {
      assertThat(page)
          .contains(harbour.style().length(frame.fromLeft()))
          .contains(harbour.style().length(frame.fromRight()));
    }
    List<DryMeasures.Measure> measures =
        DryMeasures.of(harbour.report(), harbour.order(), harbour.style());
    JointFit rail =
        harbour.report().joints().stream()
            .filter(j -> j.joint().label().equals("front rail to leg, right"))
            .findFirst()
            .orElseThrow();
    for (JointDetail.Setback s : rail.detail().reveal().orElseThrow().sides()) {
      assertThat(measures)
          .anyMatch(
              m ->
                  m.what().equals("front rail to leg, right: " + s.face() + " stands back")
                      && m.value() == s.by());
    }
    assertThat(measures).extracting(DryMeasures.Measure::after).isSorted();
  }

  @Test
  void paperIsOfTheSizeThatWasAskedFor() throws IOException {
    Chairs stool = Chairs.of("low-stool");
    for (Paper paper : Paper.values()) {
      Book small = BookMaker.of(stool.report(), stool.order(), stool.style(), paper);
      byte[] pdf = PdfFile.bytes(BookPages.of(small, paper), small.title());
      assertThat(pdf).isEqualTo(PdfFile.bytes(BookPages.of(small, paper), small.title()));
      try (PDDocument document = Loader.loadPDF(pdf)) {
        PDRectangle box = document.getPage(0).getMediaBox();
        // A4 is 210 by 297 mm (ISO 216), letter 8 1/2 by 11 in (ASME Y14.1, size A).
        boolean a4 = paper == Paper.A4;
        double inch = 25.4;
        assertThat(box.getWidth() / 72.0 * inch).isCloseTo(a4 ? 210 : 8.5 * inch, within(0.01));
        assertThat(box.getHeight() / 72.0 * inch).isCloseTo(a4 ? 297 : 11 * inch, within(0.01));
      }
    }
  }

  @Test
  void demoDataIsMarkedOnEveryPageAndTheVerdictStandsOnTheFirst() {
    assertThat(texts).allSatisfy(text -> assertThat(text).contains("demo data, invented"));
    assertThat(texts.get(0)).contains("FITS: 28 joints seated");
  }
}
