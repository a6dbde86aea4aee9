package dryfit.build;

import dryfit.document.Design;
import dryfit.document.Hand;
import dryfit.document.JointPlan;
import dryfit.geometry.Vec3;
import java.util.List;

/** A chair of placed, finished parts and the joints between them; order follows the document. */
public record Chair(Design design, List<Part> parts, List<Joint> joints) {
  public Chair {
    parts = List.copyOf(parts);
    joints = List.copyOf(joints);
  }

  /** The same chair, its lengths told in another unit than the document's. */
  public Chair toldIn(Design.LengthUnit unit) {
    return new Chair(design.toldIn(unit), parts, joints);
  }

  /**
   * The joints that hold parts together: all but the grooves of panels, which hold nothing until
   * the frame around them is closed.
   */
  public List<Joint> holding() {
    return joints.stream().filter(j -> j.plan().kind() != JointPlan.Kind.GROOVE).toList();
  }

  /** The labels of the pieces that a joint brings with it: dowels, loose tenons, wedges. */
  public List<String> pieces(Joint joint) {
    return parts.stream()
        .filter(p -> p.isPiece() && p.pointer().equals(joint.plan().pointer()))
        .filter(p -> p.hand() == joint.hand())
        .map(Part::label)
        .toList();
  }

  /** Whether this is the second half of a joint held by pieces: the pieces in their own part. */
  public boolean isHeldByPieces(Joint joint) {
    return parts.get(joint.tenoned()).isPiece();
  }

  /**
   * The end of its part that a joint is at, in a maker's word: top, bottom, front, back; right or
   * left for a part of its own, outer or inner for one of a pair; middle if it is at no end.
   */
  public String endWord(Joint joint) {
    if (joint.plan().tenon().end() == JointPlan.End.MIDDLE) {
      return "middle";
    }
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
