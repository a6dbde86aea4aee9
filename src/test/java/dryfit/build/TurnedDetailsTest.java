package dryfit.build;

import static dryfit.build.Sketch.part;
import static dryfit.build.Sketch.volume;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Volumes by Pappus: what a flat shape sweeps is its area times the way of its centroid. */
class TurnedDetailsTest {
  /** All have a band of 38 radius, so that all are drawn with as many facets. */
  private static double turned(String details) {
    String rod =
        """
        "rod": { "form": "turned", "diameter": 60, "from": [0, 0, 0], "to": [0, 0, 200],
          "details": [ %s { "fillet": { "at": 150, "wide": 10, "high": 8 } } ] }"""
            .formatted(details.isEmpty() ? "" : details + ",");
    return volume(part(Sound.chair(rod, ""), "rod"));
  }

  /** What a segment of a circle with this chord and rise sweeps, its chord at radius 30. */
  private static double segment(double chord, double rise) {
    double high = Math.abs(rise);
    double r = (chord * chord / 4 + high * high) / (2 * high);
    double half = Math.asin(chord / 2 / r);
    double area = r * r * (half - Math.sin(half) * Math.cos(half));
    double centroid = chord * chord * chord / (12 * area) - r * Math.cos(half);
    return 2 * Math.PI * (30 + Math.signum(rise) * centroid) * area;
  }

  @Test
  void aBeadAndACoveAreRoundAndAFilletIsSquare() {
    double plain = turned("");
    double bead = turned("{ \"bead\": { \"at\": 60, \"wide\": 24, \"high\": 8 } }") - plain;
    double cove = plain - turned("{ \"cove\": { \"at\": 60, \"wide\": 24, \"deep\": 8 } }");
    double fillet = turned("{ \"fillet\": { \"at\": 60, \"wide\": 10, \"high\": 4 } }") - plain;
    // Facets: within 0.05 mm of 24 mm of curve, going round at a radius of 30 to 38.
    double facets = 2 * Math.PI * 38 * 0.05 * 30;
    assertThat(bead).isCloseTo(segment(24, 8), within(facets));
    assertThat(cove).isCloseTo(segment(24, -8), within(facets));
    assertThat(fillet)
        .isCloseTo(Math.PI * (34 * 34 - 30 * 30) * 10, within(2 * Math.PI * 34 * 0.05 * 10));
  }

  @Test
  void detailsMayTouch() {
    double all =
        turned(
            """
            { "fillet": { "at": 50, "wide": 10, "high": 2 } },
            { "bead": { "at": 65, "wide": 20, "high": 6 } },
            { "cove": { "at": 85, "wide": 20, "deep": 6 } }""");
    double alone = turned("{ \"fillet\": { \"at\": 50, \"wide\": 10, \"high\": 2 } }");
    double facets = 2 * Math.PI * 38 * 0.05 * 50;
    assertThat(all - alone).isCloseTo(segment(20, 6) - segment(20, -6), within(facets));
  }
}
