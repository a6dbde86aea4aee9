package dryfit.solid;

import java.io.Serial;

/** A kernel could not make a closed surface. It carries the operands, to be kept as a case. */
public final class KernelFailure extends RuntimeException {
  @Serial private static final long serialVersionUID = 1L;

  private final transient Csg operands;

  public KernelFailure(String message, Csg operands, Throwable cause) {
    super(message, cause);
    this.operands = operands;
  }

  public Csg operands() {
    return operands;
  }
}
