package dryfit.app;

import dryfit.app.OpenChair.Ready;
import dryfit.fit.DryFit;
import dryfit.fit.spread.Spreading;
import dryfit.fit.spread.Spreads;

/** What the accuracy of the maker's cuts adds up to over a chair. */
public final class SpreadChair {
  private SpreadChair() {}

  /** Fits a chair and spreads its figures. */
  public static Spreads of(Ready ready, KernelChoice kernel) {
    return Spreading.of(ready.document(), DryFit.of(ready.chair()), kernel::kernel);
  }
}
