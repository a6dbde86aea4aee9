package dryfit.app;

import dryfit.solid.Kernel;
import dryfit.solid.jcsg.JcsgKernel;

/** The ways of computing solids. */
public enum KernelChoice {
  /** With the JCSG library, its result sewn together afterwards. */
  JCSG("jcsg");

  /** The one that is used unless another is asked for. */
  public static final KernelChoice USUAL = JCSG;

  private final String word;

  KernelChoice(String word) {
    this.word = word;
  }

  /** The word for it on screen. */
  public String word() {
    return word;
  }

  public Kernel kernel() {
    return switch (this) {
      case JCSG -> new JcsgKernel();
    };
  }
}
