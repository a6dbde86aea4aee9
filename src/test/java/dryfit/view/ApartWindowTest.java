package dryfit.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.build.Joint;
import dryfit.export.picture.Camera;
import dryfit.fit.Finding;
import dryfit.fit.FitReport;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.Slider;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;

/** The chair sawn through where something is taken up, and pulled apart as far as it comes. */
class ApartWindowTest extends WindowTest {

  private Plane plane() {
    return OnScreen.ask(() -> screen.window.chair().look().get().cut().orElseThrow().plane());
  }

  private void takeUp(FxRobot robot, String joint) {
    Button word =
        OnScreen.ask(
            () ->
                robot.lookup("#joint-card .word").queryAll().stream()
                    .filter(n -> joint.equals(n.getUserData()))
                    .map(Button.class::cast)
                    .findFirst()
                    .orElseThrow());
    run(word::fire);
    screen.settled();
    screen.landed();
    screen.settled();
  }

  @Test
  void aSliceBeginsInTheMiddleOfTheJointThatIsTakenUp(FxRobot robot) {
    screen.open(HARBOUR);
    takeUp(robot, "side rail to front leg, left");
    Joint joint = screen.shown().joint("side rail to front leg, left").orElseThrow().joint();
    Vec3 middle = joint.at().plus(joint.entry().times(joint.length() / 2));
    screen.click(robot, "#slice");
    screen.landed();
    screen.settled();
    assertThat(plane().height(middle)).isCloseTo(0, within(0.01));
    assertThat(Math.abs(plane().normal().x())).as("along the tenon").isCloseTo(1, within(1e-9));
    Vec3 eye = screen.orbit().camera().eye();
    assertThat(plane().height(eye)).as("the eye is before the cut").isPositive();
    assertThat(screen.orbit().camera().forward().dot(plane().normal()))
        .as("it looks at the cut")
        .isLessThan(-0.6);
    assertThat(screen.orbit().target().distance(middle)).isLessThan(0.01);
    assertThat(screen.freshlySawn()).as("pixels of cut faces").isGreaterThan(300);
    screen.photograph("40-slice-at-a-joint");

    double at = OnScreen.ask(() -> robot.lookup("#slice-at").<Slider>query().getValue());
    run(() -> robot.lookup("#slice-at").<Slider>query().requestFocus());
    robot.type(KeyCode.LEFT);
    screen.settled();
    assertThat(plane().offset()).as("the slider moves it from there").isNotEqualTo(at);
    assertThat(Math.abs(plane().height(middle))).isBetween(1.0, 30.0);
  }

  @Test
  void whereTwoTenonsMeetTheSliceIsLevel(FxRobot robot) {
    screen.open(HARBOUR);
    run(() -> screen.window.session().choose("deep tenons"));
    screen.settled();
    screen.click(robot, "#slice");
    Button ticket = OnScreen.ask(() -> tickets(robot).get(0));
    Finding finding = (Finding) ticket.getUserData();
    assertThat(finding.joints()).hasSize(2);
    robot.clickOn(ticket);
    screen.settled();
    screen.landed();
    screen.settled();
    assertThat(plane().normal()).isEqualTo(Vec3.UP);
    assertThat(plane().height(finding.at())).isCloseTo(0, within(0.01));
    assertThat(screen.orbit().elevation()).isGreaterThan(Math.toRadians(50));
    assertThat(
            OnScreen.ask(
                () -> robot.lookup("#slice-from-above").<ToggleButton>query().isSelected()))
        .isTrue();
    assertThat(text(robot, "#slice-told")).endsWith(" mm above the floor");
    assertThat(screen.freshlySawn()).as("pixels of cut faces").isGreaterThan(300);
    screen.photograph("41-slice-level");

    screen.click(robot, "#slice-from-the-front");
    screen.landed();
    screen.settled();
    assertThat(Math.abs(plane().normal().y())).isEqualTo(1);
    assertThat(plane().height(finding.at())).as("the same place").isCloseTo(0, within(0.01));
  }

  @Test
  void theHalfThatIsLeftIsTheOneBehindTheCut(FxRobot robot) {
    screen.open(HARBOUR);
    screen.click(robot, "#slice");
    assertThat(plane().height(screen.orbit().camera().eye())).isPositive();
    assertThat(screen.shown().part("front-leg right")).isNotNegative();
    Vec3 before = plane().normal();
    run(() -> screen.window.chair().follow(screen.window.chair().orbit().get().turned(-2, 0)));
    screen.settled();
    assertThat(plane().normal()).isEqualTo(before.negated());
    assertThat(plane().height(screen.orbit().camera().eye())).isPositive();
  }

  @Test
  void woodThatIsSawnAwayIsNotPointedAt(FxRobot robot) {
    screen.open(HARBOUR);
    screen.click(robot, "#view-side");
    screen.landed();
    javafx.geometry.Point2D leg = screen.pointOn(screen.shown(), "front-leg right");
    screen.click(robot, "#slice");
    Optional<ChairView.Touch> touch =
        OnScreen.ask(
            () -> {
              ChairView chair = screen.window.chair();
              javafx.geometry.Point2D at = chair.screenToLocal(leg);
              return chair.touch(at.getX(), at.getY());
            });
    assertThat(touch.map(ChairView.Touch::part)).isNotEqualTo(Optional.of("front-leg right"));
    // The rails across the chair are met on their cut face, which can be measured from.
    ChairView.Touch rail =
        OnScreen.ask(
            () -> {
              ChairView chair = screen.window.chair();
              for (int y = 10; y < chair.getHeight(); y += 3) {
                for (int x = 10; x < chair.getWidth(); x += 3) {
                  Optional<ChairView.Touch> on = chair.touch(x, y);
                  if (on.isPresent() && on.get().face() == Sawn.CUT) {
                    return on.get();
                  }
                }
              }
              throw new AssertionError("no cut face in sight");
            });
    assertThat(plane().height(rail.at())).isCloseTo(0, within(1e-6));
    assertThat(OnScreen.ask(() -> screen.window.chair().picked(rail)).way())
        .isEqualTo(plane().normal());
  }

  private List<Vec3> pulled(FxRobot robot) {
    run(() -> robot.lookup("#apart").<Slider>query().setValue(1));
    screen.settled();
    return OnScreen.ask(() -> screen.window.chair().look().get().moved());
  }

  @Test
  void whatClaimsTheSameWoodIsToldAndStaysTogether(FxRobot robot) {
    screen.open(HARBOUR);
    run(() -> screen.window.session().choose("deep tenons"));
    screen.settled();
    List<Vec3> moved = pulled(robot);
    assertThat(text(robot, "#apart-told"))
        .startsWith("In each other’s wood, so they stay: ")
        .contains("front rail", "both side rails");
    Shown shown = screen.shown();
    Vec3 held = moved.get(shown.part("front-rail"));
    for (String rail : List.of("side-rail right", "side-rail left")) {
      assertThat(moved.get(shown.part(rail)).distance(held)).as(rail).isLessThan(1e-9);
    }
    screen.photograph("42-locked");
    assertThat(screen.glowing())
        .as("red pixels of what is still in each other’s wood")
        .isGreaterThan(20);

    run(() -> robot.lookup("#apart").<Slider>query().setValue(0));
    screen.settled();
    assertThat(OnScreen.ask(() -> robot.lookup("#apart-told").<Labeled>query().isVisible()))
        .isFalse();
    // With what is before the wood that is claimed twice sawn away, half of it is left hanging.
    long whole = screen.glowing();
    screen.click(robot, "#slice");
    run(() -> robot.lookup("#slice-at").<Slider>query().setValue(0));
    screen.settled();
    assertThat(screen.glowing()).as("nothing hangs where the wood is sawn away").isLessThan(whole);
  }

  @Test
  void whatWasAcceptedGoesOnGlowing() {
    screen.open(HARBOUR);
    run(() -> screen.window.session().choose("deep tenons"));
    screen.settled();
    FitReport stops = screen.shown().report();
    List<Finding> accepted = stops.findings().stream().map(ApartWindowTest::accepted).toList();
    assertThat(Clash.of(new FitReport(stops.chair(), stops.joints(), accepted, stops.whole())))
        .hasSameSizeAs(Clash.of(stops))
        .isNotEmpty();
  }

  private static Finding accepted(Finding f) {
    return new Finding(
        f.check(),
        f.severity(),
        f.parts(),
        f.joints(),
        f.measured(),
        f.limit(),
        f.margin(),
        f.unit(),
        f.source(),
        f.message(),
        f.pointer(),
        f.at(),
        Optional.of("as an example"));
  }

  @Test
  void aChairThatComesApartSaysWhatComesOff(FxRobot robot) {
    screen.open(Path.of("models/low-stool.json"));
    List<Vec3> moved = pulled(robot);
    assertThat(moved.stream().filter(m -> m.length() > 20)).isNotEmpty();
    screen.landed();
    screen.settled();
    Camera camera = screen.orbit().camera();
    OnScreen.ask(
        () -> {
          ChairView view = screen.window.chair();
          Camera.Sheet sheet = camera.sheet((int) view.getWidth(), (int) view.getHeight());
          for (int i = 0; i < moved.size(); i++) {
            Vec3 way = moved.get(i);
            for (Convex cell :
                screen.window.session().shown().get().chair().parts().get(i).placedCells()) {
              assertThat(cell.points())
                  .as("in the picture")
                  .allMatch(p -> view.contains(sheet.x(p.plus(way)), sheet.y(p.plus(way))));
            }
          }
          return null;
        });
    screen.photograph("44-all-in-sight");
    assertThat(text(robot, "#apart-told")).matches("(\\d+) of \\1 apart: .+");
  }
}
