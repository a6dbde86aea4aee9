package dryfit.document;

import dryfit.measure.Literal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sizes written so that they would be worked out as something their maker never meant. */
final class Slips {
  /** A point where a size has a space, as in {@code 1.3/4}; with spaces it is a division. */
  private static final Pattern POINT =
      Pattern.compile("(?<![\\w.])(\\d*)\\.(\\d+)/(\\d+)(?![\\w.])");

  /** {@code 1-3/4} by itself is a size; in a longer expression it would be a subtraction. */
  private static final Pattern HYPHEN =
      Pattern.compile("(?<![\\w.)])(\\d+)-(\\d+)/(\\d+)(?![\\w.])");

  private Slips() {}

  /**
   * @throws ExpressionFault {@code bad-expression}, with what would be right
   */
  static void refuse(String text) {
    Matcher point = POINT.matcher(text);
    if (point.find()) {
      boolean fraction = isOnARule(point.group(2), point.group(3)) && !point.group(1).isEmpty();
      throw ExpressionFault.of(
          "bad-expression",
          Problems.quoted(point.group())
              + " mixes a decimal and a fraction; write "
              + (fraction
                  ? point.group(1) + " " + point.group(2) + "/" + point.group(3) + ", or "
                  : "")
              + point.group().replace("/", " / ")
              + ", with spaces, if it is to be divided");
    }
    Matcher hyphen = HYPHEN.matcher(text);
    while (hyphen.find()) {
      boolean whole = hyphen.group().equals(text.strip());
      boolean hasUnit =
          Literal.at(text, hyphen.start()).filter(found -> found.end() >= hyphen.end()).isPresent();
      if (!whole && !hasUnit && isOnARule(hyphen.group(2), hyphen.group(3))) {
        throw ExpressionFault.of(
            "bad-expression",
            Problems.quoted(hyphen.group())
                + " could be a size or a subtraction; write "
                + hyphen.group().replaceFirst("-", " ")
                + ", or "
                + hyphen.group().replaceFirst("-", " - ")
                + " with spaces");
      }
    }
  }

  /**
   * Whether it is a proper fraction such as a rule has: of halves down to hundred-twenty-eighths.
   */
  private static boolean isOnARule(String above, String below) {
    if (above.length() > 3 || below.length() > 3) {
      return false;
    }
    int denominator = Integer.parseInt(below);
    return denominator > 1
        && denominator <= 128
        && Integer.bitCount(denominator) == 1
        && Integer.parseInt(above) < denominator;
  }
}
