package dryfit.build;

import dryfit.build.JointInstances.Instance;
import dryfit.build.JointMaker.Made;
import dryfit.document.JointSizes.Notch;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Cells;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;

/**
 * A board cut round a post that passes it: what the post sweeps through the board, with room across
 * the grain for the board to move and less along it. Where the post stands at the edge of the
 * board, the notch is open.
 */
final class NotchMaker {
  private NotchMaker() {}

  static Made make(
      Instance i, String label, int tenoned, int mortised, Notch sizes, Pieces pieces) {
    Stock post = i.tenoned();
    Stock board = i.mortised();
    List<Convex> shared = Cells.common(post.placedCells(), board.placedCells());
    if (shared.isEmpty()) {
      throw JointMaker.misses(i);
    }
    Vec3 entry = post.outward(i.atStart());
    Vec3 grain = board.frame().turn(board.grain()).across(entry);
    if (grain.length() < 0.1) {
      throw Refusal.of(
          "wrong-kind",
          i.plan().pointer(),
          "the grain of " + board.name() + " runs along " + post.name(),
          "a notch goes round a post that passes across the grain");
    }
    grain = grain.unit();
    Vec3 across = grain.cross(entry);
    double low = -reach(shared, entry.negated());
    double high = reach(shared, entry);
    Plane mouth = new Plane(entry.negated(), -low);
    Vec3 at = middle(shared, grain).plus(middle(shared, across)).plus(entry.times(low));
    TenonAxes axes = new TenonAxes(at, entry, across, grain, 0, 0);
    JointSite site =
        new JointSite(
            i,
            label,
            tenoned,
            mortised,
            new Meeting(mouth, at, post.section(i.atStart()), post.endFrame(i.atStart())),
            mouth,
            axes,
            high - low,
            pieces);
    Convex hole =
        Shadow.swept(
            shared,
            at,
            entry,
            across.times(sizes.across()),
            grain.times(sizes.along()),
            high - low + 100);
    Tenon one = new Tenon(tenoned, at, shared, List.of(hole));
    Vec3[] open = openTo(board, hole, entry).toArray(new Vec3[0]);
    return new Made(i, site.joint(List.of(one), open), List.of(), List.of(), List.of());
  }

  /** The faces of the board, beside its two wide ones, that the notch comes out of. */
  private static List<Vec3> openTo(Stock board, Convex hole, Vec3 entry) {
    List<Vec3> open = new ArrayList<>();
    List<Convex> cells = board.placedCells();
    for (Convex cell : cells) {
      for (Plane face : cell.planes()) {
        boolean outer = reach(cells, face.normal()) <= face.offset() + Tolerances.contact();
        if (outer
            && Math.abs(face.normal().dot(entry)) < 0.5
            && hole.reach(face.normal()) > face.offset()) {
          open.add(face.normal());
        }
      }
    }
    return open;
  }

  private static Vec3 middle(List<Convex> cells, Vec3 d) {
    return d.times((reach(cells, d) - reach(cells, d.negated())) / 2);
  }

  private static double reach(List<Convex> cells, Vec3 direction) {
    return cells.stream().mapToDouble(c -> c.reach(direction)).max().orElseThrow();
  }
}
