package dryfit.shop.jig;

import java.io.Serial;

/** This jig cannot be made, or would be of no use; the message tells the maker why. */
final class NoJig extends RuntimeException {
  @Serial private static final long serialVersionUID = 1L;

  NoJig(String because) {
    super(because);
  }
}
