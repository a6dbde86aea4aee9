package dryfit.view;

import dryfit.app.Kept;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Offers work that was not saved before the program ended. */
final class LeftBehind extends VBox {
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("d MMMM, HH:mm", Locale.ENGLISH);

  private final Session session;
  private final Label text = new Label();

  LeftBehind(Session session) {
    super(10);
    this.session = session;
    getStyleClass().add("notice");
    setId("left-behind");
    setMaxSize(520, Region.USE_PREF_SIZE);
    text.setWrapText(true);
    setVisible(false);
  }

  void show(Optional<Kept.Work> work) {
    setVisible(work.isPresent());
    if (work.isEmpty()) {
      return;
    }
    LocalDateTime when = LocalDateTime.ofInstant(work.get().when(), ZoneId.systemDefault());
    text.setText(
        "There is work on this chair of "
            + WHEN.format(when)
            + " that was not saved."
            + (work.get().diskMoved() ? " The file has been changed since then." : ""));
    Button back = button("bring it back", "bring-back", () -> session.bringBack(work.get()));
    Button away = button("throw it away", "throw-away", () -> session.discard(work.get()));
    HBox buttons = new HBox(10, back, away);
    buttons.setAlignment(Pos.CENTER_LEFT);
    getChildren().setAll(text, buttons);
  }

  private static Button button(String text, String id, Runnable does) {
    Button button = new Button(text);
    button.getStyleClass().setAll("pill");
    button.setId(id);
    button.setOnAction(e -> does.run());
    return button;
  }
}
