package dryfit.export;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.document.Design;
import dryfit.fit.FitReport;
import dryfit.fit.Fitted;
import dryfit.fit.LeaningChairs;
import java.util.List;
import org.junit.jupiter.api.Test;

class AnglesTextTest {
  private static final TextStyle MM = TextStyle.of(Design.LengthUnit.MM);
  private static final TextStyle INCHES = TextStyle.of(Design.LengthUnit.IN);
  private static final FitReport RAILS = Fitted.of(LeaningChairs.rail("as-you-face-it"));
  private static final FitReport STOOL = Fitted.of(LeaningChairs.stool("as-you-face-it"));

  @Test
  void noLineIsWiderThanEightyColumnsAndNoNumberHasAComma() {
    for (FitReport report : List.of(RAILS, STOOL)) {
      for (TextStyle style : List.of(MM, INCHES)) {
        String text = AnglesText.of(report, style);
        assertThat(text.lines()).allMatch(line -> line.length() <= 80);
        assertThat(text).doesNotContainPattern("[0-9],[0-9]");
      }
    }
  }

  /** Worked by hand: the rail falls 40 in hypot(300, 30), 0.1327, an angle of 7.56 degrees. */
  @Test
  void aShoulderIsReadFromBothEdgesAndAsASlope() {
    assertThat(AnglesText.of(RAILS, MM))
        .containsSubsequence(
            "front, both hands",
            "on the outside and inside: top edge long by",
            "7.56° off square · 13.3 mm over 100 mm",
            "82.44° from the top edge · 97.56° from the bottom edge",
            "on the top and bottom: outside edge long by",
            "longest at the top outside corner");
    assertThat(AnglesText.of(RAILS, INCHES)).contains("7.56° off square · 1 19/32 in over 12 in");
  }

  @Test
  void theSawIsSetForBothKindsOfScaleAndBothHands() {
    assertThat(AnglesText.of(RAILS, MM).replaceAll("\\s+", " "))
        .contains(
            "stock flat, its outside up, its end pointing away from you"
                + " gauge 7.56° where the scale reads 0 at square · 82.44° where 90")
        .contains(
            "long edge on your right for the right-hand part, on your left for the left-hand one");
  }

  /** For who sits in the chair the right-hand part is the other one. */
  @Test
  void theHandsOfTheSawAreThoseOfTheDocument() {
    FitReport seated = Fitted.of(LeaningChairs.rail("as-seated"));
    assertThat(AnglesText.of(seated, MM).replaceAll("\\s+", " "))
        .contains("Left and right are as you sit in the chair.")
        .contains(
            "long edge on your left for the right-hand part, on your right for the left-hand one");
  }

  /** Tip atan(tan 14 cos 8) = 13.87, worked by hand; the rest as in the tests of the numbers. */
  @Test
  void uprightPartsTellRakeSplayAndTheLineToLeanOver() {
    assertThat(AnglesText.of(STOOL, MM).replaceAll("\\s+", " "))
        .contains(
            "leg, both hands against plumb rake 14.00° · 24.9 mm over 100 mm, foot to the front")
        .contains("29.41° from the fore-aft line · 60.59° from the side-to-side line")
        .contains("first tip 13.87° fore and aft, then swing 8.00° sideways");
  }

  @Test
  void squareJointsAreOnlyNamed() {
    String text = AnglesText.of(Fitted.of(Fitted.frame("2", "1", "0", "0.25", "0.5", "")), MM);
    assertThat(text).endsWith("Square in every way: front; side; rear.\n").doesNotContain("JOINTS");
  }
}
