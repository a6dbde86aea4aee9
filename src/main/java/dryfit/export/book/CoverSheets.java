package dryfit.export.book;

import dryfit.build.Chair;
import dryfit.document.Design;
import dryfit.export.FindingText;
import dryfit.export.FitText;
import dryfit.export.TextStyle;
import dryfit.export.book.Block.Caution;
import dryfit.export.book.Block.Heading;
import dryfit.export.book.Block.Text;
import dryfit.export.book.Book.Sheet;
import dryfit.export.paper.Png;
import dryfit.export.picture.Figure;
import dryfit.export.picture.Mark;
import dryfit.export.picture.Picture;
import dryfit.export.picture.View;
import dryfit.fit.Finding;
import dryfit.fit.FitReport;
import dryfit.geometry.Box;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;

/** The first pages: what chair it is, what the fit said, and how it looks from all sides. */
final class CoverSheets {
  private static final int LARGE = 1000;
  private static final int SMALL = 640;

  private CoverSheets() {}

  static List<Sheet> of(FitReport report, TextStyle style) {
    return List.of(cover(report, style), overview(report.chair()));
  }

  private static Sheet cover(FitReport report, TextStyle style) {
    Chair chair = report.chair();
    Design design = chair.design();
    List<Block> blocks = new ArrayList<>();
    if (!design.variant().equals(Design.AS_DRAWN)) {
      blocks.add(new Text("Variant: " + design.variant()));
    }
    if (!design.about().isBlank()) {
      blocks.add(new Text(design.about()));
    }
    Box box =
        chair.parts().stream().map(p -> p.placedMesh().bounds()).reduce(Box::with).orElseThrow();
    Vec3 size = box.size();
    blocks.add(
        new Text(
            chair.parts().size()
                + " parts, "
                + chair.joints().size()
                + " joints. Over all "
                + style.length(size.x())
                + " wide, "
                + style.length(size.y())
                + " deep, "
                + style.length(size.z())
                + " high. "
                + hands(design)));
    String verdict = FitText.answer(report, style);
    blocks.add(report.fits() ? new Text(verdict) : new Caution(verdict));
    blocks.add(new Block.Pictures(List.of(picture(chair, View.THREE_QUARTER, LARGE)), 0.72));
    findings(report, style, blocks);
    return new Sheet(design.name(), blocks);
  }

  static String hands(Design design) {
    return design.labels() == Design.Labels.AS_SEATED
        ? "Left and right are as you sit in the chair."
        : "Left and right are as you face the chair.";
  }

  /** What stops the build and what to look at; what the maker accepts stays on the page. */
  private static void findings(FitReport report, TextStyle style, List<Block> blocks) {
    List<Finding> open = report.findings().stream().filter(f -> f.waived().isEmpty()).toList();
    List<Finding> waived = report.findings().stream().filter(f -> f.waived().isPresent()).toList();
    for (Finding.Severity severity : Finding.Severity.values()) {
      String title =
          switch (severity) {
            case STOPS -> "Stops the build";
            case LOOK -> "Look at this before you cut";
            case KNOW -> "For your information";
          };
      list(title, open.stream().filter(f -> f.severity() == severity).toList(), style, blocks);
    }
    list("Accepted by the maker", waived, style, blocks);
  }

  private static void list(
      String title, List<Finding> findings, TextStyle style, List<Block> blocks) {
    if (findings.isEmpty()) {
      return;
    }
    blocks.add(new Heading(title));
    for (List<Finding> alike : FindingText.alike(findings)) {
      Finding f = alike.get(0);
      StringBuilder text = new StringBuilder(f.message());
      for (Finding other : alike.subList(1, alike.size())) {
        text.append(" The same at ")
            .append(String.join("; ", FindingText.concerned(other)))
            .append('.');
      }
      if (f.severity() != Finding.Severity.KNOW) {
        text.append(" (").append(FindingText.figures(f, style)).append(')');
      }
      f.waived().ifPresent(why -> text.append(" Accepted, because: ").append(why));
      blocks.add(
          f.severity() == Finding.Severity.STOPS
              ? new Caution(text.toString())
              : new Text(text.toString()));
    }
  }

  private static Sheet overview(Chair chair) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Text(hands(chair.design()) + " The red rings name them in every picture."));
    blocks.add(
        new Block.Pictures(
            List.of(picture(chair, View.FRONT, SMALL), picture(chair, View.SIDE, SMALL)), 1));
    blocks.add(
        new Block.Pictures(
            List.of(picture(chair, View.BACK, SMALL), picture(chair, View.ABOVE, SMALL)), 1));
    blocks.add(
        new Block.Pictures(
            List.of(
                picture(chair, View.UNDERSIDE, SMALL), picture(chair, View.THREE_QUARTER, SMALL)),
            1));
    return new Sheet("From all sides", blocks);
  }

  static Block.Picture picture(Chair chair, View view, int pixels) {
    int high = pixels * 3 / 4;
    byte[] png = new Picture(Figure.of(chair, List.of()), hands(chair)).png(view, pixels, high);
    return new Block.Picture(caption(view), new Png(png), 4.0 / 3);
  }

  private static String caption(View view) {
    return switch (view) {
      case THREE_QUARTER -> "from the front";
      case FRONT -> "front";
      case SIDE -> "side; the front is on the left";
      case BACK -> "back";
      case ABOVE -> "from above; the front is at the bottom";
      case UNDERSIDE -> "from below; the front is at the top";
    };
  }

  /** A ring on the outermost place of each side. */
  static List<Mark> hands(Chair chair) {
    boolean seated = chair.design().labels() == Design.Labels.AS_SEATED;
    return List.of(
        new Mark(outermost(chair, 1), seated ? "LEFT" : "RIGHT"),
        new Mark(outermost(chair, -1), seated ? "RIGHT" : "LEFT"));
  }

  private static Vec3 outermost(Chair chair, int side) {
    Vec3 best = Vec3.ZERO;
    double most = Double.NEGATIVE_INFINITY;
    for (var part : chair.parts()) {
      var mesh = part.placedMesh();
      for (int i = 0; i < mesh.pointCount(); i++) {
        Vec3 p = mesh.point(i);
        double out = side * p.x();
        if (out > most + dryfit.measure.Tolerances.contact()) {
          most = out;
          best = p;
        }
      }
    }
    return best;
  }
}
