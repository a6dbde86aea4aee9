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
  private final double[][] from;
  private final double[][] to;
  private final int[] count;
  private Cover lastShape;
  private Spot lastSpot;

  /** An empty board. */
  Strip(double length, double width) {
    int columns = (int) Math.max(0, Math.floor(length / WIDE));
    this.width = width;
    this.from = new double[columns][4];
    this.to = new double[columns][4];
    this.count = new int[columns];
  }

  /** What a shape covers: for each strip its lowest and its highest place, from its own corner. */
  record Cover(double x, double y, double[] low, double[] high) {
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
      return new Cover(x0, y0, low, high);
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
    for (int c = 0; c + shape.low().length <= count.length; c++) {
      double y = lowest(shape, c);
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
        for (int k = 0; k < count[c]; k++) {
          double above = to[c][k] - shape.low()[i];
          if (y + shape.high()[i] > from[c][k] && y < above) {
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
      count[lastSpot.column() + i]--;
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
    if (count[c] == from[c].length) {
      from[c] = Arrays.copyOf(from[c], 2 * count[c]);
      to[c] = Arrays.copyOf(to[c], 2 * count[c]);
    }
    from[c][count[c]] = y0;
    to[c][count[c]] = y1;
    count[c]++;
  }
}
