package dryfit.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Looks for what must not be in a closed mesh. Equal points are allowed where two shells, or two
 * parts of one, only touch: there the mesh is closed on either side without them being one.
 */
public final class MeshCheck {
  private final double[] xyz;
  private final int[] triangles;
  private final List<String> problems = new ArrayList<>();

  private MeshCheck(double[] xyz, int[] triangles) {
    this.xyz = xyz;
    this.triangles = triangles;
  }

  /** One sentence for each kind of fault, none if the mesh is closed, outward and clean. */
  public static List<String> problems(Mesh mesh) {
    MeshCheck check = new MeshCheck(mesh.coordinates(), mesh.triangles());
    check.degenerate();
    if (check.matched(true)) {
      check.umbrellas();
    } else {
      check.unwelded();
    }
    check.unused();
    check.loops(mesh);
    check.volume(mesh);
    return List.copyOf(check.problems);
  }

  /**
   * The same for what a reader of a 32-bit file sees: coordinates rounded to float, equal points
   * welded. Where solids only touch along an edge, that edge is then used twice each way, which
   * still counts as closed.
   */
  public static List<String> problemsAsFloats(Mesh mesh) {
    Triangles welded = FloatGrid.welded(mesh);
    MeshCheck check = new MeshCheck(welded.xyz(), welded.corners());
    check.degenerate();
    check.matched(false);
    return List.copyOf(check.problems);
  }

  /** The number of separate closed surfaces; a hollow inside counts as one. */
  public static int shells(Mesh mesh) {
    int[] parent = new int[mesh.pointCount()];
    Arrays.setAll(parent, i -> i);
    int[] triangles = mesh.triangles();
    for (int i = 0; i < triangles.length; i += 3) {
      unite(parent, triangles[i], triangles[i + 1]);
      unite(parent, triangles[i], triangles[i + 2]);
    }
    int count = 0;
    boolean[] used = new boolean[parent.length];
    for (int corner : triangles) {
      used[corner] = true;
    }
    for (int i = 0; i < parent.length; i++) {
      if (used[i] && parent[i] == i) {
        count++;
      }
    }
    return count;
  }

  /** The number of handles of all shells together, by Euler's V - E + F = 2 shells - 2 genus. */
  public static int genus(Mesh mesh) {
    Set<Long> edges = new HashSet<>();
    Set<Integer> points = new HashSet<>();
    int[] triangles = mesh.triangles();
    for (int i = 0; i < triangles.length; i++) {
      int a = triangles[i];
      int b = triangles[next(i)];
      edges.add(edge(Math.min(a, b), Math.max(a, b)));
      points.add(a);
    }
    int euler = points.size() - edges.size() + mesh.triangleCount();
    return (2 * shells(mesh) - euler) / 2;
  }

  private static void unite(int[] parent, int a, int b) {
    int ra = root(parent, a);
    int rb = root(parent, b);
    parent[Math.max(ra, rb)] = Math.min(ra, rb);
  }

  private static int root(int[] parent, int i) {
    int r = i;
    while (parent[r] != r) {
      parent[r] = parent[parent[r]];
      r = parent[r];
    }
    return r;
  }

  private static int next(int side) {
    return side % 3 == 2 ? side - 2 : side + 1;
  }

  private static long edge(int from, int to) {
    return ((long) from << 32) | to;
  }

  private void degenerate() {
    int count = 0;
    int worst = -1;
    for (int t = 0; t < triangles.length / 3; t++) {
      if (isDegenerate(xyz, triangles[3 * t], triangles[3 * t + 1], triangles[3 * t + 2])) {
        count++;
        worst = worst < 0 ? t : worst;
      }
    }
    if (count > 0) {
      problems.add(
          count
              + (count == 1 ? " triangle has" : " triangles have")
              + " no area, the first at "
              + place(triangles[3 * worst]));
    }
  }

  /** Whether the three are not distinct or in line as far as double numbers can tell. */
  static boolean isDegenerate(double[] xyz, int i, int j, int k) {
    Vec3 a = at(xyz, i);
    Vec3 b = at(xyz, j);
    Vec3 c = at(xyz, k);
    double longest = Math.max(a.distance(b), Math.max(b.distance(c), c.distance(a)));
    double reach = Math.max(a.length(), Math.max(b.length(), c.length()));
    double height = longest > 0 ? b.minus(a).cross(c.minus(a)).length() / longest : 0;
    // Each coordinate is known to half a step; the height mixes a few of them.
    return height <= 4 * Math.ulp(reach);
  }

  private Map<Long, Integer> directedEdges() {
    Map<Long, Integer> uses = new LinkedHashMap<>();
    for (int i = 0; i < triangles.length; i++) {
      uses.merge(edge(triangles[i], triangles[next(i)]), 1, Integer::sum);
    }
    return uses;
  }

  private boolean matched(boolean once) {
    Map<Long, Integer> uses = directedEdges();
    int open = 0;
    int repeated = 0;
    long first = 0;
    for (Map.Entry<Long, Integer> e : uses.entrySet()) {
      long key = e.getKey();
      int back = uses.getOrDefault((key << 32) | (key >>> 32), 0);
      boolean bad = back != e.getValue();
      if (bad || (once && e.getValue() > 1)) {
        first = open + repeated == 0 ? key : first;
        open += bad ? 1 : 0;
        repeated += bad ? 0 : 1;
      }
    }
    if (open + repeated > 0) {
      problems.add(
          (open + repeated)
              + " directed edges are not matched exactly once by their reverse, the first from "
              + place((int) (first >>> 32))
              + " to "
              + place((int) first));
    }
    return open + repeated == 0;
  }

  /** Only for matched edges: walks round every point and looks for corners not met. */
  private void umbrellas() {
    Map<Long, Integer> sideOf = new HashMap<>();
    int[] corners = new int[xyz.length / 3];
    int[] anyCorner = new int[xyz.length / 3];
    for (int i = 0; i < triangles.length; i++) {
      sideOf.put(edge(triangles[i], triangles[next(i)]), i);
      corners[triangles[i]]++;
      anyCorner[triangles[i]] = i;
    }
    int count = 0;
    int first = -1;
    for (int p = 0; p < corners.length; p++) {
      int met = 0;
      int side = anyCorner[p];
      if (corners[p] > 0) {
        do {
          met++;
          int arriving = next(next(side));
          side = sideOf.get(edge(p, triangles[arriving]));
        } while (side != anyCorner[p]);
      }
      if (met != corners[p]) {
        count++;
        first = first < 0 ? p : first;
      }
    }
    if (count > 0) {
      problems.add(count + " points join parts that only touch, the first at " + place(first));
    }
  }

  private void unwelded() {
    Map<Vec3, Integer> seen = new HashMap<>();
    int count = 0;
    int first = -1;
    for (int i = 0; i < xyz.length / 3; i++) {
      if (seen.putIfAbsent(at(xyz, i), i) != null) {
        count++;
        first = first < 0 ? i : first;
      }
    }
    if (count > 0) {
      problems.add(count + " points repeat another, the first at " + place(first));
    }
  }

  private void unused() {
    boolean[] used = new boolean[xyz.length / 3];
    for (int corner : triangles) {
      used[corner] = true;
    }
    int count = 0;
    for (boolean u : used) {
      count += u ? 0 : 1;
    }
    if (count > 0) {
      problems.add(count + " points belong to no triangle");
    }
  }

  private void loops(Mesh mesh) {
    Map<Long, Integer> rest = new HashMap<>();
    List<Set<Long>> rims = new ArrayList<>();
    for (int f = 0; f < mesh.faceCount(); f++) {
      rims.add(new HashSet<>());
    }
    for (int i = 0; i < triangles.length; i++) {
      Set<Long> rim = rims.get(mesh.faceOf(i / 3));
      int a = triangles[i];
      int b = triangles[next(i)];
      if (!rim.remove(edge(b, a))) {
        rim.add(edge(a, b));
      }
    }
    int count = 0;
    for (int f = 0; f < mesh.faceCount(); f++) {
      Set<Long> rim = rims.get(f);
      boolean same = true;
      for (int[] loop : mesh.loops(f)) {
        for (int i = 0; i < loop.length; i++) {
          long e = edge(loop[i], loop[(i + 1) % loop.length]);
          same &= rim.remove(e);
          rest.merge(e, 1, Integer::sum);
        }
      }
      count += same && rim.isEmpty() ? 0 : 1;
    }
    if (count > 0) {
      problems.add(count + " faces are not filled up to their loops");
    }
    boolean closed =
        rest.entrySet().stream()
            .allMatch(
                e ->
                    e.getValue() == 1
                        && rest.getOrDefault((e.getKey() << 32) | (e.getKey() >>> 32), 0) == 1);
    if (!closed) {
      problems.add("the loops of the faces do not close against each other");
    }
  }

  private void volume(Mesh mesh) {
    if (!mesh.isEmpty() && !(MassProperties.of(mesh).volume() > 0)) {
      problems.add("the surface is inside out");
    }
  }

  private static Vec3 at(double[] xyz, int i) {
    return new Vec3(xyz[3 * i], xyz[3 * i + 1], xyz[3 * i + 2]);
  }

  private String place(int i) {
    return "(" + xyz[3 * i] + ", " + xyz[3 * i + 1] + ", " + xyz[3 * i + 2] + ")";
  }
}
