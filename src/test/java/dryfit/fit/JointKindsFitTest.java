package dryfit.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.fit.JointFit.Gap;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * What is measured at each kind of joint: a rail 20 thick and 60 high, from 300 to 360 above the
 * floor, between two legs 40 square whose inside faces are 200 apart. All demo data, millimetres.
 */
class JointKindsFitTest {
  /** Two steps of the kernel's grid. */
  private static final Offset<Double> GRID = within(2 / 16384.0);

  private static FitReport rail(String more) {
    return rail(more, 400);
  }

  private static FitReport rail(String more, double legTop) {
    return Fitted.of(
        """
        { "format": "dryfit-chair/1", "name": "Kinds", "about": "Demo data.", "unit": "mm",
          "timber": "ash-white",
          "fit": { "cheek": 0.1, "edge": 0.5, "bottom": 2, "least-wall": 4 },
          "parts": {
            "leg": { "form": "straight", "pair": true, "section": [40, 40], "from": [120, 0, 0],
              "to": [120, 0, TOP] },
            "rail": { "form": "straight", "section": [60, 20], "between": ["leg right", "leg left"],
              "top": 360 } },
          "joints": { "it": { "tenon": "rail both", "into": "leg", MORE } } }
        """
            .replace("TOP", "" + legTop)
            .replace("MORE", more));
  }

  private static JointFit right(FitReport report) {
    return Fitted.joint(report, "it, right");
  }

  private static void is(Gap gap, double size) {
    assertThat(gap.least().orElseThrow()).isEqualTo(size, GRID);
    assertThat(gap.greatest().orElseThrow()).isEqualTo(size, GRID);
  }

  /** A turned rail that swells by 20 mm over 100 behind shoulders that sit all round. */
  @Test
  void whatSwellsBehindAShoulderDoesNotOpenIt() {
    JointFit joint =
        right(
            Fitted.of(
                """
                { "format": "dryfit-chair/1", "name": "Swelling", "about": "Demo data.",
                  "unit": "mm", "timber": "ash-white",
                  "parts": {
                    "leg": { "form": "straight", "pair": true, "section": [40, 40],
                      "from": [120, 0, 0], "to": [120, 0, 400] },
                    "rail": { "form": "turned", "between": ["leg right", "leg left"],
                      "middle": 330, "diameters": [ [0, 20], [100, 40], [200, 20] ] } },
                  "joints": { "it": { "tenon": "rail both", "into": "leg", "kind": "round-tenon",
                    "diameter": 14, "length": 20 } } }
                """));
    is(joint.shoulder(), 0);
  }

  @Test
  void twinTenonsKeepWoodBetweenThem() {
    FitReport report =
        rail("\"thickness\": 8, \"width\": 20, \"length\": 20, \"twin\": { \"gap\": 8 }");
    JointFit joint = right(report);
    is(joint.cheek(), 0.1);
    is(joint.edge(), 0.5);
    is(joint.bottom(), 2);
    // Between the two 8, less the room at their edges.
    assertThat(joint.wall().orElseThrow()).isEqualTo(7, GRID);
    assertThat(joint.wallFace()).isEqualTo("its neighbour");
    // Four cheeks of 20 x 20.
    assertThat(joint.glueLong()).isEqualTo(4 * 20 * 20, within(0.1));
    assertThat(report.findings()).isEmpty();
  }

  @Test
  void twinTenonsTooCloseLeaveAThinWall() {
    FitReport report =
        rail("\"thickness\": 8, \"width\": 20, \"length\": 20, \"twin\": { \"gap\": 4 }");
    assertThat(right(report).wall().orElseThrow()).isEqualTo(3, GRID);
    assertThat(Fitted.checks(report)).containsOnly("thin-wall");
  }

  private static final String WEDGED =
      "\"thickness\": 8, \"width\": 40, \"through\": true,"
          + " \"wedges\": { \"count\": 2, \"deep\": 30, \"angle\": \"1:20\" FLARE }";

  @Test
  void wedgedTenonFillsItsFlare() {
    FitReport report = rail(WEDGED.replace("FLARE", ""));
    JointFit joint = right(report);
    is(joint.cheek(), 0.1);
    // The outer strips lean just as the mortise does: level, the gap stays the same.
    is(joint.edge(), 0.5);
    assertThat(report.findings()).isEmpty();
    assertThat(report.chair().pieces(joint.joint()))
        .containsExactly("it-wedge-1 right", "it-wedge-2 right");
  }

  @Test
  void mortiseFlaredTooLittleIsTooTightForItsWedges() {
    // Spread 1.5 at the far face, flare 0.5: with 0.5 of room the tenon stands half a millimetre
    // into the wood there; measured nine tenths of the way in, 26 of 30 from the kerf's bottom.
    FitReport report = rail(WEDGED.replace("FLARE", ", \"flare\": 0.5"));
    assertThat(right(report).edge().least().orElseThrow()).isEqualTo(0.5 - 26.0 / 30, within(1e-3));
    assertThat(Fitted.checks(report)).contains("tenon-too-fat");
  }

  @Test
  void mortiseFlaredTooFarIsNotLocked() {
    // Each wedge would have to swell by 2 x 2.5 / 2 = 2.5 over its kerf of 1.5.
    FitReport report = rail(WEDGED.replace("FLARE", ", \"flare\": 2.5"));
    assertThat(Fitted.checks(report)).contains("wedges-slack");
    assertThat(report.findings().get(0).message()).contains("make each wedge 4.00 mm thick");
    assertThat(Fitted.checks(rail(WEDGED.replace("FLARE", ", \"flare\": 1.5")))).isEmpty();
  }

  @Test
  void looseTenonIsMeasuredInBothParts() {
    FitReport report =
        rail(
            "\"kind\": \"loose-tenon\", \"thickness\": 8, \"width\": 40, \"length\": 20,"
                + " \"own-length\": 25");
    JointFit there = right(report);
    is(there.cheek(), 0.1);
    is(there.bottom(), 2);
    is(there.shoulder(), 0);
    assertThat(there.depthAlong()).isEqualTo(22, GRID);
    JointFit here = Fitted.joint(report, "it, right, in rail");
    is(here.cheek(), 0.1);
    is(here.edge(), 0.5);
    is(here.bottom(), 2);
    assertThat(here.depthAlong()).isEqualTo(27, GRID);
    // The rail is 20 thick: 10 less 4.1.
    assertThat(here.wall().orElseThrow()).isEqualTo(5.9, GRID);
    // Long grain to long grain on all four sides, over all 25.
    assertThat(here.glueLong()).isEqualTo(2 * (40 + 8) * 25, within(0.1));
    assertThat(report.findings()).isEmpty();
  }

  @Test
  void looseTenonThatIsTooFatCollidesWithBothParts() {
    FitReport report =
        rail(
            "\"kind\": \"loose-tenon\", \"thickness\": 8, \"width\": 40, \"length\": 20,"
                + " \"fit\": { \"cheek\": -0.2 }");
    assertThat(Fitted.checks(report)).contains("parts-collide", "tenon-too-fat");
    assertThat(report.findings().stream().filter(f -> f.check().equals("parts-collide")))
        .anyMatch(f -> f.parts().contains("rail"))
        .anyMatch(f -> f.parts().contains("leg right"));
  }

  @Test
  void dowelsAreMeasuredInBothParts() {
    FitReport report =
        rail(
            "\"kind\": \"dowels\", \"diameter\": 8, \"length\": 20, \"own-length\": 30,"
                + " \"count\": 2, \"spacing\": 32");
    JointFit there = right(report);
    assertThat(there.cheek().least().orElseThrow()).isEqualTo(0.1, within(0.02));
    is(there.bottom(), 2);
    JointFit here = Fitted.joint(report, "it, right, in rail");
    assertThat(here.depthAlong()).isEqualTo(32, GRID);
    // The rail is 20 thick: 10 - 4.1 at its faces.
    assertThat(here.wall().orElseThrow()).isEqualTo(5.9, within(0.05));
    assertThat(here.glueOther()).isZero();
    assertThat(here.glueLong()).isEqualTo(2 * Math.PI * 8 * 30, within(15.0));
    assertThat(report.findings()).isEmpty();
  }

  @Test
  void dowelOfMoreThanHalfItsPartIsTold() {
    String dowels = "\"kind\": \"dowels\", \"length\": 20, \"count\": 1, \"diameter\": ";
    assertThat(Fitted.checks(rail(dowels + "10"))).doesNotContain("dowel-thick");
    FitReport thick = rail(dowels + "10.5");
    assertThat(thick.findings().stream().filter(f -> f.check().equals("dowel-thick")))
        .allSatisfy(f -> assertThat(f.limit()).isEqualTo(10, GRID))
        .hasSize(2);
  }

  @Test
  void bridleIsMeasuredAtItsClosedSides() {
    FitReport report = rail("\"kind\": \"bridle\", \"thickness\": 10", 360);
    JointFit joint = right(report);
    is(joint.cheek(), 0.1);
    is(joint.edge(), 0.5);
    assertThat(joint.bottom().least()).isEmpty();
    is(joint.shoulder(), 0);
    // The cheeks of the leg: (40 - 10.2) / 2. Its end and both its sides are open.
    assertThat(joint.wall().orElseThrow()).isEqualTo(14.9, GRID);
    assertThat(joint.glueLong()).isEqualTo(2 * 60 * 40, within(0.1));
    assertThat(report.findings()).isEmpty();
  }

  @Test
  void lapIsMeasuredAtItsOneCheek() {
    FitReport report = rail("\"kind\": \"lap\"");
    JointFit joint = right(report);
    is(joint.cheek(), 0.1);
    is(joint.edge(), 0.5);
    // Rail and leg share 20 of the leg's 40; half of that goes, and 10 stay below the shared depth.
    assertThat(joint.wall().orElseThrow()).isEqualTo(20 - 0.1, GRID);
    assertThat(joint.glueLong()).isEqualTo(60 * 40, within(0.1));
    assertThat(report.findings()).isEmpty();
  }

  private static FitReport round(String sizes) {
    return Fitted.of(
        """
        { "format": "dryfit-chair/1", "name": "Seat", "about": "Demo data.", "unit": "mm",
          "timber": "ash-white",
          "parts": {
            "post": { "form": "straight", "section": [30, 30],
              "from": [100, 0, 0], "to": [100, 0, 600] },
            "seat": { "form": "panel", "thickness": 20, "plane": "plan", "at": [0, 0, 400],
              "grain": [1, 0, 0],
              "outline": [ [-200, -150], [200, -150], [200, 150], [-200, 150] ] } },
          "joints": { "it": { "tenon": "post middle", "into": "seat", "kind": "notch", SIZES } } }
        """
            .replace("SIZES", sizes));
  }

  @Test
  void notchTellsItsRoomAcrossAndAlongTheGrain() {
    FitReport report = round("\"across\": 4, \"along\": 0.5");
    JointFit joint = Fitted.joint(report, "it");
    is(joint.cheek(), 4);
    is(joint.edge(), 0.5);
    assertThat(joint.glueLong() + joint.glueOther()).isZero();
    assertThat(report.findings()).isEmpty();
  }

  private static FitReport block(String more) {
    return Fitted.of(
        """
        { "format": "dryfit-chair/1", "name": "Block", "about": "Demo data.", "unit": "mm",
          "timber": "ash-white",
          "parts": {
            "rail": { "form": "straight", "section": [60, 20], "from": [-200, 0, 100],
              "to": [200, 0, 100] },
            "block": { "form": "straight", "section": [40, 30], "from": [-50, 25, 100],
              "to": [50, 25, 100] } },
          "joints": { "it": { "tenon": "block middle", "into": "rail", MORE } } }
        """
            .replace("MORE", more));
  }

  @Test
  void gluedFacesTellTheirContact() {
    FitReport report = block("\"kind\": \"glued\"");
    // The block is 100 long and 40 high, its grain along the rail.
    assertThat(Fitted.joint(report, "it").glueLong()).isEqualTo(100 * 40, within(0.01));
    assertThat(report.findings()).isEmpty();
  }

  @Test
  void screwsTellHowDeepTheyGoAndWhatIsLeft() {
    FitReport report =
        block("\"kind\": \"screwed\", \"diameter\": 4, \"length\": 42, \"pilot\": 3");
    JointFit joint = Fitted.joint(report, "it");
    // The block takes 30 of the screw, the rail 12 of its 20.
    assertThat(joint.depthAlong()).isEqualTo(12, GRID);
    assertThat(joint.wall().orElseThrow()).isEqualTo(8, GRID);
    // What touches: the contact less the clearance hole, 4 and 0.1 all round.
    assertThat(joint.glueLong()).isEqualTo(100 * 40 - Math.PI * 2.1 * 2.1, within(1.0));
    assertThat(report.findings()).isEmpty();
  }

  @Test
  void screwThatComesOutAtTheFarSideIsTold() {
    FitReport report =
        block("\"kind\": \"screwed\", \"diameter\": 4, \"length\": 55, \"pilot\": 3");
    assertThat(Fitted.checks(report)).contains("tenon-outside", "mortise-breaks-out");
  }

  @Test
  void panelInItsGrooveTellsItsSlackAndItsRoom() {
    FitReport report =
        Fitted.of(
            """
            { "format": "dryfit-chair/1", "name": "Panel", "about": "Demo data.", "unit": "mm",
              "timber": "ash-white",
              "parts": {
                "leg": { "form": "straight", "pair": true, "section": [40, 40],
                  "from": [120, 0, 0], "to": [120, 0, 400] },
                "high": { "form": "straight", "section": [60, 20],
                  "between": ["leg right", "leg left"], "top": 380 },
                "low": { "form": "straight", "section": [60, 20],
                  "between": ["leg right", "leg left"], "top": 120 },
                "panel": { "form": "panel", "thickness": 8,
                  "fills": ["high", "leg right", "low", "leg left"],
                  "groove": { "deep": 9, "gap": 3, "slack": 0.2 } } } }
            """);
    JointFit top = Fitted.joint(report, "panel in high");
    is(top.cheek(), 0.2);
    is(top.bottom(), 3);
    assertThat(top.depthAlong()).isEqualTo(9, within(0.02));
    assertThat(top.glueLong() + top.glueOther()).isZero();
    // The rail is 20 thick: (20 - 8.4) / 2 beside the groove.
    assertThat(top.wall().orElseThrow()).isEqualTo(5.8, within(1e-3));
    is(Fitted.joint(report, "panel in leg, right").cheek(), 0.2);
  }

  /**
   * Rake 14 and splay 8 degrees, a common pair in chair plans: the level lines of two sides are off
   * square by atan(tan 14 tan 8 / (1 + tan2 14)) = 1.8895 degrees, so a shoulder of a rail 22 thick
   * would stand open by 22 x 0.03299 = 0.726.
   */
  @Test
  void squareLegThatLeansBothWaysCannotFaceBothRails() {
    FitReport report = leaning("14 deg", "8 deg");
    Finding twist =
        report.findings().stream()
            .filter(f -> f.check().equals("twisted-leg"))
            .findFirst()
            .orElseThrow();
    assertThat(twist.measured()).isEqualTo(0.726, within(0.02));
    assertThat(twist.message()).contains("1.9°");
    assertThat(report.fits()).isTrue();
  }

  @Test
  void legThatLeansOneWayFacesBothRails() {
    assertThat(Fitted.checks(leaning("0 deg", "8 deg"))).doesNotContain("twisted-leg");
    assertThat(Fitted.checks(leaning("14 deg", "0 deg"))).doesNotContain("twisted-leg");
  }

  private static FitReport leaning(String rake, String splay) {
    return Fitted.of(
        """
        { "format": "dryfit-chair/1", "name": "Stool", "about": "Demo data.", "unit": "mm",
          "timber": "ash-white",
          "dimensions": { "rake": "RAKE", "splay": "SPLAY", "high": 450 },
          "parts": {
            "front-leg": { "form": "straight", "pair": true, "section": [44, 44],
              "from": ["160 + high * tan(splay)", "-high * tan(rake)", 0], "to": [160, 0, "high"] },
            "back-leg": { "form": "straight", "pair": true, "section": [44, 44],
              "from": ["160 + high * tan(splay)", "300 + high * tan(rake)", 0],
              "to": [160, 300, "high"] },
            "front-rail": { "form": "straight", "section": [50, 22],
              "between": ["front-leg right", "front-leg left"], "top": 400 },
            "side-rail": { "form": "straight", "pair": true, "section": [50, 22],
              "between": ["front-leg", "back-leg"], "top": 300 } },
          "joints": {
            "front": { "tenon": "front-rail both", "into": "front-leg", "thickness": 8,
              "width": 30, "length": 15 },
            "side": { "tenon": "side-rail front", "into": "front-leg", "thickness": 8,
              "width": 30, "length": 15 } } }
        """
            .replace("RAKE", rake)
            .replace("SPLAY", splay));
  }
}
