package dryfit.app;

import java.nio.file.Path;

/** What comes of saving a draft. */
public sealed interface Saving {

  /** The file now says what the draft says. */
  record Done(Path path) implements Saving {}

  /** The draft has no file yet; it must be told where. */
  record NeedsName() implements Saving {}

  /** Someone else has changed the file; nothing was written, the maker is to choose. */
  record Moved(OnDisk disk) implements Saving {}

  /** The disk did not take it, and an older file is as it was. */
  record Failed(Path path, String reason) implements Saving {}
}
