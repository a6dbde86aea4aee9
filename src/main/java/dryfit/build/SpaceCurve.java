package dryfit.build;

import dryfit.geometry.Vec3;
import dryfit.measure.NaturalSpline;
import java.util.List;
import java.util.stream.IntStream;

/** A smooth curve in space over a parameter from its first to its last mark. */
interface SpaceCurve {
  /** Places of the parameter between which the curve is smooth; rising, two or more. */
  double[] marks();

  Vec3 at(double t);

  /** The first derivative. */
  Vec3 slope(double t);

  /** The second derivative. */
  Vec3 bend(double t);

  /** The natural cubic spline through the points over their chord lengths. */
  static SpaceCurve through(List<Vec3> points) {
    return new Spline(points);
  }

  /**
   * A circular arc over a chord.
   *
   * @param side unit direction square to the chord, to which the arc rises
   * @param rise its height over the chord, above zero
   */
  static SpaceCurve arc(Vec3 from, Vec3 to, Vec3 side, double rise) {
    double chord = from.distance(to);
    double radius = (chord * chord / 4 + rise * rise) / (2 * rise);
    double half = 2 * Math.atan2(2 * rise, chord);
    Vec3 centre = from.midway(to).plus(side.times(rise - radius));
    return new Arc(centre, to.minus(from).unit(), side, radius, half);
  }

  /** From minus {@code half} to {@code half}, radians from the top of the arc. */
  record Arc(Vec3 centre, Vec3 along, Vec3 side, double radius, double half) implements SpaceCurve {
    @Override
    public double[] marks() {
      return new double[] {-half, half};
    }

    @Override
    public Vec3 at(double t) {
      return centre.plus(turned(t));
    }

    @Override
    public Vec3 slope(double t) {
      return along.times(radius * Math.cos(t)).minus(side.times(radius * Math.sin(t)));
    }

    @Override
    public Vec3 bend(double t) {
      return turned(t).negated();
    }

    private Vec3 turned(double t) {
      return along.times(radius * Math.sin(t)).plus(side.times(radius * Math.cos(t)));
    }
  }

  /** One spline a coordinate. */
  final class Spline implements SpaceCurve {
    private final double[] marks;
    private final NaturalSpline x;
    private final NaturalSpline y;
    private final NaturalSpline z;

    private Spline(List<Vec3> points) {
      marks = new double[points.size()];
      for (int i = 1; i < marks.length; i++) {
        marks[i] = marks[i - 1] + points.get(i).distance(points.get(i - 1));
      }
      x = new NaturalSpline(marks, points.stream().mapToDouble(Vec3::x).toArray());
      y = new NaturalSpline(marks, points.stream().mapToDouble(Vec3::y).toArray());
      z = new NaturalSpline(marks, points.stream().mapToDouble(Vec3::z).toArray());
    }

    @Override
    public double[] marks() {
      return marks.clone();
    }

    @Override
    public Vec3 at(double t) {
      int i = span(t);
      double share = share(i, t);
      return new Vec3(x.value(i, share), y.value(i, share), z.value(i, share));
    }

    @Override
    public Vec3 slope(double t) {
      int i = span(t);
      double share = share(i, t);
      return new Vec3(x.slope(i, share), y.slope(i, share), z.slope(i, share));
    }

    @Override
    public Vec3 bend(double t) {
      int i = span(t);
      Vec3 before = new Vec3(x.bend(i), y.bend(i), z.bend(i));
      Vec3 after = new Vec3(x.bend(i + 1), y.bend(i + 1), z.bend(i + 1));
      return before.plus(after.minus(before).times(share(i, t)));
    }

    private int span(double t) {
      return IntStream.range(1, marks.length - 1)
              .filter(i -> t < marks[i])
              .findFirst()
              .orElse(marks.length - 1)
          - 1;
    }

    private double share(int i, double t) {
      return (t - marks[i]) / (marks[i + 1] - marks[i]);
    }
  }
}
