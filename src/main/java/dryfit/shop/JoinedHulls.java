package dryfit.shop;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/** The outline of a part from the outlines of its cells. */
public final class JoinedHulls {
  /** Outlines are joined on a grid of a thousandth of a millimetre, where joining never fails. */
  private static final PrecisionModel GRID = new PrecisionModel(1000);

  /**
   * Half the width of the gaps that are closed, mm. Where a cell ends in the middle of another's
   * side, the grid moves its corner off that side by up to a step: that leaves a gap no wood has,
   * which may part the outline in two.
   */
  private static final double HAIR = 0.002;

  private JoinedHulls() {}

  /** All of them as one, what is no polygon left out; empty if none is. */
  public static Geometry of(List<Geometry> hulls) {
    List<Geometry> areas = hulls.stream().filter(Polygon.class::isInstance).toList();
    if (areas.isEmpty()) {
      return new GeometryFactory().createPolygon();
    }
    BufferParameters sharp = new BufferParameters();
    sharp.setJoinStyle(BufferParameters.JOIN_MITRE);
    Geometry joined = UnaryUnionNG.union(areas, GRID);
    return BufferOp.bufferOp(BufferOp.bufferOp(joined, HAIR, sharp), -HAIR, sharp);
  }
}
