package dryfit.view;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.app.Draft;
import dryfit.document.Design;
import dryfit.document.Design.Dimension;
import dryfit.document.Document;
import dryfit.document.Reading;
import dryfit.measure.Length.Unit;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NotTakenTest {
  private static final Path HARBOUR = Path.of("models/harbour-armchair.json");
  private static final Path LANTERN = Path.of("models/lantern-side-chair.json");

  private static String why(Path chair, String name, String typed, Unit shown) {
    return why(chair, Design.AS_DRAWN, name, typed, shown);
  }

  private static String why(Path chair, String variant, String name, String typed, Unit shown) {
    Draft draft = ((Reading.Accepted<Draft>) Draft.open(chair)).value();
    draft.choose(variant);
    Document document = ((Reading.Accepted<Document>) draft.now().reading()).value();
    Design design = ((Reading.Accepted<Design>) document.design(variant)).value();
    List<String> names = design.dimensions().stream().map(Dimension::name).toList();
    Dimension dimension =
        design.dimensions().stream().filter(d -> d.name().equals(name)).findFirst().orElseThrow();
    String entry = Entry.meant(typed, dimension, shown, design.unit().printed(), names);
    Reading<Document> reading = draft.dimensionHere(name, entry);
    return new NotTaken(dimension, typed, names, shown)
        .why(((Reading.Refused<Document>) reading).problems());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          seatTop   | 900       | “900” is outside its range. Seat top is a length from 380 to 480 mm.
          seatTop   | 4 deg     | “4 deg” is not a length. Seat top is a length from 380 to 480 mm.
          seatDrop  | 30 mm     | “30 mm” is not an angle. Seat drop is an angle from 0° to 8°.
          seatTop   | sofa      | “sofa” is neither a size nor a dimension of this chair. Seat top is a length from 380 to 480 mm.
          seatTop   | 4x        | “4x” cannot be read as a size. Seat top is a length from 380 to 480 mm.
          seatTop   | 440,5     | “440,5” has a comma; a decimal is written with a point: 440.5. Seat top is a length from 380 to 480 mm.
          seatTop   | 1/0       | “1/0” divides by zero. Seat top is a length from 380 to 480 mm.
          seatTop   | 1e999     | “1e999” is no size that a chair can have. Seat top is a length from 380 to 480 mm.
          seatTop   | seat top  | seat top cannot be worked out from itself. Seat top is a length from 380 to 480 mm.
          railThick | 0         | “0” is too small: rail thick is more than 0. Rail thick is a length, now 22 mm.
          railThick | 440 m     | “440 m” is longer than 100 metres. Rail thick is a length, now 22 mm.
          """)
  void tellsWhatWasTypedWhatIsWrongAndWhatIsRight(String name, String typed, String told) {
    assertThat(why(HARBOUR, name, typed, Unit.MM)).isEqualTo(told);
  }

  @Test
  void limitsAreInTheUnitThatIsShown() {
    assertThat(why(LANTERN, "seatTop", "20", Unit.IN))
        .isEqualTo("“20” is outside its range. Seat top is a length from 16 to 18 in.");
    assertThat(why(LANTERN, "seatTop", "500", Unit.MM))
        .isEqualTo("“500” is outside its range. Seat top is a length from 406.4 to 457.2 mm.");
  }

  @Test
  void aVariantIsAnsweredAlike() {
    for (String variant : List.of("low", "deep tenons")) {
      assertThat(why(HARBOUR, variant, "seatTop", "900", Unit.MM))
          .isEqualTo("“900” is outside its range. Seat top is a length from 380 to 480 mm.");
      assertThat(why(HARBOUR, variant, "seatTop", "4 deg", Unit.MM))
          .isEqualTo("“4 deg” is not a length. Seat top is a length from 380 to 480 mm.");
    }
  }

  @Test
  void whatItSpoilsElsewhereIsToldByNameNotByPlace() {
    assertThat(why(LANTERN, "railThick", "1/64", Unit.IN))
        .isEqualTo(
            "“1/64” makes no chair: front rail to leg: the tenon is 3/8 in and must be less than"
                + " 1/64 in, the part's thickness. Rail thick is a length, now 1 in.");
    assertThat(why(HARBOUR, "railThick", "0.02", Unit.MM)).contains("rail thick * 0.45");
  }

  @ParameterizedTest
  @ValueSource(strings = {"900", "-5", "abc", "1/0", "4 deg", "depth+foo", "(3", "\"", "1/64"})
  void noneSpeaksOfTheInsideOfTheDocument(String typed) {
    assertThat(why(HARBOUR, "seatTop", typed, Unit.MM))
        .doesNotContain("/dimensions", "/parts", "/joints", "expression", "finite")
        .doesNotContain("seatTop", "railThick", "armThick", "a number with the right unit");
  }
}
