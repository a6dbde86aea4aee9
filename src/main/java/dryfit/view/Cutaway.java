package dryfit.view;

import dryfit.build.Part;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.shape.TriangleMesh;

/**
 * What a plane leaves of a part, and the cut face that closes it; both in the part's own frame.
 *
 * @param left the cells on the near side, as a surface without their inner faces
 * @param creases the ink on it, with the outline of the cut face
 * @param cut the cut face
 */
record Cutaway(TriangleMesh left, TriangleMesh creases, TriangleMesh cut) {

  /** Cuts every part of a chair with a plane of chair space. */
  static List<Cutaway> of(Shown shown, Plane plane) {
    List<Cutaway> out = new ArrayList<>();
    for (int i = 0; i < shown.parts().size(); i++) {
      PartShape shape = shown.parts().get(i);
      Part part = shown.chair().parts().get(i);
      Plane own = shape.frame().local(plane);
      TriangleMesh lines = clippedLines(shape.creases(), own);
      out.add(new Cutaway(clipped(shape.wood(), own, lines), lines, face(part, own)));
    }
    return out;
  }

  /**
   * Triangles clipped by a plane: each loses what stands outside.
   *
   * @param lines takes the line along which each is cut, so that the cut faces of two parts that
   *     touch are told apart
   */
  private static TriangleMesh clipped(TriangleMesh of, Plane plane, TriangleMesh lines) {
    Corners corners = new Corners(of, plane);
    TriangleMesh out = new TriangleMesh(of.getVertexFormat());
    int[] faces = of.getFaces().toArray(null);
    for (int f = 0; f < faces.length; f += 9) {
      List<float[]> polygon = new ArrayList<>();
      List<Vec3> sawn = new ArrayList<>();
      for (int k = 0; k < 3; k++) {
        float[] a = corners.of(faces, f + 3 * k);
        float[] b = corners.of(faces, f + 3 * ((k + 1) % 3));
        if (a[8] <= 0) {
          polygon.add(a);
        }
        if (a[8] <= 0 != b[8] <= 0) {
          float[] c = between(a, b);
          polygon.add(c);
          sawn.add(new Vec3(c[0], c[1], c[2]));
        }
      }
      if (sawn.size() == 2) {
        line(lines, sawn.get(0), sawn.get(1));
      }
      for (int k = 1; k + 1 < polygon.size(); k++) {
        add(out, polygon.get(0), polygon.get(k), polygon.get(k + 1));
      }
    }
    return out;
  }

  private static float[] between(float[] a, float[] b) {
    float t = a[8] / (a[8] - b[8]);
    float[] c = new float[9];
    for (int i = 0; i < 8; i++) {
      c[i] = a[i] + t * (b[i] - a[i]);
    }
    return c;
  }

  private static void add(TriangleMesh to, float[]... corners) {
    for (float[] c : corners) {
      int at = to.getPoints().size() / 3;
      to.getPoints().addAll(c, 0, 3);
      to.getNormals().addAll(c, 3, 3);
      to.getTexCoords().addAll(c, 6, 2);
      to.getFaces().addAll(at, at, at);
    }
  }

  private static TriangleMesh clippedLines(TriangleMesh of, Plane plane) {
    TriangleMesh out = new TriangleMesh();
    out.getTexCoords().addAll(0, 0);
    float[] xyz = of.getPoints().toArray(null);
    for (int i = 0; i + 5 < xyz.length; i += 6) {
      Vec3 a = new Vec3(xyz[i], xyz[i + 1], xyz[i + 2]);
      Vec3 b = new Vec3(xyz[i + 3], xyz[i + 4], xyz[i + 5]);
      double ha = plane.height(a);
      double hb = plane.height(b);
      if (ha > 0 && hb > 0) {
        continue;
      }
      Vec3 cut = ha > 0 != hb > 0 ? a.plus(b.minus(a).times(ha / (ha - hb))) : Vec3.ZERO;
      line(out, ha > 0 ? cut : a, hb > 0 ? cut : b);
    }
    return out;
  }

  private static void line(TriangleMesh to, Vec3 a, Vec3 b) {
    int at = to.getPoints().size() / 3;
    to.getPoints().addAll((float) a.x(), (float) a.y(), (float) a.z());
    to.getPoints().addAll((float) b.x(), (float) b.y(), (float) b.z());
    to.getFaces().addAll(at, 0, at + 1, 0, at + 1, 0);
  }

  /** The faces that cells have in the plane once they are clipped by it. */
  private static TriangleMesh face(Part part, Plane plane) {
    TriangleMesh out = new TriangleMesh();
    out.getTexCoords().addAll(0, 0);
    for (Convex cell : part.solid().cells()) {
      boolean cut =
          cell.reach(plane.normal()) > plane.offset()
              && -cell.reach(plane.normal().negated()) < plane.offset();
      if (cut) {
        cell.clipped(plane).ifPresent(half -> addFace(out, half, plane));
      }
    }
    return out;
  }

  private static void addFace(TriangleMesh to, Convex cell, Plane plane) {
    int best = -1;
    double nearest = 0.999;
    for (int f = 0; f < cell.faceCount(); f++) {
      double alike = cell.plane(f).normal().dot(plane.normal());
      if (alike > nearest) {
        nearest = alike;
        best = f;
      }
    }
    if (best < 0) {
      return;
    }
    int[] loop = cell.faces()[best];
    int first = to.getPoints().size() / 3;
    for (int i : loop) {
      Vec3 p = cell.point(i);
      to.getPoints().addAll((float) p.x(), (float) p.y(), (float) p.z());
    }
    for (int i = 1; i + 1 < loop.length; i++) {
      to.getFaces().addAll(first, 0, first + i, 0, first + i + 1, 0);
    }
  }

  /** Corners of triangles with all that is interpolated along an edge, and their height. */
  private static final class Corners {
    private final float[] points;
    private final float[] normals;
    private final float[] textures;
    private final Plane plane;

    Corners(TriangleMesh of, Plane plane) {
      points = of.getPoints().toArray(null);
      normals = of.getNormals().toArray(null);
      textures = of.getTexCoords().toArray(null);
      this.plane = plane;
    }

    float[] of(int[] faces, int at) {
      int p = 3 * faces[at];
      int n = 3 * faces[at + 1];
      int t = 2 * faces[at + 2];
      Vec3 place = new Vec3(points[p], points[p + 1], points[p + 2]);
      return new float[] {
        points[p],
        points[p + 1],
        points[p + 2],
        normals[n],
        normals[n + 1],
        normals[n + 2],
        textures[t],
        textures[t + 1],
        (float) plane.height(place)
      };
    }
  }
}
