package dryfit.build;

import dryfit.build.JointInstances.Instance;
import dryfit.build.JointMaker.Made;
import dryfit.document.JointPlan;
import dryfit.document.JointSizes.Screwed;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import dryfit.solid.FaceContact;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Faces that only meet: glued, or screwed with clearance holes through the first part and pilot
 * holes in the second, in a row along the middle of the contact.
 */
final class FaceMaker {
  private final JointSite site;
  private final FaceContact contact;
  private final List<Plane> trim;

  private FaceMaker(JointSite site, FaceContact contact, List<Plane> trim) {
    this.site = site;
    this.contact = contact;
    this.trim = trim;
  }

  static Made make(Instance i, String label, int tenoned, int mortised, Pieces pieces) {
    Stock t = i.tenoned();
    Stock m = i.mortised();
    List<Convex> wood = t.expectedCells();
    List<Plane> trim = List.of();
    if (i.plan().tenon().end() != JointPlan.End.MIDDLE) {
      Meeting meeting = Meeting.of(t, i.atStart(), m).orElseThrow(() -> JointMaker.misses(i));
      Plane end = meeting.landing(m).flipped();
      trim = List.of(end);
      wood = t.placedCells().stream().flatMap(c -> c.clipped(end).stream()).toList();
    }
    FaceContact contact =
        FaceContact.largest(wood, m.expectedCells())
            .orElseThrow(
                () ->
                    Refusal.of(
                        "mortise-misses",
                        i.plan().pointer(),
                        "no face of " + t.name() + " lies on a face of " + m.name(),
                        "let them touch, flat to flat"));
    Plane mouth = contact.plane();
    Vec3 in = mouth.normal().negated();
    Vec3 wide = contact.longWay();
    Vec3 at = contact.middle();
    TenonAxes axes = new TenonAxes(at, in, wide.cross(in), wide, 0, 0);
    JointSite site =
        new JointSite(
            i,
            label,
            tenoned,
            mortised,
            new Meeting(mouth, at, t.section(i.atStart()), t.endFrame(i.atStart())),
            mouth,
            axes,
            0,
            pieces);
    FaceMaker maker = new FaceMaker(site, contact, trim);
    return i.plan().sizes() instanceof Screwed screwed ? maker.screwed(screwed) : maker.glued();
  }

  private Made glued() {
    Joint joint = site.joint(site.axes().at(), 0, List.of(), List.of(site.mouth().normal()));
    return new Made(site.of(), joint, List.of(), trim, List.of());
  }

  private Made screwed(Screwed s) {
    List<Tenon> screws = new ArrayList<>();
    List<Convex> clearance = new ArrayList<>();
    TenonAxes a = site.axes();
    int n = OutlineCurves.facets(s.diameter() / 2);
    double into = 0;
    for (int k = 0; k < s.row().count(); k++) {
      double aside = s.row().count() == 1 ? 0 : (k - (s.row().count() - 1) / 2.0) * s.row().gap();
      Vec3 at = a.at().plus(a.wide().times(aside));
      if (!contact.contains(at)) {
        throw site.refuse(
            "tenon-too-large",
            "/spacing",
            "screw " + (k + 1) + " of \"" + site.plan().name() + "\" is beside the contact",
            "set them closer together");
      }
      TenonAxes one = new TenonAxes(at, a.entry(), a.thick(), a.wide(), 0, 0);
      double passes = thicknessAt(at, a.entry());
      into = s.length() - (passes - s.head());
      if (into <= 0) {
        throw site.refuse(
            "tenon-too-large",
            "/length",
            "the screws of \"" + site.plan().name() + "\" end inside " + site.of().tenoned().name(),
            "make them longer or sink their heads deeper");
      }
      screws.add(screw(s, one, into, n));
      clearance.addAll(clearance(s, one, passes, n));
    }
    Joint joint = site.joint(a.at(), into, screws, List.of(site.mouth().normal()));
    return new Made(site.of(), joint, List.of(), trim, clearance);
  }

  private Tenon screw(Screwed s, TenonAxes one, double into, int n) {
    Optional<Convex> shank = Prisms.of(one, Prisms.circle(s.diameter() / 2, n), into, site.mouth());
    Optional<Convex> pilot =
        Prisms.of(one, Prisms.circle(s.pilot() / 2, n), into, site.outsideMouth());
    return new Tenon(site.tenoned(), one.at(), shank.stream().toList(), pilot.stream().toList());
  }

  /** Through the first part; a slot runs across its grain, the way the board moves. */
  private List<Convex> clearance(Screwed s, TenonAxes one, double passes, int n) {
    double r = s.diameter() / 2 + RoundTenonMaker.growth(site.plan().fit().cheek(), n);
    Stock board = site.of().tenoned();
    Vec3 grain = board.frame().turn(board.grain());
    Vec3 across = grain.cross(one.entry());
    Vec3 way = across.length() < 0.1 ? one.wide() : across.unit();
    List<Convex> out = new ArrayList<>();
    out.add(slot(one, r, n, way.times(s.slot() / 2), -passes - Shapes.SPARE, Shapes.SPARE));
    if (s.head() > 0) {
      out.add(
          slot(
              one,
              s.diameter(),
              n,
              way.times(s.slot() / 2),
              -passes - Shapes.SPARE,
              -passes + s.head()));
    }
    return out;
  }

  private static Convex slot(TenonAxes one, double r, int n, Vec3 half, double from, double to) {
    List<Vec3> corners = new ArrayList<>();
    for (double at : new double[] {from, to}) {
      for (Vec3 p : Prisms.placed(one, Prisms.circle(r, n), at)) {
        corners.add(p.plus(half));
        if (half.length() > 0) {
          corners.add(p.minus(half));
        }
      }
    }
    return Convex.hull(corners);
  }

  /** How thick the first part is where a screw goes through it. */
  private double thicknessAt(Vec3 at, Vec3 entry) {
    List<Convex> wood = site.of().tenoned().placedCells();
    for (Plane plane : trim) {
      wood = wood.stream().flatMap(c -> c.clipped(plane).stream()).toList();
    }
    double far = 10_000;
    Vec3 from = at.minus(entry.times(far));
    return CellRay.first(wood, from, entry).map(e -> e.out() - e.distance()).orElse(0.0);
  }
}
