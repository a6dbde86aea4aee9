package dryfit.build;

import dryfit.document.Hand;
import dryfit.document.JointPlan;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import java.util.List;

/**
 * One joint of the chair as it will be made, in chair space.
 *
 * @param plan what the maker wrote
 * @param hand which of a pair of joints
 * @param label its name for people, e.g. {@code side rail to front leg, right}
 * @param tenoned index in {@link Chair#parts} of the part that goes in
 * @param atStart whether it is the start of that part
 * @param mortised index in {@link Chair#parts} of the part that takes it
 * @param mouth plane of the face the tenon goes into; the normal points out of the wood
 * @param at where the middle line of the tenon goes through the mouth
 * @param entry unit direction in which the tenon goes in
 * @param thick unit direction across the cheeks, square to {@code entry}
 * @param wide unit direction across the edges, square to both
 * @param length how far the tenon goes in along {@code entry} at its middle line, as planned, mm
 * @param tenon the cells of the tenon, from the mouth to its tip
 * @param mortise the cells of the mortise as cut, including the overrun outside the mouth
 */
public record Joint(
    JointPlan plan,
    Hand hand,
    String label,
    int tenoned,
    boolean atStart,
    int mortised,
    Plane mouth,
    Vec3 at,
    Vec3 entry,
    Vec3 thick,
    Vec3 wide,
    double length,
    List<Convex> tenon,
    List<Convex> mortise) {

  public Joint {
    tenon = List.copyOf(tenon);
    mortise = List.copyOf(mortise);
  }

  Joint labelled(String other) {
    return new Joint(
        plan, hand, other, tenoned, atStart, mortised, mouth, at, entry, thick, wide, length, tenon,
        mortise);
  }

  public String name() {
    return plan.name();
  }

  /** The angle between the entry and the square to the face, radians. */
  public double lean() {
    return entry.angleTo(mouth.normal().negated());
  }
}
