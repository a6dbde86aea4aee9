package dryfit.cli;

/**
 * A bar for long work, on the terminal's error stream; nothing where no one is watching. Results
 * may be printed between its steps once it is cleared.
 */
final class ProgressBar {
  private static final int WIDE = 30;
  private static final String CLEAR = "\r\u001b[K";

  private final Screen screen;

  ProgressBar(Screen screen) {
    this.screen = screen;
  }

  /** Shows that so many of all are done; once all are, nothing is left of the bar. */
  void show(int done, int of) {
    show(done, of, "");
  }

  /**
   * The same.
   *
   * @param doing what takes time now, in a few words; may be empty
   */
  void show(int done, int of, String doing) {
    if (!screen.terminal()) {
      return;
    }
    if (done >= of) {
      clear();
      return;
    }
    int full = WIDE * done / of;
    screen
        .err()
        .print(
            CLEAR
                + "["
                + "=".repeat(full)
                + " ".repeat(WIDE - full)
                + "] "
                + done
                + " of "
                + of
                + (doing.isEmpty() ? "" : ", " + doing));
    screen.err().flush();
  }

  /** Makes room for other lines. */
  void clear() {
    if (screen.terminal()) {
      screen.err().print(CLEAR);
      screen.err().flush();
    }
  }
}
