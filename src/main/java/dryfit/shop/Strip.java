package dryfit.shop;

import dryfit.geometry.Vec2;
import java.util.Arrays;
import java.util.List;

/**
 * A board taken in strips across it, each with what is already used up in it; or what a shape
 * covers in such strips. The strips are as wide as {@link #WIDE}; in each, a shape covers from its
 * lowest to its highest place, so shapes that keep apart here keep apart in truth.
 */
final class Strip {
  /** Width of a strip along the board, mm. */
  static final double WIDE = 4;

  private final double width;

  /** Of each strip, one after the other, where what is used up begins and ends in it. */
  private double[] from;

  private double[] to;

  /** How many places a strip has in those. */
  private int places = 4;

  private final int[] count;

  /** The greatest room that is left in each strip. */
  private final double[] free;

  private Cover lastShape;
  private Spot lastSpot;

  /** An empty board. */
  Strip(double length, double width) {
    int columns = (int) Math.max(0, Math.floor(length / WIDE));
    this.width = width;
    this.from = new double[columns * places];
    this.to = new double[columns * places];
    this.count = new int[columns];
    this.free = new double[columns];
    clear();
  }

  /** Makes it empty again. */
  void clear() {
    Arrays.fill(count, 0);
    Arrays.fill(free, width);
  }

  /**
   * What a shape covers: for each strip its lowest and its highest place, from its own corner.
   *
   * @param least what it covers in the strip where it covers least
   */
  record Cover(double x, double y, double[] low, double[] high, double least) {
    static Cover of(List<Vec2> outline) {
      double x0 = outline.stream().mapToDouble(Vec2::x).min().orElse(0);
      double y0 = outline.stream().mapToDouble(Vec2::y).min().orElse(0);
      double x1 = outline.stream().mapToDouble(Vec2::x).max().orElse(0);
      int n = Math.max(1, (int) Math.ceil((x1 - x0) / WIDE - 1e-9));
      double[] low = new double[n];
      double[] high = new double[n];
      Arrays.fill(low, Double.POSITIVE_INFINITY);
      Arrays.fill(high, Double.NEGATIVE_INFINITY);
      for (int i = 0; i < outline.size(); i++) {
        Vec2 a = outline.get(i);
        Vec2 b = outline.get((i + 1) % outline.size());
        edge(a.x() < b.x() ? a : b, a.x() < b.x() ? b : a, x0, y0, low, high);
      }
      double least = Double.POSITIVE_INFINITY;
      for (int c = 0; c < n; c++) {
        least = Math.min(least, high[c] - low[c]);
      }
      return new Cover(x0, y0, low, high, least);
    }

    private static void edge(Vec2 a, Vec2 b, double x0, double y0, double[] low, double[] high) {
      int first = Math.min(low.length - 1, (int) Math.floor((a.x() - x0) / WIDE));
      int last = Math.min(low.length - 1, (int) Math.floor((b.x() - x0) / WIDE));
      for (int c = first; c <= last; c++) {
        double l = Math.max(a.x(), x0 + c * WIDE);
        double r = Math.min(b.x(), x0 + (c + 1) * WIDE);
        for (double x : new double[] {l, r}) {
          double share = b.x() > a.x() ? (x - a.x()) / (b.x() - a.x()) : 0;
          cover(c, a.y() + share * (b.y() - a.y()) - y0, low, high);
        }
        if (b.x() == a.x()) {
          cover(c, b.y() - y0, low, high);
        }
      }
    }

    private static void cover(int c, double y, double[] low, double[] high) {
      low[c] = Math.min(low[c], y);
      high[c] = Math.max(high[c], y);
    }
  }

  /** Where a shape can lie. */
  record Spot(int column, double y) {}

  /** The first place along the board with room, and the lowest there; null if there is none. */
  Spot room(Cover shape) {
    int n = shape.low().length;
    int seen = 0;
    // The first strip behind the last that is too full for any of the shape.
    int after = 0;
    for (int c = 0; c + n <= count.length; c++) {
      for (; seen < c + n; seen++) {
        after = free[seen] < shape.least() ? seen + 1 : after;
      }
      double y = after > c ? -1 : lowest(shape, c);
      if (y >= 0) {
        return new Spot(c, y);
      }
    }
    return null;
  }

  /** The lowest y with room at a column, or -1. */
  private double lowest(Cover shape, int at) {
    double y = 0;
    boolean moved = true;
    while (moved) {
      moved = false;
      for (int i = 0; i < shape.low().length; i++) {
        int c = at + i;
        for (int k = c * places; k < c * places + count[c]; k++) {
          double above = to[k] - shape.low()[i];
          if (y + shape.high()[i] > from[k] && y < above) {
            y = above;
            moved = true;
          }
        }
        if (y + shape.high()[i] > width) {
          return -1;
        }
      }
    }
    return y;
  }

  /** Takes up what a shape covers. */
  void take(Cover shape, Spot spot) {
    lastShape = shape;
    lastSpot = spot;
    for (int i = 0; i < shape.low().length; i++) {
      take(spot.column() + i, spot.y() + shape.low()[i], spot.y() + shape.high()[i]);
    }
  }

  /** Gives back what was taken up last. */
  void takeBack() {
    for (int i = 0; i < lastShape.low().length; i++) {
      int c = lastSpot.column() + i;
      count[c]--;
      free[c] = free(c);
    }
  }

  /** Takes up a rectangle. */
  void take(double x0, double y0, double x1, double y1) {
    int first = Math.max(0, (int) Math.floor(x0 / WIDE));
    int last = Math.min(count.length - 1, (int) Math.floor(x1 / WIDE));
    for (int c = first; c <= last; c++) {
      take(c, y0, y1);
    }
  }

  private void take(int c, double y0, double y1) {
    if (count[c] == places) {
      from = wider(from);
      to = wider(to);
      places *= 2;
    }
    from[c * places + count[c]] = y0;
    to[c * places + count[c]] = y1;
    count[c]++;
    free[c] = free(c);
  }

  /** With twice as many places in each strip. */
  private double[] wider(double[] of) {
    double[] out = new double[2 * of.length];
    for (int c = 0; c < count.length; c++) {
      System.arraycopy(of, c * places, out, 2 * c * places, places);
    }
    return out;
  }

  private double free(int c) {
    int first = c * places;
    double most = 0;
    for (int start = -1; start < count[c]; start++) {
      double y = start < 0 ? 0 : to[first + start];
      double end = width;
      for (int k = first; k < first + count[c]; k++) {
        // Within another, it ends where it begins.
        end = to[k] > y ? Math.min(end, Math.max(y, from[k])) : end;
      }
      most = Math.max(most, end - y);
    }
    return most;
  }
}
