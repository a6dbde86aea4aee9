package dryfit.document;

import java.util.List;

/** What comes of reading: the document, or all its problems. */
public sealed interface Reading<T> {

  /** It is sound. */
  record Accepted<T>(T value) implements Reading<T> {}

  /** It is refused; at least one problem, in document order. */
  record Refused<T>(List<Problem> problems) implements Reading<T> {
    public Refused {
      problems = List.copyOf(problems);
    }
  }
}
