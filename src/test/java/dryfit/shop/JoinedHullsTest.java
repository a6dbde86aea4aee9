package dryfit.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

class JoinedHullsTest {
  /** A square of 10 mm and another whose left side leans away from it by so much at the top. */
  private static Geometry joined(double gap) {
    GeometryFactory geometry = new GeometryFactory();
    return JoinedHulls.of(
        List.of(
            geometry.createPolygon(ring(0, 0, 10, 0, 10, 10, 0, 10, 0, 0)),
            geometry.createPolygon(ring(10, 0, 20, 0, 20, 10, 10 + gap, 10, 10, 0))));
  }

  private static Coordinate[] ring(double... xy) {
    Coordinate[] out = new Coordinate[xy.length / 2];
    for (int i = 0; i < out.length; i++) {
      out[i] = new Coordinate(xy[2 * i], xy[2 * i + 1]);
    }
    return out;
  }

  @Test
  void aGapThatTheGridMakesDoesNotPartAnOutline() {
    Geometry one = joined(0.002);
    assertThat(one.getNumGeometries()).isEqualTo(1);
    assertThat(one.getArea()).isCloseTo(200, within(0.001));
  }

  @Test
  void aGapThatIsThereStays() {
    assertThat(joined(0.1).getArea()).isCloseTo(200 - 0.5, within(0.01));
  }
}
