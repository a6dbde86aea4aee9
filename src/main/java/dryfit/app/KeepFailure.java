package dryfit.app;

import dryfit.export.SafeFile;
import dryfit.export.SolidJson;
import dryfit.export.UnsoundFile;
import dryfit.solid.KernelFailure;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Keeps what is known about a fault of ours in a folder of its own: what happened, and the solid if
 * a kernel failed on one, in the form of the kernel corpus, so that it can be done again and become
 * a test.
 */
public final class KeepFailure {
  /** What happened. */
  public static final String DETAILS = "details.txt";

  /** The solid that a kernel failed on. */
  public static final String SOLID = "solid.json";

  private KeepFailure() {}

  /**
   * Writes a folder {@code dryfit-failure-…} in the system's folder for temporary files.
   *
   * @param details what happened
   * @return the folder; empty if the disk does not take it
   */
  public static Optional<Path> keep(Throwable fault, String details) {
    try {
      Path folder = Files.createTempDirectory("dryfit-failure-");
      write(folder.resolve(DETAILS), details.getBytes(StandardCharsets.UTF_8));
      if (fault instanceof KernelFailure failure) {
        byte[] solid =
            SolidJson.bytes(
                failure.getMessage(),
                "none: a kernel failed on it",
                failure.operands(),
                OptionalDouble.empty());
        write(folder.resolve(SOLID), solid);
      }
      return Optional.of(folder);
    } catch (IOException | UnsoundFile e) {
      return Optional.empty();
    }
  }

  private static void write(Path file, byte[] bytes) throws IOException {
    SafeFile.write(
        file,
        bytes,
        readBack -> {
          if (!Arrays.equals(bytes, readBack)) {
            throw new UnsoundFile("the details read back differently");
          }
        });
  }
}
