package dryfit.build;

import dryfit.document.JointPlan;
import dryfit.solid.Csg;
import dryfit.solid.Kernel;
import dryfit.solid.KernelFailure;
import java.util.List;

/**
 * Tells of a solid that a kernel could not make: which part it is, and at which joints. Shapes
 * carry the pointer of the joint that made them; a joint without whose shapes the part can be made
 * is where it fails.
 */
final class FailedPart {
  private static final Csg NOTHING = new Csg.Union(List.of());

  private FailedPart() {}

  /**
   * The same failure with the part's name and joints in its message.
   *
   * @param joints all joints of the chair
   */
  static KernelFailure named(
      String part, List<JointPlan> joints, Kernel kernel, KernelFailure failure) {
    Csg what = failure.operands();
    List<JointPlan> here = joints.stream().filter(j -> has(what, j.pointer())).toList();
    List<JointPlan> where =
        here.stream().filter(j -> canBeMade(kernel, without(what, j.pointer()))).toList();
    List<String> names =
        (where.isEmpty() ? here : where).stream().map(j -> "\"" + j.name() + "\"").toList();
    String place =
        names.isEmpty()
            ? part
            : part + (names.size() == 1 ? ", joint " : ", joints ") + String.join(", ", names);
    return new KernelFailure(place + ": " + failure.getMessage(), what, failure);
  }

  private static boolean canBeMade(Kernel kernel, Csg what) {
    try {
      kernel.evaluate(what);
      return true;
    } catch (KernelFailure stillFails) {
      return false;
    }
  }

  private static boolean has(Csg what, String pointer) {
    if (what instanceof Csg.Leaf leaf) {
      return madeBy(leaf, pointer);
    } else if (what instanceof Csg.Union union) {
      return union.of().stream().anyMatch(each -> has(each, pointer));
    } else if (what instanceof Csg.Common common) {
      return common.of().stream().anyMatch(each -> has(each, pointer));
    }
    Csg.Cut cut = (Csg.Cut) what;
    return has(cut.from(), pointer) || cut.tools().stream().anyMatch(each -> has(each, pointer));
  }

  private static boolean madeBy(Csg.Leaf leaf, String pointer) {
    return leaf.mesh().faceCount() > 0 && leaf.mesh().origin(0).equals(pointer);
  }

  private static Csg without(Csg what, String pointer) {
    if (what instanceof Csg.Leaf leaf) {
      return madeBy(leaf, pointer) ? NOTHING : leaf;
    } else if (what instanceof Csg.Union union) {
      return new Csg.Union(without(union.of(), pointer));
    } else if (what instanceof Csg.Common common) {
      return new Csg.Common(without(common.of(), pointer));
    }
    Csg.Cut cut = (Csg.Cut) what;
    return new Csg.Cut(without(cut.from(), pointer), without(cut.tools(), pointer));
  }

  private static List<Csg> without(List<Csg> all, String pointer) {
    return all.stream().map(each -> without(each, pointer)).toList();
  }
}
