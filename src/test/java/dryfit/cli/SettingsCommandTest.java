package dryfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SettingsCommandTest {
  private static final int COLUMNS = 80;
  private static final String ARMCHAIR = "models/harbour-armchair.json";

  @Test
  void aCompoundShoulderHasBothHandsAndBothScales() {
    Said said = Said.by("settings", ARMCHAIR, "--joint", "side rail to front leg");
    assertThat(said.code()).isZero();
    assertThat(said.err()).isEmpty();
    assertThat(said.out())
        .contains("4.62° off square · 8.1 mm over 100 mm")
        .contains("mitre gauge 4.62° · 85.38° where square reads 90")
        .contains("side-rail, shoulder at the front end, right")
        .contains("side-rail, shoulder at the front end, left")
        .contains("the long edge on your right")
        .contains("the long edge on your left")
        .contains("sight line 55.04° from the length of front-leg")
        .contains("TAKE CARE")
        .doesNotContain("crest");
    assertThat(said.out().lines()).allMatch(line -> line.length() <= COLUMNS);
  }

  @Test
  void everyReportFitsTheTerminalAndIsTheSameEachTime() {
    Said said = Said.by("settings", "models/orchard-side-chair.json");
    assertThat(said.code()).isZero();
    assertThat(said.out().lines()).allMatch(line -> line.length() <= COLUMNS);
    assertThat(Said.by("settings", "models/orchard-side-chair.json")).isEqualTo(said);
  }

  @Test
  void aPartIsToldAloneAndInInches() {
    Said said = Said.by("settings", ARMCHAIR, "--part", "back-leg", "--units", "in");
    assertThat(said.out())
        .contains("top of side-rail to underside of arm, both hands")
        .contains("height, plumb 8 23/32 in")
        .doesNotContain(" mm")
        .doesNotContain("slat");
  }

  @Test
  void spreadsheetsGetALineAReading() {
    Said said = Said.by("settings", ARMCHAIR, "--joint", "side rail to front leg", "--csv");
    assertThat(said.out())
        .startsWith(
            "tool,part,joint,where,reading,off square deg,length mm,to mm,count,from,sense\r\n")
        .contains(
            "saw,side-rail right,\"side rail to front leg, right\",\"side-rail, shoulder at the"
                + " front end\",mitre gauge,4.62,,,,,the long edge on your right\r\n");
  }

  @Test
  void otherProgramsGetMillimetresAndDegrees() {
    Said said = Said.by("settings", ARMCHAIR, "--part", "back-leg", "--json", "--drill-point", "3");
    assertThat(said.out())
        .contains("\"format\" : \"dryfit-settings/1\"")
        .contains("\"drillPoint\" : 3")
        .contains("\"kind\" : \"span\"");
  }

  @ParameterizedTest
  @CsvSource({
    "--joint, no such, no joint is called 'no such'",
    "--part, no such, no part is called 'no such'",
    "--follower, 25:middle, 'a length, a colon, and shank or tip'",
    "--follower, 2:tip, at least 5 mm",
    "--joint, arm to bakc leg, the nearest name is 'arm to back leg'",
    "--part, arn, the nearest name is 'arm'; there are front-leg",
    "--drill-point, far, 'far' is not a length",
    "--drill-point, 600, 'without a unit it is in mm'",
    "--fits, 1.5, a whole number from 0 to 20",
    "--fits, 21, a whole number from 0 to 20"
  })
  void whatCannotBeIsToldInOneLine(String option, String value, String message) {
    Said said = Said.by("settings", ARMCHAIR, option, value);
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err()).contains(message);
    assertThat(said.err().lines()).hasSize(1);
  }

  @Test
  void onePartOfAPairIsAskedForByItsHand() {
    Said said = Said.by("settings", ARMCHAIR, "--part", "arm left");
    assertThat(said.code()).isZero();
    assertThat(said.out()).contains("mortise in arm, left\n").doesNotContain(", both hands");
    assertThat(said.out()).doesNotContain(", right\n");
  }
}
