package dryfit.view;

import java.nio.file.Path;
import java.util.Optional;

/** What the desktop around the window does for it. All calls on the window's thread. */
interface Desk {
  /** Asks for a chair to open. */
  Optional<Path> open(String title);

  /** Asks where something is to be saved. */
  Optional<Path> save(String title, String name);

  /**
   * Asks for a folder.
   *
   * @param first where to begin; need not exist
   */
  Optional<Path> folder(String title, Path first);

  /** Shows a folder to the maker. */
  void show(Path folder);
}
