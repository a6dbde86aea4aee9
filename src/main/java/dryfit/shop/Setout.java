package dryfit.shop;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.build.Tenon;
import dryfit.document.JointPlan;
import dryfit.document.PartPlan;
import dryfit.geometry.Box;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where a part is measured from, and what is marked out on it. Lengths are taken from one end,
 * across it from its face side and its face edge where it keeps a flat face, otherwise from its
 * middle line (common practice, no source).
 *
 * @param index in {@link Chair#parts}
 * @param bounds of the finished part, own frame
 * @param fromStart whether lengths are taken from the start of the part, else from its end
 * @param acrossWidth the face, of those that look along the width, that is measured from; own frame
 * @param acrossThickness the same along the thickness
 * @param marks in the order of the chair's joints
 */
public record Setout(
    Part part,
    int index,
    Box bounds,
    boolean fromStart,
    Optional<Vec3> acrossWidth,
    Optional<Vec3> acrossThickness,
    List<Mark> marks) {

  private static final Vec3 WIDTH = new Vec3(0, 1, 0);
  private static final Vec3 THICKNESS = new Vec3(0, 0, 1);

  /** Words of faces that a maker would rather measure from, best first. */
  private static final List<String> PREFERRED = List.of("outside", "front", "top", "right");

  public Setout {
    marks = List.copyOf(marks);
  }

  /** What is marked out. */
  public enum Kind {
    /** The opening of a mortise on its face. */
    MORTISE,
    /** A tenon; its corners are those inside the mouth, so it begins at its shoulder. */
    TENON,
    /** Where the shoulder runs round the part. */
    SHOULDER
  }

  /**
   * One thing that is marked out.
   *
   * @param face outward direction of the face it is on, own frame: one of the six own directions;
   *     for tenons and shoulders the end that they are at
   * @param corners own frame
   */
  public record Mark(Kind kind, Joint joint, Vec3 face, List<Vec3> corners) {
    public Mark {
      corners = List.copyOf(corners);
    }

    /** Around its corners, own frame. */
    public Box box() {
      return Box.around(corners);
    }
  }

  /** From least to greatest. */
  public record Span(double from, double to) {
    public double size() {
      return to - from;
    }

    public double middle() {
      return (from + to) / 2;
    }
  }

  /** With everything that is marked out on the part. */
  public static Setout of(Chair chair, int index) {
    return with(chair, index, marks(chair, index));
  }

  /** Of the part that takes a joint, with the openings of this joint only. */
  public static Setout ofMortise(Chair chair, Joint joint) {
    Part part = chair.parts().get(joint.mortised());
    return with(chair, joint.mortised(), mortises(part, joint));
  }

  private static Setout with(Chair chair, int index, List<Mark> marks) {
    Part part = chair.parts().get(index);
    boolean round = MortiseSteps.isRound(part);
    return new Setout(
        part,
        index,
        part.solid().mesh().bounds(),
        fromStart(part),
        round ? Optional.empty() : face(part, WIDTH),
        round ? Optional.empty() : face(part, THICKNESS),
        marks);
  }

  /** Whether the part stands rather than lies. */
  public boolean isUpright() {
    return isUpright(part);
  }

  private static boolean isUpright(Part part) {
    return Math.abs(part.frame().x().z()) > Math.sqrt(0.5);
  }

  /** From the foot of what stands, from the front of what runs back, else from its start. */
  private static boolean fromStart(Part part) {
    Vec3 x = part.frame().x();
    if (isUpright(part)) {
      return x.z() > 0;
    }
    return Math.abs(x.y()) <= Math.sqrt(0.5) || x.y() > 0;
  }

  /** A face that stays flat; else one of the squared blank; none of what is bent. */
  private static Optional<Vec3> face(Part part, Vec3 axis) {
    List<Vec3> both = List.of(axis, axis.negated());
    List<Vec3> flat = both.stream().filter(d -> MortiseSteps.stands(part, d)).toList();
    List<Vec3> any = flat.isEmpty() && part.bend().isEmpty() ? both : flat;
    return any.stream()
        .filter(d -> PREFERRED.contains(MortiseSteps.word(part, d)))
        .findFirst()
        .or(() -> any.stream().findFirst());
  }

  /** Whether a face that is measured from is one of the blank and is cut away later. */
  public boolean isCutAway(boolean width) {
    return (width ? acrossWidth : acrossThickness)
        .map(f -> !MortiseSteps.stands(part, f))
        .orElse(false);
  }

  /** Whether it is measured across from a line along its middle, as what is turned. */
  public boolean isRound() {
    return MortiseSteps.isRound(part);
  }

  /**
   * Whether an end is one of the squared blank and is sawn away with the outline later, so that
   * less than half of its width is left. A foot is no such end: it is cut first.
   */
  public boolean isEndCutAway(boolean start) {
    boolean sawn =
        part.plan() instanceof PartPlan.Sawn
            || part.plan() instanceof PartPlan.Seat
            || part.plan() instanceof PartPlan.Panel
            || part.plan() instanceof PartPlan.Splat;
    if (!sawn || part.plan().common().cuts().foot().isPresent()) {
      return false;
    }
    double end = start ? bounds.low().x() : bounds.high().x();
    List<Vec3> there =
        part.bodyCells().stream()
            .flatMap(c -> c.points().stream())
            .filter(p -> Math.abs(p.x() - end) < Tolerances.contact())
            .toList();
    return there.isEmpty() || Box.around(there).size().y() < bounds.size().y() / 2;
  }

  private static List<Mark> marks(Chair chair, int index) {
    Part part = chair.parts().get(index);
    List<Mark> out = new ArrayList<>();
    for (Joint joint : chair.joints()) {
      if (joint.plan().kind() == JointPlan.Kind.GROOVE
          || joint.plan().kind() == JointPlan.Kind.GLUED) {
        continue;
      }
      if (joint.mortised() == index) {
        out.addAll(mortises(part, joint));
      }
      if (joint.tenoned() == index) {
        Vec3 end = joint.atStart() ? new Vec3(-1, 0, 0) : new Vec3(1, 0, 0);
        for (Tenon tenon : joint.tenons()) {
          List<Vec3> corners = tenon.wood().stream().flatMap(c -> c.points().stream()).toList();
          if (tenon.part() == index) {
            add(out, new Mark(Kind.TENON, joint, end, local(part, corners)));
          }
        }
        add(out, new Mark(Kind.SHOULDER, joint, end, shoulder(part, joint)));
      }
    }
    return out;
  }

  private static List<Mark> mortises(Part part, Joint joint) {
    List<Mark> out = new ArrayList<>();
    Vec3 face = looking(part.frame().localDirection(joint.mouth().normal()));
    for (Tenon tenon : joint.tenons()) {
      List<Vec3> mouth = onPlane(tenon.hole(), joint.mouth());
      add(out, new Mark(Kind.MORTISE, joint, face, local(part, mouth)));
    }
    return out;
  }

  private static void add(List<Mark> out, Mark mark) {
    if (!mark.corners().isEmpty()) {
      out.add(mark);
    }
  }

  private static List<Vec3> onPlane(List<Convex> hole, Plane mouth) {
    return hole.stream()
        .flatMap(c -> c.clipped(mouth).stream())
        .flatMap(c -> c.points().stream())
        .filter(p -> Math.abs(mouth.height(p)) < Tolerances.contact())
        .toList();
  }

  /** The corners of the finished part that lie in its shoulder. */
  private static List<Vec3> shoulder(Part part, Joint joint) {
    var mesh = part.solid().mesh();
    Plane plane = part.frame().local(joint.mouth());
    List<Vec3> out = new ArrayList<>();
    for (int i = 0; i < mesh.pointCount(); i++) {
      if (Math.abs(plane.height(mesh.point(i))) < Tolerances.contact()) {
        out.add(mesh.point(i));
      }
    }
    return out;
  }

  private static List<Vec3> local(Part part, List<Vec3> points) {
    return points.stream().map(part.frame()::local).toList();
  }

  private static Vec3 looking(Vec3 n) {
    double x = Math.abs(n.x());
    double y = Math.abs(n.y());
    double z = Math.abs(n.z());
    if (z >= x && z >= y) {
      return new Vec3(0, 0, Math.signum(n.z()));
    }
    return y >= x ? new Vec3(0, Math.signum(n.y()), 0) : new Vec3(Math.signum(n.x()), 0, 0);
  }

  /** Along the part, from the end that lengths are taken from, mm. */
  public double along(Vec3 own) {
    return fromStart ? own.x() - bounds.low().x() : bounds.high().x() - own.x();
  }

  /** Along the part, from its start or from its end. */
  public Span alongFrom(boolean start, List<Vec3> own) {
    double from = start ? -bounds.low().x() : bounds.high().x();
    return span(own.stream().mapToDouble(p -> from + (start ? p.x() : -p.x())).toArray());
  }

  /** Along the part. */
  public Span along(List<Vec3> own) {
    return span(own.stream().mapToDouble(this::along).toArray());
  }

  /** Across it, from the face or the middle line that is measured from, mm. */
  public double across(Vec3 own, boolean width) {
    Vec3 axis = width ? WIDTH : THICKNESS;
    Optional<Vec3> face = width ? acrossWidth : acrossThickness;
    return face.map(f -> Math.max(bounds.low().dot(f), bounds.high().dot(f)) - own.dot(f))
        .orElseGet(() -> own.dot(axis) - middle(axis));
  }

  /** The part's own axis where it is round; else half way between its sides. */
  private double middle(Vec3 axis) {
    return MortiseSteps.isRound(part) ? 0 : bounds.low().midway(bounds.high()).dot(axis);
  }

  /** Across it. */
  public Span across(List<Vec3> own, boolean width) {
    return span(own.stream().mapToDouble(p -> across(p, width)).toArray());
  }

  private static Span span(double[] values) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double v : values) {
      low = Math.min(low, v);
      high = Math.max(high, v);
    }
    return new Span(low, high);
  }
}
