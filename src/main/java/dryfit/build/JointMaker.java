package dryfit.build;

import dryfit.build.JointInstances.Instance;
import dryfit.document.JointPlan.Entry;
import dryfit.document.JointPlan.Kind;
import dryfit.document.JointPlan.Shoulder;
import dryfit.document.JointSizes;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import java.util.List;

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
   * @param cutAway what the tenoned part loses besides
   */
  record Made(
      Instance of, Joint joint, List<Convex> bodyTenon, List<Plane> trim, List<Convex> cutAway) {}

  /**
   * The joints that one instance makes: mostly one, two where a piece of its own joins two parts.
   */
  static List<Made> make(Instance i, String label, int tenoned, int mortised, Pieces pieces) {
    JointSizes sizes = i.plan().sizes();
    if (sizes instanceof JointSizes.Lap lap) {
      return List.of(LapMaker.make(i, label, tenoned, mortised, lap, pieces));
    } else if (sizes instanceof JointSizes.Notch notch) {
      return List.of(NotchMaker.make(i, label, tenoned, mortised, notch, pieces));
    } else if (sizes instanceof JointSizes.Screwed || sizes instanceof JointSizes.Glued) {
      return List.of(FaceMaker.make(i, label, tenoned, mortised, pieces));
    }
    JointSite site = site(i, label, tenoned, mortised, pieces);
    if (sizes instanceof JointSizes.RoundTenon round) {
      return List.of(RoundTenonMaker.make(site, round));
    } else if (sizes instanceof JointSizes.Housing housing) {
      return List.of(HousingMaker.make(site, housing));
    } else if (sizes instanceof JointSizes.LooseTenon loose) {
      return PieceMaker.loose(site, loose);
    } else if (sizes instanceof JointSizes.Dowels dowels) {
      return PieceMaker.dowels(site, dowels);
    } else if (sizes instanceof JointSizes.Bridle bridle) {
      return List.of(BridleMaker.make(site, bridle));
    }
    return List.of(SquareTenonMaker.make(site, (JointSizes.MortiseAndTenon) sizes));
  }

  private static JointSite site(
      Instance i, String label, int tenoned, int mortised, Pieces pieces) {
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
    if (i.plan().through() && throughAll + i.plan().proud() < Tolerances.leastSize()) {
      throw Refusal.of(
          "out-of-range",
          i.plan().pointer() + "/proud",
          "the tenon goes through "
              + Refusal.length(throughAll)
              + " of wood and is "
              + Refusal.length(-i.plan().proud())
              + " short of coming out, so nothing is left of it",
          "let it stop less short");
    }
    return new JointSite(i, label, tenoned, mortised, meeting, mouth, axes, throughAll, pieces);
  }

  static Refusal misses(Instance i) {
    return Refusal.of(
        "mortise-misses",
        i.plan().pointer(),
        "going along "
            + i.tenoned().name()
            + i.tenoned().hand().suffix()
            + " from its middle to its end never meets "
            + i.mortised().name()
            + i.mortised().hand().suffix()
            + instead(i),
        "move one of them, or name the part it does meet in \"into\"");
  }

  /** What the maker would see of it, if that can be said: too near, or on the other side. */
  private static String instead(Instance i) {
    Stock part = i.tenoned();
    Vec3 out = part.outward(i.atStart());
    Vec3 middle = part.endPoint(i.atStart()).minus(out.times(part.straightAt(i.atStart())));
    List<Convex> wood = i.mortised().placedCells();
    if (wood.stream().anyMatch(cell -> cell.contains(middle))) {
      return ", for its middle already lies inside that";
    }
    boolean behind = wood.stream().allMatch(cell -> cell.reach(out) < middle.dot(out));
    return behind ? ", which lies the other way" : "";
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
}
