package dryfit.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.build.Chair;
import dryfit.document.BoardsPlan;
import dryfit.document.BoardsPlan.Allowance;
import dryfit.document.BoardsPlan.Bad;
import dryfit.document.BoardsPlan.Board;
import dryfit.document.PartPlan.Spot2;
import dryfit.fit.Fitted;
import dryfit.geometry.Vec2;
import dryfit.shop.BoardLayout.Laid;
import dryfit.shop.BoardLayout.Left;
import dryfit.shop.BoardLayout.Mirroring;
import dryfit.shop.BoardLayout.Placed;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** A pair of bent-looking sawn legs, rails and a wide board; demo data. */
class BoardLayoutTest {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();
  private static final double KERF = 3;
  private static final double MARGIN = 5;

  private static final String SKETCH =
      """
          { "format": "dryfit-chair/1", "name": "Sketch", "unit": "mm", "timber": "ash-white",
            "parts": {
              "leg": { "form": "sawn", "pair": true, "thickness": 30, "stands-at": [200, 0, 0],
                "side": [ [0, 0], [40, 0], [40, 300], [120, 700], [80, 700], [0, 300] ] },
              "rail": { "form": "straight", "section": [60, 20],
                "between": ["leg right", "leg left"], "y": 20, "middle": 250 },
              "stretcher": { "form": "straight", "section": [30, 20],
                "between": ["leg right", "leg left"], "y": 20, "middle": 100 },
              "top": { "form": "panel", "thickness": 15, "plane": "plan", "at": [0, 0, 720],
                "outline": [ [-150, -200], [150, -200], [150, 0], [-150, 0] ] } } }""";

  private static final Chair CHAIR = Fitted.of(SKETCH).chair();

  /** Its legs are cut so that the grain runs from end to end, aslant to the edges of the blank. */
  private static final Chair ASLANT =
      Fitted.of(SKETCH.replace("\"pair\": true,", "\"pair\": true, \"grain\": \"chord\",")).chair();

  private static BoardsPlan plan(Board... boards) {
    return new BoardsPlan(
        new Allowance(20, 6, 0), 0.3, KERF, MARGIN, Math.toRadians(5), List.of(boards));
  }

  private static Board board(String name, double width, double thickness, double slope) {
    List<Bad> bad = List.of(new Bad(new Spot2(300, 0), new Spot2(340, 60)));
    return new Board(
        name, "ash-white", 1800, width, thickness, true, slope, 1, bad, "/boards/have/0");
  }

  private static BoardLayout layout(double slope) {
    return BoardLayout.of(
        CHAIR, plan(board("thick", 200, 40, slope), board("thin", 120, 22, slope)));
  }

  private static Polygon polygon(List<Vec2> loop) {
    List<Coordinate> ring = new ArrayList<>();
    loop.forEach(p -> ring.add(new Coordinate(p.x(), p.y())));
    ring.add(ring.get(0));
    return GEOMETRY.createPolygon(ring.toArray(new Coordinate[0]));
  }

  private static Placed placed(BoardLayout layout, String label) {
    return layout.boards().stream()
        .flatMap(b -> b.parts().stream())
        .filter(p -> p.label().equals(label))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyBlankKeepsASawCutFromTheOthersAndClearOfEdgesAndBadPlaces() {
    BoardLayout layout = layout(0);
    assertThat(layout.left()).isEmpty();
    for (Laid laid : layout.boards()) {
      for (int i = 0; i < laid.parts().size(); i++) {
        Polygon one = polygon(laid.parts().get(i).rough());
        assertThat(one.getEnvelopeInternal().getMinX()).isGreaterThanOrEqualTo(MARGIN - 1e-6);
        assertThat(one.getEnvelopeInternal().getMinY()).isGreaterThanOrEqualTo(MARGIN - 1e-6);
        assertThat(one.getEnvelopeInternal().getMaxX())
            .isLessThanOrEqualTo(laid.board().length() - MARGIN + 1e-6);
        assertThat(one.getEnvelopeInternal().getMaxY())
            .isLessThanOrEqualTo(laid.board().width() - MARGIN + 1e-6);
        Polygon bad =
            polygon(
                List.of(new Vec2(300, 0), new Vec2(340, 0), new Vec2(340, 60), new Vec2(300, 60)));
        assertThat(one.distance(bad)).isPositive();
        for (int k = 0; k < i; k++) {
          assertThat(one.distance(polygon(laid.parts().get(k).rough())))
              .isGreaterThanOrEqualTo(KERF - 1e-6);
        }
      }
    }
  }

  @Test
  void aPartIsLaidOutAsItsTrueOutline() {
    Placed leg = placed(layout(0), "leg right");
    // Two parallelograms 40 wide: 300 high, and 400 high.
    assertThat(BoardLayout.area(leg.net())).isCloseTo(40 * 700, within(1.0));
  }

  @Test
  void grainStaysWithinItsAngle() {
    assertThat(layout(Math.toRadians(8)).boards())
        .flatExtracting(Laid::parts)
        .isNotEmpty()
        .allSatisfy(p -> assertThat(p.offGrain()).isLessThan(Math.toRadians(5) + 1e-9));
  }

  @Test
  void onStraightGrainAPairHasTheSameFaceUpAndMirroredOutlines() {
    BoardLayout layout = layout(0);
    assertThat(layout.pairs())
        .extracting(BoardLayout.PairNote::mirroring)
        .containsExactly(Mirroring.SAME_FACE_UP);
    Placed right = placed(layout, "leg right");
    Placed left = placed(layout, "leg left");
    assertThat(left.up()).isEqualTo(right.up());
    assertThat(left.endForEnd()).isEqualTo(right.endForEnd());
    assertThat(left.turn()).isCloseTo(-right.turn(), within(1e-6));
  }

  @Test
  void onSlopingGrainOneOfAPairIsTurnedOverAndEndForEnd() {
    BoardLayout layout = layout(Math.toRadians(3));
    assertThat(layout.pairs())
        .extracting(BoardLayout.PairNote::mirroring)
        .containsExactly(Mirroring.TURNED_OVER);
    Placed right = placed(layout, "leg right");
    Placed left = placed(layout, "leg left");
    assertThat(left.up()).isNotEqualTo(right.up());
    assertThat(left.endForEnd()).isNotEqualTo(right.endForEnd());
    assertThat(left.turn()).isCloseTo(right.turn(), within(1e-6));
  }

  @Test
  void inAnyLayoutTheTwinOfAPairTurnsWithIt() {
    for (double slope : new double[] {0, Math.toRadians(3)}) {
      Nesting nesting =
          new Nesting(ASLANT, plan(board("thick", 260, 40, slope), board("thin", 120, 22, slope)));
      SplittableRandom random = new SplittableRandom(2);
      boolean turned = false;
      for (int i = 0; i < 40; i++) {
        BoardLayout layout = nesting.random(random);
        if (layout.pairs().get(0).mirroring() != Mirroring.APART) {
          double right = placed(layout, "leg right").turn();
          double left = placed(layout, "leg left").turn();
          assertThat(left).isCloseTo(slope == 0 ? -right : right, within(1e-6));
          turned |= Math.abs(right) > Math.toRadians(0.1);
        }
      }
      assertThat(turned).isTrue();
    }
  }

  @Test
  void whatFindsNoPlaceIsToldWithTheReason() {
    BoardLayout thin = BoardLayout.of(CHAIR, plan(board("thin", 300, 22, 0)));
    assertThat(thin.left())
        .containsExactlyInAnyOrder(
            new Left("leg right", Left.Why.TOO_THICK), new Left("leg left", Left.Why.TOO_THICK));
    BoardLayout narrow = BoardLayout.of(CHAIR, plan(board("narrow", 60, 40, 0)));
    assertThat(narrow.left()).contains(new Left("leg right", Left.Why.TOO_LARGE));
  }

  @Test
  void aBoardWiderThanAnyIsGluedUpFromStrips() {
    assertThat(layout(0).boards())
        .flatExtracting(Laid::parts)
        .extracting(p -> p.label())
        .contains("leg left", "rail", "stretcher")
        .anyMatch(label -> label.startsWith("top"));
    BoardLayout narrow = BoardLayout.of(CHAIR, plan(board("narrow", 130, 40, 0)));
    assertThat(narrow.boards())
        .flatExtracting(Laid::parts)
        .extracting(p -> p.label())
        .contains("top, strip 1 of 2", "top, strip 2 of 2");
  }

  @Test
  void itIsWithinATenthOfTheBestOfManyLayoutsByChance() {
    BoardsPlan plan = plan(board("thick", 200, 40, 0), board("thin", 120, 22, 0));
    Nesting nesting = new Nesting(CHAIR, plan);
    SplittableRandom random = new SplittableRandom(1);
    double best = 0;
    for (int i = 0; i < 300; i++) {
      BoardLayout one = nesting.random(random);
      best = one.left().isEmpty() ? Math.max(best, one.yielded()) : best;
    }
    assertThat(best).isPositive();
    assertThat(BoardLayout.of(CHAIR, plan).yielded()).isGreaterThanOrEqualTo(0.9 * best);
  }

  @Test
  void theSameChairIsAlwaysLaidOutAlike() {
    assertThat(layout(0.02)).isEqualTo(layout(0.02));
  }
}
