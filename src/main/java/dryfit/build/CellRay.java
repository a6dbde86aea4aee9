package dryfit.build;

import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A straight line of sight through convex cells. */
final class CellRay {
  private CellRay() {}

  /** A stretch inside one cell, and the face the line comes in by. */
  private record Stretch(double in, double out, Plane face) {}

  /**
   * Where a line first comes into the wood.
   *
   * @param distance from the start of the line, mm
   * @param face the face, normal out of the wood
   * @param out where it first leaves the wood again
   */
  record Entry(double distance, Plane face, double out) {}

  /** The first entry beyond {@code from} along the unit direction {@code d}, if there is one. */
  static Optional<Entry> first(List<Convex> cells, Vec3 from, Vec3 d) {
    List<Stretch> stretches = new ArrayList<>();
    for (Convex cell : cells) {
      stretch(cell, from, d).filter(s -> s.out() > 0).ifPresent(stretches::add);
    }
    stretches.sort(Comparator.comparingDouble(Stretch::in));
    // A line that starts in the wood has to leave it before it can come in.
    double within = 0;
    while (!stretches.isEmpty() && stretches.get(0).in() <= within) {
      within = Math.max(within, stretches.remove(0).out() + Tolerances.contact());
    }
    if (stretches.isEmpty()) {
      return Optional.empty();
    }
    double out = stretches.get(0).out();
    for (Stretch s : stretches) {
      // Neighbouring cells share a face; the line goes from one into the other without leaving.
      if (s.in() <= out + Tolerances.contact()) {
        out = Math.max(out, s.out());
      }
    }
    return Optional.of(new Entry(stretches.get(0).in(), stretches.get(0).face(), out));
  }

  private static Optional<Stretch> stretch(Convex cell, Vec3 from, Vec3 d) {
    double in = Double.NEGATIVE_INFINITY;
    double out = Double.POSITIVE_INFINITY;
    Plane face = null;
    for (Plane plane : cell.planes()) {
      double rate = plane.normal().dot(d);
      double height = plane.height(from);
      if (Math.abs(rate) < Tolerances.parallel()) {
        if (height > 0) {
          return Optional.empty();
        }
      } else if (rate < 0) {
        if (-height / rate > in) {
          in = -height / rate;
          face = plane;
        }
      } else {
        out = Math.min(out, -height / rate);
      }
    }
    return face == null || in >= out ? Optional.empty() : Optional.of(new Stretch(in, out, face));
  }
}
