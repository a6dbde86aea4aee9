package dryfit.shop.setting;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.JointPlan;
import dryfit.fit.PartSides;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/**
 * The two long edges of a part's outline in stretches, each cut so that the fibres ahead of the
 * cutter rise out of the wood and none is lifted: downhill (common practice, no source).
 */
final class Outlines {
  /** Grain nearer to the edge than this can be cut either way: one degree. */
  private static final double ALONG = Math.toRadians(1);

  /** A stretch shorter than this goes with the one before it, mm. */
  private static final double SHORT = 15;

  /** Edges steeper than this against the part's length are its ends and shoulders. */
  private static final double STEEP = Math.cos(Math.toRadians(50));

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  /** Outlines are joined on a grid of a thousandth of a millimetre. */
  private static final PrecisionModel GRID = new PrecisionModel(1000);

  private Outlines() {}

  /**
   * A stretch of an edge, by its distance from one end of the part, mm.
   *
   * @param side the way the edge looks
   * @param origin the end that is measured from
   * @param way the end that the cutter goes towards; empty if either way will do
   * @param fromTemplate whether a router in the hand goes that way with the template up
   */
  record Stretch(
      String side, double from, double to, String origin, String way, boolean fromTemplate) {}

  /**
   * The stretches of an outline.
   *
   * @param face own direction square to the outline, out of the face with the template
   */
  static List<Stretch> of(Chair chair, Part part, Vec3 face) {
    PartSides sides = PartSides.of(chair, part);
    Limits limits = Limits.of(chair, part);
    Vec3 u = Vec3.RIGHT;
    Vec3 v = face.cross(u);
    List<Geometry> seen = new ArrayList<>();
    for (Convex cell : part.bodyCells()) {
      Coordinate[] points =
          cell.points().stream()
              .map(p -> new Coordinate(p.dot(u), p.dot(v)))
              .toArray(Coordinate[]::new);
      Geometry hull = new ConvexHull(points, GEOMETRY).getConvexHull();
      if (hull instanceof Polygon) {
        seen.add(hull);
      }
    }
    Coordinate[] ring = largest(UnaryUnionNG.union(seen, GRID)).getExteriorRing().getCoordinates();
    if (Orientation.isCCW(ring)) {
      return new Walk(part, sides, limits, u, v, ring).stretches();
    }
    Coordinate[] back = ring.clone();
    for (int i = 0; i < ring.length; i++) {
      back[i] = ring[ring.length - 1 - i];
    }
    return new Walk(part, sides, limits, u, v, back).stretches();
  }

  private static Polygon largest(Geometry g) {
    Polygon best = null;
    for (int i = 0; i < g.getNumGeometries(); i++) {
      if (g.getGeometryN(i) instanceof Polygon p
          && (best == null || p.getArea() > best.getArea())) {
        best = p;
      }
    }
    if (best == null) {
      throw new IllegalStateException("a part without an outline");
    }
    return best;
  }

  /**
   * How far the outline goes along the part: to its shoulders, or to its ends where it has none.
   *
   * @param shouldered whether the lower is a shoulder
   */
  private record Limits(double low, double high, boolean shouldered) {
    static Limits of(Chair chair, Part part) {
      double low = part.blank().net().low().x();
      double high = part.blank().net().high().x();
      boolean shouldered = false;
      for (Joint joint : chair.joints()) {
        boolean own = chair.parts().get(joint.tenoned()).label().equals(part.label());
        if (own && joint.plan().tenon().end() != JointPlan.End.MIDDLE) {
          double at = part.frame().local(joint.at()).x();
          low = joint.atStart() ? Math.max(low, at) : low;
          high = joint.atStart() ? high : Math.min(high, at);
          shouldered |= joint.atStart();
        }
      }
      return new Limits(low, high, shouldered);
    }
  }

  /** How an edge meets the grain as it is followed against the clock. */
  private enum Grain {
    EITHER,
    WITH,
    AGAINST
  }

  /** An outline followed against the clock, seen from the template's side. */
  private record Walk(
      Part part, PartSides sides, Limits limits, Vec3 u, Vec3 v, Coordinate[] ring) {

    List<Stretch> stretches() {
      List<Stretch> out = new ArrayList<>();
      double low = limits.low;
      double high = limits.high;
      String startWord = sides.nearest(part.frame().turn(u).negated()) + " end";
      String endWord = sides.nearest(part.frame().turn(u)) + " end";
      String origin = limits.shouldered ? startWord.replace(" end", " shoulder") : startWord;
      for (int sense : new int[] {1, -1}) {
        List<Piece> pieces = pieces(sense);
        String side = sides.nearest(part.frame().turn(v).times(-sense));
        for (Piece p : joined(pieces)) {
          double from = Math.max(low, Math.min(p.from, p.to)) - low;
          double to = Math.min(high, Math.max(p.from, p.to)) - low;
          boolean forwards = (p.to > p.from) == (p.grain == Grain.WITH);
          String way = p.grain == Grain.EITHER ? "" : forwards ? endWord : startWord;
          if (to - from >= SHORT) {
            out.add(new Stretch(side, from, to, origin, way, p.grain == Grain.WITH));
          }
        }
      }
      out.sort(Comparator.comparing(Stretch::side).thenComparingDouble(Stretch::from));
      return out;
    }

    /** A run of edges along which the grain lies the same way; from and to along the part. */
    private record Piece(double from, double to, Grain grain) {}

    /** The edges that run along the part one way, in the order of the walk. */
    private List<Piece> pieces(int sense) {
      List<Piece> out = new ArrayList<>();
      int n = ring.length - 1;
      int first = 0;
      double most = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < n; i++) {
        // The walk along one side begins where the part begins or ends.
        if (-sense * ring[i].x > most) {
          most = -sense * ring[i].x;
          first = i;
        }
      }
      for (int k = 0; k < n; k++) {
        Coordinate a = ring[(first + k) % n];
        Coordinate b = ring[(first + k + 1) % n];
        double length = a.distance(b);
        if (length > 0 && (b.x - a.x) * sense / length > STEEP) {
          out.add(new Piece(a.x, b.x, grain((b.x - a.x) / length, (b.y - a.y) / length)));
        }
      }
      return out;
    }

    private Grain grain(double dx, double dy) {
      double gx = part.grain().dot(u);
      double gy = part.grain().dot(v);
      double along = gx * dx + gy * dy;
      // Outward is to the right of a walk against the clock.
      double out = gx * dy - gy * dx;
      double angle = Math.atan2(out * Math.signum(along), Math.abs(along));
      return Math.abs(angle) <= ALONG ? Grain.EITHER : angle > 0 ? Grain.WITH : Grain.AGAINST;
    }

    /** Neighbours that are cut alike, and those too short to be told, are one. */
    private static List<Piece> joined(List<Piece> pieces) {
      List<Piece> out = new ArrayList<>();
      for (Piece p : pieces) {
        Piece last = out.isEmpty() ? null : out.get(out.size() - 1);
        boolean sameWay = last != null && last.grain == p.grain;
        boolean tooShort = last != null && Math.abs(last.to - last.from) < SHORT;
        if (last != null && (sameWay || tooShort)) {
          out.set(out.size() - 1, new Piece(last.from, p.to, p.grain));
        } else {
          out.add(p);
        }
      }
      return out;
    }
  }
}
