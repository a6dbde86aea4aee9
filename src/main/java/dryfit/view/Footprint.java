package dryfit.view;

import dryfit.fit.ChairMeasure;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What the feet of a chair enclose on the floor: the smallest outline without hollows round where
 * they stand. The weight has to fall inside it.
 *
 * @param corners anticlockwise seen from above, chair space
 */
record Footprint(List<Vec3> corners) {
  Footprint {
    corners = List.copyOf(corners);
  }

  /** Empty if it is not known where the chair stands. */
  static Optional<Footprint> of(ChairMeasure whole) {
    return whole
        .stance()
        .map(s -> s.feet().stream().map(ChairMeasure.Foot::at).toList())
        .filter(feet -> feet.size() > 2)
        .map(feet -> new Footprint(round(feet)));
  }

  /** Andrew's monotone chain. */
  private static List<Vec3> round(List<Vec3> points) {
    List<Vec3> sorted =
        points.stream()
            .sorted(Comparator.comparingDouble(Vec3::x).thenComparingDouble(Vec3::y))
            .toList();
    List<Vec3> out = chain(sorted);
    List<Vec3> back = new ArrayList<>(sorted);
    java.util.Collections.reverse(back);
    out.addAll(chain(back));
    return out;
  }

  private static List<Vec3> chain(List<Vec3> sorted) {
    List<Vec3> out = new ArrayList<>();
    for (Vec3 p : sorted) {
      while (out.size() > 1 && !left(out.get(out.size() - 2), out.get(out.size() - 1), p)) {
        out.remove(out.size() - 1);
      }
      out.add(p);
    }
    out.remove(out.size() - 1);
    return out;
  }

  private static boolean left(Vec3 a, Vec3 b, Vec3 c) {
    return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x()) > 0;
  }
}
