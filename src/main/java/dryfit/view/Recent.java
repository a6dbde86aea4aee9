package dryfit.view;

import dryfit.export.SafeFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The chairs that were opened lately, newest first, kept in a file of their own. */
final class Recent {
  private static final int MOST = 8;
  private final Path list;

  /**
   * @param list where they are kept; need not exist
   */
  Recent(Path list) {
    this.list = list;
  }

  /** Kept where the system wants the state of programs to be. */
  static Recent usual() {
    String state = System.getenv("XDG_STATE_HOME");
    Path folder =
        state == null || state.isBlank()
            ? Path.of(System.getProperty("user.home"), ".local", "state")
            : Path.of(state);
    return new Recent(folder.resolve("dryfit").resolve("recent.txt"));
  }

  /** Those that are still there. */
  List<Path> files() {
    List<Path> files = new ArrayList<>();
    try {
      for (String line : Files.readAllLines(list, StandardCharsets.UTF_8)) {
        Path file = Path.of(line);
        if (files.size() < MOST && Files.isRegularFile(file)) {
          files.add(file);
        }
      }
    } catch (IOException | InvalidPathException e) {
      // No list, or none that can be read, is an empty list: it is only a convenience.
      return List.copyOf(files);
    }
    return List.copyOf(files);
  }

  void opened(Path file) {
    List<Path> files = new ArrayList<>(files());
    Path whole = file.toAbsolutePath().normalize();
    files.remove(whole);
    files.add(0, whole);
    StringBuilder text = new StringBuilder();
    files.stream().limit(MOST).forEach(f -> text.append(f).append('\n'));
    try {
      SafeFile.write(list, text.toString().getBytes(StandardCharsets.UTF_8), readBack -> {});
    } catch (IOException e) {
      // The chair opens all the same; it is only not offered next time.
      return;
    }
  }
}
