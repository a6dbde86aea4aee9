package dryfit.export.book;

import dryfit.build.Chair;
import dryfit.export.JointText;
import dryfit.export.TextStyle;
import dryfit.export.book.Book.Sheet;
import dryfit.fit.FitReport;
import dryfit.fit.JointFit;
import dryfit.fit.JointSection;
import java.util.ArrayList;
import java.util.List;

/** A sheet for every joint; both hands of a pair that are alike have one. */
final class JointSheets {
  /** What the tables take of a page besides the sections, mm. */
  private static final double BESIDES = 110;

  private JointSheets() {}

  static List<Sheet> of(FitReport report, TextStyle style, BookMaker.Room room) {
    Chair chair = report.chair();
    List<Sheet> out = new ArrayList<>();
    for (JointText.Joints joint : JointText.told(report, style)) {
      JointFit fit = joint.fit();
      List<Block> blocks = new ArrayList<>();
      List<JointSection> sections = JointSection.of(chair, fit);
      blocks.add(SectionDrawing.of(sections, style, room.width(), room.height() - BESIDES));
      blocks.add(BookMaker.table(joint.told()));
      out.add(new Sheet(title(joint), blocks));
    }
    return out;
  }

  /** On paper one blank is as good as two. */
  static String title(JointText.Joints joint) {
    return joint.told().title().replace("  ", " ");
  }
}
