package dryfit.shop.setting;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.document.PartPlan;
import dryfit.document.PartPlan.Placement;
import dryfit.fit.PartSides;
import dryfit.geometry.Vec3;
import dryfit.shop.setting.Outlines.Stretch;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** How a sawn part is brought to its outline with a bit that follows a template. */
final class PatternCut {
  private static final List<String> PREFERRED = List.of("outside", "front", "top", "right");

  private final Chair chair;
  private final Part part;
  private final Bench bench;

  PatternCut(Chair chair, Part part, Bench bench) {
    this.chair = chair;
    this.part = part;
    this.bench = bench;
  }

  /** One outline of the part and how it is cut. */
  record Cut(Part of, String where, List<Reading> readings, List<String> notes) {
    Setting setting(int index) {
      return new Setting(
          Tool.FOLLOWER_BIT, index, OptionalInt.empty(), of.hand(), where, readings, notes);
    }
  }

  List<Cut> settings() {
    List<Cut> out = new ArrayList<>();
    if (bench.followers().isEmpty()) {
      return out;
    }
    if (part.plan() instanceof PartPlan.Sawn sawn) {
      boolean stands = sawn.placement() instanceof Placement.StandsAt;
      sawn.side().ifPresent(o -> out.add(cut("side", axis(stands, Vec3.RIGHT, part.frame().z()))));
      sawn.front().ifPresent(o -> out.add(cut("front", axis(stands, Vec3.BACK, part.frame().z()))));
      sawn.plan().ifPresent(o -> out.add(cut("plan", axis(stands, Vec3.UP, part.frame().y()))));
    } else if (part.plan() instanceof PartPlan.Splat) {
      out.add(cut("front", new Vec3(0, 0, 1)));
    }
    return out;
  }

  /** The part's own axis that the outline is seen along. */
  private Vec3 axis(boolean stands, Vec3 ofChair, Vec3 ofPart) {
    Vec3 seen = part.frame().localDirection(stands ? ofChair : ofPart);
    return Math.abs(seen.z()) > Math.abs(seen.y()) ? new Vec3(0, 0, 1) : new Vec3(0, 1, 0);
  }

  private Cut cut(String view, Vec3 axis) {
    PartSides sides = PartSides.of(chair, part);
    Vec3 way = part.frame().turn(axis);
    boolean keep = PREFERRED.contains(sides.nearest(way));
    Vec3 face = keep ? axis : axis.negated();
    String word = sides.nearest(part.frame().turn(face));
    String other = sides.nearest(part.frame().turn(face).negated());
    double thick = part.blank().net().size().dot(axis);
    Passes passes = Passes.of(thick, bench.followers());
    List<Reading> out = new ArrayList<>();
    out.add(new Reading.Said("template", "on the " + word + " face"));
    out.add(new Reading.Size("wood to cut through", thick, ""));
    out.add(new Reading.Count("passes", passes.all().size(), ""));
    for (int i = 0; i < passes.all().size(); i++) {
      Passes.Pass pass = passes.all().get(i);
      out.add(
          new Reading.Span(
              "pass " + (i + 1) + " cuts",
              pass.from(),
              pass.to(),
              "the " + word + " face",
              "bearing at the "
                  + pass.bit().bearing().word()
                  + ", from the "
                  + (pass.turnedOver() ? other : word)
                  + " side; it runs on the "
                  + (i == 0 ? "template" : "edge cut before")));
    }
    boolean both = bench.followers().stream().map(Bench.Follower::bearing).distinct().count() > 1;
    List<Stretch> stretches = Outlines.of(chair, part, face);
    for (Stretch s : stretches) {
      out.add(
          new Reading.Span(
              s.side() + " edge",
              s.from(),
              s.to(),
              "the " + s.origin(),
              s.way().isEmpty()
                  ? "either way: it runs along the grain"
                  : "towards the " + s.way() + (s.fromTemplate() ? ", template up" : over(both))));
    }
    return new Cut(part, "outline in " + view + " view", out, notes(passes, stretches, both));
  }

  private static String over(boolean both) {
    return both ? ", part turned over" : ", against this bit: by hand, or by the thinnest of cuts";
  }

  private List<String> notes(Passes passes, List<Stretch> stretches, boolean both) {
    List<String> notes = new ArrayList<>();
    notes.add(
        "Router in the hand, round the part against the clock, seen from above; in a router table"
            + " the part lies the other way up and goes with the clock.");
    boolean turns =
        both && stretches.stream().anyMatch(s -> !s.way().isEmpty() && !s.fromTemplate());
    if (turns) {
      notes.add(
          "Where the part is turned over, take the bit with its bearing at the tip, so that it still"
              + " runs on the template, which is then below.");
    }
    if (!passes.reaches()) {
      notes.add(
          "No bit here gets through from the sides it can be used from: the last pass needs a shank"
              + " that is long enough, or a spokeshave.");
    }
    return notes;
  }
}
