package dryfit.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.document.Design.Dimension;
import dryfit.document.Quantity;
import dryfit.measure.Length.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;

class EntryTest {
  private static final List<String> NAMES = List.of("leg", "frontLeg", "seatTop");

  private static Quantity mm(double value) {
    return new Quantity(value, Quantity.Kind.LENGTH);
  }

  private static String meant(String typed, Unit shown, Unit document) {
    double none = Double.NaN;
    Dimension seat =
        new Dimension("seatTop", mm(440), "", "", none, none, none, 0, "/dimensions/seatTop");
    return Entry.meant(typed, seat, shown, document, NAMES);
  }

  @Test
  void inchesAreTheFractionsOfARuleUnlessTheyAreGaps() {
    assertThat(Entry.shown(mm(17.375 * 25.4), Unit.IN)).isEqualTo("17 3/8");
    // 440 mm are 17.3228 in; 17 21/64 is 17.3281.
    assertThat(Entry.shown(mm(440), Unit.IN)).isEqualTo("17 21/64");
    assertThat(Entry.isAll(mm(440), Unit.IN)).isFalse();
    assertThat(Entry.shown(mm(0.004 * 25.4), Unit.IN)).isEqualTo("0.004");
    assertThat(Entry.isAll(mm(0.004 * 25.4), Unit.IN)).isTrue();
    assertThat(Entry.shown(mm(17.375 * 25.4), Unit.MM)).isEqualTo("441.33");
    assertThat(Entry.isAll(mm(17.375 * 25.4), Unit.MM)).isFalse();
    assertThat(Entry.isAll(mm(440.5), Unit.MM)).isTrue();
  }

  @Test
  void whatWasTypedKeepsItsUnitAndBareNumbersAreInTheOneShown() {
    assertThat(meant("440 mm", Unit.IN, Unit.IN)).isEqualTo("440 mm");
    assertThat(meant("17 3/8 in", Unit.MM, Unit.MM)).isEqualTo("17 3/8 in");
    assertThat(meant("17 3/8", Unit.IN, Unit.MM)).isEqualTo("17 3/8 in");
    assertThat(meant("430", Unit.MM, Unit.MM)).isEqualTo("430");
  }

  private static boolean inchFraction(String typed, Unit shown) {
    double none = Double.NaN;
    Dimension seat =
        new Dimension("seatTop", mm(440), "", "", none, none, none, 0, "/dimensions/seatTop");
    return Entry.isInchFraction(typed, seat, shown);
  }

  @Test
  void aFractionWithoutAUnitAmongMillimetresIsNoNumberOfMillimetres() {
    for (String inches : List.of("17 3/8", "3/8", "17-3/8", " 1 63/64 ")) {
      assertThat(inchFraction(inches, Unit.MM)).as(inches).isTrue();
      assertThat(inchFraction(inches, Unit.IN)).as(inches).isFalse();
    }
    for (String sum :
        List.of(
            "450/2", "17 3/8 in", "3/8 mm", "10/3", "440", "seatTop/2", "3/3", "99999999999/8")) {
      assertThat(inchFraction(sum, Unit.MM)).as(sum).isFalse();
    }
  }

  private static boolean lacksUnit(String typed, Unit shown) {
    double none = Double.NaN;
    Dimension seat =
        new Dimension("seatTop", mm(440), "", "", none, none, none, 0, "/dimensions/seatTop");
    return Entry.lacksUnit(typed, seat, shown, Unit.MM);
  }

  @Test
  void whatIsAddedNeedsAUnitWhereTwoAreInPlayAndWhatMultipliesDoesNot() {
    for (String bare :
        List.of(
            "seat top - 2",
            "2 + leg",
            "(leg + 1/2) * 3",
            "max(20, leg)",
            "- 40 + leg",
            "leg − 1.5")) {
      assertThat(lacksUnit(bare, Unit.IN)).as(bare).isTrue();
      assertThat(lacksUnit(bare, Unit.MM)).as(bare).isFalse();
    }
    for (String clear :
        List.of(
            "seat top * 2",
            "leg / 2 + front leg",
            "2 * leg",
            "leg - 2 mm",
            "leg + 1/2 in",
            "440",
            "17 3/8",
            "leg + 3\"",
            "leg2 + leg")) {
      assertThat(lacksUnit(clear, Unit.IN)).as(clear).isFalse();
    }
  }

  @Test
  void whatASliderCameToIsABareNumberWhereThatIsEnough() {
    assertThat(Entry.written(445, Quantity.Kind.LENGTH, Unit.MM)).isEqualTo("445");
    assertThat(Entry.written(17.375 * 25.4, Quantity.Kind.LENGTH, Unit.IN)).isEqualTo("17 3/8 in");
    assertThat(Entry.written(17 * 25.4, Quantity.Kind.LENGTH, Unit.IN)).isEqualTo("17");
    assertThat(Entry.written(Math.toRadians(4), Quantity.Kind.ANGLE, Unit.MM)).isEqualTo("4 deg");
  }

  @Test
  void dimensionsMayBeCalledWhatTheyAreCalledOnScreen() {
    assertThat(meant("front leg + leg / 2", Unit.MM, Unit.MM)).isEqualTo("frontLeg + leg / 2");
    assertThat(meant("seatTop - seat top", Unit.MM, Unit.MM)).isEqualTo("seatTop - seatTop");
    assertThat(Words.formula("seatTop - 2 * leg", NAMES)).isEqualTo("seat top - 2 * leg");
  }

  @Test
  void aSliderThatNamesNoStepMovesByOneThatARuleShows() {
    double inch = 25.4;
    double step = Entry.step(16 * inch, 18 * inch, Quantity.Kind.LENGTH, Unit.IN);
    assertThat(step / inch).isCloseTo(1.0 / 32, within(1e-12));
    assertThat(Entry.step(0, 100, Quantity.Kind.LENGTH, Unit.MM)).isEqualTo(1);
  }
}
