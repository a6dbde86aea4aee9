package dryfit.fit.loop;

import dryfit.build.Chair;
import dryfit.document.Design;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Something that may have come out other than planned.
 *
 * @param subject the part or the joint
 * @param what which size of it
 * @param angle radians if so, otherwise millimetres
 * @param effects what one millimetre or radian more of it does
 * @param off how much more than planned it was found to be; empty if it was not measured
 */
public record Cause(
    String subject, String what, boolean angle, List<Effect> effects, OptionalDouble off) {
  public Cause {
    effects = List.copyOf(effects);
  }

  /** How far off it may be either way, mm or radians. */
  public double accuracy(Chair chair) {
    Design.Accuracy accuracy = chair.design().accuracy();
    if (!angle) {
      return accuracy.length();
    }
    boolean bored =
        effects.stream()
            .map(e -> chair.joints().get(e.joint()).plan())
            .anyMatch(j -> j.diameter().isPresent());
    return bored ? accuracy.bored() : accuracy.angle();
  }

  /**
   * How what goes in moves against what it goes into.
   *
   * @param joint index in {@link dryfit.build.Chair#joints}
   */
  public record Effect(int joint, Twist each) {}
}
