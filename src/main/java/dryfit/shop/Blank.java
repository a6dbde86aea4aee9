package dryfit.shop;

import dryfit.build.Part;
import dryfit.document.BoardsPlan.Allowance;
import dryfit.document.PartCuts.Oversize;
import dryfit.geometry.Vec3;
import java.util.List;

/**
 * The squared piece that one part is cut from, as it lies in a board: its length along the grain,
 * its thickness square to the face of the board.
 *
 * @param part the part
 * @param along unit direction of the part's own frame that lies along the board: that of its axes
 *     in the face that is nearest to its grain
 * @param up that which is square to the face of the board: its thinner way, y or z
 * @param finished as small as the part allows
 * @param rough with what is allowed for sawing and planing
 */
public record Blank(Part part, Vec3 along, Vec3 up, Size finished, Size rough) {

  /** Length along the board, width across it, thickness; mm. */
  public record Size(double length, double width, double thickness) {
    /** Cubic millimetres. */
    public double volume() {
      return length * width * thickness;
    }
  }

  /** The blank of a part; its own oversize comes before what is allowed for all. */
  public static Blank of(Part part, Allowance allow) {
    Vec3 net = part.blank().net().size();
    // The thinner way; of a square section the thickness.
    boolean flat = net.z() <= net.y();
    Vec3 up = flat ? AXES.get(2) : AXES.get(1);
    Vec3 other = flat ? AXES.get(1) : AXES.get(2);
    boolean endwise = Math.abs(part.grain().x()) >= Math.abs(part.grain().dot(other));
    Vec3 along = endwise ? AXES.get(0) : other;
    Vec3 across = endwise ? other : AXES.get(0);
    Size finished = new Size(net.dot(along), net.dot(across), net.dot(up));
    Oversize own = part.plan().common().cuts().oversize();
    Vec3 rough = part.blank().rough().size();
    return new Blank(
        part,
        along,
        up,
        finished,
        own.sides() > 0 || own.ends() > 0
            ? new Size(rough.dot(along), rough.dot(across), rough.dot(up))
            : new Size(
                finished.length() + allow.length(),
                finished.width() + allow.width(),
                finished.thickness() + allow.thickness()));
  }

  private static final List<Vec3> AXES =
      List.of(new Vec3(1, 0, 0), new Vec3(0, 1, 0), new Vec3(0, 0, 1));
}
