package dryfit.export.book;

import java.util.List;

/**
 * A bench book.
 *
 * @param mark what stands on every page, e.g. that it is demo data; may be empty
 */
public record Book(String title, String mark, List<Chapter> chapters) {
  public Book {
    chapters = List.copyOf(chapters);
  }

  /** Sheets about one matter. */
  public record Chapter(String title, List<Sheet> sheets) {
    public Chapter {
      sheets = List.copyOf(sheets);
    }
  }

  /** What begins on a page of its own; it may run on to more. */
  public record Sheet(String title, List<Block> blocks) {
    public Sheet {
      blocks = List.copyOf(blocks);
    }
  }
}
