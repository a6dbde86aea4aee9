package dryfit.build;

import static dryfit.build.Sketch.FRONT_RAIL;
import static dryfit.build.Sketch.SIDE_RAIL;
import static dryfit.build.Sketch.SQUARE_LEGS;
import static dryfit.build.Sketch.bounds;
import static dryfit.build.Sketch.part;
import static dryfit.build.Sketch.volume;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.document.Hand;
import dryfit.geometry.Box;
import dryfit.solid.Turned;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PinsTest {
  private static final String JOINT =
      """
      "rail to leg": { "tenon": "side-rail front", "into": "front-leg",
        "thickness": 8, "width": 44, "length": 25 }""";

  private static Chair pinned(String pin) {
    return Sound.chair(SQUARE_LEGS + "," + SIDE_RAIL + ", \"pin\": " + pin, JOINT);
  }

  private static double circle(double d) {
    int n = Turned.facetsFor(d / 2, 0.05);
    return n / 2.0 * Math.sin(2 * Math.PI / n) * d * d / 4;
  }

  @Test
  void aPegGoesRightThroughTheLegAcrossTheCheeks() {
    Chair chair =
        pinned(
            "{ \"form\": \"peg\", \"pair\": true, \"in-joint\": \"rail to leg\", \"diameter\": 8, \"from-shoulder\": 10 }");
    Chair bare = Sound.chair(SQUARE_LEGS + "," + SIDE_RAIL, JOINT);
    Part peg = part(chair, "pin", Hand.RIGHT);
    // The tenon goes in at y = 40, so the peg stands at y = 30; the leg is from x = 160 to 200.
    assertThat(bounds(peg).low().x()).isCloseTo(160, within(1e-3));
    assertThat(bounds(peg).high().x()).isCloseTo(200, within(1e-3));
    assertThat(bounds(peg).middle().y()).isCloseTo(30, within(1e-3));
    assertThat(bounds(peg).middle().z()).isCloseTo(350, within(1e-3));
    assertThat(volume(peg)).isCloseTo(circle(8) * 40, within(0.1));
    // In the tenon 8 of its hole; in the leg what is left of 40 beside the mortise of 8 + 2 x 0.1.
    double inRail =
        volume(part(bare, "side-rail", Hand.RIGHT)) - volume(part(chair, "side-rail", Hand.RIGHT));
    double inLeg =
        volume(part(bare, "front-leg", Hand.RIGHT)) - volume(part(chair, "front-leg", Hand.RIGHT));
    assertThat(inRail).isCloseTo(circle(8) * 8, within(0.5));
    assertThat(inLeg).isCloseTo(circle(8) * (40 - 8.2), within(0.5));
  }

  @Test
  void aBlindPegStopsWhereItsLengthEnds() {
    Part peg =
        part(
            pinned(
                """
                { "form": "peg", "pair": true, "in-joint": "rail to leg", "diameter": 6,
                  "from-shoulder": 12, "off-centre": 14, "length": 30, "proud": 2,
                  "tapered": 8, "tip": 4, "driven-from": "inside" }"""),
            "pin",
            Hand.LEFT);
    assertThat(bounds(peg).high().x()).isCloseTo(-160 + 2, within(1e-3));
    assertThat(bounds(peg).low().x()).isCloseTo(-160 - 30, within(1e-3));
    assertThat(bounds(peg).middle().z()).isCloseTo(350 + 14, within(1e-3));
    // 24 of a cylinder and a frustum of 8 between the circles of 6 and 4.
    double taper = circle(6) * 8 / 3 * (1 + 2 / 3.0 + 4 / 9.0);
    assertThat(volume(peg)).isCloseTo(circle(6) * 24 + taper, within(0.1));
  }

  @Test
  void aDrawboredPegsHoleInTheTenonIsNearerToTheShoulder() {
    Chair chair =
        pinned(
            """
            { "form": "peg", "pair": true, "in-joint": "rail to leg", "diameter": 8,
              "from-shoulder": 10, "offset": 1.5 }""");
    var mesh = part(chair, "side-rail", Hand.RIGHT).placedMesh();
    Box hole =
        Box.around(
            IntStream.range(0, mesh.triangleCount())
                .filter(t -> mesh.origin(mesh.faceOf(t)).equals("/parts/pin"))
                .boxed()
                .flatMap(t -> IntStream.range(0, 3).mapToObj(c -> mesh.point(mesh.corner(t, c))))
                .toList());
    assertThat(hole.size().y()).isCloseTo(8, within(1e-3));
    double middle = hole.middle().y();
    assertThat(middle).isCloseTo(30 + 1.5, within(1e-3));
  }

  @Test
  void aWedgeEndsInALandAndBearsOnTheLeg() {
    String joint =
        """
        "rail to leg": { "tenon": "front-rail both", "into": "front-leg",
          "thickness": 10, "width": 40, "through": true, "proud": 40 }""";
    String wedge =
        """
        "pin": { "form": "wedge", "pair": true, "in-joint": "rail to leg", "from-shoulder": 40,
          "width": 6, "head": 12, "tip": 8, "across": "edges", "driven-from": "top",
          "proud": [15, 10] }""";
    Chair chair = Sound.chair(SQUARE_LEGS + "," + FRONT_RAIL + "," + wedge, joint);
    Part pin = part(chair, "pin", Hand.RIGHT);
    // The tenon is 40 high about z = 350, and stands out of the leg's outside face at x = 200.
    assertThat(bounds(pin).high().z()).isCloseTo(370 + 15, within(1e-3));
    assertThat(bounds(pin).low().z()).isCloseTo(330 - 10, within(1e-3));
    assertThat(bounds(pin).low().x()).isCloseTo(200, within(1e-3));
    assertThat(bounds(pin).high().x()).isCloseTo(212, within(1e-3));
    assertThat(volume(pin)).isCloseTo(65 * 6 * 10, within(0.5));
  }

  @Test
  void aWedgeOfALeftHandJointIsTheMirroredOne() {
    String wedge =
        """
        { "form": "wedge", "pair": true, "in-joint": "rail to leg", "from-shoulder": 8,
          "width": 20, "head": 6, "tip": 3, "proud": 5 }""";
    Chair chair = pinned(wedge);
    var right = bounds(part(chair, "pin", Hand.RIGHT));
    var left = bounds(part(chair, "pin", Hand.LEFT));
    assertThat(left.low().x()).isCloseTo(-right.high().x(), within(1e-9));
    assertThat(left.low().y()).isCloseTo(right.low().y(), within(1e-9));
    assertThat(right.low().y()).isCloseTo(40 - 8 - 6, within(1e-3));
  }
}
