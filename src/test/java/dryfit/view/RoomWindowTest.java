package dryfit.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.text.Text;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.testfx.api.FxRobot;

/** On a small screen everything has its room: nothing is cut off, nothing lies over another. */
class RoomWindowTest extends WindowTest {
  @ParameterizedTest
  @CsvSource({
    "harbour-armchair, deep tenons, 1280, 800",
    "kiln-stool, thin seat, 900, 600",
    "weir-settee, as drawn, 1280, 800",
    "lantern-side-chair, unmitred, 1280, 740",
  })
  void nothingIsCutOffOrOverlaps(
      String model, String variant, double width, double height, FxRobot robot) {
    OnScreen.ask(
        () -> {
          screen.stage.setWidth(width);
          screen.stage.setHeight(height);
          return null;
        });
    screen.open(Path.of("models/" + model + ".json"));
    OnScreen.ask(
        () -> {
          screen.window.session().choose(variant);
          return null;
        });
    screen.settled();
    screen.photograph("30-room-" + model);
    assertThat(OnScreen.ask(this::faults)).isEmpty();
    Node ticket =
        OnScreen.ask(
            () ->
                screen.stage.getScene().getRoot().lookupAll(".ticket").stream()
                    .filter(n -> n.isVisible())
                    .findFirst()
                    .orElseThrow());
    robot.clickOn(ticket);
    screen.landed();
    screen.settled();
    screen.photograph("31-room-finding-" + model);
    assertThat(OnScreen.ask(this::faults)).as("with a finding taken up").isEmpty();
    List<Double> tops =
        OnScreen.ask(
            () ->
                screen.stage.getScene().getRoot().lookupAll(".view-bar > .word").stream()
                    .map(n -> n.getBoundsInParent().getMaxY())
                    .distinct()
                    .toList());
    if (width >= 1280) {
      assertThat(tops).as("the views are in one row").hasSize(1);
    }
  }

  private List<String> faults() {
    List<String> faults = new ArrayList<>();
    look(screen.stage.getScene().getRoot(), faults);
    return faults;
  }

  private void look(Parent parent, List<String> faults) {
    // What can be scrolled may be out of sight, but what is in it must not be cut short either.
    List<Node> seen = parent.getChildrenUnmodifiable().stream().filter(n -> n.isVisible()).toList();
    for (Node node : seen) {
      if (node instanceof Labeled labeled && !labeled.getText().isEmpty()) {
        boolean whole =
            labeled.getChildrenUnmodifiable().stream()
                .anyMatch(c -> c instanceof Text t && t.getText().equals(labeled.getText()));
        if (!whole) {
          faults.add("cut short: " + labeled.getText());
        }
        beyond(labeled, faults);
      } else if (node instanceof Parent inner) {
        look(inner, faults);
      }
    }
    for (int i = 0; i < seen.size(); i++) {
      for (int j = i + 1; j < seen.size(); j++) {
        if (seen.get(i) instanceof Labeled a
            && seen.get(j) instanceof Labeled b
            && overlap(a.getBoundsInParent(), b.getBoundsInParent())) {
          faults.add("over each other: " + a.getText() + ", " + b.getText());
        }
      }
    }
  }

  private void beyond(Labeled labeled, List<String> faults) {
    for (Node n = labeled.getParent(); n != null; n = n.getParent()) {
      if (n instanceof ScrollPane) {
        return;
      }
    }
    Bounds at = labeled.localToScene(labeled.getBoundsInLocal());
    if (at.getMinX() < 0
        || at.getMinY() < 0
        || at.getMaxX() > screen.stage.getScene().getWidth()
        || at.getMaxY() > screen.stage.getScene().getHeight()) {
      faults.add("beyond the window: " + labeled.getText());
    }
  }

  private static boolean overlap(Bounds a, Bounds b) {
    // Edges may touch.
    return a.getMinX() + 1 < b.getMaxX()
        && b.getMinX() + 1 < a.getMaxX()
        && a.getMinY() + 1 < b.getMaxY()
        && b.getMinY() + 1 < a.getMaxY();
  }
}
