package dryfit.fit.spread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Four equal rectangular inputs that are added up, each with a standard deviation of 1: the example
 * of JCGM 101:2008, 9.2.3, with its 95 % intervals of ±3.92 by the GUM and ±3.88 by draws (numbers
 * from memory).
 */
class DrawsTest {
  private static final double HALF_WIDTH = Math.sqrt(3);
  private static final List<Term> FOUR =
      IntStream.range(0, 4).mapToObj(i -> new Term(i, HALF_WIDTH, 1, 0)).toList();

  private static double[] sorted(List<Term> terms) {
    double[] values = new Draws(terms.size()).of(0, terms);
    Arrays.sort(values);
    return values;
  }

  @Test
  void theClosedFormIsThatOfTheGuide() {
    double variance = FOUR.stream().mapToDouble(Term::variance).sum();
    assertThat(1.96 * Math.sqrt(variance)).isCloseTo(3.92, within(0.005));
  }

  @Test
  void theDrawsGiveThePublishedInterval() {
    // The tail of a sum of four rectangulars over [0, 1] is (4 − s)^4 / 24 where s is above 3
    // (Irwin and Hall): 2.5 % of it are above s = 4 − 0.6^(1/4), which is 3.88 here.
    double exact = (2 - Math.pow(0.6, 0.25)) * 2 * HALF_WIDTH;
    assertThat(exact).isCloseTo(3.88, within(0.005));
    double density = Math.pow(0.6, 0.75) / 6 / (2 * HALF_WIDTH);
    double error = Math.sqrt(0.025 * 0.975 / Draws.COUNT) / density;
    double[] interval = Draws.interval(sorted(FOUR), 0.05);
    assertThat(interval[0]).isCloseTo(-exact, within(3 * error));
    assertThat(interval[1]).isCloseTo(exact, within(3 * error));
  }

  @Test
  void theirVarianceIsThatOfTheClosedFormWithinTheirOwnError() {
    List<Term> terms = List.of(new Term(0, 0.4, 1, 0), new Term(1, 0.1, -2, 0));
    double closed = 0.16 / 3 + 0.04 / 3;
    double[] values = sorted(terms);
    double mean = Arrays.stream(values).average().orElseThrow();
    double variance = Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum() / Draws.COUNT;
    // A normal distribution would have a relative error of √(2/M), and flat ones have less.
    assertThat(variance).isCloseTo(closed, within(3 * closed * Math.sqrt(2.0 / Draws.COUNT)));
    assertThat(mean).isCloseTo(0, within(3 * Math.sqrt(closed / Draws.COUNT)));
  }

  @Test
  void theMostOfABentShareMayLieBetweenItsEnds() {
    // x/2 − x² is greatest at x = 1/4, where it is 1/16, and least at x = −1.
    Term bent = new Term(0, 1, 0.5, -1);
    assertThat(bent.most()).isCloseTo(1 / 16.0, within(1e-12));
    assertThat(bent.least()).isCloseTo(-1.5, within(1e-12));
    assertThat(new Term(0, 0.2, 0.5, -1).most()).isCloseTo(0.06, within(1e-12));
  }

  @Test
  void exactlyAtALimitIsNotBeyondIt() {
    assertThat(Draws.beyond(new double[] {-1, 0, 0.5, 1, 2}, 0, 1)).isEqualTo(0.4);
  }
}
