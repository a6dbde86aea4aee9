package dryfit.export.paper;

import java.util.List;

/** A sheet of paper with ink on it; millimetres. */
public record Page(double width, double height, List<Ink> ink) {
  public Page {
    ink = List.copyOf(ink);
  }

  /** The sheets that printers take. */
  public enum Paper {
    /** ISO 216. */
    A4("A4", 210, 297),
    /** 8 1/2 by 11 in, ANSI/ASME Y14.1 size A. */
    LETTER("letter", 215.9, 279.4);

    private final String word;
    private final double width;
    private final double height;

    Paper(String word, double width, double height) {
      this.word = word;
      this.width = width;
      this.height = height;
    }

    /** What it is called. */
    public String word() {
      return word;
    }

    /** Its shorter side. */
    public double width() {
      return width;
    }

    /** Its longer side. */
    public double height() {
      return height;
    }
  }
}
