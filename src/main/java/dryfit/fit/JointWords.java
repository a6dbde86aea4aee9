package dryfit.fit;

import dryfit.build.Joint;
import dryfit.document.JointPlan.Kind;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import java.util.Comparator;
import java.util.Optional;

/** Sides of a joint and places in it, in a maker's words. */
final class JointWords {
  /** Beyond this share of half its size a place is at a side and no longer in the middle. */
  private static final double ASIDE = 1 / 3.0;

  private final Joint joint;
  private final double halfThick;
  private final double halfWide;

  JointWords(Joint joint) {
    this.joint = joint;
    this.halfThick = half(joint.thick());
    this.halfWide = half(joint.wide());
  }

  /** Half the size of the tenon across a direction, about its middle line, the lesser side. */
  private double half(Vec3 direction) {
    Optional<Convex> largest =
        joint.tenon().stream().max(Comparator.comparingDouble(Convex::volume));
    if (largest.isEmpty()) {
      return 0;
    }
    Convex main = largest.get();
    double middle = joint.at().dot(direction);
    double plus = main.reach(direction) - middle;
    double minus = main.reach(direction.negated()) + middle;
    return Math.max(0, Math.min(plus, minus));
  }

  double halfThick() {
    return halfThick;
  }

  double halfWide() {
    return halfWide;
  }

  /** The side that looks a way, e.g. {@code upper edge}. */
  String side(Vec3 outward) {
    boolean cheek = Math.abs(outward.dot(joint.thick())) > Math.abs(outward.dot(joint.wide()));
    String facing = Assembly.facing(outward, joint.at());
    String word =
        switch (facing) {
          case "top" -> "upper";
          case "bottom" -> "lower";
          case "side" -> outward.x() > 0 ? "right" : "left";
          default -> facing;
        };
    return word + (cheek ? " cheek" : " edge");
  }

  /** A place beside, below or behind the tenon, e.g. {@code at the tip, upper edge}. */
  String where(Vec3 place, boolean alongDepth, boolean alongEdges, boolean alongCheeks) {
    Vec3 from = place.minus(joint.at());
    StringBuilder out = new StringBuilder();
    if (alongDepth) {
      double share = from.dot(joint.entry()) / joint.length();
      add(out, share < 1 / 3.0 ? "near the mouth" : share < 2 / 3.0 ? "half way in" : "at the tip");
    }
    boolean round = joint.plan().kind() == Kind.ROUND_TENON;
    if (round) {
      Vec3 aside = from.across(joint.entry());
      if (aside.length() > halfWide * ASIDE) {
        add(out, Assembly.facing(aside.unit(), joint.at()));
      }
      return out.toString();
    }
    if (alongEdges) {
      aside(out, from, joint.wide(), halfWide);
    }
    if (alongCheeks) {
      aside(out, from, joint.thick(), halfThick);
    }
    return out.isEmpty() ? "in the middle" : out.toString();
  }

  private void aside(StringBuilder out, Vec3 from, Vec3 direction, double half) {
    double share = from.dot(direction) / half;
    if (Math.abs(share) > ASIDE) {
      add(out, side(share > 0 ? direction : direction.negated()));
    }
  }

  private static void add(StringBuilder out, String words) {
    out.append(out.isEmpty() ? "" : ", ").append(words);
  }
}
