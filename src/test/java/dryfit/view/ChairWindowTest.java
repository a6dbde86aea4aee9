package dryfit.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.fit.Finding;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;

/** Drives the window as a maker does: with the mouse and the keyboard, on a display. */
class ChairWindowTest extends WindowTest {
  @Test
  void theChairIsOpenedTurnedSlidAndBroughtNear(FxRobot robot) {
    screen.open(HARBOUR);
    assertThat(text(robot, "#chair-name")).isEqualTo("Harbour armchair");
    assertThat(screen.wood()).as("pixels of wood").isGreaterThan(5000);
    screen.photograph("01-opened");

    WritableImage before = OnScreen.picture(screen.window.chair());
    Orbit first = screen.orbit();
    robot.drag("#chair", MouseButton.PRIMARY).moveBy(105, 0).drop();
    screen.settled();
    Orbit turned = screen.orbit();
    assertThat(turned.azimuth() - first.azimuth())
        .isCloseTo(-Math.PI / 4, within(Math.toRadians(2)));
    assertThat(turned.target()).isEqualTo(first.target());
    assertThat(OnScreen.difference(before, OnScreen.picture(screen.window.chair())))
        .isGreaterThan(0.03);

    robot.drag("#chair", MouseButton.PRIMARY).moveBy(0, 330).drop();
    screen.settled();
    assertThat(screen.orbit().camera().up().z()).as("head up").isGreaterThanOrEqualTo(0);

    robot.drag("#chair", MouseButton.SECONDARY).moveBy(80, 0).drop();
    screen.settled();
    assertThat(screen.orbit().target()).isNotEqualTo(first.target());
    assertThat(screen.orbit().azimuth()).isEqualTo(turned.azimuth());

    double distance = screen.orbit().distance();
    robot.moveTo("#chair").scroll(4, javafx.geometry.VerticalDirection.UP);
    screen.settled();
    assertThat(screen.orbit().distance()).isNotEqualTo(distance);

    for (String view : List.of("front", "side", "back", "above", "underside", "three-quarter")) {
      screen.click(robot, "#view-" + view);
      screen.landed();
      assertThat(screen.wood()).as(view).isGreaterThan(3000);
      screen.photograph("02-" + view);
    }
  }

  @Test
  void aFindingLeadsToItsPlaceAndItsJoint(FxRobot robot) {
    screen.open(HARBOUR);
    robot.clickOn("deep tenons");
    OnScreen.await("the variant", () -> screen.shown().design().variant().equals("deep tenons"));
    screen.settled();
    assertThat(text(robot, "#verdict")).startsWith("does not fit");
    screen.photograph("03-does-not-fit");

    Orbit before = screen.orbit();
    Button ticket =
        OnScreen.ask(
            () ->
                (Button)
                    robot.lookup(".ticket").queryAll().stream()
                        .filter(n -> n.getUserData() instanceof Finding)
                        .findFirst()
                        .orElseThrow());
    Finding finding = (Finding) ticket.getUserData();
    assertThat(finding.severity()).isEqualTo(Finding.Severity.STOPS);
    robot.clickOn(ticket);
    screen.settled();
    screen.landed();
    assertThat(screen.orbit()).isNotEqualTo(before);
    assertThat(screen.orbit().target().distance(finding.at())).isLessThan(0.01);
    assertThat(OnScreen.ask(() -> screen.window.chair().look().get().chosen()))
        .isEqualTo(Set.copyOf(finding.parts()));
    OnScreen.await("the joint's sheets", () -> robot.lookup(".sheet").queryAll().size() == 2);
    assertThat(robot.lookup(".clash").queryAll()).as("wood claimed twice is shown").isNotEmpty();
    screen.photograph("04-finding");
  }

  @Test
  void aDimensionIsTypedRefusedSlidAndTakenBack(FxRobot robot) throws Exception {
    Path own = Files.copy(HARBOUR, state.resolve("own.json"));
    screen.open(own);
    TextField seat = robot.lookup("#value-seatTop").query();
    assertThat(seat.getText()).isEqualTo("440");

    robot.doubleClickOn(seat).write("430").type(KeyCode.ENTER);
    screen.settled();
    assertThat(screen.shown().document().text()).contains("\"value\": 430");

    robot.doubleClickOn(seat).write("900").type(KeyCode.ENTER);
    OnScreen.await("the reason", () -> !text(robot, "#refused-seatTop").isEmpty());
    assertThat(screen.shown().document().text()).contains("\"value\": 430");
    screen.photograph("05-refused");

    String before = screen.shown().document().text();
    double width = OnScreen.ask(() -> screen.shown().bounds().size().x());
    robot.drag("#rule-frontWidth", MouseButton.PRIMARY).moveBy(-40, 0).moveBy(-20, 0).drop();
    screen.settled();
    assertThat(screen.shown().bounds().size().x()).isLessThan(width - 10);
    assertThat(seat.getText()).as("what was refused is gone").isEqualTo("430");
    assertThat(robot.lookup("#refused-seatTop").queryAll()).isEmpty();
    screen.photograph("06-slid");

    robot.press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
    screen.settled();
    assertThat(screen.shown().document().text()).as("the whole drag is one step").isEqualTo(before);
    assertThat(screen.shown().bounds().size().x()).isCloseTo(width, within(1e-9));

    robot.press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
    screen.settled();
    assertThat(screen.shown().document().text()).isEqualTo(Files.readString(own));
  }

  @Test
  void withoutAChairThereAreSomeToChooseFrom(FxRobot robot) {
    OnScreen.ask(
        () -> {
          screen.window.offer();
          return null;
        });
    OnScreen.await(
        "the pictures",
        () ->
            robot.lookup(".card").queryAll().stream()
                .allMatch(
                    n ->
                        ((javafx.scene.image.ImageView) ((Button) n).getGraphic()).getImage()
                            != null));
    screen.photograph("00-start");
    robot.clickOn("Kiln stool");
    OnScreen.await("the stool", () -> screen.window.session().shown().get() != null);
    screen.settled();
    assertThat(text(robot, "#chair-name")).isEqualTo("Kiln stool");
    assertThat(screen.wood()).isGreaterThan(3000);
  }

  @Test
  void theFitIsSeenThroughTheWoodSawnOpenAndPulledApart(FxRobot robot) throws Exception {
    screen.open(HARBOUR);
    WritableImage plain = OnScreen.picture(screen.window.chair());
    robot.clickOn("#see-through");
    screen.settled();
    assertThat(OnScreen.difference(plain, OnScreen.picture(screen.window.chair())))
        .isGreaterThan(0.03);
    screen.photograph("07-see-through");
    robot.clickOn("#see-through");

    robot.clickOn("#slice");
    screen.settled();
    assertThat(OnScreen.ask(() -> screen.window.chair().look().get().cut())).isPresent();
    assertThat(screen.freshlySawn()).as("pixels of cut faces").isGreaterThan(100);
    screen.photograph("08-slice");
    robot.clickOn("#slice");
    screen.settled();

    OnScreen.ask(
        () -> {
          robot.lookup("#apart").<javafx.scene.control.Slider>query().setValue(1);
          return null;
        });
    screen.settled();
    screen.photograph("09-apart");
    List<dryfit.geometry.Vec3> moved =
        OnScreen.ask(() -> screen.window.chair().look().get().moved());
    assertThat(moved.stream().filter(m -> m.length() > 20).count())
        .as("all but what the rest is pushed onto")
        .isGreaterThanOrEqualTo(moved.size() / 2);
    OnScreen.ask(
        () -> {
          robot.lookup("#apart").<javafx.scene.control.Slider>query().setValue(0);
          return null;
        });
    screen.settled();
    screen.landed();
    screen.settled();
    assertThat(OnScreen.difference(plain, OnScreen.picture(screen.window.chair())))
        .as("together again")
        .isLessThan(0.01);

    Path png = state.resolve("seen.png");
    java.awt.image.BufferedImage picture =
        OnScreen.ask(
            () ->
                PictureSaver.draw(
                    screen.window.chair(),
                    screen.shown(),
                    1600,
                    1200,
                    javafx.scene.paint.Color.WHITE));
    assertThat(PictureSaver.write(picture, png)).isEmpty();
    java.awt.image.BufferedImage read = javax.imageio.ImageIO.read(png.toFile());
    assertThat(read.getWidth()).isEqualTo(1600);
    long drawn = 0;
    for (int x = 0; x < 1600; x += 4) {
      for (int y = 0; y < 1200; y += 4) {
        drawn += (read.getRGB(x, y) & 0xFF) < 0xD0 ? 1 : 0;
      }
    }
    assertThat(drawn).as("places that are not paper").isGreaterThan(3000);
    robot.clickOn("#save-picture");
    robot.clickOn("#save-the-picture");
    OnScreen.ask(
        () -> {
          screen.window.session().choose("low");
          return null;
        });
    screen.settled();
    robot.clickOn("#save-picture");
    robot.clickOn("#save-the-picture");
    screen.settled();
    assertThat(screen.desk.proposed)
        .containsExactly("harbour-armchair.png", "harbour-armchair-low.png");
    robot.clickOn("#light-or-dark");
    screen.settled();
    screen.photograph("10-dark");
  }

  @Test
  void twoClicksMeasureAndAClickShowsInches(FxRobot robot) {
    screen.open(HARBOUR);
    screen.click(robot, "#view-front");
    screen.landed();
    robot.clickOn("#measure");
    Shown shown = screen.shown();
    javafx.geometry.Bounds paper =
        OnScreen.ask(
            () -> screen.window.chair().localToScreen(screen.window.chair().getLayoutBounds()));
    robot.clickOn(paper.getMinX() + 8, paper.getMinY() + 8);
    screen.settled();
    assertThat(text(robot, "#measured"))
        .isEqualTo("there is no wood: click the first place on the chair");
    for (String label : List.of("front-leg right", "front-leg left")) {
      robot.clickOn(screen.pointOn(shown, label));
    }
    screen.settled();
    String told = text(robot, "#measured");
    double across = Double.parseDouble(told.replaceAll("(?s).*?: ([0-9.]+) mm across.*", "$1"));
    assertThat(across).isBetween(500.0, 560.0);
    screen.photograph("11-measured");
    robot.clickOn("#unit");
    screen.settled();
    assertThat(text(robot, "#measured")).matches("(?s).* in( \\S+)? across.*");
    TextField seat = robot.lookup("#value-seatTop").query();
    // 440 mm are 17.3228 in, and 17 21/64 in are 17.3281.
    assertThat(seat.getText()).isEqualTo("17 21/64");
    screen.photograph("12-inches");
  }

  @Test
  void aSavedChairIsTheSameToTheLastByteWhereNothingChanged(FxRobot robot) throws Exception {
    Path own = Files.copy(HARBOUR, state.resolve("saved.json"));
    screen.open(own);
    TextField seat = robot.lookup("#value-seatTop").query();
    robot.doubleClickOn(seat).write("430").type(KeyCode.ENTER);
    screen.settled();
    assertThat(Files.readString(own)).isEqualTo(Files.readString(HARBOUR));
    robot.clickOn("#save");
    screen.settled();
    assertThat(Files.readString(own))
        .isEqualTo(Files.readString(HARBOUR).replace("\"value\": 440", "\"value\": 430"));
  }

  @Test
  void aNewChairIsBegunAndFits(FxRobot robot) {
    OnScreen.ask(
        () -> {
          screen.window.offer();
          return null;
        });
    OnScreen.await("the kinds", () -> !robot.lookup("#new-stool").queryAll().isEmpty());
    robot.clickOn("#new-stool");
    OnScreen.await("the stool", () -> screen.window.session().shown().get() != null);
    screen.settled();
    assertThat(screen.shown().report().fits()).isTrue();
    assertThat(screen.wood()).isGreaterThan(3000);
    screen.photograph("13-new");
  }

  @Test
  void workOfAKilledProgramIsOfferedAgain(FxRobot robot) throws Exception {
    Path own = Files.copy(HARBOUR, state.resolve("killed.json"));
    assertThat(Killed.run(state, own, "seatTop", "425")).isEqualTo(137);
    screen.open(own);
    OnScreen.await("the offer", () -> robot.lookup("#question").query().isVisible());
    assertThat(OnScreen.ask(() -> ((Labeled) robot.lookup("#question .label").query()).getText()))
        .contains("Different in the file:\n   seat top: in your work 425, in the file 440");
    screen.photograph("14-left-behind");
    assertThat(screen.shown().document().text()).isEqualTo(Files.readString(HARBOUR));
    robot.clickOn("#bring-it-back");
    screen.settled();
    assertThat(screen.shown().document().text()).contains("\"value\": 425");
    assertThat(text(robot, "#save")).isEqualTo("save");
  }

  @Test
  void variantsStandBesideEachOtherAndTurnTogether(FxRobot robot) {
    screen.open(HARBOUR);
    robot.clickOn("#beside");
    OnScreen.await("three chairs", () -> robot.lookup(".beside").queryAll().size() == 3);
    screen.settled();
    robot.drag("#chair-0", MouseButton.PRIMARY).moveBy(60, 0).drop();
    screen.settled();
    ChairView first = robot.lookup("#chair-0").query();
    for (int i = 0; i < 3; i++) {
      ChairView view = robot.lookup("#chair-" + i).query();
      assertThat(view.orbit().get()).isEqualTo(first.orbit().get());
      assertThat(screen.wood(view)).as("chair " + i).isGreaterThan(1000);
    }
    List<String> told =
        robot.lookup(".differences .label").queryAll().stream()
            .map(n -> ((Labeled) n).getText())
            .toList();
    assertThat(told).contains("as drawn", "low", "deep tenons", "seat top");
    screen.photograph("15-side-by-side");
    robot.clickOn("#beside");
    screen.settled();
    assertThat(screen.wood()).isGreaterThan(3000);
  }

  @Test
  void aFileThatSomeoneElseChangedIsNotWrittenOver(FxRobot robot) throws Exception {
    Path own = Files.copy(HARBOUR, state.resolve("shared.json"));
    screen.open(own);
    TextField seat = robot.lookup("#value-seatTop").query();
    robot.doubleClickOn(seat).write("430").type(KeyCode.ENTER);
    screen.settled();
    String theirs = Files.readString(HARBOUR).replace("Harbour armchair", "Quay armchair");
    Files.writeString(own, theirs);
    robot.clickOn("#save");
    OnScreen.await(
        "the question",
        () ->
            robot
                .lookup(
                    n ->
                        n instanceof Labeled l
                            && l.getText().startsWith("Not saved: the file was changed"))
                .tryQuery()
                .isPresent());
    assertThat(Files.readString(own)).isEqualTo(theirs);
    robot.clickOn("#take-theirs");
    screen.settled();
    assertThat(text(robot, "#chair-name")).isEqualTo("Quay armchair");
  }

  @Test
  void everyShippedChairOpensAndIsSeen(FxRobot robot) throws Exception {
    try (Stream<Path> models = Files.list(Path.of("models"))) {
      for (Path model : models.filter(p -> p.toString().endsWith(".json")).sorted().toList()) {
        OnScreen.ask(
            () -> {
              screen.window.open(model);
              return null;
            });
        OnScreen.await(
            model.toString(),
            () -> {
              Shown now = screen.window.session().shown().get();
              return now != null && now.document().file().equals(model.toString());
            });
        screen.settled();
        assertThat(screen.wood()).as(model.toString()).isGreaterThan(2000);
        screen.photograph("20-" + model.getFileName().toString().replace(".json", ""));
      }
    }
  }

  @Test
  void withoutDepthTheChairIsDrawnOnPaperAndTurnsAllTheSame(FxRobot robot) {
    screen.open(HARBOUR);
    Shown shown = screen.shown();
    ChairView paper =
        OnScreen.ask(
            () -> {
              ChairView view = new ChairView(new PaperDrawing());
              view.setId("paper");
              screen.stage.getScene().setRoot(view);
              view.show(shown);
              return view;
            });
    OnScreen.await(
        "the drawing",
        () -> ((javafx.scene.image.ImageView) paper.lookup("#drawing")).getImage() != null);
    assertThat(screen.wood(paper)).isGreaterThan(5000);
    WritableImage before = OnScreen.picture(paper);
    robot.drag("#paper", MouseButton.PRIMARY).moveBy(105, 0).drop();
    javafx.scene.image.ImageView sheet = (javafx.scene.image.ImageView) paper.lookup("#drawing");
    OnScreen.await(
        "it to turn", () -> OnScreen.difference(before, paper.snapshot(null, null)) > 0.03);
    assertThat(sheet.getImage()).isNotNull();
    screen.photograph("16-on-paper");
  }
}
