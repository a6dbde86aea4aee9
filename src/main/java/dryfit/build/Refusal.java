package dryfit.build;

import dryfit.document.Problem;
import dryfit.measure.Length;
import dryfit.measure.Length.Unit;
import java.io.Serial;
import java.util.Optional;
import java.util.regex.Pattern;

/** One part or joint cannot be built; caught by {@link ChairBuilder}, which collects them all. */
final class Refusal extends RuntimeException {
  @Serial private static final long serialVersionUID = 1L;

  /** What no name of a part or joint can hold. */
  private static final char OPEN = 1;

  private static final char CLOSE = 2;
  private static final Pattern LENGTH = Pattern.compile(OPEN + "([^" + CLOSE + "]+)" + CLOSE);

  private final transient Problem problem;

  private Refusal(Problem problem) {
    super(problem.message());
    this.problem = problem;
  }

  /**
   * @param allowed what would be right, as part of the sentence
   */
  static Refusal of(String code, String pointer, String found, String allowed) {
    return new Refusal(
        new Problem(
            code, "", 0, pointer, found, allowed, Optional.empty(), found + "; " + allowed + "."));
  }

  /** A length in a refusal's sentence; it is told in the document's unit once that is known. */
  static String length(double mm) {
    return OPEN + Double.toString(mm) + CLOSE;
  }

  /** The sentence with its lengths in a unit. */
  static String told(String sentence, Unit unit) {
    return LENGTH
        .matcher(sentence)
        .replaceAll(found -> Length.told(Double.parseDouble(found.group(1)), unit));
  }

  Problem problem() {
    return problem;
  }
}
