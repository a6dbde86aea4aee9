package dryfit.build;

import static dryfit.build.Sketch.FRONT_RAIL;
import static dryfit.build.Sketch.SQUARE_LEGS;
import static dryfit.build.Sketch.bounds;
import static dryfit.build.Sketch.chair;
import static dryfit.build.Sketch.joint;
import static dryfit.build.Sketch.part;
import static dryfit.build.Sketch.volume;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.document.Hand;
import dryfit.geometry.MassProperties;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import dryfit.solid.exact.ExactKernel;
import java.util.List;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/**
 * Every kind of joint on a small frame, against sizes worked out by hand. The rail is 20 thick, 60
 * high, 320 between its shoulders; the legs are 40 square and 400 high, their inside faces at ±160.
 */
class JointKindsTest {
  private static final Offset<Double> SAME = within(1e-4);

  /** What the kernel's grid may make of a volume, mm3. */
  private static final Offset<Double> GRID = within(0.5);

  /** A circle drawn with facets has a little less area than pi r squared. */
  private static final Percentage FACETS = Percentage.withPercentage(3);

  private static final double RAIL = 320 * 60 * 20;
  private static final double LEG = 40 * 40 * 400;

  private static Chair front(String more) {
    Chair chair =
        chair(
            SQUARE_LEGS + "," + FRONT_RAIL,
            """
            "it": { "tenon": "front-rail both", "into": "front-leg",
              "fit": { "cheek": 0.25, "edge": 0.5, "bottom": 2 }, %s }"""
                .formatted(more));
    holdsTogether(chair);
    return chair;
  }

  /** The surfaces of both kernels and the cells hold the same wood. */
  private static void holdsTogether(Chair chair) {
    for (Part p : chair.parts()) {
      double cells = volume(p.solid().cells());
      assertThat(volume(p)).as(p.label()).isCloseTo(cells, within(1.0));
    }
  }

  private static Part railOf(Chair chair) {
    return part(chair, "front-rail");
  }

  private static Part legOf(Chair chair) {
    return part(chair, "front-leg", Hand.RIGHT);
  }

  private static double inWood(Joint j) {
    return j.mortise().stream()
        .flatMap(c -> c.clipped(j.mouth()).stream())
        .mapToDouble(Convex::volume)
        .sum();
  }

  // ---- shapes of a mortise and tenon ----

  @Test
  void twinTenonsStandOneAboveTheOther() {
    Chair chair = front("\"thickness\": 8, \"width\": 16, \"length\": 20, \"twin\": 12");
    // Two of 8 x 16 x 20; from the middle of the rail at 350 each 14 up or down.
    assertThat(volume(railOf(chair))).isCloseTo(RAIL + 2 * 2 * 8 * 16 * 20, GRID);
    assertThat(volume(legOf(chair))).isCloseTo(LEG - 2 * 8.5 * 17 * 22, GRID);
    Joint j = joint(chair, "it", Hand.RIGHT);
    assertThat(j.tenons()).extracting(t -> t.at().z()).containsExactly(336.0, 364.0);
  }

  @Test
  void twinTenonsStandSideBySide() {
    Chair chair =
        front(
            "\"thickness\": 5, \"width\": 40, \"length\": 20,"
                + " \"twin\": { \"gap\": 4, \"set\": \"beside\" }");
    assertThat(volume(railOf(chair))).isCloseTo(RAIL + 2 * 2 * 5 * 40 * 20, GRID);
    Joint j = joint(chair, "it", Hand.RIGHT);
    // The rail runs from y = 5 to 25; each tenon is 4.5 from its middle.
    assertThat(j.tenons()).extracting(t -> t.at().y()).containsExactlyInAnyOrder(10.5, 19.5);
  }

  @Test
  void bareFacedTenonIsFlushWithTheFaceItHasNoShoulderAt() {
    Chair chair =
        front("\"thickness\": 8, \"width\": 40, \"length\": 20, \"bare-faced\": \"inside\"");
    // The rail's inside face is at y = 25.
    assertThat(joint(chair, "it", Hand.RIGHT).at().y()).isCloseTo(21, SAME);
    assertThat(volume(railOf(chair))).isCloseTo(RAIL + 2 * 8 * 40 * 20, GRID);
  }

  @Test
  void slopingHaunchRunsOutToNothingAtTheEdge() {
    Chair chair =
        front(
            "\"thickness\": 8, \"width\": 40, \"length\": 20, \"from-bottom\": 5,"
                + " \"haunch\": { \"deep\": 6, \"sloping\": true }");
    // A triangle 15 high and 6 deep, 8 thick.
    assertThat(volume(railOf(chair))).isCloseTo(RAIL + 2 * (8 * 40 * 20 + 8 * 15 * 6 / 2.0), GRID);
    // Its room: (15.5 - 0.5) high beside the mortise, the slope moved down by 2, all 8.5 thick.
    double deepAtEdge = 2 - 0.5 * 6 / 15;
    double haunch = 8.5 * 15 * (deepAtEdge + (deepAtEdge + 6)) / 2;
    assertThat(inWood(joint(chair, "it", Hand.RIGHT)))
        .isGreaterThan(8.5 * 41 * 22 + haunch - 8.5 * 0.5 * 8);
  }

  @Test
  void steppedShoulderIsLetInAtOneFace() {
    Chair chair =
        front(
            "\"thickness\": 8, \"width\": 40, \"length\": 20,"
                + " \"stepped\": { \"at\": \"outside\", \"by\": 3 }");
    // From the cheek to the outside face are 6; the whole height of the rail, 3 deep.
    assertThat(volume(railOf(chair))).isCloseTo(RAIL + 2 * (8 * 40 * 20 + 6 * 60 * 3), GRID);
    // In the leg 6 and 0.25 wide, 60 and 1 high; where mortise and step overlap it counts once.
    assertThat(volume(legOf(chair)))
        .isCloseTo(LEG - 8.5 * 41 * 22 - (6.25 * 61 - 0.25 * 41) * 3, GRID);
  }

  @Test
  void wedgesSpreadATenonWithoutTakingWoodFromIt() {
    Chair chair =
        front(
            "\"thickness\": 8, \"width\": 40, \"through\": true,"
                + " \"wedges\": { \"count\": 2, \"kerf\": 1.5, \"deep\": 30, \"angle\": \"1:20\" }");
    // A sheared strip keeps its volume; only the two saw cuts are missing: 1.5 x 30 x 8 each.
    assertThat(volume(railOf(chair))).isCloseTo(RAIL + 2 * (8 * 40 * 40 - 2 * 1.5 * 30 * 8), GRID);
    // Each wedge swells by 30 / 20 = 1.5; two of them push 1.5 to each side.
    Part wedge = part(chair, "it-wedge-1", Hand.RIGHT);
    assertThat(volume(wedge)).isCloseTo(8 * 30 * (1.5 + 3) / 2, GRID);
    double top =
        joint(chair, "it", Hand.RIGHT).tenon().stream()
            .mapToDouble(c -> c.reach(Vec3.UP))
            .max()
            .orElseThrow();
    assertThat(top).isCloseTo(370 + 1.5, SAME);
    // The mortise: 41 high for 10, then flared to 44 at the far face.
    assertThat(volume(legOf(chair))).isCloseTo(LEG - 8.5 * (41 * 10 + 30 * (41 + 44) / 2.0), GRID);
  }

  @Test
  void roundTenonIsWedgedAcrossTheGrainToo() {
    Chair chair =
        front(
            "\"kind\": \"round-tenon\", \"diameter\": 16, \"through\": true,"
                + " \"wedges\": { \"deep\": 25, \"angle\": \"4 deg\" }");
    Joint j = joint(chair, "it", Hand.RIGHT);
    // The leg's grain is upright: the wedge pushes up and down by half its swell.
    double swell = 25 * Math.tan(Math.toRadians(4));
    double top = j.tenon().stream().mapToDouble(c -> c.reach(Vec3.UP)).max().orElseThrow();
    assertThat(top).isCloseTo(350 + 8 + swell / 2, within(0.05));
    double side = j.tenon().stream().mapToDouble(c -> c.reach(Vec3.BACK)).max().orElseThrow();
    assertThat(side).isCloseTo(15 + 8, within(0.05));
  }

  // ---- pieces of their own ----

  @Test
  void looseTenonIsAPieceInAMortiseInEachPart() {
    Chair chair =
        front(
            "\"kind\": \"loose-tenon\", \"thickness\": 8, \"width\": 40, \"length\": 20,"
                + " \"own-length\": 25");
    assertThat(volume(railOf(chair))).isCloseTo(RAIL - 2 * 8.5 * 41 * 27, GRID);
    assertThat(volume(legOf(chair))).isCloseTo(LEG - 8.5 * 41 * 22, GRID);
    Part piece = part(chair, "it-tenon-1", Hand.RIGHT);
    assertThat(piece.isPiece()).isTrue();
    assertThat(volume(piece)).isCloseTo(8 * 40 * 45, GRID);
    assertThat(bounds(piece).low().x()).isCloseTo(160 - 25, SAME);
    assertThat(bounds(piece).high().x()).isCloseTo(160 + 20, SAME);
  }

  @Test
  void dowelsStandInHolesInBothParts() {
    Chair chair =
        front(
            "\"kind\": \"dowels\", \"diameter\": 10, \"length\": 20, \"own-length\": 30,"
                + " \"count\": 3, \"spacing\": 18");
    List<Part> dowels = chair.parts().stream().filter(Part::isPiece).toList();
    assertThat(dowels).hasSize(6);
    assertThat(volume(dowels.get(0))).isCloseTo(Math.PI * 25 * 50, FACETS);
    assertThat(LEG - volume(legOf(chair))).isCloseTo(3 * Math.PI * 5.25 * 5.25 * 22, FACETS);
    assertThat(joint(chair, "it", Hand.RIGHT).tenons())
        .extracting(t -> t.at().z())
        .containsExactly(332.0, 350.0, 368.0);
  }

  // ---- open joints ----

  @Test
  void bridleIsOpenAtTheEndOfTheLeg() {
    Chair chair =
        chair(
            SQUARE_LEGS + "," + FRONT_RAIL.replace("\"top\": 380", "\"top\": 400"),
            """
            "it": { "tenon": "front-rail both", "into": "front-leg", "kind": "bridle",
              "thickness": 8, "fit": { "cheek": 0.25, "edge": 0.5, "bottom": 2 } }""");
    holdsTogether(chair);
    // The tenon is as high as the rail and as long as the leg is thick.
    assertThat(volume(railOf(chair))).isCloseTo(RAIL + 2 * 8 * 60 * 40, GRID);
    // The slot: 8.5 wide, from half a millimetre below the rail up to the end of the leg.
    assertThat(volume(legOf(chair))).isCloseTo(LEG - 8.5 * 60.5 * 40, GRID);
  }

  private static final String CROSS =
      """
      "one": { "form": "straight", "section": [20, 30], "from": [-200, 0, 100], "to": [200, 0, 100] },
      "two": { "form": "straight", "section": [20, 40], "from": [0, -200, 100], "to": [0, 200, 100] }""";

  @Test
  void crossLapTakesAShareOfEach() {
    Chair chair =
        chair(
            CROSS,
            """
            "it": { "tenon": "one middle", "into": "two", "kind": "lap", "share": 0.4,
              "fit": { "cheek": 0.1, "edge": 0.5 } }""");
    holdsTogether(chair);
    // Both are 20 high: the first keeps the upper 8 where it crosses, the second 12 less 0.1.
    // The first loses 12 over the width of the second and half a millimetre each side of it.
    assertThat(volume(part(chair, "one"))).isCloseTo(400 * 20 * 30 - 12 * 30 * 41, GRID);
    // The second loses 8.1, the first's 30 and half a millimetre each side of it, over its 40.
    assertThat(volume(part(chair, "two"))).isCloseTo(400 * 20 * 40 - 8.1 * 31 * 40, GRID);
  }

  @Test
  void cornerLapIsFlushAndOpenAtTheEnds() {
    Chair chair =
        chair(
            """
            "one": { "form": "straight", "section": [20, 30],
              "from": [0, 0, 100], "to": [200, 0, 100] },
            "two": { "form": "straight", "section": [20, 40],
              "from": [180, -200, 100], "to": [180, 15, 100] }""",
            """
            "it": { "tenon": "one right", "into": "two", "kind": "lap",
              "fit": { "cheek": 0.1, "edge": 0.5 } }""");
    holdsTogether(chair);
    // Half of 20 goes from the first over 40; it ends at the second's far side, x = 200.
    assertThat(volume(part(chair, "one"))).isCloseTo(200 * 20 * 30 - 10 * 30 * 40, GRID);
    assertThat(bounds(part(chair, "one")).high().x()).isCloseTo(200, SAME);
    // The second ends flush with the first's side, y = 15: only one side of its notch has a wall.
    assertThat(volume(part(chair, "two"))).isCloseTo(215 * 20 * 40 - 10.1 * 30.5 * 40, GRID);
  }

  @Test
  void seatIsNotchedRoundAPostWithMoreRoomAcrossItsGrain() {
    Chair chair =
        chair(
            """
            "post": { "form": "straight", "section": [30, 30],
              "from": [100, 0, 0], "to": [100, 0, 600] },
            "seat": { "form": "panel", "thickness": 20, "plane": "plan", "at": [0, 0, 400],
              "grain": [1, 0, 0],
              "outline": [ [-200, -150], [200, -150], [200, 150], [-200, 150] ] }""",
            """
            "it": { "tenon": "post middle", "into": "seat", "kind": "notch", "across": 4,
              "along": 0.5 }""");
    holdsTogether(chair);
    // Grain runs to the right: 30 + 2 x 0.5 along it, 30 + 2 x 4 across.
    assertThat(volume(part(chair, "seat"))).isCloseTo(20 * (400 * 300 - 31 * 38), GRID);
    assertThat(volume(part(chair, "post"))).isCloseTo(30 * 30 * 600, GRID);
  }

  // ---- faces ----

  private static final String BLOCK =
      """
      "rail": { "form": "straight", "section": [60, 20], "from": [-200, 0, 100], "to": [200, 0, 100] },
      "block": { "form": "straight", "section": [40, 30], "from": [-50, 25, 100], "to": [50, 25, 100] }""";

  @Test
  void screwedBlockHasClearanceHolesAndPilotHoles() {
    Chair chair =
        chair(
            BLOCK,
            """
            "it": { "tenon": "block middle", "into": "rail", "kind": "screwed", "diameter": 5,
              "length": 40, "pilot": 3, "head": 5, "count": 2, "spacing": 60,
              "fit": { "cheek": 0.1 } }""");
    holdsTogether(chair);
    Joint j = joint(chair, "it", Hand.NONE);
    // The block is 30 thick; the heads are sunk 5: 40 - 25 go into the rail.
    assertThat(j.length()).isCloseTo(15, SAME);
    assertThat(j.tenons()).extracting(t -> Math.abs(t.at().x())).containsExactly(30.0, 30.0);
    assertThat(400 * 60 * 20 - volume(part(chair, "rail")))
        .isCloseTo(2 * Math.PI * 1.5 * 1.5 * 15, FACETS);
    double hole = Math.PI * (2.6 * 2.6 * 25 + 5 * 5 * 5);
    assertThat(100 * 40 * 30 - volume(part(chair, "block"))).isCloseTo(2 * hole, FACETS);
  }

  @Test
  void slotForAScrewRunsAcrossTheGrain() {
    Chair chair =
        chair(
            BLOCK,
            """
            "it": { "tenon": "block middle", "into": "rail", "kind": "screwed", "diameter": 5,
              "length": 40, "slot": 6, "fit": { "cheek": 0 } }""");
    // A slot is a hole and a rectangle: 5 wide, 6 longer, through 30.
    double slot = (Math.PI * 2.5 * 2.5 + 5 * 6) * 30;
    assertThat(100 * 40 * 30 - volume(part(chair, "block"))).isCloseTo(slot, FACETS);
  }

  @Test
  void gluedFacesKeepAllTheirWood() {
    Chair chair =
        chair(
            BLOCK,
            "\"it\": { \"tenon\": \"block middle\", \"into\": \"rail\", \"kind\": \"glued\" }");
    assertThat(volume(part(chair, "block"))).isCloseTo(100 * 40 * 30, GRID);
    assertThat(joint(chair, "it", Hand.NONE).tenons()).isEmpty();
  }

  // ---- grooves ----

  @Test
  void panelInItsGroovesIsAJointWithEachPartAround() {
    Chair chair =
        chair(
            SQUARE_LEGS
                + ","
                + FRONT_RAIL
                + ","
                + FRONT_RAIL.replace("front-rail", "low-rail").replace("380", "120")
                + """
                , "panel": { "form": "panel", "thickness": 10,
                  "fills": ["front-rail", "front-leg right", "low-rail", "front-leg left"],
                  "groove": { "deep": 8, "gap": 2, "slack": 0.2 } }""",
            "");
    List<Joint> grooves =
        chair.joints().stream().filter(j -> j.name().startsWith("panel in")).toList();
    assertThat(grooves).hasSize(4);
    Joint top = grooves.get(0);
    assertThat(top.name()).isEqualTo("panel in front-rail");
    assertThat(top.entry().z()).isCloseTo(1, SAME);
    assertThat(top.length()).isCloseTo(6, SAME);
    // Six of the panel's ten thick edge are in the rail, over the 320 between the legs.
    assertThat(volume(top.tenon())).isCloseTo(6 * 10 * 320, within(60.0));
  }

  @Test
  void bothKernelsMakeTheSameOfEveryKind() {
    String parts = SQUARE_LEGS + "," + FRONT_RAIL.replace("\"top\": 380", "\"top\": 400");
    for (String more :
        List.of(
            "\"kind\": \"bridle\", \"thickness\": 8",
            "\"kind\": \"dowels\", \"diameter\": 8, \"length\": 20, \"spacing\": 30",
            "\"kind\": \"loose-tenon\", \"thickness\": 8, \"width\": 30, \"length\": 20",
            "\"kind\": \"lap\"",
            "\"thickness\": 8, \"width\": 40, \"through\": true,"
                + " \"wedges\": { \"deep\": 25, \"angle\": \"4 deg\" }")) {
      String joints =
          "\"it\": { \"tenon\": \"front-rail both\", \"into\": \"front-leg\", " + more + " }";
      Chair one = Sketch.chair(parts, joints);
      Chair other = Sketch.chair(parts, joints, new ExactKernel());
      for (int i = 0; i < one.parts().size(); i++) {
        double jcsg = volume(one.parts().get(i));
        double exact = MassProperties.of(other.parts().get(i).solid().mesh()).volume();
        assertThat(exact).as(more + ": " + one.parts().get(i).label()).isCloseTo(jcsg, GRID);
      }
    }
  }
}
