package dryfit.shop.setting;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.JointPlan;
import dryfit.document.PartCuts.Foot;
import dryfit.document.PartPlan;
import dryfit.fit.FitReport;
import dryfit.fit.JointAngles;
import dryfit.fit.JointFit;
import dryfit.fit.ShoulderAngles;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.BenchAngle;
import dryfit.shop.BlockEnds;
import dryfit.shop.FootEnd;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What is set for one part, and for no one joint of it. */
final class PartSettings {
  /** Sides of a foot that differ by less than this are as long to a maker, mm. */
  private static final double EVEN = 0.05;

  private final FitReport report;
  private final Bench bench;
  private final int index;
  private final Chair chair;
  private final Part part;

  PartSettings(FitReport report, Bench bench, int index) {
    this.report = report;
    this.bench = bench;
    this.index = index;
    this.chair = report.chair();
    this.part = chair.parts().get(index);
  }

  void addTo(List<Setting> all) {
    List<Reading> blank = blank();
    if (!blank.isEmpty()) {
      all.add(of(Tool.BLANK, "length", blank, blankNotes()));
    }
    part.plan().common().cuts().foot().ifPresent(foot -> foot(all, foot));
    FootEnd.head(part).ifPresent(level -> head(all, level));
    BlockEnds.of(part).ifPresent(ends -> block(all, ends));
    new Spacers(chair, index).between().forEach(r -> all.add(r.setting(index, part.hand())));
    new PatternCut(chair, part, bench).settings().forEach(p -> all.add(p.setting(index)));
  }

  private Setting of(Tool tool, String where, List<Reading> readings, List<String> notes) {
    return new Setting(tool, index, OptionalInt.empty(), part.hand(), where, readings, notes);
  }

  /** An end that is cut level, unless that is square. */
  private Optional<ShoulderAngles> level(Plane cut, boolean atStart) {
    double along = cut.along(part.frame().origin(), part.frame().x());
    if (Double.isNaN(along)) {
      return Optional.empty();
    }
    Vec3 at = part.frame().origin().plus(part.frame().x().times(along));
    return Optional.of(ShoulderAngles.ofEnd(chair, part, cut, at, atStart))
        .filter(angles -> !angles.offSquare().isSquare());
  }

  private void head(List<Setting> all, Plane cut) {
    level(cut, part.frame().x().z() < 0)
        .ifPresent(
            angles -> {
              List<Reading> bevels = Shoulders.bevels(angles);
              all.add(of(Tool.BEVEL_GAUGE, "top", bevels, Shoulders.longest(angles)));
              angles
                  .saw()
                  .ifPresent(saw -> all.add(of(Tool.SAW, "top", Shoulders.saw(saw), List.of())));
            });
  }

  private void foot(List<Setting> all, Foot foot) {
    Plane floor = new Plane(Vec3.UP.negated(), -foot.z());
    Optional<ShoulderAngles> found = level(floor, part.frame().x().z() > 0);
    if (found.isEmpty()) {
      return;
    }
    ShoulderAngles angles = found.get();
    List<Reading> readings = new ArrayList<>(Shoulders.bevels(angles));
    FootEnd.of(chair, index)
        .ifPresent(
            end -> {
              boolean even = end.longSide() - end.shortSide() < EVEN;
              readings.add(
                  new Reading.Size(
                      "along the part, foot to top" + (even ? "" : ", long side"),
                      end.longSide(),
                      ""));
              if (!even) {
                readings.add(new Reading.Size("and on the short side", end.shortSide(), ""));
              }
            });
    all.add(of(Tool.BEVEL_GAUGE, "foot", readings, Shoulders.longest(angles)));
    angles.saw().ifPresent(saw -> all.add(of(Tool.SAW, "foot", Shoulders.saw(saw), List.of())));
  }

  private void block(List<Setting> all, BlockEnds ends) {
    PartPlan.CornerBlock plan = (PartPlan.CornerBlock) part.plan();
    List<Reading> bevels = new ArrayList<>();
    List<Reading> saws = new ArrayList<>();
    end(bevels, saws, plan.first().part(), ends.first());
    end(bevels, saws, plan.second().part(), ends.second());
    all.add(of(Tool.BEVEL_GAUGE, "ends", bevels, List.of()));
    all.add(of(Tool.SAW, "ends", saws, List.of()));
  }

  private static void end(
      List<Reading> bevels, List<Reading> saws, String rail, BlockEnds.End end) {
    BenchAngle angle = BenchAngle.of(end.offSquare());
    String what = "end at " + rail;
    bevels.add(new Reading.Bevel(what, angle, "the long face", "the short face", ""));
    BenchAngle tilt = BenchAngle.of(end.tilt());
    saws.add(new Reading.Scale(what + ", mitre gauge", angle, ""));
    saws.add(
        tilt.isSquare()
            ? new Reading.Said("blade", "square")
            : new Reading.Scale("blade tilt", tilt, ""));
  }

  /** What is left on the length of a part whose ends go in, are coped, or are tried and trimmed. */
  private List<Reading> blank() {
    List<Reading> ends = new ArrayList<>();
    double more = 0;
    int tried = 0;
    for (JointFit fit : report.joints()) {
      Joint joint = fit.joint();
      if (joint.tenoned() != index || joint.plan().tenon().end() == JointPlan.End.MIDDLE) {
        continue;
      }
      String end = "at the " + chair.endWord(joint) + " end";
      double goesIn = joint.tenons().isEmpty() ? 0 : joint.length();
      if (goesIn > 0) {
        ends.add(new Reading.Size("of that goes in " + end, goesIn, ""));
      }
      double cope = Coping.depth(chair, fit);
      if (cope > 0) {
        ends.add(
            new Reading.Size(
                "for coping " + end, cope, "strike the shoulder nearer to the end by this"));
      }
      // What goes in covers the coping, as far as it is as long.
      more += Math.max(0, cope - goesIn);
      tried += cope > 0 || compound(joint) ? 1 : 0;
    }
    if (ends.isEmpty()) {
      return List.of();
    }
    double net = part.blank().length();
    double fits = tried * bench.fits() * bench.eachFit();
    List<Reading> out = new ArrayList<>();
    out.add(new Reading.Size("finished, over all", net, ""));
    out.addAll(ends);
    if (fits > 0) {
      out.add(new Reading.Count("ends that are tried and trimmed", tried, ""));
      out.add(new Reading.Size("for trial fits", fits, ""));
    }
    if (more + fits > 0) {
      out.add(new Reading.Size("leave it at least", net + more + fits, "before waste for holding"));
    }
    return out;
  }

  private List<String> blankNotes() {
    return part.bend().isPresent()
        ? List.of("These are along its chord; a bent blank is longer along its curve.")
        : List.of();
  }

  /** Whether a shoulder leans both ways, so that it is found by trial. */
  private boolean compound(Joint joint) {
    return JointAngles.of(chair, joint)
        .shoulder()
        .filter(s -> s.wide().isPresent() && s.narrow().isPresent())
        .filter(s -> !s.wide().get().angle().isSquare() && !s.narrow().get().angle().isSquare())
        .isPresent();
  }
}
