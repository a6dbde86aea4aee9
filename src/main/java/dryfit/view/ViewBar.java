package dryfit.view;

import dryfit.export.picture.View;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;

/** Where to look from, in plain words. */
final class ViewBar extends FlowPane {

  ViewBar(ChairView chair) {
    super(11, 4);
    getStyleClass().add("view-bar");
    for (View view : View.values()) {
      ToggleButton word = new ToggleButton(view.word());
      word.getStyleClass().setAll("word");
      word.setId("view-" + view.word());
      word.setAccessibleText("look from: " + view.word());
      word.setOnAction(
          e -> {
            word.setSelected(true);
            chair.go(view);
          });
      chair.plain().addListener((o, was, now) -> word.setSelected(now == view));
      getChildren().add(word);
    }
  }
}
