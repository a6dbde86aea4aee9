package dryfit.build;

import dryfit.document.Design;
import dryfit.document.Hand;
import dryfit.geometry.Vec3;
import java.util.List;

/** A chair of placed, finished parts and the joints between them; order follows the document. */
public record Chair(Design design, List<Part> parts, List<Joint> joints) {
  public Chair {
    parts = List.copyOf(parts);
    joints = List.copyOf(joints);
  }

  /**
   * The end of its part that a joint is at, in a maker's word: top, bottom, front, back; right or
   * left for a part of its own, outer or inner for one of a pair.
   */
  public String endWord(Joint joint) {
    Part part = parts.get(joint.tenoned());
    Vec3 along = part.lengthNear(joint.at());
    Vec3 out = joint.atStart() ? along.negated() : along;
    double x = Math.abs(out.x());
    double y = Math.abs(out.y());
    double z = Math.abs(out.z());
    if (z >= x && z >= y) {
      return out.z() > 0 ? "top" : "bottom";
    }
    if (y >= x) {
      return out.y() > 0 ? "back" : "front";
    }
    if (part.hand() != Hand.NONE) {
      return (out.x() > 0) == (part.hand() == Hand.RIGHT) ? "outer" : "inner";
    }
    boolean seated = design.labels() == Design.Labels.AS_SEATED;
    return out.x() > 0 != seated ? "right" : "left";
  }
}
