package dryfit.shop.setting;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.document.PartPlan;
import dryfit.document.PartPlan.Placement;
import dryfit.fit.PartSides;
import dryfit.geometry.Vec3;
import dryfit.shop.setting.Bench.Bearing;
import dryfit.shop.setting.Bench.Follower;
import dryfit.shop.setting.Outlines.Stretch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** How a sawn part is brought to its outline with a bit that follows a template. */
final class PatternCut {
  private static final List<String> PREFERRED = List.of("outside", "front", "top", "right");

  /** What takes more passes than this is not cut with a router (common practice, no source). */
  private static final int MOST_PASSES = 3;

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
    Optional<Follower> shank = longest(Bearing.SHANK);
    Optional<Follower> through =
        longest(Bearing.TIP).filter(b -> Passes.reaches(b.cutter(), thick));
    List<Reading> out = new ArrayList<>();
    List<String> notes = new ArrayList<>();
    out.add(new Reading.Said("template", "on the " + word + " face"));
    out.add(new Reading.Size("wood to cut through", thick, ""));
    boolean cuts = true;
    if (shank.isPresent()) {
      cuts = passes(out, notes, Passes.of(thick, shank.get().cutter()));
    } else if (through.isPresent()) {
      out.add(new Reading.Count("passes", 1, "bearing at the tip, on the template below"));
    } else {
      cuts = false;
      out.add(new Reading.Said("passes", "none"));
      notes.add(
          "A bit with its bearing at the tip needs a cutter as long as the wood is thick; take one"
              + " with its bearing at the shank.");
    }
    List<Stretch> stretches = Outlines.of(chair, part, face);
    stretches.forEach(s -> out.add(stretch(s, word, other)));
    if (cuts) {
      setUp(notes, stretches, word, other, shank.isPresent(), through.isPresent());
    }
    return new Cut(part, "outline in " + view + " view", out, notes);
  }

  /** Whether a router does it at all. */
  private static boolean passes(List<Reading> out, List<String> notes, Passes passes) {
    int count = passes.all().size();
    if (count > MOST_PASSES) {
      out.add(new Reading.Said("passes", "none, too thick for these bits"));
      notes.add(
          "Saw this outline and finish it with plane and spokeshave; the ways below hold for them"
              + " too.");
      return false;
    }
    out.add(new Reading.Count("passes", count, "bearing at the shank"));
    for (int i = 0; i < count && count > 1; i++) {
      Passes.Pass pass = passes.all().get(i);
      out.add(
          new Reading.Span(
              "pass " + (i + 1) + " cuts",
              pass.from(),
              pass.to(),
              "the face with the template",
              "its bearing runs on the " + (i == 0 ? "template" : "edge cut before")));
    }
    if (count > 1) {
      notes.add(
          "If the bit does not reach so deep, turn the part over for the rest and take a bit with"
              + " its bearing at the tip, which runs on the edge cut before. What was downhill is"
              + " then uphill: take thin cuts.");
    }
    return true;
  }

  private static Reading stretch(Stretch s, String word, String other) {
    return new Reading.Span(
        s.side() + " edge",
        s.from(),
        s.to(),
        "the " + s.origin(),
        s.way().isEmpty()
            ? "either way, it runs along the grain"
            : "towards the "
                + s.way()
                + ", router over the "
                + (s.fromTemplate() ? word : other)
                + " face");
  }

  /** Where the template is while the router is over each face. */
  private static void setUp(
      List<String> notes,
      List<Stretch> stretches,
      String word,
      String other,
      boolean shank,
      boolean through) {
    boolean onWord = stretches.stream().anyMatch(s -> !s.way().isEmpty() && s.fromTemplate());
    boolean onOther = stretches.stream().anyMatch(s -> !s.way().isEmpty() && !s.fromTemplate());
    String beneath = "template beneath on the %s face, bearing at the tip.";
    if (onWord) {
      notes.add(
          "Router over the "
              + word
              + " face: "
              + (shank
                  ? "template up, bearing at the shank."
                  : "move the template, " + beneath.formatted(other)));
    }
    if (onOther) {
      notes.add(
          "Router over the "
              + other
              + " face: "
              + (through
                  ? beneath.formatted(word)
                  : "move the template to that face, bearing at the shank."));
    }
    notes.add(
        "With the router in the hand go round against the clock, seen from above. In a router table"
            + " the part lies the other way up, and the cutter goes round it with the clock.");
  }

  private Optional<Follower> longest(Bearing bearing) {
    return bench.followers().stream()
        .filter(b -> b.bearing() == bearing)
        .max(Comparator.comparingDouble(Follower::cutter));
  }
}
