package dryfit.export;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.document.Design.LengthUnit;
import dryfit.export.paper.Ink;
import dryfit.export.paper.Page;
import dryfit.export.paper.Typeface;
import dryfit.fit.FitReport;
import dryfit.fit.Fitted;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sheets with mouths of mortises: all that stands on them is on the paper. */
class MouthPagesTest {
  @Test
  void theTitleOfAChairWithALongNameStaysOnTheSheet() {
    String name = "Chair for the aunt in the back room by the window over the garden wall";
    FitReport report =
        Fitted.of(
            Fitted.frame("1 3/4", "7/8", "1/4", "3/8", "3/4", "")
                .replace("\"Frame\"", "\"" + name + "\""));
    MouthPages mouths = new MouthPages(report.chair(), List.of(), TextStyle.of(LengthUnit.IN));
    for (Page.Paper paper : Page.Paper.values()) {
      Page page = mouths.sheets(paper).get(0);
      Ink.Words title =
          page.ink().stream()
              .filter(Ink.Words.class::isInstance)
              .map(Ink.Words.class::cast)
              .filter(w -> w.text().equals(mouths.title()))
              .findFirst()
              .orElseThrow();
      assertThat(title.at().x() + Typeface.width(title.text(), title.size()))
          .as(paper.word())
          .isLessThanOrEqualTo(page.width() - title.at().x() + 1e-9);
      assertThat(title.size()).as("to be read").isGreaterThan(2.5);
    }
  }
}
