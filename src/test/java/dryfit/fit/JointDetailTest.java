package dryfit.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.fit.JointDetail.SideGap;
import dryfit.fit.JointDetail.Wall;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A joint side by side, on an upright post and a rail that comes in from the right, mm. */
class JointDetailTest {
  private static final double GRID = 2 / 16384.0;

  private static JointDetail detail(String post, String joint) {
    return report(post, joint).joints().get(0).detail();
  }

  private static FitReport report(String post, String joint) {
    return Fitted.of(
        """
        { "format": "dryfit-chair/1", "name": "Post", "about": "Demo data, invented.", "unit": "mm",
          "timber": "ash-white", "fit": { "cheek": 0.2, "edge": 0.5, "bottom": 2 },
          "parts": {
            "post": { "form": "straight", POST, "from": [-225, 0, 0], "to": [-225, 0, 500] },
            "rail": { "form": "straight", "section": [60, 24], "from": [200, 0, 270],
              "to": [-200, 0, 270] }
          },
          "joints": { "rail to post": { "tenon": "rail left", "into": "post", JOINT } } }
        """
            .replace("POST", post)
            .replace("JOINT", joint));
  }

  private static SideGap side(JointDetail detail, String side) {
    return detail.gaps().stream().filter(g -> g.side().equals(side)).findFirst().orElseThrow();
  }

  @Test
  void everySideHasItsOwnGap() {
    JointDetail detail =
        detail("\"section\": [50, 50]", "\"thickness\": 10, \"width\": 40, \"length\": 30");
    assertThat(detail.gaps())
        .extracting(SideGap::side)
        .containsExactlyInAnyOrder(
            "front cheek", "back cheek", "upper edge", "lower edge", "bottom", "shoulder");
    assertThat(side(detail, "front cheek").greatest().value()).isEqualTo(0.2, within(GRID));
    assertThat(side(detail, "upper edge").least().value()).isEqualTo(0.5, within(GRID));
    assertThat(side(detail, "bottom").least().value()).isEqualTo(2, within(GRID));
  }

  /**
   * A guide block with 0.4 mm of room over 30 mm lets a drill lean 0.76 degrees: worked for a field
   * report on slack drill guides; a tenon in its mortise is the same case.
   */
  @Test
  void aPartSwingsByTheRoomOverTheLengthOfItsTenon() {
    JointDetail.Play play =
        detail("\"section\": [50, 50]", "\"thickness\": 10, \"width\": 40, \"length\": 30")
            .play()
            .orElseThrow();
    assertThat(Math.toDegrees(play.acrossCheeks())).isEqualTo(0.76, within(0.005));
    // The rail is 400 mm from its shoulder to its far end.
    assertThat(play.lever()).isEqualTo(400, within(1e-3));
    assertThat(play.swingAcrossCheeks()).isEqualTo(400 * 0.4 / 30, within(0.01));
    assertThat(play.swingAcrossEdges().orElseThrow()).isEqualTo(400 * 1.0 / 30, within(0.01));
  }

  @Test
  void aRoundTenonSwingsAlikeAllWays() {
    JointDetail detail =
        detail(
            "\"section\": [50, 50]", "\"kind\": \"round-tenon\", \"diameter\": 16, \"length\": 30");
    assertThat(detail.gaps()).extracting(SideGap::side).contains("all round", "bottom");
    assertThat(detail.play().orElseThrow().acrossEdges()).isEmpty();
    assertThat(Math.toDegrees(detail.play().orElseThrow().acrossCheeks()))
        .isEqualTo(0.76, within(0.11));
  }

  /** The rim of a tenon that is too fat stands over wood; what is below that is not the bottom. */
  @Test
  void theBottomOfAFatRoundTenonIsThatOfItsHole() {
    JointDetail detail =
        detail(
            "\"section\": [50, 50]",
            "\"kind\": \"round-tenon\", \"diameter\": 16, \"length\": 30,"
                + " \"fit\": {\"cheek\": -0.2}");
    assertThat(side(detail, "all round").least().value()).isNegative();
    assertThat(side(detail, "bottom").least().value()).isEqualTo(2, within(GRID));
    assertThat(side(detail, "bottom").greatest().value()).isEqualTo(2, within(GRID));
  }

  @Test
  void wallsAreToldToEverySideTheThinnestFirst() {
    List<Wall> walls =
        detail(
                "\"section\": [50, 50]",
                "\"thickness\": 10, \"width\": 40, \"length\": 30, \"from-outside\": 4")
            .walls();
    assertThat(walls).extracting(w -> w.left().value()).isSorted();
    // Behind: 50 - 32. Above: from 500 down to the mortise at 300 - 10 + 0.5.
    assertThat(wall(walls, "outside", false)).isEqualTo(18, within(GRID));
    assertThat(wall(walls, "top", true)).isEqualTo(500 - 290.5, within(GRID));
    assertThat(wall(walls, "bottom", true)).isEqualTo(249.5, within(GRID));
  }

  private static double wall(List<Wall> walls, String face, boolean end) {
    return walls.stream()
        .filter(w -> w.face().equals(face) && w.end() == end)
        .findFirst()
        .orElseThrow()
        .left()
        .value();
  }

  /**
   * The back of the post tapers from 50 at the top to 26 at the foot, so the wall thins downward.
   */
  @Test
  void aTaperThinsTheWallAtTheLowerEdge() {
    Wall outside =
        detail(
                "\"section\": [50, 50], \"tapers\": [ { \"faces\": [\"outside\"], \"from\": 500,"
                    + " \"to\": 0, \"leaves\": 20 } ]",
                "\"thickness\": 10, \"width\": 40, \"length\": 14")
            .walls()
            .get(0);
    assertThat(outside.face()).isEqualTo("outside");
    assertThat(outside.left().where()).contains("at the tip").contains("lower edge");
    // At the lower end of the mortise, z = 249.5, the post is 20 + 30 · 249.5 / 500 thick; the
    // wall is square to the taper.
    double slope = Math.atan(30 / 500.0);
    double thick = 20 + 30 * 249.5 / 500;
    assertThat(outside.left().value()).isEqualTo((thick - 16) * Math.cos(slope), within(0.01));
  }

  /** A rail 24 thick in a post 50 wide: (50 - 24) / 2 at each face; 4 back if it is so placed. */
  @Test
  void aRailStandsBackFromTheFacesOfItsPost() {
    assertThat(
            detail("\"section\": [50, 50]", "\"thickness\": 10, \"width\": 40, \"length\": 30")
                .reveal()
                .orElseThrow()
                .sides())
        .extracting(JointDetail.Setback::face, s -> Math.round(s.by() * 1000) / 1000.0)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("back", 13.0),
            org.assertj.core.groups.Tuple.tuple("front", 13.0));
  }

  /** On a round post a flat shoulder sits in the middle and is open at its corners. */
  @Test
  void aShoulderIsToldWhereItIsOpen() {
    SideGap shoulder =
        side(
            detail(
                "\"section\": { \"round\": 60 }",
                "\"thickness\": 10, \"width\": 40, \"length\": 20"),
            "shoulder");
    assertThat(shoulder.greatest().value()).isBetween(2.1, 2.504);
    assertThat(shoulder.greatest().where()).contains("cheek");
    assertThat(shoulder.least().value()).isLessThan(0.9);
  }

  /**
   * Two rails of one height: their mortises run into each other, and the walls at the edges are one
   * face for both. By hand: the width of each mortise is 2 in and 0.02 in more at each edge.
   */
  @Test
  void whereMortisesOfOneHeightMeetBothHaveTheirEdges() {
    FitReport report = Fitted.of(Fitted.frame("1 3/4", "7/8", "1/4", "3/8", "1 1/2", ""));
    for (String joint : List.of("front, right", "front, left", "side, right", "side, left")) {
      JointFit.Gap edge = Fitted.joint(report, joint).edge();
      assertThat(edge.least().orElseThrow()).as(joint).isCloseTo(0.02 * 25.4, within(1e-3));
      assertThat(edge.greatest().orElseThrow()).as(joint).isCloseTo(0.02 * 25.4, within(1e-3));
    }
  }
}
