package dryfit.solid.exact;

import dryfit.geometry.Mesh;
import dryfit.geometry.MeshFailure;
import dryfit.measure.Tolerances;
import dryfit.solid.Csg;
import dryfit.solid.Kernel;
import dryfit.solid.KernelFailure;

/** The kernel that computes without rounding; see the package description. */
public final class ExactKernel implements Kernel {

  /** Doublings of the grid's step after which a film is given up on: 2^-10 mm. */
  private static final int COARSEST = 4;

  @Override
  public String name() {
    return "exact";
  }

  @Override
  public double step() {
    return Tolerances.sameShape();
  }

  @Override
  public Mesh evaluate(Csg what) {
    try {
      return evaluate(what, 0);
    } catch (IllegalArgumentException | IllegalStateException | MeshFailure e) {
      throw new KernelFailure(e.getMessage(), what, e);
    }
  }

  /**
   * Faces that stand a grid step or two apart can leave a film too thin for 32-bit floats. On a
   * coarser grid, still below a micrometre, such faces fall together.
   */
  private static Mesh evaluate(Csg what, int coarser) {
    try {
      return new Evaluation(what, coarser).mesh();
    } catch (MeshFailure e) {
      if (coarser == COARSEST) {
        throw e;
      }
      return evaluate(what, coarser + 2);
    }
  }
}
