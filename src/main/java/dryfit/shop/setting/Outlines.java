package dryfit.shop.setting;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.JointPlan;
import dryfit.fit.PartSides;
import dryfit.geometry.Vec3;
import dryfit.shop.JoinedHulls;
import dryfit.shop.setting.GrainRun.Grain;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * The two long edges of a part's outline in stretches, each cut so that the fibres ahead of the
 * cutter rise out of the wood and none is lifted: downhill (common practice, no source).
 */
final class Outlines {
  /** Grain nearer to the edge than this can be cut either way: one degree. */
  private static final double ALONG = Math.toRadians(1);

  /** Edges steeper than this against the part's length are its ends and shoulders. */
  private static final double STEEP = Math.cos(Math.toRadians(50));

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

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
    for (Convex cell : part.sawnCells()) {
      Coordinate[] points =
          cell.points().stream()
              .map(p -> new Coordinate(p.dot(u), p.dot(v)))
              .toArray(Coordinate[]::new);
      seen.add(new ConvexHull(points, GEOMETRY).getConvexHull());
    }
    Coordinate[] ring = largest(JoinedHulls.of(seen)).getExteriorRing().getCoordinates();
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

  /** An outline followed against the clock, seen from the template's side. */
  private record Walk(
      Part part, PartSides sides, Limits limits, Vec3 u, Vec3 v, Coordinate[] ring) {

    List<Stretch> stretches() {
      List<Stretch> out = new ArrayList<>();
      double low = limits.low;
      String startWord = sides.nearest(part.frame().turn(u).negated()) + " end";
      String endWord = sides.nearest(part.frame().turn(u)) + " end";
      String origin = limits.shouldered ? startWord.replace(" end", " shoulder") : startWord;
      for (int sense : new int[] {1, -1}) {
        String side = sides.nearest(part.frame().turn(v).times(-sense));
        for (GrainRun r : GrainRun.joined(runs(sense))) {
          boolean forwards = (sense > 0) == (r.grain() == Grain.WITH);
          String way = r.grain() == Grain.EITHER ? "" : forwards ? endWord : startWord;
          out.add(
              new Stretch(
                  side, r.from() - low, r.to() - low, origin, way, r.grain() == Grain.WITH));
        }
      }
      out.sort(Comparator.comparing(Stretch::side).thenComparingDouble(Stretch::from));
      return out;
    }

    /**
     * The edges that run along the part one way, from its start to its end whichever way they are
     * walked, so that both hands read alike.
     */
    private List<GrainRun> runs(int sense) {
      List<GrainRun> out = new ArrayList<>();
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
          double from = Math.max(limits.low, Math.min(a.x, b.x));
          double to = Math.min(limits.high, Math.max(a.x, b.x));
          if (from < to) {
            out.add(new GrainRun(from, to, grain((b.x - a.x) / length, (b.y - a.y) / length)));
          }
        }
      }
      if (sense < 0) {
        Collections.reverse(out);
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
  }
}
