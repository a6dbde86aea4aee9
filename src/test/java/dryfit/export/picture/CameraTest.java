package dryfit.export.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.geometry.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;

class CameraTest {
  private static final List<Vec3> CUBE =
      List.of(new Vec3(-100, -100, 0), new Vec3(100, 100, 200), new Vec3(100, -100, 0));

  private static Camera.Sheet sheet(View view) {
    return Camera.fitting(view, CUBE, 1.5, 0.8).sheet(600, 400);
  }

  @Test
  void seenFromTheFrontRightIsOnTheRightAndUpIsUp() {
    Camera.Sheet sheet = sheet(View.FRONT);
    assertThat(sheet.x(new Vec3(50, 0, 100))).isGreaterThan(sheet.x(new Vec3(-50, 0, 100)));
    assertThat(sheet.y(new Vec3(0, 0, 200))).isLessThan(sheet.y(new Vec3(0, 0, 0)));
  }

  @Test
  void seenFromTheSideTheFrontIsOnTheLeft() {
    Camera.Sheet sheet = sheet(View.SIDE);
    assertThat(sheet.x(new Vec3(0, -50, 100))).isLessThan(sheet.x(new Vec3(0, 50, 100)));
  }

  @Test
  void seenFromAboveTheFrontIsAtTheBottom() {
    Camera.Sheet sheet = sheet(View.ABOVE);
    assertThat(sheet.y(new Vec3(0, -50, 100))).isGreaterThan(sheet.y(new Vec3(0, 50, 100)));
    assertThat(sheet.x(new Vec3(50, 0, 100))).isGreaterThan(sheet.x(new Vec3(-50, 0, 100)));
  }

  @Test
  void seenFromBelowTheFrontIsAtTheTopAndRightStaysRight() {
    Camera.Sheet sheet = sheet(View.UNDERSIDE);
    assertThat(sheet.y(new Vec3(0, -50, 100))).isLessThan(sheet.y(new Vec3(0, 50, 100)));
    assertThat(sheet.x(new Vec3(50, 0, 100))).isGreaterThan(sheet.x(new Vec3(-50, 0, 100)));
  }

  @Test
  void aFittedEyeTouchesTheFrameItMayFillAndNoMore() {
    for (View view : View.values()) {
      Camera.Sheet sheet = sheet(view);
      double widest = 0;
      for (Vec3 p : CUBE) {
        widest = Math.max(widest, Math.abs(sheet.x(p) - 300) / 300);
        widest = Math.max(widest, Math.abs(sheet.y(p) - 200) / 200);
      }
      assertThat(widest).as(view.word()).isCloseTo(0.8, within(1e-9));
    }
  }

  @Test
  void aRayLeadsBackToThePointItCameFrom() {
    Camera.Sheet sheet = sheet(View.THREE_QUARTER);
    Vec3 p = new Vec3(30, -70, 120);
    Vec3 back =
        sheet.camera().eye().plus(sheet.ray(sheet.x(p), sheet.y(p)).times(sheet.camera().depth(p)));
    assertThat(back.distance(p)).isCloseTo(0, within(1e-9));
  }

  @Test
  void goingRoundToTheRightComesToTheSide() {
    Camera camera = Camera.around(Vec3.ZERO, Math.PI / 2, 0, 1000, 0.4);
    assertThat(camera.eye().distance(new Vec3(1000, 0, 0))).isCloseTo(0, within(1e-9));
  }

  @Test
  void everyViewIsFoundByItsWord() {
    for (View view : View.values()) {
      assertThat(View.named(view.word())).contains(view);
    }
    assertThat(View.named("sideways")).isEmpty();
  }
}
