package dryfit.shop.template;

import dryfit.build.Part;
import dryfit.document.Hand;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import java.util.List;

/**
 * A flat face of a part's squared block, looked at from outside: x along the part, y to the left of
 * that, mm of the part's own frame. It is turned so that what is up in the chair is up on the
 * drawing, in a view from above the back; an upright part lies with its foot to the left. The faces
 * of a mirrored pair show mirrored drawings.
 *
 * @param part whose block it is
 * @param out unit direction out of the face, own frame: plus or minus y or z
 */
record Face(Part part, Vec3 out) {
  static final Vec3 LENGTH = new Vec3(1, 0, 0);
  static final Vec3 WIDTH = new Vec3(0, 1, 0);
  static final Vec3 THICKNESS = new Vec3(0, 0, 1);

  /**
   * Of the two faces across an axis the one that is shown: top before bottom, outside before
   * inside, right before left, front before back.
   */
  static Face shown(Part part, Vec3 axis) {
    return new Face(part, preferred(part, axis) ? axis : axis.negated());
  }

  /** Whether an own direction is the one of its two senses that parts are measured from. */
  static boolean preferred(Part part, Vec3 own) {
    Vec3 d = part.frame().turn(own);
    double x = Math.abs(d.x());
    double y = Math.abs(d.y());
    double z = Math.abs(d.z());
    if (z >= x && z >= y) {
      return d.z() > 0;
    }
    if (y >= x) {
      return d.y() < 0;
    }
    return d.x() > 0 == (part.hand() != Hand.LEFT);
  }

  Vec3 across() {
    return out.cross(LENGTH);
  }

  /** A place or a direction of the own frame on the drawing. */
  Vec2 flat(Vec3 own) {
    Vec2 flat = new Vec2(own.x(), own.dot(across()));
    return isTurned() ? flat.times(-1) : flat;
  }

  /** Whether x of the drawing runs against the part. */
  private boolean isTurned() {
    Vec3 along = part.frame().x();
    if (Math.abs(along.z()) > Math.sqrt(0.5)) {
      return along.z() < 0;
    }
    Vec3 d = part.frame().turn(across());
    if (Math.abs(d.z()) >= Math.max(Math.abs(d.x()), Math.abs(d.y()))) {
      return d.z() < 0;
    }
    return Math.abs(d.y()) > Math.abs(d.x()) && d.y() < 0;
  }

  /** Which way y of the drawing runs, chair space. */
  Vec3 up() {
    Vec3 d = part.frame().turn(across());
    return isTurned() ? d.negated() : d;
  }

  List<Vec2> flat(List<Vec3> own) {
    return own.stream().map(this::flat).toList();
  }

  /** Which way the face looks, chair space. */
  Vec3 looks() {
    return part.frame().turn(out);
  }

  /** How far the block reaches that way from the own origin. */
  double reach() {
    return Math.max(part.blank().net().low().dot(out), part.blank().net().high().dot(out));
  }

  /** The face itself. */
  Plane plane() {
    return new Plane(out, reach());
  }
}
