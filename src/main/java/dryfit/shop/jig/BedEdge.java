package dryfit.shop.jig;

import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;

/**
 * Relieves the edge of the face on the printer's bed: the first layer spreads there, and 0.3 mm of
 * it under one edge of a block 40 mm wide tips the block by 0.43 degrees. A chamfer at 45 degrees
 * along every edge of that face.
 */
final class BedEdge {
  /** Walls that lean out further than this over the bed need no relief, sine. */
  private static final double LEANS = 0.55;

  /** An edge shorter than this comes of rounding and has no direction worth a cutter, mm. */
  private static final double SHORT = 0.02;

  private BedEdge() {}

  /** What to cut away; the mesh lies on z = 0. */
  static List<Convex> cutters(Mesh mesh, double relief) {
    List<Convex> out = new ArrayList<>();
    if (relief <= 0) {
      return out;
    }
    for (int f = 0; f < mesh.faceCount(); f++) {
      int[][] loops = mesh.loops(f);
      if (!liesOnBed(mesh, loops[0])) {
        continue;
      }
      for (int[] loop : loops) {
        List<Vec3> corners = straightened(mesh, loop);
        for (int i = 0; i < corners.size(); i++) {
          cutter(mesh, corners, i, relief, out);
        }
      }
    }
    return out;
  }

  static boolean liesOnBed(Mesh mesh, int[] loop) {
    for (int p : loop) {
      if (Math.abs(mesh.point(p).z()) > Tolerances.contact()) {
        return false;
      }
    }
    return true;
  }

  private static List<Vec3> straightened(Mesh mesh, int[] loop) {
    List<Vec3> out = new ArrayList<>();
    List<Vec3> apart = new ArrayList<>();
    for (int p : loop) {
      Vec3 here = mesh.point(p);
      if (apart.stream().noneMatch(q -> q.distance(here) < SHORT)) {
        apart.add(here);
      }
    }
    int n = apart.size();
    for (int i = 0; i < n; i++) {
      Vec3 before = apart.get((i + n - 1) % n);
      Vec3 here = apart.get(i);
      Vec3 after = apart.get((i + 1) % n);
      if (here.minus(before).angleTo(after.minus(here)) > 1e-4) {
        out.add(here);
      }
    }
    return out;
  }

  private static void cutter(
      Mesh mesh, List<Vec3> corners, int i, double relief, List<Convex> out) {
    int n = corners.size();
    Vec3 a = corners.get(i);
    Vec3 b = corners.get((i + 1) % n);
    Vec3 dir = b.minus(a).unit();
    // The face is seen from below, so its loop keeps the wood on the left looking up at it.
    Vec3 away = dir.cross(Vec3.UP.negated());
    if (leansOut(mesh, a, b, away)) {
      return;
    }
    double spare = 3 * relief;
    Vec3 from = a.minus(dir.times(turnsOut(corners, i) ? spare : 0));
    Vec3 to = b.plus(dir.times(turnsOut(corners, (i + 1) % n) ? spare : 0));
    List<Vec3> section =
        List.of(
            from.minus(away.times(relief + spare)).minus(Vec3.UP.times(spare)),
            from.plus(away.times(spare)).minus(Vec3.UP.times(spare)),
            from.plus(away.times(spare)).plus(Vec3.UP.times(relief + spare)));
    out.add(Convex.prism(section, to.minus(from)));
  }

  /** Whether the face that goes up from the edge hangs out so far that nothing spreads there. */
  private static boolean leansOut(Mesh mesh, Vec3 a, Vec3 b, Vec3 away) {
    for (int f = 0; f < mesh.faceCount(); f++) {
      int[] loop = mesh.loops(f)[0];
      boolean hasA = false;
      boolean hasB = false;
      for (int p : loop) {
        hasA |= mesh.point(p).distance(a) <= Tolerances.contact();
        hasB |= mesh.point(p).distance(b) <= Tolerances.contact();
      }
      if (hasA && hasB && !liesOnBed(mesh, loop)) {
        Vec3 n = normal(mesh, loop);
        return n.dot(away) > 0 && n.z() < -LEANS;
      }
    }
    return false;
  }

  /** Newell's normal of a loop. */
  static Vec3 normal(Mesh mesh, int[] loop) {
    Vec3 sum = Vec3.ZERO;
    Vec3 o = mesh.point(loop[0]);
    for (int i = 1; i + 1 < loop.length; i++) {
      sum = sum.plus(mesh.point(loop[i]).minus(o).cross(mesh.point(loop[i + 1]).minus(o)));
    }
    return sum.unit();
  }

  /** Whether the outline turns round the wood at a corner, so that a cutter may run past it. */
  private static boolean turnsOut(List<Vec3> corners, int i) {
    int n = corners.size();
    Vec3 before = corners.get(i).minus(corners.get((i + n - 1) % n));
    Vec3 after = corners.get((i + 1) % n).minus(corners.get(i));
    return before.cross(after).z() < 0;
  }
}
