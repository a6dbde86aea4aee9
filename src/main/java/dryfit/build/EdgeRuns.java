package dryfit.build;

import dryfit.build.BentRings.Ring;
import dryfit.build.EdgeFaces.Choice;
import dryfit.build.EdgeFaces.Side;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Finds the runs of edges on the surface of a part. */
final class EdgeRuns {
  /**
   * Faces that turn by less than this are facets of one curve: cosine of 35 degrees. A thin rod has
   * facets of 30.
   */
  private static final double SHARP = 0.819;

  /** How far beyond the end of a run is looked whether the wood goes on, mm. */
  private static final double AHEAD = 0.2;

  private final Mesh mesh;
  private final EdgeFaces faces;
  private final List<Convex> wood;
  private final double start;
  private final Map<Long, Edge> edges = new LinkedHashMap<>();

  private EdgeRuns(Stock stock, Mesh mesh) {
    this.mesh = mesh;
    this.faces = new EdgeFaces(stock);
    this.wood = stock.cells();
    this.start = stock.start();
  }

  /** An edge between two faces, from point to point with the first face to its left. */
  private record Edge(int from, int to, Side first, Side second, Vec3 into, Vec3 down) {
    boolean sameSides(Edge o) {
      return first == o.first && second == o.second || first == o.second && second == o.first;
    }

    boolean sharesSide(Edge o) {
      return first == o.first || second == o.second || first == o.second || second == o.first;
    }
  }

  /**
   * The runs of the edges that are chosen.
   *
   * @param mesh surface of the part, own frame
   */
  static List<EdgeRun> of(Stock stock, Mesh mesh, Choice choice) {
    EdgeRuns runs = new EdgeRuns(stock, mesh);
    runs.find(choice);
    return runs.chained();
  }

  private void find(Choice choice) {
    Map<Long, Integer> faceAt = new LinkedHashMap<>();
    Vec3[] normals = new Vec3[mesh.faceCount()];
    for (int f = 0; f < normals.length; f++) {
      int[][] loops = mesh.loops(f);
      normals[f] = normal(loops[0]);
      for (int[] loop : loops) {
        for (int i = 0; i < loop.length; i++) {
          faceAt.put(key(loop[i], loop[(i + 1) % loop.length]), f);
        }
      }
    }
    faceAt.forEach(
        (key, f) -> {
          int from = (int) (key >> 32);
          int to = (int) (long) key;
          Integer g = from < to ? faceAt.get(key(to, from)) : null;
          if (g == null) {
            return;
          }
          Vec3 d = mesh.point(to).minus(mesh.point(from)).unit();
          Vec3 into = normals[f].cross(d).across(d).unit();
          Vec3 down = d.cross(normals[g]).across(d).unit();
          boolean hollow = normals[f].dot(down) >= 0;
          Side a = faces.side(normals[f]);
          Side b = faces.side(normals[g]);
          if (!hollow && normals[f].dot(normals[g]) < SHARP && choice.takes(a, b)) {
            edges.put(key, new Edge(from, to, a, b, into, down));
          }
        });
  }

  private static long key(int from, int to) {
    return ((long) from << 32) | to;
  }

  /** Newell's normal. */
  private Vec3 normal(int[] loop) {
    Vec3 sum = Vec3.ZERO;
    Vec3 o = mesh.point(loop[0]);
    for (int i = 0; i < loop.length; i++) {
      Vec3 a = mesh.point(loop[i]).minus(o);
      Vec3 b = mesh.point(loop[(i + 1) % loop.length]).minus(o);
      sum = sum.plus(a.cross(b));
    }
    return sum.length() > 0 ? sum.unit() : Vec3.UP;
  }

  // ---- chains ----

  private List<EdgeRun> chained() {
    Map<Integer, List<Edge>> at = new LinkedHashMap<>();
    for (Edge e : edges.values()) {
      at.computeIfAbsent(e.from(), k -> new ArrayList<>()).add(e);
      at.computeIfAbsent(e.to(), k -> new ArrayList<>()).add(e);
    }
    List<Edge> left = new ArrayList<>(edges.values());
    List<EdgeRun> runs = new ArrayList<>();
    while (!left.isEmpty()) {
      Edge seed = left.remove(0);
      List<Edge> chain = new ArrayList<>();
      chain.add(seed);
      int tail = grow(chain, seed.to(), at, left);
      boolean closed = tail == seed.from() && chain.size() > 2 && goesOn(chain, tail, at);
      int head = seed.from();
      if (!closed) {
        Collections.reverse(chain);
        head = grow(chain, seed.from(), at, left);
        Collections.reverse(chain);
      }
      runs.add(run(chain, head, closed));
    }
    return runs;
  }

  /** Adds edge after edge from a point on; returns where it ends. */
  private int grow(List<Edge> chain, int from, Map<Integer, List<Edge>> at, List<Edge> left) {
    int point = from;
    while (true) {
      Edge next = next(chain.get(chain.size() - 1), point, at);
      if (next == null || !left.remove(next)) {
        return point;
      }
      chain.add(next);
      point = next.from() == point ? next.to() : next.from();
    }
  }

  private static boolean goesOn(List<Edge> chain, int point, Map<Integer, List<Edge>> at) {
    Edge next = next(chain.get(chain.size() - 1), point, at);
    return next != null && next.equals(chain.get(0));
  }

  /** The edge that carries on at a point: between the same faces, or the only other one there. */
  private static Edge next(Edge e, int point, Map<Integer, List<Edge>> at) {
    List<Edge> others = at.get(point).stream().filter(o -> !o.equals(e)).toList();
    List<Edge> same = others.stream().filter(o -> o.sameSides(e)).toList();
    if (same.size() == 1) {
      return same.get(0);
    }
    return same.isEmpty() && others.size() == 1 && others.get(0).sharesSide(e)
        ? others.get(0)
        : null;
  }

  private EdgeRun run(List<Edge> chain, int head, boolean closed) {
    List<Vec3> points = new ArrayList<>();
    List<Vec3> into = new ArrayList<>();
    List<Vec3> down = new ArrayList<>();
    List<Double> along = new ArrayList<>();
    int point = head;
    add(points, along, point);
    // A chain walked against its edges has their second face to its left.
    for (Edge e : chain) {
      boolean forward = e.from() == point;
      point = forward ? e.to() : e.from();
      into.add(forward ? e.into() : e.down());
      down.add(forward ? e.down() : e.into());
      if (!closed || into.size() < chain.size()) {
        add(points, along, point);
      }
    }
    EdgeRun run = new EdgeRun(points, into, down, along, closed, 0, 0);
    return closed ? run : run.over(over(run, true), over(run, false));
  }

  private void add(List<Vec3> points, List<Double> along, int point) {
    Vec3 p = mesh.point(point);
    points.add(p);
    along.add(p.x() - start);
  }

  /** A cutter runs out at an end where no wood goes on along the edge. */
  private double over(EdgeRun run, boolean atStart) {
    int piece = atStart ? 0 : run.pieces() - 1;
    Vec3 out = atStart ? run.direction(0).negated() : run.direction(piece);
    Vec3 inside = run.into().get(piece).plus(run.down().get(piece)).unit();
    Vec3 end = run.points().get(atStart ? 0 : run.points().size() - 1);
    Vec3 ahead = end.plus(out.times(AHEAD)).plus(inside.times(AHEAD / 4));
    return wood.stream().anyMatch(c -> c.contains(ahead)) ? 0 : 2 * Shapes.SPARE;
  }

  // ---- bent parts ----

  /** The long edges of a bent part with a square section, along its rings. */
  static List<EdgeRun> ofBent(Stock stock, List<Ring> rings, Choice choice) {
    List<EdgeRun> runs = new ArrayList<>();
    int[][] corners = {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}};
    for (int[] c : corners) {
      Side wide = c[0] < 0 ? Side.LOW_WIDTH : Side.HIGH_WIDTH;
      Side thick = c[1] < 0 ? Side.LOW_THICKNESS : Side.HIGH_THICKNESS;
      if (choice.takes(wide, thick)) {
        runs.add(bent(stock, rings, c[0], c[1]));
      }
    }
    return runs;
  }

  private static EdgeRun bent(Stock stock, List<Ring> rings, int y, int z) {
    List<Vec3> points = new ArrayList<>();
    List<Vec3> acrossWidth = new ArrayList<>();
    List<Vec3> acrossThickness = new ArrayList<>();
    List<Double> along = new ArrayList<>();
    double passed = -stock.bent().orElseThrow().start().longer();
    for (int i = 0; i < rings.size(); i++) {
      Ring r = rings.get(i);
      points.add(corner(r, y, z));
      if (i > 0) {
        Ring before = rings.get(i - 1);
        passed += r.at().distance(before.at());
        Vec3 d = points.get(i).minus(points.get(i - 1)).unit();
        Vec3 other = corner(before, -y, z).midway(corner(r, -y, z));
        Vec3 third = corner(before, y, -z).midway(corner(r, y, -z));
        Vec3 own = points.get(i - 1).midway(points.get(i));
        acrossWidth.add(other.minus(own).across(d).unit());
        acrossThickness.add(third.minus(own).across(d).unit());
      }
      along.add(passed);
    }
    // Seen along the part with a face up, into it leads to the left.
    boolean widthFirst = y != z;
    return new EdgeRun(
        points,
        widthFirst ? acrossWidth : acrossThickness,
        widthFirst ? acrossThickness : acrossWidth,
        along,
        false,
        2 * Shapes.SPARE,
        2 * Shapes.SPARE);
  }

  private static Vec3 corner(Ring r, int y, int z) {
    return r.corner(y * r.width() / 2, z * r.thickness() / 2);
  }
}
