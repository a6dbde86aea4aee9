package dryfit.export;

import dryfit.document.Problem;
import java.util.List;

/** Why a document was refused, as text: file and line, the place in it, the sentence. */
public final class ProblemsText {
  private ProblemsText() {}

  /** Every problem, then a line that says how many; each line ended by a line feed. */
  public static String of(List<Problem> problems) {
    StringBuilder out = new StringBuilder();
    for (Problem p : problems) {
      out.append(p.file());
      if (p.line() > 0) {
        out.append(':').append(p.line());
      }
      if (!p.pointer().isEmpty()) {
        out.append("  ").append(p.pointer());
      }
      out.append('\n');
      Wrapped.lines("  ", "  ", sentence(p)).forEach(line -> out.append(line).append('\n'));
    }
    int n = problems.size();
    return out.append("REFUSED: ")
        .append(n)
        .append(n == 1 ? " problem" : " problems")
        .append(" to mend in the document\n")
        .toString();
  }

  /** Sentences of the reader begin with the place, which has its own line here. */
  private static String sentence(Problem p) {
    String begin = p.pointer() + ": ";
    boolean repeats = !p.pointer().isEmpty() && p.message().startsWith(begin);
    return repeats ? p.message().substring(begin.length()) : p.message();
  }
}
