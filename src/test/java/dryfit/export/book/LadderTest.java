package dryfit.export.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.export.paper.Ink;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LadderTest {
  private static List<Ink.Words> numbers(Ladder ladder) {
    List<Ink> ink = new ArrayList<>();
    ladder.column(ink, 50);
    return ink.stream().filter(Ink.Words.class::isInstance).map(Ink.Words.class::cast).toList();
  }

  @Test
  void numbersThatWouldTouchMoveApartAboutTheirMiddle() {
    Ladder ladder = new Ladder();
    ladder.add(10, 50, "10");
    ladder.add(11, 50, "11");
    ladder.add(12, 50, "12");
    ladder.add(40, 50, "40");
    List<Ink.Words> numbers = numbers(ladder);
    assertThat(numbers).extracting(Ink.Words::text).containsExactly("10", "11", "12", "40");
    for (int i = 1; i < numbers.size(); i++) {
      double apart = numbers.get(i).at().y() - numbers.get(i - 1).at().y();
      assertThat(apart).isGreaterThanOrEqualTo(Ladder.STEP - 1e-9);
    }
    double middle = (ladder.reach()[0] + ladder.reach()[1]) / 2;
    assertThat(numbers.get(3).at().y() - numbers.get(1).at().y()).isCloseTo(29, within(1e-9));
    assertThat(middle).isBetween(10.0, 40.0);
  }

  @Test
  void theSameNumberAtTheSamePlaceStandsOnce() {
    Ladder ladder = new Ladder();
    ladder.add(10, 20, "A 10.0");
    ladder.add(10.2, 30, "A 10.0");
    ladder.add(30, 20, "A 10.0");
    assertThat(numbers(ladder)).hasSize(2);
  }
}
