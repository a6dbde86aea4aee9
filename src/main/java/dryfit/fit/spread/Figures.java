package dryfit.fit.spread;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.document.FitLimit;
import dryfit.document.JointPlan.Kind;
import dryfit.fit.ChairMeasure.Named;
import dryfit.fit.ChairMeasure.SeatLevel;
import dryfit.fit.Diagonal;
import dryfit.fit.FitReport;
import dryfit.fit.JointDetail;
import dryfit.fit.Limit;
import dryfit.fit.PlannedSizes;
import dryfit.fit.compare.Datum;
import dryfit.fit.compare.Datum.Group;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Every figure that is spread, with its limit and where it is measured: the gaps, walls and
 * set-backs of every joint, the diagonals of frames and the seat's height, under the names they
 * have in {@link dryfit.fit.compare.Data}; and differences of diagonals and of heights.
 */
final class Figures {
  private static final double NEVER = Double.POSITIVE_INFINITY;

  private final Chair chair;
  private final List<Figure> all = new ArrayList<>();
  private final Set<Datum.Key> taken = new HashSet<>();

  private Figures(FitReport report) {
    this.chair = report.chair();
  }

  static List<Figure> of(FitReport report, PlannedSizes plan) {
    Figures figures = new Figures(report);
    figures.frames(plan.diagonals());
    report.whole().level().ifPresent(figures::seat);
    for (int i = 0; i < report.joints().size(); i++) {
      figures.joint(i, report.joints().get(i).detail());
    }
    return figures.all;
  }

  private void add(Datum first, double least, double most, Site site) {
    Datum datum = first;
    for (int i = 2; !taken.add(datum.key()); i++) {
      String what = first.what() + " " + i;
      datum = new Datum(first.group(), first.subject(), what, first.kind(), first.value());
    }
    all.add(new Figure(datum, least, most, site));
  }

  private double limit(FitLimit which) {
    return Limit.of(chair.design(), which).value();
  }

  private static Datum whole(String what, Datum.Kind kind, double value) {
    return new Datum(Group.WHOLE, "", what, kind, value);
  }

  private void frames(List<Diagonal> diagonals) {
    double square = limit(FitLimit.OUT_OF_SQUARE);
    for (int i = 0; i + 1 < diagonals.size(); i += 2) {
      Diagonal a = diagonals.get(i);
      Diagonal b = diagonals.get(i + 1);
      length(a);
      length(b);
      String what = a.frame() + " diagonals differ by";
      Site site = new Site.Difference(new Site.Length(a), new Site.Length(b));
      add(whole(what, Datum.Kind.GAP, a.length() - b.length()), -square, square, site);
    }
  }

  private void length(Diagonal d) {
    String what = d.frame() + " " + d.what();
    add(whole(what, Datum.Kind.LENGTH, d.length()), -NEVER, NEVER, new Site.Length(d));
  }

  private void seat(SeatLevel level) {
    List<Site> sites = level.corners().stream().map(this::corner).toList();
    for (int i = 0; i < sites.size(); i++) {
      String what = "seat height at " + level.corners().get(i).part();
      Datum datum = whole(what, Datum.Kind.LENGTH, level.heights().get(i));
      add(datum, -NEVER, NEVER, sites.get(i));
    }
    level(level, sites, "in front", 0, 1);
    level(level, sites, "behind", 3, 2);
  }

  private void level(SeatLevel level, List<Site> sites, String where, int left, int right) {
    double by = level.heights().get(left) - level.heights().get(right);
    double limit = limit(FitLimit.OUT_OF_LEVEL);
    Site site = new Site.Difference(sites.get(left), sites.get(right));
    String what = "seat higher on the left " + where + " by";
    add(whole(what, Datum.Kind.GAP, by), -limit, limit, site);
  }

  private Site corner(Named at) {
    int nearest = -1;
    double least = NEVER;
    for (int i = 0; i < chair.joints().size(); i++) {
      Joint j = chair.joints().get(i);
      double off = j.at().distance(at.at());
      if ((isLeg(j.mortised(), at) || isLeg(j.tenoned(), at)) && off < least) {
        nearest = i;
        least = off;
      }
    }
    return nearest < 0
        ? new Site.Elsewhere()
        : new Site.Corner(nearest, isLeg(chair.joints().get(nearest).tenoned(), at));
  }

  private boolean isLeg(int part, Named at) {
    return chair.parts().get(part).label().equals(at.part());
  }

  private void joint(int i, JointDetail detail) {
    Joint joint = chair.joints().get(i);
    for (JointDetail.SideGap gap : detail.gaps()) {
      Datum datum = datum(joint, "gap at the " + gap.side(), Datum.Kind.GAP, gap.least().value());
      add(datum, least(joint, gap), most(joint, gap), new Site.Gap(i, gap.side()));
    }
    double wood = Limit.of(chair.design(), FitLimit.LEAST_WALL, joint).value();
    for (JointDetail.Wall w : detail.walls()) {
      Datum datum = datum(joint, "wood to the " + w.face(), Datum.Kind.LENGTH, w.left().value());
      boolean known = w.way().length() > 0;
      Site site = known ? new Site.Wall(i, w.way()) : new Site.Elsewhere();
      add(datum, wood - Tolerances.contact(), NEVER, site);
    }
    List<JointDetail.Setback> sides =
        detail.reveal().map(JointDetail.Reveal::sides).orElse(List.of());
    for (JointDetail.Setback s : sides) {
      Datum datum = datum(joint, "set back at the " + s.face(), Datum.Kind.LENGTH, s.by());
      Vec3 way = s.way();
      add(datum, -NEVER, NEVER, new Site.Setback(i, way));
    }
  }

  private static Datum datum(Joint joint, String what, Datum.Kind kind, double value) {
    return new Datum(Group.CLEARANCE, joint.label(), what, kind, value);
  }

  /** A shoulder that presses holds another open, and counts there; a cheek needs room for glue. */
  private double least(Joint joint, JointDetail.SideGap gap) {
    if (gap.side().equals("shoulder")) {
      return -NEVER;
    }
    return isGluedCheek(joint, gap)
        ? Limit.of(chair.design(), FitLimit.CHEEK_GAP_LEAST, joint).value() - spare(joint)
        : -Tolerances.contact();
  }

  private double most(Joint joint, JointDetail.SideGap gap) {
    if (gap.side().equals("shoulder")) {
      return Limit.of(chair.design(), FitLimit.SHOULDER_GAP, joint).value() + Tolerances.contact();
    }
    return isGluedCheek(joint, gap)
        ? Limit.of(chair.design(), FitLimit.CHEEK_GAP_MOST, joint).value() + spare(joint)
        : NEVER;
  }

  private static boolean isGluedCheek(Joint joint, JointDetail.SideGap gap) {
    Kind kind = joint.plan().kind();
    boolean cheek = gap.side().endsWith("cheek") || gap.side().equals("all round");
    return cheek && kind != Kind.GROOVE && kind != Kind.NOTCH;
  }

  /** Round tenons and holes are made of facets, which may stand against each other by so much. */
  private static double spare(Joint joint) {
    double facets = joint.plan().diameter().isPresent() ? Tolerances.facet() : 0;
    return facets + Tolerances.contact();
  }
}
