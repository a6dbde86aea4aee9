package dryfit.build;

import dryfit.document.JointSizes.Wedges;
import dryfit.document.PartPlan.Section;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;

/**
 * The end of a through tenon with its wedges driven. As sawn, the tenon is straight with a kerf for
 * each wedge; driven, a wedge fills its kerf at the point and is thicker by its swell at the head,
 * and the strips between the kerfs lean aside by as much. That is a shear, so no wood is gained or
 * lost. The mortise is flared so that the outer strips find room.
 *
 * <p>Wedges push along the grain of the mortised part, where it does not split: they stand across
 * it.
 */
final class WedgedTenon {
  private final JointSite site;
  private final Wedges wedges;
  private final TenonAxes axes;
  private final List<double[]> section;
  private final List<double[]> hole;
  private final boolean spreadsWide;
  private final double kerfBottom;

  /**
   * @param section of the tenon as sawn
   * @param hole of the mortise at the mouth
   */
  WedgedTenon(JointSite site, Wedges wedges, List<double[]> section, List<double[]> hole) {
    this.site = site;
    this.wedges = wedges;
    this.axes = site.axes();
    this.section = section;
    this.hole = hole;
    Stock into = site.of().mortised();
    Vec3 grain = into.frame().turn(into.grain());
    this.spreadsWide = Math.abs(grain.dot(axes.wide())) >= Math.abs(grain.dot(axes.thick()));
    this.kerfBottom = site.throughAll() - wedges.deep();
    if (kerfBottom <= 0) {
      throw site.refuse(
          "tenon-too-large",
          "/wedges/deep",
          "the saw cuts for the wedges of \"" + site.plan().name() + "\" reach the shoulder",
          "leave them at least a few millimetres short of it");
    }
  }

  void addTo(List<Convex> tenon, List<Convex> body, List<Convex> mortise) {
    Prisms.of(axes, section, kerfBottom, site.mouth()).ifPresent(tenon::add);
    Prisms.of(axes, section, kerfBottom, site.mouth().moved(JointSite.ROOT)).ifPresent(body::add);
    double low = extent(-1);
    double high = extent(1);
    int n = wedges.count();
    double tip = site.length() - kerfBottom;
    double slope = wedges.swell() / wedges.deep();
    double from = low;
    for (int k = 0; k <= n; k++) {
      double middle = low + (k + 1) * (high - low) / (n + 1);
      double to = k == n ? high : middle - wedges.kerf() / 2;
      if (to - from < 0.5) {
        throw site.refuse(
            "tenon-too-large",
            "/wedges/count",
            "the wedges of \"" + site.plan().name() + "\" leave no wood of the tenon between them",
            "use fewer or thinner ones");
      }
      Convex strip = sheared(between(section, from, to), (k - n / 2.0) * slope * tip, tip);
      tenon.add(strip);
      body.add(strip);
      if (k < n) {
        wedge(middle, (k - n / 2.0) * slope * tip, slope * tip, tip);
      }
      from = middle + wedges.kerf() / 2;
    }
    mortise(mortise);
  }

  private void mortise(List<Convex> mortise) {
    Prisms.of(axes, hole, kerfBottom, site.outsideMouth()).ifPresent(mortise::add);
    double beyond = (wedges.deep() + Shapes.SPARE) / wedges.deep();
    double flare = wedges.flare().orElse(wedges.spread()) * beyond;
    List<Vec3> corners = new ArrayList<>(Prisms.placed(axes, hole, kerfBottom));
    double far = kerfBottom + wedges.deep() * beyond;
    for (double[] c : hole) {
      // A corner in the middle goes both ways: a round hole is opened to an oval.
      if (across(c) > -Tolerances.coincident()) {
        corners.addAll(Prisms.placed(axes, List.of(moved(c, flare)), far));
      }
      if (across(c) < Tolerances.coincident()) {
        corners.addAll(Prisms.placed(axes, List.of(moved(c, -flare)), far));
      }
    }
    mortise.add(Convex.hull(corners));
  }

  private void wedge(double middle, double lean, double swell, double tip) {
    double half = wedges.kerf() / 2;
    List<double[]> whole = between(section, middle - half, middle + half);
    double least = other(whole, -1);
    double most = other(whole, 1);
    List<Vec3> corners = new ArrayList<>();
    for (double o : new double[] {least, most}) {
      corners.addAll(
          Prisms.placed(axes, List.of(pair(middle - half, o), pair(middle + half, o)), kerfBottom));
      corners.addAll(
          Prisms.placed(
              axes,
              List.of(pair(middle - half + lean, o), pair(middle + half + lean + swell, o)),
              kerfBottom + tip));
    }
    Vec3 along = spreadsWide ? axes.thick() : axes.wide();
    site.pieces()
        .add(
            site.of(),
            "wedge",
            Convex.hull(corners),
            axes.at().plus(axes.entry().times(kerfBottom)),
            axes.entry(),
            tip,
            new Section.Rectangle(most - least, wedges.kerf() + swell),
            along);
  }

  // ---- sections ----

  /** What of a section lies between two lines across the way the wedges push. */
  private List<double[]> between(List<double[]> loop, double from, double to) {
    return halved(halved(loop, from, 1), to, -1);
  }

  /** The part of a convex loop beyond a line, or before it. */
  private List<double[]> halved(List<double[]> loop, double line, double sign) {
    List<double[]> out = new ArrayList<>();
    for (int i = 0; i < loop.size(); i++) {
      double[] a = loop.get(i);
      double[] b = loop.get((i + 1) % loop.size());
      double ha = sign * (across(a) - line);
      double hb = sign * (across(b) - line);
      if (ha >= 0) {
        out.add(a);
      }
      if (ha > 0 && hb < 0 || ha < 0 && hb > 0) {
        double s = ha / (ha - hb);
        out.add(new double[] {a[0] + s * (b[0] - a[0]), a[1] + s * (b[1] - a[1])});
      }
    }
    return out;
  }

  private Convex sheared(List<double[]> loop, double aside, double tip) {
    List<double[]> end = loop.stream().map(c -> moved(c, aside)).toList();
    return Convex.loft(
        Prisms.placed(axes, loop, kerfBottom), Prisms.placed(axes, end, kerfBottom + tip));
  }

  private double across(double[] c) {
    return spreadsWide ? c[1] : c[0];
  }

  private double[] pair(double across, double other) {
    return spreadsWide ? new double[] {other, across} : new double[] {across, other};
  }

  private double[] moved(double[] c, double by) {
    return spreadsWide ? new double[] {c[0], c[1] + by} : new double[] {c[0] + by, c[1]};
  }

  private double extent(int sign) {
    return sign * section.stream().mapToDouble(c -> sign * across(c)).max().orElseThrow();
  }

  private double other(List<double[]> loop, int sign) {
    return sign
        * loop.stream().mapToDouble(c -> sign * (spreadsWide ? c[0] : c[1])).max().orElseThrow();
  }
}
