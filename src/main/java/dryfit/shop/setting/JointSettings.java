package dryfit.shop.setting;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.document.Hand;
import dryfit.document.JointPlan.Shoulder;
import dryfit.document.PartPlan;
import dryfit.fit.FitReport;
import dryfit.fit.JointAngles;
import dryfit.fit.JointDetail;
import dryfit.fit.JointFit;
import dryfit.fit.ShoulderAngles;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** What is set for one joint. */
final class JointSettings {
  /** Faces that stand back from each other by less than this are flush to a maker, mm. */
  private static final double FLUSH = 0.05;

  private final Bench bench;
  private final int index;
  private final Chair chair;
  private final Joint joint;
  private final JointFit fit;
  private final JointAngles angles;

  JointSettings(FitReport report, Bench bench, int index) {
    this.bench = bench;
    this.index = index;
    this.chair = report.chair();
    this.fit = report.joints().get(index);
    this.joint = fit.joint();
    this.angles = JointAngles.of(chair, joint);
  }

  void addTo(List<Setting> all) {
    angles
        .shoulder()
        .filter(s -> isScribed() || !s.offSquare().isSquare())
        .ifPresent(s -> shoulder(all, s));
    Mortises mortises = new Mortises(chair, fit, bench);
    String where = "mortise in " + chair.parts().get(joint.mortised()).name();
    mortises
        .mouth()
        .ifPresent(m -> all.add(onMortised(Tool.KNIFE, where, m.readings(), m.notes())));
    angles
        .mortise()
        .filter(m -> !joint.mortise().isEmpty())
        .ifPresent(
            m -> {
              if (!m.lean().isSquare()) {
                all.add(onMortised(Tool.DRILL, where, Mortises.lean(m), Mortises.leanNotes(m)));
              }
              all.add(onMortised(Tool.DEPTH, where, mortises.depth(m), mortises.depthNotes()));
            });
    List<Reading> marks = marks();
    if (!marks.isEmpty()) {
      all.add(
          onMortised(
              Tool.MARKING_GAUGE,
              "where " + name(joint.tenoned()) + " meets " + name(joint.mortised()),
              marks,
              List.of()));
    }
  }

  private String name(int part) {
    return chair.parts().get(part).name();
  }

  private Hand hand(int part) {
    return joint.hand() != Hand.NONE ? joint.hand() : chair.parts().get(part).hand();
  }

  private Setting onTenoned(Tool tool, String where, List<Reading> readings, List<String> notes) {
    return new Setting(
        tool,
        joint.tenoned(),
        OptionalInt.of(index),
        hand(joint.tenoned()),
        where,
        readings,
        notes);
  }

  private Setting onMortised(Tool tool, String where, List<Reading> readings, List<String> notes) {
    return new Setting(
        tool,
        joint.mortised(),
        OptionalInt.of(index),
        hand(joint.mortised()),
        where,
        readings,
        notes);
  }

  private boolean isScribed() {
    return joint.plan().shoulder() == Shoulder.SCRIBED;
  }

  private void shoulder(List<Setting> all, ShoulderAngles shoulder) {
    String where = name(joint.tenoned()) + ", shoulder at the " + chair.endWord(joint) + " end";
    List<String> notes = new ArrayList<>(Shoulders.longest(shoulder));
    if (chair.parts().get(joint.tenoned()).bend().isPresent()) {
      notes.add(
          "It is bent: hold the stock of the gauge to it close to the shoulder, not along its"
              + " chord.");
    }
    List<Reading> bevels = new ArrayList<>(Shoulders.bevels(shoulder));
    if (isScribed()) {
      double cope = Coping.depth(chair, fit);
      if (cope > 0) {
        bevels.add(
            new Reading.Size("coping", cope, "how far it reaches beyond the line at its deepest"));
      }
      notes.add(
          "Scribed to "
              + name(joint.mortised())
              + ": the bevel strikes only the line through its middle. Leave it long, scribe it to"
              + " the face and pare by trial; no flat saw cut makes it.");
    }
    all.add(onTenoned(Tool.BEVEL_GAUGE, where, bevels, notes));
    if (isScribed()) {
      return;
    }
    shoulder
        .saw()
        .ifPresent(saw -> all.add(onTenoned(Tool.SAW, where, Shoulders.saw(saw), List.of())));
  }

  /** Set-backs of faces, what stands proud, and what a peg is drawn by. */
  private List<Reading> marks() {
    List<Reading> out = new ArrayList<>();
    PartPlan mortised = chair.parts().get(joint.mortised()).plan();
    boolean board = mortised instanceof PartPlan.Seat || mortised instanceof PartPlan.Panel;
    // How far a leg stands inside the rim of a seat is where its mortise is; nobody gauges it.
    fit.detail()
        .reveal()
        .filter(reveal -> !board)
        .ifPresent(reveal -> reveal.sides().forEach(side -> out.add(setback(side))));
    if (joint.through() && joint.plan().proud() > 0) {
      out.add(new Reading.Size("tenon stands proud", joint.plan().proud(), ""));
    }
    for (PartPlan plan : chair.design().parts()) {
      if (plan instanceof PartPlan.Peg peg
          && peg.place().joint().equals(joint.name())
          && peg.offset() > 0) {
        out.add(
            new Reading.Size(
                "hole for " + peg.name() + " in the tenon",
                peg.offset(),
                "nearer to the shoulder"));
      }
    }
    return out;
  }

  private static Reading setback(JointDetail.Setback side) {
    String face = side.face() + " face";
    if (Math.abs(side.by()) < FLUSH) {
      return new Reading.Said(face, "flush");
    }
    return new Reading.Size(
        face + (side.by() > 0 ? " stands back" : " stands proud"), Math.abs(side.by()), "");
  }
}
