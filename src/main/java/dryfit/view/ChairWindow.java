package dryfit.view;

import dryfit.app.Family;
import dryfit.app.Kept;
import dryfit.app.OnDisk;
import dryfit.app.RecentFiles;
import dryfit.app.Saving;
import dryfit.app.StartChair;
import dryfit.app.StateFolder;
import dryfit.build.Part;
import dryfit.document.Design;
import dryfit.document.Problem;
import dryfit.export.TextStyle;
import dryfit.fit.Finding;
import dryfit.measure.Length;
import java.awt.image.BufferedImage;
import java.io.File;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.Pos;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.paint.Color;
import javafx.stage.FileChooser;
import javafx.stage.Stage;

/** The bench: the chair in the middle, what is known about it around it. */
final class ChairWindow {
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("d MMMM, HH:mm", Locale.ENGLISH);

  private final Stage stage;
  private final RecentFiles recent;
  private final Session session;
  private final ChairView chair = new ChairView();
  private final BorderPane bench = new BorderPane();
  private final Label notice = new Label();
  private final BorderPane root = new BorderPane();
  private final ObjectProperty<Length.Unit> unit = new SimpleObjectProperty<>(Length.Unit.MM);
  private final DimensionsPanel dimensions;
  private final JointCard card;
  private final Tickets tickets = new Tickets(this::open);
  private final Seeing seeing;
  private final Measuring measuring = new Measuring(chair);
  private final Question question = new Question();
  private final BorderPane middle;
  private Optional<SideBySide> beside = Optional.empty();
  private Design.LengthUnit written;
  private StartPage start;

  /** From how far a joint is looked at, mm. */
  private static final double NEAR = 900;

  ChairWindow(Stage stage, StateFolder state) {
    this.stage = stage;
    this.recent = new RecentFiles(state);
    this.session = new Session(ChairView.hasDepth(), state);
    this.dimensions = new DimensionsPanel(session);
    this.card = new JointCard(session, chair, this::open);
    this.seeing = new Seeing(session, chair);
    stage.setTitle("Dryfit");
    Scene scene = new Scene(root, 1280, 800);
    scene
        .getStylesheets()
        .add(ChairWindow.class.getResource("/dryfit/view/window.css").toExternalForm());
    root.getStyleClass().add("bench");
    stage.setScene(scene);
    stage.setMinWidth(900);
    stage.setMinHeight(600);
    Header header = new Header(session, unit, this::save);
    header.add("side by side", "beside", this::besideOrAlone);
    header.add("save a picture", "save-picture", this::savePicture);
    header.add("light or dark", "light-or-dark", this::lightOrDark);
    header.add("another chair", "another-chair", this::offer);
    bench.setTop(header);
    middle = middle();
    bench.setCenter(middle);
    bench.setLeft(dimensions);
    bench.setRight(card);
    bench.setBottom(tickets);
    session.shown().addListener((o, was, now) -> show(now));
    unit.addListener((o, was, now) -> show(session.shown().get()));
    chair.onPick(this::pick);
    session.problems().addListener((o, was, now) -> tell(now));
    session.said().addListener((o, was, now) -> say(now));
    session.left().addListener((o, was, now) -> offer(now));
    keys(scene);
  }

  private void show(Shown shown) {
    if (shown == null) {
      return;
    }
    if (shown.design().unit() != written) {
      written = shown.design().unit();
      unit.set(written.printed());
    }
    TextStyle style = new TextStyle(unit.get(), 64, false, false);
    chair.show(shown);
    seeing.show(shown);
    dimensions.show(shown, unit.get());
    measuring.show(style);
    if (shown.fit().isPresent()) {
      tickets.show(shown, style);
      card.show(shown, style);
      fillBeside();
    }
  }

  private void besideOrAlone() {
    if (beside.isPresent()) {
      beside = Optional.empty();
      bench.setCenter(middle);
    } else {
      beside = Optional.of(new SideBySide());
      bench.setCenter(beside.get());
      fillBeside();
    }
  }

  private void fillBeside() {
    TextStyle style = new TextStyle(unit.get(), 64, false, false);
    Shown now = session.shown().get();
    if (beside.isPresent() && now != null) {
      SideBySide open = beside.get();
      session.variants(now.document(), SideBySide.MOST, found -> open.show(found, style));
    }
  }

  private void pick(Optional<ChairView.Touch> touch) {
    if (measuring.isOn()) {
      touch.map(ChairView.Touch::at).ifPresent(measuring::pick);
      return;
    }
    chair.see(l -> l.choosing(touch.map(t -> List.of(t.part())).orElse(List.of())));
    card.part(touch.map(ChairView.Touch::part));
  }

  /** Takes up a finding: goes there, points out its parts, shows its joint. */
  private void open(Finding finding) {
    chair.see(l -> l.choosing(finding.parts()));
    chair.fly(finding.at(), NEAR);
    if (!finding.joints().isEmpty()) {
      card.joint(finding.joints().get(0));
    } else if (!finding.parts().isEmpty()) {
      card.part(Optional.of(finding.parts().get(0)));
    }
  }

  private void open(String joint) {
    session
        .shown()
        .get()
        .joint(joint)
        .ifPresent(
            fit -> {
              List<Part> parts = session.shown().get().chair().parts();
              chair.see(
                  l ->
                      l.choosing(
                          List.of(
                              parts.get(fit.joint().tenoned()).label(),
                              parts.get(fit.joint().mortised()).label())));
              chair.fly(fit.joint().at(), NEAR);
              card.joint(joint);
            });
  }

  private BorderPane middle() {
    notice.getStyleClass().add("notice");
    notice.setId("notice");
    notice.setWrapText(true);
    notice.setVisible(false);
    notice.setMaxWidth(560);
    notice.setOnMouseClicked(e -> notice.setVisible(false));
    ViewBar above = new ViewBar(chair);
    Region between = new Region();
    between.setMinWidth(2);
    above.getChildren().add(between);
    above.getChildren().addAll(seeing.words());
    above.getChildren().add(measuring.word());
    if (!ChairView.hasDepth()) {
      Label flat = new Label("This machine draws no 3D: the chair is drawn on paper instead.");
      flat.getStyleClass().add("quiet");
      above.getChildren().add(flat);
    }
    StackPane floor = new StackPane(chair, measuring, notice, question);
    StackPane.setAlignment(question, Pos.TOP_CENTER);
    StackPane.setAlignment(notice, Pos.CENTER);
    floor.setMinSize(0, 0);
    return new BorderPane(floor, above, null, seeing.sliders(), null);
  }

  private void keys(Scene scene) {
    scene
        .getAccelerators()
        .put(new KeyCodeCombination(KeyCode.Z, KeyCombination.SHORTCUT_DOWN), session::undo);
    scene
        .getAccelerators()
        .put(
            new KeyCodeCombination(
                KeyCode.Z, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN),
            session::redo);
    scene
        .getAccelerators()
        .put(new KeyCodeCombination(KeyCode.S, KeyCombination.SHORTCUT_DOWN), this::save);
  }

  /** Opens a chair. */
  void open(Path file) {
    bench(file.getFileName().toString());
    recent.opened(file);
    session.open(file);
  }

  /** Clears the bench for another chair. */
  private void bench(String title) {
    if (start != null) {
      start.close();
    }
    seeing.plain();
    chair.clear();
    card.part(Optional.empty());
    measuring.clear();
    written = null;
    beside = Optional.empty();
    bench.setCenter(middle);
    stage.setTitle(title + " · Dryfit");
    root.setCenter(bench);
  }

  private void lightOrDark() {
    if (!root.getStyleClass().remove("dark-bench")) {
      root.getStyleClass().add("dark-bench");
    }
  }

  private void savePicture() {
    Shown shown = session.shown().get();
    if (shown == null || !ChairView.hasDepth()) {
      say("A picture of what is seen needs 3D; the command picture draws one without.");
      return;
    }
    FileChooser files = new FileChooser();
    files.setTitle("Save a picture");
    files.setInitialFileName("chair.png");
    Optional.ofNullable(files.showSaveDialog(stage))
        .map(File::toPath)
        .ifPresent(
            path -> {
              int width = 2 * (int) chair.getWidth();
              int height = 2 * (int) chair.getHeight();
              BufferedImage picture =
                  PictureSaver.draw(chair, shown, width, height, Color.web("#f4efe4"));
              session.workOut(
                  "", () -> PictureSaver.write(picture, path), why -> why.ifPresent(this::say));
            });
  }

  /** Saves to the chair's file, or asks for one. */
  private void save() {
    session.save(this::saved);
  }

  private void saved(Saving saving) {
    if (saving instanceof Saving.NeedsName) {
      FileChooser files = new FileChooser();
      files.setTitle("Save the chair");
      files.setInitialFileName("chair.json");
      Optional.ofNullable(files.showSaveDialog(stage))
          .map(File::toPath)
          .ifPresent(
              path -> {
                recent.opened(path);
                stage.setTitle(path.getFileName() + " · Dryfit");
                session.saveAs(path, this::saved);
              });
    } else if (saving instanceof Saving.Failed failed) {
      say("Not saved: " + failed.reason());
    } else if (saving instanceof Saving.Moved moved
        && moved.disk() instanceof OnDisk.Changed theirs) {
      question.ask(
          "Not saved: someone else has changed the file since it was opened.",
          List.of(
              new Question.Answer("keep mine", () -> session.keepMine(theirs, this::saved)),
              new Question.Answer("take theirs", () -> session.takeTheirs(theirs)),
              new Question.Answer("decide later", () -> {})));
    } else if (saving instanceof Saving.Moved) {
      say("Not saved: the file cannot be read any more.");
    }
  }

  /** Offers work that was not saved before the program ended. */
  private void offer(Optional<Kept.Work> work) {
    if (work.isEmpty()) {
      question.end();
      return;
    }
    LocalDateTime when = LocalDateTime.ofInstant(work.get().when(), ZoneId.systemDefault());
    question.ask(
        "There is work on this chair of "
            + WHEN.format(when)
            + " that was not saved."
            + (work.get().diskMoved() ? " The file has been changed since then." : ""),
        List.of(
            new Question.Answer("bring it back", () -> session.bringBack(work.get())),
            new Question.Answer("throw it away", () -> session.discard(work.get()))));
  }

  private void say(String text) {
    notice.setText(text);
    notice.setVisible(!text.isEmpty());
  }

  /** Offers chairs to open. */
  void offer() {
    start = new StartPage(Path.of("models"), recent.all(), this::open, this::choose, this::begin);
    root.setCenter(start);
  }

  private void choose() {
    FileChooser files = new FileChooser();
    files.setTitle("Open a chair");
    files.getExtensionFilters().add(new FileChooser.ExtensionFilter("chairs", "*.json"));
    Optional<File> file = Optional.ofNullable(files.showOpenDialog(stage));
    file.map(File::toPath).ifPresent(this::open);
  }

  private void begin(Family family) {
    Length.Unit usual = Length.Unit.MM;
    bench("new " + family.word());
    session.begin("new " + family.word(), StartChair.of(family, usual).document().text());
  }

  private void tell(List<Problem> problems) {
    if (problems.isEmpty()) {
      say("");
      return;
    }
    Problem first = problems.get(0);
    String more = problems.size() == 1 ? "" : " (and " + (problems.size() - 1) + " more)";
    say((first.line() > 0 ? "Line " + first.line() + ": " : "") + first.message() + more);
  }

  Session session() {
    return session;
  }

  ChairView chair() {
    return chair;
  }

  void close() {
    session.close();
  }
}
