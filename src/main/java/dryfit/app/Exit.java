package dryfit.app;

/** How a command ends. */
public enum Exit {
  /** Done, and the chair fits if that was the question. */
  FITS(0),
  /** Something went wrong that the maker cannot mend. */
  OUR_FAULT(1),
  /** What was asked for cannot be done as it was asked. */
  USAGE(2),
  /** The document is refused. */
  REFUSED(3),
  /** The chair does not fit. */
  DOES_NOT_FIT(4);

  private final int code;

  Exit(int code) {
    this.code = code;
  }

  /** The code the process ends with. */
  public int code() {
    return code;
  }
}
