package dryfit.build;

import dryfit.document.Hand;
import dryfit.document.PartCuts;
import dryfit.document.PartPlan;
import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import dryfit.solid.Csg;
import dryfit.solid.Solid;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

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
 * @param sawnCells the same as it is sawn, before its edges are treated: what outlines and blanks
 *     are taken from
 * @param solid the finished part, own frame
 * @param blank the squared piece it is made from
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
    List<Convex> sawnCells,
    Solid solid,
    Blank blank,
    Vec3 grain,
    Optional<Bend> bend) {

  public Part {
    bodyCells = List.copyOf(bodyCells);
    sawnCells = List.copyOf(sawnCells);
  }

  /**
   * Whether a face of the finished part was made by what stands at a place in the document.
   *
   * @param place JSON pointer, as meshes carry it
   */
  public boolean isCutBy(String place) {
    Mesh mesh = solid.mesh();
    return IntStream.range(0, mesh.faceCount()).anyMatch(f -> mesh.origin(f).equals(place));
  }

  /** A part that is not bent and has no edges treated. */
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
    this(
        plan,
        hand,
        label,
        frame,
        body,
        bodyCells,
        bodyCells,
        solid,
        blank,
        grain,
        Optional.empty());
  }

  /**
   * The squared piece a part is made from, in the part's own frame, mm.
   *
   * @param net as small as it can be
   * @param rough with what the maker allows on its faces and ends
   */
  public record Blank(Box net, Box rough) {
    /** A piece of which only the size matters, without allowances. */
    public Blank(double length, double width, double thickness) {
      this(
          new Box(Vec3.ZERO, new Vec3(length, width, thickness)),
          new Box(Vec3.ZERO, new Vec3(length, width, thickness)));
    }

    static Blank around(List<Convex> cells, PartCuts.Oversize oversize) {
      Box net = Box.around(cells.stream().flatMap(c -> c.points().stream()).toList());
      Vec3 more = new Vec3(oversize.ends(), oversize.sides(), oversize.sides());
      return new Blank(net, new Box(net.low().minus(more), net.high().plus(more)));
    }

    /** Without allowances. */
    public double length() {
      return net.size().x();
    }

    /** Without allowances. */
    public double width() {
      return net.size().y();
    }

    /** Without allowances. */
    public double thickness() {
      return net.size().z();
    }

    /** The rough piece as a solid, own frame of the part; every face with the given origin. */
    public Csg.Leaf solid(String origin) {
      return Convex.box(rough).asLeaf(origin);
    }
  }

  public String name() {
    return plan.name();
  }

  /** Whether a joint brought it along: a dowel, a loose tenon, a wedge. */
  public boolean isPiece() {
    return pointer().startsWith("/joints/");
  }

  public String pointer() {
    return plan.common().pointer();
  }

  /** Whether it is round across, so that it has no faces and no edges to measure from. */
  public boolean isRound() {
    return plan instanceof PartPlan.Turned
        || plan instanceof PartPlan.Straight straight
            && straight.section() instanceof PartPlan.Section.Round
        || plan instanceof PartPlan.Bent bent
            && bent.sections().stream()
                .allMatch(s -> s.section() instanceof PartPlan.Section.Round);
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
