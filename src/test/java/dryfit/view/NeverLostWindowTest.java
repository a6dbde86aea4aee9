package dryfit.view;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.geometry.Box;
import dryfit.geometry.Vec3;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;

/** The chair, its work and the keys stay where the maker finds them. */
class NeverLostWindowTest extends WindowTest {
  private Bounds paper() {
    return OnScreen.ask(
        () -> screen.window.chair().localToScreen(screen.window.chair().getLayoutBounds()));
  }

  @Test
  void howeverFarItIsSlidAndZoomedADoubleClickBesideItBringsItBack(FxRobot robot) {
    screen.open(HARBOUR);
    long whole = screen.wood();
    Box chair = screen.shown().bounds();
    Bounds paper = paper();
    for (int i = 0; i < 4; i++) {
      robot.moveTo(paper.getMinX() + 40, paper.getMinY() + 60);
      robot.drag(MouseButton.SECONDARY).moveTo(paper.getMaxX() - 40, paper.getMaxY() - 60);
      robot.drop();
    }
    robot.moveTo(paper.getMinX() + 20, paper.getMinY() + 60);
    for (int i = 0; i < 12; i++) {
      robot.scroll(javafx.geometry.VerticalDirection.UP);
    }
    screen.settled();
    Vec3 target = screen.orbit().target();
    assertThat(target.x()).isBetween(chair.low().x(), chair.high().x());
    assertThat(target.y()).isBetween(chair.low().y(), chair.high().y());
    assertThat(target.z()).isBetween(chair.low().z(), chair.high().z());

    Point place = besideTheChair();
    robot.moveTo(place.x, place.y).doubleClickOn(MouseButton.PRIMARY);
    screen.landed();
    screen.settled();
    assertThat(screen.wood()).as("all of it is back").isGreaterThan(whole / 2);
  }

  private record Point(double x, double y) {}

  /** A place of the picture where there is no wood. */
  private Point besideTheChair() {
    return OnScreen.ask(
        () -> {
          ChairView view = screen.window.chair();
          for (double x = 10; x < view.getWidth(); x += 15) {
            for (double y = 10; y < view.getHeight(); y += 15) {
              if (view.touch(x, y).isEmpty()) {
                javafx.geometry.Point2D at = view.localToScreen(x, y);
                return new Point(at.getX(), at.getY());
              }
            }
          }
          throw new IllegalStateException("wood everywhere");
        });
  }

  @Test
  void aChairWithoutAFileIsOfferedAgainWhenAnotherIsWanted(FxRobot robot) {
    run(() -> screen.window.offer());
    OnScreen.await("the kinds", () -> !robot.lookup("#new-stool").queryAll().isEmpty());
    robot.clickOn("#new-stool");
    OnScreen.await("the stool", () -> screen.window.session().shown().get() != null);
    screen.settled();
    TextField seat = robot.lookup("#value-seatTop").query();
    robot.doubleClickOn(seat).write("470").type(KeyCode.ENTER);
    screen.settled();
    robot.clickOn("#another-chair");
    OnScreen.await("the offer", () -> !robot.lookup("#unsaved .pill").queryAll().isEmpty());
    screen.photograph("52-not-saved-yet");
    robot.clickOn(robot.lookup("#unsaved .pill").queryButton());
    OnScreen.await(
        "the stool again",
        () -> {
          Shown now = screen.window.session().shown().get();
          return now != null && now.document().text().contains("470");
        });
    screen.settled();
    assertThat(screen.shown().design().dimensions())
        .anyMatch(d -> d.name().equals("seatTop") && d.value().value() == 470);
  }

  @Test
  void theKeysStayWithTheChairWhenTheWordThatHadThemGoes(FxRobot robot) {
    screen.open(HARBOUR);
    run(() -> screen.window.open("side rail to front leg, left"));
    screen.settled();
    screen.landed();
    run(() -> robot.lookup("#all-joints").queryButton().requestFocus());
    robot.type(KeyCode.SPACE);
    screen.settled();
    assertThat(OnScreen.ask(() -> screen.stage.getScene().getFocusOwner()))
        .isSameAs(screen.window.chair());
    assertThat(OnScreen.ask(() -> screen.window.chair().look().get().chosen()))
        .as("nothing is taken up any more")
        .isEmpty();
  }

  @Test
  void measuredIsTheChairTogether(FxRobot robot) {
    screen.open(HARBOUR);
    run(() -> robot.lookup("#apart").<Slider>query().setValue(1));
    screen.settled();
    robot.clickOn("#measure");
    screen.settled();
    assertThat(OnScreen.ask(() -> robot.lookup("#apart").<Slider>query().getValue())).isZero();
    run(() -> robot.lookup("#apart").<Slider>query().setValue(0.5));
    screen.settled();
    assertThat(OnScreen.ask(() -> robot.lookup("#measure").<ToggleButton>query().isSelected()))
        .isFalse();
    assertThat(text(robot, "#apart-told")).matches("8 of 15 apart: .+");
  }

  @Test
  void aPictureHasTheWidthThatIsAskedFor(FxRobot robot) throws Exception {
    screen.open(HARBOUR);
    Path file = state.resolve("wide.png");
    screen.desk.answer = Optional.of(file);
    robot.clickOn("#save-picture");
    run(() -> robot.lookup("#written").<TextField>query().setText("wide"));
    robot.clickOn("#save-the-picture");
    assertThat(file).doesNotExist();
    run(() -> robot.lookup("#written").<TextField>query().setText("4800"));
    robot.clickOn("#save-the-picture");
    screen.settled();
    BufferedImage read = javax.imageio.ImageIO.read(file.toFile());
    assertThat(read.getWidth()).isEqualTo(4800);
    long wood = 0;
    for (int x = 0; x < read.getWidth(); x += 8) {
      for (int y = 0; y < read.getHeight(); y += 8) {
        wood += (read.getRGB(x, y) & 0xFF) < 0xC8 ? 1 : 0;
      }
    }
    assertThat(wood).as("places that are not paper").isGreaterThan(4000);
    assertThat(text(robot, "#notice")).contains("4800 ×");
  }

  @Test
  void aPlainViewHasTheWholeChairInEverySizeOfTheWindow(FxRobot robot) {
    screen.open(HARBOUR);
    for (double[] size : new double[][] {{1400, 620}, {900, 860}, {1280, 800}}) {
      run(
          () -> {
            screen.stage.setWidth(size[0]);
            screen.stage.setHeight(size[1]);
          });
      screen.settled();
      screen.landed();
      assertThat(OnScreen.ask(() -> screen.window.chair().seeAllThatIsCutOff()))
          .as(size[0] + " x " + size[1])
          .isEmpty();
      assertThat(OnScreen.ask(() -> screen.window.chair().plain().get())).isNotNull();
    }
  }
}
