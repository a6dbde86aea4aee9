package dryfit.geometry;

import java.util.List;

/** Whether one corner of a region sees another, decided exactly. */
final class Sight {
  private final double[] xy;

  Sight(double[] xy) {
    this.xy = xy;
  }

  double turn(int a, int b, int c) {
    return Orientation.of(
        xy[2 * a], xy[2 * a + 1], xy[2 * b], xy[2 * b + 1], xy[2 * c], xy[2 * c + 1]);
  }

  boolean same(int a, int b) {
    return a == b || (xy[2 * a] == xy[2 * b] && xy[2 * a + 1] == xy[2 * b + 1]);
  }

  /**
   * Whether the line from corner {@code at} to {@code target} starts into the region; {@code
   * before} and {@code after} are the neighbours of the corner and the region is on the left.
   */
  boolean within(int before, int at, int after, int target) {
    if (turn(before, at, after) > 0) {
      return turn(at, target, before) > 0 && turn(target, at, after) > 0;
    }
    return !(turn(at, target, after) >= 0 && turn(target, at, before) >= 0);
  }

  /** Whether nothing stands between two corners. */
  boolean clear(int a, int b, List<int[]> walls) {
    for (int[] wall : walls) {
      for (int i = 0; i < wall.length; i++) {
        int p = wall[i];
        int q = wall[(i + 1) % wall.length];
        if (blocks(a, b, p, q)) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean blocks(int a, int b, int p, int q) {
    if (same(p, a) || same(p, b)) {
      return false;
    }
    if (onSegment(a, b, p)) {
      return true;
    }
    if (same(q, a) || same(q, b)) {
      return false;
    }
    double p1 = turn(a, b, p);
    double q1 = turn(a, b, q);
    double a1 = turn(p, q, a);
    double b1 = turn(p, q, b);
    return ((p1 > 0 && q1 < 0) || (p1 < 0 && q1 > 0))
        && ((a1 >= 0 && b1 <= 0) || (a1 <= 0 && b1 >= 0));
  }

  private boolean onSegment(int a, int b, int p) {
    double dx = xy[2 * b] - xy[2 * a];
    double dy = xy[2 * b + 1] - xy[2 * a + 1];
    double t = (xy[2 * p] - xy[2 * a]) * dx + (xy[2 * p + 1] - xy[2 * a + 1]) * dy;
    return turn(a, b, p) == 0 && t > 0 && t < dx * dx + dy * dy;
  }
}
