package dryfit.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToggleButton;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.PickResult;
import javafx.scene.input.TouchEvent;
import javafx.scene.input.TouchPoint;
import javafx.scene.input.ZoomEvent;
import javafx.scene.shape.Polygon;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/** Fingers, keys, ears and small screens. */
class HandsWindowTest extends WindowTest {
  private int set;

  /** One set of touches on the chair: where each finger is, and what it just did. */
  private void touch(EventType<TouchEvent> type, TouchPoint.State state, double... xy) {
    OnScreen.ask(
        () -> {
          ChairView chair = screen.window.chair();
          List<TouchPoint> points = new ArrayList<>();
          for (int i = 0; i < xy.length / 2; i++) {
            PickResult under = new PickResult(chair, xy[2 * i], xy[2 * i + 1]);
            points.add(new TouchPoint(i + 1, state, xy[2 * i], xy[2 * i + 1], 0, 0, chair, under));
          }
          set++;
          for (TouchPoint point : points) {
            Event.fireEvent(
                chair,
                new TouchEvent(chair, chair, type, point, points, set, false, false, false, false));
          }
          return null;
        });
  }

  @Test
  void oneFingerTurnsAndTwoSlideAndBringNearer(FxRobot robot) {
    screen.open(HARBOUR);
    Orbit first = screen.orbit();
    touch(TouchEvent.TOUCH_PRESSED, TouchPoint.State.PRESSED, 300, 250);
    touch(TouchEvent.TOUCH_MOVED, TouchPoint.State.MOVED, 405, 250);
    touch(TouchEvent.TOUCH_RELEASED, TouchPoint.State.RELEASED, 405, 250);
    Orbit turned = screen.orbit();
    assertThat(turned.azimuth() - first.azimuth()).isCloseTo(-Math.PI / 4, within(1e-9));
    assertThat(turned.target()).isEqualTo(first.target());
    assertThat(turned.distance()).isEqualTo(first.distance());

    touch(TouchEvent.TOUCH_PRESSED, TouchPoint.State.PRESSED, 250, 250, 350, 250);
    touch(TouchEvent.TOUCH_MOVED, TouchPoint.State.MOVED, 300, 250, 400, 250);
    Orbit slid = screen.orbit();
    assertThat(slid.azimuth()).isEqualTo(turned.azimuth());
    assertThat(slid.distance()).isCloseTo(turned.distance(), within(1e-9));
    Vec3 by = turned.target().minus(slid.target());
    double height = OnScreen.ask(() -> screen.window.chair().getHeight());
    assertThat(by.dot(turned.camera().right())).isCloseTo(50 * turned.pixel(height), within(1e-6));

    touch(TouchEvent.TOUCH_MOVED, TouchPoint.State.MOVED, 250, 250, 450, 250);
    touch(TouchEvent.TOUCH_RELEASED, TouchPoint.State.RELEASED, 250, 250, 450, 250);
    assertThat(screen.orbit().distance()).isCloseTo(slid.distance() / 2, within(1e-6));

    double far = screen.orbit().distance();
    OnScreen.ask(
        () -> {
          ChairView chair = screen.window.chair();
          Event.fireEvent(
              chair,
              new ZoomEvent(
                  ZoomEvent.ZOOM,
                  300,
                  250,
                  0,
                  0,
                  false,
                  false,
                  false,
                  false,
                  false,
                  false,
                  0.5,
                  0.5,
                  new PickResult(chair, 300, 250)));
          return null;
        });
    assertThat(screen.orbit().distance()).isCloseTo(2 * far, within(1e-6));
  }

  @Test
  void keysTurnSlideBringNearerShowAllAndTakeUpAPart(FxRobot robot) {
    screen.open(HARBOUR);
    OnScreen.ask(
        () -> {
          screen.window.chair().requestFocus();
          return null;
        });
    Orbit first = screen.orbit();
    robot.type(KeyCode.RIGHT);
    assertThat(screen.orbit().azimuth()).isNotEqualTo(first.azimuth());
    robot.press(KeyCode.SHIFT).type(KeyCode.UP).release(KeyCode.SHIFT);
    assertThat(screen.orbit().target()).isNotEqualTo(first.target());
    robot.type(KeyCode.PLUS);
    assertThat(screen.orbit().distance()).isLessThan(first.distance());
    robot.type(KeyCode.HOME);
    screen.landed();
    assertThat(screen.orbit().azimuth()).isCloseTo(first.azimuth(), within(1e-9));
    robot.type(KeyCode.ENTER);
    screen.settled();
    assertThat(OnScreen.ask(() -> screen.window.chair().look().get().chosen())).hasSize(1);
  }

  @Test
  void everythingThatCanBeReachedHasAName(FxRobot robot) {
    screen.open(HARBOUR);
    robot.clickOn("#slice");
    robot.clickOn("#sitter");
    robot.clickOn("#write-files");
    screen.settled();
    List<Node> reached = reachable(screen.stage.getScene().getRoot());
    assertThat(reached).hasSizeGreaterThan(60);
    for (Node node : reached) {
      assertThat(name(node)).as(node.toString()).isNotBlank();
    }
    OnScreen.ask(
        () -> {
          screen.window.offer();
          return null;
        });
    for (Node node : reachable(screen.stage.getScene().getRoot())) {
      assertThat(name(node)).as(node.toString()).isNotBlank();
    }
  }

  @Test
  void theVerdictIsToldByShapeToo(FxRobot robot) {
    screen.open(HARBOUR);
    List<Double> fits = sign(robot);
    run(() -> screen.window.session().choose("deep tenons"));
    screen.settled();
    assertThat(sign(robot)).hasSize(6).isNotEqualTo(fits);
  }

  private static List<Double> sign(FxRobot robot) {
    return OnScreen.ask(() -> List.copyOf(robot.lookup(".sign").<Polygon>query().getPoints()));
  }

  @Test
  void tabComesPastEverythingAndTheOneThatHasTheKeysIsSeen(FxRobot robot) {
    screen.open(HARBOUR);
    run(() -> screen.window.chair().requestFocus());
    Set<Node> wanted = new HashSet<>(reachable(screen.stage.getScene().getRoot()));
    Set<Node> come = new HashSet<>();
    for (int i = 0; i < 3 * wanted.size() && !come.containsAll(wanted); i++) {
      robot.type(KeyCode.TAB);
      WaitForAsyncUtils.waitForFxEvents();
      come.add(OnScreen.ask(() -> screen.stage.getScene().getFocusOwner()));
    }
    wanted.removeAll(come);
    assertThat(wanted).as("what Tab never comes to").isEmpty();

    ToggleButton chosen = robot.lookup("as drawn").query();
    run(chosen::requestFocus);
    robot.type(KeyCode.RIGHT);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(OnScreen.ask(chosen::isSelected)).as("an arrow chooses no other variant").isTrue();

    for (String one : List.of("#chair", "#view-front", "#apart", "#save-picture")) {
      Node node = robot.lookup(one).query();
      WritableImage without = OnScreen.picture(node);
      run(node::requestFocus);
      robot.press(KeyCode.SHIFT).type(KeyCode.TAB).release(KeyCode.SHIFT).type(KeyCode.TAB);
      WaitForAsyncUtils.waitForFxEvents();
      assertThat(OnScreen.ask(() -> screen.stage.getScene().getFocusOwner())).isSameAs(node);
      assertThat(OnScreen.difference(without, OnScreen.picture(node)))
          .as(one + " with the keys")
          .isPositive();
    }
  }

  private static String name(Node node) {
    if (node.getAccessibleText() != null) {
      return node.getAccessibleText();
    }
    return node instanceof Labeled labeled ? labeled.getText() : "";
  }

  private static List<Node> reachable(Parent from) {
    List<Node> found = new ArrayList<>();
    for (Node node : from.getChildrenUnmodifiable()) {
      if (node.isVisible()) {
        if (node.isFocusTraversable() && !node.isDisabled()) {
          found.add(node);
        }
        if (node instanceof Parent parent) {
          found.addAll(reachable(parent));
        }
      }
    }
    return found;
  }

  @Test
  void onASmallScreenNothingIsCutOff(FxRobot robot) {
    screen.open(HARBOUR);
    wholeOn(1280, 800);
    robot.clickOn("#unit");
    screen.settled();
    wholeOn(1280, 800);
    robot.clickOn("#sitter");
    robot.clickOn("#slice");
    screen.settled();
    wholeOn(1280, 800);
    screen.photograph("31-small-screen");
    robot.clickOn("#write-files");
    screen.settled();
    wholeOn(1280, 800);
    robot.clickOn("#beside");
    screen.settled();
    robot.clickOn("#write-not-now");
    wholeOn(1280, 800);
  }

  private void wholeOn(double width, double height) {
    assertThat(screen.stage.getScene().getWidth()).isEqualTo(width);
    assertThat(screen.stage.getScene().getHeight()).isEqualTo(height);
    for (Node node : controls(screen.stage.getScene().getRoot())) {
      Bounds at = OnScreen.ask(() -> node.localToScene(node.getBoundsInLocal()));
      assertThat(at.getMinX()).as(node.toString()).isGreaterThanOrEqualTo(-1);
      assertThat(at.getMaxX()).as(node.toString()).isLessThanOrEqualTo(width + 1);
      assertThat(at.getMaxY()).as(node.toString()).isLessThanOrEqualTo(height + 1);
      if (node instanceof Labeled labeled) {
        Text drawn = (Text) labeled.lookup(".text");
        if (drawn != null && labeled.getGraphic() == null) {
          assertThat(drawn.getText()).isEqualTo(labeled.getText());
        }
      }
    }
  }

  /** Words and fields that are in sight, but not what a scroll pane may move out of it. */
  private static List<Node> controls(Parent from) {
    List<Node> found = new ArrayList<>();
    for (Node node : from.getChildrenUnmodifiable()) {
      if (!node.isVisible() || node instanceof ScrollPane) {
        continue;
      }
      if (node instanceof Labeled || node instanceof TextInputControl) {
        found.add(node);
      } else if (node instanceof Parent parent) {
        found.addAll(controls(parent));
      }
    }
    return found;
  }

  @Test
  void ticketsAreWideEnoughToBeReadToTheEnd(FxRobot robot) {
    screen.open(HARBOUR);
    List<Labeled> words =
        robot.lookup(".ticket-text").queryAll().stream().map(Labeled.class::cast).toList();
    assertThat(words).hasSizeGreaterThan(3);
    for (Labeled label : words) {
      String drawn = OnScreen.ask(() -> ((Text) label.lookup(".text")).getText());
      assertThat(drawn.replaceAll("\\s", "")).isEqualTo(label.getText().replaceAll("\\s", ""));
    }
  }
}
