package dryfit.timber;

/** How the growth rings lie in a board, which decides how much its width moves. */
public enum Sawn {
  /** Rings run with the width (plain-sawn): the width moves by the tangential coefficient. */
  FLAT,
  /** Rings stand square to the width: the width moves by the radial coefficient. */
  QUARTERED
}
