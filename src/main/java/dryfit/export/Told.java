package dryfit.export;

import java.util.List;

/**
 * Something told under a title, as rows of a name and a text; a row without a name belongs to the
 * one before it. The words are the same wherever they are printed.
 */
public record Told(String title, List<Row> rows) {
  public Told {
    rows = List.copyOf(rows);
  }

  /** What it is, and what there is to say of it. */
  public record Row(String name, String text) {}
}
