package dryfit.geometry;

import java.util.List;
import java.util.Locale;

/** The check that an outline has an inside. */
final class SimpleOutline {
  private SimpleOutline() {}

  /**
   * @throws IllegalArgumentException if two edges that are not neighbours meet, if two neighbours
   *     fold back, or if there are fewer than three points
   */
  static void require(List<Vec2> loop) {
    int n = loop.size();
    if (n < 3) {
      throw new IllegalArgumentException("an outline needs three points that differ");
    }
    for (int i = 0; i < n; i++) {
      Vec2 a = loop.get(i);
      Vec2 b = loop.get((i + 1) % n);
      Vec2 after = loop.get((i + 2) % n);
      if (Ears.turn(a, b, after) == 0 && b.minus(a).dot(after.minus(b)) < 0) {
        throw new IllegalArgumentException("the outline folds back on itself at " + place(b));
      }
      int last = i == 0 ? n - 1 : n;
      for (int j = i + 2; j < last; j++) {
        if (meet(a, b, loop.get(j), loop.get((j + 1) % n))) {
          throw new IllegalArgumentException(
              "the outline touches or crosses itself near " + place(a));
        }
      }
    }
  }

  private static boolean meet(Vec2 a, Vec2 b, Vec2 c, Vec2 d) {
    if (Math.max(a.x(), b.x()) < Math.min(c.x(), d.x())
        || Math.max(c.x(), d.x()) < Math.min(a.x(), b.x())
        || Math.max(a.y(), b.y()) < Math.min(c.y(), d.y())
        || Math.max(c.y(), d.y()) < Math.min(a.y(), b.y())) {
      return false;
    }
    // Boxes meet, so edges in one line meet too.
    return Ears.turn(a, b, c) * Ears.turn(a, b, d) <= 0
        && Ears.turn(c, d, a) * Ears.turn(c, d, b) <= 0;
  }

  private static String place(Vec2 p) {
    return String.format(Locale.ROOT, "(%.3f, %.3f)", p.x(), p.y());
  }
}
