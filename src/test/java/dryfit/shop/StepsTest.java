package dryfit.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.build.Chair;
import dryfit.fit.Fitted;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A sawn leg, its front bent back from 200 up, and what goes into it; demo data. */
class StepsTest {
  private static Chair chair(String parts, String joints) {
    return Fitted.of(
            """
            { "format": "dryfit-chair/1", "name": "Sketch", "unit": "mm", "timber": "ash-white",
              "parts": { %s }, "joints": { %s } }"""
                .formatted(parts, joints))
        .chair();
  }

  private static final String LEG =
      """
      "leg": { "form": "sawn", "thickness": 30, "stands-at": [0, 0, 0],
        "side": [ [0, 0], [40, 0], [40, 200], [80, 400], [40, 400], [0, 200] ] }""";

  private static final String RAILS =
      """
      "low": { "form": "straight", "section": [40, 20], "from": [0, -200, 100], "to": [0, -1, 100] },
      "high": { "form": "straight", "section": [40, 16], "from": [0, -200, 300], "to": [0, 10, 300] },
      "raked": { "form": "straight", "section": [40, 16], "from": [0, -200, 360], "to": [0, 20, 330] },
      "side": { "form": "straight", "section": [40, 20], "from": [200, 20, 100], "to": [10, 20, 100] }""";

  private static String tenon(String rail) {
    return """
        "%s": { "tenon": "%s end", "into": "leg", "thickness": 8, "width": 24, "length": 15 }"""
        .formatted(rail, rail);
  }

  private static List<Step> of(Chair chair, String part) {
    return Steps.of(chair).stream()
        .filter(s -> chair.parts().get(s.part()).name().equals(part))
        .findFirst()
        .orElseThrow()
        .steps();
  }

  private static Step step(List<Step> steps, String about) {
    return steps.stream().filter(s -> s.about().equals(about)).findFirst().orElseThrow();
  }

  private static List<Step> legSteps() {
    String joints = String.join(",", tenon("low"), tenon("high"), tenon("raked"), tenon("side"));
    return of(chair(LEG + "," + RAILS, joints), "leg");
  }

  @Test
  void aMortiseInAFaceThatStaysIsCutFromItWhileTheBlankIsSquare() {
    List<Step> steps = legSteps();
    Step low = step(steps, "low");
    assertThat(low.kind()).isEqualTo(Step.Kind.MORTISE);
    assertThat(low.face()).isEqualTo("front");
    // 15 of tenon and 2 to spare.
    assertThat(low.sizes().get(0)).isCloseTo(17, within(1e-6));
    assertThat(step(steps, "side").face()).isEqualTo("right");
  }

  @Test
  void aMortiseWhoseFaceIsSawnAwayIsCutBeforeFromTheBlankAndDeeper() {
    Step high = step(legSteps(), "high");
    assertThat(high.kind()).isEqualTo(Step.Kind.MORTISE_BEFORE_SAWING);
    assertThat(high.face()).isEqualTo("front");
    // At 300 the front stands 20 behind the face of the blank; a flat shoulder 24 to 40 high lands
    // lower on the slope of 1 in 5, 4 nearer.
    assertThat(high.sizes().get(1)).isBetween(15.9, 20.1);
    assertThat(high.sizes().get(0)).isCloseTo(high.sizes().get(1) + 17, within(1e-6));
  }

  @Test
  void aMortiseThatIsSquareToNoFaceIsCutLastAndSaysHowToHoldThePart() {
    List<Step> steps = legSteps();
    Step raked = step(steps, "raked");
    assertThat(raked.kind()).isEqualTo(Step.Kind.MORTISE_IN_OFFCUTS);
    assertThat(steps.indexOf(raked)).isGreaterThan(steps.indexOf(step(steps, "side")));
    assertThat(steps)
        .extracting(Step::kind)
        .containsSubsequence(
            Step.Kind.SQUARE,
            Step.Kind.MORTISE,
            Step.Kind.MORTISE_BEFORE_SAWING,
            Step.Kind.SAW,
            Step.Kind.MORTISE_IN_OFFCUTS,
            Step.Kind.BREAK_EDGES);
  }

  @Test
  void aLeaningLegsFootIsCutBeforeItsHeightsAreMeasured() {
    String parts =
        """
        "leg": { "form": "straight", "section": [40, 40], "from": [0, 0, 0], "to": [0, 80, 400],
          "foot": { "ease": 2 }, "oversize": { "sides": 1, "ends": 15 } },
        "rail": { "form": "straight", "section": [40, 20], "from": [200, 40, 200], "to": [20, 40, 200] }""";
    Chair chair = chair(parts, tenon("rail"));
    List<Step> steps = of(chair, "leg");
    assertThat(steps)
        .extracting(Step::kind)
        .containsExactly(
            Step.Kind.SQUARE,
            Step.Kind.MARK,
            Step.Kind.FOOT,
            Step.Kind.MORTISE,
            Step.Kind.EASE_FOOT,
            Step.Kind.BREAK_EDGES);
    Step foot = steps.get(2);
    // Rake 1 in 5: across 40 the foot's plane runs 8 along the leg. What stands on the floor is 2
    // less at each side of the eased foot, 40 sqrt(1.04) - 4 long, and that times sin of the rake.
    double rake = Math.atan(0.2);
    assertThat(foot.angle()).isCloseTo(rake, within(1e-9));
    double run = (40 / Math.cos(rake) - 4) * Math.sin(rake);
    assertThat(foot.sizes().get(0) - foot.sizes().get(1)).isCloseTo(run, within(1e-6));
    // It is in the middle of the leg 2 above the floor, which is 0.4 further back.
    assertThat((foot.sizes().get(0) + foot.sizes().get(1)) / 2)
        .isCloseTo(Math.hypot(400, 80) - 0.4 * Math.sin(rake), within(1e-6));
    // The blank: the leg, 4 more at the foot for its slant, less what is eased there; the
    // allowances on top.
    assertThat(steps.get(0).sizes().get(1)).isCloseTo(42, within(1e-6));
    assertThat(steps.get(0).sizes().get(0))
        .isBetween(Math.hypot(400, 80) + 30, Math.hypot(400, 80) + 34.1);
    assertThat(dryfit.solid.Cells.volume(chair.parts().get(0).blank().solid("/parts/leg").cells()))
        .isCloseTo(steps.get(0).sizes().get(0) * 42 * 42, within(1e-3));
  }

  @Test
  void aPartSawnTwiceKeepsItsOffcuts() {
    String arm =
        """
        "arm": { "form": "sawn", "stands-at": [0, 0, 200],
          "side": [ [0, 0], [300, 0], [300, 20], [150, 30], [0, 20] ],
          "plan": [ [-20, 0], [20, 0], [40, 150], [20, 300], [-20, 300] ] }""";
    assertThat(of(chair(arm, ""), "arm"))
        .extracting(Step::kind)
        .containsSubsequence(Step.Kind.SAW_FIRST, Step.Kind.SAW_SECOND);
  }

  @Test
  void aBlankIsCutOutAsTheCutListHasItAndSquaredToWhatThePartNeeds() {
    // Across the board lies the wider way, whichever of the part's own it is.
    Chair chair =
        chair(
            """
            "rail": { "form": "straight", "section": [20, 40], "from": [0, 0, 50], "to": [300, 0, 50] }""",
            "");
    List<Step> steps = of(chair, "rail");
    assertThat(steps)
        .extracting(Step::kind)
        .startsWith(Step.Kind.CUT_OUT, Step.Kind.SQUARE, Step.Kind.MARK);
    Blank blank = Blank.of(chair.parts().get(0), chair.design().boards().allow());
    assertThat(steps.get(0).sizes())
        .containsExactly(blank.rough().length(), blank.rough().width(), blank.rough().thickness());
    assertThat(steps.get(1).sizes().get(0)).isCloseTo(300, within(1e-6));
    assertThat(steps.get(1).sizes().get(1)).isCloseTo(40, within(1e-6));
    assertThat(steps.get(1).sizes().get(2)).isCloseTo(20, within(1e-6));
  }

  @Test
  void edgesThatAreWrittenAreTheLastStepsEachWithItsSize() {
    String rail =
        """
        "rail": { "form": "straight", "section": [40, 20], "from": [0, 0, 50], "to": [300, 0, 50],
          "edges": [ { "between": ["top", "front"], "shape": "chamfer", "size": 3 },
                     { "between": "all long", "shape": "eased", "size": 1 } ] }""";
    List<Step> steps = of(chair(rail, ""), "rail");
    Step chamfer = steps.get(steps.size() - 2);
    Step eased = steps.get(steps.size() - 1);
    assertThat(chamfer.kind()).isEqualTo(Step.Kind.CHAMFER);
    assertThat(chamfer.about()).isEqualTo("the edge between top and front");
    assertThat(chamfer.sizes()).containsExactly(3.0);
    assertThat(eased.kind()).isEqualTo(Step.Kind.EASE);
    assertThat(eased.about()).isEqualTo("the long edges");
    assertThat(steps).extracting(Step::kind).doesNotContain(Step.Kind.BREAK_EDGES);
  }

  @Test
  void screwsHavePilotsInTheOneAndClearanceHolesInTheOther() {
    Chair chair =
        chair(
            """
            "rail": { "form": "straight", "section": [40, 30], "from": [-150, 0, 80], "to": [150, 0, 80] },
            "board": { "form": "panel", "thickness": 18, "plane": "plan", "at": [0, 0, 109],
              "outline": [ [-150, -60], [150, -60], [150, 60], [-150, 60] ] }""",
            """
            "it": { "kind": "screwed", "tenon": "board middle", "into": "rail", "diameter": 4, "length": 40, "slot": 3, "count": 2, "spacing": 150 }""");
    Step pilot = step(of(chair, "rail"), "it");
    assertThat(pilot.kind()).isEqualTo(Step.Kind.PILOT);
    // 40 long, 18 of it in the board: nothing to spare at the bottom.
    assertThat(pilot.sizes().get(0)).isCloseTo(22, within(1e-6));
    Step clearance = step(of(chair, "board"), "it");
    assertThat(clearance.kind()).isEqualTo(Step.Kind.CLEARANCE);
    assertThat(clearance.sizes().subList(0, 2)).containsExactly(4.0, 3.0);
  }

  @Test
  void aPinIsBoredAfterItsMortiseAndAWedgedTenonIsSawnAndItsMortiseOpened() {
    String parts =
        RAILS
            + """
            , "pin": { "form": "peg", "in-joint": "raked", "from-shoulder": 6, "diameter": 5 }""";
    String side =
        """
        "side": { "tenon": "side end", "into": "leg", "thickness": 8, "width": 24, "through": true,
          "wedges": { "count": 1, "deep": 20, "angle": "3 deg" } }""";
    Chair chair = chair(LEG + "," + parts, tenon("raked") + "," + side);
    List<Step> leg = of(chair, "leg");
    assertThat(leg)
        .extracting(Step::kind)
        .containsSubsequence(Step.Kind.MORTISE, Step.Kind.FLARE)
        .containsSubsequence(Step.Kind.MORTISE_IN_OFFCUTS, Step.Kind.PIN_HOLE);
    // One wedge of 3 degrees over 20 pushes each side out by half of 20 tan 3°.
    Step flare = leg.stream().filter(s -> s.kind() == Step.Kind.FLARE).findFirst().orElseThrow();
    double spread = 20 * Math.tan(Math.toRadians(3)) / 2;
    assertThat(flare.sizes().get(0)).isCloseTo(spread, within(1e-9));
    Step kerf =
        of(chair, "side").stream()
            .filter(s -> s.kind() == Step.Kind.KERF)
            .findFirst()
            .orElseThrow();
    assertThat(kerf.sizes().subList(0, 2)).containsExactly(1.0, 20.0);
  }

  @Test
  void aSlantingTenonIsTold() {
    // 1 in 9 off square in plan; the tenon goes in square to the leg, the rail does not.
    Chair chair =
        chair(
            """
            "post": { "form": "straight", "section": [40, 40], "from": [0, 0, 0], "to": [0, 0, 400] },
            "rail": { "form": "straight", "section": [40, 20], "from": [20, -200, 200], "to": [0, -20, 200] }""",
            """
            "it": { "tenon": "rail end", "into": "post", "thickness": 8, "width": 24, "length": 18, "angled": "tenon" }""");
    Step slant =
        of(chair, "rail").stream()
            .filter(s -> s.kind() == Step.Kind.SLANT)
            .findFirst()
            .orElseThrow();
    assertThat(Math.tan(slant.angle())).isCloseTo(1 / 9.0, within(1e-6));
    assertThat(slant.sizes().get(0)).isCloseTo(18 / 9.0, within(0.05));
  }

  /** A stick 20 thick, leaning 3 in 4 into a level board; its tenon is 24 long on its middle. */
  private static List<Step> stick(String shoulder) {
    Chair chair =
        chair(
            """
            "board": { "form": "straight", "section": [40, 120], "from": [-200, 0, 120], "to": [200, 0, 120] },
            "stick": { "form": "turned", "from": [0, -60, 20], "to": [0, 0, 100], "diameter": 20 }""",
            """
            "it": { "tenon": "stick end", "into": "board", "kind": "round-tenon", "diameter": 12, "length": 24, "shoulder": "%s" }"""
                .formatted(shoulder));
    return of(chair, "stick").stream().filter(s -> s.about().equals("it")).toList();
  }

  @Test
  void aLeaningShoulderIsTurnedSquareAtItsLongSideAndThenPared() {
    List<Step> steps = stick("flat");
    assertThat(steps)
        .extracting(Step::kind)
        .containsExactly(Step.Kind.TURN_TENON, Step.Kind.PARE_SHOULDER);
    // Off plumb by atan(3/4): at the rim, 10 from the middle, the shoulder is 7.5 longer.
    assertThat(steps.get(0).sizes().get(0)).isCloseTo(24 - 7.5, within(0.01));
    assertThat(Math.tan(steps.get(1).angle())).isCloseTo(0.75, within(1e-6));
  }

  @Test
  void aScribedShoulderIsToldAndOneThatIsNotThereToo() {
    assertThat(stick("scribed"))
        .extracting(Step::kind)
        .containsExactly(Step.Kind.TURN_TENON, Step.Kind.SCRIBE);
    assertThat(stick("none")).extracting(Step::kind).containsExactly(Step.Kind.TURN_END);
  }
}
