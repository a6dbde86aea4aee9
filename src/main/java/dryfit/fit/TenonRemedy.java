package dryfit.fit;

/**
 * What to do about a tenon that came out thicker or thinner than its mortise wants, from the two
 * real thicknesses. Millimetres.
 *
 * <p>Common practice, no source: veneer on both cheeks, or equal shavings off both, keep the part
 * where it is; on one cheek alone the part moves away from a veneer, or towards the planed cheek,
 * by half of it.
 *
 * @param gap what is left at each cheek if the tenon sits in the middle; below zero it does not go
 *     in
 * @param wanted the planned gap at each cheek
 */
public record TenonRemedy(double gap, double wanted) {

  /**
   * @param tenon its real thickness
   * @param mortise the real width of the hole from cheek to cheek
   */
  public static TenonRemedy of(double tenon, double mortise, double wanted) {
    return new TenonRemedy((mortise - tenon) / 2, wanted);
  }

  /** The thickness to glue on each cheek so that the gap is as planned; zero if it is not loose. */
  public double veneerOnEach() {
    return Math.max(0, gap - wanted);
  }

  /** The thickness if it all goes on one cheek. */
  public double veneerOnOne() {
    return 2 * veneerOnEach();
  }

  /** What to plane off each cheek so that the gap is as planned; zero if it is not fat. */
  public double planeOffEach() {
    return Math.max(0, wanted - gap);
  }

  /** What to plane if it all comes off one cheek. */
  public double planeOffOne() {
    return 2 * planeOffEach();
  }

  /** How far the part moves sideways if all of it is done on one cheek. */
  public double moves() {
    return Math.max(veneerOnEach(), planeOffEach());
  }
}
