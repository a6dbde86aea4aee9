package dryfit.geometry;

import dryfit.geometry.Rays.Hit;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * Looks along a ray for the nearest triangle; what is farther than the nearest yet found is passed
 * over.
 */
final class NearestHit {
  private final Facets facets;
  private final Vec3 direction;
  private final List<Hit> hits = new ArrayList<>(16);
  private Hit hit;
  private double unclear;
  private double bound;

  NearestHit(Facets facets, Vec3 direction) {
    this.facets = facets;
    this.direction = direction;
  }

  /** Among all triangles. */
  void lookInto(BoxTree tree, Vec3 from) {
    begin();
    tree.along(from, direction, () -> bound, triangle -> meet(triangle, from));
  }

  /**
   * Among these.
   *
   * @param starts where each begins along the direction, rising
   */
  void lookAt(int[] triangles, double[] starts, Vec3 from) {
    begin();
    double at = from.dot(direction);
    for (int i = 0; i < triangles.length && starts[i] - at <= bound; i++) {
      meet(triangles[i], from);
    }
  }

  private void begin() {
    hits.clear();
    hit = null;
    unclear = Double.POSITIVE_INFINITY;
    bound = Double.POSITIVE_INFINITY;
  }

  private void meet(int triangle, Vec3 from) {
    int before = hits.size();
    boolean clear = facets.meet(triangle, from, direction, bound, hits);
    if (hits.size() > before) {
      Hit found = hits.get(before);
      bound = Math.min(bound, found.distance() + Tolerances.sliver());
      boolean nearer =
          hit == null
              || found.distance() < hit.distance()
              || (found.distance() == hit.distance() && found.face() < hit.face());
      hit = nearer ? found : hit;
      unclear = clear ? unclear : Math.min(unclear, found.distance());
    }
  }

  /** Null if nothing was met. */
  Hit hit() {
    return hit;
  }

  /** Whether the ray does not meet an edge there, and only goes in there or only out. */
  boolean isClear() {
    if (hit == null) {
      return true;
    }
    if (!(unclear > bound)) {
      return false;
    }
    for (Hit h : hits) {
      if (h.distance() <= bound && h.entering() != hit.entering()) {
        return false;
      }
    }
    return true;
  }
}
