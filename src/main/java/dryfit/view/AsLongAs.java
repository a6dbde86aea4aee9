package dryfit.view;

import dryfit.fit.order.Onlooker;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/** Breaks a search for an order of assembly off once nobody wants its answer any more. */
record AsLongAs(BooleanSupplier wanted) implements Onlooker {
  @Override
  public void settled(int parts) {
    now("");
  }

  /**
   * @throws CancellationException if the answer is not wanted
   */
  @Override
  public void now(String doing) {
    if (!wanted.getAsBoolean()) {
      throw new CancellationException();
    }
  }
}
