package dryfit.fit.order;

import dryfit.build.Joint;
import java.util.List;

/**
 * Parts that cannot be brought together: along every direction looked at each holds another.
 *
 * @param parts as few as still hold each other
 * @param joints between them
 * @param collide pairs of them that claim the same wood where they stand, so that no move can help
 * @param remedies changes of one joint each that would free them
 */
public record Stuck(
    List<Integer> parts, List<Joint> joints, List<List<Integer>> collide, List<Remedy> remedies) {
  public Stuck {
    parts = List.copyOf(parts);
    joints = List.copyOf(joints);
    collide = List.copyOf(collide);
    remedies = List.copyOf(remedies);
  }
}
