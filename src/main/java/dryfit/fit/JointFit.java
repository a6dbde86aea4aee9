package dryfit.fit;

import dryfit.build.Joint;
import java.util.OptionalDouble;

/**
 * What was measured at one joint, on the finished solids. Gaps are negative where wood overlaps;
 * empty where nothing could be measured (a round tenon has no edges, a through tenon no bottom).
 * Millimetres, radians, square millimetres.
 *
 * @param cheek least and greatest gap at the cheeks
 * @param edge least and greatest gap at the edges
 * @param bottom least and greatest gap between the tip and the bottom of the mortise
 * @param shoulder least and greatest gap between shoulder and face
 * @param wall least wood left between the mortise and an outside face of its part
 * @param wallFace which face that is, in words
 * @param lean angle between the entry and the square to the face
 * @param leanAlong its share along the length of the mortised part, signed towards that part's end
 * @param leanAcross its share across that part
 * @param depthSquare depth of the mortise square to the face
 * @param depthAlong depth of the mortise along the entry, what a depth mark on a drill reads
 * @param shoulderWide angle of the shoulder off square on the tenoned part's wide face
 * @param shoulderNarrow angle of the shoulder off square on its narrow face
 * @param glueLong glue area, long grain to long grain
 * @param glueOther glue area where end grain takes part
 * @param detail each side by itself, and where
 */
public record JointFit(
    Joint joint,
    Gap cheek,
    Gap edge,
    Gap bottom,
    Gap shoulder,
    OptionalDouble wall,
    String wallFace,
    double lean,
    double leanAlong,
    double leanAcross,
    double depthSquare,
    double depthAlong,
    double shoulderWide,
    double shoulderNarrow,
    double glueLong,
    double glueOther,
    JointDetail detail) {

  /** Without any detail. */
  public JointFit(
      Joint joint,
      Gap cheek,
      Gap edge,
      Gap bottom,
      Gap shoulder,
      OptionalDouble wall,
      String wallFace,
      double lean,
      double leanAlong,
      double leanAcross,
      double depthSquare,
      double depthAlong,
      double shoulderWide,
      double shoulderNarrow,
      double glueLong,
      double glueOther) {
    this(
        joint,
        cheek,
        edge,
        bottom,
        shoulder,
        wall,
        wallFace,
        lean,
        leanAlong,
        leanAcross,
        depthSquare,
        depthAlong,
        shoulderWide,
        shoulderNarrow,
        glueLong,
        glueOther,
        JointDetail.NONE);
  }

  /** Least and greatest of a gap, mm; both empty where nothing faces it. */
  public record Gap(OptionalDouble least, OptionalDouble greatest) {
    static final Gap NONE = new Gap(OptionalDouble.empty(), OptionalDouble.empty());

    static Gap of(double least, double greatest) {
      return new Gap(OptionalDouble.of(least), OptionalDouble.of(greatest));
    }
  }
}
