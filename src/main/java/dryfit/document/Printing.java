package dryfit.document;

/**
 * What the maker's printer does and what jigs are made with; millimetres and radians. Every
 * allowance is a number of its own, because printers differ: one needs 0.2 where another needs 0.5.
 *
 * @param bedX of the printer's bed, left to right
 * @param bedY front to back
 * @param bedZ how high it prints
 * @param line width of one printed line
 * @param holeAllowance added to the diameter of every bore, which comes out too small
 * @param slideAllowance left on each side of what has to slide into wood
 * @param relief chamfer round the face on the bed, whose first layer spreads
 * @param guidePlay how much smaller the tool is than its guide
 * @param guideTilt how far the tool may tip in its guide; decides how long the guide is
 * @param pin diameter of the rod that joins the pieces of a long stick
 */
public record Printing(
    double bedX,
    double bedY,
    double bedZ,
    double line,
    double holeAllowance,
    double slideAllowance,
    double relief,
    double guidePlay,
    double guideTilt,
    double pin) {

  /**
   * What is used where the document says nothing. The bed is a common size (from memory). Lines of
   * 0.4 to 0.5 mm, holes 0.1 to 0.3 mm too small, 0.2 to 0.3 mm a side for sliding: guides on
   * tolerances of printing services (x3dstudios.com, "3D printing tolerances guide"; novalab3d.com,
   * "FDM tolerances"). Relief 0.5 to 1 mm, play and tilt, pin: common practice, no source.
   */
  public static final Printing USUAL =
      new Printing(220, 220, 250, 0.45, 0.2, 0.2, 0.8, 0.2, Math.toRadians(0.4), 6);

  /** The thinnest wall there may be: two lines side by side. */
  public double leastWall() {
    return 2 * line;
  }
}
