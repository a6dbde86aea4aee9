package dryfit.build;

import dryfit.build.JointMaker.Made;
import dryfit.document.JointPlan.Haunch;
import dryfit.document.JointSizes;
import dryfit.document.JointSizes.MortiseAndTenon;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;

/**
 * A tenon of rectangular section, alone or in a row, with its haunch, its stepped shoulder and its
 * wedges.
 */
final class SquareTenonMaker {
  private final JointSite site;
  private final MortiseAndTenon sizes;
  private final TenonAxes axes;
  private final double t;
  private final double w;
  private final double cheek;
  private final double edge;
  private final List<Convex> tenon = new ArrayList<>();
  private final List<Convex> body = new ArrayList<>();
  private final List<Convex> mortise = new ArrayList<>();

  private SquareTenonMaker(JointSite site, MortiseAndTenon sizes) {
    this.site = site;
    this.sizes = sizes;
    this.axes = site.axes();
    this.t = sizes.thickness() / 2;
    this.w = sizes.width() / 2;
    this.cheek = site.plan().fit().cheek();
    this.edge = site.plan().fit().edge();
  }

  static Made make(JointSite site, MortiseAndTenon sizes) {
    return new SquareTenonMaker(site, sizes).made();
  }

  private Made made() {
    List<Tenon> tenons = new ArrayList<>();
    List<Convex> bodies = new ArrayList<>();
    JointSizes.Row row = sizes.row();
    for (int k = 0; k < row.count(); k++) {
      double size = row.above() ? sizes.width() : sizes.thickness();
      TenonAxes one = axes.inRow(row, k, size, site.mouth());
      if (sizes.wedges().isPresent()) {
        WedgedTenon wedged =
            new WedgedTenon(
                site,
                sizes.wedges().get(),
                Prisms.rectangle(-t, t, -w, w),
                Prisms.rectangle(-t - cheek, t + cheek, -w - edge, w + edge));
        wedged.addTo(tenon, body, mortise);
      } else {
        add(one, -t, t, -w, w);
      }
      if (k == 0) {
        sizes.haunch().ifPresent(this::haunch);
        sizes.step().ifPresent(this::step);
      }
      tenons.add(new Tenon(site.tenoned(), one.at(), tenon, mortise));
      bodies.addAll(body);
      tenon.clear();
      body.clear();
      mortise.clear();
    }
    return new Made(site.of(), site.joint(tenons), bodies, site.shoulder(), List.of());
  }

  private void add(TenonAxes a, double t0, double t1, double w0, double w1) {
    List<double[]> section = Prisms.rectangle(t0, t1, w0, w1);
    Prisms.of(a, section, site.length(), site.mouth()).ifPresent(tenon::add);
    Prisms.of(a, section, site.length(), site.mouth().moved(JointSite.ROOT)).ifPresent(body::add);
    Prisms.of(
            a,
            Prisms.rectangle(t0 - cheek, t1 + cheek, w0 - edge, w1 + edge),
            site.deep(),
            site.outsideMouth())
        .ifPresent(mortise::add);
  }

  // ---- haunch ----

  private void haunch(Haunch h) {
    double half = sizes.row().above() ? sizes.row().span(sizes.width()) / 2 : w;
    double thick = sizes.row().above() ? t : sizes.row().span(sizes.thickness()) / 2;
    double[] reach = axes.haunch(h.atTop(), half);
    double low = reach[0] - (reach[0] < 0 ? edge : 0);
    double high = reach[1] + (reach[1] > 0 ? edge : 0);
    List<double[]> section = Prisms.rectangle(-thick, thick, reach[0], reach[1]);
    List<double[]> hole = Prisms.rectangle(-thick - cheek, thick + cheek, low, high);
    double deep = h.deep();
    double room = site.plan().fit().bottom();
    haunch(h, reach, section, deep, 0, site.mouth(), tenon);
    haunch(h, reach, section, deep, 0, site.mouth().moved(JointSite.ROOT), body);
    haunch(h, reach, hole, deep, room, site.outsideMouth(), mortise);
  }

  /**
   * A square haunch is a short prism; a sloping one is cut off from its root to the part's edge.
   */
  private void haunch(
      Haunch h,
      double[] reach,
      List<double[]> section,
      double deep,
      double room,
      dryfit.geometry.Plane behind,
      List<Convex> to) {
    Prisms.of(axes, section, deep + room, behind)
        .flatMap(
            c ->
                h.sloping()
                    ? c.clipped(slope(h, reach, deep).moved(room * along(h, reach)))
                    : java.util.Optional.of(c))
        .ifPresent(to::add);
  }

  /** From full depth beside the tenon to nothing at the part's edge; normal out of the haunch. */
  private dryfit.geometry.Plane slope(Haunch h, double[] reach, double deep) {
    double root = h.atTop() ? reach[0] : reach[1];
    double edgeOfPart = h.atTop() ? reach[1] : reach[0];
    var atRoot = axes.at().plus(axes.wide().times(root)).plus(axes.entry().times(deep));
    var run = edgeOfPart - root;
    var normal = axes.entry().times(run).plus(axes.wide().times(deep));
    return dryfit.geometry.Plane.through(atRoot, run > 0 ? normal : normal.negated());
  }

  /** How far the slope moves out when it is moved along the entry by one. */
  private double along(Haunch h, double[] reach) {
    return slope(h, reach, h.deep()).normal().dot(axes.entry());
  }

  // ---- stepped shoulder ----

  /** The longer shoulder is let into the face from the cheek to the face of the part. */
  private void step(JointSizes.Step step) {
    double thick = sizes.row().above() ? t : sizes.row().span(sizes.thickness()) / 2;
    Stock part = site.of().tenoned();
    Stock.Section s = site.meeting().section();
    boolean upZ = step.outside() == part.outside().dot(part.frame().z()) > 0;
    double sign = axes.thick().dot(part.frame().z()) > 0 == upZ ? 1 : -1;
    double middle = part.frame().localDirection(axes.at().minus(part.frame().origin())).z();
    double face = Math.abs((upZ ? s.z1() : s.z0()) - middle);
    double[] across = sign > 0 ? new double[] {thick, face} : new double[] {-face, -thick};
    List<double[]> section = Prisms.rectangle(across[0], across[1], axes.bottom(), axes.top());
    List<double[]> hole =
        Prisms.rectangle(
            across[0] - (sign < 0 ? cheek : 0),
            across[1] + (sign > 0 ? cheek : 0),
            axes.bottom() - edge,
            axes.top() + edge);
    Prisms.of(axes, section, step.by(), site.mouth()).ifPresent(tenon::add);
    Prisms.of(axes, section, step.by(), site.mouth().moved(JointSite.ROOT)).ifPresent(body::add);
    Prisms.of(axes, hole, step.by(), site.outsideMouth()).ifPresent(mortise::add);
  }
}
