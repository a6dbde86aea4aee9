package dryfit.solid.exact;

import java.util.Arrays;

/**
 * Directed segments in one plane, each on the line of another plane. They run from the lesser to
 * the greater point in the order of the plane's two kept coordinates. Crossing a segment from its
 * right to its left adds {@code times} to the count of one label.
 */
final class Segments {
  /** Bits of {@link #sides}: the segment counts just in front of the plane, or just behind it. */
  static final int FRONT = 1;

  static final int BACK = 2;

  private final Planes planes;
  private final Points points;
  private int plane;

  /** The two axes in which the plane is looked at; anticlockwise stays anticlockwise. */
  int i;

  int j;

  int count;
  int[] p = new int[64];
  int[] q = new int[64];
  int[] line = new int[64];

  /** The sign of {@code side(., line)} on the left. */
  byte[] left = new byte[64];

  int[] label = new int[64];
  int[] times = new int[64];
  byte[] sides = new byte[64];

  Segments(Planes planes, Points points) {
    this.planes = planes;
    this.points = points;
  }

  void reset(int plane) {
    this.plane = plane;
    int drop = planes.drop[plane];
    i = (drop + 1) % 3;
    j = (drop + 2) % 3;
    count = 0;
  }

  /** The order in which points are swept. */
  int compare(int a, int b) {
    int c = points.compare(a, b, i);
    return c != 0 ? c : points.compare(a, b, j);
  }

  /**
   * Adds a segment.
   *
   * @param along whether it runs along {@code normal(plane) x normal(line)} or against
   */
  void add(int from, int to, int line, boolean along, int label, int times, int sides) {
    if (count == p.length) {
      grow();
    }
    boolean forward = compare(from, to) < 0;
    p[count] = forward ? from : to;
    q[count] = forward ? to : from;
    this.line[count] = line;
    // To the left of that cross product is behind the other plane.
    left[count] = (byte) (along == forward ? -1 : 1);
    this.label[count] = label;
    this.times[count] = forward ? times : -times;
    this.sides[count] = (byte) sides;
    count++;
  }

  /** Adds a rim edge of a facet in this plane. */
  void addRim(int from, int to, int across, int label) {
    int axis = planes.crossAxis(plane, across);
    boolean along =
        planes.crossSign(plane, across, axis) > 0
            == points.along(to, axis) > points.along(from, axis);
    add(from, to, across, along, label, 1, FRONT);
  }

  private void grow() {
    int to = 2 * count;
    p = Arrays.copyOf(p, to);
    q = Arrays.copyOf(q, to);
    line = Arrays.copyOf(line, to);
    left = Arrays.copyOf(left, to);
    label = Arrays.copyOf(label, to);
    times = Arrays.copyOf(times, to);
    sides = Arrays.copyOf(sides, to);
  }
}
