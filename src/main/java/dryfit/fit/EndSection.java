package dryfit.fit;

import dryfit.build.Part;
import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import java.util.List;

/** The section of a part a little behind one of its ends, clear of a shoulder that leans. */
public final class EndSection {
  private EndSection() {}

  /** Half of the stretch that is looked at, and what it keeps off the shoulder at least, mm. */
  private static final double HALF = 1;

  /** Each look is as far behind as the one before it asks for; this many are always enough. */
  private static final int LOOKS = 8;

  /**
   * Its extent, mm, in {@code part.frameNear(at)}.
   *
   * @param cut the plane of the shoulder, chair space
   * @param at a place on it, on the part's middle line
   * @param atStart whether it is the start of the part
   */
  public static Box of(Part part, Plane cut, Vec3 at, boolean atStart) {
    Frame near = part.frameNear(at);
    Vec3 n = near.localDirection(cut.normal());
    Box section = new Box(near.local(at), near.local(at));
    double behind = HALF;
    for (int look = 0; look < LOOKS; look++) {
      List<Vec3> corners = corners(part, near, at, atStart ? behind : -behind);
      if (corners.isEmpty()) {
        return section;
      }
      section = Box.around(corners);
      Vec3 size = section.size();
      // The wood lost to the shoulder is seen to be missing until the look is far enough behind.
      double wanted =
          (size.y() * Math.abs(n.y()) + size.z() * Math.abs(n.z())) / Math.abs(n.x()) + HALF;
      if (wanted <= behind) {
        return section;
      }
      behind = wanted;
    }
    return section;
  }

  private static List<Vec3> corners(Part part, Frame near, Vec3 at, double x) {
    Vec3 there = at.plus(near.x().times(x));
    Plane behind = part.frame().local(Plane.through(there.plus(near.x().times(HALF)), near.x()));
    Plane before =
        part.frame().local(Plane.through(there.minus(near.x().times(HALF)), near.x().negated()));
    return part.bodyCells().stream()
        .flatMap(c -> c.clipped(behind).stream())
        .flatMap(c -> c.clipped(before).stream())
        .flatMap(c -> c.points().stream())
        .map(part.frame()::place)
        .filter(p -> !isElsewhere(part, p, at))
        .map(near::local)
        .toList();
  }

  /**
   * Whether a place belongs to another stretch of a bent part that happens to be level with this
   * end, as the other leg of a hoop does; chair space.
   */
  static boolean isElsewhere(Part part, Vec3 place, Vec3 at) {
    return part.bend()
        .filter(
            b -> {
              double here = b.alongNear(part.frame().local(at));
              double there = b.alongNear(part.frame().local(place));
              return Math.abs(there - here) > b.length() / 2;
            })
        .isPresent();
  }
}
