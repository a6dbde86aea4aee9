package dryfit.export;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.document.Design;
import dryfit.document.Problem;
import dryfit.fit.FitReport;
import dryfit.measure.Length;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FitTextTest {
  private static final TextStyle MM = TextStyle.of(Design.LengthUnit.MM);
  private static final TextStyle INCHES = TextStyle.of(Design.LengthUnit.IN);

  private static String last(String text) {
    String[] lines = text.split("\n");
    return lines[lines.length - 1];
  }

  private static String everything(TextStyle style) {
    return FitText.of(
        TestChair.report(TestChair.stops(), TestChair.look(), TestChair.waived()), style);
  }

  @Test
  void noLineIsWiderThanEightyColumns() {
    for (TextStyle style : List.of(MM, INCHES)) {
      assertThat(everything(style).lines()).allMatch(line -> line.length() <= 80);
    }
  }

  @Test
  void theAnswerIsTheLastLine() {
    assertThat(last(everything(MM)))
        .isEqualTo("DOES NOT FIT: 1 stops the build, 1 to look at, 1 accepted by the maker");
    assertThat(last(FitText.of(TestChair.report(), MM)))
        .isEqualTo("FITS: 3 joints seated, nothing stops the build");
    assertThat(last(FitText.of(TestChair.report(TestChair.look()), MM)))
        .isEqualTo("FITS: 3 joints seated, nothing stops the build; 1 to look at");
  }

  @Test
  void whatWouldStopTheBuildIsNotForgottenForBeingAccepted() {
    assertThat(last(FitText.of(TestChair.report(TestChair.waived()), MM)))
        .isEqualTo(
            "FITS ONLY AS ACCEPTED: 1 would stop the build, had you not accepted it; 1 accepted by"
                + " the maker");
  }

  @Test
  void aPairThatMeasuresAlikeIsWrittenOnce() {
    String text = FitText.of(TestChair.report(), MM);
    assertThat(text)
        .containsOnlyOnce("side rail to front leg, both hands  (mortise and tenon)")
        .doesNotContain("side rail to front leg, left")
        .contains("front rail to leg, right  (mortise and tenon)");
  }

  @Test
  void aPairThatDiffersIsWrittenTwice() {
    FitReport alike = TestChair.report();
    FitReport differing = TestChair.withWall(alike, 1, 9.4);
    assertThat(FitText.of(differing, MM))
        .contains("side rail to front leg, right  (")
        .contains("side rail to front leg, left  (")
        .contains("9.4 mm left");
  }

  @Test
  void aLeanIsGivenAsBothBenchAnglesAndAsASlope() {
    // tan 0.094 rad = 0.09428, a rise of one in 10.61.
    assertThat(FitText.of(TestChair.report(), MM))
        .contains("5.39° off square · 84.61° from the face · 9.4 mm over 100 mm");
  }

  @Test
  void gapsAndDepthsAreInTheUnitAskedFor() {
    assertThat(FitText.of(TestChair.report(), MM))
        .contains("cheek 0.10 mm · edge 0.50 mm · bottom 2.00 to 2.40 mm")
        .contains("27.9 mm square to the face");
    // 28 mm is 1.1024 in; the nearest 64th is 1 7/64 = 1.1094.
    assertThat(FitText.of(TestChair.report(), INCHES))
        .contains("cheek 0.004 in · edge 0.020 in")
        .contains("1 7/64 in (−0.007) along the tenon");
    assertThat(FitText.of(TestChair.report(), new TextStyle(Length.Unit.IN, 64, true, false)))
        .contains("1.102 in along the tenon");
    assertThat(FitText.of(TestChair.report(), new TextStyle(Length.Unit.IN, 16, false, false)))
        .contains("1 1/8 in (−0.023) along the tenon");
  }

  @Test
  void findingsSayWhatWasMeasuredWhereTheLimitIsFromAndWhatToChange() {
    assertThat(everything(MM))
        .containsSubsequence(
            "STOPS THE BUILD",
            "  1  Two tenons meet",
            "measured 7.60 mm · limit 0.00 mm · margin −7.60 mm",
            "limit from geometry: two solids cannot be in one place",
            "written at /joints/front rail to leg/length",
            "LOOK AT THIS",
            "  2  Only 5.2 mm",
            "limit from the document's /fit/least-wall",
            "ACCEPTED BY THE MAKER",
            "  3  Only 5.2 mm",
            "accepted, because the panel carries the arm");
  }

  @Test
  void theHeadingSaysWhoseLeftAndRight() {
    assertThat(FitText.of(TestChair.report(), MM))
        .startsWith("Test armchair · as drawn\n")
        .contains("Left and right are as you face the chair.");
  }

  @Test
  void theCautionIsAlwaysThere() {
    assertThat(FitText.of(TestChair.report(), MM))
        .contains("Caution:")
        .contains("guards")
        .contains("licensed professional");
  }

  @Test
  void colourOnlyWhenAsked() {
    assertThat(everything(MM)).doesNotContain("\u001b");
    TextStyle coloured = new TextStyle(Length.Unit.MM, 64, false, true);
    assertThat(everything(coloured).replaceAll("\u001b\\[[0-9;]*m", "")).isEqualTo(everything(MM));
    assertThat(everything(coloured)).contains("\u001b[1;31mDOES NOT FIT\u001b[0m");
  }

  @Test
  void problemsNameFileLineAndPlace() {
    Problem problem =
        new Problem(
            "cycle", "chair.json", 7, "/dimensions/a", "a", "no cycle", Optional.empty(), "a loop");
    Problem noFile =
        new Problem("no-file", "x.json", 0, "", "", "", Optional.empty(), "there is no such file");
    assertThat(ProblemsText.of(List.of(problem, noFile)))
        .isEqualTo(
            """
            chair.json:7  /dimensions/a
              a loop
            x.json
              there is no such file
            REFUSED: 2 problems to mend in the document
            """);
  }

  @Test
  void aPlaceIsToldOnce() {
    Problem problem =
        new Problem("x", "a.json", 3, "/unit", "cm", "mm", Optional.empty(), "/unit: not cm.");
    assertThat(ProblemsText.of(List.of(problem))).startsWith("a.json:3  /unit\n  not cm.\n");
  }

  @Test
  void whatIsSawnToIsNeverToldSmaller() {
    TextStyle sixteenths = new TextStyle(Length.Unit.IN, 16, false, false);
    assertThat(sixteenths.bareUp(17.585 * 25.4)).isEqualTo("17 5/8");
    assertThat(sixteenths.bareUp(17.5625 * 25.4)).isEqualTo("17 9/16");
    assertThat(sixteenths.bareUp(17.5626 * 25.4)).isEqualTo("17 9/16");
    assertThat(MM.bareUp(12.31)).isEqualTo("12.4");
    assertThat(MM.bareUp(12.3)).isEqualTo("12.3");
  }
}
