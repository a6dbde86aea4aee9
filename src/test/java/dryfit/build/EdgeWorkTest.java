package dryfit.build;

import static dryfit.build.Sketch.SQUARE_LEGS;
import static dryfit.build.Sketch.bounds;
import static dryfit.build.Sketch.chair;
import static dryfit.build.Sketch.joint;
import static dryfit.build.Sketch.part;
import static dryfit.build.Sketch.problems;
import static dryfit.build.Sketch.volume;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.document.Hand;
import dryfit.geometry.MeshCheck;
import dryfit.solid.Kernel;
import dryfit.solid.exact.ExactKernel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Edges against what can be worked out by hand: a chamfer of c takes c²/2 for every millimetre, an
 * eased flat of f at a square edge f²/4, a round-over of r takes r² - πr²/4.
 */
class EdgeWorkTest {
  private static final Kernel EXACT = new ExactKernel();

  /** Three pieces of straight stuff, 40 x 40 x 400, standing. */
  private static String leg(String edges) {
    return """
        "leg": { "form": "straight", "pair": true, "section": [40, 40],
          "from": [180, 20, 0], "to": [180, 20, 400], "edges": [ %s ] },
        "back": { "form": "straight", "section": [20, 20], "from": [0, 300, 0], "to": [0, 300, 400] }"""
        .formatted(edges);
  }

  private static Part right(String parts, String name) {
    return part(chair(parts, ""), name, Hand.RIGHT);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // One edge over all its length: 4²/2 x 400.
        "{ 'between': ['front', 'outside'], 'shape': 'chamfer', 'size': 4 } | 3200",
        "{ 'between': ['outside', 'front'], 'shape': 'eased', 'size': 4 } | 1600",
        // Four edges.
        "{ 'between': 'all long', 'shape': 'chamfer', 'size': 4 } | 12800",
        // Stopped 50 short of both ends, and from a place to another.
        "{ 'between': 'all long', 'shape': 'chamfer', 'size': 4, 'leave-ends': 50 } | 9600",
        "{ 'between': 'all long', 'shape': 'chamfer', 'size': 4, 'from': 100, 'to': 250 } | 4800",
        // Round the top: 4 x 40 long, and where two meet in a corner they take 4³/3 together
        // but are counted twice in 4 x 4³/3.
        "{ 'between': ['top', 'any'], 'shape': 'chamfer', 'size': 3 } | 684"
      })
  void aFlatTakesOffWhatItSays(String edges, double off) {
    Part leg = right(leg(edges.replace('\'', '"')), "leg");
    assertThat(640_000 - volume(leg)).isCloseTo(off, within(1.0));
    assertThat(640_000 - volume(leg.solid().cells())).isCloseTo(off, within(1.0));
    assertThat(MeshCheck.problems(leg.solid().mesh())).isEmpty();
  }

  @Test
  void aRoundOverIsAnArcThatBothFacesTouch() {
    Part leg =
        right(leg("{ \"between\": \"all long\", \"shape\": \"round-over\", \"size\": 10 }"), "leg");
    double off = 4 * 400 * (100 - Math.PI * 100 / 4);
    // Facets stand off the arc by 0.05 mm at most, over 15.7 mm of it, on the wood's side.
    assertThat(640_000 - volume(leg)).isBetween(off, off + 4 * 400 * 0.05 * 15.8);
    assertThat(bounds(leg).size().x()).isCloseTo(40, within(1e-3));
  }

  @Test
  void anEdgeIsOnTheSideItNamesOnBothHands() {
    var chair =
        chair(
            leg("{ \"between\": [\"front\", \"outside\"], \"shape\": \"chamfer\", \"size\": 6 }"),
            "");
    for (Hand hand : new Hand[] {Hand.RIGHT, Hand.LEFT}) {
      var mesh = part(chair, "leg", hand).placedMesh();
      double sign = hand == Hand.RIGHT ? 1 : -1;
      boolean cornerLeft =
          java.util.stream.IntStream.range(0, mesh.pointCount())
              .mapToObj(mesh::point)
              .anyMatch(p -> p.x() * sign > 199.9 && p.y() < 0.1);
      boolean inFrom =
          java.util.stream.IntStream.range(0, mesh.pointCount())
              .mapToObj(mesh::point)
              .anyMatch(p -> Math.abs(p.x() * sign - 194) < 1e-3 && Math.abs(p.y()) < 1e-3);
      assertThat(cornerLeft).isFalse();
      assertThat(inFrom).isTrue();
    }
  }

  private static final String CURVED =
      """
      "post": { "form": "sawn", "thickness": 30, "stands-at": [50, 100, 10], "edges": [ %s ],
        "side": { "front": [ [-20, 0], { "curve-through": [ [0, 150], [30, 300] ] } ],
                  "width": [ [0, 40], [300, 30] ] } }""";
  private static final String ARM =
      """
      "arm": { "form": "sawn", "pair": true, "between": ["front-leg", "back-leg"], "underside": 200,
        "edges": [ %s ],
        "plan": { "inside":  [ [0, -20], [240, -20] ],
                  "outside": [ [0, 20], { "curve-through": [ [120, 34], [240, 16] ] } ] },
        "side": { "bottom": [ [0, 0], [240, 0] ],
                  "top":    [ [0, 30], { "arc-to": [240, 30], "rise": -4 } ] } }""";
  private static final String BOW =
      """
      "bow": { "form": "bent", "section": [40, 24], "edges": [ %s ],
        "from": [-200, 0, 300], "to": [200, 0, 300], "rise": 60, "toward": "back" }""";
  private static final String BOARD =
      """
      "board": { "form": "panel", "thickness": 20, "plane": "plan", "at": [0, 200, 300],
        "edges": [ %s ], "openings": [ { "circle": 80 } ],
        "outline": [ [-150, -120], [150, -120], [120, 140], { "arc-to": [-120, 140], "rise": 25 } ] }""";
  private static final String SEAT =
      """
      "seat": { "form": "panel", "thickness": 20, "plane": "plan", "at": [0, 200, 300],
        "edges": [ %s ],
        "outline": [ [-150, -120], [150, -120], [150, 60], [90, 60], [90, 140], [-150, 140] ] }""";
  private static final String ROD =
      """
      "rod": { "form": "turned", "from": [0, 0, 0], "to": [0, 0, 200], "edges": [ %s ],
        "diameters": [ [0, 20], [80, 40], [200, 30] ] }""";

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "chamfer | 3 | all long",
        "round-over | 4 | all long",
        "eased | 1 | all",
        "round-over | 5 | all"
      })
  void everyFormStaysOneClosedSolid(String shape, double size, String which) {
    String edges =
        "{ \"between\": \"%s\", \"shape\": \"%s\", \"size\": %s }".formatted(which, shape, size);
    for (String form : new String[] {CURVED, BOW, BOARD, SEAT, SQUARE_LEGS + "," + ARM}) {
      var treated = chair(form.replace("%s", edges), "", EXACT);
      var plain = chair(form.replace("%s", ""), "", EXACT);
      for (int i = 0; i < treated.parts().size(); i++) {
        Part part = treated.parts().get(i);
        if (part.plan().common().edges().isEmpty()) {
          continue;
        }
        double whole = volume(plain.parts().get(i));
        assertThat(MeshCheck.problems(part.solid().mesh())).as(part.name()).isEmpty();
        assertThat(MeshCheck.problemsAsFloats(part.solid().mesh())).as(part.name()).isEmpty();
        assertThat(volume(part)).as(part.name()).isLessThan(whole);
        assertThat(volume(part.solid().cells()))
            .as(part.name())
            .isCloseTo(volume(part), within(whole * 1e-5));
      }
    }
  }

  @Test
  void bothKernelsLeaveTheSame() {
    String edges = "{ \"between\": \"all\", \"shape\": \"round-over\", \"size\": 5 }";
    String seat = SEAT.replace("%s", edges);
    double exact = volume(part(chair(seat, "", EXACT), "seat"));
    assertThat(volume(part(chair(seat, ""), "seat"))).isCloseTo(exact, within(exact * 1e-6));
  }

  @Test
  void aBentEdgeIsTreatedAllAlong() {
    String edges = "{ \"between\": \"all long\", \"shape\": \"chamfer\", \"size\": 4 }";
    double whole = volume(part(chair(BOW.replace("%s", ""), "", EXACT), "bow"));
    Part bow = part(chair(BOW.replace("%s", edges), "", EXACT), "bow");
    // What goes runs along the four edges; two are as much longer as the other two are shorter.
    double length = whole / (40 * 24);
    assertThat(whole - volume(bow)).isCloseTo(4 * 8 * length, within(4 * 8 * length * 1e-3));
  }

  @Test
  void theEndOfATurnedPartIsRoundedAllRound() {
    String edges = "{ \"between\": [\"top\", \"round\"], \"shape\": \"chamfer\", \"size\": 3 }";
    double whole = volume(part(chair(ROD.replace("%s", ""), ""), "rod"));
    Part rod = part(chair(ROD.replace("%s", edges), ""), "rod");
    // A ring whose section is the triangle of the chamfer, 3 x 3 / 2, its middle 1 inside the edge
    // of radius 15; the face leans by 5 in 120, which a few hundredths leave room for.
    assertThat(whole - volume(rod)).isCloseTo(4.5 * 2 * Math.PI * 14, within(20.0));
  }

  @Test
  void aMouthIsMeasuredOnTheTreatedPart() {
    String tapered =
        """
        "post": { "form": "straight", "section": [40, 40], "from": [0, 20, 0], "to": [0, 20, 400],
          "edges": [ { "between": ["front", "right"], "shape": "chamfer", "size": 30 } ] },
        "rail": { "form": "straight", "section": [20, 10], "from": [100, 10, 200],
          "to": [10, 10, 200] }""";
    var chair =
        chair(
            tapered,
            """
            "it": { "tenon": "rail end", "into": "post", "thickness": 4, "width": 12, "length": 8 }""");
    // The rail runs along y = 10; the chamfer runs from (20, 30) to (-10, 0): x = 0 there.
    var joint = joint(chair, "it", Hand.NONE);
    assertThat(joint.at().x()).isCloseTo(0, within(1e-3));
    assertThat(joint.mouth().normal().x()).isCloseTo(Math.sqrt(0.5), within(1e-4));
    assertThat(joint.mouth().normal().y()).isCloseTo(-Math.sqrt(0.5), within(1e-4));
  }

  @Test
  void chamfersThatJustMeetAreMade() {
    String edges = "{ \"between\": \"all long\", \"shape\": \"chamfer\", \"size\": 20 }";
    // Half of a square of 40 is left.
    assertThat(right(leg(edges), "leg").solid().mesh().bounds().size().y()).isGreaterThan(39);
    // What eases an edge that is rounded as well is no reason to refuse it.
    String twice =
        "{ \"between\": \"all long\", \"shape\": \"eased\", \"size\": 1 },"
            + " { \"between\": [\"front\", \"right\"], \"shape\": \"round-over\", \"size\": 10 }";
    assertThat(right(leg(twice), "leg").bodyCells()).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{ \"between\": [\"front\", \"round\"], \"shape\": \"chamfer\", \"size\": 3 }",
        "{ \"between\": [\"front\", \"back\"], \"shape\": \"chamfer\", \"size\": 3 }",
        "{ \"between\": \"all long\", \"shape\": \"chamfer\", \"size\": 3, \"from\": 500 }"
      })
  void anEdgeThatIsNotThereIsRefused(String edges) {
    assertThat(problems(leg(edges), "").get(0).code()).startsWith("absent-");
    assertThat(problems(leg(edges), "").get(0).pointer()).isEqualTo("/parts/leg/edges/0/between");
  }

  @Test
  void anEdgeThatTurnsTooTightlyIsRefused() {
    String edges = "{ \"between\": [\"top\", \"any\"], \"shape\": \"round-over\", \"size\": 12 }";
    String board =
        """
        "board": { "form": "panel", "thickness": 20, "plane": "plan", "at": [0, 200, 300],
          "edges": [ %s ], "outline": { "circle": 20 } }"""
            .formatted(edges);
    assertThat(problems(board, "").get(0).code()).isEqualTo("edge-too-tight");
    assertThat(problems(board, "").get(0).pointer()).isEqualTo("/parts/board/edges/0/size");
  }
}
