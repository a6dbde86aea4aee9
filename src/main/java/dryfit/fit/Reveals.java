package dryfit.fit;

import dryfit.build.Joint;
import dryfit.document.PartPlan;
import dryfit.fit.Assembly.Placed;
import dryfit.fit.JointDetail.Reveal;
import dryfit.fit.JointDetail.Setback;
import dryfit.geometry.Rays;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far the faces of a part stand back from those of the part it meets, at the shoulder: on a
 * line along the mouth through the middle of the joint, from where it leaves the one to where it
 * leaves the other.
 */
final class Reveals {
  private Reveals() {}

  /** How far from the mouth each part is looked at, mm: outside any rounding of the mouth's rim. */
  private static final double ASIDE = 0.5;

  static Optional<Reveal> of(Joint joint, Placed tenoned, Placed mortised) {
    Vec3 n = joint.mouth().normal();
    List<Setback> sides = new ArrayList<>();
    Vec3 thickness = tenoned.part().frameNear(joint.at()).z();
    Vec3 across = thickness.across(n);
    Vec3 along = mortised.part().lengthNear(joint.at()).across(n);
    boolean uprightPart = Math.abs(thickness.dot(n)) > 0.7;
    if (mortised.part().plan() instanceof PartPlan.Panel) {
      return Optional.empty();
    }
    // Along the mortised part there is no face to stand back from.
    boolean intoAnEnd = along.length() < 0.5;
    if (uprightPart
        || intoAnEnd
        || across.length() < 0.5
        || Math.abs(across.unit().dot(along.unit())) > 0.7) {
      return Optional.empty();
    }
    for (int sign = 1; sign >= -1; sign -= 2) {
      Vec3 way = across.unit().times(sign);
      OptionalDouble own = last(tenoned, joint.at().plus(n.times(ASIDE)), way);
      OptionalDouble other = last(mortised, joint.at().minus(n.times(ASIDE)), way);
      if (own.isPresent() && other.isPresent()) {
        sides.add(
            new Setback(
                Assembly.facing(way, joint.at()), other.getAsDouble() - own.getAsDouble(), way));
      }
    }
    sides.sort(Comparator.comparing(Setback::face));
    return sides.isEmpty() ? Optional.empty() : Optional.of(new Reveal(sides));
  }

  /** Where a line from inside a part leaves it for good. */
  private static OptionalDouble last(Placed placed, Vec3 from, Vec3 way) {
    List<Rays.Hit> hits = placed.rays().hits(from, way);
    return hits.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(hits.get(hits.size() - 1).distance());
  }
}
