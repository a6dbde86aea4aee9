package dryfit.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dryfit.app.KernelChoice;
import dryfit.app.OpenChair;
import dryfit.app.OpenChair.Opened;
import dryfit.document.Design;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ForeseenTest {
  private static final Path STOOL = Path.of("models", "low-stool.json");

  /** A foreseen chair is one object however often it is asked for; an opened one is new. */
  private static void assertForeseen(boolean expected, Path file, String variant, String... args) {
    Foreseen foreseen = Foreseen.of(args);
    Opened once = foreseen.open(file, variant, KernelChoice.USUAL);
    Opened again = foreseen.open(file, variant, KernelChoice.USUAL);
    if (expected) {
      assertSame(once, again);
    } else {
      assertNotSame(once, again);
    }
  }

  @Test
  void whatTheCommandLineSeemsToAskForIsBegun() {
    assertForeseen(true, STOOL, Design.AS_DRAWN, "fit", STOOL.toString());
    assertForeseen(true, STOOL, Design.AS_DRAWN, "angles", "--units", "in", STOOL.toString());
    assertForeseen(true, STOOL, "high", "fit", "--variant", "high", STOOL.toString());
    assertForeseen(true, STOOL, "high", "fit", STOOL.toString(), "--variant=high");
  }

  @Test
  void aWrongGuessIsNotTaken() {
    String stool = STOOL.toString();
    assertForeseen(false, STOOL, "high", "fit", stool);
    assertForeseen(false, Path.of("models", "kiln-stool.json"), Design.AS_DRAWN, "fit", stool);
    assertForeseen(false, STOOL, Design.AS_DRAWN, "start", stool);
    assertForeseen(false, STOOL, Design.AS_DRAWN, "fit", "--help", stool);
    assertForeseen(false, STOOL, Design.AS_DRAWN, "fit", "--kernel", "jcsg", stool);
    assertForeseen(false, STOOL, Design.AS_DRAWN);
    assertInstanceOf(
        OpenChair.Refused.class,
        Foreseen.of(new String[] {"fit", "nowhere.json"})
            .open(Path.of("nowhere.json"), Design.AS_DRAWN, KernelChoice.USUAL));
  }

  @Test
  void whatIsSaidIsTheSame(@TempDir Path folder) throws IOException {
    Path faulty = Files.writeString(folder.resolve("faulty.json"), "{\"format\": 3}");
    for (String[] args :
        new String[][] {
          {"fit", STOOL.toString()},
          {"fit", STOOL.toString(), "--variant", "none such"},
          {"fit", STOOL.toString(), "--fractions", "3"},
          {"angles", STOOL.toString()},
          {"fit", faulty.toString()},
        }) {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      ByteArrayOutputStream err = new ByteArrayOutputStream();
      Screen screen =
          new Screen(
              new PrintStream(out, true, StandardCharsets.UTF_8),
              new PrintStream(err, true, StandardCharsets.UTF_8),
              false,
              Optional.empty());
      int code = Main.run(args, screen, Foreseen.of(args));
      assertEquals(
          Said.by(args),
          new Said(
              code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8)));
    }
  }

  @Test
  void everyCommandThatOpensOneChairIsKnown() throws IOException {
    Set<String> found = new TreeSet<>();
    try (Stream<Path> classes = Files.list(Path.of("target", "classes", "dryfit", "cli"))) {
      classes
          .map(c -> c.getFileName().toString().replace(".class", ""))
          .filter(name -> name.endsWith("Command") && opensOneChair("dryfit.cli." + name))
          .forEach(name -> found.add(name.replace("Command", "").toLowerCase(Locale.ROOT)));
    }
    assertTrue(found.contains("fit"));
    assertEquals(found, new TreeSet<>(Foreseen.COMMANDS));
  }

  private static boolean opensOneChair(String command) {
    try {
      return Arrays.stream(Class.forName(command).getDeclaredFields())
          .anyMatch(field -> field.getType() == ChairArguments.class);
    } catch (ClassNotFoundException e) {
      throw new AssertionError(e);
    }
  }
}
