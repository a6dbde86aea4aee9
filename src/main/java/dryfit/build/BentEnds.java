package dryfit.build;

import dryfit.build.BentRings.Ring;
import dryfit.document.PartCuts;
import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import java.util.List;

/**
 * The two ends of a bent part, which do not look along its frame, and its bend.
 *
 * @param start in the part's own frame
 * @param end in the part's own frame
 * @param width greatest of the section, mm
 * @param thickness greatest of the section, mm
 * @param rings where a square section stands along it, own frame; none if it is not square
 */
record BentEnds(Bend bend, End start, End end, double width, double thickness, List<Ring> rings) {
  BentEnds {
    rings = List.copyOf(rings);
  }

  /** A little way off the end, seen across, still counts as the end: times the section's size. */
  private static final double ASIDE = 1.5;

  /**
   * One end of a bent part.
   *
   * @param frame where the middle line ends, x along it from the start to the end of the part, y
   *     along the width; own frame of the part
   * @param section in that frame
   * @param longer how much longer it is left, to be cut to a face, mm
   */
  record End(Frame frame, Stock.Section section, double longer) {

    /**
     * Whether a place belongs to what lies round or straight beyond this end, and not elsewhere.
     */
    boolean isNear(Vec3 place) {
      Vec3 p = frame.local(place);
      return Math.hypot(p.y(), p.z()) <= ASIDE * Math.hypot(section.width(), section.thickness());
    }

    End mirroredZ() {
      Vec3 x = mirrored(frame.x());
      Vec3 y = mirrored(frame.y());
      return new End(
          new Frame(mirrored(frame.origin()), x, y, x.cross(y)),
          new Stock.Section(section.y0(), section.y1(), -section.z1(), -section.z0()),
          longer);
    }

    private static Vec3 mirrored(Vec3 v) {
      return new Vec3(v.x(), v.y(), -v.z());
    }
  }

  End at(boolean atStart) {
    return atStart ? start : end;
  }

  BentEnds mirroredZ() {
    return new BentEnds(
        bend.mirroredZ(), start.mirroredZ(), end.mirroredZ(), width, thickness, List.of());
  }

  /**
   * The straight piece it is bent from: as long as its middle line, with what its ends reach beyond
   * that or fall short of it.
   *
   * @param body cells of the part with its tenons, own frame
   */
  Part.Blank blank(List<Convex> body, PartCuts.Oversize oversize) {
    double before = beyond(body, true);
    double after = beyond(body, false);
    Box net =
        new Box(
            new Vec3(-before, -width / 2, -thickness / 2),
            new Vec3(bend.length() + after, width / 2, thickness / 2));
    Vec3 more = new Vec3(oversize.ends(), oversize.sides(), oversize.sides());
    return new Part.Blank(net, new Box(net.low().minus(more), net.high().plus(more)));
  }

  private double beyond(List<Convex> body, boolean atStart) {
    End at = at(atStart);
    Vec3 out = atStart ? at.frame().x().negated() : at.frame().x();
    // Only the last stretch: a hoop comes back alongside its end.
    double stretch = Math.min(bend.length() / 3, 4 * at.section().width() + at.longer());
    return body.stream()
        .flatMap(c -> c.points().stream())
        .filter(at::isNear)
        .mapToDouble(p -> p.minus(at.frame().origin()).dot(out))
        .filter(d -> d > -stretch)
        .max()
        .orElse(0);
  }
}
