package dryfit.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Joins flat convex shapes that meet along whole sides: a side that one runs one way and its
 * neighbour the other is inside, and those left over are the outlines. No number is calculated, so
 * nothing can be lost to rounding.
 */
final class SectionOutlines {
  private SectionOutlines() {}

  /** A corner by its two numbers. */
  private record Corner(double u, double v) {
    double[] point() {
      return new double[] {u, v};
    }
  }

  private record Side(Corner from, Corner to) {
    Side back() {
      return new Side(to, from);
    }
  }

  /**
   * @param shapes corners of each, anticlockwise
   * @return anticlockwise loops; none if sides meet only in part, shapes touch in a corner or there
   *     is a hole in them
   */
  static Optional<List<List<double[]>>> of(List<List<double[]>> shapes) {
    Map<Corner, Corner> next = new LinkedHashMap<>();
    for (Side side : outer(shapes)) {
      if (next.put(side.from(), side.to()) != null) {
        return Optional.empty();
      }
    }
    List<List<double[]>> loops = new ArrayList<>();
    while (!next.isEmpty()) {
      List<double[]> loop = new ArrayList<>();
      Corner at = next.keySet().iterator().next();
      for (Corner to = next.remove(at); to != null; to = next.remove(to)) {
        loop.add(to.point());
      }
      if (twiceArea(loop) <= 0) {
        return Optional.empty();
      }
      loops.add(loop);
    }
    return Optional.of(loops);
  }

  private static Set<Side> outer(List<List<double[]>> shapes) {
    Set<Side> outer = new LinkedHashSet<>();
    for (List<double[]> shape : shapes) {
      for (int i = 0; i < shape.size(); i++) {
        double[] a = shape.get(i);
        double[] b = shape.get((i + 1) % shape.size());
        Side side = new Side(new Corner(a[0], a[1]), new Corner(b[0], b[1]));
        if (!outer.remove(side.back())) {
          outer.add(side);
        }
      }
    }
    return outer;
  }

  private static double twiceArea(List<double[]> loop) {
    double twice = 0;
    for (int i = 0; i < loop.size(); i++) {
      double[] a = loop.get(i);
      double[] b = loop.get((i + 1) % loop.size());
      twice += a[0] * b[1] - a[1] * b[0];
    }
    return twice;
  }
}
