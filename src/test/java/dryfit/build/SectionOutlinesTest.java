package dryfit.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class SectionOutlinesTest {
  private static final List<double[]> SQUARE = box(0, 0, 1, 1);

  @Test
  void whatMeetsAlongWholeSidesHasOneOutline() {
    var loops = SectionOutlines.of(List.of(SQUARE, box(1, 0, 2, 1), box(1, 1, 2, 2))).orElseThrow();
    assertThat(loops).hasSize(1);
    // An L: the square in its corner has lost two sides, its neighbours one each.
    assertThat(loops.get(0)).hasSize(8);
    assertThat(loops.get(0))
        .noneMatch(p -> p[0] == 1 && p[1] == 0.5)
        .anyMatch(p -> p[0] == 1 && p[1] == 1);
  }

  @Test
  void whatKeepsApartHasAnOutlineEach() {
    assertThat(SectionOutlines.of(List.of(SQUARE, box(3, 0, 4, 1))).orElseThrow()).hasSize(2);
  }

  @Test
  void sidesThatMeetInPartAreLeftToOthers() {
    assertThat(SectionOutlines.of(List.of(box(0, 0, 1, 2), box(1, 0, 2, 1), box(1, 1, 2, 2))))
        .isEmpty();
  }

  @Test
  void aCornerThatTouchesIsLeftToOthers() {
    assertThat(SectionOutlines.of(List.of(SQUARE, box(1, 1, 2, 2)))).isEmpty();
  }

  @Test
  void aHoleIsLeftToOthers() {
    List<List<double[]>> round =
        List.of(
            box(0, 0, 1, 1),
            box(1, 0, 2, 1),
            box(2, 0, 3, 1),
            box(0, 1, 1, 2),
            box(2, 1, 3, 2),
            box(0, 2, 1, 3),
            box(1, 2, 2, 3),
            box(2, 2, 3, 3));
    assertThat(SectionOutlines.of(round)).isEmpty();
  }

  private static List<double[]> box(double u0, double v0, double u1, double v1) {
    return List.of(
        new double[] {u0, v0}, new double[] {u1, v0}, new double[] {u1, v1}, new double[] {u0, v1});
  }
}
