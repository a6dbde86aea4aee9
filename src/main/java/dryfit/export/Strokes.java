package dryfit.export;

import dryfit.geometry.Vec2;
import java.util.ArrayList;
import java.util.List;

/** Lines drawn beside an outline, so that an edge of the line is the outline. */
final class Strokes {
  private Strokes() {}

  /**
   * A closed line moved outward, corners kept; for outlines whose corners all bend the same way.
   *
   * @param loop either way round
   */
  static List<Vec2> outside(List<Vec2> loop, double by) {
    double twice = 0;
    int n = loop.size();
    for (int i = 0; i < n; i++) {
      twice += loop.get(i).cross(loop.get((i + 1) % n));
    }
    double sign = twice > 0 ? 1 : -1;
    List<Vec2> out = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Vec2 a = normal(loop.get((i + n - 1) % n), loop.get(i)).times(sign);
      Vec2 b = normal(loop.get(i), loop.get((i + 1) % n)).times(sign);
      Vec2 both = a.plus(b);
      out.add(loop.get(i).plus(both.times(by / (1 + a.dot(b)))));
    }
    return out;
  }

  /** To the right of the way from a to b. */
  private static Vec2 normal(Vec2 a, Vec2 b) {
    Vec2 d = b.minus(a);
    return new Vec2(d.y(), -d.x()).times(1 / d.length());
  }
}
