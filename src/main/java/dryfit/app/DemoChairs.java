package dryfit.app;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The chairs that come along with Dryfit: beside the packed program, or in its source. */
public final class DemoChairs {
  private static final String FOLDER = "models";

  private DemoChairs() {}

  /** Their documents, sorted by name; none where none came along. */
  public static List<Path> all() {
    return in(program().map(jar -> folder(jar, Path.of(""))).orElse(Path.of(FOLDER)));
  }

  /**
   * Where they lie.
   *
   * @param program the jar of the packed program in its {@code lib}, or the folder of its classes
   * @param here where the program was started
   */
  static Path folder(Path program, Path here) {
    Path lib = program.toAbsolutePath().getParent();
    Path packed = lib.resolveSibling(FOLDER);
    // Where classes lie in a source tree, the folder beside is not one of ours.
    return Files.isRegularFile(program) && Files.isDirectory(packed)
        ? packed
        : here.resolve(FOLDER);
  }

  static List<Path> in(Path folder) {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(p -> p.toString().endsWith(".json")).sorted().toList();
    } catch (IOException e) {
      return List.of();
    }
  }

  private static Optional<Path> program() {
    try {
      var source = DemoChairs.class.getProtectionDomain().getCodeSource();
      return source == null ? Optional.empty() : Optional.of(Path.of(source.getLocation().toURI()));
    } catch (URISyntaxException e) {
      return Optional.empty();
    }
  }
}
