package dryfit.shop.template;

/** A template that cannot be made, and why. */
final class NoTemplate extends Exception {
  private static final long serialVersionUID = 1;

  NoTemplate(String because) {
    super(because);
  }
}
