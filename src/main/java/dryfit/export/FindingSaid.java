package dryfit.export;

import dryfit.fit.Finding;
import dryfit.fit.compare.Comparison.FindingRow;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * One sentence that is said of compared chairs; what is said of the right and of the left alike is
 * one.
 *
 * @param present whether it is said, one for each chair
 * @param lacking whether some of the chairs do not have the finding at all
 * @param alike findings that say it, one for each hand
 */
public record FindingSaid(List<Boolean> present, boolean lacking, List<Finding> alike) {
  public FindingSaid {
    present = List.copyOf(present);
    alike = List.copyOf(alike);
  }

  /** In the order given. */
  public static List<FindingSaid> of(List<FindingRow> rows) {
    List<FindingSaid> out = new ArrayList<>();
    for (FindingRow row : rows) {
      for (FindingRow sentence : row.sentences()) {
        add(out, new FindingSaid(sentence.present(), row.lacking(), List.of(sentence.finding())));
      }
    }
    return out;
  }

  private static void add(List<FindingSaid> out, FindingSaid said) {
    for (int i = 0; i < out.size(); i++) {
      FindingSaid other = out.get(i);
      if (other.present.equals(said.present)
          && other.lacking == said.lacking
          && FindingText.sameOfTheOtherHand(other.finding(), said.finding())) {
        List<Finding> both = new ArrayList<>(other.alike);
        both.addAll(said.alike);
        out.set(i, new FindingSaid(other.present, other.lacking, both));
        return;
      }
    }
    out.add(said);
  }

  /** The first of those that say it. */
  public Finding finding() {
    return alike.get(0);
  }

  /** The sentence, and where else it holds. */
  public String message() {
    String others =
        alike.stream()
            .skip(1)
            .map(f -> String.join("; ", FindingText.concerned(f)))
            .collect(Collectors.joining("; "));
    return finding().message() + (others.isEmpty() ? "" : " The same at " + others + ".");
  }
}
