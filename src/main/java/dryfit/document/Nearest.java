package dryfit.document;

import java.util.Arrays;
import java.util.Collection;
import java.util.Optional;

/** Finds the name that a slip of the pen most likely meant. */
public final class Nearest {
  private Nearest() {}

  /** More slips than this in one word are no slip. */
  private static final int MOST = 4;

  /**
   * The known name with the fewest letters to change, add, drop or swap with their neighbour; the
   * first of equals; empty if even that one takes more than a third of the word (two at least are
   * allowed, four at most).
   */
  public static Optional<String> to(String word, Collection<String> known) {
    int most = Math.min(MOST, Math.max(2, word.length() / 3));
    String nearest = null;
    for (String name : known) {
      int distance = distance(word, name, most);
      if (distance <= most && distance < Math.max(word.length(), name.length())) {
        nearest = name;
        most = distance - 1;
      }
    }
    return Optional.ofNullable(nearest);
  }

  /**
   * Edit distance with swaps of neighbours (optimal string alignment). Only cells near the diagonal
   * are worked out, since those further off cost more than {@code most} already; so a long list of
   * long names stays cheap.
   *
   * @return the distance, or some number above {@code most} if it is greater than that
   */
  static int distance(String a, String b, int most) {
    int tooFar = most + 1;
    if (Math.abs(a.length() - b.length()) > most) {
      return tooFar;
    }
    int[] beforeLast = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = Math.min(j, tooFar);
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] row = new int[b.length() + 1];
      Arrays.fill(row, tooFar);
      row[0] = Math.min(i, tooFar);
      int least = row[0];
      for (int j = Math.max(1, i - most); j <= Math.min(b.length(), i + most); j++) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        row[j] = Math.min(Math.min(last[j] + 1, row[j - 1] + 1), last[j - 1] + change);
        boolean swapped =
            i > 1
                && j > 1
                && a.charAt(i - 1) == b.charAt(j - 2)
                && a.charAt(i - 2) == b.charAt(j - 1);
        if (swapped) {
          row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
        }
        least = Math.min(least, row[j]);
      }
      // A swap reaches back two rows, so both must be hopeless before giving up.
      if (least > most && Arrays.stream(last).min().orElse(0) > most) {
        return tooFar;
      }
      beforeLast = last;
      last = row;
    }
    return Math.min(last[b.length()], tooFar);
  }
}
