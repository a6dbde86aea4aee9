package dryfit.shop;

import dryfit.document.PartPlan;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.shop.Setout.Span;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where a sawn outline runs, at even steps along the part: enough to prick it off on the wood where
 * there is no printed template. Taken from the body before its edges are treated, tenons left out.
 *
 * @param width whether the outline goes across the part's width, otherwise across its thickness
 * @param rows from the reference end on
 */
public record Ordinates(boolean width, List<Row> rows) {
  /** Half of the slice that a row looks at, mm. */
  private static final double HAIR = 0.005;

  /** Rows no nearer to each other than this share of a step. */
  private static final double CLOSE = 0.3;

  /** An outline that changes less than this over the part is a straight face, mm. */
  private static final double STRAIGHT = 0.1;

  public Ordinates {
    rows = List.copyOf(rows);
  }

  /**
   * A place along the part, and the wood there.
   *
   * @param along from the reference end, mm
   * @param across from the face or line that the part is measured from, mm
   */
  public record Row(double along, Span across) {}

  /**
   * One list for each way across in which the part is sawn to an outline; none of other parts.
   *
   * @param step between two places, mm
   */
  public static List<Ordinates> of(Setout setout, double step) {
    if (!(setout.part().plan() instanceof PartPlan.Sawn)) {
      return List.of();
    }
    List<Ordinates> out = new ArrayList<>();
    for (boolean width : new boolean[] {true, false}) {
      Ordinates all = new Ordinates(width, rows(setout, width, step));
      if (all.isCurved()) {
        out.add(all);
      }
    }
    return List.copyOf(out);
  }

  private static List<Row> rows(Setout setout, boolean width, double step) {
    List<Convex> body = setout.part().sawnCells();
    Span whole =
        betweenShoulders(
            setout, setout.along(body.stream().flatMap(c -> c.points().stream()).toList()));
    List<Row> rows = new ArrayList<>();
    for (double along : places(whole, step)) {
      row(setout, body, width, along).ifPresent(rows::add);
    }
    return withoutTips(rows);
  }

  /** An end that is cut off aslant has only its tip there, which tells nothing of the outline. */
  private static List<Row> withoutTips(List<Row> rows) {
    int last = rows.size() - 1;
    if (last < 2) {
      return rows;
    }
    boolean first = isTip(rows.get(0), rows.get(1));
    boolean end = isTip(rows.get(last), rows.get(last - 1));
    return rows.subList(first ? 1 : 0, end ? last : last + 1);
  }

  private static boolean isTip(Row row, Row next) {
    return row.across().size() < next.across().size() / 2;
  }

  /** Without what is a tenon; a shoulder that leans counts where it is furthest in. */
  private static Span betweenShoulders(Setout setout, Span whole) {
    double from = whole.from();
    double to = whole.to();
    double middle = (from + to) / 2;
    for (Setout.Mark mark : setout.marks()) {
      if (mark.kind() == Setout.Kind.SHOULDER) {
        Span shoulder = setout.along(mark.corners());
        from = shoulder.to() < middle ? Math.max(from, shoulder.to()) : from;
        to = shoulder.from() > middle ? Math.min(to, shoulder.from()) : to;
      }
    }
    return new Span(from, to);
  }

  /** Both ends, and every multiple of the step that is not too near to them. */
  private static List<Double> places(Span whole, double step) {
    List<Double> out = new ArrayList<>();
    out.add(whole.from() + 2 * HAIR);
    for (double at = step * Math.ceil(whole.from() / step); at < whole.to(); at += step) {
      if (at - whole.from() > CLOSE * step && whole.to() - at > CLOSE * step) {
        out.add(at);
      }
    }
    out.add(whole.to() - 2 * HAIR);
    return out;
  }

  private static Optional<Row> row(Setout setout, List<Convex> body, boolean width, double along) {
    double x =
        setout.fromStart() ? setout.bounds().low().x() + along : setout.bounds().high().x() - along;
    Plane below = Plane.through(new Vec3(x + HAIR, 0, 0), new Vec3(1, 0, 0));
    Plane above = Plane.through(new Vec3(x - HAIR, 0, 0), new Vec3(-1, 0, 0));
    List<Vec3> corners =
        body.stream()
            .flatMap(c -> c.clipped(below).flatMap(d -> d.clipped(above)).stream())
            .flatMap(c -> c.points().stream())
            .toList();
    return corners.isEmpty()
        ? Optional.empty()
        : Optional.of(new Row(along, setout.across(corners, width)));
  }

  private boolean isCurved() {
    return varies(rows.stream().mapToDouble(r -> r.across().from()).toArray())
        || varies(rows.stream().mapToDouble(r -> r.across().to()).toArray());
  }

  private static boolean varies(double[] values) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double v : values) {
      low = Math.min(low, v);
      high = Math.max(high, v);
    }
    return high - low > STRAIGHT;
  }
}
