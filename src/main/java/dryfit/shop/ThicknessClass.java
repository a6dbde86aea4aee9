package dryfit.shop;

import java.util.List;
import java.util.Optional;

/**
 * A thickness that hardwood is sawn to, named in quarters of an inch, and what is left when both of
 * its faces are planed. Surfaced thicknesses after the chart of <a
 * href="https://www.engineeringtoolbox.com/hardwood-lumber-dimensions-chart-d_1462.html">Hardwood
 * Lumber Dimensions</a>; that of 10/4 is from memory.
 *
 * @param quarters of an inch
 * @param surfaced planed on both faces, mm
 */
public record ThicknessClass(int quarters, double surfaced) {
  private static final double INCH = 25.4;

  /** Those that are sawn, thin ones first. */
  public static final List<ThicknessClass> ALL =
      List.of(
          new ThicknessClass(4, 13 / 16.0 * INCH),
          new ThicknessClass(5, (1 + 1 / 16.0) * INCH),
          new ThicknessClass(6, (1 + 5 / 16.0) * INCH),
          new ThicknessClass(8, 1.75 * INCH),
          new ThicknessClass(10, 2.25 * INCH),
          new ThicknessClass(12, 2.75 * INCH),
          new ThicknessClass(16, 3.75 * INCH));

  /** How the trade writes it: {@code 8/4}. */
  public String word() {
    return quarters + "/4";
  }

  /** As sawn, mm. */
  public double rough() {
    return quarters * INCH / 4;
  }

  /** The thinnest that leaves so much when planed; none if it has to be glued up. */
  public static Optional<ThicknessClass> thatLeaves(double thickness) {
    return ALL.stream().filter(c -> c.surfaced >= thickness - FITS).findFirst();
  }

  /** What planing leaves of a rough board, by what it takes off the next class below it. */
  public static double planed(double rough) {
    double loss = ALL.get(0).rough() - ALL.get(0).surfaced;
    for (ThicknessClass c : ALL) {
      if (c.rough() <= rough + FITS) {
        loss = c.rough() - c.surfaced;
      }
    }
    return Math.max(0, rough - loss);
  }

  /** A blank thicker by less than this is not another blank, mm. */
  private static final double FITS = 0.01;
}
