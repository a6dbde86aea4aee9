package dryfit.shop;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.EdgePlan;
import dryfit.document.JointPlan;
import dryfit.document.JointPlan.Kind;
import dryfit.document.JointPlan.Shoulder;
import dryfit.document.JointSizes;
import dryfit.document.PartCuts;
import dryfit.document.PartPlan;
import dryfit.document.PartPlan.PanelShape;
import dryfit.fit.EndSection;
import dryfit.fit.Slant;
import dryfit.geometry.EndCut;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * The order in which a part is made. Joints are cut while faces are flat, then it is shaped, then
 * its edges are eased. Two things come earlier than they would: feet are cut before heights are
 * measured from them, and what is let in whole is finish-planed before it is fitted (common
 * practice, no source).
 *
 * @param part index in {@link Chair#parts}
 */
public record Steps(int part, List<Step> steps) {
  public Steps {
    steps = List.copyOf(steps);
  }

  /** The steps of every part, in the order of the chair's parts. */
  public static List<Steps> of(Chair chair) {
    List<Steps> all = new ArrayList<>();
    for (int i = 0; i < chair.parts().size(); i++) {
      all.add(new Steps(i, new Making(chair, i).steps()));
    }
    return List.copyOf(all);
  }

  /** The making of one part. */
  private static final class Making {
    /** Less than shows in the two decimals of a degree. */
    private static final double SQUARE = Math.toRadians(0.005);

    private final Chair chair;
    private final int index;
    private final Part part;
    private final List<Step> steps = new ArrayList<>();

    Making(Chair chair, int index) {
      this.chair = chair;
      this.index = index;
      this.part = chair.parts().get(index);
    }

    List<Step> steps() {
      blank();
      steps.add(Step.of(Step.Kind.MARK, ""));
      part.bend()
          .filter(b -> Double.isFinite(b.radius()))
          .ifPresent(b -> sized(Step.Kind.BEND, "", b.length(), b.radius()));
      boolean round = MortiseSteps.isRound(part);
      if (!round) {
        foot();
        head();
      }
      if (isHoused()) {
        steps.add(Step.of(Step.Kind.FINISH_PLANE, ""));
      }
      List<Step> late = mortises();
      rebatesAndGrooves();
      if (!round) {
        tenons();
      }
      shape();
      if (round) {
        tenons();
        foot();
        head();
      }
      steps.addAll(late);
      cuts()
          .foot()
          .filter(f -> f.ease() > 0)
          .ifPresent(f -> sized(Step.Kind.EASE_FOOT, "", f.ease()));
      edges();
      return steps;
    }

    /** As the cut list has it, and as all lines are then marked on it. */
    private void blank() {
      Blank blank = Blank.of(part, chair.design().boards().allow());
      PartCuts.Oversize own = cuts().oversize();
      boolean keepsIt = own.sides() > 0 || own.ends() > 0;
      Blank.Size rough = blank.rough();
      Blank.Size squared = keepsIt ? rough : blank.finished();
      if (!rough.equals(squared)) {
        sized(Step.Kind.CUT_OUT, "", rough.length(), rough.width(), rough.thickness());
      }
      sized(Step.Kind.SQUARE, "", squared.length(), squared.width(), squared.thickness());
    }

    private void edges() {
      List<EdgePlan> edges = part.plan().common().edges();
      if (edges.isEmpty()) {
        steps.add(Step.of(Step.Kind.BREAK_EDGES, ""));
      }
      for (EdgePlan edge : edges) {
        Step.Kind kind =
            switch (edge.shape()) {
              case EASED -> Step.Kind.EASE;
              case CHAMFER -> Step.Kind.CHAMFER;
              case ROUND_OVER -> Step.Kind.ROUND_OVER;
            };
        sized(kind, EdgeWords.of(edge), edge.size());
      }
    }

    private PartCuts cuts() {
      return part.plan().common().cuts();
    }

    private void sized(Step.Kind kind, String about, Double... sizes) {
      steps.add(new Step(kind, about, "", List.of(sizes), 0));
    }

    private void foot() {
      FootEnd.of(chair, index)
          .ifPresent(
              foot ->
                  steps.add(
                      new Step(
                          Step.Kind.FOOT,
                          "",
                          "",
                          List.of(foot.longSide(), foot.shortSide()),
                          foot.cut().offSquare())));
    }

    private void head() {
      FootEnd.head(part)
          .map(level -> new EndCut(part.frame().local(level).normal()))
          .ifPresent(
              cut -> steps.add(new Step(Step.Kind.HEAD, "", "", List.of(), cut.offSquare())));
    }

    private boolean isHoused() {
      return chair.joints().stream()
          .anyMatch(j -> j.tenoned() == index && j.plan().kind() == Kind.HOUSING);
    }

    /** Those cut while the blank is square; the others are given back. */
    private List<Step> mortises() {
      List<Step> late = new ArrayList<>();
      for (Joint joint : chair.joints()) {
        if (joint.mortised() == index && isCutAsMortise(joint)) {
          Step step = MortiseSteps.of(joint, part);
          boolean square =
              step.kind() == Step.Kind.MORTISE || step.kind() == Step.Kind.MORTISE_BEFORE_SAWING;
          List<Step> when = square ? steps : late;
          if (joint.plan().sizes() instanceof JointSizes.Screwed screws) {
            when.add(pilot(joint, screws));
          } else {
            when.add(step);
            joint.plan().wedges().ifPresent(w -> when.add(flare(joint, w)));
            // Through the mortise, so not before it is there.
            when.addAll(pinHoles(joint));
          }
        }
      }
      return late;
    }

    private static Step pilot(Joint joint, JointSizes.Screwed screws) {
      return new Step(
          Step.Kind.PILOT, joint.label(), "", List.of(joint.length(), screws.pilot()), 0);
    }

    private static Step flare(Joint joint, JointSizes.Wedges wedges) {
      double by = wedges.flare().orElse(wedges.spread());
      return new Step(Step.Kind.FLARE, joint.label(), "", List.of(by), 0);
    }

    /** A panel's groove has its own step, and faces that are glued have none. */
    private static boolean isCutAsMortise(Joint joint) {
      return joint.plan().kind() != Kind.GROOVE && joint.plan().kind() != Kind.GLUED;
    }

    private List<Step> pinHoles(Joint joint) {
      return chair.design().parts().stream()
          .filter(
              plan -> plan instanceof PartPlan.Pin pin && joint.name().equals(pin.place().joint()))
          .map(plan -> Step.of(Step.Kind.PIN_HOLE, joint.label()))
          .toList();
    }

    private void rebatesAndGrooves() {
      cuts()
          .rebates()
          .forEach(r -> sized(Step.Kind.REBATE, r.opens() + " " + r.beside(), r.wide(), r.deep()));
      for (PartPlan plan : chair.design().parts()) {
        if (plan instanceof PartPlan.Panel panel
            && panel.shape() instanceof PanelShape.Fills fills
            && fills.parts().stream().anyMatch(r -> r.part().equals(part.name()))) {
          sized(Step.Kind.GROOVE, panel.name(), fills.deep());
        }
      }
    }

    private void tenons() {
      for (Joint joint : chair.joints()) {
        if (joint.tenoned() != index) {
          continue;
        }
        if (joint.plan().kind() == Kind.HOUSING) {
          sized(Step.Kind.HOUSED_END, joint.label(), joint.plan().depth().orElse(0));
        } else if (joint.plan().shoulder() != Shoulder.NONE && isCutOnTheEnd(joint)) {
          tenon(joint);
          Slant.of(chair, joint)
              .filter(slant -> !slant.leaningMortise())
              .ifPresent(
                  slant ->
                      steps.add(
                          new Step(
                              Step.Kind.SLANT,
                              joint.label(),
                              "",
                              List.of(slant.shift()),
                              slant.angle())));
        } else if (MortiseSteps.isRound(part) && isCutOnTheEnd(joint)) {
          sized(Step.Kind.TURN_END, joint.label(), joint.length());
        } else if (joint.plan().sizes() instanceof JointSizes.Screwed screws) {
          sized(
              Step.Kind.CLEARANCE, joint.label(), screws.diameter(), screws.slot(), screws.head());
        }
        joint
            .plan()
            .wedges()
            .ifPresent(
                w -> sized(Step.Kind.KERF, joint.label(), (double) w.count(), w.deep(), w.kerf()));
        for (PartPlan plan : chair.design().parts()) {
          if (plan instanceof PartPlan.Pin pin && joint.name().equals(pin.place().joint())) {
            double offset = pin instanceof PartPlan.Peg peg ? peg.offset() : 0;
            sized(Step.Kind.PIN_HOLE_IN_TENON, joint.label(), offset);
          }
        }
      }
    }

    /** A lathe turns every shoulder square; what leans or is hollow is pared off afterwards. */
    private void tenon(Joint joint) {
      double off = EndCut.of(joint.mouth().flipped(), part.frameNear(joint.at())).offSquare();
      boolean scribed = joint.plan().shoulder() == Shoulder.SCRIBED;
      if (MortiseSteps.isRound(part)) {
        Vec3 end = EndSection.of(part, joint.mouth(), joint.at(), joint.atStart()).size();
        double longer = Math.max(end.y(), end.z()) / 2 * Math.tan(off);
        sized(Step.Kind.TURN_TENON, joint.label(), Math.max(0, joint.length() - longer));
        if (!scribed && off > SQUARE) {
          steps.add(new Step(Step.Kind.PARE_SHOULDER, joint.label(), "", List.of(), off));
        }
      } else {
        steps.add(new Step(tenonKind(), joint.label(), "", List.of(joint.length()), off));
      }
      if (scribed) {
        steps.add(new Step(Step.Kind.SCRIBE, joint.label(), "", List.of(), off));
      }
    }

    private Step.Kind tenonKind() {
      return part.bend().isPresent() ? Step.Kind.TENON_ON_BENT : Step.Kind.TENON;
    }

    private boolean isCutOnTheEnd(Joint joint) {
      return switch (joint.plan().kind()) {
        case MORTISE_AND_TENON, ROUND_TENON, BRIDLE -> true;
        case LAP -> joint.plan().tenon().end() != JointPlan.End.MIDDLE;
        case HOUSING, LOOSE_TENON, DOWELS, NOTCH, SCREWED, GLUED, GROOVE -> false;
      };
    }

    private void shape() {
      PartPlan plan = part.plan();
      if (plan instanceof PartPlan.Sawn sawn) {
        List<String> views = new ArrayList<>();
        sawn.side().ifPresent(o -> views.add("side"));
        sawn.front().ifPresent(o -> views.add("front"));
        sawn.plan().ifPresent(o -> views.add("plan"));
        if (views.size() == 1) {
          steps.add(Step.of(Step.Kind.SAW, views.get(0)));
        } else {
          steps.add(Step.of(Step.Kind.SAW_FIRST, views.get(0)));
          steps.add(Step.of(Step.Kind.SAW_SECOND, views.get(1)));
        }
      } else if (plan instanceof PartPlan.Straight straight) {
        if (straight.section() instanceof PartPlan.Section.Round) {
          steps.add(Step.of(Step.Kind.TURN, ""));
        }
        straight
            .tapers()
            .forEach(
                t ->
                    sized(
                        Step.Kind.TAPER,
                        String.join(" and ", t.faces()),
                        t.from(),
                        t.to(),
                        t.leaves()));
      } else if (plan instanceof PartPlan.Turned || plan instanceof PartPlan.Peg) {
        steps.add(Step.of(Step.Kind.TURN, ""));
      } else if (plan instanceof PartPlan.CornerBlock block) {
        BlockEnds ends = BlockEnds.of(part).orElseThrow();
        steps.add(blockEnd(block.first().part(), ends.first()));
        steps.add(blockEnd(block.second().part(), ends.second()));
      } else if (plan instanceof PartPlan.Panel
          || plan instanceof PartPlan.Seat
          || plan instanceof PartPlan.Splat) {
        steps.add(Step.of(Step.Kind.SAW, "outline"));
      }
      cuts()
          .notch()
          .ifPresent(
              n ->
                  n.round().stream()
                      .filter(r -> part.isCutBy(r.pointer()))
                      .forEach(r -> sized(Step.Kind.NOTCH, r.part(), n.gap(), n.across())));
      if (plan instanceof PartPlan.Seat seat) {
        seat.hollow().ifPresent(h -> sized(Step.Kind.HOLLOW, "", h.deep()));
      }
    }

    private static Step blockEnd(String rail, BlockEnds.End end) {
      return new Step(Step.Kind.BLOCK_END, rail, "", List.of(), end.offSquare());
    }
  }
}
