package dryfit.solid.exact;

import java.math.BigInteger;
import java.util.Arrays;

/**
 * Divides points at which parts of the surface only touch. Each rim edge is paired with the one it
 * is a seam with; where four or more faces meet at an edge, those on either side of one wedge of
 * wood are paired. The corners that hang together over such pairs become one vertex.
 */
final class Umbrellas {
  private final Planes planes;
  private final Points points;
  private final Surface surface;

  int vertices;

  /** The vertex of each corner. */
  final int[] vertexOf;

  /** For each corner a vertex to be put in the middle of its rim edge, or -1. */
  final int[] middleOf;

  private final int[] mate;
  private final int[] nextSame;
  private final Sets sets = new Sets();

  Umbrellas(Planes planes, Points points, Surface surface) {
    this.planes = planes;
    this.points = points;
    this.surface = surface;
    vertexOf = new int[surface.corners()];
    middleOf = new int[surface.corners()];
    mate = new int[surface.corners()];
    nextSame = new int[surface.corners()];
  }

  void build() {
    int n = surface.corners();
    sets.reset(n);
    KeyMap first = new KeyMap(n / 2);
    boolean anyCrowded = false;
    for (int c = n - 1; c >= 0; c--) {
      long key = KeyMap.pair(surface.point.at[c], surface.point.at[surface.next(c)]);
      nextSame[c] = first.get(key);
      first.put(key, c);
    }
    for (int c = 0; c < n; c++) {
      long key = KeyMap.pair(surface.point.at[c], surface.point.at[surface.next(c)]);
      if (first.get(key) == c) {
        int other = nextSame[c];
        if (nextSame[other] == KeyMap.NONE) {
          pair(c, other);
        } else {
          pairAround(c);
          anyCrowded = true;
        }
      }
    }
    Arrays.fill(vertexOf, -1);
    for (int c = 0; c < n; c++) {
      int root = sets.find(c);
      if (vertexOf[root] < 0) {
        vertexOf[root] = vertices++;
      }
      vertexOf[c] = vertexOf[root];
    }
    Arrays.fill(middleOf, -1);
    if (anyCrowded) {
      markTwins();
    }
  }

  /**
   * Where two edges that lie on each other end at the same vertices at both ends, nothing would
   * tell them apart (only where four or more faces meet at an edge can that be); each gets a vertex
   * of its own in its middle.
   */
  private void markTwins() {
    KeyMap first = new KeyMap(middleOf.length / 2);
    for (int c = 0; c < middleOf.length; c++) {
      if (c < mate[c]) {
        long key = KeyMap.pair(vertexOf[c], vertexOf[surface.next(c)]);
        int twin = first.get(key);
        if (twin == KeyMap.NONE) {
          first.put(key, c);
        } else {
          mark(c);
          if (middleOf[twin] < 0) {
            mark(twin);
          }
        }
      }
    }
  }

  private void mark(int corner) {
    middleOf[corner] = vertices;
    middleOf[mate[corner]] = vertices;
    vertices++;
  }

  private void pair(int a, int b) {
    mate[a] = b;
    mate[b] = a;
    sets.join(a, surface.next(b));
    sets.join(surface.next(a), b);
  }

  /** One rim edge seen along its line from one end: the face hangs on it like a door. */
  private static final class Door {
    final int corner;
    final BigInteger[] normal;
    final boolean opensWood;

    Door(int corner, BigInteger[] normal, boolean opensWood) {
      this.corner = corner;
      this.normal = normal;
      this.opensWood = opensWood;
    }
  }

  private void pairAround(int firstCorner) {
    int count = 0;
    for (int c = firstCorner; c != KeyMap.NONE; c = nextSame[c]) {
      count++;
    }
    int from = surface.point.at[firstCorner];
    int to = surface.point.at[surface.next(firstCorner)];
    Door[] doors = new Door[count];
    int k = 0;
    for (int c = firstCorner; c != KeyMap.NONE; c = nextSame[c]) {
      Face face = surface.faces.get(surface.face(c));
      boolean along = surface.point.at[c] == from;
      // Turning anticlockwise about the edge, a face that runs along it is left for the air in
      // front of it, one that runs against it for the wood behind it.
      int sign = along ? face.facing() : -face.facing();
      BigInteger[] n = new BigInteger[3];
      for (int axis = 0; axis < 3; axis++) {
        n[axis] = BigInteger.valueOf(sign * planes.normal(face.plane(), axis));
      }
      doors[k++] = new Door(c, n, !along);
    }
    double[] edge = {
      points.x[to] - points.x[from], points.y[to] - points.y[from], points.z[to] - points.z[from]
    };
    Door zero = doors[0];
    Arrays.sort(doors, (a, b) -> compare(zero, a, b, edge));
    int start = 0;
    while (!doors[start].opensWood) {
      start++;
    }
    for (int m = 0; m < count; m++) {
      Door door = doors[(start + m) % count];
      if (door.opensWood) {
        pair(door.corner, doors[(start + m + 1) % count].corner);
      }
    }
  }

  /** The order in which doors are met when turning anticlockwise from a given one. */
  private static int compare(Door zero, Door a, Door b, double[] edge) {
    int ha = half(zero, a, edge);
    int hb = half(zero, b, edge);
    return ha != hb ? Integer.compare(ha, hb) : -turn(a.normal, b.normal, edge);
  }

  /** 0 for the given door itself, 1 up to a half turn, 2 at it, 3 beyond. */
  private static int half(Door zero, Door d, double[] edge) {
    int turn = turn(zero.normal, d.normal, edge);
    if (turn != 0) {
      return turn > 0 ? 1 : 3;
    }
    BigInteger dot = BigInteger.ZERO;
    for (int k = 0; k < 3; k++) {
      dot = dot.add(zero.normal[k].multiply(d.normal[k]));
    }
    return dot.signum() > 0 ? 0 : 2;
  }

  /** Whether turning from a to b about the edge is anticlockwise (1), clockwise or neither. */
  private static int turn(BigInteger[] a, BigInteger[] b, double[] edge) {
    double sum = 0;
    for (int k = 0; k < 3; k++) {
      int i = (k + 1) % 3;
      int j = (k + 2) % 3;
      // The cross product is along the edge, so that no term can outweigh another wrongly.
      sum += edge[k] * a[i].multiply(b[j]).subtract(a[j].multiply(b[i])).doubleValue();
    }
    return (int) Math.signum(sum);
  }
}
