package dryfit.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.app.KernelChoice;
import dryfit.app.OpenChair;
import dryfit.build.Part;
import dryfit.document.Design;
import dryfit.geometry.Frame;
import dryfit.geometry.Rays;
import dryfit.geometry.Vec3;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class PickedTest {
  private static final Frame HERE = new Frame(Vec3.ZERO, Vec3.RIGHT, Vec3.BACK, Vec3.UP);

  private static Picked picked(boolean edge, Vec3 way) {
    return new Picked("part", HERE, Vec3.ZERO, edge, way.unit());
  }

  @Test
  void edgesAndFacesAreHeldAgainstEachOtherByTheLesserAngle() {
    Vec3 slanting = new Vec3(0, Math.sin(Math.toRadians(100)), Math.cos(Math.toRadians(100)));
    assertThat(picked(true, Vec3.UP).angle(picked(true, slanting)))
        .isCloseTo(Math.toRadians(80), within(1e-12));
    assertThat(picked(false, Vec3.UP).angle(picked(false, Vec3.UP.negated()))).isZero();
    assertThat(picked(true, Vec3.UP).angle(picked(false, Vec3.UP)))
        .as("a post on its floor")
        .isCloseTo(Math.PI / 2, within(1e-12));
    assertThat(picked(true, Vec3.UP).angle(picked(false, slanting)))
        .isCloseTo(Math.toRadians(10), within(1e-12));
  }

  @Test
  void nearAnEdgeTheEdgeIsMeantAndElsewhereTheFace() {
    OpenChair.Ready ready =
        (OpenChair.Ready)
            OpenChair.open(
                Path.of("models/harbour-armchair.json"),
                Design.AS_DRAWN,
                KernelChoice.USUAL.kernel());
    Part rail =
        ready.chair().parts().stream()
            .filter(p -> p.label().equals("front-rail"))
            .findFirst()
            .orElseThrow();
    // From in front of the middle of the rail, and from 2 mm below its upper edge.
    Vec3 middle = rail.placedMesh().bounds().middle();
    double top = rail.placedMesh().bounds().high().z();
    Picked face = look(rail, new Vec3(middle.x(), -1000, middle.z()));
    assertThat(face.edge()).isFalse();
    assertThat(face.way().y()).isCloseTo(-1, within(1e-9));
    Picked edge = look(rail, new Vec3(middle.x(), -1000, top - 2));
    assertThat(edge.edge()).isTrue();
    assertThat(Math.abs(edge.way().x())).isCloseTo(1, within(1e-9));
    assertThat(edge.at().z()).isCloseTo(top, within(0.01));
    assertThat(edge.angle(face)).as("the edge lies in the face").isCloseTo(0, within(1e-6));
  }

  private static Picked look(Part part, Vec3 from) {
    Rays.Hit hit = part.solid().rays().placed(part.frame()).hits(from, Vec3.BACK).get(0);
    return Picked.of(part, from.plus(Vec3.BACK.times(hit.distance())), hit.face(), 6);
  }
}
