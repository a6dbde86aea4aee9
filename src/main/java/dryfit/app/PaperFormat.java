package dryfit.app;

/** The files that drawings are written as. */
public enum PaperFormat {
  /** Sheets for a printer. */
  PDF("pdf"),
  /** One drawing, whole, for other programs and machines. */
  SVG("svg");

  private final String word;

  PaperFormat(String word) {
    this.word = word;
  }

  /** What it is called, and how its files end. */
  public String word() {
    return word;
  }
}
