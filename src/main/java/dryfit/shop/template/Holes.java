package dryfit.shop.template;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.build.Tenon;
import dryfit.document.JointPlan;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;

/** What joints cut out of a part, in its own frame. */
final class Holes {
  private Holes() {}

  /** One mortise: what is cut inside the mouth, and the mouth's outline in its plane. */
  record Hole(Joint joint, List<Convex> inside, List<List<Vec3>> mouth, Plane plane, Vec3 entry) {}

  /** Those that the joints of a part cut, in the order of the joints. */
  static List<Hole> of(Chair chair, Part part) {
    List<Hole> out = new ArrayList<>();
    int index = chair.parts().indexOf(part);
    for (Joint joint : chair.joints()) {
      if (joint.mortised() == index && isCut(joint)) {
        Plane plane = part.frame().local(joint.mouth());
        Vec3 entry = part.frame().localDirection(joint.entry());
        for (Tenon tenon : joint.tenons()) {
          List<Convex> inside = new ArrayList<>();
          List<List<Vec3>> mouth = new ArrayList<>();
          for (Convex cell : tenon.hole()) {
            cell.localTo(part.frame())
                .clipped(plane)
                .ifPresent(
                    c -> {
                      inside.add(c);
                      mouth.addAll(facing(c, plane));
                    });
          }
          if (!inside.isEmpty()) {
            out.add(new Hole(joint, inside, mouth, plane, entry));
          }
        }
      }
    }
    return out;
  }

  /** A board is notched when it is sawn, so a notch belongs to its outline. */
  private static boolean isCut(Joint joint) {
    return joint.plan().kind() != JointPlan.Kind.NOTCH
        && joint.plan().kind() != JointPlan.Kind.GLUED;
  }

  /** Corners of the faces of a cell that lie in a plane. */
  private static List<List<Vec3>> facing(Convex cell, Plane plane) {
    List<List<Vec3>> out = new ArrayList<>();
    for (int f = 0; f < cell.faceCount(); f++) {
      if (cell.plane(f).normal().minus(plane.normal()).length() <= Tolerances.parallel()) {
        List<Vec3> corners = new ArrayList<>();
        for (int p : cell.faces()[f]) {
          corners.add(cell.point(p));
        }
        if (corners.stream().allMatch(p -> Math.abs(plane.height(p)) <= Tolerances.contact())) {
          out.add(corners);
        }
      }
    }
    return out;
  }

  /** What is cut inside the mouth as it is drawn on a face. */
  static Region drawn(Hole hole, Face face) {
    List<List<Vec2>> cells = hole.inside().stream().map(c -> face.flat(c.points())).toList();
    return Region.ofHulls(cells).cleaned();
  }

  /** The mouth as it is drawn on a face. */
  static Region mouth(Hole hole, Face face) {
    return Region.ofHulls(hole.mouth().stream().map(face::flat).toList()).cleaned();
  }

  /** What notches take off a part, as it is drawn on a face. */
  static Region notches(Chair chair, Part part, Face face) {
    List<List<Vec2>> cells = new ArrayList<>();
    int index = chair.parts().indexOf(part);
    for (Joint joint : chair.joints()) {
      if (joint.mortised() == index && joint.plan().kind() == JointPlan.Kind.NOTCH) {
        joint.mortise().forEach(c -> cells.add(face.flat(c.localTo(part.frame()).points())));
      }
    }
    return Region.ofHulls(cells);
  }
}
