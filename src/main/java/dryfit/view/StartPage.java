package dryfit.view;

import dryfit.app.Family;
import dryfit.app.Kept;
import dryfit.app.KernelChoice;
import dryfit.app.OpenChair;
import dryfit.document.Design;
import dryfit.export.picture.Figure;
import dryfit.export.picture.Picture;
import dryfit.export.picture.View;
import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.geometry.VPos;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** What to do when no chair is open: the chairs that come along, as pictures, and those of late. */
final class StartPage extends ScrollPane {
  private static final int WIDE = 250;
  private static final int HIGH = 230;

  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("d MMMM, HH:mm", Locale.ENGLISH);

  private final VBox unsaved = new VBox(8);
  private final Map<Path, Drawn> known;
  private volatile boolean closed;

  /** A chair that was drawn on this page before. */
  record Drawn(String name, Image picture) {}

  /**
   * @param files demo chairs, to be offered as pictures
   * @param known what was drawn before; what is drawn now goes there too, on the window's thread
   * @param open told which chair is chosen
   * @param choose asked for a file on the disk
   * @param begin asked for a new chair
   */
  StartPage(
      List<Path> files,
      Map<Path, Drawn> known,
      List<Path> recent,
      Consumer<Path> open,
      Runnable choose,
      Consumer<Family> begin) {
    this.known = known;
    setFitToWidth(true);
    getStyleClass().add("start");
    Label title = new Label("Which chair is on the bench?");
    title.getStyleClass().add("chair-name");
    Button file = new Button("Open a chair from the disk");
    file.getStyleClass().setAll("pill");
    file.setId("open-file");
    file.setOnAction(e -> choose.run());
    FlowPane buttons = new FlowPane(10, 10, file);
    FlowPane fresh = new FlowPane(10, 10);
    for (Family family : Family.values()) {
      Button kind = new Button(family.word().replace('-', ' '));
      kind.getStyleClass().setAll("pill");
      kind.setId("new-" + family.word());
      kind.setAccessibleText("start a new " + family.word() + ": " + family.about());
      kind.setTooltip(new Tooltip(family.about()));
      kind.setOnAction(e -> begin.accept(family));
      fresh.getChildren().add(kind);
    }
    FlowPane pictures = new FlowPane(18, 18);
    pictures.setId("models");
    unsaved.setId("unsaved");
    unsaved.setVisible(false);
    unsaved.managedProperty().bind(unsaved.visibleProperty());
    VBox page = new VBox(16, title, unsaved, buttons, heading("Start a new chair"), fresh);
    page.getStyleClass().add("start-page");
    if (!recent.isEmpty()) {
      FlowPane late = new FlowPane(10, 8);
      recent.forEach(
          path -> {
            Button word = new Button(path.getFileName().toString());
            word.getStyleClass().setAll("word");
            word.setAccessibleText("open " + path);
            // Two folders may have a file of the same name.
            word.setTooltip(new Tooltip(path.toString()));
            word.setOnAction(e -> open.accept(path));
            late.getChildren().add(word);
          });
      page.getChildren().addAll(heading("Lately open"), late);
    }
    if (!files.isEmpty()) {
      page.getChildren().addAll(heading("Demo chairs, all invented"), pictures);
    }
    setContent(page);
    files.forEach(path -> pictures.getChildren().add(card(path, open)));
    Map<Path, Drawn> there = Map.copyOf(known);
    for (int i = 0; i < files.size(); i++) {
      if (there.containsKey(files.get(i))) {
        hang(there.get(files.get(i)), (Button) pictures.getChildren().get(i));
      }
    }
    List<Path> missing = files.stream().filter(f -> !there.containsKey(f)).toList();
    Thread pen =
        new Thread(() -> draw(missing, files, pictures), "drawing the chairs to choose from");
    pen.setDaemon(true);
    pen.start();
  }

  /**
   * Offers work that was never saved, the latest first.
   *
   * @param goOn told which to go on with
   * @param discard told which nobody wants any more
   */
  void left(List<Kept.Work> works, Consumer<Kept.Work> goOn, Consumer<Kept.Work> discard) {
    unsaved.getChildren().setAll(heading("Not saved yet"));
    for (Kept.Work work : works) {
      String name =
          work.file().map(f -> f.getFileName().toString()).orElse("a new chair without a file");
      String when = WHEN.format(LocalDateTime.ofInstant(work.when(), ZoneId.systemDefault()));
      Button on = new Button("go on with " + name);
      on.getStyleClass().setAll("pill");
      on.setOnAction(e -> goOn.accept(work));
      work.file().ifPresent(f -> on.setTooltip(new Tooltip(f.toString())));
      Label quiet = new Label("of " + when);
      quiet.getStyleClass().add("quiet");
      FlowPane row = new FlowPane(12, 4, on, quiet);
      row.setRowValignment(VPos.CENTER);
      Button away = new Button("throw it away");
      away.getStyleClass().setAll("word");
      away.setAccessibleText("throw away the unsaved work on " + name + " of " + when);
      // What is gone is gone: asked twice.
      away.setOnAction(
          e -> {
            if (away.getText().startsWith("really")) {
              discard.accept(work);
              unsaved.getChildren().remove(row);
              unsaved.setVisible(unsaved.getChildren().size() > 1);
            } else {
              away.setText("really throw it away");
            }
          });
      row.getChildren().add(away);
      unsaved.getChildren().add(row);
    }
    unsaved.setVisible(!works.isEmpty());
  }

  /** Draws no more. */
  void close() {
    closed = true;
  }

  private static Label heading(String text) {
    Label label = new Label(text);
    label.getStyleClass().add("heading");
    return label;
  }

  private static Button card(Path path, Consumer<Path> open) {
    String file = path.getFileName().toString().replaceFirst("\\.json$", "").replace('-', ' ');
    String word = Character.toUpperCase(file.charAt(0)) + file.substring(1);
    ImageView picture = new ImageView();
    picture.setFitWidth(WIDE);
    picture.setFitHeight(HIGH);
    Button card = new Button(word, picture);
    card.setContentDisplay(ContentDisplay.TOP);
    card.getStyleClass().setAll("card");
    card.setAccessibleText("open the demo chair " + word);
    card.setOnAction(e -> open.accept(path));
    return card;
  }

  private void draw(List<Path> missing, List<Path> files, FlowPane into) {
    for (int i = 0; i < missing.size() && !closed; i++) {
      Path file = missing.get(i);
      OpenChair.Opened opened = OpenChair.open(file, Design.AS_DRAWN, KernelChoice.USUAL.kernel());
      if (opened instanceof OpenChair.Ready ready) {
        byte[] png =
            new Picture(Figure.of(ready.chair(), List.of()), List.of())
                .png(View.THREE_QUARTER, WIDE, HIGH);
        Drawn drawn =
            new Drawn(ready.chair().design().name(), new Image(new ByteArrayInputStream(png)));
        Platform.runLater(
            () -> {
              known.put(file, drawn);
              hang(drawn, (Button) into.getChildren().get(files.indexOf(file)));
            });
      }
    }
  }

  private static void hang(Drawn drawn, Button card) {
    card.setText(drawn.name());
    ((ImageView) card.getGraphic()).setImage(drawn.picture());
  }
}
