package dryfit.shop.template;

import dryfit.geometry.Mesh;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Edges on the face that is seen: shoulders, bevels, steps. */
final class Creases {
  private Creases() {}

  /** Facets of a curve meet at less than this, faces that a maker calls two at more; cosine. */
  private static final double SHARP = Math.cos(Math.toRadians(20));

  /** A face that looks away from the viewer by more than this is not seen; cosine. */
  private static final double SEEN = 0.05;

  /** Lines nearer than this to another line are that line, mm. */
  private static final double SAME = 0.05;

  /**
   * The edges of a part on a face.
   *
   * @param outline what is drawn anyway
   * @param mouths also drawn anyway
   */
  static List<Mark> of(Face face, Region outline, List<Region> mouths) {
    Mesh mesh = face.part().solid().mesh();
    Map<Long, Integer> leftOf = new LinkedHashMap<>();
    for (int f = 0; f < mesh.faceCount(); f++) {
      for (int[] loop : mesh.loops(f)) {
        for (int i = 0; i < loop.length; i++) {
          leftOf.put(key(loop[i], loop[(i + 1) % loop.length]), f);
        }
      }
    }
    List<Mark> out = new ArrayList<>();
    for (Map.Entry<Long, Integer> edge : leftOf.entrySet()) {
      int a = (int) (edge.getKey() >>> 32);
      int b = edge.getKey().intValue();
      Integer other = leftOf.get(key(b, a));
      if (a < b && other != null && isSharp(mesh, edge.getValue(), other, face.out())) {
        Vec2 from = face.flat(mesh.point(a));
        Vec2 to = face.flat(mesh.point(b));
        Vec2 middle = from.plus(to).times(0.5);
        boolean drawn =
            from.distance(to) < SAME
                || outline.distanceToEdge(middle) < SAME
                || mouths.stream()
                    .anyMatch(m -> m.contains(middle) || m.distanceToEdge(middle) < SAME);
        if (!drawn) {
          out.add(new Mark.Crease(from, to));
        }
      }
    }
    return out;
  }

  private static boolean isSharp(Mesh mesh, int f, int g, Vec3 out) {
    Vec3 a = mesh.normal(f);
    Vec3 b = mesh.normal(g);
    double nearer = Math.max(a.dot(out), b.dot(out));
    double further = Math.min(a.dot(out), b.dot(out));
    // An edge to a face that looks away is an outline of something behind, or below.
    return nearer > SEEN && further > -SEEN && a.dot(b) < SHARP;
  }

  private static long key(int a, int b) {
    return ((long) a << 32) | b;
  }
}
