package dryfit.app;

import dryfit.solid.Kernel;
import dryfit.solid.exact.ExactKernel;
import dryfit.solid.jcsg.JcsgKernel;

/** The ways of computing solids. */
public enum KernelChoice {
  /** With exact predicates on a fine grid; nothing is decided by rounding. */
  EXACT("exact"),
  /** With the JCSG library, its result sewn together afterwards. */
  JCSG("jcsg");

  /** The one that is used unless another is asked for. */
  public static final KernelChoice USUAL = EXACT;

  private final String word;

  KernelChoice(String word) {
    this.word = word;
  }

  /** The word for it on screen. */
  public String word() {
    return word;
  }

  /** The one that is asked for a second opinion. */
  public KernelChoice other() {
    return this == EXACT ? JCSG : EXACT;
  }

  public Kernel kernel() {
    return switch (this) {
      case EXACT -> new ExactKernel();
      case JCSG -> new JcsgKernel();
    };
  }
}
