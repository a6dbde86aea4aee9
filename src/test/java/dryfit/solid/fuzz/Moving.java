package dryfit.solid.fuzz;

import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import dryfit.solid.Csg;
import java.util.ArrayList;
import java.util.List;

/** Moves whole expressions, surfaces and cells alike. */
final class Moving {
  private Moving() {}

  /** The expression taken through {@code frame} from local to outside coordinates. */
  static Csg placed(Csg what, Frame frame) {
    if (what instanceof Csg.Leaf leaf) {
      return placed(leaf, frame);
    } else if (what instanceof Csg.Union union) {
      return new Csg.Union(placed(union.of(), frame));
    } else if (what instanceof Csg.Common common) {
      return new Csg.Common(placed(common.of(), frame));
    }
    Csg.Cut cut = (Csg.Cut) what;
    return new Csg.Cut(placed(cut.from(), frame), placed(cut.tools(), frame));
  }

  static Csg.Leaf placed(Csg.Leaf leaf, Frame frame) {
    return new Csg.Leaf(
        leaf.mesh().placed(frame), leaf.cells().stream().map(c -> c.placed(frame)).toList());
  }

  private static List<Csg> placed(List<Csg> all, Frame frame) {
    return all.stream().map(each -> placed(each, frame)).toList();
  }

  /** All leaves of an expression, from left to right. */
  static List<Csg.Leaf> leaves(Csg what) {
    List<Csg.Leaf> out = new ArrayList<>();
    if (what instanceof Csg.Leaf leaf) {
      out.add(leaf);
    } else if (what instanceof Csg.Union union) {
      union.of().forEach(each -> out.addAll(leaves(each)));
    } else if (what instanceof Csg.Common common) {
      common.of().forEach(each -> out.addAll(leaves(each)));
    } else if (what instanceof Csg.Cut cut) {
      out.addAll(leaves(cut.from()));
      cut.tools().forEach(each -> out.addAll(leaves(each)));
    }
    return out;
  }

  /** Nothing but a shift. */
  static Frame shift(Vec3 by) {
    return new Frame(by, Vec3.RIGHT, Vec3.BACK, Vec3.UP);
  }
}
