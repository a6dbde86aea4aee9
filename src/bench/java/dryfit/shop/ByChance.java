package dryfit.shop;

import dryfit.build.Chair;
import dryfit.document.BoardsPlan;
import java.util.SplittableRandom;

/** Layouts by chance, to hold the one that is searched for against. */
public final class ByChance {
  private final Nesting nesting;

  public ByChance(Chair chair, BoardsPlan plan) {
    nesting = new Nesting(chair, plan);
  }

  /**
   * The best of so many: with fewest parts left over, and of those the one of the highest yield.
   */
  public BoardLayout best(int count) {
    SplittableRandom random = new SplittableRandom(1);
    BoardLayout best = null;
    for (int i = 0; i < count; i++) {
      BoardLayout one = nesting.random(random);
      boolean better =
          best == null
              || one.left().size() < best.left().size()
              || one.left().size() == best.left().size() && one.yielded() > best.yielded();
      best = better ? one : best;
    }
    return best;
  }
}
