package dryfit.solid.jcsg;

import dryfit.geometry.Mesh;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import eu.mihosoft.jcsg.Polygon;
import eu.mihosoft.jcsg.PropertyStorage;
import eu.mihosoft.vvecmath.Vector3d;
import java.util.ArrayList;
import java.util.List;

/** Turns leaves into polygons that JCSG can take, and remembers which sheet each is from. */
final class Leaves {
  private final List<Sheet> sheets = new ArrayList<>();
  private final List<Vec3> points = new ArrayList<>();

  List<Sheet> sheets() {
    return sheets;
  }

  /** All corners of all leaves: the places that are known best. */
  List<Vec3> points() {
    return points;
  }

  List<Polygon> polygons(Mesh mesh) {
    List<Polygon> out = new ArrayList<>();
    for (int i = 0; i < mesh.pointCount(); i++) {
      points.add(mesh.point(i));
    }
    List<List<int[]>> triangles = new ArrayList<>();
    for (int f = 0; f < mesh.faceCount(); f++) {
      triangles.add(new ArrayList<>());
    }
    for (int t = 0; t < mesh.triangleCount(); t++) {
      triangles
          .get(mesh.faceOf(t))
          .add(new int[] {mesh.corner(t, 0), mesh.corner(t, 1), mesh.corner(t, 2)});
    }
    for (int f = 0; f < mesh.faceCount(); f++) {
      addFace(mesh, f, triangles.get(f), out);
    }
    return out;
  }

  private void addFace(Mesh mesh, int face, List<int[]> triangles, List<Polygon> out) {
    String origin = mesh.origin(face);
    List<Vec3> outer = at(mesh, mesh.loops(face)[0]);
    List<List<Vec3>> pieces = triangles.stream().map(t -> at(mesh, t)).toList();
    Plane plane = Plane.through(outer.get(0), normal(pieces));
    boolean flat = outer.stream().allMatch(p -> Math.abs(plane.height(p)) <= Tolerances.flat());
    if (!flat) {
      for (List<Vec3> piece : pieces) {
        sheets.add(new Sheet(Plane.through(piece.get(0), normal(List.of(piece))), piece, origin));
        out.add(polygon(piece));
      }
      return;
    }
    sheets.add(new Sheet(plane, outer, origin));
    List<Vec3> plain = withoutStraightCorners(outer);
    if (mesh.loops(face).length == 1 && isConvex(plain, plane.normal())) {
      out.add(polygon(plain));
    } else {
      pieces.forEach(piece -> out.add(polygon(piece)));
    }
  }

  private static List<Vec3> at(Mesh mesh, int[] loop) {
    List<Vec3> out = new ArrayList<>(loop.length);
    for (int i : loop) {
      out.add(mesh.point(i));
    }
    return out;
  }

  private static Vec3 normal(List<List<Vec3>> triangles) {
    Vec3 sum = Vec3.ZERO;
    for (List<Vec3> t : triangles) {
      sum = sum.plus(t.get(1).minus(t.get(0)).cross(t.get(2).minus(t.get(0))));
    }
    return sum;
  }

  private static List<Vec3> withoutStraightCorners(List<Vec3> loop) {
    List<Vec3> out = new ArrayList<>(loop);
    for (int i = 0; i < out.size() && out.size() > 3; ) {
      Vec3 a = out.get((i + out.size() - 1) % out.size());
      Vec3 b = out.get(i);
      Vec3 c = out.get((i + 1) % out.size());
      double off = b.minus(a).cross(c.minus(a)).length();
      if (off <= Tolerances.flat() * c.distance(a)) {
        out.remove(i);
      } else {
        i++;
      }
    }
    return out;
  }

  /** Every corner turns left, and the loop goes round once. */
  private static boolean isConvex(List<Vec3> loop, Vec3 normal) {
    int n = loop.size();
    double turned = 0;
    for (int i = 0; i < n; i++) {
      Vec3 in = loop.get(i).minus(loop.get((i + n - 1) % n));
      Vec3 out = loop.get((i + 1) % n).minus(loop.get(i));
      double left = in.cross(out).dot(normal);
      if (left < 0) {
        return false;
      }
      turned += Math.atan2(left, in.dot(out));
    }
    return turned < 3 * Math.PI;
  }

  private Polygon polygon(List<Vec3> loop) {
    PropertyStorage storage = new PropertyStorage();
    storage.set(Operand.SHEET, sheets.size() - 1);
    int first = widestCorner(loop);
    List<Vector3d> corners = new ArrayList<>(loop.size());
    for (int i = 0; i < loop.size(); i++) {
      Vec3 p = loop.get((first + i) % loop.size());
      corners.add(Vector3d.xyz(p.x(), p.y(), p.z()));
    }
    return Polygon.fromPoints(corners, storage);
  }

  /** Where to start so that the first three corners span the most. */
  private static int widestCorner(List<Vec3> loop) {
    int best = 0;
    double most = -1;
    int n = loop.size();
    for (int i = 0; i < n; i++) {
      Vec3 a = loop.get(i);
      double span = loop.get((i + 1) % n).minus(a).cross(loop.get((i + 2) % n).minus(a)).length();
      if (span > most) {
        most = span;
        best = i;
      }
    }
    return best;
  }
}
