package dryfit.build;

import static dryfit.build.Sketch.FRONT_RAIL;
import static dryfit.build.Sketch.SIDE_RAIL;
import static dryfit.build.Sketch.SQUARE_LEGS;
import static dryfit.build.Sketch.problems;
import static org.assertj.core.api.Assertions.assertThat;

import dryfit.document.Problem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the reader cannot know and the builder must say, each with its place in the document. */
class RefusedBuildTest {
  private static final String RAIL_TENON = "\"thickness\": 8, \"width\": 40, \"length\": 20";

  private static void refused(String code, String pointer, String parts, String joints) {
    assertThat(problems(parts, joints))
        .extracting(Problem::code, Problem::pointer)
        .containsExactly(org.assertj.core.groups.Tuple.tuple(code, pointer));
  }

  @Test
  void aTenonThatNeverMeetsItsPart() {
    refused(
        "mortise-misses",
        "/joints/it",
        SQUARE_LEGS + "," + FRONT_RAIL,
        "\"it\": { \"tenon\": \"front-rail right\", \"into\": \"back-leg right\", "
            + RAIL_TENON
            + " }");
  }

  @Test
  void anEntryAlongTheFace() {
    refused(
        "mortise-misses",
        "/joints/it/entry",
        SQUARE_LEGS + "," + FRONT_RAIL,
        "\"it\": { \"tenon\": \"front-rail right\", \"into\": \"front-leg right\", "
            + RAIL_TENON
            + ", \"entry\": [0.1, 1, 0] }");
  }

  @Test
  void aPartBetweenTwoThatHasNoWoodToMeet() {
    refused(
        "mortise-misses",
        "/parts/rail/between",
        SQUARE_LEGS
            + ", \"rail\": { \"form\": \"straight\", \"section\": [60, 20],"
            + " \"between\": [\"front-leg right\", \"front-leg left\"], \"top\": 600 }",
        "");
  }

  @Test
  void aDrawnPartThatIsTooShortForItsTenon() {
    refused(
        "mortise-misses",
        "/joints/it",
        """
        "post": { "form": "sawn", "thickness": 30, "stands-at": [0, 0, 0],
          "side": [ [-15, 0], [15, 0], [15, 300], [-15, 300] ] },
        "seat": { "form": "panel", "thickness": 20, "plane": "plan", "at": [0, 0, 330],
          "outline": [ [-100, -100], [100, -100], [100, 100], [-100, 100] ] }""",
        """
        "it": { "tenon": "post top", "into": "seat", "thickness": 8, "width": 20, "length": 12 }""");
  }

  @Test
  void anEndThatCannotBeToldApart() {
    // The rail is level: neither of its ends is the top.
    refused(
        "absent-end",
        "/joints/it/tenon",
        SQUARE_LEGS + "," + FRONT_RAIL,
        "\"it\": { \"tenon\": \"front-rail top\", \"into\": \"front-leg\", " + RAIL_TENON + " }");
  }

  @Test
  void partsWithNoRoomBetweenThem() {
    refused(
        "parts-touch",
        "/parts/rail/between",
        """
        "one": { "form": "straight", "section": [40, 40], "from": [0, 0, 0], "to": [0, 0, 400] },
        "two": { "form": "straight", "section": [40, 40], "from": [40, 0, 0], "to": [40, 0, 400] },
        "rail": { "form": "straight", "section": [60, 20], "between": ["one", "two"], "top": 300 }""",
        "");
  }

  @Test
  void aPartBetweenUprightsWithoutAHeight() {
    refused(
        "missing-value",
        "/parts/rail",
        SQUARE_LEGS
            + ", \"rail\": { \"form\": \"straight\", \"section\": [60, 20],"
            + " \"between\": [\"front-leg right\", \"front-leg left\"], \"x\": 0 }",
        "");
  }

  @Test
  void anUprightBetweenRailsWithoutItsPlace() {
    refused(
        "missing-value",
        "/parts/post",
        SQUARE_LEGS
            + ","
            + FRONT_RAIL
            + """
            , "low": { "form": "straight", "section": [40, 20],
                "between": ["front-leg right", "front-leg left"], "top": 140 },
              "post": { "form": "straight", "section": [30, 10], "between": ["low", "front-rail"],
                "y": 15 }""",
        "");
  }

  @Test
  void aPanelWithoutAClosedOpening() {
    refused(
        "no-opening",
        "/parts/panel/fills",
        SQUARE_LEGS
            + ","
            + FRONT_RAIL
            + """
            , "panel": { "form": "panel", "thickness": 10,
                "fills": ["front-leg right", "front-rail", "front-leg left"],
                "groove": { "deep": 8 } }""",
        "");
  }

  @Test
  void anOutlineThatCrossesItself() {
    refused(
        "outline-crosses",
        "/parts/board",
        """
        "board": { "form": "panel", "thickness": 10, "plane": "plan", "at": [0, 0, 100],
          "outline": [ [0, 0], [100, 100], [100, 0], [0, 100] ] }""",
        "");
  }

  @Test
  void aTenonThickerThanTheTurnedEndItIsMadeFrom() {
    refused(
        "tenon-too-large",
        "/joints/it/diameter",
        SQUARE_LEGS
            + """
            , "rod": { "form": "turned", "between": ["front-leg right", "front-leg left"],
                "middle": 200, "diameters": [ [0, 14], [160, 24], [320, 14] ] }""",
        """
        "it": { "tenon": "rod right", "into": "front-leg right", "kind": "round-tenon", "diameter": 18,
          "length": 20 }""");
  }

  @Test
  void aTaperThatLeavesMoreThanThereIs() {
    refused(
        "out-of-range",
        "/parts/leg/tapers/0/leaves",
        """
        "leg": { "form": "straight", "section": [40, 40], "from": [0, 0, 0], "to": [0, 0, 400],
          "tapers": [ { "faces": ["back"], "from": 300, "to": 0, "leaves": 50 } ] }""",
        "");
  }

  @Test
  void aMitreWithAJointOfAnotherPart() {
    refused(
        "absent-joint",
        "/joints/front/mitre-with",
        SQUARE_LEGS + "," + FRONT_RAIL + "," + SIDE_RAIL,
        "\"front\": { \"tenon\": \"front-rail both\", \"into\": \"front-leg\", "
            + RAIL_TENON
            + ", \"mitre-with\": \"side\" },"
            + "\"side\": { \"tenon\": \"side-rail back\", \"into\": \"back-leg\", "
            + RAIL_TENON
            + " }");
  }

  /** A leg that is refused is told once, not again where tenons would have met in it. */
  @Test
  void aMitreWithAJointIntoARefusedPart() {
    String legs =
        SQUARE_LEGS.replaceFirst(
            "\\[180, 20, 400\\]",
            "[180, 20, 400], \"edges\": [ { \"between\": [\"front\", \"back\"],"
                + " \"shape\": \"chamfer\", \"size\": 3 } ]");
    refused(
        "absent-edge",
        "/parts/front-leg/edges/0/between",
        legs + "," + FRONT_RAIL + "," + SIDE_RAIL,
        "\"front\": { \"tenon\": \"side-rail back\", \"into\": \"back-leg\", "
            + RAIL_TENON
            + ", \"mitre-with\": \"side\" },"
            + "\"side\": { \"tenon\": \"front-rail both\", \"into\": \"front-leg\", "
            + RAIL_TENON
            + " }");
  }

  /** One line a kind of refusal that tells lengths: an inch document hears of inches only. */
  @Test
  void lengthsAreToldInTheDocumentsUnit() {
    String crossing =
        """
        "board": { "form": "panel", "thickness": 0.5, "plane": "plan", "at": [0, 0, 4],
          "outline": [ [0, 0], [10, 10], [10, 0], [0, 10] ] },
        "rail": { "form": "bent", "section": [2, 1], "from": [-9, 0, 9], "to": [9, 0, 9],
          "rise": 40, "toward": "back" },
        "leg": { "form": "straight", "section": [1.5, 1.5], "from": [0, 9, 0], "to": [0, 9, 9],
          "edges": [ { "between": "all long", "shape": "chamfer", "size": 1 } ] }""";
    String text = Sketch.text(crossing, "").replace("\"unit\": \"mm\"", "\"unit\": \"in\"");
    List<Problem> problems = Sketch.problems(text);
    assertThat(problems).hasSizeGreaterThan(1);
    assertThat(problems)
        .allSatisfy(p -> assertThat(p.message()).contains(" in").doesNotContain(" mm"));
    assertThat(problems).anySatisfy(p -> assertThat(p.message()).contains("(5 in, 5 in)"));
  }

  @Test
  void everyFaultIsToldAtOnce() {
    assertThat(
            problems(
                SQUARE_LEGS + "," + FRONT_RAIL,
                "\"one\": { \"tenon\": \"front-rail right\", \"into\": \"back-leg right\", "
                    + RAIL_TENON
                    + " },"
                    + "\"two\": { \"tenon\": \"front-rail top\", \"into\": \"front-leg\", "
                    + RAIL_TENON
                    + " }"))
        .extracting(Problem::code)
        .containsExactly("mortise-misses", "absent-end");
  }

  @Test
  void sawCutsForWedgesThatReachTheShoulder() {
    refused(
        "tenon-too-large",
        "/joints/it/wedges/deep",
        SQUARE_LEGS + "," + FRONT_RAIL,
        """
        "it": { "tenon": "front-rail right", "into": "front-leg right", "thickness": 8,
          "width": 40, "through": true, "wedges": { "deep": 40, "angle": "4 deg" } }""");
  }

  @Test
  void aTenonThatStopsFurtherShortThanItIsLong() {
    refused(
        "out-of-range",
        "/joints/it/proud",
        SQUARE_LEGS + "," + FRONT_RAIL,
        """
        "it": { "tenon": "front-rail right", "into": "front-leg right", "thickness": 8,
          "width": 40, "through": true, "proud": -40 }""");
  }

  private static final String APART =
      """
      "rail": { "form": "straight", "section": [60, 20], "from": [-200, 0, 100], "to": [200, 0, 100] },
      "block": { "form": "straight", "section": [40, 30], "from": [-50, 26, 100], "to": [50, 26, 100] }""";

  @Test
  void facesThatDoNotTouchCannotBeGluedOrScrewed() {
    refused(
        "mortise-misses",
        "/joints/it",
        APART,
        "\"it\": { \"tenon\": \"block middle\", \"into\": \"rail\", \"kind\": \"glued\" }");
  }

  private static final String TOUCHING = APART.replace("26", "25");

  @Test
  void screwsThatEndInsideTheFirstPart() {
    refused(
        "tenon-too-large",
        "/joints/it/length",
        TOUCHING,
        """
        "it": { "tenon": "block middle", "into": "rail", "kind": "screwed", "diameter": 4,
          "length": 30 }""");
  }

  @Test
  void screwsBesideTheContact() {
    refused(
        "tenon-too-large",
        "/joints/it/spacing",
        TOUCHING,
        """
        "it": { "tenon": "block middle", "into": "rail", "kind": "screwed", "diameter": 4,
          "length": 40, "count": 2, "spacing": 102 }""");
  }

  @Test
  void aPostThatNeverMeetsItsBoardHasNoNotch() {
    refused(
        "mortise-misses",
        "/joints/it",
        APART,
        """
        "it": { "tenon": "block middle", "into": "rail", "kind": "notch", "across": 2,
          "along": 1 }""");
  }
}
