package dryfit.shop;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.PartCuts.Foot;
import dryfit.geometry.EndCut;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The foot of a part that is cut to the floor.
 *
 * @param longSide from the foot to the shoulder or end at the top, parallel to the part's middle
 *     line, where that is longest, mm
 * @param shortSide where it is shortest, mm
 * @param cut the foot's angles; the wide faces are those across the part's thickness
 */
public record FootEnd(double longSide, double shortSide, EndCut cut) {

  /** The foot of a part, if it is cut to the floor. */
  public static Optional<FootEnd> of(Chair chair, int part) {
    return chair.parts().get(part).plan().common().cuts().foot().map(foot -> of(chair, part, foot));
  }

  /** Where the upper end of a part is cut level, chair space. */
  public static Optional<Plane> head(Part part) {
    double top =
        part.bodyCells().stream()
            .mapToDouble(c -> c.placed(part.frame()).reach(Vec3.UP))
            .max()
            .orElse(0);
    return part.plan().common().cuts().head().map(h -> new Plane(Vec3.UP, h.z().orElse(top)));
  }

  private static FootEnd of(Chair chair, int index, Foot foot) {
    Part part = chair.parts().get(index);
    Plane floor = part.frame().local(new Plane(Vec3.UP.negated(), -foot.z()));
    boolean footAtStart = floor.normal().x() < 0;
    Plane top = otherEnd(chair, index, footAtStart);
    List<Double> lengths = new ArrayList<>();
    for (Convex cell : part.bodyCells()) {
      for (Vec3 p : cell.points()) {
        if (Math.abs(floor.height(p)) <= Tolerances.coincident()) {
          lengths.add(Math.abs(top.along(p, Vec3.RIGHT)));
        }
      }
    }
    return new FootEnd(
        lengths.stream().mapToDouble(d -> d).max().orElse(0),
        lengths.stream().mapToDouble(d -> d).min().orElse(0),
        new EndCut(floor.normal()));
  }

  /** A head that is cut level, or the shoulder of the joint at the top; else a square end. */
  private static Plane otherEnd(Chair chair, int index, boolean footAtStart) {
    Part part = chair.parts().get(index);
    Optional<Plane> head = head(part);
    if (head.isPresent()) {
      return part.frame().local(head.get());
    }
    for (Joint joint : chair.joints()) {
      if (joint.tenoned() == index && joint.atStart() != footAtStart) {
        return part.frame().local(joint.mouth());
      }
    }
    Vec3 out = footAtStart ? Vec3.RIGHT : Vec3.RIGHT.negated();
    double reach = part.bodyCells().stream().mapToDouble(c -> c.reach(out)).max().orElse(0);
    return new Plane(out, reach);
  }
}
