package dryfit.view;

import dryfit.app.Exporting;
import dryfit.app.Exporting.Outcome;
import dryfit.app.Exporting.What;
import dryfit.app.FileNames;
import dryfit.app.KernelChoice;
import dryfit.export.TextStyle;
import dryfit.export.paper.Page;
import dryfit.fit.FitReport;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Files of the chair to be written: what, and into which folder; then how far it is. */
final class WriteSheet extends VBox {
  private static final double WIDE = 520;

  /** As many files are named. */
  private static final int NAMED = 8;

  private final Session session;
  private final Desk desk;
  private final ProgressBar bar = new ProgressBar();
  private final Label how = new Label();
  private Optional<AtomicBoolean> stop = Optional.empty();
  private Optional<Path> chosen = Optional.empty();
  private Optional<Page.Paper> paper = Optional.empty();
  private TextStyle style;

  WriteSheet(Session session, Desk desk) {
    super(9);
    this.session = session;
    this.desk = desk;
    getStyleClass().addAll("notice", "asks");
    setId("write-sheet");
    setMaxSize(WIDE, Region.USE_PREF_SIZE);
    setVisible(false);
    bar.setPrefWidth(WIDE - 50);
    bar.setAccessibleText("how far the writing is");
    how.setId("writing");
    how.setWrapText(true);
  }

  /** Asks what is to be written; while something is being written, shows how far it is. */
  void ask(TextStyle with) {
    style = with;
    if (stop.isEmpty() && session.shown().get() != null) {
      offer();
    }
    setVisible(session.shown().get() != null);
  }

  /** Whether what is on the bench is the chair that the document says. */
  private boolean isBuilt() {
    return session.problems().get().isEmpty();
  }

  /** What one should know before cutting by these files; empty if all is well. */
  private String warning() {
    FitReport report = session.shown().get().fit().orElse(null);
    return report == null || report.fits()
        ? ""
        : "This chair " + Words.verdict(report) + ". The files will be of it all the same.";
  }

  /** Puts it away for another chair; what is being written is broken off. */
  void end() {
    stop.ifPresent(flag -> flag.set(true));
    chosen = Optional.empty();
    setVisible(false);
  }

  private void offer() {
    if (!isBuilt()) {
      refuse();
      return;
    }
    List<Node> rows = new ArrayList<>();
    rows.add(line("Write files of this chair, as it is now", "heading"));
    if (!warning().isEmpty()) {
      Label warning = line(warning(), "refused");
      warning.setId("write-warning");
      rows.add(warning);
    }
    for (What what : What.values()) {
      Button word = pill(what.word(), () -> write(what));
      Label about = line(what.about(), "quiet");
      FlowPane row = new FlowPane(10, 2, word, about);
      rows.add(row);
    }
    rows.add(papers());
    Label into = line("into " + folder(), "quiet");
    into.setId("write-into");
    rows.add(into);
    rows.add(
        new FlowPane(
            10, 8, pill("another folder", this::choose), pill("not now", () -> setVisible(false))));
    getChildren().setAll(rows);
  }

  /** Files of the last chair that could be built would be of sizes that nobody sees any more. */
  private void refuse() {
    Label why =
        line(
            "As it is written the chair cannot be built, so there is nothing to write.", "refused");
    why.setId("write-warning");
    getChildren().setAll(why, new FlowPane(pill("not now", () -> setVisible(false))));
  }

  /** What lies in the printer: for the bench book, templates and boards. */
  private Node papers() {
    FlowPane row = new FlowPane(10, 2, line("printed on", "quiet"));
    for (Page.Paper each : Page.Paper.values()) {
      ToggleButton word = new ToggleButton(each.word());
      word.getStyleClass().setAll("pill");
      word.setId("paper-" + each.word());
      word.setAccessibleText("bench book, templates and boards on " + each.word() + " paper");
      word.setSelected(each == paper());
      word.setOnAction(
          e -> {
            paper = Optional.of(each);
            offer();
          });
      row.getChildren().add(word);
    }
    return row;
  }

  private Page.Paper paper() {
    return paper.orElse(Exporting.usualPaper(session.shown().get().design()));
  }

  /** Beside the chair's own file, in a folder named as the terminal names it. */
  private Path folder() {
    Shown shown = session.shown().get();
    Path usual = FileNames.folder(shown.design());
    Path beside =
        session
            .state()
            .get()
            .file()
            .map(file -> file.toAbsolutePath().normalize().resolveSibling(usual))
            .orElse(usual.toAbsolutePath());
    return chosen.orElse(beside);
  }

  private void choose() {
    desk.folder("Folder for the files", folder())
        .ifPresent(
            folder -> {
              chosen = Optional.of(folder);
              offer();
            });
  }

  private void write(What what) {
    if (!isBuilt()) {
      refuse();
      return;
    }
    Shown shown = session.shown().get();
    Path folder = folder();
    AtomicBoolean flag = new AtomicBoolean();
    stop = Optional.of(flag);
    bar.setProgress(ProgressBar.INDETERMINATE_PROGRESS);
    how.setText("Writing " + what.word() + " …");
    getChildren().setAll(how, bar, pill("break off", () -> flag.set(true)));
    Exporting exporting =
        new Exporting(shown.document(), shown.chair(), style, KernelChoice.USUAL.kernel(), paper());
    Thread writer =
        new Thread(
            () -> {
              Outcome outcome = outcome(exporting, what, folder, flag);
              Platform.runLater(() -> ended(outcome));
            },
            "writing files");
    writer.setDaemon(true);
    writer.start();
  }

  private Outcome outcome(Exporting exporting, What what, Path folder, AtomicBoolean flag) {
    try {
      return exporting.write(
          what,
          folder,
          (done, all) -> {
            Platform.runLater(() -> far(what, done, all));
            return !flag.get();
          });
    } catch (RuntimeException | StackOverflowError fault) {
      session.fault(fault);
      return new Outcome.Failed("a fault of ours");
    }
  }

  private void far(What what, int done, OptionalInt all) {
    if (stop.isPresent()) {
      String of = all.isPresent() ? " of " + all.getAsInt() : "";
      how.setText("Writing " + what.word() + ": " + done + of + (done == 1 ? " file" : " files"));
      bar.setProgress(
          all.isPresent() ? (double) done / all.getAsInt() : ProgressBar.INDETERMINATE_PROGRESS);
    }
  }

  private void ended(Outcome outcome) {
    stop = Optional.empty();
    List<Node> rows = new ArrayList<>();
    FlowPane buttons = new FlowPane(10, 8);
    how.setText(words(outcome));
    rows.add(how);
    if (outcome instanceof Outcome.Done done) {
      if (!done.notes().isEmpty()) {
        rows.add(notes(done.notes()));
      }
      rows.add(line(names(done), "quiet"));
      buttons.getChildren().add(pill("show in folder", () -> show(done.folder())));
    }
    buttons.getChildren().add(pill("write more", this::offer));
    buttons.getChildren().add(pill("done", () -> setVisible(false)));
    rows.add(buttons);
    getChildren().setAll(rows);
  }

  /** A desktop without a file manager shows nothing and does not say so: then this helps. */
  private void show(Path folder) {
    desk.show(folder);
    ClipboardContent path = new ClipboardContent();
    path.putString(folder.toString());
    Clipboard.getSystemClipboard().setContent(path);
    if (!how.getText().endsWith(COPIED)) {
      how.setText(how.getText() + COPIED);
    }
  }

  private static final String COPIED = "\nThe folder’s path is ready to be pasted, too.";

  /** The first of what was written. */
  private static String names(Outcome.Done done) {
    List<String> names =
        done.files().stream().map(f -> f.getFileName().toString()).sorted().toList();
    int more = names.size() - NAMED;
    String first = String.join(", ", names.subList(0, Math.min(NAMED, names.size())));
    return more > 0 ? first + " and " + more + " more" : first;
  }

  private static String words(Outcome outcome) {
    if (outcome instanceof Outcome.Done done) {
      int files = done.files().size();
      return files + (files == 1 ? " file is in " : " files are in ") + done.folder();
    }
    return outcome instanceof Outcome.Failed failed
        ? "Nothing was written: " + failed.reason()
        : "Broken off; nothing was written.";
  }

  private static Node notes(List<String> notes) {
    VBox list = new VBox(3);
    notes.forEach(note -> list.getChildren().add(line(note, "quiet")));
    ScrollPane scroll = new ScrollPane(list);
    scroll.setFitToWidth(true);
    scroll.setMaxHeight(150);
    scroll.setAccessibleText("what should be known of the files");
    scroll.getStyleClass().add("side-scroll");
    return scroll;
  }

  private static Label line(String text, String style) {
    Label label = new Label(text);
    label.getStyleClass().add(style);
    label.setWrapText(true);
    label.setMaxWidth(WIDE - 40);
    label.setMinHeight(USE_PREF_SIZE);
    return label;
  }

  private static Button pill(String text, Runnable does) {
    Button button = new Button(text);
    button.getStyleClass().setAll("pill");
    button.setId("write-" + text.replace(' ', '-'));
    button.setOnAction(e -> does.run());
    return button;
  }
}
