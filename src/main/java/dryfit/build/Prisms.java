package dryfit.build;

import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Prisms along the entry of a tenon; sections are pairs of numbers, across cheeks and edges. */
final class Prisms {
  private Prisms() {}

  /** The corners of a rectangle. */
  static List<double[]> rectangle(double t0, double t1, double w0, double w1) {
    return List.of(
        new double[] {t0, w0}, new double[] {t1, w0}, new double[] {t1, w1}, new double[] {t0, w1});
  }

  /** The corners of a circle drawn with {@code n} of them. */
  static List<double[]> circle(double r, int n) {
    List<double[]> loop = new ArrayList<>(n);
    for (int k = 0; k < n; k++) {
      double angle = 2 * Math.PI * k / n;
      loop.add(new double[] {r * Math.sin(angle), r * Math.cos(angle)});
    }
    return loop;
  }

  /** A section where it stands so far along the entry. */
  static List<Vec3> placed(TenonAxes a, List<double[]> section, double along) {
    return section.stream()
        .map(
            c ->
                a.at()
                    .plus(a.thick().times(c[0]))
                    .plus(a.wide().times(c[1]))
                    .plus(a.entry().times(along)))
        .toList();
  }

  /**
   * From the mouth to a tip square to the entry.
   *
   * @param behind where it begins: the mouth, or a plane a little outside it
   */
  static Optional<Convex> of(TenonAxes a, List<double[]> section, double length, Plane behind) {
    // Far enough back that the plane behind cuts all the long edges.
    double back =
        50 + 12 * section.stream().mapToDouble(c -> Math.hypot(c[0], c[1])).max().orElse(0);
    return Convex.prism(placed(a, section, -back), a.entry().times(back + length)).clipped(behind);
  }
}
