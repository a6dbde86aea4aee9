package dryfit.build;

import dryfit.build.JointInstances.Instance;
import dryfit.build.JointMaker.Made;
import dryfit.document.JointSizes.Lap;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Cells;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;

/**
 * Two parts that lie across each other, each cut away where the other lies. At an end of its part
 * it is a corner or a tee, which depends on where the other part ends; across, both go on.
 *
 * <p>What the first part keeps is its tenon: one cheek, the lap face, lies on the other part; the
 * opposite one is open.
 */
final class LapMaker {
  private LapMaker() {}

  /** What is left beyond an open notch and no wider than this is cut off with it, mm. */
  private static final double SLIVER = 1;

  static Made make(Instance i, String label, int tenoned, int mortised, Lap sizes, Pieces pieces) {
    Stock t = i.tenoned();
    Vec3 along = t.outward(i.atStart());
    Stock m = i.mortised();
    List<Convex> shared = Cells.common(t.placedCells(), m.placedCells());
    if (shared.isEmpty()) {
      throw JointMaker.misses(i);
    }
    Vec3 lap = lapNormal(t, m, sizes.outside());
    double high = reach(shared, lap);
    double low = -reach(shared, lap.negated());
    double split = high - sizes.share() * (high - low);
    // The mouth is the face of the other part that the part comes to first.
    Plane mouth = mouth(shared, m, along);
    Plane far = new Plane(mouth.normal().negated(), reach(shared, mouth.normal().negated()));
    Vec3 wide = lap.cross(along);
    wide = wide.dot(t.frame().y()) < 0 ? wide.negated() : wide;

    Plane lapFace = new Plane(lap.negated(), -split);
    List<Convex> kept = shared.stream().flatMap(c -> c.clipped(lapFace).stream()).toList();
    double w0 = -reach(kept, wide.negated());
    double w1 = reach(kept, wide);
    Vec3 inMouth = lap.times((split + high) / 2).plus(wide.times((w0 + w1) / 2));
    Vec3 at = inMouth.plus(along.times(mouth.along(inMouth, along)));
    TenonAxes axes = new TenonAxes(at, along, lap, wide, 0, 0);
    double through = far.flipped().along(at, along);
    JointSite site =
        new JointSite(
            i,
            label,
            tenoned,
            mortised,
            new Meeting(mouth, at, t.section(i.atStart()), t.endFrame(i.atStart())),
            mouth,
            axes,
            through,
            pieces);

    double cheek = i.plan().fit().cheek();
    double edge = i.plan().fit().edge();
    double middle = (w0 + w1) / 2;
    double lapAt = (split + high) / 2;
    double endLow = -reach(m.placedCells(), wide.negated());
    double endHigh = reach(m.placedCells(), wide);
    boolean openLow = w0 - edge - endLow <= SLIVER;
    boolean openHigh = endHigh - w1 - edge <= SLIVER;
    List<double[]> hole =
        Prisms.rectangle(
            split - cheek - lapAt,
            reach(m.placedCells(), lap) - lapAt + Shapes.SPARE,
            (openLow ? endLow - Shapes.SPARE : w0 - edge) - middle,
            (openHigh ? endHigh + Shapes.SPARE : w1 + edge) - middle);
    List<Convex> mortise =
        Prisms.of(axes, hole, through + Shapes.SPARE, site.outsideMouth()).stream().toList();
    List<Vec3> open = new ArrayList<>(List.of(lap));
    if (openLow) {
      open.add(wide.negated());
    }
    if (openHigh) {
      open.add(wide);
    }
    Joint joint =
        site.joint(List.of(new Tenon(tenoned, at, kept, mortise)), open.toArray(new Vec3[0]));
    List<Plane> trim = sizes.across() ? List.of() : List.of(far);
    return new Made(
        i, joint, List.of(), trim, cutAway(t, axes, sizes, lapAt - split, mouth, far, edge));
  }

  /** What the first part loses: below the lap face, from the shoulder on. */
  private static List<Convex> cutAway(
      Stock t, TenonAxes axes, Lap sizes, double toLap, Plane mouth, Plane far, double edge) {
    double aside = 2 * reach(t.cells(), Vec3.BACK) + 2 * reach(t.cells(), Vec3.UP) + 100;
    List<double[]> below = Prisms.rectangle(-aside, -toLap, -aside, aside);
    double beyond = StockMaker.LONG + 1000;
    // Across, the other part needs room at both its sides; at an end the shoulder sits on its face.
    Plane from = sizes.across() ? mouth.moved(edge) : mouth;
    return Prisms.of(axes, below, beyond, from)
        .flatMap(c -> sizes.across() ? c.clipped(far.moved(edge)) : java.util.Optional.of(c))
        .stream()
        .toList();
  }

  /** Square to both parts, on the side that the first one keeps. */
  private static Vec3 lapNormal(Stock t, Stock m, boolean outside) {
    Vec3 n = t.frame().x().cross(m.frame().x());
    if (n.length() < 0.1) {
      throw Refusal.of(
          "wrong-kind", "", t.name() + " and " + m.name() + " lie side by side", "laps cross");
    }
    n = n.unit();
    double side = n.dot(t.outside());
    if (Math.abs(side) < 0.1) {
      side = n.z();
    }
    return side > 0 == outside ? n : n.negated();
  }

  private static Plane mouth(List<Convex> shared, Stock m, Vec3 along) {
    Plane best = null;
    double most = 0;
    for (Convex cell : m.placedCells()) {
      for (Plane face : cell.planes()) {
        double against = -face.normal().dot(along);
        boolean touched =
            shared.stream()
                .anyMatch(
                    c -> Math.abs(c.reach(face.normal()) - face.offset()) <= Tolerances.contact());
        if (touched && against > most) {
          most = against;
          best = face;
        }
      }
    }
    return best != null && most > 0.2
        ? best
        : new Plane(along.negated(), reach(shared, along.negated()));
  }

  private static double reach(List<Convex> cells, Vec3 direction) {
    return cells.stream().mapToDouble(c -> c.reach(direction)).max().orElseThrow();
  }
}
