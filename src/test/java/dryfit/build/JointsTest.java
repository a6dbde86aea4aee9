package dryfit.build;

import static dryfit.build.Sketch.FRONT_RAIL;
import static dryfit.build.Sketch.SIDE_RAIL;
import static dryfit.build.Sketch.SQUARE_LEGS;
import static dryfit.build.Sketch.TRAPEZOID_LEGS;
import static dryfit.build.Sketch.bounds;
import static dryfit.build.Sketch.chair;
import static dryfit.build.Sketch.joint;
import static dryfit.build.Sketch.part;
import static dryfit.build.Sketch.volume;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.document.Hand;
import dryfit.geometry.Vec3;
import dryfit.solid.Distance;
import dryfit.solid.Overlap;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tenons and mortises of small frames, against sizes worked out by hand. */
class JointsTest {
  private static final Offset<Double> SAME = within(1e-4);

  /** cos(atan(1/8)), how a side rail of the trapezoid turns out of square. */
  private static final double COS = 8 / Math.sqrt(65);

  private static Joint front(String more) {
    return joint(
        chair(
            SQUARE_LEGS + "," + FRONT_RAIL,
            """
            "it": { "tenon": "front-rail both", "into": "front-leg", %s }"""
                .formatted(more)),
        "it",
        Hand.RIGHT);
  }

  private static Joint side(String more) {
    return joint(
        chair(
            TRAPEZOID_LEGS + "," + SIDE_RAIL,
            """
            "it": { "tenon": "side-rail front", "into": "front-leg", %s }"""
                .formatted(more)),
        "it",
        Hand.RIGHT);
  }

  private static void is(Vec3 v, double x, double y, double z) {
    assertThat(v.x()).isCloseTo(x, SAME);
    assertThat(v.y()).isCloseTo(y, SAME);
    assertThat(v.z()).isCloseTo(z, SAME);
  }

  @Test
  void aTenonStandsInTheMiddleOfTheEndAndOnTheFace() {
    Joint j = front("\"thickness\": 8, \"width\": 40, \"length\": 20");
    // The rail's end is 5 to 25 from the front and 320 to 380 high; the leg's inside is at 160.
    is(j.at(), 160, 15, 350);
    is(j.entry(), 1, 0, 0);
    is(j.mouth().normal(), -1, 0, 0);
    assertThat(volume(j.tenon())).isCloseTo(8 * 40 * 20, SAME);
  }

  @Test
  void theMortiseIsTheTenonAndItsClearances() {
    Joint j =
        front(
            "\"thickness\": 8, \"width\": 40, \"length\": 20,"
                + " \"fit\": { \"cheek\": 0.2, \"edge\": 0.6, \"bottom\": 3 }");
    double inWood =
        j.mortise().stream()
            .flatMap(c -> c.clipped(j.mouth()).stream())
            .mapToDouble(c -> c.volume())
            .sum();
    assertThat(inWood).isCloseTo(8.4 * 41.2 * 23, SAME);
  }

  @Test
  void theLegLosesTheMortiseAndTheRailGainsTheTenon() {
    var chair =
        chair(
            SQUARE_LEGS + "," + FRONT_RAIL,
            """
            "it": { "tenon": "front-rail both", "into": "front-leg", "thickness": 8, "width": 40,
              "length": 20, "fit": { "cheek": 0.25, "edge": 0.5, "bottom": 2 } }""");
    assertThat(volume(part(chair, "front-rail")))
        .isCloseTo(320 * 60 * 20 + 2 * 8 * 40 * 20, within(0.5));
    assertThat(volume(part(chair, "front-leg", Hand.LEFT)))
        .isCloseTo(40 * 40 * 400 - 8.5 * 41 * 22, within(0.5));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // The rail runs from 320 to 380; 40 of it are tenon. From y = 5 (outside) to 25; 8 are
        // tenon.
        "\"from-top\": 5     | 15 | 355",
        "\"from-bottom\": 0  | 15 | 340",
        "\"from-outside\": 2 | 11 | 350",
        "\"from-inside\": 2  | 19 | 350"
      })
  void aTenonMayBePlacedFromAFaceOfItsPart(String place, double y, double z) {
    is(front("\"thickness\": 8, \"width\": 40, \"length\": 20, " + place).at(), 160, y, z);
  }

  @Test
  void alongTheRailAnAngledRailLeansIntoTheLeg() {
    Joint j = side("\"thickness\": 8, \"width\": 40, \"length\": 20");
    assertThat(Math.tan(j.lean())).isCloseTo(1.0 / 8, SAME);
    // The outside face goes through (195, 40); the middle of 20 is 10 / cos further in.
    is(j.at(), 195 - 10 / COS, 40, 350);
    is(j.entry(), Math.sqrt(1 - COS * COS), -COS, 0);
    assertThat(j.length()).isCloseTo(20, SAME);
    // A prism cut off at a slant at the mouth: its middle line is still 20 long.
    assertThat(volume(j.tenon())).isCloseTo(8 * 40 * 20, SAME);
  }

  @Test
  void aLengthSquareToTheFaceIsLongerAlongALeaningTenon() {
    Joint j = side("\"thickness\": 8, \"width\": 40, \"length\": 20, \"length-is\": \"square\"");
    assertThat(j.length()).isCloseTo(20 / COS, SAME);
    assertThat(j.length() * Math.cos(j.lean())).isCloseTo(20, SAME);
  }

  @Test
  void aSquareEntryGoesStraightInWhateverTheRailDoes() {
    Joint j = side("\"thickness\": 8, \"width\": 40, \"length\": 20, \"entry\": \"square\"");
    is(j.entry(), 0, -1, 0);
    assertThat(j.lean()).isCloseTo(0, SAME);
  }

  @Test
  void anEntryMayBeGivenForTheRightHandAndIsMirroredForTheLeft() {
    var chair =
        chair(
            TRAPEZOID_LEGS + "," + SIDE_RAIL,
            """
            "it": { "tenon": "side-rail front", "into": "front-leg", "thickness": 8, "width": 40,
              "length": 20, "entry": [0.05, 1, 0] }""");
    Vec3 right = joint(chair, "it", Hand.RIGHT).entry();
    Vec3 left = joint(chair, "it", Hand.LEFT).entry();
    // Written as a line: it goes into the wood, so against the way it was written.
    assertThat(right.y()).isNegative();
    assertThat(right.x() / right.y()).isCloseTo(0.05, SAME);
    assertThat(left).isEqualTo(right.mirrored());
  }

  @Test
  void aThroughTenonCrossesTheLegAndStandsProud() {
    Joint j = front("\"thickness\": 8, \"width\": 40, \"through\": true, \"proud\": 3");
    assertThat(j.length()).isCloseTo(43, SAME);
    double deepest = j.mortise().stream().mapToDouble(c -> c.reach(Vec3.RIGHT)).max().orElseThrow();
    assertThat(deepest).isGreaterThan(200);
  }

  @Test
  void aThroughTenonAtALeanIsAsLongAsItsWayThroughTheWood() {
    assertThat(side("\"thickness\": 8, \"width\": 40, \"through\": true").length())
        .isCloseTo(40 / COS, SAME);
  }

  @Test
  void aHaunchFillsTheWidthUpToTheEdge() {
    Joint j =
        front(
            "\"thickness\": 8, \"width\": 40, \"length\": 20, \"from-bottom\": 5,"
                + " \"haunch\": 6");
    // 60 - 5 - 40 = 15 are left above the tenon; the haunch is 6 deep there.
    assertThat(volume(j.tenon())).isCloseTo(8 * 40 * 20 + 8 * 15 * 6, SAME);
    double top = j.tenon().stream().mapToDouble(c -> c.reach(Vec3.UP)).max().orElseThrow();
    assertThat(top).isCloseTo(380, SAME);
  }

  @Test
  void aHousingTakesTheWholeEndIn() {
    var chair =
        chair(
            SQUARE_LEGS + "," + FRONT_RAIL,
            """
            "it": { "tenon": "front-rail both", "into": "front-leg", "kind": "housing", "depth": 6,
              "fit": { "cheek": 0.25, "edge": 0.5, "bottom": 2 } }""");
    assertThat(bounds(part(chair, "front-rail")).size().x()).isCloseTo(320 + 12, SAME);
    assertThat(volume(joint(chair, "it", Hand.RIGHT).tenon())).isCloseTo(60 * 20 * 6, within(0.1));
    // The pocket: 60 and twice 0.5, 20 and twice 0.25, 6 and 2 deep.
    assertThat(volume(part(chair, "front-leg", Hand.RIGHT)))
        .isCloseTo(640000 - 61 * 20.5 * 8, within(1.0));
  }

  @Test
  void mitredTipsStopEachSideOfTheMitreByHalfTheGap() {
    var chair =
        chair(
            SQUARE_LEGS + "," + FRONT_RAIL + "," + SIDE_RAIL,
            """
            "front": { "tenon": "front-rail both", "into": "front-leg", "thickness": 8, "width": 40,
              "length": 35, "mitre-with": "side", "mitre-gap": 1 },
            "side": { "tenon": "side-rail front", "into": "front-leg", "thickness": 8, "width": 40,
              "length": 35 }""");
    Joint front = joint(chair, "front", Hand.RIGHT);
    Joint side = joint(chair, "side", Hand.RIGHT);
    // The middle lines cross at (185, 15), 25 from either mouth; at 45 degrees half a gap of 1 is
    // 0.5 x sqrt(2) of length. A tenon cut at a slant holds its section times its middle length.
    double middle = 25 - 0.5 * Math.sqrt(2);
    assertThat(volume(front.tenon())).isCloseTo(8 * 40 * middle, SAME);
    assertThat(volume(side.tenon())).isCloseTo(8 * 40 * middle, SAME);
    assertThat(Distance.between(front.tenon(), side.tenon(), 10).orElseThrow().length())
        .isCloseTo(1, SAME);
    assertThat(
            Overlap.between(
                part(chair, "front-rail").placedCells(),
                part(chair, "side-rail", Hand.RIGHT).placedCells()))
        .isEmpty();
  }

  @Test
  void unmitredTheSameTenonsClaimTheSameWood() {
    var chair =
        chair(
            SQUARE_LEGS + "," + FRONT_RAIL + "," + SIDE_RAIL,
            """
            "front": { "tenon": "front-rail both", "into": "front-leg", "thickness": 8, "width": 40,
              "length": 35 },
            "side": { "tenon": "side-rail front", "into": "front-leg", "thickness": 8, "width": 40,
              "length": 35 }""");
    // They cross over each other: 8 x 8 x 40.
    assertThat(
            Overlap.between(
                    part(chair, "front-rail").placedCells(),
                    part(chair, "side-rail", Hand.RIGHT).placedCells())
                .orElseThrow()
                .volume())
        .isCloseTo(8 * 8 * 40, within(0.5));
  }

  private static final String ROUND_LEGS =
      """
      "front-leg": { "form": "turned", "pair": true, "diameter": 40,
        "from": [180, 20, 0], "to": [180, 20, 400] },
      "back-leg": { "form": "turned", "pair": true, "diameter": 40,
        "from": [180, 300, 0], "to": [180, 300, 400] }""";

  @Test
  void aScribedShoulderFollowsTheRoundOfTheLeg() {
    var chair =
        chair(
            ROUND_LEGS
                + ","
                + """
                "rail": { "form": "straight", "section": [60, 20],
                  "between": ["front-leg right", "front-leg left"], "middle": 200 }""",
            """
            "it": { "tenon": "rail both", "into": "front-leg", "thickness": 8, "width": 40,
              "length": 20, "shoulder": "scribed" }""");
    Part rail = part(chair, "rail");
    Part leg = part(chair, "front-leg", Hand.RIGHT);
    // 320 from leg to leg, and at each end the wood between the circle and its tangent:
    // 2 x (20 x 10 - (10 sqrt(300) + 400 asin(1/2)) / 2) = 400 - 10 sqrt(300) - 400 pi/6, less
    // where the tenon (8 x 40 in section) fills it anyway; the tenon starts at the tangent.
    double cope = 2 * 10 * 20 - (10 * Math.sqrt(300) + 400 * Math.PI / 6);
    double under = 2 * 4 * 20 - (4 * Math.sqrt(384) + 400 * Math.asin(0.2));
    double expected = 320 * 60 * 20 + 2 * (cope * 60 - under * 40 + 8 * 40 * 20);
    // Facets stand 0.05 mm in from the circle: the rail is at most that much longer at each end.
    assertThat(volume(rail)).isBetween(expected - 1, expected + 2 * 0.05 * 60 * 20 + 1);
    assertThat(Overlap.between(rail.placedCells(), leg.placedCells())).isEmpty();
  }

  @Test
  void aFlatShoulderRestsOnTheHighestWoodUnderIt() {
    // The front of this leg is hollow: a flat shoulder lands on its two rims.
    String leg =
        """
        "leg": { "form": "sawn", "pair": true, "thickness": 40, "stands-at": [180, 0, 0],
          "front": { "inside":  [ [-20, 0], { "arc-to": [-20, 400], "rise": -8 } ],
                     "outside": [ [20, 0], [20, 400] ] } },
        "back": { "form": "straight", "section": [20, 20], "from": [0, 300, 0], "to": [0, 300, 400] },
        "rail": { "form": "straight", "section": [60, 20],
          "between": ["leg right", "leg left"], "middle": 200 }""";
    var chair =
        chair(
            leg,
            """
            "it": { "tenon": "rail both", "into": "leg", "thickness": 8, "width": 40, "length": 15 }""");
    Part rail = part(chair, "rail");
    assertThat(Overlap.between(rail.placedCells(), part(chair, "leg", Hand.RIGHT).placedCells()))
        .isEmpty();
    // Chord 400, rise 8: radius (200^2 + 8^2) / 16 = 2504. Over 60 the hollow is 30^2 / (2 r) deep.
    double hollow = 30 * 30 / (2 * 2504.0);
    assertThat(joint(chair, "it", Hand.RIGHT).at().x()).isCloseTo(168 - hollow, within(0.06));
  }

  @Test
  void aRoundTenonWithoutShoulderIsThePartItself() {
    var chair =
        chair(
            ROUND_LEGS
                + ","
                + """
                "rod": { "form": "turned", "between": ["front-leg right", "front-leg left"],
                  "middle": 200, "diameter": 16 }""",
            """
            "it": { "tenon": "rod both", "into": "front-leg", "kind": "round-tenon",
              "diameter": 16, "length": 24, "shoulder": "none" }""");
    Part rod = part(chair, "rod");
    // 320 between the legs and 24 in each; facets are 0.05 mm in from the circle.
    assertThat(bounds(rod).size().x()).isCloseTo(320 + 48, within(0.11));
    Joint right = joint(chair, "it", Hand.RIGHT);
    // The middle line meets a round leg square to it.
    assertThat(right.lean()).isCloseTo(0, within(1e-6));
    assertThat(
            Overlap.between(rod.placedCells(), part(chair, "front-leg", Hand.RIGHT).placedCells()))
        .isEmpty();
  }

  @Test
  void aHoleIsWiderThanItsRoundTenonByTheCheekAllRound() {
    Joint j = front("\"kind\": \"round-tenon\", \"diameter\": 12, \"length\": 20");
    List<dryfit.solid.Convex> tenon = j.tenon();
    // From the middle line, square to a flat of the hole: both polygons have their flats there.
    for (var hole : j.mortise()) {
      for (var plane : hole.planes()) {
        if (Math.abs(plane.normal().dot(j.entry())) < 1e-9) {
          double gap =
              plane.offset()
                  - tenon.stream().mapToDouble(c -> c.reach(plane.normal())).max().orElseThrow();
          // The tenon's corners reach further than its flats, by the chord error at most.
          assertThat(gap).isBetween(0.1 - 0.05, 0.1 + 1e-6);
        }
      }
    }
  }

  @Test
  void labelsSayWhichHandAndWhichEnd() {
    var chair =
        chair(
            SQUARE_LEGS + "," + FRONT_RAIL,
            """
            "it": { "tenon": "front-rail both", "into": "front-leg", "thickness": 8, "width": 40,
              "length": 20 }""");
    assertThat(chair.joints()).extracting(Joint::label).containsExactly("it, right", "it, left");
    assertThat(chair.parts())
        .extracting(Part::label)
        .containsExactly(
            "front-leg right", "front-leg left", "back-leg right", "back-leg left", "front-rail");
  }
}
