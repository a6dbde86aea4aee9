package dryfit.build;

import dryfit.document.Hand;
import dryfit.document.PartPlan;
import dryfit.geometry.Frame;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import dryfit.solid.Csg;
import java.util.List;
import java.util.Optional;

/**
 * A part placed in the chair before its joints are made. Where an end is still to be cut to the
 * face it meets, the shape is left long.
 *
 * @param frame own frame: x length, y width, z thickness
 * @param shape in the own frame
 * @param sawn the same before its edges are treated
 * @param standing the cells of the shape
 * @param start x of the start in the own frame, where it is or is expected to be cut
 * @param end x of the end in the own frame
 * @param outside unit direction in chair space that counts as outside for this part
 * @param grain own frame
 * @param lies whether it runs more level than upright
 * @param butted the ends that are cut to a face even without a joint
 * @param bent of a bent part, its ends and its bend
 */
record Stock(
    PartPlan plan,
    Hand hand,
    Frame frame,
    Csg shape,
    Csg sawn,
    StandingCells standing,
    double start,
    double end,
    Vec3 outside,
    Vec3 grain,
    boolean lies,
    List<ButtedEnd> butted,
    Optional<BentEnds> bent) {

  Stock(
      PartPlan plan,
      Hand hand,
      Frame frame,
      Csg shape,
      List<Convex> cells,
      double start,
      double end,
      Vec3 outside,
      Vec3 grain,
      boolean lies,
      List<ButtedEnd> butted) {
    this(
        plan,
        hand,
        frame,
        shape,
        shape,
        StandingCells.of(cells, frame),
        start,
        end,
        outside,
        grain,
        lies,
        butted,
        Optional.empty());
  }

  Stock {
    butted = List.copyOf(butted);
  }

  /** An end that is cut to a face of another part even without a joint. */
  record ButtedEnd(boolean atStart, String part, Hand hand) {}

  String name() {
    return plan.name();
  }

  /** The cells of the shape, own frame. */
  List<Convex> cells() {
    return standing.own();
  }

  /** The same in chair space. */
  List<Convex> placedCells() {
    return standing.placed();
  }

  /** The cells as far as the part is expected to go once its ends are cut, chair space. */
  List<Convex> expectedCells() {
    Plane beforeStart = new Plane(Vec3.RIGHT.negated(), -start);
    Plane beyondEnd = new Plane(Vec3.RIGHT, end);
    return cells().stream()
        .flatMap(c -> c.clipped(beforeStart).flatMap(d -> d.clipped(beyondEnd)).stream())
        .map(c -> c.placed(frame))
        .toList();
  }

  /** Those of one end; all of them unless the part is bent. */
  List<Convex> placedCells(boolean atStart) {
    return cells().stream()
        .filter(c -> isNearEnd(atStart, c.middle()))
        .map(c -> c.placed(frame))
        .toList();
  }

  /** Unit direction out of the part at an end, chair space. */
  Vec3 outward(boolean atStart) {
    Vec3 along = endFrame(atStart).x();
    return atStart ? along.negated() : along;
  }

  /** The frame that the section at an end stands in: the own frame, unless the part is bent. */
  Frame endFrame(boolean atStart) {
    return bent.map(b -> placed(b.at(atStart).frame())).orElse(frame);
  }

  private Frame placed(Frame own) {
    return new Frame(
        frame.place(own.origin()), frame.turn(own.x()), frame.turn(own.y()), frame.turn(own.z()));
  }

  /** How far from an end inwards the part counts as straight, when looking what the end meets. */
  double straightAt(boolean atStart) {
    double half = (end - start) / 2;
    return bent.map(b -> Math.min(b.bend().length() / 3, STRAIGHT)).orElse(half);
  }

  /** A bent part is looked at along its end from so far inside it, mm. */
  private static final double STRAIGHT = 100;

  /** Whether a place in the own frame is round an end, and not another stretch of a bent part. */
  boolean isNearEnd(boolean atStart, Vec3 place) {
    return bent.map(b -> b.at(atStart).isNear(place)).orElse(true);
  }

  /** The middle of the section near an end, chair space. */
  Vec3 endPoint(boolean atStart) {
    return onMiddle(atStart, section(atStart));
  }

  /** What the section measures near an end: its extent across width and thickness. */
  record Section(double y0, double y1, double z0, double z1) {
    double width() {
      return y1 - y0;
    }

    double thickness() {
      return z1 - z0;
    }
  }

  /** The extent of the section a millimetre inside an end. */
  Section section(boolean atStart) {
    if (bent.isPresent()) {
      return bent.get().at(atStart).section();
    }
    double inside = Math.min(1, (end - start) / 4);
    return sectionAt(atStart ? start + inside : end - inside);
  }

  /** The section of an end at a place, chair space, or at the end of the wood if that is nearer. */
  Section sectionNear(boolean atStart, Vec3 place) {
    if (bent.isPresent()) {
      return section(atStart);
    }
    double x = frame.local(place).x();
    dryfit.geometry.Box box =
        dryfit.geometry.Box.around(cells().stream().flatMap(c -> c.points().stream()).toList());
    return sectionAt(Math.max(box.low().x(), Math.min(box.high().x(), x)));
  }

  /** How far the wood of an end stops before a place, along the part; below zero if beyond. */
  double shortOf(boolean atStart, Vec3 place) {
    Vec3 out = outward(atStart);
    if (bent.isPresent()) {
      double longer = bent.get().at(atStart).longer();
      return place.minus(endFrame(atStart).origin()).dot(out) - longer;
    }
    double wood =
        cells().stream().mapToDouble(c -> c.reach(frame.localDirection(out))).max().orElse(0);
    return frame.local(place).dot(frame.localDirection(out)) - wood;
  }

  /** The middle of a section as it stands at an end, chair space. */
  Vec3 onMiddle(boolean atStart, Section s) {
    double x = bent.isPresent() ? 0 : atStart ? start : end;
    return endFrame(atStart).place(new Vec3(x, (s.y0() + s.y1()) / 2, (s.z0() + s.z1()) / 2));
  }

  /** The extent of the section at x in the own frame. */
  Section sectionAt(double x) {
    List<Vec3> cut = Slice.points(cells(), new dryfit.geometry.Plane(Vec3.RIGHT, x));
    if (cut.isEmpty()) {
      throw new IllegalStateException(name() + " has no wood at " + x);
    }
    dryfit.geometry.Box box = dryfit.geometry.Box.around(cut);
    return new Section(box.low().y(), box.high().y(), box.low().z(), box.high().z());
  }

  Stock withGrain(Vec3 direction) {
    return new Stock(
        plan, hand, frame, shape, sawn, standing, start, end, outside, direction, lies, butted,
        bent);
  }

  /** The same with its edges treated. */
  Stock treated(Csg other, List<Convex> otherCells) {
    return new Stock(
        plan,
        hand,
        frame,
        other,
        sawn,
        StandingCells.of(otherCells, frame),
        start,
        end,
        outside,
        grain,
        lies,
        butted,
        bent);
  }

  Stock bent(BentEnds ends) {
    return new Stock(
        plan,
        hand,
        frame,
        shape,
        sawn,
        standing,
        start,
        end,
        outside,
        grain,
        lies,
        butted,
        Optional.of(ends));
  }

  /** The left-hand twin of a right-hand part. */
  Stock mirrored() {
    return new Stock(
        plan,
        hand.other(),
        frame.mirrored(),
        Shapes.mirroredZ(shape),
        Shapes.mirroredZ(sawn),
        StandingCells.of(cells().stream().map(Convex::mirroredZ).toList(), frame.mirrored()),
        start,
        end,
        outside.mirrored(),
        new Vec3(grain.x(), grain.y(), -grain.z()),
        lies,
        butted.stream().map(b -> new ButtedEnd(b.atStart(), b.part(), b.hand().other())).toList(),
        bent.map(BentEnds::mirroredZ));
  }
}
