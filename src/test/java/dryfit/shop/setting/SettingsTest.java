package dryfit.shop.setting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.fit.FitReport;
import dryfit.fit.Fitted;
import dryfit.shop.EasedArm;
import dryfit.shop.Setout;
import dryfit.shop.setting.Bench.Bearing;
import dryfit.shop.setting.Bench.Follower;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Small chairs of demo data; lengths in millimetres, worked by hand. */
class SettingsTest {
  private static final double NEAR = 0.01;

  /** An arc is made of chords, whose corners need not be where it is furthest out. */
  private static final double CHORD = 0.1;

  private static FitReport fitted(String parts, String joints) {
    return Fitted.of(
        """
        { "format": "dryfit-chair/1", "name": "Sketch", "unit": "mm", "timber": "ash-white",
          "fit": { "bottom": 2, "cheek": 0.1, "edge": 0 },
          "parts": { %s }, "joints": { %s } }"""
            .formatted(parts, joints));
  }

  /** A leg 40 square and two rails into its front face, 30 and 40 high, 20 thick. */
  private static FitReport legAndRails() {
    return fitted(
        """
        "leg": { "form": "straight", "section": [40, 40], "from": [0, 0, 0], "to": [0, 0, 400] },
        "low": { "form": "straight", "section": [30, 20], "from": [4, -200, 100], "to": [4, -20, 100] },
        "high": { "form": "straight", "section": [40, 20], "from": [4, -200, 300], "to": [4, -20, 300] }
        """,
        """
        "low": { "tenon": "low end", "into": "leg", "thickness": 8, "width": 20, "length": 15 },
        "high": { "tenon": "high end", "into": "leg", "thickness": 8, "width": 30, "length": 15 }
        """);
  }

  /** A leg sawn to a hump at its back, 30 thick: 60 deep in the middle, 40 at its ends. */
  private static FitReport hump() {
    return fitted(
        """
        "leg": { "form": "sawn", "thickness": 30, "stands-at": [0, 0, 0],
          "side": [ [0, 0], [40, 0], [60, 200], [40, 400], [0, 400] ] }
        """,
        "");
  }

  private static Setting only(Settings settings, Tool tool) {
    List<Setting> found = settings.all().stream().filter(s -> s.tool() == tool).toList();
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  private static Reading reading(Setting setting, String what) {
    return setting.readings().stream()
        .filter(r -> r.what().equals(what))
        .findFirst()
        .orElseThrow(() -> new AssertionError(what + " is none of " + setting.readings()));
  }

  private static double size(Setting setting, String what) {
    return ((Reading.Size) reading(setting, what)).mm();
  }

  @Test
  void aStickStandsFromTheTopOfOneRailToTheUndersideOfTheNext() {
    List<Setting> sticks =
        Settings.of(legAndRails()).all().stream().filter(s -> s.tool() == Tool.SPACER).toList();
    assertThat(sticks).hasSize(2);
    assertThat(sticks.get(0).where()).isEqualTo("the floor to underside of low");
    assertThat(size(sticks.get(0), "height, plumb")).isCloseTo(100 - 15, within(NEAR));
    assertThat(sticks.get(1).where()).isEqualTo("top of low to underside of high");
    assertThat(size(sticks.get(1), "height, plumb")).isCloseTo(300 - 20 - 115, within(NEAR));
  }

  @Test
  void aStickStandsOnTheFaceBesideThePanelsGroove() {
    FitReport framed =
        fitted(
            """
            "near": { "form": "straight", "section": [40, 40], "from": [0, -220, 0], "to": [0, -220, 400] },
            "far": { "form": "straight", "section": [40, 40], "from": [0, 0, 0], "to": [0, 0, 400] },
            "low": { "form": "straight", "section": [30, 20], "from": [0, -200, 100], "to": [0, -20, 100] },
            "high": { "form": "straight", "section": [40, 20], "from": [0, -200, 300], "to": [0, -20, 300] },
            "board": { "form": "panel", "thickness": 8,
              "fills": ["near", "low", "far", "high"], "groove": { "deep": 7, "gap": 2, "slack": 0.1 } }
            """,
            """
            "low": { "tenon": "low end", "into": "far", "thickness": 8, "width": 20, "length": 15 },
            "high": { "tenon": "high end", "into": "far", "thickness": 8, "width": 20, "length": 15 }
            """);
    List<Setting> sticks =
        Settings.of(framed).all().stream().filter(s -> s.tool() == Tool.SPACER).toList();
    assertThat(sticks)
        .extracting(Setting::where)
        .containsExactly("the floor to underside of low", "top of low to underside of high");
    // From groove to groove it would be 14 more.
    assertThat(size(sticks.get(1), "height, plumb")).isCloseTo(300 - 20 - 115, within(NEAR));
  }

  @Test
  void aMouthIsMeasuredFromTheNearerEndAndFromAnEdge() {
    Settings settings = Settings.of(legAndRails()).only("high", "");
    Setting mouth = only(settings, Tool.KNIFE);
    Reading.Span along = (Reading.Span) reading(mouth, "along the part");
    assertThat(along.origin()).isEqualTo("the top end");
    assertThat(along.from()).isCloseTo(400 - 300 - 15, within(NEAR));
    assertThat(along.to()).isCloseTo(400 - 300 + 15, within(NEAR));
    // The rail's middle is 4 off that of the leg, so 16 from its right edge; 8.2 wide with its
    // gaps.
    Reading.Span across = (Reading.Span) reading(mouth, "across it");
    assertThat(across.origin()).isEqualTo("the right edge");
    assertThat(across.from()).isCloseTo(16 - 4.1, within(NEAR));
    assertThat(across.to()).isCloseTo(16 + 4.1, within(NEAR));
  }

  /** A seat whose front is sawn to an arc: corners at 100, its middle at 80; a leg at 100, 130. */
  @Test
  void aMouthIsMeasuredFromTheSquaredBlankWhoseEdgesAreSawnAwayLaterAsInTheBook() {
    FitReport seat =
        fitted(
            """
            "seat": { "form": "seat", "at": [0, 200, 450], "thickness": 30, "grain": [1, 0, 0],
              "outline": [ [-150, -100], { "arc-to": [150, -100], "rise": -20 }, [150, 100], { "arc-to": [-150, 100], "rise": -20 } ] },
            "leg": { "form": "turned", "pair": true, "from": [100, 130, 420], "to": [100, 130, 0], "diameter": 40 }
            """,
            """
            "leg": { "tenon": "leg top", "into": "seat", "kind": "round-tenon", "diameter": 20, "length": 20 }
            """);
    List<Setting> mouths =
        Settings.of(seat).all().stream().filter(s -> s.tool() == Tool.KNIFE).toList();
    assertThat(mouths).hasSize(2);
    for (Setting mouth : mouths) {
      Reading.Size along = (Reading.Size) reading(mouth, "along the part, its middle");
      assertThat(along.mm()).isCloseTo(150 - 100, within(NEAR));
      assertThat(along.sense()).isEqualTo("from the outside end");
      Reading.Size across = (Reading.Size) reading(mouth, "across it, its middle");
      assertThat(across.mm()).isCloseTo(130 - 80, within(CHORD));
      assertThat(across.sense()).isEqualTo("from the front edge of the squared blank");
    }
    Setout book = Setout.of(seat.chair(), 0);
    assertThat(book.marks()).hasSize(2);
    book.marks()
        .forEach(
            m ->
                assertThat(book.across(m.corners(), true).middle())
                    .isCloseTo(130 - 80, within(CHORD)));
  }

  /** Narrowing to the back, so that its ends are sawn away too: at 150 only a corner is left. */
  @Test
  void anEndThatIsSawnSlantingIsToldAsOneOfTheSquaredBlank() {
    FitReport seat =
        fitted(
            """
            "seat": { "form": "seat", "at": [0, 200, 450], "thickness": 30, "grain": [1, 0, 0],
              "outline": [ [-150, -100], [150, -100], [120, 100], [-120, 100] ] },
            "leg": { "form": "turned", "from": [100, 130, 420], "to": [100, 130, 0], "diameter": 40 }
            """,
            """
            "leg": { "tenon": "leg top", "into": "seat", "kind": "round-tenon", "diameter": 20, "length": 20 }
            """);
    Setting mouth = only(Settings.of(seat), Tool.KNIFE);
    assertThat(reading(mouth, "along the part, its middle").sense())
        .isEqualTo("from the right end of the squared blank");
    assertThat(reading(mouth, "across it, its middle").sense()).isEqualTo("from the front edge");
    assertThat(size(mouth, "across it, its middle")).isCloseTo(30, within(NEAR));
  }

  @Test
  void theTapeOfASquareMortiseIsItsDepthAndTheWoodBeyondIsTold() {
    Setting depth = only(Settings.of(legAndRails()).only("low", ""), Tool.DEPTH);
    assertThat(size(depth, "tape or stop, along the tool")).isCloseTo(17, within(NEAR));
    assertThat(size(depth, "wood beyond the bottom, along the tool")).isCloseTo(23, within(NEAR));
    assertThat(depth.notes()).isEmpty();
  }

  @Test
  void thePointOfABitComesOnTopAndIsToldWhereItComesOut() {
    Bench bench = new Bench(23, 3, 1, List.of());
    Setting depth = only(Settings.of(legAndRails(), bench).only("low", ""), Tool.DEPTH);
    assertThat(size(depth, "tape or stop, along the tool")).isCloseTo(17 + 23, within(NEAR));
    assertThat(depth.notes()).hasSize(1);
    assertThat(depth.notes().get(0)).contains("comes out at the far side");
  }

  @Test
  void facesThatStandBackAreGauged() {
    Setting gauge = only(Settings.of(legAndRails()).only("low", ""), Tool.MARKING_GAUGE);
    assertThat(size(gauge, "outside face stands back")).isCloseTo(20 - 4 - 10, within(NEAR));
    assertThat(size(gauge, "inside face stands back")).isCloseTo(20 + 4 - 10, within(NEAR));
  }

  @Test
  void aHumpIsCutFromItsTopDownToBothEnds() {
    Bench bench = new Bench(0, 3, 1, List.of(new Follower(32, Bearing.SHANK)));
    Setting cut = only(Settings.of(hump(), bench), Tool.FOLLOWER_BIT);
    assertThat(reading(cut, "template").sense()).isEqualTo("on the right face");
    assertThat(reading(cut, "passes"))
        .isEqualTo(new Reading.Count("passes", 1, "bearing at the shank"));
    List<Reading.Span> back =
        cut.readings().stream()
            .filter(r -> r.what().equals("back edge"))
            .map(Reading.Span.class::cast)
            .toList();
    assertThat(back).hasSize(2);
    assertThat(back.get(0).to()).isCloseTo(200, within(NEAR));
    // Seen from the right the back is on the right hand: against the clock there is upwards.
    assertThat(back.get(0).sense()).isEqualTo("towards the bottom end, router over the left face");
    assertThat(back.get(1).sense()).isEqualTo("towards the top end, router over the right face");
    assertThat(reading(cut, "front edge").sense()).startsWith("either way");
    assertThat(cut.notes())
        .contains(
            "Router over the left face: move the template to that face, bearing at the shank.");
  }

  @Test
  void aBitWithItsBearingAtTheTipLeavesTheTemplateWhereItIs() {
    Bench bench =
        new Bench(0, 3, 1, List.of(new Follower(32, Bearing.SHANK), new Follower(32, Bearing.TIP)));
    Setting cut = only(Settings.of(hump(), bench), Tool.FOLLOWER_BIT);
    assertThat(cut.notes())
        .contains(
            "Router over the left face: template beneath on the right face, bearing at the tip.");
  }

  @Test
  void woodTooThickForTheBitsIsSawn() {
    Bench bench = new Bench(0, 3, 1, List.of(new Follower(8, Bearing.SHANK)));
    Setting cut = only(Settings.of(hump(), bench), Tool.FOLLOWER_BIT);
    assertThat(reading(cut, "passes").sense()).isEqualTo("none, too thick for these bits");
    Bench tip = new Bench(0, 3, 1, List.of(new Follower(29, Bearing.TIP)));
    assertThat(reading(only(Settings.of(hump(), tip), Tool.FOLLOWER_BIT), "passes").sense())
        .isEqualTo("none");
  }

  private static List<Reading.Span> edges(Setting cut) {
    return cut.readings().stream()
        .filter(r -> r.what().endsWith(" edge"))
        .map(Reading.Span.class::cast)
        .toList();
  }

  private static List<Setting> arms() {
    Bench bench = new Bench(0, 3, 1, List.of(new Follower(25.4, Bearing.SHANK)));
    return Settings.of(Fitted.of(EasedArm.JSON), bench).all().stream()
        .filter(s -> s.tool() == Tool.FOLLOWER_BIT)
        .toList();
  }

  /** Straight for 1 in from the shoulder, then a curve that swells and ends at 12 1/2 in. */
  @Test
  void anArmWithAnEasedEdgeIsCutFromEndToEndInOnePass() {
    assertThat(arms()).hasSize(2);
    for (Setting cut : arms()) {
      assertThat(reading(cut, "passes"))
          .isEqualTo(new Reading.Count("passes", 1, "bearing at the shank"));
      for (String edge : List.of("inside edge", "outside edge")) {
        List<Reading.Span> stretches =
            edges(cut).stream().filter(s -> s.what().equals(edge)).toList();
        assertThat(stretches).hasSize(3);
        assertThat(stretches.get(0).from()).isCloseTo(0, within(0.1));
        assertThat(stretches.get(1).from()).isCloseTo(25.4, within(0.1));
        assertThat(stretches.get(2).from()).isEqualTo(stretches.get(1).to());
        assertThat(stretches.get(2).to()).isCloseTo(12.5 * 25.4, within(0.1));
      }
    }
  }

  @Test
  void bothHandsReadTheSameNumbers() {
    List<Reading.Span> right = edges(arms().get(0));
    List<Reading.Span> left = edges(arms().get(1));
    assertThat(left).hasSameSizeAs(right);
    for (int i = 0; i < left.size(); i++) {
      assertThat(left.get(i).what()).isEqualTo(right.get(i).what());
      assertThat(left.get(i).from()).isCloseTo(right.get(i).from(), within(0.01));
      assertThat(left.get(i).to()).isCloseTo(right.get(i).to(), within(0.01));
    }
  }

  @Test
  void cautionsNameOnlyTheMachinesThatAreUsed() {
    assertThat(Settings.of(hump()).cautions()).containsExactly(Tool.FOLLOWER_BIT.caution());
    assertThat(Settings.of(legAndRails()).cautions()).containsExactly(Tool.DRILL.caution());
  }

  /**
   * A rail 20 thick and 30 high into a post of 40 across: its cheeks reach 10 beside its middle.
   */
  private static FitReport scribed(String shoulder) {
    return fitted(
        """
        "post": { "form": "turned", "from": [0, 0, 0], "to": [0, 0, 400], "diameter": 40 },
        "rail": { "form": "straight", "section": [30, 20], "from": [0, -200, 200], "to": [0, -10, 200] }
        """,
        """
        "it": { "tenon": "rail end", "into": "post", "kind": "round-tenon", "diameter": 12, "length": 15, "shoulder": "%s" }
        """
            .formatted(shoulder));
  }

  @Test
  void aScribedShoulderIsToldWithItsCopingAndHasNoSawSetting() {
    List<Setting> all = Settings.of(scribed("scribed")).all();
    assertThat(all).extracting(Setting::tool).doesNotContain(Tool.SAW);
    Setting bevel =
        all.stream().filter(s -> s.tool() == Tool.BEVEL_GAUGE).findFirst().orElseThrow();
    // The round of 20 falls back by 20 - sqrt(20² - 10²) at the cheeks, 10 from its middle.
    assertThat(size(bevel, "coping")).isCloseTo(20 - Math.sqrt(300), within(CHORD));
    assertThat(bevel.notes()).anyMatch(n -> n.startsWith("Scribed to post"));
  }

  @Test
  void aBentPartSaysWhyItsMouthHasNoLengths() {
    FitReport bent =
        fitted(
            """
            "crest": { "form": "bent", "section": [60, 30], "upright": true, "from": [150, 0, 400], "to": [-150, 0, 400], "rise": 40, "toward": "back" },
            "stick": { "form": "turned", "from": [0, 40, 0], "to": [0, 40, 380], "diameter": 20 }
            """,
            """
            "it": { "tenon": "stick end", "into": "crest", "kind": "round-tenon", "diameter": 10, "length": 20 }
            """);
    Setting knife = only(Settings.of(bent), Tool.KNIFE);
    assertThat(knife.notes()).anyMatch(n -> n.contains("full-size print"));
  }

  @Test
  void nobodyGaugesHowFarALegStandsInsideASeat() {
    FitReport seat =
        fitted(
            """
            "seat": { "form": "seat", "at": [0, 200, 450], "thickness": 30, "grain": [1, 0, 0],
              "outline": [ [-150, -100], [150, -100], [150, 100], [-150, 100] ] },
            "leg": { "form": "straight", "section": [40, 40], "from": [100, 130, 420], "to": [100, 130, 0] }
            """,
            """
            "leg": { "tenon": "leg top", "into": "seat", "kind": "round-tenon", "diameter": 20, "length": 20 }
            """);
    assertThat(Settings.of(seat).all())
        .extracting(Setting::tool)
        .contains(Tool.KNIFE)
        .doesNotContain(Tool.MARKING_GAUGE);
  }
}
