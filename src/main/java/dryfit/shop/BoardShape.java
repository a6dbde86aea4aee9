package dryfit.shop;

import dryfit.document.PartPlan;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * What is to be cut out of a board, as it is seen when the face it is named for looks up: x along
 * the board, y across it, mm.
 *
 * @param label for people
 * @param net the finished outline, with tenons
 * @param rough the same with what is allowed for sawing, its holes filled
 * @param grain angle of its grain to x, radians, from -π/2 to π/2
 * @param thickness of its blank
 */
record BoardShape(String label, Polygon net, Polygon rough, double grain, double thickness) {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  /** The true outline of a part; of a bent one the straight piece it is bent from. */
  static BoardShape of(Blank blank) {
    List<Geometry> net = new ArrayList<>();
    List<Geometry> rough = new ArrayList<>();
    double x = (blank.rough().length() - blank.finished().length()) / 2;
    double y = (blank.rough().width() - blank.finished().width()) / 2;
    Vec3 across = blank.up().cross(blank.along());
    if (blank.part().bend().isPresent()) {
      Blank.Size size = blank.finished();
      net.add(hull(corners(size.length(), size.width()), 0, 0));
      rough.add(hull(corners(size.length(), size.width()), x, y));
    } else {
      for (Convex cell : blank.part().solid().cells()) {
        List<Vec2> seen =
            cell.points().stream().map(p -> new Vec2(p.dot(blank.along()), p.dot(across))).toList();
        net.add(hull(seen, 0, 0));
        rough.add(hull(seen, x, y));
      }
    }
    Vec3 grain = blank.part().grain();
    double angle = Math.atan2(grain.dot(across), grain.dot(blank.along()));
    return new BoardShape(
        blank.part().label(),
        whole(net),
        whole(rough),
        blank.part().plan() instanceof PartPlan.Bent ? 0 : half(angle),
        blank.rough().thickness());
  }

  /** A rectangle, its grain along it. */
  static BoardShape rectangle(String label, double length, double width, double thickness) {
    Polygon outline = (Polygon) hull(corners(length, width), 0, 0);
    return new BoardShape(label, outline, outline, 0, thickness);
  }

  /** As it is drawn when the other face looks up. */
  BoardShape turnedOver() {
    return moved(AffineTransformation.scaleInstance(1, -1), -grain);
  }

  /** Turned in the plane of the board. */
  BoardShape turned(double angle) {
    return moved(AffineTransformation.rotationInstance(angle), half(grain + angle));
  }

  /** Moved in the plane of the board. */
  BoardShape moved(double x, double y) {
    return moved(AffineTransformation.translationInstance(x, y), grain);
  }

  private BoardShape moved(AffineTransformation by, double turnedGrain) {
    return new BoardShape(
        label, (Polygon) by.transform(net), (Polygon) by.transform(rough), turnedGrain, thickness);
  }

  /** The rough outline with room all round. */
  Polygon grown(double by) {
    BufferParameters corners = new BufferParameters();
    corners.setJoinStyle(BufferParameters.JOIN_MITRE);
    corners.setMitreLimit(2);
    return largest(by > 0 ? BufferOp.bufferOp(rough, by, corners) : rough);
  }

  static List<Vec2> points(Polygon polygon) {
    Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
    return Arrays.stream(ring, 0, ring.length - 1).map(c -> new Vec2(c.x, c.y)).toList();
  }

  /** A line has no direction: the same angle between minus and plus a right angle. */
  private static double half(double angle) {
    return angle - Math.PI * Math.rint(angle / Math.PI);
  }

  private static List<Vec2> corners(double length, double width) {
    return List.of(
        new Vec2(0, 0), new Vec2(length, 0), new Vec2(length, width), new Vec2(0, width));
  }

  /** The convex outline of points, each with a rectangle of such half sides round it. */
  private static Geometry hull(List<Vec2> points, double x, double y) {
    List<Coordinate> all = new ArrayList<>();
    for (Vec2 p : points) {
      all.add(new Coordinate(p.x() - x, p.y() - y));
      all.add(new Coordinate(p.x() + x, p.y() - y));
      all.add(new Coordinate(p.x() + x, p.y() + y));
      all.add(new Coordinate(p.x() - x, p.y() + y));
    }
    return new ConvexHull(all.toArray(new Coordinate[0]), GEOMETRY).getConvexHull();
  }

  private static Polygon whole(List<Geometry> parts) {
    return largest(JoinedHulls.of(parts));
  }

  private static Polygon largest(Geometry geometry) {
    Geometry best = geometry.getGeometryN(0);
    for (int i = 1; i < geometry.getNumGeometries(); i++) {
      best = geometry.getGeometryN(i).getArea() > best.getArea() ? geometry.getGeometryN(i) : best;
    }
    return GEOMETRY.createPolygon(((Polygon) best).getExteriorRing().getCoordinates());
  }
}
