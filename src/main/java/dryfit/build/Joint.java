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
 * @param tenons what goes in, one by one; none where two faces only meet
 * @param open unit directions out of the wood in which the mortise is meant to come out, that of
 *     the mouth first
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
    List<Tenon> tenons,
    List<Vec3> open) {

  public Joint {
    tenons = List.copyOf(tenons);
    open = List.copyOf(open);
  }

  /** The cells of all that goes in, from the mouth to the tip. */
  public List<Convex> tenon() {
    return tenons.stream().flatMap(t -> t.wood().stream()).toList();
  }

  /** The cells of all that is cut for it, including the overrun outside the mouth. */
  public List<Convex> mortise() {
    return tenons.stream().flatMap(t -> t.hole().stream()).toList();
  }

  /** Whether it comes out at the far side, so that it has no bottom. */
  public boolean through() {
    return open.stream().anyMatch(d -> d.dot(entry) > STRAIGHT_ON);
  }

  /** Whether a face that looks this way is one the mortise is meant to come out of. */
  public boolean isOpenTo(Vec3 normal) {
    return open.stream().anyMatch(d -> d.dot(normal) > HALF_RIGHT);
  }

  /** Faces that look this way or that to within 60 degrees count as one side, cosine. */
  private static final double HALF_RIGHT = 0.5;

  private static final double STRAIGHT_ON = 0.99;

  Joint labelled(String other) {
    return new Joint(
        plan, hand, other, tenoned, atStart, mortised, mouth, at, entry, thick, wide, length,
        tenons, open);
  }

  Joint withTenons(List<Tenon> others) {
    return new Joint(
        plan, hand, label, tenoned, atStart, mortised, mouth, at, entry, thick, wide, length,
        others, open);
  }

  /** The same joint with one of its tenons alone. */
  public Joint alone(Tenon tenon) {
    return new Joint(
        plan,
        hand,
        label,
        tenoned,
        atStart,
        mortised,
        mouth,
        tenon.at(),
        entry,
        thick,
        wide,
        length,
        List.of(tenon),
        open);
  }

  /** How much of the length is inside the wood: all but what stands proud. */
  public double inWood() {
    return length - (through() ? plan.proud() : 0);
  }

  public String name() {
    return plan.name();
  }

  /** The angle between the entry and the square to the face, radians. */
  public double lean() {
    return entry.angleTo(mouth.normal().negated());
  }
}
