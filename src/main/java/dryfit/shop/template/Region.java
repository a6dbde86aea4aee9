package dryfit.shop.template;

import dryfit.geometry.Vec2;
import dryfit.shop.JoinedHulls;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import org.locationtech.jts.simplify.TopologyPreservingSimplifier;

/** A part of a drawing's plane, made of polygons with holes; mm. */
record Region(Geometry area) {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  /** Joined on a grid of a thousandth of a millimetre, on which joining never fails. */
  private static final PrecisionModel GRID = new PrecisionModel(1000);

  /**
   * Corners that stand off the line of their neighbours by less than two steps of the grid are left
   * out: joining on the grid leaves such corners on every straight edge.
   */
  private static final double STRAIGHT = 0.002;

  /** A quarter circle is drawn with so many chords: at a radius of 10 mm they are 0.003 mm off. */
  private static final int QUARTER = 32;

  static Region empty() {
    return new Region(GEOMETRY.createPolygon());
  }

  /** The convex outlines of sets of points, joined. */
  static Region ofHulls(List<List<Vec2>> sets) {
    List<Geometry> hulls = new ArrayList<>();
    for (List<Vec2> set : sets) {
      hulls.add(new ConvexHull(coordinates(set), GEOMETRY).getConvexHull());
    }
    return new Region(JoinedHulls.of(hulls));
  }

  /** What is within one loop. */
  static Region of(List<Vec2> loop) {
    List<Vec2> ring = new ArrayList<>(loop);
    ring.add(loop.get(0));
    return new Region(GEOMETRY.createPolygon(coordinates(ring)));
  }

  static Region rectangle(double x0, double y0, double x1, double y1) {
    return of(List.of(new Vec2(x0, y0), new Vec2(x1, y0), new Vec2(x1, y1), new Vec2(x0, y1)));
  }

  private static Coordinate[] coordinates(List<Vec2> points) {
    return points.stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new);
  }

  Region with(Region other) {
    return overlay(other, OverlayNG.UNION);
  }

  Region without(Region other) {
    return overlay(other, OverlayNG.DIFFERENCE);
  }

  Region common(Region other) {
    return overlay(other, OverlayNG.INTERSECTION);
  }

  /** What is in one of the two only. */
  Region differing(Region other) {
    return overlay(other, OverlayNG.SYMDIFFERENCE);
  }

  private Region overlay(Region other, int operation) {
    Geometry made = OverlayNGRobust.overlay(area, other.area, operation);
    List<Geometry> polygons = new ArrayList<>();
    for (int i = 0; i < made.getNumGeometries(); i++) {
      if (made.getGeometryN(i) instanceof Polygon p && !p.isEmpty()) {
        polygons.add(p);
      }
    }
    return new Region(GEOMETRY.buildGeometry(polygons));
  }

  /** Without corners that only the grid has made. */
  Region cleaned() {
    return new Region(TopologyPreservingSimplifier.simplify(area, STRAIGHT));
  }

  /** The largest piece with its holes. */
  Region largest() {
    Geometry best = area.getGeometryN(0);
    for (int i = 1; i < area.getNumGeometries(); i++) {
      best = area.getGeometryN(i).getArea() > best.getArea() ? area.getGeometryN(i) : best;
    }
    return new Region(best);
  }

  /** Without its holes. */
  Region filled() {
    List<Geometry> polygons = new ArrayList<>();
    for (int i = 0; i < area.getNumGeometries(); i++) {
      polygons.add(GEOMETRY.createPolygon(((Polygon) area.getGeometryN(i)).getExteriorRing()));
    }
    return new Region(UnaryUnionNG.union(polygons, GRID));
  }

  /** Larger all round by so much, smaller if it is below zero; corners stay sharp. */
  Region grown(double by) {
    BufferParameters corners = new BufferParameters();
    corners.setJoinStyle(BufferParameters.JOIN_MITRE);
    // A corner of 23 degrees comes out sharp, a sharper one is cut off.
    corners.setMitreLimit(5);
    return new Region(BufferOp.bufferOp(area, by, corners));
  }

  /** Larger all round by so much as a wheel of that radius rolls round it. */
  Region rolled(double by) {
    BufferParameters corners = new BufferParameters();
    corners.setQuadrantSegments(QUARTER);
    return new Region(BufferOp.bufferOp(area, by, corners));
  }

  double size() {
    return area.getArea();
  }

  double edgeLength() {
    return area.getLength();
  }

  boolean isEmpty() {
    return area.isEmpty();
  }

  boolean contains(Vec2 p) {
    return area.contains(GEOMETRY.createPoint(new Coordinate(p.x(), p.y())));
  }

  double distanceToEdge(Vec2 p) {
    return area.getBoundary().distance(GEOMETRY.createPoint(new Coordinate(p.x(), p.y())));
  }

  Vec2 middle() {
    Coordinate c = area.getCentroid().getCoordinate();
    return new Vec2(c.x, c.y);
  }

  Vec2 low() {
    Envelope e = area.getEnvelopeInternal();
    return new Vec2(e.getMinX(), e.getMinY());
  }

  Vec2 high() {
    Envelope e = area.getEnvelopeInternal();
    return new Vec2(e.getMaxX(), e.getMaxY());
  }

  List<Region> pieces() {
    List<Region> out = new ArrayList<>();
    for (int i = 0; i < area.getNumGeometries(); i++) {
      if (!area.getGeometryN(i).isEmpty()) {
        out.add(new Region(area.getGeometryN(i)));
      }
    }
    return out;
  }

  /** The closed lines round it, for each piece the outer one before its holes. */
  List<List<Vec2>> loops() {
    List<List<Vec2>> out = new ArrayList<>();
    for (Region piece : pieces()) {
      Polygon polygon = (Polygon) piece.area;
      out.add(loop(polygon.getExteriorRing()));
      for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
        out.add(loop(polygon.getInteriorRingN(i)));
      }
    }
    return out;
  }

  private static List<Vec2> loop(LinearRing ring) {
    Coordinate[] c = ring.getCoordinates();
    return Arrays.stream(c, 0, c.length - 1).map(p -> new Vec2(p.x, p.y)).toList();
  }

  /** Turned over about the x axis. */
  Region turnedOver() {
    return new Region(AffineTransformation.scaleInstance(1, -1).transform(area));
  }

  /** Turned about the origin by half a turn. */
  Region turnedRound() {
    return new Region(AffineTransformation.scaleInstance(-1, -1).transform(area));
  }
}
