package dryfit.fit.spread;

import dryfit.fit.compare.Datum;
import java.util.List;

/**
 * How far one figure may come out from the plan. Millimetres; what is between {@code low} and
 * {@code high} holds 95 of 100 chairs.
 *
 * @param figure the figure as planned
 * @param least what it may not be below; infinite if there is no such limit
 * @param most what it may not be above; infinite if there is no such limit
 * @param worstLow the least, with every cut as far off as it may be, all the bad way
 * @param worstHigh the most, likewise
 * @param deviation standard deviation in closed form, from the straight shares alone
 * @param low from the draws
 * @param high from the draws
 * @param chance the share of draws beyond a limit
 * @param shares of the variance, the greatest first
 */
public record Spread(
    Datum figure,
    double least,
    double most,
    double worstLow,
    double worstHigh,
    double deviation,
    double low,
    double high,
    double chance,
    List<Share> shares) {
  public Spread {
    shares = List.copyOf(shares);
  }

  /** How much of a figure's variance comes from one cut, from 0 to 1. */
  public record Share(Cut cut, double each, double of) {}

  /** Whether anything is allowed or forbidden to it. */
  public boolean limited() {
    return Double.isFinite(least) || Double.isFinite(most);
  }

  /** Whether it is beyond its limit already as drawn. */
  public boolean beyondAsDrawn() {
    return figure.value() < least || figure.value() > most;
  }
}
