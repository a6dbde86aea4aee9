package dryfit.solid;

import dryfit.geometry.Mesh;

/** Turns an expression of solids into one closed surface. Implementations are thread-safe. */
public interface Kernel {

  /** A short name for messages, e.g. {@code exact}. */
  String name();

  /**
   * The closed, outward, merged surface of {@code what}, or {@link Mesh#EMPTY} if nothing is left.
   * It is still closed after its coordinates are rounded to 32-bit floats.
   *
   * @throws KernelFailure if no such surface could be made
   */
  Mesh evaluate(Csg what);

  /**
   * The step to which coordinates may be rounded before it sees them, mm, because its own grid is
   * far coarser; 0 if it takes them as they are.
   */
  default double step() {
    return 0;
  }
}
