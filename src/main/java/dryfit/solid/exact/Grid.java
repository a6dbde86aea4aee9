package dryfit.solid.exact;

import dryfit.geometry.Mesh;
import dryfit.measure.Tolerances;
import java.util.List;
import java.util.Locale;

/**
 * The grid on which all corners of shapes lie. Coordinates are counted in its steps and stay below
 * 2^25, so that corners have 26 bits, normals of planes need 54 and sides of corners 82. The step
 * is 2^-14 mm, 61 nanometres, for shapes within 2048 mm of their origin; for larger ones it is
 * doubled as often as they need, up to 2^-8 mm, 4 micrometres, within 131,072 mm.
 */
final class Grid {
  private static final double FINEST = Tolerances.gridStep();

  /** How often the step is doubled at most, to reach far. */
  private static final int FARTHEST = 6;

  private static final double STEPS = 0x1p25;

  /** Millimetres. */
  private final double step;

  /** Every coordinate is a multiple of this many steps. */
  private final double multiple;

  private Grid(double step, double multiple) {
    this.step = step;
    this.multiple = multiple;
  }

  /**
   * The finest grid that reaches all corners of the shapes.
   *
   * @param coarser corners go to multiples of {@code 2^coarser} steps
   * @throws IllegalArgumentException if none does
   */
  static Grid over(List<Mesh> shapes, int coarser) {
    double reach = 0;
    for (Mesh shape : shapes) {
      for (double c : shape.coordinates()) {
        reach = Math.max(reach, Math.abs(c));
      }
    }
    double multiple = 1 << coarser;
    for (int doublings = 0; doublings <= FARTHEST; doublings++) {
      double step = FINEST * (1 << doublings);
      if (Math.rint(reach / step / multiple) * multiple < STEPS) {
        return new Grid(step, multiple);
      }
    }
    throw new IllegalArgumentException(
        String.format(
            Locale.ROOT,
            "it reaches %.0f mm from its own origin, and solids can be computed within %.0f mm"
                + " along each axis",
            reach,
            STEPS * FINEST * (1 << FARTHEST)));
  }

  /** The nearest grid coordinate. */
  int snap(double mm) {
    return (int) (Math.rint(mm / step / multiple) * multiple);
  }

  /** The place of a coordinate, mm. */
  double mm(double steps) {
    return steps * step + 0.0;
  }
}
