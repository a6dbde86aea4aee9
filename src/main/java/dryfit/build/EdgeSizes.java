package dryfit.build;

import dryfit.document.EdgePlan;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import dryfit.solid.Cells;
import dryfit.solid.Csg;
import java.util.List;

/**
 * Whether edges are treated no wider than the faces they lie between, alone and with the edge on
 * the other side of the face. Looked at in the middle of each edge; there a cutter ends on wood
 * that no other takes.
 */
final class EdgeSizes {
  /** How far a place is taken into the wood, of the width that is cut: faces may be curved. */
  private static final double INWARD = 0.3;

  /** What is left of a width, so that two that just meet are told from two that overlap. */
  private static final double SHORT_OF = 0.999;

  /** Edges that run side by side; those that meet at a corner may share its wood. */
  private static final double SIDE_BY_SIDE = 0.9;

  private EdgeSizes() {}

  /** One edge and what takes its wood. */
  record Treated(EdgePlan plan, EdgeRun run, Csg cutter) {
    private int piece() {
      return run.pieces() / 2;
    }

    private Vec3 middle() {
      int i = piece();
      return run.points().get(i).midway(run.points().get((i + 1) % run.points().size()));
    }

    /** How much of each face goes, mm. */
    private double width() {
      double half = run.angle(piece()) / 2;
      return switch (plan.shape()) {
        case CHAMFER -> plan.size();
        case EASED -> plan.size() / 2 / Math.sin(half);
        case ROUND_OVER -> plan.size() / Math.tan(half);
      };
    }
  }

  /**
   * @param stock with its edges still sharp
   * @throws Refusal naming the size of the first that is too large
   */
  static void check(Stock stock, List<Treated> all) {
    for (Treated t : all) {
      Vec3 into = t.run().into().get(t.piece());
      Vec3 down = t.run().down().get(t.piece());
      check(stock, t, into, down, all);
      check(stock, t, down, into, all);
    }
  }

  private static void check(Stock stock, Treated t, Vec3 way, Vec3 other, List<Treated> all) {
    Vec3 end = t.middle().plus(way.times(t.width() * SHORT_OF));
    Vec3 inside = end.plus(other.times(t.width() * INWARD));
    if (stock.cells().stream().noneMatch(c -> c.contains(inside))) {
      throw tooLarge(stock, t, "wider than a face it is cut from");
    }
    for (Treated o : all) {
      if (isBeside(t, o) && takes(o, end) && !takes(o, t.middle())) {
        throw tooLarge(stock, t, "so wide that it meets what is cut off the edge beside it");
      }
    }
  }

  private static boolean isBeside(Treated t, Treated o) {
    return Math.abs(t.run().direction(t.piece()).dot(o.run().direction(o.piece()))) > SIDE_BY_SIDE;
  }

  private static boolean takes(Treated t, Vec3 place) {
    if (t.cutter() instanceof Csg.Leaf leaf && !isNear(leaf.mesh(), place)) {
      return false;
    }
    return Cells.of(t.cutter()).stream().anyMatch(c -> c.contains(place));
  }

  private static boolean isNear(Mesh mesh, Vec3 place) {
    return mesh.bounds().meets(new dryfit.geometry.Box(place, place));
  }

  private static Refusal tooLarge(Stock stock, Treated t, String why) {
    return Refusal.of(
        "edge-too-large",
        t.plan().pointer() + "/size",
        "an edge of "
            + stock.name()
            + " cannot be "
            + EdgeWork.done(t.plan())
            + " at "
            + Refusal.length(t.plan().size())
            + ": that is "
            + why,
        "make the size smaller");
  }
}
