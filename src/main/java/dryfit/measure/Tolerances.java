package dryfit.measure;

/**
 * The one place that owns an epsilon. Four quantities are kept apart and never mixed:
 *
 * <ul>
 *   <li><b>coincident</b>: two places nearer than this are one place (this class);
 *   <li><b>facet</b>: how far a flat facet may stand from the true curve (this class; it changes
 *       volumes, so it is part of the model);
 *   <li><b>output step</b>: what a file format can hold; it belongs to each writer;
 *   <li><b>clearance</b>: a dimension that the maker chose; it lives in the document and is never a
 *       tolerance.
 * </ul>
 *
 * <p>All lengths in millimetres, all angles in radians. Limits are inclusive: a value exactly at
 * its limit passes.
 */
public final class Tolerances {
  private Tolerances() {}

  /**
   * Two points nearer than this are one point: ten million double steps at one metre, and far below
   * what a 32-bit STL can tell apart there (6e-5 mm).
   */
  public static double coincident() {
    return 1e-6;
  }

  /**
   * The step of the grid on which the exact kernel puts the corners of shapes within 2 m of their
   * origin: 2^-14 mm, 61 nanometres. Corners of 26 bits are what its integers are made for.
   */
  public static double gridStep() {
    return 0x1p-14;
  }

  /**
   * Solids that overlap no deeper than this only touch. Parts are built in their own frames on a
   * grid of 2^-14 mm (6.1e-5 mm) and then placed, so two faces made to coincide can stand a few
   * grid steps into each other; a third of a micrometre of wood is far above that and far below any
   * saw.
   */
  public static double contact() {
    return 3e-4;
  }

  /**
   * A corner nearer than this to a cutting plane lies on it. A placed corner is right to about
   * 1e-12 mm at one metre, so this is far above rounding, and a thousand times below {@link
   * #coincident}, so that cutting never moves a corner to another place.
   */
  public static double onPlane() {
    return 1e-9;
  }

  /**
   * A piece thinner than this is left out when a solid is cut into cells: below what counts as two
   * places, and so little that 100 x 100 mm of it is 0.001 mm3.
   */
  public static double sliver() {
    return 1e-7;
  }

  /**
   * The step to which shapes are rounded before they are compared with shapes made earlier: 4.7e-10
   * mm. The same corner reached by two calculations differs by about 1e-13 mm, so that few corners
   * fall on two sides of a half; and a corner so rounded stays within {@link #onPlane} of its
   * faces.
   */
  public static double sameShape() {
    return 0x1p-31;
  }

  /** Greatest distance between a curve and the facets that stand for it (chord error). */
  public static double facet() {
    return 0.05;
  }

  /**
   * The least size of anything that is made, mm: a hundredth, thinner than any shaving (common
   * practice, no source), and a hundred times above where the kernels' grid would show.
   */
  public static double leastSize() {
    return 0.01;
  }

  /** Two directions nearer than this are parallel: 1 micrometre over 10 metres. */
  public static double parallel() {
    return 1e-7;
  }

  /**
   * Parts that move at the same time may drift apart sideways by this share of their way and still
   * go along one line: {@link #contact} over 100 mm, longer than the tenons of a chair. The middle
   * line between two turned legs is found on their facets, so it is a little off the plane of the
   * legs.
   */
  public static double drift() {
    return contact() / 100;
  }

  /**
   * Corners that a boolean operation made nearer than this to each other, or to an edge, are one.
   * The operation decides sides to 1e-8 mm; where planes cross at a slant that grows a thousandfold
   * along the cut. Smaller, and cracks stay open; larger, and the float step of an STL file is met.
   */
  public static double weld() {
    return 1e-5;
  }

  /**
   * A face whose corners stand further than this from its plane is not flat. A hundredth of the
   * distance to which JCSG tells sides apart: beyond that its recursion may never end.
   */
  public static double flat() {
    return 1e-10;
  }

  /**
   * Edges whose directions differ by less than this have no common normal worth the name: the ends
   * of an edge of 1 mm are right to about 1e-12. To leave them out moves a face by less than 1e-6
   * mm over 1 metre.
   */
  public static double sameDirection() {
    return 1e-9;
  }

  /**
   * Below this angle the common normal of two edges is taken with care: it is uncertain by rounding
   * over angle, 1e-7 at this limit.
   */
  public static double nearlyParallel() {
    return 1e-5;
  }

  /**
   * The share by which a volume may differ that was reached by two ways of adding: a million terms
   * each good to 1e-16, with room for terms that cancel.
   */
  public static double volumeShare() {
    return 1e-9;
  }

  /** Kilograms: half a gram is shown by no scales that weigh a chair. */
  public static double weighed() {
    return 0.0005;
  }
}
