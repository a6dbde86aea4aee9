package dryfit.view;

import dryfit.geometry.Vec3;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** The chair pulled apart along the way it goes together, and which parts do not come apart. */
final class Pulling {
  private final Session session;
  private final ChairView chair;
  private final Slider slider = Seeing.slider("how far the parts are pulled apart");
  private final Label told = new Label();
  private final HBox row;
  private Shown shown;
  private Optional<Apart> order = Optional.empty();

  Pulling(Session session, ChairView chair) {
    this.session = session;
    this.chair = chair;
    slider.setId("apart");
    slider.setMinWidth(60);
    slider.valueProperty().addListener(o -> pull());
    row = new HBox(14, fixed("together"), slider, fixed("pulled apart"));
    row.setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(slider, Priority.ALWAYS);
    told.setId("apart-told");
    told.setWrapText(true);
    told.setMinHeight(Label.USE_PREF_SIZE);
    told.managedProperty().bind(told.visibleProperty());
    say("");
  }

  HBox row() {
    return row;
  }

  /** What does not come apart, in words; out of sight while there is nothing to say. */
  Label told() {
    return told;
  }

  Slider slider() {
    return slider;
  }

  void show(Shown next) {
    boolean other = !next.is(shown);
    shown = next;
    if (other) {
      order = Optional.empty();
      pull();
    }
  }

  /** Everything together again. */
  void end() {
    slider.setValue(0);
  }

  private void pull() {
    if (shown == null) {
      return;
    }
    if (slider.getValue() == 0) {
      say("");
      chair.see(l -> l.moving(List.of()));
    } else if (order.isPresent()) {
      List<Vec3> moved = order.get().moved(slider.getValue());
      say(locked(order.get()));
      chair.see(l -> l.moving(moved));
    } else {
      say("Working out how it comes apart.");
      Shown of = shown;
      session.workOut(
          "apart",
          () -> Apart.of(of.chair()),
          found -> {
            if (of.is(shown)) {
              order = Optional.of(found);
              pull();
            }
          });
    }
  }

  private String locked(Apart apart) {
    if (apart.locked().isEmpty()) {
      return "";
    }
    List<String> names =
        apart.locked().stream()
            .map(i -> Words.part(shown.chair().parts().get(i).label()))
            .toList();
    return (apart.shared() ? "These claim the same wood and stay as one: " : "These lock and stay as one: ")
        + String.join("; ", names)
        + (apart.moves() ? ". The rest comes apart." : ".");
  }

  private void say(String text) {
    told.setText(text);
    told.setVisible(!text.isEmpty());
  }

  private static Label fixed(String text) {
    Label label = new Label(text);
    label.setMinWidth(Label.USE_PREF_SIZE);
    return label;
  }
}
