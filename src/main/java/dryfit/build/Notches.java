package dryfit.build;

import dryfit.document.Hand;
import dryfit.document.PartCuts.Notch;
import dryfit.document.PartPlan;
import dryfit.document.PartPlan.PartRef;
import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Cells;
import dryfit.solid.Convex;
import dryfit.solid.Csg;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Cuts a board round the parts that stand up through it. The notch is the other part's own shape
 * where it passes, made larger in the plane of the board: by one gap along the grain and by another
 * across it. It follows a part that leans.
 */
final class Notches {
  private final Map<String, Stock> placed;
  private final Map<String, Csg> bodies;

  Notches(Map<String, Stock> placed, Map<String, Csg> bodies) {
    this.placed = placed;
    this.bodies = bodies;
  }

  /** What is cut from a part, own frame; nothing if it has no notch. */
  List<Csg> of(Stock board) {
    List<Csg> tools = new ArrayList<>();
    board
        .plan()
        .common()
        .cuts()
        .notch()
        .ifPresent(
            notch ->
                notch
                    .round()
                    .forEach(
                        ref ->
                            keys(ref, board.hand())
                                .forEach(
                                    key -> tool(board, notch, ref, key).ifPresent(tools::add))));
    return tools;
  }

  /** A board of its own is cut round both of a pair, one of a pair round the post on its side. */
  private List<String> keys(PartRef ref, Hand board) {
    if (placed.containsKey(ref.part() + Hand.NONE.suffix())) {
      return List.of(ref.part() + Hand.NONE.suffix());
    }
    Hand hand = ref.hand() != Hand.NONE && board == Hand.LEFT ? ref.hand().other() : ref.hand();
    if (hand == Hand.NONE && board == Hand.NONE) {
      return List.of(ref.part() + Hand.RIGHT.suffix(), ref.part() + Hand.LEFT.suffix());
    }
    return List.of(ref.part() + (hand == Hand.NONE ? board : hand).suffix());
  }

  /** The notch round one post, carrying the place where that is named; none if it stands clear. */
  private Optional<Csg> tool(Stock board, Notch notch, PartRef ref, String key) {
    Stock post = placed.get(key);
    Frame face = face(board);
    List<Vec3> wood =
        board.cells().stream().flatMap(c -> c.points().stream()).map(face::local).toList();
    Box box = Box.around(wood);
    Plane top = new Plane(Vec3.UP, box.high().z() + Shapes.SPARE);
    Plane bottom = new Plane(Vec3.UP.negated(), Shapes.SPARE - box.low().z());
    List<Vec3> corners = new ArrayList<>();
    for (Convex cell : Cells.of(bodies.get(key))) {
      Convex seen = cell.placed(post.frame()).localTo(board.frame()).localTo(face);
      seen.clipped(top)
          .flatMap(c -> c.clipped(bottom))
          .filter(c -> c.bounds().meets(box))
          .ifPresent(c -> corners.addAll(grown(c, notch)));
    }
    return corners.isEmpty()
        ? Optional.empty()
        : Optional.of(Convex.hull(corners).placed(face).asLeaf(ref.pointer()));
  }

  private static List<Vec3> grown(Convex cell, Notch notch) {
    List<Vec3> out = new ArrayList<>();
    for (Vec3 p : cell.points()) {
      for (int side = 0; side < 4; side++) {
        out.add(
            p.plus(
                new Vec3(
                    side % 2 == 0 ? notch.gap() : -notch.gap(),
                    side / 2 == 0 ? notch.across() : -notch.across(),
                    0)));
      }
    }
    return out;
  }

  /** x along the grain, z square to the board; a corner block is cut square to its top. */
  private static Frame face(Stock board) {
    Vec3 out = board.plan() instanceof PartPlan.CornerBlock ? new Vec3(0, 1, 0) : Vec3.UP;
    Vec3 grain = board.grain().across(out);
    Vec3 along = grain.length() <= Tolerances.parallel() ? Vec3.RIGHT : grain.unit();
    return Frame.of(Vec3.ZERO, along, out.cross(along));
  }
}
