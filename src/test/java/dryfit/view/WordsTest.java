package dryfit.view;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.app.CompareChairs;
import dryfit.app.Draft;
import dryfit.app.FitChair;
import dryfit.app.KernelChoice;
import dryfit.app.OpenChair;
import dryfit.build.Chair;
import dryfit.build.Shelf;
import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.document.Reading;
import dryfit.export.FitText;
import dryfit.export.TextStyle;
import dryfit.fit.FitReport;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WordsTest {

  @ParameterizedTest
  @ValueSource(strings = {"harbour-armchair", "lantern-side-chair", "kiln-stool", "weir-settee"})
  void theWindowCountsAsTheTerminalDoes(String chair) {
    Draft draft =
        ((Reading.Accepted<Draft>) Draft.open(Path.of("models", chair + ".json"))).value();
    Document document = ((Reading.Accepted<Document>) draft.now().reading()).value();
    List<String> names = Variants.names(document);
    var sides =
        CompareChairs.of(
                document, names, Design.LengthUnit.MM, new Shelf(KernelChoice.USUAL.kernel()))
            .sides();
    for (var side : sides) {
      FitReport report = side.report();
      String terminal = FitText.answer(report, TextStyle.of(report.chair().design().unit()));
      String window = Words.verdict(report);
      assertThat(window.startsWith("fits")).isEqualTo(terminal.startsWith("FITS"));
      for (String what : List.of("stops? the build", "to look at")) {
        assertThat(count(window, what))
            .as(terminal + " / " + window)
            .isEqualTo(count(terminal, what));
      }
    }
  }

  @Test
  void aFigureSaysWhatItMeasuresAndWhichWayItsLimitGoes() {
    OpenChair.Ready ready =
        (OpenChair.Ready)
            OpenChair.open(
                Path.of("models/harbour-armchair.json"),
                "deep tenons",
                KernelChoice.USUAL.kernel());
    List<String> told =
        FitChair.of(ready.chair()).report().findings().stream()
            .map(f -> Words.figures(f, TextStyle.of(Design.LengthUnit.MM)))
            .toList();
    assertThat(told).anyMatch(t -> t.matches("overlap [\\d.]+ mm · at most 0.00 mm"));
    assertThat(told).anyMatch(t -> t.matches("wood between −[\\d.]+ mm · at least 0.00 mm"));
  }

  @Test
  void partsAndJointsAreCalledOneWayOnScreen() {
    Draft draft =
        ((Reading.Accepted<Draft>) Draft.open(Path.of("models/harbour-armchair.json"))).value();
    Document document = ((Reading.Accepted<Document>) draft.now().reading()).value();
    Chair chair =
        CompareChairs.of(
                document,
                List.of(Design.AS_DRAWN),
                Design.LengthUnit.MM,
                new Shelf(KernelChoice.USUAL.kernel()))
            .sides()
            .get(0)
            .report()
            .chair();
    assertThat(
            Words.spoken(
                "side-rail right and front-rail meet inside front-leg right; see"
                    + " \"arm-panel in front-leg, left\", not front-leg-right.json",
                chair))
        .isEqualTo(
            "side rail, right and front rail meet inside front leg, right; see"
                + " \"arm panel in front leg, left\", not front-leg-right.json");
  }

  private static int count(String text, String what) {
    Matcher found = Pattern.compile("(\\d+) " + what).matcher(text);
    return found.find() ? Integer.parseInt(found.group(1)) : 0;
  }
}
