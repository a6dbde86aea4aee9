package dryfit.export;

import dryfit.geometry.Vec2;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** The inside of an outline with openings: where there is room for words. */
final class Inside {
  private final List<List<Vec2>> loops;
  private final Vec2 low;
  private final Vec2 high;

  Inside(List<List<Vec2>> loops) {
    this.loops = loops;
    this.low = TemplateInk.low(loops.get(0));
    this.high = TemplateInk.high(loops.get(0));
  }

  Vec2 middle() {
    return low.plus(high).times(0.5);
  }

  /**
   * The middle of a place for a rectangle of a size that meets nothing that is taken, nearest to
   * the middle of the outline; none if there is no room.
   *
   * @param taken lower left and upper right corners
   */
  Optional<Vec2> room(Vec2 size, List<Vec2[]> taken) {
    Vec2 best = null;
    for (int i = 1; i < 40; i++) {
      double x = low.x() + (high.x() - low.x()) * i / 40;
      for (double y : heights(x, size)) {
        Vec2 at = new Vec2(x, y);
        if (isFree(at, size, taken)
            && (best == null || at.distance(middle()) < best.distance(middle()))) {
          best = at;
        }
      }
    }
    return Optional.ofNullable(best);
  }

  /** Half way up each stretch of the inside over x, and places above and below in wide ones. */
  private List<Double> heights(double x, Vec2 size) {
    List<Double> crossings = crossings(x);
    List<Double> out = new ArrayList<>();
    for (int i = 0; i + 1 < crossings.size(); i += 2) {
      double from = crossings.get(i);
      double to = crossings.get(i + 1);
      double middle = (from + to) / 2;
      out.add(middle);
      for (double away = size.y(); away < (to - from - size.y()) / 2; away += size.y()) {
        out.add(middle + away);
        out.add(middle - away);
      }
    }
    return out;
  }

  private List<Double> crossings(double x) {
    List<Double> out = new ArrayList<>();
    for (List<Vec2> loop : loops) {
      for (int i = 0; i < loop.size(); i++) {
        Vec2 a = loop.get(i);
        Vec2 b = loop.get((i + 1) % loop.size());
        if (a.x() <= x != b.x() <= x) {
          out.add(a.y() + (b.y() - a.y()) * (x - a.x()) / (b.x() - a.x()));
        }
      }
    }
    Collections.sort(out);
    return out;
  }

  private boolean isFree(Vec2 at, Vec2 size, List<Vec2[]> taken) {
    double y0 = at.y() - size.y() / 2;
    double y1 = at.y() + size.y() / 2;
    double x0 = at.x() - size.x() / 2;
    double x1 = at.x() + size.x() / 2;
    for (int i = 0; i <= 16; i++) {
      if (!covers(x0 + (x1 - x0) * i / 16, y0, y1)) {
        return false;
      }
    }
    return taken.stream()
        .noneMatch(t -> t[0].x() < x1 && t[1].x() > x0 && t[0].y() < y1 && t[1].y() > y0);
  }

  private boolean covers(double x, double y0, double y1) {
    List<Double> c = crossings(x);
    for (int i = 0; i + 1 < c.size(); i += 2) {
      if (c.get(i) <= y0 && c.get(i + 1) >= y1) {
        return true;
      }
    }
    return false;
  }
}
