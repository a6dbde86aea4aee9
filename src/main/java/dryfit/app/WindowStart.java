package dryfit.app;

import java.nio.file.Path;
import java.util.Optional;
import java.util.ServiceLoader;

/**
 * Whoever can open the window. The terminal asks for one without knowing the window; the window
 * names itself in {@code META-INF/services}.
 */
public interface WindowStart {

  /** What comes of it, once the window is closed again. */
  sealed interface Ended {
    /** It was opened, used and closed. */
    record Closed() implements Ended {}

    /**
     * It could not be opened.
     *
     * @param why one sentence for the maker
     */
    record NoScreen(String why) implements Ended {}
  }

  /**
   * Begins, on threads of its own, what will take long: the toolkit and the chair. To be called at
   * most once, before {@link #open}, which takes up what was begun and tells what went wrong.
   *
   * @param file the chair that will most likely be opened
   */
  void begin(Optional<Path> file);

  /**
   * Opens the window and comes back when it is closed.
   *
   * @param file the chair to open; without one the window offers some
   * @param untilShown whether it closes by itself as soon as all of the chair is seen
   */
  Ended open(Optional<Path> file, boolean untilShown);

  /** The one this program was packed with, if any. */
  static Optional<WindowStart> find() {
    return ServiceLoader.load(WindowStart.class).findFirst();
  }
}
