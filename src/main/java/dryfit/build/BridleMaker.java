package dryfit.build;

import dryfit.build.JointMaker.Made;
import dryfit.document.JointSizes.Bridle;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;

/**
 * A tenon as wide as its part, through a mortise that is open at the nearer end of the other part.
 */
final class BridleMaker {
  private BridleMaker() {}

  /** The open mortise runs along the other part to within 45 degrees: cosine. */
  private static final double ALONG = Math.sqrt(0.5);

  static Made make(JointSite site, Bridle sizes) {
    TenonAxes a = site.axes();
    Stock into = site.of().mortised();
    if (Math.abs(into.frame().x().dot(a.wide())) < ALONG) {
      throw site.refuse(
          "wrong-kind",
          "/kind",
          "the width of " + site.of().tenoned().name() + " does not run along " + into.name(),
          "a bridle's mortise runs out of the end of its part; choose another joint or turn it");
    }
    double t = sizes.thickness() / 2;
    double middle = a.at().dot(a.wide());
    double above = reach(into, a.wide()) - middle;
    double below = -reach(into, a.wide().negated()) - middle;
    boolean openAbove = above - a.top() <= a.bottom() - below;
    double cheek = site.plan().fit().cheek();
    double edge = site.plan().fit().edge();
    List<double[]> section = Prisms.rectangle(-t, t, a.bottom(), a.top());
    List<double[]> hole =
        Prisms.rectangle(
            -t - cheek,
            t + cheek,
            openAbove ? a.bottom() - edge : below - Shapes.SPARE,
            openAbove ? above + Shapes.SPARE : a.top() + edge);
    List<Convex> tenon = new ArrayList<>();
    List<Convex> body = new ArrayList<>();
    List<Convex> mortise = new ArrayList<>();
    Prisms.of(a, section, site.length(), site.mouth()).ifPresent(tenon::add);
    Prisms.of(a, section, site.length(), site.mouth().moved(JointSite.ROOT)).ifPresent(body::add);
    Prisms.of(a, hole, site.throughAll() + Shapes.SPARE, site.outsideMouth())
        .ifPresent(mortise::add);
    Vec3 open = openAbove ? a.wide() : a.wide().negated();
    Tenon one = new Tenon(site.tenoned(), a.at(), tenon, mortise);
    return new Made(site.of(), site.joint(List.of(one), open), body, site.shoulder(), List.of());
  }

  private static double reach(Stock part, Vec3 direction) {
    return part.placedCells().stream().mapToDouble(c -> c.reach(direction)).max().orElseThrow();
  }
}
