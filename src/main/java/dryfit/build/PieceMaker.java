package dryfit.build;

import dryfit.build.JointMaker.Made;
import dryfit.document.JointPlan;
import dryfit.document.JointSizes.Dowels;
import dryfit.document.JointSizes.LooseTenon;
import dryfit.document.JointSizes.Row;
import dryfit.document.PartPlan.Section;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;

/**
 * Joints held by pieces of their own: loose tenons and dowels, each in a hole in both parts. What
 * comes of it are two joints: the pieces in the one part, and the same pieces in the other.
 */
final class PieceMaker {
  private final JointSite site;
  private final String what;
  private final Row row;
  private final double size;
  private final double own;
  private final List<double[]> section;
  private final List<double[]> hole;
  private final Section stock;

  private PieceMaker(
      JointSite site,
      String what,
      Row row,
      double size,
      double own,
      List<double[]> section,
      List<double[]> hole,
      Section stock) {
    this.site = site;
    this.what = what;
    this.row = row;
    this.size = size;
    this.own = own;
    this.section = section;
    this.hole = hole;
    this.stock = stock;
  }

  static List<Made> loose(JointSite site, LooseTenon s) {
    double t = s.thickness() / 2;
    double w = s.width() / 2;
    double cheek = site.plan().fit().cheek();
    double edge = site.plan().fit().edge();
    return new PieceMaker(
            site,
            "tenon",
            s.row(),
            s.row().above() ? s.width() : s.thickness(),
            s.own(),
            Prisms.rectangle(-t, t, -w, w),
            Prisms.rectangle(-t - cheek, t + cheek, -w - edge, w + edge),
            new Section.Rectangle(s.width(), s.thickness()))
        .made();
  }

  static List<Made> dowels(JointSite site, Dowels s) {
    double r = s.diameter() / 2;
    int n = OutlineCurves.facets(r);
    double bore = r + RoundTenonMaker.growth(site.plan().fit().cheek(), n);
    return new PieceMaker(
            site,
            "dowel",
            s.row(),
            s.diameter(),
            s.own(),
            Prisms.circle(r, n),
            Prisms.circle(bore, n),
            new Section.Round(s.diameter()))
        .made();
  }

  private List<Made> made() {
    TenonAxes a = site.axes();
    Vec3 entry = a.entry();
    Plane outward = site.mouth().flipped();
    double bottom = site.plan().fit().bottom();
    List<Tenon> theirs = new ArrayList<>();
    List<Tenon> ours = new ArrayList<>();
    for (int k = 0; k < row.count(); k++) {
      TenonAxes one = a.inRow(row, k, size, site.mouth());
      Convex piece =
          Convex.prism(Prisms.placed(one, section, -own), entry.times(own + site.length()));
      int index =
          site.pieces()
              .add(
                  site.of(),
                  what,
                  piece,
                  one.at().minus(entry.times(own)),
                  entry,
                  own + site.length(),
                  stock,
                  a.wide());
      theirs.add(
          new Tenon(
              index,
              one.at(),
              piece.clipped(site.mouth()).stream().toList(),
              Prisms.of(one, hole, site.deep(), site.outsideMouth()).stream().toList()));
      TenonAxes back = new TenonAxes(one.at(), entry.negated(), one.thick(), one.wide(), 0, 0);
      ours.add(
          new Tenon(
              index,
              one.at(),
              piece.clipped(outward).stream().toList(),
              Prisms.of(back, hole, own + bottom, outward.moved(Shapes.SPARE)).stream().toList()));
    }
    Joint first = site.joint(theirs);
    Joint second =
        new Joint(
            site.plan(),
            site.of().hand(),
            site.label() + ", in " + site.of().tenoned().name(),
            ours.get(0).part(),
            true,
            site.tenoned(),
            outward,
            a.at(),
            entry.negated(),
            a.thick(),
            a.wide(),
            own,
            ours,
            List.of(outward.normal()));
    List<Plane> trim =
        site.plan().shoulder() == JointPlan.Shoulder.FLAT
            ? List.of(site.mouth().flipped())
            : List.of();
    return List.of(
        new Made(site.of(), first, List.of(), trim, List.of()),
        new Made(site.of(), second, List.of(), List.of(), List.of()));
  }
}
