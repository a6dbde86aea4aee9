package dryfit.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
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
    getStyleClass().addAll("notice", "asks");
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
      all.add(
          pill(
              answer.text(),
              () -> {
                setVisible(false);
                answer.does().run();
              }));
    }
    buttons.getChildren().setAll(all);
    getChildren().setAll(text, buttons);
    setVisible(true);
  }

  /**
   * Asks for a few words; ends when they are taken.
   *
   * @param does on the button; with hyphens for blanks it is the button's id
   * @param take told what was written, and whom to tell why it cannot be
   */
  void write(String what, String does, BiConsumer<String, Consumer<Optional<String>>> take) {
    write(what, "", does, take);
  }

  /** The same, with words that are there to begin with. */
  void write(
      String what, String usual, String does, BiConsumer<String, Consumer<Optional<String>>> take) {
    Label text = new Label(what);
    text.setWrapText(true);
    TextField field = new TextField(usual);
    field.setId("written");
    field.getStyleClass().add("find");
    field.setAccessibleText(what);
    Label why = new Label();
    why.getStyleClass().add("refused");
    why.setWrapText(true);
    Button done = pill(does, () -> taken(field, why, take));
    field.setOnAction(e -> done.fire());
    Button leave = pill("not now", () -> setVisible(false));
    getChildren().setAll(text, field, new FlowPane(10, 8, done, leave), why);
    setVisible(true);
    field.requestFocus();
  }

  private void taken(
      TextField field, Label why, BiConsumer<String, Consumer<Optional<String>>> take) {
    String written = field.getText().strip();
    if (written.isEmpty()) {
      why.setText("Write something first.");
      return;
    }
    take.accept(
        written,
        refused -> {
          why.setText(refused.orElse(""));
          setVisible(refused.isPresent());
        });
  }

  private static Button pill(String text, Runnable does) {
    Button button = new Button(text);
    button.getStyleClass().setAll("pill");
    button.setId(text.replace(' ', '-'));
    button.setOnAction(e -> does.run());
    return button;
  }

  /** Asks no more. */
  void end() {
    setVisible(false);
  }
}
