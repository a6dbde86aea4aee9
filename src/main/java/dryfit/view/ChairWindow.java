package dryfit.view;

import dryfit.app.Ahead;
import dryfit.app.DemoChairs;
import dryfit.app.Family;
import dryfit.app.Kept;
import dryfit.app.OnDisk;
import dryfit.app.RecentFiles;
import dryfit.app.Saving;
import dryfit.app.StartChair;
import dryfit.app.StateFolder;
import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.build.Shelf;
import dryfit.document.Design;
import dryfit.document.Difference;
import dryfit.document.Document;
import dryfit.document.Problem;
import dryfit.document.Reading;
import dryfit.export.Freeing;
import dryfit.export.TextStyle;
import dryfit.fit.DryFit;
import dryfit.fit.Finding;
import dryfit.geometry.Vec3;
import dryfit.measure.Length;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.paint.Color;
import javafx.stage.Screen;
import javafx.stage.Stage;

/** The bench: the chair in the middle, what is known about it around it. */
final class ChairWindow {
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("d MMMM, HH:mm", Locale.ENGLISH);

  private final Stage stage;
  private final Desk desk;
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
  private final Ring ring = new Ring(chair);
  private final Question question = new Question();
  private final WriteSheet sheet;
  private final Header header;
  private final GoingTogether going;
  private final Label opening = new Label();
  private final Label old = new Label("This is the last chair that could be built.");
  private final ViewBar above = new ViewBar(chair);
  private final BorderPane middle;
  private final StackPane over;
  private Optional<SideBySide> beside = Optional.empty();
  private Design.LengthUnit written;
  private StartPage start;
  private boolean furnished;
  private final Map<Path, StartPage.Drawn> drawn = new HashMap<>();

  /** From how far a joint is looked at, mm. */
  private static final double NEAR = 900;

  /** Of a chair that is no longer what the document says. */
  private static final double FADED = 0.4;

  /** About as high as what comes there, pixels. */
  private static final double HEADER = 70;

  private static final double BAR = 44;

  /** A bench with all there is around the chair. */
  ChairWindow(Stage stage, StateFolder state, Desk desk) {
    this(stage, state, desk, Ahead.nothing());
    furnish();
  }

  /**
   * A bench with nothing but the chair and room for what comes with {@link #furnish}: so the first
   * thing that is drawn is wood.
   *
   * @param ahead what has been built of the first chair already
   */
  ChairWindow(Stage stage, StateFolder state, Desk desk, Supplier<Shelf> ahead) {
    this.stage = stage;
    this.desk = desk;
    this.recent = new RecentFiles(state);
    this.session = new Session(ChairView.hasDepth(), state, ahead);
    this.dimensions = new DimensionsPanel(session);
    this.card = new JointCard(session, chair, this::open);
    this.seeing = new Seeing(session, chair);
    this.sheet = new WriteSheet(session, desk);
    this.going = new GoingTogether(session::fault, this::assured);
    stage.setTitle("Dryfit");
    Rectangle2D room = Screen.getPrimary().getVisualBounds();
    Scene scene = new Scene(root, Math.min(1280, room.getWidth()), Math.min(800, room.getHeight()));
    scene
        .getStylesheets()
        .add(ChairWindow.class.getResource("/dryfit/view/window.css").toExternalForm());
    root.getStyleClass().add("bench");
    stage.setScene(scene);
    stage.setMinWidth(900);
    stage.setMinHeight(600);
    header = new Header(session, unit, this::save, this::anotherVariant);
    header.add("side by side", "beside", this::besideOrAlone);
    header.add("save a picture", "save-picture", this::savePicture);
    header.add("write files", "write-files", () -> sheet.ask(style()));
    header.add("light or dark", "light-or-dark", this::lightOrDark);
    header.add("another chair", "another-chair", this::offer);
    middle = middle();
    over = new StackPane(middle, notice, question, sheet);
    over.getChildren().stream()
        .skip(1)
        .forEach(n -> StackPane.setMargin(n, new Insets(64, 12, 12, 12)));
    StackPane.setAlignment(question, Pos.TOP_CENTER);
    StackPane.setAlignment(notice, Pos.TOP_CENTER);
    StackPane.setAlignment(sheet, Pos.TOP_CENTER);
    over.setMinSize(0, 0);
    bench.setCenter(over);
    header.trying(going.looking());
    bench.setTop(room(0, HEADER));
    bench.setLeft(room(DimensionsPanel.WIDTH, 0));
    bench.setRight(room(JointCard.WIDTH, 0));
    bench.setBottom(room(0, Tickets.HEIGHT));
    session.shown().addListener((o, was, now) -> show(now));
    unit.addListener((o, was, now) -> showAgain());
    chair.onPick(this::pick);
    // In a plain view it is the whole chair that is looked at.
    chair
        .plain()
        .addListener(
            (o, was, now) -> {
              if (now != null) {
                seeing.clear(false, false);
                ring.put(Optional.empty());
              }
            });
    session.problems().addListener((o, was, now) -> tell(now));
    session.unbuilt().addListener((o, was, now) -> show(now));
    session.said().addListener((o, was, now) -> say(now));
    session.left().addListener((o, was, now) -> offer(now));
    session.onDisk().addListener((o, was, now) -> moved(was, now));
    // A field that went out of sight would go on taking keys.
    question
        .visibleProperty()
        .addListener(
            (o, was, now) -> {
              if (!now) {
                chair.requestFocus();
              }
            });
    // Measured is the chair as it is together.
    seeing.onApart(measuring::end);
    measuring.word().selectedProperty().addListener((o, was, now) -> together(now));
    scene.focusOwnerProperty().addListener((o, was, now) -> keepFocus(was));
    keys(scene);
  }

  /** Puts what is known of the chair around it, and the words to see it by. */
  void furnish() {
    bench.setTop(header);
    bench.setLeft(dimensions);
    bench.setRight(card);
    bench.setBottom(tickets);
    middle.setTop(above);
    middle.setBottom(seeing.sliders(measuring.word()));
    furnished = true;
    show(session.shown().get());
    show(session.unbuilt().get());
  }

  /** Of a chair that cannot be built there are still the sizes, to be mended. */
  private void show(Optional<Unbuilt> unbuilt) {
    Optional<Shown> last = Optional.ofNullable(session.shown().get());
    if (furnished && unbuilt.isPresent()) {
      Length.Unit written = unbuilt.get().design().unit().printed();
      dimensions.show(unbuilt.get(), last, last.isPresent() ? unit.get() : written);
    }
  }

  private static Region room(double width, double height) {
    Region room = new Region();
    room.setMinSize(width, height);
    return room;
  }

  private void together(boolean measured) {
    if (measured) {
      seeing.together();
    }
  }

  /** Where what had the keys is gone, the chair has them: not the first word of the window. */
  private void keepFocus(Node was) {
    if (was != null && was.getScene() == null) {
      Platform.runLater(chair::requestFocus);
    }
  }

  /** Whether the chair on the bench can be put together is known by now. */
  private void assured(GoingTogether.Answer answer) {
    if (!answer.stuck().isEmpty()) {
      header.locked(answer.of().report());
      Chair locked = answer.of().chair();
      List<String> frees =
          Freeing.of(locked, answer.stuck(), style()).stream()
              .map(free -> Words.spoken(free, locked))
              .toList();
      long held = answer.stuck().stream().flatMap(s -> s.parts().stream()).distinct().count();
      tickets.locked(
          Pulling.holding(locked, answer.stuck()),
          frees,
          held < locked.parts().size(),
          seeing::pullApart);
    }
  }

  /** The same in another unit. */
  private void showAgain() {
    if (session.problems().get().isEmpty()) {
      show(session.shown().get());
    } else {
      // What was built last is not what the document says: only its sizes are told.
      show(session.unbuilt().get());
    }
  }

  private void show(Shown shown) {
    if (shown == null) {
      return;
    }
    if (!furnished) {
      chair.show(shown);
      opening.setVisible(false);
      return;
    }
    if (shown.design().unit() != written) {
      written = shown.design().unit();
      unit.set(written.printed());
    }
    TextStyle style = style();
    chair.show(shown);
    seeing.show(shown, unit.get());
    dimensions.show(shown, unit.get());
    measuring.show(style);
    ring.show(shown);
    opening.setVisible(false);
    if (shown.fit().isPresent()) {
      tell(shown, style);
      card.show(shown, style);
      fillBeside();
    }
    going.show(shown);
    if (question.isVisible() && session.onDisk().get() instanceof OnDisk.Changed) {
      // What differs may be something else by now.
      session.lookAgain();
    }
  }

  /** Findings speak the document's unit; for another the fit is told once more. */
  private void tell(Shown shown, TextStyle style) {
    Design.LengthUnit wanted = Design.LengthUnit.of(style.unit());
    if (wanted == shown.design().unit()) {
      tickets.show(shown.report(), style);
    } else {
      session.workOut(
          "findings",
          () -> DryFit.of(shown.chair().toldIn(wanted)),
          told -> {
            boolean stands = session.problems().get().isEmpty();
            if (stands && shown.is(session.shown().get()) && unit.get() == style.unit()) {
              tickets.show(told, style);
              going.show(shown);
            }
          });
    }
  }

  private TextStyle style() {
    return new TextStyle(unit.get(), 64, false, false);
  }

  private void anotherVariant() {
    Shown now = session.shown().get();
    if (now == null) {
      return;
    }
    question.write(
        "A new variant begins as “" + now.design().variant() + "” is now. What is it called?",
        "make the variant",
        (name, answer) -> session.addVariant(name, answer));
  }

  private void besideOrAlone() {
    if (beside.isPresent()) {
      alone();
    } else {
      beside = Optional.of(new SideBySide(this::fillBeside, session::fault));
      over.getChildren().set(0, beside.get());
      // What is told of one joint has no chair beside it now; the table needs the room.
      bench.setRight(null);
      fillBeside();
    }
  }

  private void alone() {
    if (beside.isPresent()) {
      beside.get().close();
      beside = Optional.empty();
      over.getChildren().set(0, middle);
      bench.setRight(card);
    }
  }

  private void fillBeside() {
    TextStyle style = style();
    Shown now = session.shown().get();
    if (beside.isPresent() && now != null) {
      SideBySide open = beside.get();
      List<String> names = open.chosen(Variants.names(now.document()), now.design().variant());
      Design.LengthUnit told = Design.LengthUnit.of(style.unit());
      session.variants(now.document(), names, told, found -> open.show(found, style));
    }
  }

  private void pick(Optional<ChairView.Touch> touch) {
    if (measuring.isOn()) {
      touch.map(chair::picked).ifPresentOrElse(measuring::pick, measuring::missed);
      return;
    }
    chair.see(l -> l.choosing(touch.map(t -> List.of(t.part())).orElse(List.of())));
    card.part(touch.map(ChairView.Touch::part));
    tickets.take(Optional.empty());
    seeing.take(Optional.empty());
    seeing.clear(false, false);
    ring.put(Optional.empty());
  }

  /** Takes up a finding: goes there, points out its parts, shows its joint. */
  private void open(Finding finding) {
    // There it is seen where it is.
    alone();
    chair.see(l -> l.choosing(finding.parts()));
    chair.fly(finding.at(), NEAR);
    if (!finding.joints().isEmpty()) {
      card.joint(finding.joints().get(0));
    } else {
      card.part(finding.parts().stream().findFirst());
    }
    card.finding(finding);
    Shown now = session.shown().get();
    seeing.take(Optional.of(Slicing.Place.of(finding, now)));
    List<String> others = new ArrayList<>(now.chair().parts().stream().map(Part::label).toList());
    others.removeAll(finding.parts());
    seeing.clear(
        !isInSight(now, finding.parts(), finding.at()), !isInSight(now, others, finding.at()));
    // What is about the document alone has no place.
    ring.put(Optional.of(finding.at()).filter(at -> !finding.parts().isEmpty()));
  }

  /** Whether nothing stands before it where the eye will be but parts that do not count. */
  private boolean isInSight(Shown now, List<String> besides, Vec3 at) {
    Set<String> without = new HashSet<>(besides);
    without.addAll(chair.look().get().hidden());
    return Sight.isFree(now.chair(), without, at, chair.heading().camera().eye());
  }

  void open(String joint) {
    Shown now = session.shown().get();
    now.joint(joint)
        .ifPresent(
            fit -> {
              List<Part> all = now.chair().parts();
              List<String> parts =
                  List.of(
                      all.get(fit.joint().tenoned()).label(),
                      all.get(fit.joint().mortised()).label());
              chair.see(l -> l.choosing(parts));
              chair.fly(fit.joint().at(), NEAR);
              seeing.clear(!isInSight(now, parts, fit.joint().at()), false);
              ring.put(Optional.empty());
              card.joint(joint);
              tickets.take(Optional.empty());
              seeing.take(Optional.of(Slicing.Place.of(fit.joint())));
            });
  }

  private BorderPane middle() {
    notice.getStyleClass().add("notice");
    notice.setId("notice");
    notice.setWrapText(true);
    notice.setVisible(false);
    notice.setMaxWidth(560);
    notice.setOnMouseClicked(e -> notice.setVisible(false));
    Region between = new Region();
    between.setMinWidth(2);
    above.getChildren().add(between);
    above.getChildren().addAll(seeing.words());
    if (!ChairView.hasDepth()) {
      Label flat =
          new Label("This machine has no 3D: the chair is on paper, and what is grey needs 3D.");
      flat.getStyleClass().add("quiet");
      above.getChildren().add(flat);
    }
    opening.getStyleClass().add("quiet");
    opening.setId("opening");
    opening.setMouseTransparent(true);
    old.setId("old");
    old.getStyleClass().add("part-name");
    old.setMouseTransparent(true);
    old.setVisible(false);
    StackPane floor = new StackPane(chair, ring, measuring, opening, old);
    StackPane.setAlignment(old, Pos.BOTTOM_CENTER);
    StackPane.setMargin(old, new Insets(12));
    floor.setMinSize(0, 0);
    BorderPane all = new BorderPane(floor);
    all.setTop(room(0, BAR));
    all.setBottom(room(0, BAR));
    // Bars that may be narrower than they would like to be go on in a second line.
    all.setMinWidth(0);
    return all;
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
    scene.getAccelerators().put(new KeyCodeCombination(KeyCode.ESCAPE), this::putAway);
  }

  /** What lies over the chair goes; what is asked there stays undecided. */
  private void putAway() {
    boolean over = notice.isVisible() || question.isVisible() || sheet.isVisible();
    notice.setVisible(false);
    question.end();
    sheet.setVisible(false);
    if (!over && beside.isPresent()) {
      besideOrAlone();
    }
  }

  /** Opens a chair. */
  void open(Path file) {
    bench(file.getFileName().toString());
    // It may be another when its picture is wanted again.
    drawn.remove(file);
    recent.opened(file);
    session.open(file);
  }

  /** Clears the bench for another chair. */
  private void bench(String title) {
    if (start != null) {
      start.close();
    }
    seeing.plain();
    sheet.end();
    chair.clear();
    ring.put(Optional.empty());
    card.part(Optional.empty());
    measuring.clear();
    tickets.clear();
    old.setVisible(false);
    chair.setOpacity(1);
    written = null;
    alone();
    stage.setTitle(title + " · Dryfit");
    header.expect(title);
    opening.setText("Putting " + title + " on the bench …");
    opening.setVisible(true);
    root.setCenter(bench);
    // Else the first word of all would take the keys.
    chair.requestFocus();
  }

  private void lightOrDark() {
    if (!root.getStyleClass().remove("dark-bench")) {
      root.getStyleClass().add("dark-bench");
    }
  }

  private void savePicture() {
    Shown shown = session.shown().get();
    if (shown == null || !session.problems().get().isEmpty()) {
      say("There is no picture of a chair that cannot be built.");
      return;
    }
    if (!ChairView.hasDepth()) {
      say("A picture of what is seen needs 3D; the command picture draws one without.");
      return;
    }
    question.write(
        "How wide is the picture to be, in pixels? It is as high as what you see.",
        Integer.toString(2 * (int) chair.getWidth()),
        "save the picture",
        (wide, answer) -> {
          Optional<Integer> width = PictureSaver.width(wide);
          answer.accept(width.isPresent() ? Optional.empty() : Optional.of(PictureSaver.WIDTHS));
          width.ifPresent(this::savePicture);
        });
  }

  private void savePicture(int width) {
    Shown shown = session.shown().get();
    int height = Math.max(1, (int) Math.round(width * chair.getHeight() / chair.getWidth()));
    desk.save("Save a picture", folder().resolve(pictureName(shown.design())))
        .ifPresent(
            path -> {
              BufferedImage picture =
                  PictureSaver.draw(chair, shown, width, height, Color.web("#f4efe4"));
              String done = path + " is written, " + width + " × " + height + " pixels.";
              session.workOut(
                  "", () -> PictureSaver.write(picture, path), why -> say(why.orElse(done)));
            });
  }

  /** Such as {@code harbour-armchair-low.png}: pictures of two variants lie beside each other. */
  private static String pictureName(Design design) {
    String variant = design.variant().equals(Design.AS_DRAWN) ? "" : " " + design.variant();
    return fileName(design.name() + variant) + ".png";
  }

  private static String fileName(String of) {
    String plain =
        of.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-+|-+$", "");
    return plain.isEmpty() ? "chair" : plain;
  }

  /** Saves to the chair's file, or asks for one. */
  private void save() {
    session.save(this::saved);
  }

  private String chairName() {
    Shown now = session.shown().get();
    return fileName(now == null ? "" : now.design().name()) + ".json";
  }

  private void saved(Saving saving) {
    if (saving instanceof Saving.NeedsName) {
      desk.save("Save the chair", folder().resolve(chairName()))
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
      askedOf = theirs.differences();
      question.ask(
          "Not saved: the file was changed outside this window since it was opened."
              + Words.differences("here", theirs.differences())
              + broken(theirs),
          List.of(
              new Question.Answer("take theirs", () -> session.takeTheirs(theirs)),
              new Question.Answer("keep mine", () -> session.keepMine(theirs, this::saved)),
              new Question.Answer("decide later", () -> {})));
    } else if (saving instanceof Saving.Moved) {
      say("Not saved: the file cannot be read any more.");
    }
  }

  /** What the file said when saving was refused: watching it need not ask about that again. */
  private List<Difference> askedOf = List.of();

  /** The file says something else by now. */
  private void moved(OnDisk before, OnDisk disk) {
    if (disk instanceof OnDisk.Changed theirs) {
      if (session.left().get().isPresent()) {
        // First things first: what is offered would be gone from sight.
        return;
      }
      if (question.isVisible() && askedOf.equals(theirs.differences())) {
        return;
      }
      if (!session.problems().get().isEmpty() && !session.state().get().unsaved()) {
        // Nothing here to be kept: it is being mended where it is written.
        session.takeTheirs(theirs);
        return;
      }
      question.ask(
          "The file was changed outside this window."
              + (session.state().get().unsaved() ? " Your changes here are not saved." : "")
              + Words.differences("here", theirs.differences())
              + broken(theirs),
          List.of(
              new Question.Answer("take theirs", () -> session.takeTheirs(theirs)),
              new Question.Answer("keep mine", () -> session.keep(theirs)),
              new Question.Answer("decide later", () -> {})));
    } else if (disk instanceof OnDisk.Gone) {
      say("The file is gone from its folder. What is on the bench is still here: save it.");
    } else if (disk instanceof OnDisk.Unreadable unreadable) {
      say("The file on the disk cannot be read any more: " + unreadable.reason());
    } else if (before instanceof OnDisk.Changed) {
      question.end();
    } else if (before instanceof OnDisk.Gone) {
      // It is there again, or was saved there.
      say("");
    }
  }

  /** What keeps the file as it now is from being built, if something does. */
  private static String broken(OnDisk.Changed theirs) {
    return theirs.theirs() instanceof Reading.Refused<Document> refused
        ? "\nAs it is in the file it cannot be read: "
            + Words.problem(refused.problems().get(0))
            + " ("
            + Words.line(refused.problems().get(0))
            + ")"
        : "";
  }

  /** Offers work that was not saved before the program ended. */
  private void offer(Optional<Kept.Work> work) {
    if (work.isEmpty()) {
      question.end();
      if (session.onDisk().get() instanceof OnDisk.Changed) {
        moved(session.onDisk().get(), session.onDisk().get());
      }
      return;
    }
    LocalDateTime when = LocalDateTime.ofInstant(work.get().when(), ZoneId.systemDefault());
    question.ask(
        "There is work on this chair of "
            + WHEN.format(when)
            + " that was not saved."
            + Words.differences("in your work", work.get().differences())
            + (work.get().diskMoved()
                ? "\nThe file has been changed since then: if you bring your work back and save it, that"
                    + " change is gone from the file. “Take back” shows it again."
                : ""),
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
    StartPage page =
        new StartPage(DemoChairs.all(), drawn, recent.all(), this::open, this::choose, this::begin);
    start = page;
    root.setCenter(page);
    session.leave(works -> page.left(works, this::goOn, session::discard));
  }

  private void choose() {
    desk.open("Open a chair", folder()).ifPresent(this::open);
  }

  /**
   * Where the chair on the bench lies, or one of late, or where the program was started; not among
   * the demo chairs, which are not the maker's own.
   */
  private Path folder() {
    List<Path> demo = DemoChairs.all().stream().map(Path::toAbsolutePath).toList();
    return Stream.concat(session.state().get().file().stream(), recent.all().stream())
        .map(Path::toAbsolutePath)
        .filter(file -> !demo.contains(file))
        .map(Path::getParent)
        .findFirst()
        .orElse(Path.of("").toAbsolutePath());
  }

  /** Goes on with work that was not saved; where it has a file, that is opened and asks. */
  private void goOn(Kept.Work work) {
    if (work.file().isPresent()) {
      open(work.file().get());
    } else {
      bench("new chair");
      session.goOn("new chair", work);
    }
  }

  private void begin(Family family) {
    Length.Unit usual = Length.Unit.MM;
    bench("new " + family.word());
    session.begin("new " + family.word(), StartChair.of(family, usual).document().text());
  }

  private void tell(List<Problem> problems) {
    opening.setVisible(false);
    old.setVisible(!problems.isEmpty() && session.shown().get() != null);
    chair.setOpacity(old.isVisible() ? FADED : 1);
    if (problems.isEmpty()) {
      say("");
      return;
    }
    Problem first = problems.get(0);
    String more = problems.size() == 1 ? "" : "and " + (problems.size() - 1) + " more below";
    String after =
        Stream.of(Words.line(first), more)
            .filter(text -> !text.isEmpty())
            .collect(Collectors.joining(", "));
    say(Words.problem(first) + (after.isEmpty() ? "" : " (" + after + ")"));
    tickets.cannotBeBuilt(problems);
  }

  /** Whether nothing is being worked out, and the chair or what is wrong with it can be seen. */
  boolean isAtRest() {
    Shown now = session.shown().get();
    boolean told = now != null && now.fit().isPresent() || !session.problems().get().isEmpty();
    return root.getCenter() == start || furnished && told && !session.busy().get();
  }

  /** Whether the chair stands on the bench, or why it cannot is said. */
  boolean isSeen() {
    return session.shown().get() != null || !session.problems().get().isEmpty();
  }

  Session session() {
    return session;
  }

  ChairView chair() {
    return chair;
  }

  void close() {
    alone();
    going.close();
    session.close();
  }
}
