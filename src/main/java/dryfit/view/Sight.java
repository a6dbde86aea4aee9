package dryfit.view;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.geometry.Rays;
import dryfit.geometry.Vec3;
import java.util.List;
import java.util.Set;

/** What can be seen from where, all parts in their places. */
final class Sight {
  /** What lies on a face is not hidden by that face, mm. */
  private static final double NEAR = 0.5;

  private Sight() {}

  /**
   * Whether nothing stands before a place.
   *
   * @param without labels of parts that do not count
   * @param place chair space
   * @param eye chair space
   */
  static boolean isFree(Chair chair, Set<String> without, Vec3 place, Vec3 eye) {
    Vec3 way = place.minus(eye);
    for (Part part : chair.parts()) {
      if (without.contains(part.label())) {
        continue;
      }
      List<Rays.Hit> hits = part.solid().rays().placed(part.frame()).hits(eye, way.unit());
      if (!hits.isEmpty() && hits.get(0).distance() < way.length() - NEAR) {
        return false;
      }
    }
    return true;
  }
}
