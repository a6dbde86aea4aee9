package dryfit.build;

import dryfit.build.JointMaker.Made;
import dryfit.document.Hand;
import dryfit.document.PartPlan.Peg;
import dryfit.document.PartPlan.Pin;
import dryfit.document.PartPlan.PinPlace;
import dryfit.document.PartPlan.Wedge;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Cells;
import dryfit.solid.Convex;
import dryfit.solid.Csg;
import dryfit.solid.Turned;
import java.util.ArrayList;
import java.util.List;

/**
 * Drives pegs and wedges through joints. A pin's own frame has its length from its head to its tip,
 * its width across the tenon and its thickness along it. The wood it goes through is the mortised
 * part and the tenon; both get its hole.
 */
final class PinMaker {
  private PinMaker() {}

  /** Further away than any face of a part from its joint, mm. */
  private static final double FAR = 2000;

  /**
   * @param holeInMortised chair space
   * @param holeInTenoned chair space; of a drawbored peg not in line with the other
   */
  record Driven(Stock stock, Made joint, Csg holeInMortised, Csg holeInTenoned) {}

  /** The pins of one plan: one, or one of each hand. */
  static List<Driven> of(Pin plan, List<Made> joints) {
    List<Made> at =
        joints.stream().filter(j -> j.of().plan().name().equals(plan.place().joint())).toList();
    if (!plan.common().pair()) {
      return List.of(driven(plan, Hand.NONE, only(plan, at, Hand.NONE)));
    }
    Driven right = driven(plan, Hand.RIGHT, only(plan, at, Hand.RIGHT));
    Made twin = only(plan, at, Hand.LEFT);
    Frame mirrored = right.stock().frame().mirrored();
    return List.of(
        right,
        new Driven(
            right.stock().mirrored(),
            twin,
            mirrored(right.holeInMortised(), right.stock().frame(), mirrored),
            mirrored(right.holeInTenoned(), right.stock().frame(), mirrored)));
  }

  private static Csg mirrored(Csg hole, Frame from, Frame to) {
    return Shapes.placed(Shapes.mirroredZ(Shapes.localTo(hole, from)), to);
  }

  private static Made only(Pin plan, List<Made> joints, Hand hand) {
    List<Made> of =
        joints.stream().filter(j -> hand == Hand.NONE || j.of().hand() == hand).toList();
    if (of.size() != 1) {
      throw Refusal.of(
          of.isEmpty() ? "not-a-pair" : "which-hand",
          plan.common().pointer() + "/in-joint",
          of.isEmpty()
              ? "\"" + plan.place().joint() + "\" is not made on both sides of the chair"
              : "\"" + plan.place().joint() + "\" is made more than once",
          of.isEmpty()
              ? "leave out \"pair\""
              : plan.common().pair()
                  ? "give the joint of each end a name of its own"
                  : "write \"pair\": true if it is made on both sides");
    }
    return of.get(0);
  }

  private static Driven driven(Pin plan, Hand hand, Made made) {
    PinPlace place = plan.place();
    Joint joint = made.joint();
    Stock mortised = made.of().mortised();
    Vec3 axis = place.acrossEdges() ? joint.wide() : joint.thick();
    Vec3 aside = towards(place.acrossEdges() ? joint.thick() : joint.wide());
    Vec3 driven = drivenAlong(plan, axis, mortised);
    Vec3 through =
        joint
            .at()
            .plus(joint.entry().times(place.fromShoulder()))
            .plus(aside.times(place.offCentre()));
    List<Convex> wood = new ArrayList<>(mortised.placedCells());
    wood.addAll(joint.tenon());
    double middle = plan instanceof Wedge wedge ? (wedge.head() + wedge.tip()) / 4 : 0;
    CellRay.Entry in =
        CellRay.first(
                wood, through.plus(joint.entry().times(middle)).minus(driven.times(FAR)), driven)
            .orElseThrow(() -> besideTheWood(plan));
    double head = in.distance() - FAR;
    double wholeWay = in.out() - in.distance();
    boolean goesThrough = place.length().isEmpty();
    double length =
        place.proud().first() + place.length().orElse(wholeWay + place.proud().second());
    Vec3 start = through.plus(driven.times(head - place.proud().first()));
    Frame frame = Frame.of(start, driven, joint.entry().cross(driven));
    double inwards = Math.signum(frame.z().dot(joint.entry()));
    double beyond = goesThrough ? Math.max(0, -place.proud().second()) + Shapes.SPARE : 0;
    Csg shape = shape(plan, length, inwards);
    Csg hole = hole(plan, length, beyond, inwards);
    double offset = plan instanceof Peg peg ? peg.offset() : 0;
    Frame drawn =
        new Frame(
            frame.origin().minus(joint.entry().times(offset)), frame.x(), frame.y(), frame.z());
    Stock stock =
        new Stock(
            plan,
            hand,
            frame,
            shape,
            Cells.of(shape),
            0,
            length,
            driven.negated(),
            Vec3.RIGHT,
            true,
            List.of());
    return new Driven(stock, made, Shapes.placed(hole, frame), Shapes.placed(hole, drawn));
  }

  private static Refusal besideTheWood(Pin plan) {
    return Refusal.of(
        "mortise-misses",
        plan.common().pointer() + "/from-shoulder",
        plan.name() + " goes through no wood of \"" + plan.place().joint() + "\"",
        "bring it nearer to the shoulder");
  }

  /** The same line, whichever way it runs: up, or else to the back, or else to the right. */
  private static Vec3 towards(Vec3 line) {
    double x = Math.abs(line.x());
    double y = Math.abs(line.y());
    double z = Math.abs(line.z());
    double sign = z >= x && z >= y ? line.z() : y >= x ? line.y() : line.x();
    return sign < 0 ? line.negated() : line;
  }

  private static Vec3 drivenAlong(Pin plan, Vec3 axis, Stock mortised) {
    String from = plan.place().drivenFrom();
    Vec3 face = FaceNames.inChair(from, mortised.outside(), plan.common().pointer());
    double facing = axis.dot(face);
    boolean told = Math.abs(facing) > 0.35;
    if (!told && !from.equals("outside") && !from.equals("inside")) {
      throw Refusal.of(
          "absent-face",
          plan.common().pointer() + "/driven-from",
          "the cheeks of \"" + plan.place().joint() + "\" do not look to the " + from,
          "name a face that they do look to");
    }
    // Square to the outside of a leg there is still a front: the side that is seen.
    double seen = told ? facing : axis.dot(face.plus(new Vec3(0, -1, 0)));
    if (!told && from.equals("inside")) {
      seen = axis.dot(new Vec3(0, 1, 0));
    }
    return seen > 0 ? axis.negated() : axis;
  }

  private static Csg shape(Pin plan, double length, double inwards) {
    String origin = plan.common().pointer();
    if (plan instanceof Peg peg) {
      double r = peg.diameter() / 2;
      List<Turned.Ring> rings = new ArrayList<>(List.of(new Turned.Ring(0, r)));
      if (peg.tapered() >= Tolerances.leastSize()) {
        if (peg.tapered() >= length) {
          throw Refusal.of(
              "out-of-range",
              origin + "/tapered",
              "the taper of " + plan.name() + " is as long as the peg",
              "make it shorter");
        }
        rings.add(new Turned.Ring(length - peg.tapered(), r));
        rings.add(new Turned.Ring(length, peg.tip() / 2));
      } else {
        rings.add(new Turned.Ring(length, r));
      }
      return Turned.of(rings, OutlineCurves.facets(r), origin);
    }
    return wedge((Wedge) plan, 0, length, length, 0, inwards).asLeaf(origin);
  }

  /** A peg's hole is straight, a wedge's slopes with it; both overrun where they go through. */
  private static Csg hole(Pin plan, double length, double beyond, double inwards) {
    String origin = plan.common().pointer();
    double gap = plan.place().gap();
    if (plan instanceof Peg peg) {
      int n = OutlineCurves.facets(peg.diameter() / 2);
      double r = peg.diameter() / 2 + gap / Math.cos(Math.PI / n);
      return Turned.of(
          List.of(new Turned.Ring(-Shapes.SPARE, r), new Turned.Ring(length + beyond, r)),
          n,
          origin);
    }
    return wedge((Wedge) plan, -Shapes.SPARE, length + beyond, length, gap, inwards).asLeaf(origin);
  }

  /** The straight face is nearest to the shoulder, in z = 0, and the wedge beyond it. */
  private static Convex wedge(
      Wedge plan, double from, double to, double length, double gap, double inwards) {
    double slope = (plan.head() - plan.tip()) / length;
    List<Vec3> loop = new ArrayList<>();
    for (double x : new double[] {from, to}) {
      double thick = plan.head() - slope * x + gap;
      double[] across = x == from ? new double[] {-gap, thick} : new double[] {thick, -gap};
      for (double z : across) {
        loop.add(new Vec3(x, -plan.width() / 2 - gap, inwards * z));
      }
    }
    return Convex.prism(loop, new Vec3(0, plan.width() + 2 * gap, 0));
  }
}
