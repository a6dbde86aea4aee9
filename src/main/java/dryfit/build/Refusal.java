package dryfit.build;

import dryfit.document.Problem;
import java.io.Serial;
import java.util.Optional;

/** One part or joint cannot be built; caught by {@link ChairBuilder}, which collects them all. */
final class Refusal extends RuntimeException {
  @Serial private static final long serialVersionUID = 1L;

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

  Problem problem() {
    return problem;
  }
}
