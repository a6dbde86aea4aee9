package published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.shop.BoardMeasure;
import dryfit.shop.ThicknessClass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Board measure and surfaced thickness as the hardwood trade publishes them. */
class BoardMeasureTest {
  private static final double INCH = 25.4;
  private static final double FOOT = 12 * INCH;

  /**
   * American Hardwood Export Council after the rules of the National Hardwood Lumber Association,
   * "Measurement": a board of 2 in by 6 1/4 in by 8 ft has a surface measure of 4 1/6, which is 4,
   * and 8 board feet.
   * https://www.americanhardwood.org/en/american-hardwood/grading-sawn-lumber/measurement
   */
  @Test
  void theWorkedExampleOfTheHardwoodRules() {
    assertThat(BoardMeasure.surfaceMeasure(8 * FOOT, 6.25 * INCH)).isEqualTo(4);
    assertThat(BoardMeasure.tally(8 * FOOT, 6.25 * INCH, 2 * INCH)).isEqualTo(8);
  }

  /**
   * "Hardwood lumber measurement", https://gophuongdong.com/en/hardwood-lumber-measurement/: width
   * in inches, length in feet, surface measure.
   */
  @ParameterizedTest
  @CsvSource({"6.5, 8, 4", "8, 12, 8", "10, 13, 11"})
  void surfaceMeasureGoesToTheNearestSquareFoot(double inches, double feet, int measure) {
    assertThat(BoardMeasure.surfaceMeasure(feet * FOOT, inches * INCH)).isEqualTo(measure);
  }

  /** The same rules: length is taken down to whole feet; 8 1/2 ft tallies as 8. */
  @Test
  void aPartOfAFootIsNotCounted() {
    assertThat(BoardMeasure.surfaceMeasure(8.5 * FOOT, 6.25 * INCH))
        .isEqualTo(BoardMeasure.surfaceMeasure(8 * FOOT, 6.25 * INCH));
  }

  /**
   * A dealer's page, http://powershardwoods.com/Frame-5-lumberinfopage5.html: 1 by 6 by 96 in is 4
   * board feet. A board foot is 144 cubic inches, 0.00235974 cubic metres.
   */
  @Test
  void aPlainExampleOfBoardFeet() {
    double feet = BoardMeasure.boardFeet(96 * INCH, 6 * INCH, INCH);
    assertThat(feet).isCloseTo(4, within(1e-12));
    assertThat(BoardMeasure.cubicMetres(1)).isCloseTo(0.00235974, within(5e-9));
  }

  /** "Hardwood terminology", http://goodwoodcorp.com/HardWoodTerminology.asp. */
  @Test
  void woodThinnerThanAnInchCountsAsAnInch() {
    assertThat(BoardMeasure.boardFeet(96 * INCH, 6 * INCH, INCH / 2)).isCloseTo(4, within(1e-12));
    assertThat(BoardMeasure.tally(96 * INCH, 6 * INCH, INCH / 2)).isEqualTo(4);
  }

  /**
   * Planed on two sides, "Hardwood Lumber Dimensions",
   * https://www.engineeringtoolbox.com/hardwood-lumber-dimensions-chart-d_1462.html; inches.
   */
  @ParameterizedTest
  @CsvSource({
    "4, 0.8125",
    "5, 1.0625",
    "6, 1.3125",
    "8, 1.75",
    "12, 2.75",
    "16, 3.75",
  })
  void planingLeavesWhatTheChartSays(int quarters, double inches) {
    ThicknessClass found = ThicknessClass.thatLeaves(inches * INCH).orElseThrow();
    assertThat(found.quarters()).isEqualTo(quarters);
    assertThat(found.surfaced()).isCloseTo(inches * INCH, within(1e-9));
    assertThat(ThicknessClass.planed(found.rough())).isCloseTo(inches * INCH, within(1e-9));
    int next = ThicknessClass.ALL.indexOf(found) + 1;
    if (next < ThicknessClass.ALL.size()) {
      assertThat(ThicknessClass.thatLeaves(inches * INCH + 0.1))
          .contains(ThicknessClass.ALL.get(next));
    } else {
      assertThat(ThicknessClass.thatLeaves(inches * INCH + 0.1)).isEmpty();
    }
  }
}
