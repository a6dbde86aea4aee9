package dryfit.fit.spread;

/**
 * What one cut does to a figure: {@code each · x + bend · x²} for a cut that is off by {@code x}.
 *
 * @param cut its index among all cuts
 * @param accuracy of that cut
 */
public record Term(int cut, double accuracy, double each, double bend) {

  /** The most it adds; below zero if it can only take away. */
  double most() {
    double ends = Math.max(at(accuracy), at(-accuracy));
    return bend < 0 ? Math.max(ends, turning()) : ends;
  }

  /** The least it adds. */
  double least() {
    double ends = Math.min(at(accuracy), at(-accuracy));
    return bend > 0 ? Math.min(ends, turning()) : ends;
  }

  double at(double off) {
    return (each + bend * off) * off;
  }

  /** Where it turns round, if that is within the accuracy; otherwise nothing, which is too. */
  private double turning() {
    double off = -each / (2 * bend);
    return Math.abs(off) <= accuracy ? at(off) : 0;
  }

  /** Of a rectangular distribution: (each · a)²/3, JCGM 100:2008, 4.3.7; without the bend. */
  double variance() {
    return each * each * accuracy * accuracy / 3;
  }
}
