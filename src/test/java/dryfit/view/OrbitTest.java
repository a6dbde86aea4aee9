package dryfit.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.export.picture.Camera;
import dryfit.export.picture.View;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class OrbitTest {
  private static final List<Vec3> CORNERS = corners();

  private static List<Vec3> corners() {
    List<Vec3> all = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      all.add(new Vec3((i & 1) == 0 ? -280 : 280, (i & 2) == 0 ? 0 : 500, (i & 4) == 0 ? 0 : 960));
    }
    return all;
  }

  @ParameterizedTest
  @EnumSource(View.class)
  void aPlainViewHasAllOfTheChairInThePictureAndFillsIt(View view) {
    Orbit orbit = Orbit.of(view, CORNERS, 1.5, 0.8);
    Camera.Sheet sheet = orbit.camera().sheet(1200, 800);
    double widest = 0;
    for (Vec3 p : CORNERS) {
      widest = Math.max(widest, Math.abs(sheet.x(p) - 600) / 600);
      widest = Math.max(widest, Math.abs(sheet.y(p) - 400) / 400);
    }
    assertThat(widest).isCloseTo(0.8, within(0.001));
  }

  @ParameterizedTest
  @EnumSource(View.class)
  void aPlainViewLooksAsThePicturesDo(View view) {
    Camera camera = Orbit.of(view, CORNERS, 1.5, 0.8).camera();
    assertThat(camera.forward().negated().distance(view.towardsEye())).isLessThan(1e-9);
    assertThat(camera.up().dot(view.up())).isGreaterThan(0.9);
  }

  @Test
  void turningNeverGoesOverTheTop() {
    Orbit orbit = Orbit.of(View.FRONT, CORNERS, 1.5, 0.8).turned(0.3, 40);
    assertThat(orbit.camera().up().z()).isGreaterThanOrEqualTo(0);
    assertThat(orbit.turned(0, -90).camera().up().z()).isGreaterThanOrEqualTo(0);
  }

  @Test
  void comingNearerKeepsThePlaceUnderThePointer() {
    Orbit orbit = Orbit.of(View.THREE_QUARTER, CORNERS, 1.5, 0.8);
    Vec3 place = new Vec3(250, 20, 440);
    Camera.Sheet before = orbit.camera().sheet(1200, 800);
    Camera.Sheet after = orbit.zoomed(0.4, place).camera().sheet(1200, 800);
    assertThat(after.x(place)).isCloseTo(before.x(place), within(1e-6));
    assertThat(after.y(place)).isCloseTo(before.y(place), within(1e-6));
    assertThat(after.camera().eye().distance(place))
        .isCloseTo(0.4 * before.camera().eye().distance(place), within(1e-6));
  }

  @Test
  void slidingMovesTheChairAsFarAsTheHand() {
    Orbit orbit = Orbit.of(View.THREE_QUARTER, CORNERS, 1.5, 0.8);
    Vec3 place = orbit.target();
    Camera.Sheet after = orbit.slid(50, 30, 800).camera().sheet(1200, 800);
    assertThat(after.x(place)).isCloseTo(650, within(1e-6));
    assertThat(after.y(place)).isCloseTo(430, within(1e-6));
  }

  @Test
  void theWayBetweenTwoPlacesTurnsTheShortWayRound() {
    Orbit from = new Orbit(Vec3.ZERO, Math.toRadians(170), 0.2, 1000);
    Orbit to = new Orbit(Vec3.ZERO, Math.toRadians(-170), 0.2, 1000);
    assertThat(Math.cos(from.towards(to, 0.5).azimuth())).isCloseTo(-1, within(1e-9));
  }
}
