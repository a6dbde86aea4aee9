package dryfit.solid;

import dryfit.geometry.ConvexParts;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * The solid that a section leaves behind on its way from ring to ring: a list of loops with as many
 * corners each, joined corner by corner. A side that is not flat is divided along the diagonal that
 * bulges, as in {@link Convex#loft}, so that surface and cells are the same solid.
 */
public final class Sweep {
  private final List<List<Vec3>> rings;
  private final ConvexParts section;
  private final boolean closed;
  private final List<Vec3> points = new ArrayList<>();

  private Sweep(List<List<Vec3>> rings, ConvexParts section, boolean closed) {
    this.rings = rings;
    this.section = section;
    this.closed = closed;
  }

  /**
   * @param section the loop that all rings are shaped like, a simple polygon, anticlockwise seen
   *     from ahead; it says how the rings are divided into convex parts
   * @param rings flat loops in order, their corners in the order of {@code section}
   * @param closed whether the last ring is joined to the first, as round a table's edge; else both
   *     are capped
   * @param origin the JSON pointer all faces carry
   * @throws IllegalArgumentException if a step between rings is no solid, as where rings cross
   */
  public static Csg.Leaf of(
      List<Vec2> section, List<List<Vec3>> rings, boolean closed, String origin) {
    ConvexParts parts = ConvexParts.of(section);
    if (!parts.outline().equals(section)) {
      throw new IllegalArgumentException("a section must run anticlockwise, no corner twice");
    }
    if (rings.size() < (closed ? 3 : 2)
        || rings.stream().anyMatch(r -> r.size() != section.size())) {
      throw new IllegalArgumentException("rings and section do not make a sweep");
    }
    return new Sweep(rings, parts, closed).leaf(origin);
  }

  private Csg.Leaf leaf(String origin) {
    rings.forEach(points::addAll);
    int n = rings.get(0).size();
    int steps = closed ? rings.size() : rings.size() - 1;
    List<int[]> loops = new ArrayList<>();
    List<Convex> cells = new ArrayList<>();
    if (!closed) {
      loops.add(cap(0, true));
      loops.add(cap(rings.size() - 1, false));
    }
    for (int s = 0; s < steps; s++) {
      int next = (s + 1) % rings.size();
      for (int i = 0; i < n; i++) {
        int j = (i + 1) % n;
        loops.addAll(Loft.sides(points, s * n + i, s * n + j, next * n + j, next * n + i));
      }
      for (int[] part : section.parts()) {
        cells.add(Convex.loft(corners(s, part), corners(next, part)));
      }
    }
    return new Csg.Leaf(mesh(loops, origin), cells);
  }

  private int[] cap(int ring, boolean turned) {
    int n = rings.get(0).size();
    int[] loop = new int[n];
    for (int i = 0; i < n; i++) {
      loop[i] = ring * n + (turned ? n - 1 - i : i);
    }
    return loop;
  }

  private List<Vec3> corners(int ring, int[] part) {
    List<Vec3> out = new ArrayList<>(part.length);
    for (int i : part) {
      out.add(rings.get(ring).get(i));
    }
    return out;
  }

  private Mesh mesh(List<int[]> loops, String origin) {
    int n = rings.get(0).size();
    List<int[]> triangles = new ArrayList<>();
    List<Integer> faceOf = new ArrayList<>();
    int[][][] faces = new int[loops.size()][][];
    for (int f = 0; f < faces.length; f++) {
      int[] loop = loops.get(f);
      faces[f] = new int[][] {loop};
      boolean cap = !closed && f < 2;
      for (int[] t : cap ? section.triangles() : fan(loop.length)) {
        // A cap's triangles count in the section, whichever way round its loop runs.
        int base = f == 0 ? 0 : (rings.size() - 1) * n;
        boolean turned = f == 0;
        triangles.add(
            cap
                ? new int[] {base + t[turned ? 2 : 0], base + t[1], base + t[turned ? 0 : 2]}
                : new int[] {loop[t[0]], loop[t[1]], loop[t[2]]});
        faceOf.add(f);
      }
    }
    return new Mesh(
        Convex.packed(points),
        faces,
        triangles.stream().flatMapToInt(java.util.Arrays::stream).toArray(),
        faceOf.stream().mapToInt(Integer::intValue).toArray(),
        new int[faces.length],
        List.of(origin));
  }

  private static List<int[]> fan(int corners) {
    List<int[]> out = new ArrayList<>();
    for (int i = 2; i < corners; i++) {
      out.add(new int[] {0, i - 1, i});
    }
    return out;
  }
}
