package dryfit.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.app.Exporting;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.testfx.api.FxRobot;

/** Files are written from the window, and broken off. */
class WritingWindowTest extends WindowTest {
  @Test
  void aSetOfFilesIsWrittenIntoAFolderAndShown(FxRobot robot) throws Exception {
    Path own = Files.copy(HARBOUR, state.resolve("write.json"));
    screen.open(own);
    robot.clickOn("#write-files");
    assertThat(text(robot, "#write-into"))
        .isEqualTo("into " + state.resolve("exports").resolve("write"));
    screen.photograph("21-write-files");
    screen.desk.answer = Optional.of(state.resolve("shop"));
    robot.clickOn("#write-another-folder");
    robot.clickOn("#write-solids-as-STL");
    OnScreen.await("the files", () -> !robot.lookup("#write-show-in-folder").queryAll().isEmpty());
    int parts = screen.shown().chair().parts().size();
    assertThat(text(robot, "#writing"))
        .isEqualTo(parts + 1 + " files are in " + state.resolve("shop"));
    assertThat(names(state.resolve("shop"))).hasSize(parts + 1).contains("assembled.stl");
    screen.photograph("22-written");
    robot.clickOn("#write-show-in-folder");
    assertThat(screen.desk.shown).containsExactly(state.resolve("shop"));
    robot.clickOn("#write-done");
    assertThat(OnScreen.ask(() -> robot.lookup("#write-sheet").query().isVisible())).isFalse();
  }

  @Test
  void oneIsToldBeforeFilesAreWrittenOfAChairThatDoesNotFit(FxRobot robot) {
    screen.open(HARBOUR);
    robot.clickOn("#write-files");
    assertThat(robot.lookup("#write-warning").queryAll()).isEmpty();
    robot.clickOn("#write-not-now");
    run(() -> screen.window.session().choose("deep tenons"));
    screen.settled();
    robot.clickOn("#write-files");
    assertThat(text(robot, "#write-warning"))
        .startsWith("This chair does not fit: 1 stops the build")
        .endsWith("The files will be of it all the same.");
    screen.photograph("59-write-though-it-does-not-fit");
  }

  @Test
  void whatIsBrokenOffLeavesNothingBehind(FxRobot robot) throws Exception {
    screen.open(HARBOUR);
    Path folder = state.resolve("never");
    screen.desk.answer = Optional.of(folder);
    robot.clickOn("#write-files");
    robot.clickOn("#write-another-folder");
    OnScreen.ask(
        () -> {
          robot.lookup("#write-jigs").<Button>query().fire();
          robot.lookup("#write-break-off").<Button>query().fire();
          return null;
        });
    OnScreen.await("the end", () -> !robot.lookup("#write-done").queryAll().isEmpty());
    assertThat(text(robot, "#writing")).isEqualTo("Broken off; nothing was written.");
    assertThat(folder).doesNotExist();
    assertThat(names(state)).noneMatch(name -> name.startsWith(".writing"));
  }

  @Test
  void everySetHasItsLine(FxRobot robot) {
    screen.open(HARBOUR);
    robot.clickOn("#write-files");
    for (Exporting.What what : Exporting.What.values()) {
      assertThat(robot.lookup("#write-" + what.word().replace(' ', '-')).queryAll()).hasSize(1);
    }
  }

  @ParameterizedTest
  @EnumSource(Exporting.What.class)
  void everySetIsWritten(Exporting.What what, FxRobot robot) throws Exception {
    screen.open(Path.of("models/low-stool.json"));
    Path folder = state.resolve("all-" + what);
    screen.desk.answer = Optional.of(folder);
    robot.clickOn("#write-files");
    robot.clickOn("#write-another-folder");
    OnScreen.ask(
        () -> {
          robot.lookup("#write-" + what.word().replace(' ', '-')).<Button>query().fire();
          return null;
        });
    OnScreen.await("the files", () -> !robot.lookup("#write-show-in-folder").queryAll().isEmpty());
    assertThat(text(robot, "#writing")).contains(" in " + folder);
    assertThat(names(folder)).isNotEmpty().noneMatch(name -> name.endsWith(".part"));
  }

  @Test
  void paperIsThatOfTheUnitUntilItIsChosen(FxRobot robot) throws Exception {
    screen.open(Path.of("models/low-stool.json"));
    Path folder = state.resolve("on-paper");
    screen.desk.answer = Optional.of(folder);
    robot.clickOn("#write-files");
    assertThat(robot.lookup("#paper-A4").<ToggleButton>query().isSelected()).isTrue();
    robot.clickOn("#paper-letter");
    assertThat(robot.lookup("#paper-A4").<ToggleButton>query().isSelected()).isFalse();
    robot.clickOn("#write-another-folder");
    screen.photograph("48-write-on-letter");
    robot.clickOn("#write-bench-book");
    OnScreen.await("the files", () -> !robot.lookup("#write-show-in-folder").queryAll().isEmpty());
    try (PDDocument book = Loader.loadPDF(folder.resolve("bench-book.pdf").toFile())) {
      // 8 1/2 by 11 in, in points of 1/72 in.
      assertThat(book.getPage(0).getMediaBox().getWidth()).isCloseTo(612, within(0.1f));
      assertThat(book.getPage(0).getMediaBox().getHeight()).isCloseTo(792, within(0.1f));
    }
  }

  private static List<String> names(Path folder) throws Exception {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).toList();
    }
  }
}
