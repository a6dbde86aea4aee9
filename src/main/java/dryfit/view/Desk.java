package dryfit.view;

import java.nio.file.Path;
import java.util.Optional;

/** What the desktop around the window does for it. All calls on the window's thread. */
interface Desk {
  /**
   * Asks for a chair to open.
   *
   * @param first the folder to begin in; need not exist
   */
  Optional<Path> open(String title, Path first);

  /**
   * Asks where something is to be saved.
   *
   * @param first a file name, and the folder to begin in, which need not exist
   */
  Optional<Path> save(String title, Path first);

  /**
   * Asks for a folder.
   *
   * @param first where to begin; need not exist
   */
  Optional<Path> folder(String title, Path first);

  /** Shows a folder to the maker. */
  void show(Path folder);
}
