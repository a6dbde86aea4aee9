package dryfit.build;

import dryfit.build.JointInstances.Instance;
import dryfit.document.JointPlan;
import dryfit.document.JointPlan.Entry;
import dryfit.document.JointPlan.Kind;
import dryfit.document.JointPlan.Shoulder;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Works out one joint in chair space: where the part meets the other, which way it goes in, and the
 * solids of its tenon and its mortise.
 *
 * <ul>
 *   <li>The mouth is the first face of the other part that the middle line of the tenoned part
 *       meets, seen from its middle.
 *   <li>The tenon is a prism along the entry, from the mouth, to a tip square to the entry.
 *   <li>The mortise is the tenon grown by the cheek and edge clearances, lengthened by the bottom
 *       clearance, and cut a little outside the mouth so that nothing is left standing in it.
 * </ul>
 */
final class JointMaker {
  private JointMaker() {}

  /**
   * A joint before its parts are finished.
   *
   * @param bodyTenon the tenon with a little root inside its part, so that the two are one piece
   * @param trim planes that the tenoned part is cut to, normal out of the wood that stays
   */
  record Made(Instance of, Joint joint, List<Convex> bodyTenon, List<Plane> trim) {}

  /**
   * How deep the root of a tenon reaches back into its part, mm: only to make one piece of them.
   */
  private static final double ROOT = 0.05;

  static Made make(Instance i, String label, int tenoned, int mortised) {
    Stock t = i.tenoned();
    Vec3 out = t.outward(i.atStart());
    Meeting meeting = Meeting.of(t, i.atStart(), i.mortised()).orElseThrow(() -> misses(i));
    List<Convex> wood = i.mortised().placedCells();
    Plane mouth =
        i.plan().shoulder() == Shoulder.FLAT && i.plan().kind() != Kind.HOUSING
            ? meeting.landing(i.mortised())
            : meeting.mouth();
    Vec3 entry = entry(i, out, mouth);
    if (entry.dot(mouth.normal()) > -Math.cos(Math.toRadians(80))) {
      throw Refusal.of(
          "mortise-misses",
          i.plan().pointer() + "/entry",
          "the tenon of \""
              + i.plan().name()
              + "\" would run along the face of "
              + i.mortised().name()
              + " instead of into it",
          "let it go in at less than 80 degrees to the square");
    }
    TenonAxes axes = TenonAxes.of(i, meeting, mouth, entry, out);
    double throughAll =
        CellRay.first(wood, axes.at().minus(entry.times(1)), entry)
            .map(e -> e.out() - 1)
            .orElseThrow(() -> misses(i));
    TenonRoom.check(i, meeting);
    return switch (i.plan().kind()) {
      case MORTISE_AND_TENON -> squareTenon(i, label, tenoned, mortised, mouth, axes, throughAll);
      case ROUND_TENON -> roundTenon(i, label, tenoned, mortised, mouth, axes, throughAll);
      case HOUSING -> housing(i, label, tenoned, mortised, mouth, axes);
    };
  }

  private static Refusal misses(Instance i) {
    return Refusal.of(
        "mortise-misses",
        i.plan().pointer(),
        "going along "
            + i.tenoned().name()
            + i.tenoned().hand().suffix()
            + " from its middle to its end never meets "
            + i.mortised().name()
            + i.mortised().hand().suffix(),
        "move one of them, or name the part it does meet in \"into\"");
  }

  private static Vec3 entry(Instance i, Vec3 out, Plane mouth) {
    Entry entry = i.plan().entry();
    if (entry instanceof Entry.SquareToTheFace) {
      return mouth.normal().negated();
    } else if (entry instanceof Entry.Along along) {
      Vec3 d = StockMaker.vec(along.direction()).unit();
      // Written for the right-hand joint, and as a line: it goes into the wood either way.
      d = i.hand() == dryfit.document.Hand.LEFT ? d.mirrored() : d;
      return d.dot(mouth.normal()) > 0 ? d.negated() : d;
    }
    return out;
  }

  private static double length(JointPlan plan, TenonAxes axes, Plane mouth, double throughAll) {
    if (plan.through()) {
      return throughAll + plan.proud();
    }
    double length = plan.length().orElseThrow();
    return plan.lengthIs() == JointPlan.LengthIs.SQUARE_TO_THE_FACE
        ? length / -axes.entry().dot(mouth.normal())
        : length;
  }

  private static Made squareTenon(
      Instance i,
      String label,
      int tenoned,
      int mortised,
      Plane mouth,
      TenonAxes a,
      double throughAll) {
    JointPlan plan = i.plan();
    double t = plan.thickness().orElseThrow() / 2;
    double w = plan.width().orElseThrow() / 2;
    double length = length(plan, a, mouth, throughAll);
    double cheek = plan.fit().cheek();
    double edge = plan.fit().edge();
    double deep = plan.through() ? throughAll + Shapes.SPARE : length + plan.fit().bottom();
    List<Convex> tenon = new ArrayList<>();
    List<Convex> body = new ArrayList<>();
    List<Convex> mortise = new ArrayList<>();
    addPrism(tenon, a, -t, t, -w, w, length, mouth);
    addPrism(body, a, -t, t, -w, w, length, mouth.moved(ROOT));
    addPrism(
        mortise, a, -t - cheek, t + cheek, -w - edge, w + edge, deep, mouth.moved(Shapes.SPARE));
    plan.haunch()
        .ifPresent(
            h -> {
              double[] reach = a.haunch(h.atTop(), w);
              addPrism(tenon, a, -t, t, reach[0], reach[1], h.deep(), mouth);
              addPrism(body, a, -t, t, reach[0], reach[1], h.deep(), mouth.moved(ROOT));
              double low = reach[0] - (reach[0] < 0 ? edge : 0);
              double high = reach[1] + (reach[1] > 0 ? edge : 0);
              addPrism(
                  mortise,
                  a,
                  -t - cheek,
                  t + cheek,
                  low,
                  high,
                  h.deep() + plan.fit().bottom(),
                  mouth.moved(Shapes.SPARE));
            });
    List<Plane> trim = plan.shoulder() == Shoulder.FLAT ? List.of(mouth.flipped()) : List.of();
    return new Made(
        i, joint(i, label, tenoned, mortised, mouth, a, length, tenon, mortise), body, trim);
  }

  private static void addPrism(
      List<Convex> to,
      TenonAxes a,
      double t0,
      double t1,
      double w0,
      double w1,
      double length,
      Plane behind) {
    // Far enough back that the plane behind cuts all four long edges.
    double back = 2 * (Math.max(Math.abs(t0), t1) + Math.max(Math.abs(w0), w1)) * 6 + 50;
    List<Vec3> loop = new ArrayList<>();
    for (double[] c : new double[][] {{t0, w0}, {t1, w0}, {t1, w1}, {t0, w1}}) {
      loop.add(
          a.at()
              .plus(a.thick().times(c[0]))
              .plus(a.wide().times(c[1]))
              .minus(a.entry().times(back)));
    }
    Convex.prism(loop, a.entry().times(back + length)).clipped(behind).ifPresent(to::add);
  }

  private static Made roundTenon(
      Instance i,
      String label,
      int tenoned,
      int mortised,
      Plane mouth,
      TenonAxes a,
      double throughAll) {
    JointPlan plan = i.plan();
    double r = plan.diameter().orElseThrow() / 2;
    double length = length(plan, a, mouth, throughAll);
    double deep = plan.through() ? throughAll + Shapes.SPARE : length + plan.fit().bottom();
    int n = facets(i, r);
    // The gap of two polygons of n sides is measured across their flats.
    double hole = r + plan.fit().cheek() / Math.cos(Math.PI / n);
    Optional<Convex> tenon = rod(a, r, n, length).clipped(mouth);
    Optional<Convex> body = rod(a, r, n, length).clipped(mouth.moved(ROOT));
    Optional<Convex> bore = rod(a, hole, n, deep).clipped(mouth.moved(Shapes.SPARE));
    List<Plane> trim = new ArrayList<>();
    List<Convex> bodies = new ArrayList<>(body.stream().toList());
    if (plan.shoulder() == Shoulder.FLAT) {
      trim.add(mouth.flipped());
    } else if (plan.shoulder() == Shoulder.NONE) {
      // The part itself, whole, is the tenon.
      trim.add(Plane.through(a.at().plus(a.entry().times(length)), a.entry()));
      bodies.clear();
    }
    return new Made(
        i,
        joint(
            i,
            label,
            tenoned,
            mortised,
            mouth,
            a,
            length,
            tenon.stream().toList(),
            bore.stream().toList()),
        bodies,
        trim);
  }

  /** A whole part that goes in is drawn with its own facets, and so is its hole. */
  private static int facets(Instance i, double r) {
    Stock t = i.tenoned();
    return i.plan().shoulder() == Shoulder.NONE
        ? TurnedForm.facets(t.plan(), t.end() - t.start()).orElseGet(() -> OutlineCurves.facets(r))
        : OutlineCurves.facets(r);
  }

  private static Convex rod(TenonAxes a, double r, int n, double length) {
    double back = 12 * r + 50;
    List<Vec3> loop = new ArrayList<>(n);
    for (int k = 0; k < n; k++) {
      double angle = 2 * Math.PI * k / n;
      loop.add(
          a.at()
              .minus(a.entry().times(back))
              .plus(a.wide().times(r * Math.cos(angle)))
              .plus(a.thick().times(r * Math.sin(angle))));
    }
    return Convex.prism(loop, a.entry().times(back + length));
  }

  private static Made housing(
      Instance i, String label, int tenoned, int mortised, Plane mouth, TenonAxes a) {
    JointPlan plan = i.plan();
    double depth = plan.depth().orElseThrow();
    Plane bottom = mouth.moved(-depth);
    Plane tip = bottom.flipped();
    Plane floor = mouth.moved(-depth - plan.fit().bottom()).flipped();
    List<Convex> let = new ArrayList<>();
    for (Convex cell : i.tenoned().placedCells(i.atStart())) {
      cell.clipped(mouth)
          .flatMap(c -> c.clipped(tip))
          .filter(c -> c.middle().minus(a.at()).dot(a.entry()) > -Tolerances.contact())
          .ifPresent(let::add);
    }
    if (let.isEmpty()) {
      throw misses(i);
    }
    Convex pocket = pocket(let, a, plan.fit().cheek(), plan.fit().edge(), depth * 4 + 100);
    List<Convex> mortise =
        pocket.clipped(mouth.moved(Shapes.SPARE)).flatMap(c -> c.clipped(floor)).stream().toList();
    double length = depth / -a.entry().dot(mouth.normal());
    return new Made(
        i,
        joint(i, label, tenoned, mortised, mouth, a, length, let, mortise),
        List.of(),
        List.of(tip));
  }

  /** What the end sweeps on its way in, grown by its clearances, far out and far in. */
  private static Convex pocket(
      List<Convex> let, TenonAxes a, double cheek, double edge, double far) {
    List<double[]> shadow = new ArrayList<>();
    for (Convex cell : let) {
      for (Vec3 p : cell.points()) {
        double t = p.minus(a.at()).dot(a.thick());
        double w = p.minus(a.at()).dot(a.wide());
        for (int side = 0; side < 4; side++) {
          shadow.add(
              new double[] {
                t + (side % 2 == 0 ? cheek : -cheek), w + (side / 2 == 0 ? edge : -edge)
              });
        }
      }
    }
    List<Vec3> loop =
        FlatHull.of(shadow).stream()
            .map(
                c ->
                    a.at()
                        .plus(a.thick().times(c[0]))
                        .plus(a.wide().times(c[1]))
                        .minus(a.entry().times(far)))
            .toList();
    return Convex.prism(loop, a.entry().times(2 * far));
  }

  private static Joint joint(
      Instance i,
      String label,
      int tenoned,
      int mortised,
      Plane mouth,
      TenonAxes a,
      double length,
      List<Convex> tenon,
      List<Convex> mortise) {
    return new Joint(
        i.plan(),
        i.hand(),
        label,
        tenoned,
        i.atStart(),
        mortised,
        mouth,
        a.at(),
        a.entry(),
        a.thick(),
        a.wide(),
        length,
        tenon,
        mortise);
  }
}
