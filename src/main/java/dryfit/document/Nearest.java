package dryfit.document;

import java.util.Collection;
import java.util.Optional;

/** Finds the name that a slip of the pen most likely meant. */
final class Nearest {
  private Nearest() {}

  /**
   * The known name with the fewest letters to change, add, drop or swap with their neighbour; the
   * first of equals; empty if even that one takes more than a third of the word, and at least two.
   */
  static Optional<String> to(String word, Collection<String> known) {
    if (word.length() > Limits.name()) {
      return Optional.empty();
    }
    int least = Math.max(2, word.length() / 3) + 1;
    String nearest = null;
    for (String name : known) {
      if (Math.abs(name.length() - word.length()) < least) {
        int distance = distance(word, name);
        if (distance < least && distance < Math.max(word.length(), name.length())) {
          least = distance;
          nearest = name;
        }
      }
    }
    return Optional.ofNullable(nearest);
  }

  /** Edit distance with swaps of neighbours (optimal string alignment). */
  static int distance(String a, String b) {
    int[][] cost = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      cost[i][0] = i;
    }
    for (int j = 0; j <= b.length(); j++) {
      cost[0][j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      for (int j = 1; j <= b.length(); j++) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        cost[i][j] =
            Math.min(Math.min(cost[i - 1][j] + 1, cost[i][j - 1] + 1), cost[i - 1][j - 1] + change);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          cost[i][j] = Math.min(cost[i][j], cost[i - 2][j - 2] + 1);
        }
      }
    }
    return cost[a.length()][b.length()];
  }
}
