package dryfit.build;

import dryfit.document.Hand;
import dryfit.document.PartPlan;
import dryfit.geometry.Frame;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import dryfit.solid.Csg;
import dryfit.solid.Solid;
import java.util.List;
import java.util.Optional;

/**
 * One part of the chair as it will be made: shaped, shouldered, with its tenons and mortises.
 *
 * @param plan what the maker wrote
 * @param hand which of a pair
 * @param label its name for people, e.g. {@code front-leg right}; follows the document's choice of
 *     left and right
 * @param frame places the part's own frame (x length, y width, z thickness) in the chair
 * @param body the shape before any mortise is cut, tenons included, as made, own frame
 * @param bodyCells cells of {@code body}, own frame
 * @param solid the finished part, own frame
 * @param blank size of the squared piece it is made from: length, width, thickness, mm, without
 *     allowances
 * @param grain unit direction of the grain, own frame; of a bent part at its middle
 * @param bend how it is bent, if it is
 */
public record Part(
    PartPlan plan,
    Hand hand,
    String label,
    Frame frame,
    Csg body,
    List<Convex> bodyCells,
    Solid solid,
    Blank blank,
    Vec3 grain,
    Optional<Bend> bend) {

  public Part {
    bodyCells = List.copyOf(bodyCells);
  }

  /** A part that is not bent. */
  public Part(
      PartPlan plan,
      Hand hand,
      String label,
      Frame frame,
      Csg body,
      List<Convex> bodyCells,
      Solid solid,
      Blank blank,
      Vec3 grain) {
    this(plan, hand, label, frame, body, bodyCells, solid, blank, grain, Optional.empty());
  }

  /** A squared piece of wood, mm. */
  public record Blank(double length, double width, double thickness) {}

  public String name() {
    return plan.name();
  }

  public String pointer() {
    return plan.common().pointer();
  }

  /** The unit direction of its length near a place; both in chair space. */
  public Vec3 lengthNear(Vec3 place) {
    return bend.map(b -> frame.turn(b.directionNear(frame.local(place)))).orElse(frame.x());
  }

  /**
   * The frame that its section stands in near a place of chair space: its own, unless it is bent;
   * then one at that place, x along the middle line.
   */
  public Frame frameNear(Vec3 place) {
    return bend.isEmpty() ? frame : Frame.of(place, lengthNear(place), frame.y());
  }

  /**
   * The unit direction of its grain near a place; both in chair space. The grain of a bent part
   * follows it.
   */
  public Vec3 grainNear(Vec3 place) {
    return bend.isPresent() && plan.common().grain() instanceof PartPlan.Grain.AlongLength
        ? lengthNear(place)
        : frame.turn(grain);
  }

  /** The finished surface where it stands in the chair. */
  public Mesh placedMesh() {
    return solid.mesh().placed(frame);
  }

  /** The finished part's cells where they stand in the chair. */
  public List<Convex> placedCells() {
    return solid.cells().stream().map(c -> c.placed(frame)).toList();
  }
}
