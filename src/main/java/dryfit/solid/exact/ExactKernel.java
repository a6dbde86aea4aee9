package dryfit.solid.exact;

import dryfit.geometry.Mesh;
import dryfit.solid.Csg;
import dryfit.solid.Kernel;
import dryfit.solid.KernelFailure;

/** The kernel that computes without rounding; see the package description. */
public final class ExactKernel implements Kernel {

  @Override
  public String name() {
    return "exact";
  }

  @Override
  public Mesh evaluate(Csg what) {
    try {
      return new Evaluation(what).mesh();
    } catch (IllegalArgumentException | IllegalStateException e) {
      throw new KernelFailure(e.getMessage(), what, e);
    }
  }
}
