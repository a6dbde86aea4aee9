package dryfit.measure;

import java.util.Locale;
import java.util.OptionalDouble;

/** Lengths as text. Inside the program a length is a {@code double} in millimetres. */
public final class Length {
  /** Half of the last digit of a length in millimetres, which leaves out as much. */
  private static final double SHOWS = 0.05;

  private Length() {}

  /** A unit a bare number can be meant in and a length can be printed in. */
  public enum Unit {
    MM(1, "mm"),
    /** The international inch, 25.4 mm exactly. */
    IN(25.4, "in");

    private final double mm;
    private final String symbol;

    Unit(double mm, String symbol) {
      this.mm = mm;
      this.symbol = symbol;
    }

    /** How many millimetres one of it is. */
    public double mm() {
      return mm;
    }

    /** So many of it, in millimetres; rounded once, so that 3/8 in is 9.525 mm to the last bit. */
    public double mm(double count) {
      return this == IN ? count * 254 / 10 : count * mm;
    }

    /** The symbol printed after a number. */
    public String symbol() {
      return symbol;
    }
  }

  /**
   * Reads {@code 440}, {@code 44 cm}, {@code 8 3/4 in}, {@code 3/8 in}, {@code 5-1/2 in}, {@code 8
   * 3/4"}; empty if the text is no length.
   *
   * @param bare the unit of a number that has none
   * @return millimetres
   */
  public static OptionalDouble parse(String text, Unit bare) {
    OptionalDouble number = Fraction.parse(text);
    if (number.isPresent()) {
      return OptionalDouble.of(bare.mm(number.getAsDouble()));
    }
    return Literal.whole(text)
        .filter(found -> found.kind() == Literal.Kind.LENGTH)
        .map(found -> OptionalDouble.of(found.value()))
        .orElse(OptionalDouble.empty());
  }

  /**
   * A length for people: {@code 440.0 mm}, or the nearest fraction of an inch. A fraction is
   * followed by what it leaves out, in thousandths of an inch, where that is more than a length in
   * millimetres leaves out: {@code 17 21/64 in (−0.005)} means five thousandths less than the
   * fraction. What is too small for any fraction is told in thousandths: {@code 0.004 in}.
   *
   * @param denominator the finest division of the inch, e.g. 64; not used for millimetres
   */
  public static String print(double mm, Unit unit, int denominator) {
    if (unit == Unit.MM) {
      return decimal(mm, unit, 1);
    }
    Fraction nearest = Fraction.nearest(mm / unit.mm(), denominator);
    if (nearest.value() == 0) {
      String thousandths = decimal(mm, unit, 3);
      return thousandths.equals(decimal(0, unit, 3)) ? "0 " + unit.symbol() : thousandths;
    }
    String text = nearest.text() + " " + unit.symbol();
    boolean shows = Math.abs(nearest.remainder() * unit.mm()) > SHOWS;
    return shows ? text + " (" + signed(nearest.remainder()) + ")" : text;
  }

  /**
   * A length as a refusal tells it: to a hundredth of a millimetre, or to the nearest sixty-fourth
   * of an inch with what that leaves out.
   */
  public static String told(double mm, Unit unit) {
    return unit == Unit.MM ? decimal(mm, unit, 2) : print(mm, unit, 64);
  }

  /** A length with so many decimals: {@code 17.323 in}. */
  public static String decimal(double mm, Unit unit, int decimals) {
    return number(mm / unit.mm(), decimals) + " " + unit.symbol();
  }

  private static String signed(double remainder) {
    return String.format(Locale.ROOT, "%+.3f", remainder).replace('-', '−');
  }

  /** A number with so many decimals, a true minus sign, and never a negative zero. */
  static String number(double value, int decimals) {
    String size = String.format(Locale.ROOT, "%." + decimals + "f", Math.abs(value));
    boolean zero = size.chars().allMatch(c -> c == '0' || c == '.');
    return value < 0 && !zero ? "−" + size : size;
  }
}
