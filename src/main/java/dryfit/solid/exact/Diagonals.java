package dryfit.solid.exact;

import java.util.Arrays;

/**
 * Exchanges diagonals between pairs of triangles that form a convex quadrangle, as long as that
 * makes the sum of the two angles facing the diagonal smaller (Lawson's rule, which leads to the
 * triangulation with the greatest least angle). Triangles without height disappear on the way.
 */
final class Diagonals {
  private final double[] px;
  private final double[] py;
  private final IntList out;
  private final KeyMap sideAt = new KeyMap(64);
  private int[] opposite = new int[64];
  private final IntList pending = new IntList();

  Diagonals(double[] px, double[] py, IntList out) {
    this.px = px;
    this.py = py;
    this.out = out;
  }

  /** Improves the triangles from a place in the list to its end. */
  void improve(int first) {
    int count = out.size - first;
    if (count <= 3) {
      return;
    }
    if (opposite.length < count) {
      opposite = new int[2 * count];
    }
    Arrays.fill(opposite, 0, count, -1);
    sideAt.clear();
    pending.clear();
    for (int s = 0; s < count; s++) {
      int a = out.at[first + s];
      int b = out.at[first + following(s)];
      int other = sideAt.get(((long) b << 32) | a);
      if (other != KeyMap.NONE && opposite[other] < 0) {
        opposite[s] = other;
        opposite[other] = s;
        pending.add(s);
      } else {
        sideAt.put(((long) a << 32) | b, s);
      }
    }
    int limit = 20 * count;
    while (pending.size > 0 && limit-- > 0) {
      int s = pending.at[--pending.size];
      if (opposite[s] >= 0 && shouldFlip(first, s)) {
        flip(first, s);
      }
    }
  }

  private static int following(int side) {
    return side % 3 == 2 ? side - 2 : side + 1;
  }

  private boolean shouldFlip(int first, int s) {
    int o = opposite[s];
    int a = out.at[first + s];
    int b = out.at[first + following(s)];
    int c = out.at[first + following(following(s))];
    int d = out.at[first + following(following(o))];
    if (c == d) {
      return false;
    }
    double ab = cross(a, d, c);
    double ba = cross(d, b, c);
    double span = Math.abs(px[c] - px[d]) + Math.abs(py[c] - py[d]);
    if (!(ab > Filling.FLAT * span && ba > Filling.FLAT * span)) {
      return false;
    }
    // Angles at c and d: the sum exceeds a half turn if its sine is negative.
    double cosC = dot(c, a, b);
    double cosD = dot(d, a, b);
    double sinC = cross(c, a, b);
    double sinD = cross(d, b, a);
    double sine = sinC * cosD + cosC * sinD;
    double size = Math.abs(sinC * cosD) + Math.abs(cosC * sinD);
    return sine < -0x1p-30 * size;
  }

  private double cross(int o, int a, int b) {
    return (px[a] - px[o]) * (py[b] - py[o]) - (py[a] - py[o]) * (px[b] - px[o]);
  }

  private double dot(int o, int a, int b) {
    return (px[a] - px[o]) * (px[b] - px[o]) + (py[a] - py[o]) * (py[b] - py[o]);
  }

  /** Triangles a b c and b a d become c a d and d b c. */
  private void flip(int first, int s) {
    int o = opposite[s];
    int sb = following(s);
    int sc = following(sb);
    int oa = following(o);
    int od = following(oa);
    int a = out.at[first + s];
    int b = out.at[first + sb];
    int c = out.at[first + sc];
    int d = out.at[first + od];
    int bc = opposite[sb];
    int ca = opposite[sc];
    int ad = opposite[oa];
    int db = opposite[od];
    out.at[first + s] = c;
    out.at[first + sb] = a;
    out.at[first + sc] = d;
    out.at[first + o] = d;
    out.at[first + oa] = b;
    out.at[first + od] = c;
    link(s, ca);
    link(sb, ad);
    link(o, db);
    link(oa, bc);
    link(sc, od);
    pending.add(s);
    pending.add(sb);
    pending.add(o);
    pending.add(oa);
  }

  private void link(int s, int o) {
    opposite[s] = o;
    if (o >= 0) {
      opposite[o] = s;
    }
  }
}
