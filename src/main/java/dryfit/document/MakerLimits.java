package dryfit.document;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The limits a maker has set for a chair, and for single joints.
 *
 * @param joints by the joint's name
 */
public record MakerLimits(
    Map<FitLimit, Written> chair, Map<String, Map<FitLimit, Written>> joints) {
  /** Nothing set: the usual limits hold. */
  public static final MakerLimits NONE = new MakerLimits(Map.of(), Map.of());

  public MakerLimits {
    chair = Collections.unmodifiableMap(new LinkedHashMap<>(chair));
    joints = Collections.unmodifiableMap(new LinkedHashMap<>(joints));
  }

  /** A limit as it is written: millimetres, radians or a plain number. */
  public record Written(double value, String pointer) {}

  /** What is set for the whole chair. */
  public Optional<Written> of(FitLimit which) {
    return Optional.ofNullable(chair.get(which));
  }

  /** What is set for a joint itself. */
  public Optional<Written> of(FitLimit which, String joint) {
    return Optional.ofNullable(joints.getOrDefault(joint, Map.of()).get(which));
  }
}
