package dryfit.build;

import dryfit.geometry.Frame;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Canonical;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * The sections of parts in one plane, each a little larger all round, as one shape: where the parts
 * meet they close a ring.
 */
final class SectionRing {
  private SectionRing() {}

  /** How far sections are let into each other so that parts that only touch close the ring, mm. */
  static final double OVERLAP = 0.01;

  /** Cosine between the ways two sides look beyond which the corner between them is sharp. */
  private static final double SHARP = -0.9;

  /**
   * The section of each cell of a part, in rising order: a part and its mirrored twin have the
   * same.
   *
   * @param cells in chair space
   * @param page its x and y lie in the plane
   * @return for each section its corners, u and v on the page in turn, rounded and in rising order
   */
  static List<double[]> sections(List<Convex> cells, Frame page) {
    List<double[]> sections = new ArrayList<>();
    Plane plane = new Plane(page.z(), page.z().dot(page.origin()));
    for (Convex cell : cells) {
      List<Vec3> corners = Slice.points(cell, plane);
      if (corners.size() >= 3) {
        sections.add(flat(corners, page));
      }
    }
    sections.sort(Arrays::compare);
    return sections;
  }

  private static double[] flat(List<Vec3> corners, Frame page) {
    return corners.stream()
        .map(page::local)
        .map(p -> Canonical.numbers(new double[] {p.x(), p.y()}, Tolerances.sameShape()))
        .sorted(Arrays::compare)
        .flatMapToDouble(Arrays::stream)
        .toArray();
  }

  /**
   * All parts in one shape, larger all round by {@link #OVERLAP}.
   *
   * @param parts for each part what {@link #sections} gives
   */
  static Geometry of(List<List<double[]>> parts) {
    return union(parts.stream().flatMap(p -> larger(p).stream()).toList());
  }

  /** One part: by its outlines where its cells meet along whole sides, else cell by cell. */
  private static List<Geometry> larger(List<double[]> sections) {
    List<List<double[]>> hulls =
        sections.stream().map(SectionRing::hull).filter(h -> h.size() >= 3).toList();
    return SectionOutlines.of(hulls)
        .flatMap(SectionRing::largerOutlines)
        .orElseGet(() -> hulls.stream().<Geometry>map(h -> polygon(grown(h))).toList());
  }

  private static Optional<List<Geometry>> largerOutlines(List<List<double[]>> outlines) {
    List<Geometry> larger = new ArrayList<>();
    for (List<double[]> outline : outlines) {
      Polygon polygon = polygon(grown(outline));
      // In a corner narrower than the overlap an outline moved outward crosses itself.
      if (!polygon.isValid()) {
        return Optional.empty();
      }
      larger.add(polygon);
    }
    return Optional.of(larger);
  }

  private static List<double[]> hull(double[] corners) {
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i < corners.length; i += 2) {
      points.add(new double[] {corners[i], corners[i + 1]});
    }
    return FlatHull.of(points);
  }

  /** Every side of a loop that runs anticlockwise moved outward. */
  private static List<Coordinate> grown(List<double[]> loop) {
    int n = loop.size();
    List<Coordinate> out = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double[] before = outward(loop.get((i + n - 1) % n), loop.get(i));
      double[] after = outward(loop.get(i), loop.get((i + 1) % n));
      // The corner goes where both sides, moved outward, cross; a sharp one is blunted.
      double cosine = before[0] * after[0] + before[1] * after[1];
      if (cosine > SHARP) {
        double by = OVERLAP / (1 + cosine);
        out.add(moved(loop.get(i), before[0] + after[0], before[1] + after[1], by));
      } else {
        out.add(moved(loop.get(i), before[0], before[1], OVERLAP));
        out.add(moved(loop.get(i), after[0], after[1], OVERLAP));
      }
    }
    out.add(out.get(0));
    return out;
  }

  /** Square to a side, away from the inside of a loop that runs anticlockwise. */
  private static double[] outward(double[] from, double[] to) {
    double length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    return new double[] {(to[1] - from[1]) / length, (from[0] - to[0]) / length};
  }

  private static Coordinate moved(double[] p, double u, double v, double by) {
    return new Coordinate(p[0] + by * u, p[1] + by * v);
  }

  private static Polygon polygon(List<Coordinate> loop) {
    return new GeometryFactory().createPolygon(loop.toArray(Coordinate[]::new));
  }

  /**
   * Shapes whose boxes keep apart are one valid shape already. Shapes that follow each other make
   * two or three such layers, which are united in as many steps less one.
   */
  private static Geometry union(List<Geometry> sections) {
    List<List<Geometry>> layers = new ArrayList<>();
    for (Geometry section : sections) {
      Envelope box = section.getEnvelopeInternal();
      layers.stream()
          .filter(l -> l.stream().noneMatch(g -> g.getEnvelopeInternal().intersects(box)))
          .findFirst()
          .orElseGet(
              () -> {
                layers.add(new ArrayList<>());
                return layers.get(layers.size() - 1);
              })
          .add(section);
    }
    GeometryFactory factory = new GeometryFactory();
    return OverlayNGRobust.union(layers.stream().map(factory::buildGeometry).toList());
  }
}
