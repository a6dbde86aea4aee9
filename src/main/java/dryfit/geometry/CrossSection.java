package dryfit.geometry;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a saw cut would show: the outlines in which a plane meets a closed mesh. */
public final class CrossSection {
  private CrossSection() {}

  /**
   * The closed outlines of the cut, in the axes of {@code sheet}: x to its x, y to its y. Seen
   * against the normal of the plane (from where {@code sheet}'s z points) wood is to the left of
   * outer outlines as of those round holes, so even-odd filling gives the cut wood.
   *
   * <p>A point of the mesh that lies in the plane counts as being just above it, so every outline
   * closes whatever the plane meets.
   *
   * @param sheet its origin lies in the plane and its z is the plane's normal
   */
  public static List<List<Vec2>> of(Mesh mesh, Frame sheet) {
    double[] height = new double[mesh.pointCount()];
    for (int i = 0; i < height.length; i++) {
      height[i] = sheet.local(mesh.point(i)).z();
    }
    // Each cut triangle leads from the edge where the cut goes down to the one where it comes up.
    Map<Long, Long> next = new LinkedHashMap<>();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      long from = -1;
      long to = -1;
      for (int k = 0; k < 3; k++) {
        int a = mesh.corner(t, k);
        int b = mesh.corner(t, (k + 1) % 3);
        if (height[a] >= 0 && height[b] < 0) {
          from = edge(a, b);
        } else if (height[a] < 0 && height[b] >= 0) {
          to = edge(a, b);
        }
      }
      if (from >= 0 && to >= 0) {
        next.put(from, to);
      }
    }
    List<List<Vec2>> outlines = new ArrayList<>();
    while (!next.isEmpty()) {
      List<Vec2> outline = new ArrayList<>();
      Long at = next.keySet().iterator().next();
      while (at != null) {
        outline.add(place(mesh, height, at, sheet));
        at = next.remove(at);
      }
      // The walk ends where it began: the first place stands there twice.
      outline.remove(outline.size() - 1);
      outlines.add(List.copyOf(outline));
    }
    return outlines;
  }

  private static long edge(int a, int b) {
    return ((long) Math.min(a, b) << 32) | Math.max(a, b);
  }

  private static Vec2 place(Mesh mesh, double[] height, long edge, Frame sheet) {
    int a = (int) (edge >>> 32);
    int b = (int) edge;
    Vec3 p = sheet.local(mesh.point(a));
    Vec3 q = sheet.local(mesh.point(b));
    double t = height[a] / (height[a] - height[b]);
    return new Vec2(p.x() + t * (q.x() - p.x()), p.y() + t * (q.y() - p.y()));
  }
}
