package dryfit.shop.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.build.Chair;
import dryfit.fit.Fitted;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec2;
import dryfit.shop.EasedArm;
import dryfit.shop.template.TemplateMaker.Made;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/** Templates of small invented parts and of a demo chair. */
class TemplateMakerTest {
  private static final Wanted PLAIN = wanted(0, null, Wanted.Hands.BOTH);

  /** A board 300 by 100 with a corner taken out and an opening of 60 by 40. */
  private static final String BOARD =
      """
      { "format": "dryfit-chair/1", "name": "Board", "unit": "mm", "timber": "ash-white",
        "parts": { "board": { "form": "panel", "thickness": 15, "plane": "plan", "at": [0, 0, 400],
          "outline": [ [0, 0], [300, 0], [300, 60], [260, 60], [260, 100], [0, 100] ],
          "openings": [ [ [40, 30], [100, 30], [100, 70], [40, 70] ] ] } } }""";

  /** A pair of curved legs. */
  private static final String LEGS =
      """
      { "format": "dryfit-chair/1", "name": "Legs", "unit": "mm", "timber": "ash-white",
        "parts": { "leg": { "form": "sawn", "pair": true, "thickness": 30, "stands-at": [200, 0, 0],
          "side": [ [0, 0], [40, 0], [40, 300], [120, 700], [80, 700], [0, 300] ] } } }""";

  private static Wanted wanted(double waste, GuideBush bush, Wanted.Hands hand) {
    return new Wanted(waste, Optional.ofNullable(bush), hand, 5);
  }

  /** The first that is sawn to. */
  private static Template first(Chair chair, String part, Wanted wanted) {
    return new TemplateMaker(chair, wanted)
        .of(part).stream()
            .map(m -> ((Made.Ready) m).template())
            .filter(t -> t.shows() == Template.Shows.OUTLINE)
            .findFirst()
            .orElseThrow();
  }

  private static double width(List<Vec2> loop) {
    return loop.stream().mapToDouble(Vec2::x).max().orElseThrow()
        - loop.stream().mapToDouble(Vec2::x).min().orElseThrow();
  }

  private static double height(List<Vec2> loop) {
    return loop.stream().mapToDouble(Vec2::y).max().orElseThrow()
        - loop.stream().mapToDouble(Vec2::y).min().orElseThrow();
  }

  private static double area(List<List<Vec2>> loops) {
    double sum = 0;
    for (int k = 0; k < loops.size(); k++) {
      double twice = 0;
      List<Vec2> loop = loops.get(k);
      for (int i = 0; i < loop.size(); i++) {
        twice += loop.get(i).cross(loop.get((i + 1) % loop.size()));
      }
      sum += (k == 0 ? 1 : -1) * Math.abs(twice) / 2;
    }
    return sum;
  }

  @Test
  void theEdgeOfTheLineIsTheOutline() {
    Template t = first(Fitted.of(BOARD).chair(), "board", PLAIN);
    assertThat(t.outline()).hasSize(2);
    assertThat(width(t.outline().get(0))).isCloseTo(300, within(0.002));
    // The middle of the line is half its width outside, in openings inside.
    assertThat(width(t.line().get(0))).isCloseTo(300 + t.width(), within(0.002));
    assertThat(height(t.line().get(0))).isCloseTo(100 + t.width(), within(0.002));
    assertThat(width(t.line().get(1))).isCloseTo(60 - t.width(), within(0.002));
  }

  /**
   * A bush of 5/8 in round a cutter of 1/2 in: an opening in the template is 1/8 in longer and
   * wider than what is cut, 1/16 in a side (common practice, no source).
   */
  @Test
  void aTemplateForAGuideBushStandsBackAndItsOpeningsAreLarger() {
    double in = 25.4;
    GuideBush bush = new GuideBush(in * 5 / 8, in / 2);
    assertThat(bush.offset()).isCloseTo(in / 16, within(1e-9));
    Template t = first(Fitted.of(BOARD).chair(), "board", wanted(0, bush, Wanted.Hands.BOTH));
    assertThat(width(t.edge().get(0))).isCloseTo(300 - in / 8, within(0.002));
    assertThat(width(t.edge().get(1))).isCloseTo(60 + in / 8, within(0.002));
    assertThat(height(t.edge().get(1))).isCloseTo(40 + in / 8, within(0.002));
  }

  /** A round cutter leaves (√2 − 1) of its radius in a square corner. */
  @Test
  void insideCornersThatTheCutterDoesNotReachAreTold() {
    GuideBush bush = new GuideBush(16, 12);
    Template t = first(Fitted.of(BOARD).chair(), "board", wanted(0, bush, Wanted.Hands.BOTH));
    List<Mark.TightCorner> corners =
        t.marks().stream()
            .filter(Mark.TightCorner.class::isInstance)
            .map(Mark.TightCorner.class::cast)
            .toList();
    // One at the corner that is taken out, four in the opening.
    assertThat(corners).hasSize(5);
    double left = (Math.sqrt(2) - 1) * 6;
    assertThat(corners).allSatisfy(c -> assertThat(c.left()).isLessThan(left + 0.05).isPositive());
  }

  @Test
  void bothEndsAreLongerByTheWasteAndTheScrewsAreInIt() {
    Template t = first(Fitted.of(LEGS).chair(), "leg", wanted(60, null, Wanted.Hands.BOTH));
    Template plain = first(Fitted.of(LEGS).chair(), "leg", PLAIN);
    assertThat(width(t.edge().get(0))).isCloseTo(700 + 120, within(0.01));
    assertThat(area(t.edge())).isCloseTo(area(plain.edge()) + 2 * 60 * 40, within(2.0));
    List<Mark.Screw> screws =
        t.marks().stream()
            .filter(Mark.Screw.class::isInstance)
            .map(Mark.Screw.class::cast)
            .toList();
    assertThat(screws).hasSize(4);
    assertThat(screws).allSatisfy(s -> assertThat(s.at().x() < 0 || s.at().x() > 700).isTrue());
  }

  @Test
  void onlyEndsThatLookAlongThePartGetWaste() {
    Template t = first(Fitted.of(BOARD).chair(), "board", wanted(60, null, Wanted.Hands.BOTH));
    assertThat(area(t.edge())).isCloseTo(area(t.outline()), within(0.01));
  }

  @Test
  void oneTemplateServesAPairThatMirrorsAndHandsAreExactMirrors() {
    Chair chair = Fitted.of(LEGS).chair();
    Template both = first(chair, "leg", PLAIN);
    assertThat(both.serves()).isEqualTo(Template.Serves.BOTH_HANDS);
    Template right = first(chair, "leg", wanted(0, null, Wanted.Hands.RIGHT));
    Template left = first(chair, "leg", wanted(0, null, Wanted.Hands.LEFT));
    assertThat(left.outline().get(0))
        .allSatisfy(
            p ->
                assertThat(right.outline().get(0))
                    .anySatisfy(
                        q -> assertThat(q.distance(new Vec2(p.x(), -p.y()))).isLessThan(0.002)));
  }

  @Test
  void anUprightLiesWithItsFootToTheLeftAndIsMeasuredFromIt() {
    Template t = first(Fitted.of(LEGS).chair(), "leg", PLAIN);
    assertThat(t.datum()).isCloseTo(t.low().x(), within(1e-6));
    assertThat(t.datumLooks().z()).isCloseTo(-1, within(1e-9));
  }

  @Test
  void aPartSawnToOneOutlineHasItsOtherFaceForMarkingOnly() {
    List<Made> made = new TemplateMaker(Fitted.of(LEGS).chair(), PLAIN).of("leg");
    assertThat(made)
        .extracting(m -> ((Made.Ready) m).template().shows())
        .containsExactlyInAnyOrder(Template.Shows.OUTLINE, Template.Shows.MARKS);
  }

  /** The surface of the finished part, triangle by triangle, against cells of its body. */
  @Test
  void theOutlineIsTheSilhouetteOfTheSolid() throws IOException {
    Chair chair = Fitted.of(Files.readString(Path.of("models/harbour-armchair.json"))).chair();
    for (Made made : new TemplateMaker(chair, PLAIN).of("arm")) {
      Template t = ((Made.Ready) made).template();
      Mesh mesh = t.part().placedMesh();
      List<Geometry> seen = new ArrayList<>();
      GeometryFactory geometry = new GeometryFactory();
      var right = t.up().cross(t.looks());
      for (int i = 0; i < mesh.triangleCount(); i++) {
        Coordinate[] ring = new Coordinate[4];
        for (int k = 0; k < 4; k++) {
          var p = mesh.point(mesh.corner(i, k % 3));
          ring[k] = new Coordinate(p.dot(right), p.dot(t.up()));
        }
        Geometry triangle = geometry.createPolygon(ring);
        if (triangle.getArea() > 0.001) {
          seen.add(triangle);
        }
      }
      double area = UnaryUnionNG.union(seen, new PrecisionModel(1000)).getArea();
      assertThat(area(t.outline())).isCloseTo(area, within(area * 1e-4 + 1));
    }
  }

  @Test
  void whereAnotherPartLandsTheFaceIsKeptFlat() throws IOException {
    Chair chair = Fitted.of(Files.readString(Path.of("models/harbour-armchair.json"))).chair();
    Template outside = first(chair, "back-leg", PLAIN);
    assertThat(
            new TemplateMaker(chair, PLAIN)
                .of("back-leg").stream()
                    .flatMap(m -> ((Made.Ready) m).template().marks().stream())
                    .filter(m -> m instanceof Mark.FlatEdge || m instanceof Mark.FlatArea)
                    .map(
                        m ->
                            m instanceof Mark.FlatEdge e ? e.about() : ((Mark.FlatArea) m).about()))
        .contains("side-rail", "back-rail", "crest-rail");
    assertThat(outside.serves()).isEqualTo(Template.Serves.BOTH_HANDS);
  }

  /** The front end is square across, from 1 in inside to 1 in outside, and 12 1/2 in on. */
  @Test
  void anEasedEdgeTakesNothingOffTheOutlineOfAnArm() {
    Chair chair = Fitted.of(EasedArm.JSON).chair();
    Template t = first(chair, "arm", wanted(50, null, Wanted.Hands.RIGHT));
    List<Mark.End> ends =
        t.marks().stream().filter(Mark.End.class::isInstance).map(Mark.End.class::cast).toList();
    double in = 25.4;
    // The arm's tenon is 3/4 in long, measured at the middle of a shoulder that is coped.
    assertThat(width(t.outline().get(0))).isCloseTo((12.5 + 0.75) * in, within(0.15 * in));
    assertThat(ends)
        .filteredOn(e -> Math.abs(height(e.line()) - 2 * in) < 0.01)
        .singleElement()
        .satisfies(e -> assertThat(width(e.line())).isCloseTo(0, within(0.01)));
    assertThat(t.outline()).hasSize(1);
  }

  @Test
  void aPegsHoleIsDrawnWhereItIsBoredThroughTheLeg() {
    // The shoulder is at x = -15; 10 further in, in the middle of a tenon at 300.
    Chair chair =
        Fitted.of(
                """
                { "format": "dryfit-chair/1", "name": "Post", "unit": "mm", "timber": "ash-white",
                  "parts": {
                    "post": { "form": "sawn", "thickness": 30, "stands-at": [0, 0, 0],
                      "side": [ [-20, 0], [20, 0], [20, 400], [60, 600], [20, 600], [-20, 400] ] },
                    "rail": { "form": "straight", "section": [40, 20], "from": [0, -200, 300], "to": [0, -20, 300] },
                    "pin": { "form": "peg", "in-joint": "it", "from-shoulder": 10, "diameter": 6 } },
                  "joints": { "it": { "tenon": "rail end", "into": "post", "thickness": 8, "width": 30, "length": 25 } } }""")
            .chair();
    // On the front it is bored from an edge; on the side one looks into it.
    List<Template> both =
        new TemplateMaker(chair, PLAIN)
            .of("post").stream().map(m -> ((Made.Ready) m).template()).toList();
    assertThat(both).hasSize(2);
    assertThat(both.get(0).marks())
        .filteredOn(Mark.Inside.class::isInstance)
        .extracting(m -> ((Mark.Inside) m).about())
        .containsExactly("pin, peg");
    Template template = both.get(1);
    Mark.Mouth hole =
        template.marks().stream()
            .filter(Mark.Mouth.class::isInstance)
            .map(Mark.Mouth.class::cast)
            .filter(m -> m.about().equals("pin, peg"))
            .findFirst()
            .orElseThrow();
    List<Vec2> ring = hole.loops().get(0);
    assertThat(width(ring)).isEqualTo(6, within(0.01));
    assertThat(height(ring)).isEqualTo(6, within(0.01));
    double along = ring.stream().mapToDouble(Vec2::x).average().orElseThrow();
    assertThat(Math.abs(along - template.datum())).isEqualTo(300, within(0.01));
    double low = template.outline().get(0).stream().mapToDouble(Vec2::y).min().orElseThrow();
    double high = template.outline().get(0).stream().mapToDouble(Vec2::y).max().orElseThrow();
    double across = ring.stream().mapToDouble(Vec2::y).average().orElseThrow();
    // The front face is the lower or the upper edge of the drawing; the outline is 80 deep there.
    assertThat(Math.min(across - low, high - across)).isEqualTo(10, within(0.01));
  }
}
