package dryfit.build;

import dryfit.build.JointInstances.Instance;
import dryfit.build.JointMaker.Made;
import dryfit.document.JointPlan.Shoulder;
import dryfit.document.JointSizes.RoundTenon;
import dryfit.geometry.Plane;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;

/** A round tenon in a bored hole; without a shoulder the whole part goes in. */
final class RoundTenonMaker {
  private RoundTenonMaker() {}

  static Made make(JointSite site, RoundTenon sizes) {
    double r = sizes.diameter() / 2;
    int n = facets(site.of(), r);
    TenonAxes a = site.axes();
    List<double[]> section = Prisms.circle(r, n);
    List<double[]> hole = Prisms.circle(r + growth(site.plan().fit().cheek(), n), n);
    List<Convex> tenon = new ArrayList<>();
    List<Convex> body = new ArrayList<>();
    List<Convex> bore = new ArrayList<>();
    if (sizes.wedges().isPresent()) {
      new WedgedTenon(site, sizes.wedges().get(), section, hole).addTo(tenon, body, bore);
    } else {
      Plane root = site.mouth().moved(JointSite.ROOT);
      Prisms.of(a, section, site.length(), site.mouth()).ifPresent(tenon::add);
      Prisms.of(a, section, site.length(), root).ifPresent(body::add);
      Prisms.of(a, hole, site.deep(), site.outsideMouth()).ifPresent(bore::add);
    }
    List<Plane> trim = new ArrayList<>(site.shoulder());
    if (site.plan().shoulder() == Shoulder.NONE) {
      // The part itself, whole, is the tenon.
      trim.add(Plane.through(a.at().plus(a.entry().times(site.length())), a.entry()));
      body.clear();
    }
    Tenon one = new Tenon(site.tenoned(), a.at(), tenon, bore);
    return new Made(site.of(), site.joint(List.of(one)), body, trim, List.of());
  }

  /** The gap of two polygons of n sides is measured across their flats. */
  static double growth(double gap, int n) {
    return gap / Math.cos(Math.PI / n);
  }

  /** A whole part that goes in is drawn with its own facets, and so is its hole. */
  private static int facets(Instance i, double r) {
    Stock t = i.tenoned();
    return i.plan().shoulder() == Shoulder.NONE
        ? TurnedForm.facets(t.plan(), t.end() - t.start()).orElseGet(() -> OutlineCurves.facets(r))
        : OutlineCurves.facets(r);
  }
}
