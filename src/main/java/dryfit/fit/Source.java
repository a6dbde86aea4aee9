package dryfit.fit;

import dryfit.document.FitLimit;

/**
 * Where a limit comes from.
 *
 * @param kind published, trade custom, the maker's document, or geometry itself
 * @param text the citation or the reason
 * @param limit the word by which a maker may set this limit; empty if it cannot be set
 */
public record Source(Kind kind, String text, String limit) {
  /** What kind of authority a limit has. */
  public enum Kind {
    PUBLISHED,
    COMMON_PRACTICE,
    THE_MAKER,
    GEOMETRY
  }

  /** A limit that cannot be set. */
  public Source(Kind kind, String text) {
    this(kind, text, "");
  }

  static Source published(String citation) {
    return new Source(Kind.PUBLISHED, citation);
  }

  static Source commonPractice(String what) {
    return new Source(Kind.COMMON_PRACTICE, what + " (common practice, no source)");
  }

  static Source maker(String pointer) {
    return new Source(Kind.THE_MAKER, "the document's " + pointer);
  }

  static Source geometry(String why) {
    return new Source(Kind.GEOMETRY, why);
  }

  Source of(FitLimit which) {
    return new Source(kind, text, which.word());
  }
}
