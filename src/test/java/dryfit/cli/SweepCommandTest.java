package dryfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.export.Schemas;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SweepCommandTest {
  private static final String STOOL = "models/low-stool.json";

  @Test
  void aRangeInWhichTheChairFitsIsToldWithoutAnyProgressInAPipe() {
    Said said = Said.by("sweep", STOOL, "seatTop from 430 to 440 step 10");
    assertThat(said.code()).isZero();
    assertThat(said.out()).endsWith("FITS from 430.00 mm to 440.00 mm\n");
    assertThat(said.err()).isEmpty();
  }

  @Test
  void theJsonFollowsItsSchemaWhereTheChairFitsAndWhereItDoesNot() {
    Said said = Said.by("sweep", STOOL, "seatTop from 430 to 1000000 step 999570", "--json");
    assertThat(said.code()).isZero();
    assertThat(Schemas.problems("sweep-1.schema.json", said.out())).isEmpty();
    assertThat(said.out()).contains("\"fits\" : false");
  }

  @Test
  void whatIsBeyondTheDimensionsOwnRangeIsMarkedAndNotCalledAFit() {
    // The document lets seatTop be 380 to 480 mm.
    Said said = Said.by("sweep", STOOL, "seatTop from 470 to 500 step 10");
    assertThat(said.code()).isZero();
    assertThat(said.out()).contains("fits, out").contains("from 380.00 mm to 480.00 mm");
    assertThat(said.out())
        .endsWith(
            "FITS from 470.00 mm to 480.00 mm; without the document's limits from 470.00 mm to"
                + " 500.00 mm\n");
    Said beyond = Said.by("sweep", STOOL, "seatTop from 490 to 500 step 10");
    assertThat(beyond.code()).isEqualTo(4);
    assertThat(beyond.out()).contains("DOES NOT FIT where the document lets it be");
  }

  @ParameterizedTest
  @CsvSource({
    "seatTop 400 to 460, '\"from\" and \"step\" are missing'",
    "seatTop from 400 to 460, '\"step\" is missing'",
    "seatTap from 400 to 460 step 10, the nearest is seatTop",
    "seatTop from 460 to 400 step 10, backwards",
    "seatTop from 400 to 460 step 0, above zero",
    "seatTop from low to 460 step 10, 'low' is not a value",
    "seatTop from 0 to 460 step 0.1, more than 1000"
  })
  void whatIsNoRangeIsToldInOneLine(String range, String message) {
    Said said = Said.by("sweep", STOOL, range);
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err()).contains(message);
    assertThat(said.err().lines()).hasSize(1);
  }
}
