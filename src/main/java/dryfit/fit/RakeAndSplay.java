package dryfit.fit;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.document.PartPlan;
import dryfit.geometry.Lean;
import dryfit.geometry.Vec3;
import dryfit.measure.BenchAngle;
import java.util.List;
import java.util.Optional;

/**
 * How an upright straight or turned part stands: its rake and splay as the two views show them,
 * against the floor and, where the seat slopes, against the seat as well. The two differ, and a
 * hole bored into a sloping seat wants the second.
 *
 * @param floor against plumb
 * @param seat against the square of the seat; none if there is no seat or it is level
 */
public record RakeAndSplay(Part part, View floor, Optional<View> seat) {

  /**
   * The lean against one plumb, with words for its senses.
   *
   * @param lean as {@link Lean} signs it
   * @param rakeFoot where the foot stands in the side view, seen from the top of the part: front,
   *     back or nothing if it does not rake
   * @param splayFoot where it stands in the front view: outside, inside, right, left or nothing
   * @param foot both together
   */
  public record View(Lean lean, String rakeFoot, String splayFoot, String foot) {
    /** Whether it stands plumb, as far as shows. */
    public boolean isPlumb() {
      return foot.isEmpty();
    }
  }

  /** The upright parts of a chair, in its order; sawn parts have no one line to lean. */
  public static List<RakeAndSplay> of(Chair chair) {
    Optional<SeatPlane> seat = seat(chair).filter(SeatPlane::slopes);
    return chair.parts().stream()
        .filter(RakeAndSplay::stands)
        .map(
            p ->
                new RakeAndSplay(
                    p, view(chair, p, Vec3.UP), seat.map(plane -> view(chair, p, plane.up()))))
        .toList();
  }

  /** The seat that {@link #seat} is measured from. */
  public static Optional<SeatPlane> seat(Chair chair) {
    return SeatPlane.of(chair);
  }

  private static boolean stands(Part part) {
    boolean oneLine =
        part.plan() instanceof PartPlan.Turned || part.plan() instanceof PartPlan.Straight;
    return oneLine && Math.abs(part.frame().x().z()) > Math.sqrt(0.5);
  }

  private static View view(Chair chair, Part part, Vec3 up) {
    Lean lean = Lean.of(part.frame().x(), up, Vec3.BACK);
    PartSides sides = PartSides.of(chair, part);
    Vec3 down = lean.direction().negated();
    Vec3 fore = new Vec3(0, shows(lean.rake()) ? down.y() : 0, 0);
    Vec3 side = new Vec3(shows(lean.splay()) ? down.x() : 0, 0, 0);
    boolean rakes = fore.length() > 0;
    boolean splays = side.length() > 0;
    return new View(
        lean,
        rakes ? sides.compass(fore) : "",
        splays ? sides.compass(side) : "",
        rakes || splays ? sides.compass(fore.plus(side)) : "");
  }

  private static boolean shows(double angle) {
    return !BenchAngle.of(angle).isSquare();
  }
}
