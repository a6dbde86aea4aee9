package dryfit.app;

import dryfit.document.ChairFile;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * The form in which unsaved work lies in the state folder: lines of a word and a value, an empty
 * line, the text. A fingerprint of all that follows shows whether it is whole.
 *
 * @param owner the process that keeps it
 * @param file absolute path of the draft's file, empty if it has none
 * @param disk fingerprint of that file when it was last read or written
 * @param variant the variant chosen
 */
record KeptFile(Owner owner, String file, String disk, String variant, String text) {
  private static final String FORMAT = "dryfit-kept/1";

  /**
   * A process. Numbers of processes are used again, so the time it was started counts too.
   *
   * @param started milliseconds since 1970; 0 if the system does not tell
   */
  record Owner(long process, long started) {
    /** The system may count this again from the time since it booted. */
    private static final long CLOCK_STEP = 2000;

    static Owner self() {
      return of(ProcessHandle.current());
    }

    private static Owner of(ProcessHandle process) {
      return new Owner(
          process.pid(), process.info().startInstant().map(i -> i.toEpochMilli()).orElse(0L));
    }

    /** Of work that nobody holds any more: whoever finds it may have it. */
    static final Owner NOBODY = new Owner(0, 0);

    boolean lives() {
      if (equals(NOBODY)) {
        return false;
      }
      return ProcessHandle.of(process)
          .filter(ProcessHandle::isAlive)
          .map(Owner::of)
          .filter(o -> Math.abs(o.started - started) <= CLOCK_STEP)
          .isPresent();
    }
  }

  String written() {
    String body =
        "process "
            + owner.process()
            + "\nstarted "
            + owner.started()
            + "\nfile "
            + URLEncoder.encode(file, StandardCharsets.UTF_8)
            + "\ndisk "
            + disk
            + "\nvariant "
            + URLEncoder.encode(variant, StandardCharsets.UTF_8)
            + "\n\n"
            + text;
    return FORMAT + "\n" + sum(body) + "\n" + body;
  }

  /** Reads it back; empty if it is not whole. */
  static Optional<KeptFile> read(String written) {
    String[] top = written.split("\n", 3);
    if (top.length < 3 || !top[0].equals(FORMAT) || !top[1].equals(sum(top[2]))) {
      return Optional.empty();
    }
    String[] lines = top[2].split("\n", 7);
    try {
      Owner owner = new Owner(Long.parseLong(value(lines[0])), Long.parseLong(value(lines[1])));
      return Optional.of(
          new KeptFile(
              owner,
              URLDecoder.decode(value(lines[2]), StandardCharsets.UTF_8),
              value(lines[3]),
              URLDecoder.decode(value(lines[4]), StandardCharsets.UTF_8),
              lines[6]));
    } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
      return Optional.empty();
    }
  }

  private static String value(String line) {
    return line.substring(line.indexOf(' ') + 1);
  }

  private static String sum(String body) {
    return new ChairFile(body, false).fingerprint();
  }
}
