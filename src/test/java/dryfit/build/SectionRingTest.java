package dryfit.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

/** Sections as rows of u and v. The overlap all round is 0.01. */
class SectionRingTest {
  @Test
  void cellsOfOnePartAreTheSameJoinedOrOneByOne() {
    // An L of three squares that meet along whole sides; and the same with one side cut in two.
    List<double[]> whole = List.of(box(0, 0, 10, 10), box(10, 0, 20, 10), box(10, 10, 20, 20));
    List<double[]> inPart =
        List.of(box(0, 0, 10, 10), box(10, 0, 20, 5), box(10, 5, 20, 10), box(10, 10, 20, 20));
    double area = 300 + 80 * 0.01 + 4 * 0.0001;
    assertThat(SectionRing.of(List.of(whole)).getArea()).isCloseTo(area, within(1e-9));
    assertThat(SectionRing.of(List.of(inPart)).getArea()).isCloseTo(area, within(1e-9));
  }

  @Test
  void partsThatOnlyTouchCloseTheRing() {
    var ring =
        SectionRing.of(
            List.of(
                List.of(box(0, 0, 30, 10)),
                List.of(box(0, 20, 30, 30)),
                List.of(box(0, 10, 10, 20)),
                List.of(box(20, 10, 30, 20))));
    assertThat(((Polygon) ring).getNumInteriorRing()).isEqualTo(1);
    assertThat(ring.getArea()).isCloseTo(30.02 * 30.02 - 9.98 * 9.98, within(1e-9));
  }

  @Test
  void aSlitNarrowerThanTheOverlapIsClosed() {
    // Two fingers 0.01 apart on one back: moved outward, the outline would cross itself.
    List<double[]> part =
        List.of(
            new double[] {0, 0, 0, 10, 10, 0, 10, 4.995, 10, 5.005, 10, 10},
            box(10, 0, 20, 4.995),
            box(10, 5.005, 20, 10));
    var ring = SectionRing.of(List.of(part));
    assertThat(ring.isValid()).isTrue();
    assertThat(ring.getArea()).isCloseTo(20.02 * 10.02, within(1e-6));
  }

  private static double[] box(double u0, double v0, double u1, double v1) {
    return new double[] {u0, v0, u0, v1, u1, v0, u1, v1};
  }
}
