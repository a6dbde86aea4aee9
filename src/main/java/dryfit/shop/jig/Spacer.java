package dryfit.shop.jig;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.document.Design.JigPlan;
import dryfit.document.Hand;
import dryfit.document.JigKind;
import dryfit.geometry.Frame;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import dryfit.solid.Kernel;
import java.util.List;
import java.util.Map;

/**
 * A spacer that the document asks for: as long as two places are apart, {@code side-rail top} and
 * {@code arm underside}, measured along the way that the first word says.
 */
final class Spacer {
  private static final Map<String, Vec3> WAYS =
      Map.of(
          "top", Vec3.UP,
          "bottom", Vec3.UP.negated(),
          "underside", Vec3.UP.negated(),
          "front", Vec3.BACK.negated(),
          "back", Vec3.BACK,
          "right", Vec3.RIGHT,
          "left", Vec3.RIGHT.negated());

  private Spacer() {}

  static Jig of(Chair chair, JigPlan plan, Kernel kernel) {
    if (plan.from().isEmpty() || plan.to().isEmpty()) {
      throw new NoJig("it needs “from” and “to”");
    }
    Vec3 way = way(plan.from());
    Vec3 other = way(plan.to());
    if (Math.abs(way.dot(other)) < 0.5) {
      throw new NoJig("“" + plan.from() + "” and “" + plan.to() + "” do not face each other");
    }
    double a = reach(part(chair, plan.from()), way);
    double b = reach(part(chair, plan.to()), other);
    double from = a;
    double to = other.dot(way) > 0 ? b : -b;
    double length = Math.abs(to - from);
    if (length < Stick.LEAST) {
      throw new NoJig("the places are only " + JigLength.told(length, chair.design()) + " apart");
    }
    List<String> words =
        List.of(
            StrokeFont.plain(plan.from()),
            StrokeFont.plain(plan.to()),
            JigLength.engraved(length, chair.design()));
    Stick stick = new Stick(chair.design().printing(), kernel, length);
    Vec3 side = Math.abs(way.z()) > 0.5 ? Vec3.RIGHT : Vec3.UP;
    Frame on = Frame.of(way.times(Math.min(from, to)), way, side);
    String name = JigKind.SPACER.word() + ", " + plan.from() + " to " + plan.to();
    return new Jig(
        JigKind.SPACER,
        name,
        -1,
        -1,
        Hand.NONE,
        words,
        stick.pieces(name, words, on, way, "UP"),
        List.of(),
        List.of(
            Plane.through(on.origin(), way.negated()),
            Plane.through(on.origin().plus(way.times(length)), way)),
        List.of(),
        List.of(JigLength.told(length, chair.design()) + " long"));
  }

  private static Vec3 way(String place) {
    String word = place.substring(place.lastIndexOf(' ') + 1);
    Vec3 way = WAYS.get(word);
    if (way == null) {
      throw new NoJig(
          "“" + place + "” ends with none of top, bottom, underside, front, back, right, left");
    }
    return way;
  }

  /** The part, and of a pair that hand which is named, or the right one. */
  private static Part part(Chair chair, String place) {
    String[] words = place.split(" ", -1);
    List<Part> named = chair.parts().stream().filter(p -> p.name().equals(words[0])).toList();
    if (named.isEmpty()) {
      throw new NoJig("no part of this variant is called “" + words[0] + "”");
    }
    Hand wanted = place.contains(" left ") ? Hand.LEFT : Hand.RIGHT;
    return named.stream().filter(p -> p.hand() == wanted).findFirst().orElse(named.get(0));
  }

  private static double reach(Part part, Vec3 way) {
    double most = Double.NEGATIVE_INFINITY;
    for (Convex cell : part.placedCells()) {
      most = Math.max(most, cell.reach(way));
    }
    return most;
  }
}
