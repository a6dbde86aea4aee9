package dryfit.fit;

import dryfit.build.Joint;
import dryfit.build.Tenon;
import dryfit.fit.Assembly.Placed;
import dryfit.geometry.Plane;
import dryfit.geometry.Rays;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What faces a tenon: from places inside it a line is drawn outward; where it leaves the tenon and
 * where it comes into the other part are two measured places, and the gap is what lies between.
 * Where the other part's wood is met first the gap is negative. Where the line runs into another
 * mortise, there is no wall to measure to.
 *
 * <p>Belongs to one thread at a time.
 */
final class Facing {
  /** Beyond this a wall no longer belongs to the joint, mm. */
  private static final double FAR = 25;

  /** Cosine of the most that a face of a tenon may lean from the direction it is measured in. */
  private static final double LOOKS_THAT_WAY = 0.9;

  private final Joint joint;
  private final Placed tenoned;
  private final Placed mortised;

  /** Places around all of the tenon. */
  private final List<Vec3> around;

  private final List<Way> ways = new ArrayList<>();

  /** Looks one way into both parts. */
  private record Way(Vec3 direction, Rays.Beam own, Rays.Beam other) {}

  /**
   * @param tenoned the part whose wood the tenon is
   */
  Facing(Joint joint, Tenon tenon, Placed tenoned, Placed mortised) {
    this.joint = joint;
    this.tenoned = tenoned;
    this.mortised = mortised;
    this.around = tenon.wood().stream().flatMap(c -> c.points().stream()).toList();
  }

  /** The gap met on the way from a place inside the tenon; empty if nothing faces it there. */
  OptionalDouble gap(Vec3 from, Vec3 direction) {
    // What is met first says which side of the surface the place is on: a way out, or a way in.
    Way way = way(direction);
    Rays.Hit own =
        (way == null ? tenoned.rays().first(from, direction) : way.own().first(from)).orElse(null);
    if (own == null || own.entering() || !ownFace(own, direction)) {
      return OptionalDouble.empty();
    }
    Rays.Hit wood = wood(way, from, direction);
    if (wood == null) {
      return OptionalDouble.empty();
    }
    if (!wood.entering()) {
      return OptionalDouble.of(-own.distance());
    }
    double gap = wood.distance() - own.distance();
    Vec3 met = from.plus(direction.times(wood.distance()));
    return gap <= FAR && ownWall(wood, met, direction)
        ? OptionalDouble.of(gap)
        : OptionalDouble.empty();
  }

  /** Whether a place inside the tenon is inside the other part's wood too. */
  boolean isInWood(Vec3 place, Vec3 direction) {
    Rays.Hit wood = wood(way(direction), place, direction);
    return wood != null && !wood.entering();
  }

  private Rays.Hit wood(Way way, Vec3 from, Vec3 direction) {
    return (way == null ? mortised.rays().first(from, direction) : way.other().first(from))
        .orElse(null);
  }

  /** Looks this way, made once; null for what is round, which looks each way a few times only. */
  private Way way(Vec3 direction) {
    if (joint.plan().diameter().isPresent() || around.isEmpty()) {
      return null;
    }
    for (Way known : ways) {
      if (known.direction().equals(direction)) {
        return known;
      }
    }
    Way way =
        new Way(
            direction,
            tenoned.rays().beam(around, direction),
            mortised.rays().beam(around, direction));
    ways.add(way);
    return way;
  }

  /**
   * Whether the line leaves the tenon by a face that looks its way: not by a mitred tip, nor into a
   * groove that something else has cut.
   */
  private boolean ownFace(Rays.Hit hit, Vec3 direction) {
    String origin = tenoned.mesh().origin(hit.face());
    boolean own = origin.equals(joint.plan().pointer()) || origin.equals(tenoned.part().pointer());
    return own && tenoned.mesh().normal(hit.face()).dot(direction) > LOOKS_THAT_WAY;
  }

  /**
   * Whether a wall is that of the joint's own mortise. Where another mortise runs on in the same
   * plane the two walls are one face, which may have the other's name.
   */
  private boolean ownWall(Rays.Hit hit, Vec3 met, Vec3 direction) {
    String origin = mortised.mesh().origin(hit.face());
    return origin.equals(joint.plan().pointer())
        || !origin.equals(mortised.part().pointer())
            && joint.mortise().stream().anyMatch(cell -> isOnSide(cell, met, direction));
  }

  private static boolean isOnSide(Convex cell, Vec3 place, Vec3 direction) {
    boolean on = false;
    for (Plane plane : cell.planes()) {
      double height = plane.height(place);
      if (height > Tolerances.contact()) {
        return false;
      }
      on |= height >= -Tolerances.contact() && plane.normal().dot(direction) > LOOKS_THAT_WAY;
    }
    return on;
  }
}
