package dryfit.app;

import dryfit.export.SafeFile;
import dryfit.export.UnsoundFile;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** What comes of writing a file. */
public sealed interface WrittenFiles {
  Exit exit();

  /** Writes a file whole, reads it back and holds it against what was meant. */
  static WrittenFiles of(Path path, byte[] bytes) {
    if (Files.isDirectory(path)) {
      return new Failed(path, "it is a folder; name a file", Exit.USAGE);
    }
    try {
      SafeFile.write(
          path,
          bytes,
          readBack -> {
            if (!Arrays.equals(bytes, readBack)) {
              throw new UnsoundFile("it reads back differently");
            }
          });
      return new Finished<>(path);
    } catch (IOException e) {
      return Failed.of(path, e);
    } catch (UnsoundFile e) {
      return Failed.of(path, e);
    }
  }

  /** Finished: written whole and found sound when read back. */
  record Finished<T>(T file) implements WrittenFiles {
    @Override
    public Exit exit() {
      return Exit.FITS;
    }
  }

  /** There is no such file, and an older one is as it was. */
  record Failed(Path path, String reason, Exit exit) implements WrittenFiles {

    /** The disk did not take it. */
    static Failed of(Path path, IOException e) {
      return new Failed(path, WrittenFiles.reason(e), Exit.USAGE);
    }

    /** It would not have been sound. */
    static Failed of(Path path, UnsoundFile e) {
      return new Failed(path, e.getMessage(), Exit.OUR_FAULT);
    }
  }

  /** Why the disk did not take a file. */
  static String reason(IOException e) {
    return e instanceof AccessDeniedException
        ? "this place may not be written to"
        : e instanceof FileAlreadyExistsException
            ? "a file stands where a folder is needed"
            : "the disk does not take it (" + e.getMessage() + ")";
  }
}
