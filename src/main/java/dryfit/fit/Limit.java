package dryfit.fit;

import dryfit.build.Joint;
import dryfit.document.Design;
import dryfit.document.FitLimit;
import dryfit.document.JointPlan.Kind;
import dryfit.document.MakerLimits.Written;
import java.util.Optional;

/**
 * What a measure is held against, and by whose word: the joint's own limit, else the chair's, else
 * the usual one.
 *
 * @param value millimetres, radians or a plain number
 */
public record Limit(double value, Source source) {

  /** The limit for the whole chair. */
  public static Limit of(Design design, FitLimit which) {
    return design.limits().of(which).map(w -> written(which, w)).orElseGet(() -> usual(which));
  }

  /** The limit at one joint. */
  public static Limit of(Design design, FitLimit which, Joint joint) {
    Optional<Written> own = design.limits().of(which, joint.name());
    if (own.isPresent()) {
      return written(which, own.get());
    }
    if (which == FitLimit.LEAST_WALL && design.limits().of(which).isEmpty()) {
      return leastWall(joint);
    }
    return of(design, which);
  }

  /** The least wall may also stand among the planned gaps. */
  private static Limit leastWall(Joint joint) {
    double wall = joint.plan().fit().leastWall();
    if (joint.plan().kind() == Kind.GROOVE) {
      Source source =
          Source.commonPractice("about an eighth of an inch of wood beside a groove")
              .of(FitLimit.LEAST_WALL);
      return new Limit(wall, source);
    }
    return wall == FitLimit.LEAST_WALL.usual()
        ? usual(FitLimit.LEAST_WALL)
        : new Limit(wall, Source.maker("fit/least-wall").of(FitLimit.LEAST_WALL));
  }

  private static Limit written(FitLimit which, Written written) {
    return new Limit(written.value(), Source.maker(written.pointer()).of(which));
  }

  private static Limit usual(FitLimit which) {
    Source source =
        which.published() ? Source.published(which.basis()) : Source.commonPractice(which.basis());
    return new Limit(which.usual(), source.of(which));
  }
}
