package dryfit.export.paper;

import dryfit.geometry.Vec2;
import java.util.List;

/** Whether ink comes into a rectangle. */
final class InkPlaces {
  private InkPlaces() {}

  static boolean anyWithin(List<Ink> ink, Vec2 low, Vec2 high) {
    return ink.stream().anyMatch(one -> isWithin(one, low, high));
  }

  private static boolean isWithin(Ink ink, Vec2 low, Vec2 high) {
    if (ink instanceof Ink.Line line) {
      return meets(line.points(), line.closed(), low, high);
    } else if (ink instanceof Ink.Area area) {
      return area.loops().stream().anyMatch(loop -> meets(loop, true, low, high));
    } else if (ink instanceof Ink.Words words) {
      return meets(List.of(words.at(), words.at()), false, low, high);
    } else if (ink instanceof Ink.Window window) {
      return anyWithin(window.ink(), low.minus(window.shift()), high.minus(window.shift()));
    }
    return true;
  }

  private static boolean meets(List<Vec2> points, boolean closed, Vec2 low, Vec2 high) {
    for (int i = 0; i + (closed ? 0 : 1) < points.size(); i++) {
      if (meets(points.get(i), points.get((i + 1) % points.size()), low, high)) {
        return true;
      }
    }
    return false;
  }

  /** Clips the line at each side in turn (Liang and Barsky, 1984). */
  private static boolean meets(Vec2 a, Vec2 b, Vec2 low, Vec2 high) {
    Vec2 d = b.minus(a);
    double[] p = {-d.x(), d.x(), -d.y(), d.y()};
    double[] q = {a.x() - low.x(), high.x() - a.x(), a.y() - low.y(), high.y() - a.y()};
    double from = 0;
    double to = 1;
    for (int i = 0; i < 4; i++) {
      if (p[i] == 0 && q[i] < 0) {
        return false;
      }
      if (p[i] < 0) {
        from = Math.max(from, q[i] / p[i]);
      } else if (p[i] > 0) {
        to = Math.min(to, q[i] / p[i]);
      }
    }
    return from <= to;
  }
}
