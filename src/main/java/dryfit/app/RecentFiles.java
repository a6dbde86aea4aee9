package dryfit.app;

import dryfit.export.SafeFile;
import dryfit.export.UnsoundFile;
import java.io.IOException;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The files opened lately, the latest first. A list that cannot be read is an empty one, and one
 * that cannot be written is only forgotten: it is a convenience. Of two programs that open a file
 * at the same moment the later one's list stays.
 */
public final class RecentFiles {
  /** As many are remembered. */
  public static final int MOST = 12;

  private static final String NAME = "recent-files.txt";

  private final Path list;

  public RecentFiles(StateFolder folder) {
    this.list = folder.path().resolve(NAME);
  }

  /** Those that are still there. */
  public List<Path> all() {
    return read().stream().filter(Files::isRegularFile).toList();
  }

  /**
   * Puts a file in front.
   *
   * @return whether the list could be written
   */
  public boolean opened(Path file) {
    Path absolute = file.toAbsolutePath().normalize();
    List<Path> files = new ArrayList<>(all());
    files.remove(absolute);
    files.add(0, absolute);
    return write(files.subList(0, Math.min(MOST, files.size())));
  }

  /** Forgets a file. */
  public boolean forget(Path file) {
    List<Path> files = new ArrayList<>(all());
    files.remove(file.toAbsolutePath().normalize());
    return write(files);
  }

  private List<Path> read() {
    List<Path> files = new ArrayList<>();
    try {
      // A line break may be part of a name, so names are percent-encoded.
      for (String line : Files.readAllLines(list)) {
        Path path = Path.of(URLDecoder.decode(line, StandardCharsets.UTF_8));
        if (path.isAbsolute() && !files.contains(path) && files.size() < MOST) {
          files.add(path);
        }
      }
      return files;
    } catch (IOException | IllegalArgumentException e) {
      return files;
    }
  }

  private boolean write(List<Path> files) {
    StringBuilder text = new StringBuilder();
    for (Path file : files) {
      text.append(URLEncoder.encode(file.toString(), StandardCharsets.UTF_8)).append('\n');
    }
    byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
    try {
      SafeFile.write(
          list,
          bytes,
          readBack -> {
            if (!Arrays.equals(bytes, readBack)) {
              throw new UnsoundFile("the list reads back differently");
            }
          });
      return true;
    } catch (IOException | UnsoundFile e) {
      return false;
    }
  }
}
