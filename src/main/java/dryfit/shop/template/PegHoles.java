package dryfit.shop.template;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.document.PartPlan.Peg;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * Where pegs are bored through a part. A hole that one looks into is a circle as wide as its peg;
 * one that is bored from an edge of what is seen lies dashed in the wood. The hole in a tenon is
 * marked through the mortise at the bench and is not drawn.
 */
final class PegHoles {
  private static final int SIDES = 48;

  private PegHoles() {}

  /**
   * @param outline of the part on that face
   */
  static List<Mark> of(Chair chair, Face face, Region outline) {
    List<Mark> out = new ArrayList<>();
    Part part = face.part();
    int index = chair.parts().indexOf(part);
    for (Part pin : chair.parts()) {
      if (pin.plan() instanceof Peg peg && isThrough(chair, peg, pin, index)) {
        Vec3 driven = part.frame().localDirection(pin.frame().x());
        Vec3 head = part.frame().local(pin.frame().origin());
        String about = pin.name() + ", peg";
        if (Math.abs(driven.dot(face.out())) > Math.sqrt(0.5)) {
          List<Vec2> circle = circle(face, head, driven, peg.diameter() / 2);
          out.add(new Mark.Mouth(about, List.of(circle), driven.dot(face.out()) < 0));
        } else {
          List<List<Vec2>> cells =
              pin.placedCells().stream()
                  .map(c -> face.flat(c.localTo(part.frame()).points()))
                  .toList();
          Region inside = outline.without(outline.without(Region.ofHulls(cells)));
          if (!inside.isEmpty()) {
            out.add(new Mark.Inside(about, inside.cleaned().loops()));
          }
        }
      }
    }
    return out;
  }

  private static boolean isThrough(Chair chair, Peg peg, Part pin, int index) {
    return chair.joints().stream()
        .anyMatch(
            j ->
                j.mortised() == index
                    && j.name().equals(peg.place().joint())
                    && chair.parts().get(index).hand() == pin.hand());
  }

  private static List<Vec2> circle(Face face, Vec3 at, Vec3 axis, double radius) {
    Vec3 u = (Math.abs(axis.x()) < 0.6 ? Vec3.RIGHT : Vec3.BACK).across(axis).unit();
    Vec3 v = axis.cross(u);
    List<Vec3> ring = new ArrayList<>();
    for (int k = 0; k < SIDES; k++) {
      double a = 2 * Math.PI * k / SIDES;
      ring.add(at.plus(u.times(radius * Math.cos(a))).plus(v.times(radius * Math.sin(a))));
    }
    return face.flat(ring);
  }
}
