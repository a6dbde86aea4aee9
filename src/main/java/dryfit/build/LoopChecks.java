package dryfit.build;

import dryfit.geometry.Vec2;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;

/** Refuses outlines that no saw could follow. */
final class LoopChecks {
  private LoopChecks() {}

  static Polygon polygon(List<Vec2> loop) {
    List<Coordinate> ring = new ArrayList<>();
    loop.forEach(p -> ring.add(new Coordinate(p.x(), p.y())));
    ring.add(ring.get(0).copy());
    return new GeometryFactory().createPolygon(ring.toArray(Coordinate[]::new));
  }

  static void refuseCrossing(List<Vec2> loop, String part, String pointer) {
    if (loop.size() < 3) {
      throw Refusal.of(
          "outline-crosses",
          pointer,
          "an outline of " + part + " encloses nothing",
          "give it at least three corners that are not in line");
    }
    IsValidOp validity = new IsValidOp(polygon(loop));
    if (!validity.isValid()) {
      Coordinate at = validity.getValidationError().getCoordinate();
      throw Refusal.of(
          "outline-crosses",
          pointer,
          "an outline of "
              + part
              + " crosses or touches itself near ("
              + Refusal.length(at.x)
              + ", "
              + Refusal.length(at.y)
              + ")",
          "its edge must not meet itself");
    }
  }
}
