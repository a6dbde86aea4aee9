package dryfit.shop.template;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.document.Hand;
import dryfit.document.PartPlan;
import dryfit.geometry.Vec3;
import dryfit.shop.template.Template.Serves;
import dryfit.shop.template.Template.Shows;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The templates of a chair's parts. */
public final class TemplateMaker {
  private final Chair chair;
  private final Wanted wanted;

  /** For a chair, as they are wanted. */
  public TemplateMaker(Chair chair, Wanted wanted) {
    this.chair = chair;
    this.wanted = wanted;
  }

  /** What comes of one drawing. */
  public sealed interface Made {
    /** It is drawn. */
    record Ready(Template template) implements Made {}

    /** It cannot be drawn, and why. */
    record Without(String part, String because) implements Made {}
  }

  /** Names of the parts that are shaped, in their order: those that need a template. */
  public static List<String> shaped(Chair chair) {
    return chair.parts().stream()
        .filter(p -> !p.isPiece() && isShaped(p.plan()))
        .map(Part::name)
        .distinct()
        .toList();
  }

  private static boolean isShaped(PartPlan plan) {
    return plan instanceof PartPlan.Sawn
        || plan instanceof PartPlan.Bent
        || plan instanceof PartPlan.Seat
        || plan instanceof PartPlan.Splat
        || plan instanceof PartPlan.Panel
        || plan instanceof PartPlan.Turned;
  }

  /** The drawings of a part: one face of a board or a turning, two of all else. */
  public List<Made> of(String name) {
    List<Part> parts =
        chair.parts().stream().filter(p -> !p.isPiece() && p.name().equals(name)).toList();
    List<Made> out = new ArrayList<>();
    for (Vec3 axis : axes(parts.get(0).plan())) {
      if (parts.size() < 2) {
        out.add(made(parts.get(0), axis, Serves.ONE));
      } else {
        pair(parts, axis, out);
      }
    }
    return out;
  }

  private static List<Vec3> axes(PartPlan plan) {
    boolean one =
        plan instanceof PartPlan.Seat
            || plan instanceof PartPlan.Panel
            || plan instanceof PartPlan.Splat splat && splat.bow().isEmpty()
            || plan instanceof PartPlan.Turned
            || plan instanceof PartPlan.Straight s && s.section() instanceof PartPlan.Section.Round;
    return one ? List.of(Face.THICKNESS) : List.of(Face.THICKNESS, Face.WIDTH);
  }

  private void pair(List<Part> parts, Vec3 axis, List<Made> out) {
    Part right = hand(parts, Hand.RIGHT);
    Part left = hand(parts, Hand.LEFT);
    switch (wanted.hand()) {
      case RIGHT -> out.add(made(right, axis, Serves.THIS_HAND));
      case LEFT -> out.add(made(left, axis, Serves.THIS_HAND));
      case BOTH -> {
        Made one = made(right, axis, Serves.BOTH_HANDS);
        Made other = made(left, axis, Serves.THIS_HAND);
        if (!(one instanceof Made.Ready r) || !(other instanceof Made.Ready l)) {
          out.add(one);
        } else if (mirror(r.template(), l.template())) {
          out.add(one);
        } else {
          out.add(made(right, axis, Serves.THIS_HAND));
          out.add(other);
        }
      }
    }
  }

  private static Part hand(List<Part> parts, Hand hand) {
    return parts.stream().filter(p -> p.hand() == hand).findFirst().orElseThrow();
  }

  /** Whether one is the other turned over: its outline, and as many marks of each kind. */
  private static boolean mirror(Template one, Template other) {
    Region mirrored = region(other).turnedOver();
    boolean same =
        Drawer.isSame(region(one), mirrored) || Drawer.isSame(region(one), mirrored.turnedRound());
    return same && kinds(one).equals(kinds(other));
  }

  private static List<String> kinds(Template t) {
    return t.marks().stream()
        .filter(m -> !(m instanceof Mark.Crease))
        .map(m -> m.getClass().getSimpleName())
        .sorted()
        .toList();
  }

  private static Region region(Template t) {
    Region out = Region.of(t.outline().get(0));
    for (int i = 1; i < t.outline().size(); i++) {
      out = out.without(Region.of(t.outline().get(i)));
    }
    return out;
  }

  private Made made(Part part, Vec3 axis, Serves serves) {
    Face face = Face.shown(part, axis);
    try {
      Template t = new Drawer(chair, face, wanted).drawn(shows(part, face));
      return new Made.Ready(
          new Template(
              t.part(),
              serves,
              t.shows(),
              t.looks(),
              t.up(),
              t.outline(),
              t.edge(),
              t.line(),
              t.width(),
              t.low(),
              t.high(),
              t.datum(),
              t.datumLooks(),
              t.marks(),
              t.sits()));
    } catch (NoTemplate e) {
      return new Made.Without(part.label(), e.getMessage());
    }
  }

  private static Shows shows(Part part, Face face) {
    if (part.plan() instanceof PartPlan.Turned
        || part.plan() instanceof PartPlan.Straight s
            && s.section() instanceof PartPlan.Section.Round) {
      return Shows.TURNING;
    }
    if (part.plan() instanceof PartPlan.Sawn sawn
        && Stream.of(sawn.side(), sawn.front(), sawn.plan()).filter(Optional::isPresent).count()
            == 1
        && !Drawer.hasFlatFaces(face)) {
      return Shows.MARKS;
    }
    return isBentAsSeen(part, face) ? Shows.BEND : Shows.OUTLINE;
  }

  /** A bent part shows its bend where its middle line leaves the straight line. */
  private static boolean isBentAsSeen(Part part, Face face) {
    Optional<Double> most =
        part.bend()
            .filter(b -> Double.isFinite(b.radius()))
            .map(
                b ->
                    b.line().stream()
                        .mapToDouble(p -> Math.abs(p.dot(face.across())))
                        .max()
                        .orElse(0));
    Optional<Double> other =
        part.bend()
            .map(b -> b.line().stream().mapToDouble(p -> Math.abs(p.dot(face.out()))).max())
            .map(m -> m.orElse(0));
    return most.isPresent() && most.get() > other.orElse(0.0);
  }
}
