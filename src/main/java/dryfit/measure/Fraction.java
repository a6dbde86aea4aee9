package dryfit.measure;

import java.math.BigInteger;
import java.util.OptionalDouble;

/**
 * A number as a whole and a proper fraction in lowest terms, as on a folding rule.
 *
 * @param negative whether the whole of it is below zero
 * @param whole the whole part, zero or more
 * @param numerator less than the denominator
 * @param denominator 1 when there is no fraction
 * @param remainder what the fraction leaves out: the true value less the fraction, signed
 */
public record Fraction(
    boolean negative, long whole, long numerator, long denominator, double remainder) {

  /**
   * The fraction nearest to a value; exactly half way goes away from zero.
   *
   * @param denominator the finest division, e.g. 64 for sixty-fourths
   * @throws IllegalArgumentException if the value is not a number of ordinary size, or the
   *     denominator is not from 1 to 4096
   */
  public static Fraction nearest(double value, int denominator) {
    if (!(Math.abs(value) < 1e9) || denominator < 1 || denominator > 4096) {
      throw new IllegalArgumentException("no fraction of " + value + " in 1/" + denominator);
    }
    long parts = Math.round(Math.abs(value) * denominator);
    long whole = parts / denominator;
    long rest = parts % denominator;
    long common = BigInteger.valueOf(rest).gcd(BigInteger.valueOf(denominator)).longValueExact();
    double printed = Math.copySign((double) parts / denominator, value);
    return new Fraction(
        value < 0 && parts > 0, whole, rest / common, denominator / common, value - printed);
  }

  /**
   * Reads {@code 8}, {@code 8.75}, {@code 3/4}, {@code 8 3/4} or {@code 8-3/4}, with a minus in
   * front if need be; empty for anything else.
   */
  public static OptionalDouble parse(String text) {
    // The scanner takes a fraction as one number when a unit follows; the millimetre changes
    // nothing.
    return Literal.whole(text)
        .filter(found -> found.kind() == Literal.Kind.BARE)
        .or(() -> Literal.whole(text + "mm").filter(found -> endsInDigit(text)))
        .map(found -> OptionalDouble.of(found.value()))
        .orElse(OptionalDouble.empty());
  }

  private static boolean endsInDigit(String text) {
    return !text.isEmpty() && Literal.endsNumber(text.charAt(text.length() - 1));
  }

  /** The fraction itself as a number, without the remainder. */
  public double value() {
    double size = whole + (double) numerator / denominator;
    return negative ? -size : size;
  }

  /** {@code 17 21/64}, {@code 21/64}, {@code 17} or {@code 0}; the remainder is not printed. */
  public String text() {
    String size =
        numerator == 0
            ? Long.toString(whole)
            : (whole == 0 ? "" : whole + " ") + numerator + "/" + denominator;
    return negative ? "−" + size : size;
  }
}
