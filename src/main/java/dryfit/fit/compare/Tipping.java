package dryfit.fit.compare;

import dryfit.fit.ChairMeasure.Foot;
import dryfit.fit.ChairMeasure.Stance;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How far an empty chair may be leaned before it falls: its weight then stands over the line
 * through two of its feet.
 *
 * @param way which way it falls
 * @param angle below zero if it falls by itself, radians
 */
record Tipping(String way, double angle) {

  /** One entry for each edge of the outline of the feet, the easiest way first. */
  static List<Tipping> of(Stance stance) {
    Vec3 up = stance.up();
    List<Vec3> feet = stance.feet().stream().map(Foot::at).toList();
    List<Tipping> out = new ArrayList<>();
    for (int i = 0; i < feet.size(); i++) {
      for (int j = i + 1; j < feet.size(); j++) {
        Vec3 a = feet.get(i);
        Vec3 edge = feet.get(j).minus(a);
        Vec3 side = up.cross(edge).unit();
        double most = feet.stream().mapToDouble(f -> f.minus(a).dot(side)).max().orElse(0);
        double least = feet.stream().mapToDouble(f -> f.minus(a).dot(side)).min().orElse(0);
        // All other feet stand on one side of an edge of the outline, within a hair.
        boolean otherSide = most <= 1 && least < -1;
        boolean thisSide = least >= -1 && most > 1;
        if (otherSide || thisSide) {
          Vec3 away = thisSide ? side.negated() : side;
          double inside = a.minus(stance.middle()).dot(away);
          double height = stance.middle().minus(a).dot(up);
          out.add(new Tipping(way(away), Math.atan2(inside, height)));
        }
      }
    }
    out.sort(Comparator.comparingDouble(Tipping::angle));
    return out;
  }

  private static String way(Vec3 out) {
    boolean foreAft = Math.abs(out.y()) >= Math.abs(out.x());
    boolean both = Math.min(Math.abs(out.x()), Math.abs(out.y())) > 0.38; // more than 22 degrees
    String y = out.y() < 0 ? "forwards" : "backwards";
    String x = out.x() < 0 ? "left" : "right";
    return both ? y + " and " + x : foreAft ? y : "to the " + x;
  }
}
