package dryfit.fit;

import dryfit.build.Joint;
import dryfit.document.JointPlan.Kind;
import dryfit.fit.Assembly.Placed;
import dryfit.fit.ChairMeasure.FrameSquare;
import dryfit.fit.ChairMeasure.Named;
import dryfit.fit.ChairMeasure.SeatLevel;
import dryfit.geometry.Plane;
import dryfit.geometry.Rays;
import dryfit.geometry.Trapezoid;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The frame that four legs make with the rails of the seat: whether it is square, seen from above,
 * from the front and from the back, and whether its corners are level.
 */
final class SeatFrame {
  /** Rails of one seat meet a leg at heights no farther apart than this, mm. */
  private static final double NEAR = 80;

  private final Assembly assembly;
  private final Legs legs;

  /** For each leg the joints of the seat's rails, or of the seat itself. */
  private final List<List<Joint>> corners;

  private SeatFrame(Assembly assembly, Legs legs, List<List<Joint>> corners) {
    this.assembly = assembly;
    this.legs = legs;
    this.corners = corners;
  }

  /** Empty if there are not four legs, each with a rail of the seat or in the seat itself. */
  static Optional<SeatFrame> of(Assembly assembly, Legs legs) {
    if (legs.parts().size() != 4) {
      return Optional.empty();
    }
    List<List<Joint>> inSeat = legsInOnePart(assembly, legs);
    if (inSeat.stream().noneMatch(List::isEmpty)) {
      return Optional.of(new SeatFrame(assembly, legs, inSeat));
    }
    List<List<Joint>> corners = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      corners.add(new ArrayList<>());
    }
    // The widest part from front to back is the rail of the seat; stretchers and arms are slender.
    for (int side = 1; side < 4; side += 2) {
      int from = legs.parts().get(side);
      int to = legs.parts().get((side + 1) % 4);
      Optional<Joint> rail =
          ties(assembly, from, to).stream()
              .reduce((a, b) -> wide(assembly, b) > wide(assembly, a) ? b : a);
      rail.ifPresent(r -> add(assembly, legs, corners, r.tenoned()));
    }
    // Across, it is the one nearest in height to these.
    for (int side = 0; side < 4; side += 2) {
      int leg = side;
      int from = legs.parts().get(side);
      int to = legs.parts().get((side + 1) % 4);
      Optional<Joint> rail =
          ties(assembly, from, to).stream()
              .filter(j -> off(corners.get(leg), j) <= NEAR)
              .reduce((a, b) -> off(corners.get(leg), b) < off(corners.get(leg), a) ? b : a);
      rail.ifPresent(r -> add(assembly, legs, corners, r.tenoned()));
    }
    return corners.stream().anyMatch(List::isEmpty)
        ? Optional.empty()
        : Optional.of(new SeatFrame(assembly, legs, corners));
  }

  /**
   * Where all four legs go into one part that lies: that is the seat, whatever stretchers there are
   * below it.
   */
  private static List<List<Joint>> legsInOnePart(Assembly assembly, Legs legs) {
    List<List<Joint>> corners = new ArrayList<>();
    for (int seat = 0; seat < assembly.parts().size(); seat++) {
      int into = seat;
      corners =
          legs.parts().stream()
              .map(
                  leg ->
                      assembly.chair().joints().stream()
                          .filter(j -> j.tenoned() == leg && j.mortised() == into)
                          .toList())
              .toList();
      boolean all = corners.stream().noneMatch(List::isEmpty);
      if (all && !Legs.stands(assembly.part(into))) {
        return corners;
      }
    }
    return List.of(List.of());
  }

  /** The joints in one leg of rails that go into another leg too; a panel in grooves is no rail. */
  private static List<Joint> ties(Assembly assembly, int leg, int other) {
    List<Joint> joints =
        assembly.chair().joints().stream().filter(j -> j.plan().kind() != Kind.GROOVE).toList();
    return joints.stream()
        .filter(a -> a.mortised() == leg && !Legs.stands(assembly.part(a.tenoned())))
        .filter(
            a -> joints.stream().anyMatch(b -> b.tenoned() == a.tenoned() && b.mortised() == other))
        .toList();
  }

  private static void add(Assembly assembly, Legs legs, List<List<Joint>> corners, int rail) {
    for (Joint j : assembly.chair().joints()) {
      int corner = legs.parts().indexOf(j.mortised());
      if (j.tenoned() == rail && corner >= 0) {
        corners.get(corner).add(j);
      }
    }
  }

  private static double wide(Assembly assembly, Joint joint) {
    return assembly.tenoned(joint).part().blank().width();
  }

  private static double off(List<Joint> corner, Joint joint) {
    return corner.stream()
        .mapToDouble(j -> Math.abs(j.at().z() - joint.at().z()))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Both diagonals of every frame, from the left first, with the legs they run between. */
  List<Diagonal> diagonals() {
    List<Diagonal> out = new ArrayList<>();
    double seat = middleHeight(0, 1, 2, 3);
    diagonal("seat", "left", end(0, seat), end(2, seat), out);
    diagonal("seat", "right", end(1, seat), end(3, seat), out);
    double front = middleHeight(0, 1);
    diagonal("front", "left", foot(0), end(1, front), out);
    diagonal("front", "right", foot(1), end(0, front), out);
    double back = middleHeight(3, 2);
    diagonal("back", "left", foot(3), end(2, back), out);
    diagonal("back", "right", foot(2), end(3, back), out);
    return out;
  }

  private static void diagonal(
      String which,
      String side,
      Optional<Diagonal.End> a,
      Optional<Diagonal.End> b,
      List<Diagonal> out) {
    if (a.isPresent() && b.isPresent()) {
      out.add(new Diagonal(which, "diagonal from the " + side, a.get(), b.get()));
    }
  }

  private Optional<Diagonal.End> end(int leg, double height) {
    return middle(leg, height).map(at -> new Diagonal.End(legs.parts().get(leg), at));
  }

  private Optional<Diagonal.End> foot(int leg) {
    return Optional.of(new Diagonal.End(legs.parts().get(leg), Legs.foot(placed(leg))));
  }

  List<FrameSquare> squares() {
    List<FrameSquare> out = new ArrayList<>();
    double seat = middleHeight(0, 1, 2, 3);
    List<Optional<Vec3>> level = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      level.add(middle(i, seat));
    }
    if (level.stream().allMatch(Optional::isPresent)) {
      Vec3 frontLeft = flat(level.get(0).get());
      Vec3 frontRight = flat(level.get(1).get());
      Vec3 backRight = flat(level.get(2).get());
      Vec3 backLeft = flat(level.get(3).get());
      out.add(
          square(
              "seat",
              frontLeft.distance(backRight),
              frontRight.distance(backLeft),
              frontLeft.distance(frontRight),
              backLeft.distance(backRight),
              frontLeft.midway(frontRight).distance(backLeft.midway(backRight)),
              level.get(0).get().midway(level.get(2).get())));
    }
    upright("front", 0, 1, out);
    upright("back", 3, 2, out);
    return out;
  }

  private void upright(String which, int left, int right, List<FrameSquare> out) {
    double seat = middleHeight(left, right);
    Vec3 footLeft = Legs.foot(placed(left));
    Vec3 footRight = Legs.foot(placed(right));
    Optional<Vec3> topLeft = middle(left, seat);
    Optional<Vec3> topRight = middle(right, seat);
    if (topLeft.isPresent() && topRight.isPresent()) {
      Vec3 a = topLeft.get();
      Vec3 b = topRight.get();
      out.add(
          square(
              which,
              footLeft.distance(b),
              footRight.distance(a),
              footLeft.distance(footRight),
              a.distance(b),
              footLeft.midway(footRight).distance(a.midway(b)),
              footLeft.midway(b)));
    }
  }

  private static FrameSquare square(
      String which,
      double fromLeft,
      double fromRight,
      double front,
      double back,
      double middleLine,
      Vec3 at) {
    // The middle line of a frame that has slipped sideways is longer than the frame is deep.
    double mean = (front + back) / 2;
    double along = (fromLeft * fromLeft - fromRight * fromRight) / (4 * mean * middleLine);
    double depth = middleLine * Math.sqrt(Math.max(0, 1 - along * along));
    double shift = new Trapezoid(front, back, depth).shift(fromLeft - fromRight);
    return new FrameSquare(which, fromLeft, fromRight, shift, Math.atan2(shift, depth), at);
  }

  /** The corners of the seat above the floor the chair stands on. */
  SeatLevel level(Vec3 up, Vec3 onFloor) {
    List<Named> places = new ArrayList<>();
    List<Double> heights = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      Vec3 top = corners.get(i).stream().map(j -> top(j)).reduce((a, b) -> higher(a, b)).get();
      places.add(new Named(placed(i).part().label(), top));
      heights.add(top.minus(onFloor).dot(up));
    }
    double front = places.get(0).at().distance(places.get(1).at());
    double back = places.get(3).at().distance(places.get(2).at());
    double sideways =
        (heights.get(1) - heights.get(0) + heights.get(2) - heights.get(3)) / (front + back);
    Vec3 foremost = places.get(0).at().midway(places.get(1).at());
    Vec3 rearmost = places.get(3).at().midway(places.get(2).at());
    double rise = (heights.get(3) + heights.get(2) - heights.get(0) - heights.get(1)) / 2;
    double run = foremost.distance(rearmost);
    return new SeatLevel(places, heights, Math.asin(clamp(sideways)), Math.asin(clamp(rise / run)));
  }

  private static double clamp(double sine) {
    return Math.max(-1, Math.min(1, sine));
  }

  private static Vec3 higher(Vec3 a, Vec3 b) {
    return a.z() >= b.z() ? a : b;
  }

  /** The top of a rail at its shoulder; of a leg in a seat, where it goes in. */
  private Vec3 top(Joint joint) {
    if (!legs.parts().contains(joint.mortised())) {
      return joint.at();
    }
    Vec3 from = joint.at().plus(joint.mouth().normal().times(1));
    // Along the shoulder, which may lean: straight up would leave the rail through it.
    Vec3 along = Vec3.UP.across(joint.mouth().normal()).unit();
    List<Rays.Hit> hits = assembly.tenoned(joint).rays().hits(from, along);
    return hits.isEmpty() ? joint.at() : from.plus(along.times(hits.get(0).distance()));
  }

  private Placed placed(int leg) {
    return assembly.part(legs.parts().get(leg));
  }

  private Optional<Vec3> middle(int leg, double height) {
    return Legs.middle(placed(leg).bodyCells(), new Plane(Vec3.UP, height));
  }

  private double middleHeight(int... of) {
    double sum = 0;
    int count = 0;
    for (int i : of) {
      for (Joint j : corners.get(i)) {
        sum += j.at().z();
        count++;
      }
    }
    // A leg let into the seat ends there: a little below it there is surely wood.
    boolean inRails = legs.parts().contains(corners.get(of[0]).get(0).mortised());
    return sum / count - (inRails ? 0 : 1);
  }

  private static Vec3 flat(Vec3 v) {
    return new Vec3(v.x(), v.y(), 0);
  }
}
