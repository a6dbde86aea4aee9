package dryfit.fit;

/**
 * Where a limit comes from.
 *
 * @param kind published, trade custom, the maker's document, or geometry itself
 * @param text the citation or the reason
 */
public record Source(Kind kind, String text) {
  /** What kind of authority a limit has. */
  public enum Kind {
    PUBLISHED,
    COMMON_PRACTICE,
    THE_MAKER,
    GEOMETRY
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
}
