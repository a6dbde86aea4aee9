package dryfit.fit.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.fit.Fitted;
import dryfit.fit.order.Step.Kind;
import dryfit.geometry.Vec3;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Small frames whose order a maker knows. All demo data. */
class OrderTest {
  /**
   * Four legs; the back ones stand 30 mm nearer to the middle on each side, so that over 240 mm the
   * side rails turn 1 in 8, 7.1 degrees.
   */
  private static String frame(String sideEntry, String length, String cheek) {
    return """
        { "format": "dryfit-chair/1", "name": "Frame", "about": "Demo data, invented.", "unit": "mm",
          "timber": "ash-white",
          "fit": { "cheek": CHEEK, "edge": 0.5, "bottom": 2, "least-wall": 0 },
          "parts": {
            "front-leg": { "form": "straight", "pair": true, "section": [40, 40],
              "from": [180, 20, 0], "to": [180, 20, 400] },
            "back-leg": { "form": "straight", "pair": true, "section": [40, 40],
              "from": [150, 300, 0], "to": [150, 300, 400] },
            "front-rail": { "form": "straight", "section": [60, 20],
              "between": ["front-leg right", "front-leg left"], "top": 380, "outside": 5 },
            "back-rail": { "form": "straight", "section": [60, 20],
              "between": ["back-leg right", "back-leg left"], "top": 380, "outside": 5 },
            "side-rail": { "form": "straight", "pair": true, "section": [60, 20],
              "between": ["front-leg", "back-leg"], "top": 280, "outside": 10 }
          },
          "joints": {
            "front": { "tenon": "front-rail both", "into": "front-leg", "thickness": 8, "width": 40,
              "length": 20 },
            "back": { "tenon": "back-rail both", "into": "back-leg", "thickness": 8, "width": 40,
              "length": 20 },
            "side": { "tenon": "side-rail both", "into": ["front-leg", "back-leg"], "thickness": 8,
              "width": 40, "length": LENGTH, "entry": "ENTRY" }
          } }
        """
        .replace("\"into\": [\"front-leg\", \"back-leg\"]", "INTO")
        .replace("CHEEK", cheek)
        .replace("LENGTH", length)
        .replace("ENTRY", sideEntry);
  }

  private static final String[] FRONT = {"front-leg right", "front-leg left", "front-rail"};
  private static final String[] BACK = {"back-leg right", "back-leg left", "back-rail"};

  private static Chair frameChair(String sideEntry, String length, String cheek) {
    String json = frame(sideEntry, length, cheek);
    int at = json.indexOf("    \"side\": {");
    String joint = json.substring(at, json.indexOf('}', at) + 1);
    String front =
        joint
            .replace("\"side\"", "\"side front\"")
            .replace("side-rail both", "side-rail front")
            .replace("INTO", "\"into\": \"front-leg\"");
    String back =
        joint
            .replace("\"side\"", "\"side back\"")
            .replace("side-rail both", "side-rail back")
            .replace("INTO", "\"into\": \"back-leg\"");
    return Fitted.of(json.replace(joint, front + ",\n" + back)).chair();
  }

  private static List<Integer> numbers(Chair chair, String... labels) {
    List<String> all = chair.parts().stream().map(Part::label).toList();
    return Arrays.stream(labels).map(all::indexOf).sorted().toList();
  }

  private static Assembling framesFirst(Chair chair) {
    return Assembling.of(chair, List.of(numbers(chair, FRONT), numbers(chair, BACK)));
  }

  @Test
  void straightTenonsOnATrapezoidForceTheSidesFirst() {
    Chair chair = frameChair("along the part", "20", "0.1");
    Assembling free = Assembling.of(chair);
    assertThat(free.possible()).isTrue();
    assertThat(Rehearsal.problems(free)).isEmpty();
    assertThat(framesFirst(chair).possible()).isFalse();
  }

  @Test
  void whatLocksGluedFramesIsTheFourJointsOfTheSideRails() {
    Chair chair = frameChair("along the part", "20", "0.1");
    Stuck stuck = framesFirst(chair).stuck().get(0);
    assertThat(stuck.joints()).hasSize(4).allMatch(j -> j.name().startsWith("side"));
    assertThat(stuck.collide()).isEmpty();
  }

  @Test
  void whatIsStuckIsToldWhichWayItsTenonsWouldHaveToGoIn() {
    Stuck stuck = framesFirst(frameChair("along the part", "20", "0.1")).stuck().get(0);
    Remedy remedy = stuck.remedies().get(0);
    assertThat(remedy.joints()).extracting(Joint::name).containsOnly("side front");
    assertThat(remedy.entry().angleTo(Vec3.BACK.negated())).isLessThan(1e-9);
    double tangent = 30.0 / 240;
    assertThat(remedy.off()).isCloseTo(Math.atan(tangent), within(1e-5));
    // 0.1 mm of room over the tangent, and what the slant of the mouth gives: see published.
    double most = 0.1 / tangent + 4 * tangent;
    assertThat(remedy.longest()).isCloseTo(most, within(0.1));
  }

  @Test
  void changesThatWouldFreeALockAreMadeAndTheWholeChairTriedAgain() {
    Assembling locked = framesFirst(frameChair("along the part", "20", "0.1"));
    assertThat(locked.openings()).containsExactly(List.of("side front"), List.of("side back"));
    assertThat(framesFirst(frameChair("square to the face", "20", "0.1")).openings()).isEmpty();
  }

  @Test
  void angledTenonsInSquareMortisesLetTheFramesBeMadeFirst() {
    Chair chair = frameChair("square to the face", "20", "0.1");
    Assembling order = framesFirst(chair);
    assertThat(order.possible()).isTrue();
    assertThat(Rehearsal.problems(order)).isEmpty();
  }

  @Test
  void straightTenonsShortEnoughForTheirClearanceLetTheFramesBeMadeFirst() {
    assertThat(framesFirst(frameChair("along the part", "1.4", "0.2")).possible()).isTrue();
    assertThat(framesFirst(frameChair("along the part", "4", "0.2")).possible()).isFalse();
  }

  @Test
  void aJointThatClosesOffItsOwnWayTellsWhatItsClearanceHasToGive() {
    Assembling order = framesFirst(frameChair("along the part", "1.4", "0.2"));
    List<Step.Aside> asides = order.steps().stream().flatMap(s -> s.aside().stream()).toList();
    assertThat(asides).isNotEmpty();
    for (Step.Aside one : asides) {
      assertThat(one.joint().name()).startsWith("side");
      // The side rails turn 1 in 8; a push between the ways of both hands is at most that off.
      assertThat(one.aside()).isLessThanOrEqualTo(1.4 / 8 + 1e-3);
    }
    assertThat(framesFirst(frameChair("square to the face", "20", "0.1")).steps())
        .allMatch(s -> s.aside().isEmpty());
  }

  /** An arm with a tenon at its back and a hole at its front, 250 mm from mouth to hole. */
  private static Chair arm(String cheek, String hole) {
    return Fitted.of(
            """
            { "format": "dryfit-chair/1", "name": "Arm", "about": "Demo data, invented.",
              "unit": "mm", "timber": "ash-white",
              "fit": { "cheek": CHEEK, "edge": 0.5, "bottom": 2, "least-wall": 0 },
              "parts": {
                "front-leg": { "form": "straight", "section": [40, 40],
                  "from": [0, 20, 0], "to": [0, 20, 300] },
                "back-leg": { "form": "straight", "section": [40, 40],
                  "from": [0, 300, 0], "to": [0, 300, 500] },
                "rail": { "form": "straight", "section": [60, 20],
                  "between": ["front-leg", "back-leg"], "top": 200, "outside": 5 },
                "arm": { "form": "straight", "section": [60, 30],
                  "from": [0, 0, 315], "to": [0, 290, 315], "turn": "90 deg" }
              },
              "joints": {
                "rail front": { "tenon": "rail front", "into": "front-leg", "thickness": 8,
                  "width": 40, "length": 20 },
                "rail back": { "tenon": "rail back", "into": "back-leg", "thickness": 8,
                  "width": 40, "length": 20 },
                "arm to leg": { "tenon": "front-leg top", "into": "arm", "kind": "round-tenon",
                  "diameter": 18, "length": 10,
                  "fit": { "cheek": HOLE } },
                "arm to post": { "tenon": "arm back", "into": "back-leg", "thickness": 20,
                  "width": 12, "length": 20 }
              } }
            """
                .replace("CHEEK", cheek)
                .replace("HOLE", hole))
        .chair();
  }

  private static Assembling armLast(Chair chair) {
    return Assembling.of(chair, List.of(numbers(chair, "front-leg", "back-leg", "rail")));
  }

  @Test
  void anArmHeldAtBothEndsDoesNotGoIntoAGluedFrame() {
    assertThat(armLast(arm("0.1", "0.1")).possible()).isFalse();
    // To stand tipped in its mortise the tenon needs room for 20 mm at 2.2 degrees, 0.78 mm in all.
    assertThat(armLast(arm("0.37", "1.3")).possible()).isFalse();
    assertThat(armLast(arm("0.42", "1.3")).possible()).isTrue();
  }

  @Test
  void anArmHeldAtBothEndsGoesInWithTheFrontLegWhileTheFrameIsOpen() {
    Assembling order = Assembling.of(arm("0.1", "0.1"));
    assertThat(order.possible()).isTrue();
    assertThat(Rehearsal.problems(order)).isEmpty();
  }

  @Test
  void anArmWithRoomEnoughIsTippedIntoAGluedFrame() {
    Assembling order = armLast(arm("0.6", "1.3"));
    assertThat(order.possible()).isTrue();
    assertThat(order.steps()).extracting(Step::kind).containsExactly(Kind.TIPPED);
    assertThat(Rehearsal.problems(order)).isEmpty();
  }

  /**
   * The arm on two uprights, so that it cannot be tipped off them, and a mortise behind as tall.
   */
  private static Chair armOnTwo(String room) {
    return Fitted.of(
            """
            { "format": "dryfit-chair/1", "name": "Arm", "about": "Demo data, invented.",
              "unit": "mm", "timber": "ash-white",
              "fit": { "cheek": 0.1, "edge": 0.1, "bottom": 2, "least-wall": 0 },
              "parts": {
                "front-leg": { "form": "straight", "section": [40, 40],
                  "from": [0, 20, 0], "to": [0, 20, 300] },
                "back-leg": { "form": "straight", "section": [40, 40],
                  "from": [0, 300, 0], "to": [0, 300, 500] },
                "rail": { "form": "straight", "section": [60, 20],
                  "between": ["front-leg", "back-leg"], "top": 200, "outside": 5 },
                "upright": { "form": "straight", "section": [18, 18],
                  "from": [5, 200, 200], "to": [5, 200, 300] },
                "arm": { "form": "straight", "section": [60, 30],
                  "from": [0, 0, 315], "to": [0, 280, 315], "turn": "90 deg" }
              },
              "joints": {
                "rail front": { "tenon": "rail front", "into": "front-leg", "thickness": 8,
                  "width": 40, "length": 20 },
                "rail back": { "tenon": "rail back", "into": "back-leg", "thickness": 8,
                  "width": 40, "length": 20 },
                "upright to rail": { "tenon": "upright bottom", "into": "rail",
                  "kind": "round-tenon", "diameter": 10, "length": 20 },
                "upright to arm": { "tenon": "upright top", "into": "arm", "kind": "round-tenon",
                  "diameter": 10, "length": 10 },
                "arm to leg": { "tenon": "front-leg top", "into": "arm", "kind": "round-tenon",
                  "diameter": 18, "length": 10 },
                "arm to post": { "tenon": "arm back", "into": "back-leg", "thickness": 10,
                  "width": 20, "length": 20, "fit": { "cheek": ROOM } }
              } }
            """
                .replace("ROOM", room))
        .chair();
  }

  @Test
  void anArmIsHeldOffItsUprightsInATallMortiseAndThenPutDown() {
    Chair tall = armOnTwo("10.8");
    List<Integer> frame = numbers(tall, "front-leg", "back-leg", "rail", "upright");
    Assembling order = Assembling.of(tall, List.of(frame));
    assertThat(order.possible()).isTrue();
    Step step = order.steps().get(0);
    assertThat(step.kind()).isEqualTo(Kind.TWO_WAYS);
    assertThat(step.moves().get(0).push().distance(Vec3.BACK)).isLessThan(1e-9);
    Step.Leg last = step.moves().get(0).last().orElseThrow();
    assertThat(last.push().distance(Vec3.UP.negated())).isLessThan(1e-9);
    assertThat(last.far()).isCloseTo(10, within(0.6));
    assertThat(Rehearsal.problems(order)).isEmpty();
    // With less room above its tenon than the uprights' tenons are long it stays out.
    assertThat(Assembling.of(armOnTwo("9"), List.of(frame)).possible()).isFalse();
  }
}
