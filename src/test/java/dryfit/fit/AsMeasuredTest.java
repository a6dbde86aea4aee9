package dryfit.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.build.Chair;
import dryfit.fit.AsMeasured.Told;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What was found on the parts of a stool, and what follows; worked out by hand. */
class AsMeasuredTest {
  /** Planned: legs 44, rails 22 thick, tenons 8 thick and 16 long, cheeks 0.1, bottoms 2 mm. */
  private static final String STOOL =
      """
      { "format": "dryfit-chair/1", "name": "Frame", "about": "Demo data, invented.", "unit": "mm",
        "timber": "ash-white", "fit": { "cheek": 0.1, "edge": 0.5, "bottom": 2, "least-wall": 6 },
        "parts": {
          "front-leg": { "form": "straight", "pair": true, "section": [44, 44],
            "from": [178, 22, 0], "to": [178, 22, 440] },
          "back-leg": { "form": "straight", "pair": true, "section": [44, 44],
            "from": [178, 360, 0], "to": [178, 360, 440] },
          "side-rail": { "form": "straight", "pair": true, "section": [60, 22],
            "between": ["front-leg", "back-leg"], "top": 440, "outside": 4 },
          "front-rail": { "form": "straight", "section": [60, 22],
            "between": ["front-leg right", "front-leg left"], "top": 440, "outside": 4 } },
        "joints": {
          "front rail to leg": { "tenon": "front-rail both", "into": "front-leg",
            "thickness": 8, "width": 44, "length": 16 },
          "side rail to front leg": { "tenon": "side-rail front", "into": "front-leg",
            "thickness": 8, "width": 44, "length": 16 },
          "side rail to back leg": { "tenon": "side-rail back", "into": "back-leg",
            "thickness": 8, "width": 44, "length": 16 } },
        "measured": [MEASURED] }
      """;

  private static List<Told> told(String... measured) {
    String list = String.join(", ", measured);
    Chair chair = Fitted.of(STOOL.replace("MEASURED", list)).chair();
    return AsMeasured.of(chair, new PlannedSizes(chair));
  }

  private static String part(String name, String what, double value) {
    return "{\"part\": \"%s\", \"what\": \"%s\", \"value\": \"%s mm\"}"
        .formatted(name, what, Double.toString(value));
  }

  private static String joint(String what, double value) {
    return "{\"joint\": \"side rail to front leg\", \"what\": \"%s\", \"value\": \"%s mm\"}"
        .formatted(what, Double.toString(value));
  }

  @Test
  void aPartThatCameOutAsPlannedNeedsNothing() {
    Told told = told(part("front-rail", "thickness", 22)).get(0);
    assertThat(told.conflict()).isFalse();
    assertThat(told.advice()).containsExactly("as planned");
  }

  @Test
  void aPartThatIsTooLargeCanStillBeTrimmed() {
    Told told = told(part("front-rail", "thickness", 22.5)).get(0);
    assertThat(told.conflict()).isTrue();
    assertThat(told.planned()).hasValueCloseTo(22.0, within(1e-3));
    assertThat(told.advice().get(0)).contains("0.50 mm", "can still be trimmed");
  }

  @Test
  void aShortRailIsNeverMadeLongerAndItsTwinIsMadeToMatch() {
    Told any = told(part("side-rail left", "shoulder to shoulder", 300)).get(0);
    double planned = any.planned().getAsDouble();
    // Legs stand 360 - 22 apart from middle to middle, so 44 less between their faces.
    assertThat(planned).isCloseTo(360 - 22 - 44, within(1e-3));
    Told told = told(part("side-rail left", "shoulder to shoulder", planned - 1)).get(0);
    assertThat(told.advice().get(0)).contains("too small by 1.00 mm", "never made larger");
    assertThat(told.advice().get(1)).contains("make side-rail right 293.0 mm as well");
  }

  @Test
  void ofAPairThatWasMeasuredTheLargerIsTrimmed() {
    List<Told> told =
        told(
            part("side-rail left", "shoulder to shoulder", 294),
            part("side-rail right", "shoulder to shoulder", 294.4));
    assertThat(told.get(0).advice())
        .contains("the pair must match: trim side-rail right by 0.40 mm");
    assertThat(told.get(1).advice())
        .contains("the pair must match: trim side-rail right by 0.40 mm");
  }

  @Test
  void aLooseTenonGetsVeneerOnBothCheeksOrOnOneAndTheRailMovesByHalf() {
    // 8.2 - 7.6 leaves 0.3 a cheek, 0.2 more than planned.
    Told told = told(joint("tenon thickness", 7.6)).get(0);
    assertThat(told.advice().get(0)).startsWith("loose").contains("0.30 mm", "veneer of 0.20 mm");
    assertThat(told.advice().get(1)).contains("0.40 mm", "moves 0.20 mm away");
  }

  @Test
  void aFatTenonIsPlanedOnBothCheeks() {
    // 8.2 - 8.3 is -0.05 a cheek; 0.1 is wanted.
    Told told = told(joint("tenon thickness", 8.3)).get(0);
    assertThat(told.advice().get(0)).startsWith("too fat").contains("plane 0.15 mm off each");
    assertThat(told.advice().get(1)).contains("0.30 mm", "moves 0.15 mm towards");
  }

  @Test
  void aTenonMadeGoodOnOneCheekSaysWhereTheRailEndsUp() {
    // The rail is set back 4 mm; veneer on the inside cheek alone moves it out by 0.2 mm.
    Told loose = told(joint("tenon thickness", 7.6)).get(0);
    assertThat(loose.advice().get(1))
        .contains("the outside cheek leaves its outside face 4.20 mm set back")
        .contains("the inside cheek 3.80 mm set back", "planned 4.00 mm set back");
    // Planing moves it towards the planed cheek: 0.15 mm out if that is the outside one.
    Told fat = told(joint("tenon thickness", 8.3)).get(0);
    assertThat(fat.advice().get(1))
        .contains("the outside cheek leaves its outside face 3.85 mm set back")
        .contains("the inside cheek 4.15 mm set back");
  }

  @Test
  void theWidthOfATenonIsHeldAgainstTheLengthOfItsMortise() {
    // 44 with 0.5 at each edge: a mortise 45 long. 45.2 is 0.1 too much and 0.6 to take off.
    Told told = told(joint("tenon width", 45.2)).get(0);
    assertThat(told.planned()).hasValueCloseTo(44.0, within(1e-9));
    assertThat(told.conflict()).isTrue();
    assertThat(told.advice().get(0)).contains("gap of −0.10 mm", "plane 0.60 mm off each edge");
    List<Told> both = told(joint("tenon width", 45.2), joint("mortise length", 45.8));
    assertThat(both.get(1).planned()).hasValueCloseTo(45.0, within(1e-9));
    assertThat(both.get(0).advice()).containsExactly("fits, with a gap of 0.30 mm at each edge");
    assertThat(both.get(1).conflict()).isFalse();
  }

  @Test
  void aLeanMovesTheFarShoulderNotTheTipOfTheFarTenon() {
    // Shoulders are 360 - 22 - 44 = 294 apart: 294 tan 1 deg = 5.13.
    String lean =
        "{\"joint\": \"side rail to front leg\", \"what\": \"lean along\", \"value\": \"1 deg\"}";
    assertThat(told(lean).get(0).advice().get(0)).contains("over 294.0 mm", "5.13 mm off");
  }

  @Test
  void aTenonIsHeldAgainstTheRealMortise() {
    List<Told> told = told(joint("tenon thickness", 7.6), joint("mortise thickness", 7.8));
    assertThat(told.get(0).conflict()).isFalse();
    assertThat(told.get(1).advice().get(0)).startsWith("fits");
  }

  @Test
  void aMortiseThatIsTooShallowHoldsTheShoulderOpen() {
    // 15 deep for a tenon of 16: 1 open, and 3 to take off for 2 of room.
    Told told = told(joint("mortise depth", 15)).get(0);
    assertThat(told.conflict()).isTrue();
    assertThat(told.advice().get(0)).contains("open by 1.00 mm", "shorten the tenon by 3.00 mm");
  }

  @Test
  void aSizeThatMeansNothingIsToldAndChangesNothing() {
    Told told = told(part("front-rail", "colour", 1)).get(0);
    assertThat(told.conflict()).isFalse();
    assertThat(told.advice().get(0)).contains("known are length");
  }
}
