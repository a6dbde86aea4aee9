package dryfit.solid.exact;

import dryfit.geometry.Mesh;
import dryfit.geometry.MeshFailure;
import dryfit.measure.Tolerances;
import dryfit.solid.Csg;
import dryfit.solid.Kernel;
import dryfit.solid.KernelFailure;
import java.util.List;

/** The kernel that computes without rounding; see the package description. */
public final class ExactKernel implements Kernel {

  /** Doublings of the grid's step after which a film is given up on: 2^-10 mm. */
  private static final int COARSEST = 4;

  @Override
  public String name() {
    return "exact";
  }

  /**
   * How far a face of a solid may stand from where it was asked for, since its corners are put on a
   * grid: half a step along each axis, mm. Films thinner than a float step may be given up, which
   * takes a few steps more, but is rare.
   *
   * @throws IllegalArgumentException if the solid reaches beyond the coarsest grid
   */
  public static double farthestMove(Mesh solid) {
    return Math.sqrt(3) / 2 * Grid.over(List.of(solid), 0).mm(1);
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
