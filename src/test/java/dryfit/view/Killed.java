package dryfit.view;

import dryfit.app.Draft;
import dryfit.app.Keeping;
import dryfit.app.Kept;
import dryfit.app.StateFolder;
import dryfit.document.Reading;
import java.nio.file.Path;
import java.util.function.Consumer;

/** A process that changes a chair, keeps the change, and is gone without a word. */
final class Killed {
  private Killed() {}

  /** Takes the state folder, the chair, a dimension and its new value. */
  public static void main(String[] args) {
    Consumer<String> say = System.err::println;
    try (Kept kept = new Kept(new StateFolder(Path.of(args[0])))) {
      Draft draft = ((Reading.Accepted<Draft>) Draft.open(Path.of(args[1]))).value();
      try (Keeping keeping = kept.keep(draft, say)) {
        draft.dimension(args[2], args[3]);
        Runtime.getRuntime().halt(keeping.now() ? 137 : 1);
      }
    }
  }

  /** Runs it to its end. */
  static int run(Path state, Path chair, String dimension, String value) throws Exception {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            Killed.class.getName(),
            state.toString(),
            chair.toString(),
            dimension,
            value)
        .inheritIO()
        .start()
        .waitFor();
  }
}
