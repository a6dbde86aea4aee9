package dryfit.solid.exact;

import dryfit.geometry.MassProperties;
import dryfit.geometry.Mesh;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Takes leaves to the grid and to facets. A face that is still flat on the grid stays whole;
 * otherwise its triangles are taken one by one. Where faces of one plane share an edge, the edge
 * disappears and they become one facet, so that a rim edge always has a facet of another plane on
 * its other side and lies where the two planes meet.
 */
final class Facets {
  private final Planes planes;
  private final Points points;
  private final Grid grid;
  final List<Facet> all = new ArrayList<>();

  /** Corners of the raw faces of the leaf at work, one loop after another. */
  private final IntList loopCorners = new IntList();

  private final IntList loopStart = new IntList();
  private final IntList faceStart = new IntList();
  private final IntList facePlane = new IntList();
  private final IntList faceOrigin = new IntList();
  private final IntList edgeFrom = new IntList();
  private final IntList edgeTo = new IntList();
  private final IntList edgeFace = new IntList();
  private final Sets merged = new Sets();
  private final KeyMap open;

  /** Zero if the faces of the leaf read last close against each other. */
  private long imbalance;

  /**
   * @param edges how many edges the largest leaf may have; more is no harm
   */
  Facets(Planes planes, Points points, Grid grid, int edges) {
    open = new KeyMap(edges);
    this.planes = planes;
    this.points = points;
    this.grid = grid;
  }

  /** Adds the facets of one leaf and returns how many there are now. */
  int add(int leaf, Mesh mesh) {
    double[] xyz = mesh.coordinates();
    int[] corner = new int[xyz.length / 3];
    for (int i = 0; i < corner.length; i++) {
      corner[i] =
          points.corner(
              grid.snap(xyz[3 * i]), grid.snap(xyz[3 * i + 1]), grid.snap(xyz[3 * i + 2]));
    }
    loopCorners.clear();
    loopStart.clear();
    faceStart.clear();
    facePlane.clear();
    faceOrigin.clear();
    readFaces(mesh, corner);
    if (imbalance != 0) {
      throw new IllegalArgumentException(
          "a shape is not a closed solid: its faces do not all share their edges");
    }
    if (isInsideOut(mesh, corner)) {
      if (MassProperties.of(mesh).volume() > 0) {
        // So thin that rounding to the grid turned it over: there is nothing of it there.
        return all.size();
      }
      throw new IllegalArgumentException(
          "a shape is inside out: its faces run clockwise seen from outside");
    }
    loopStart.add(loopCorners.size);
    faceStart.add(loopStart.size - 1);
    joinFaces();
    collect(leaf, mesh);
    return all.size();
  }

  /** Whether a mirrored shape kept its directions: it encloses a volume below zero. */
  private boolean isInsideOut(Mesh mesh, int[] corner) {
    int[] triangles = mesh.triangles();
    double volume = 0;
    for (int t = 0; t < triangles.length; t += 3) {
      int a = corner[triangles[t]];
      int b = corner[triangles[t + 1]];
      int c = corner[triangles[t + 2]];
      int o = corner[triangles[0]];
      double ax = points.x[a] - points.x[o];
      double ay = points.y[a] - points.y[o];
      double az = points.z[a] - points.z[o];
      double bx = points.x[b] - points.x[o];
      double by = points.y[b] - points.y[o];
      double bz = points.z[b] - points.z[o];
      double cx = points.x[c] - points.x[o];
      double cy = points.y[c] - points.y[o];
      double cz = points.z[c] - points.z[o];
      volume += ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
    }
    return volume < 0;
  }

  private void readFaces(Mesh mesh, int[] corner) {
    boolean[] bent = new boolean[mesh.faceCount()];
    boolean anyBent = false;
    imbalance = 0;
    for (int f = 0; f < bent.length; f++) {
      int[][] loops = mesh.loops(f);
      for (int[] loop : loops) {
        balance(loop, corner);
      }
      bent[f] = !readFlat(loops, corner, f);
      anyBent |= bent[f];
    }
    if (!anyBent) {
      return;
    }
    int[] triangles = mesh.triangles();
    int[][] loops = {new int[3]};
    for (int t = 0; t < mesh.triangleCount(); t++) {
      if (bent[mesh.faceOf(t)]) {
        System.arraycopy(triangles, 3 * t, loops[0], 0, 3);
        readFlat(loops, corner, mesh.faceOf(t));
      }
    }
  }

  /** Adds a number of 64 bits for each edge that runs one way, and takes it off for the other. */
  private void balance(int[] loop, int[] corner) {
    for (int i = 0; i < loop.length; i++) {
      int a = corner[loop[i]];
      int b = corner[loop[i + 1 < loop.length ? i + 1 : 0]];
      long mixed = KeyMap.pair(a, b) * 0x9E3779B97F4A7C15L;
      mixed = (mixed ^ (mixed >>> 29)) * 0xBF58476D1CE4E5B9L;
      mixed ^= mixed >>> 32;
      imbalance += a < b ? mixed : a > b ? -mixed : 0;
    }
  }

  /** Reads a face if it is flat; one without area is flat and left out. */
  private boolean readFlat(int[][] loops, int[] corner, int origin) {
    int firstCorner = loopCorners.size;
    int firstLoop = loopStart.size;
    long nx = 0;
    long ny = 0;
    long nz = 0;
    for (int[] loop : loops) {
      int start = loopCorners.size;
      loopStart.add(start);
      for (int i : loop) {
        int c = corner[i];
        if (loopCorners.size == start || loopCorners.at[loopCorners.size - 1] != c) {
          loopCorners.add(c);
        }
      }
      while (loopCorners.size > start + 1
          && loopCorners.at[start] == loopCorners.at[loopCorners.size - 1]) {
        loopCorners.size--;
      }
      if (loopCorners.size < start + 3) {
        loopCorners.size = start;
        loopStart.size--;
        continue;
      }
      int o = loopCorners.at[start];
      for (int i = start + 1; i + 1 < loopCorners.size; i++) {
        int a = loopCorners.at[i];
        int b = loopCorners.at[i + 1];
        long ax = (long) (points.x[a] - points.x[o]);
        long ay = (long) (points.y[a] - points.y[o]);
        long az = (long) (points.z[a] - points.z[o]);
        long bx = (long) (points.x[b] - points.x[o]);
        long by = (long) (points.y[b] - points.y[o]);
        long bz = (long) (points.z[b] - points.z[o]);
        nx += ay * bz - az * by;
        ny += az * bx - ax * bz;
        nz += ax * by - ay * bx;
      }
    }
    if (nx == 0 && ny == 0 && nz == 0) {
      loopCorners.size = firstCorner;
      loopStart.size = firstLoop;
      return loops.length == 1 && loops[0].length == 3;
    }
    int o = loopCorners.at[firstCorner];
    for (int i = firstCorner + 1; i < loopCorners.size; i++) {
      int c = loopCorners.at[i];
      long dx = (long) (points.x[c] - points.x[o]);
      long dy = (long) (points.y[c] - points.y[o]);
      long dz = (long) (points.z[c] - points.z[o]);
      if (Exact.dot(nx, ny, nz, dx, dy, dz) != 0) {
        loopCorners.size = firstCorner;
        loopStart.size = firstLoop;
        return false;
      }
    }
    int plane = planes.add(nx, ny, nz, (int) points.x[o], (int) points.y[o], (int) points.z[o]);
    faceStart.add(firstLoop);
    facePlane.add(plane);
    faceOrigin.add(origin);
    return true;
  }

  /** Lists the directed edges, and cancels those between two faces of one plane. */
  private void joinFaces() {
    int faces = facePlane.size;
    merged.reset(faces);
    edgeFrom.clear();
    edgeTo.clear();
    edgeFace.clear();
    for (int f = 0; f < faces; f++) {
      for (int l = faceStart.at[f]; l < faceStart.at[f + 1]; l++) {
        int start = loopStart.at[l];
        int end = loopStart.at[l + 1];
        for (int i = start; i < end; i++) {
          edgeFrom.add(loopCorners.at[i]);
          edgeTo.add(loopCorners.at[i + 1 < end ? i + 1 : start]);
          edgeFace.add(f);
        }
      }
    }
  }

  private void collect(int leaf, Mesh mesh) {
    int edges = edgeFrom.size;
    int[] nextOfPair = new int[edges];
    int[] across = new int[edges];
    Arrays.fill(across, -1);
    boolean[] gone = new boolean[edges];
    open.clear();
    for (int e = 0; e < edges; e++) {
      long key = KeyMap.pair(edgeFrom.at[e], edgeTo.at[e]);
      int head = open.get(key);
      nextOfPair[e] = head;
      open.put(key, e);
      for (int o = head; o != KeyMap.NONE && !gone[e]; o = nextOfPair[o]) {
        if (!gone[o]
            && edgeFrom.at[o] == edgeTo.at[e]
            && facePlane.at[edgeFace.at[o]] / 2 == facePlane.at[edgeFace.at[e]] / 2) {
          gone[o] = true;
          gone[e] = true;
          merged.join(edgeFace.at[o], edgeFace.at[e]);
        }
      }
    }
    for (int e = 0; e < edges; e++) {
      if (!gone[e]) {
        int own = facePlane.at[edgeFace.at[e]] / 2;
        int o = open.get(KeyMap.pair(edgeFrom.at[e], edgeTo.at[e]));
        while (o != KeyMap.NONE && (gone[o] || facePlane.at[edgeFace.at[o]] / 2 == own)) {
          o = nextOfPair[o];
        }
        across[e] =
            o != KeyMap.NONE
                ? facePlane.at[edgeFace.at[o]] / 2
                : besides(own, edgeFrom.at[e], edgeTo.at[e]);
      }
    }
    build(leaf, mesh, gone, across);
  }

  /** Some other plane through the edge. */
  private int besides(int own, int a, int b) {
    long dx = (long) (points.x[b] - points.x[a]);
    long dy = (long) (points.y[b] - points.y[a]);
    long dz = (long) (points.z[b] - points.z[a]);
    long[][] normals = {{0, dz, -dy}, {-dz, 0, dx}, {dy, -dx, 0}};
    for (long[] n : normals) {
      if (n[0] != 0 || n[1] != 0 || n[2] != 0) {
        int plane =
            planes.add(n[0], n[1], n[2], (int) points.x[a], (int) points.y[a], (int) points.z[a])
                / 2;
        if (plane != own) {
          return plane;
        }
      }
    }
    throw new IllegalStateException("an edge without length");
  }

  private void build(int leaf, Mesh mesh, boolean[] gone, int[] across) {
    int faces = facePlane.size;
    int[] members = new int[faces];
    int[] facing = new int[faces];
    int[] rim = new int[faces];
    String[] origin = new String[faces];
    for (int f = 0; f < faces; f++) {
      int r = merged.find(f);
      int side = (facePlane.at[f] & 1) == 0 ? 1 : -1;
      String own = mesh.origin(faceOrigin.at[f]);
      facing[r] = members[r] == 0 || facing[r] == side ? side : 0;
      origin[r] = origin[r] == null || own.compareTo(origin[r]) < 0 ? own : origin[r];
      members[r]++;
    }
    for (int e = 0; e < gone.length; e++) {
      rim[merged.find(edgeFace.at[e])] += gone[e] ? 0 : 1;
    }
    Facet[] made = new Facet[faces];
    for (int f = 0; f < faces; f++) {
      if (merged.find(f) == f && rim[f] > 0) {
        boolean whole = members[f] == 1 && rim[f] == loopLength(f);
        Facet facet =
            new Facet(
                all.size(),
                leaf,
                facePlane.at[f] / 2,
                facing[f],
                origin[f],
                whole ? loops(f) : null);
        facet.from = new int[rim[f]];
        facet.to = new int[rim[f]];
        facet.across = new int[rim[f]];
        made[f] = facet;
        all.add(facet);
      }
    }
    for (int e = gone.length - 1; e >= 0; e--) {
      if (!gone[e]) {
        int r = merged.find(edgeFace.at[e]);
        Facet facet = made[r];
        int i = --rim[r];
        facet.from[i] = edgeFrom.at[e];
        facet.to[i] = edgeTo.at[e];
        facet.across[i] = across[e];
        facet.reach(points, edgeFrom.at[e]);
      }
    }
  }

  private int loopLength(int face) {
    return loopStart.at[faceStart.at[face + 1]] - loopStart.at[faceStart.at[face]];
  }

  private int[][] loops(int face) {
    int first = faceStart.at[face];
    int[][] loops = new int[faceStart.at[face + 1] - first][];
    for (int l = 0; l < loops.length; l++) {
      loops[l] =
          Arrays.copyOfRange(loopCorners.at, loopStart.at[first + l], loopStart.at[first + l + 1]);
    }
    return loops;
  }
}
