package dryfit.view;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Something that only the maker can decide, asked where the chair stands. */
final class Question extends VBox {

  /**
   * One thing the maker may say.
   *
   * @param text on the button; with hyphens for blanks it is the button's id
   */
  record Answer(String text, Runnable does) {}

  Question() {
    super(10);
    getStyleClass().add("notice");
    setId("question");
    setMaxSize(520, Region.USE_PREF_SIZE);
    setVisible(false);
  }

  /** Asks; any answer ends it. */
  void ask(String what, List<Answer> answers) {
    Label text = new Label(what);
    text.setWrapText(true);
    FlowPane buttons = new FlowPane(10, 8);
    List<Button> all = new ArrayList<>();
    for (Answer answer : answers) {
      Button button = new Button(answer.text());
      button.getStyleClass().setAll("pill");
      button.setId(answer.text().replace(' ', '-'));
      button.setOnAction(
          e -> {
            setVisible(false);
            answer.does().run();
          });
      all.add(button);
    }
    buttons.getChildren().setAll(all);
    getChildren().setAll(text, buttons);
    setVisible(true);
  }

  /** Asks no more. */
  void end() {
    setVisible(false);
  }
}
