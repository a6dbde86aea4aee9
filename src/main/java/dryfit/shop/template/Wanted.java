package dryfit.shop.template;

import java.util.Optional;

/**
 * How templates are wanted.
 *
 * @param waste how long each end is left for screws, mm; 0 for none
 * @param bush a guide bush that runs along the template
 * @param hand which of a pair is drawn
 * @param depths how far the lines of equal depth of a hollow are apart, mm
 */
public record Wanted(double waste, Optional<GuideBush> bush, Hands hand, double depths) {

  /** Which of a pair is drawn. */
  public enum Hands {
    /** One template for both where they mirror each other. */
    BOTH,
    RIGHT,
    LEFT
  }
}
