package dryfit.fit.loop;

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

  /**
   * How what goes in moves against what it goes into.
   *
   * @param joint index in {@link dryfit.build.Chair#joints}
   */
  public record Effect(int joint, Twist each) {}
}
