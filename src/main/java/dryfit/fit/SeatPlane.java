package dryfit.fit;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.document.PartPlan;
import dryfit.geometry.Vec3;
import dryfit.measure.BenchAngle;
import java.util.Comparator;
import java.util.Optional;

/**
 * The board that counts as the seat, for legs that are measured from it: the largest part within 30
 * degrees of level that is not a straight, turned or sawn member.
 *
 * @param part its label
 * @param up unit direction square to it, upwards
 */
public record SeatPlane(String part, Vec3 up) {
  private static final double LEVEL_ENOUGH = Math.cos(Math.toRadians(30));

  static Optional<SeatPlane> of(Chair chair) {
    return chair.parts().stream()
        .filter(p -> !isStick(p))
        .filter(p -> Math.abs(p.frame().z().z()) >= LEVEL_ENOUGH)
        .max(Comparator.comparingDouble(SeatPlane::area))
        .map(
            p ->
                new SeatPlane(
                    p.label(), p.frame().z().z() < 0 ? p.frame().z().negated() : p.frame().z()));
  }

  private static boolean isStick(Part part) {
    return part.plan() instanceof PartPlan.Straight
        || part.plan() instanceof PartPlan.Turned
        || part.plan() instanceof PartPlan.Sawn;
  }

  private static double area(Part part) {
    return part.blank().length() * part.blank().width();
  }

  /** How far it falls to the back, radians; negative if it falls to the front. */
  public double fallsBack() {
    return Math.atan(up.y() / up.z());
  }

  /** Whether it slopes enough to show. */
  public boolean slopes() {
    return !BenchAngle.of(up.angleTo(Vec3.UP)).isSquare();
  }
}
