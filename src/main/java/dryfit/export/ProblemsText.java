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
      // Most sentences begin with the place already.
      if (!p.message().startsWith(p.pointer())) {
        out.append("  ").append(p.pointer());
      }
      out.append('\n');
      Wrapped.lines("  ", "  ", p.message()).forEach(line -> out.append(line).append('\n'));
    }
    int n = problems.size();
    return out.append("REFUSED: ")
        .append(n)
        .append(n == 1 ? " problem" : " problems")
        .append(" to mend in the document\n")
        .toString();
  }
}
