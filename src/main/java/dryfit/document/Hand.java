package dryfit.document;

/**
 * Which of a pair: right and left as you face the chair; {@code NONE} for a part without a twin.
 */
public enum Hand {
  NONE,
  RIGHT,
  LEFT;

  public Hand other() {
    return this == RIGHT ? LEFT : this == LEFT ? RIGHT : NONE;
  }

  /** {@code " right"}, {@code " left"} or nothing, to follow a part's name. */
  public String suffix() {
    return this == NONE ? "" : this == RIGHT ? " right" : " left";
  }
}
