package dryfit.fit;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.geometry.CrossSection;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A joint as if sawn through along its tenon: true outlines of all parts there, from the finished
 * solids, in millimetres of a sheet. The mortised part is on the left, y is up.
 *
 * @param title what is seen
 * @param lie where up is on the sheet, or what lies at its top, of the chair as it stands
 * @param cuts the parts that the saw meets near the joint
 * @param gaps where gaps were measured that show in this sheet
 * @param wall the least wood left beside the mortise of all that shows its full width in this sheet
 * @param sheet the plane of the saw cut, chair space: x to the right, y up, z to the eye
 * @param low least x and y of what matters
 * @param high greatest x and y
 */
public record JointSection(
    String title,
    String lie,
    List<Cut> cuts,
    List<Gap> gaps,
    Optional<Wall> wall,
    Frame sheet,
    Vec2 low,
    Vec2 high) {
  /** Up shows on a sheet that stands steeper than this; the sine of 45 degrees. */
  private static final double STEEP = Math.sqrt(0.5);

  /** Both ends of a wall are seen on an outline of this sheet, to within so much, mm. */
  private static final double SEEN = 0.5;

  public JointSection {
    cuts = List.copyOf(cuts);
    gaps = List.copyOf(gaps);
  }

  /** Which part of the joint a cut belongs to. */
  public enum Role {
    MORTISED,
    TENONED,
    OTHER
  }

  /** One part sawn through. */
  public record Cut(String label, Role role, List<List<Vec2>> outlines) {}

  /** A gap and where it was measured. */
  public record Gap(String side, double value, Vec2 at) {}

  /**
   * Wood between the mortise and a side of its part.
   *
   * @param face the side in a maker's word
   * @param value mm
   * @param from on the mortise
   * @param to on the side
   */
  public record Wall(String face, double value, Vec2 from, Vec2 to) {}

  /**
   * Where a place is seen in this sheet; empty if the saw did not come by it.
   *
   * @param at chair space
   */
  public Optional<Vec2> seen(Vec3 at) {
    Vec3 own = sheet.local(at);
    Vec2 there = new Vec2(own.x(), own.y());
    return Math.abs(own.z()) <= SEEN && isWithin(there, low, high)
        ? Optional.of(there)
        : Optional.empty();
  }

  private static boolean isWithin(Vec2 at, Vec2 low, Vec2 high) {
    return at.x() >= low.x() && at.x() <= high.x() && at.y() >= low.y() && at.y() <= high.y();
  }

  /** Both ways through a joint: across its cheeks, then across its edges. */
  public static List<JointSection> of(Chair chair, JointFit fit) {
    Joint joint = fit.joint();
    boolean round = joint.plan().diameter().isPresent();
    return List.of(
        section(chair, fit, round ? "one way" : "across the cheeks", joint.thick(), "cheek"),
        section(chair, fit, round ? "the other way" : "across the edges", joint.wide(), "edge"));
  }

  private static JointSection section(
      Chair chair, JointFit fit, String title, Vec3 across, String side) {
    Joint joint = fit.joint();
    Vec3 at = joint.tenons().isEmpty() ? joint.at() : joint.tenons().get(0).at();
    Vec3 up = across.dot(new Vec3(0.1, 0.3, 1)) < 0 ? across.negated() : across;
    Frame sheet = Frame.of(at, joint.entry().negated(), up);
    double reach = Math.max(joint.length(), 12);
    double half = 10;
    for (var cell : joint.tenon()) {
      for (Vec3 p : cell.points()) {
        half = Math.max(half, Math.abs(sheet.local(p).y()));
      }
    }
    double room = Math.max(12, 0.3 * Math.max(reach, half));
    Vec2 low = new Vec2(-reach - room, -half - room);
    Vec2 high = new Vec2(0.7 * reach + room, half + room);
    List<Cut> cuts = new ArrayList<>();
    for (int i = 0; i < chair.parts().size(); i++) {
      Role role =
          i == joint.mortised() ? Role.MORTISED : i == joint.tenoned() ? Role.TENONED : Role.OTHER;
      List<List<Vec2>> outlines = outlines(chair.parts().get(i), sheet, low, high);
      if (!outlines.isEmpty()) {
        cuts.add(new Cut(chair.parts().get(i).label(), role, outlines));
      }
    }
    cuts.sort(java.util.Comparator.comparing(Cut::role));
    List<Gap> gaps = new ArrayList<>();
    for (JointDetail.SideGap gap : fit.detail().gaps()) {
      if (gap.side().contains(side) || gap.side().contains("bottom")) {
        Vec3 p = sheet.local(gap.least().at());
        gaps.add(new Gap(gap.side(), gap.least().value(), new Vec2(p.x(), p.y())));
      }
    }
    Optional<Wall> wall =
        fit.detail().walls().stream()
            .flatMap(w -> wall(w, sheet, cuts).stream())
            .filter(w -> isWithin(w.from(), low, high) && isWithin(w.to(), low, high))
            .findFirst();
    return new JointSection(title, lie(sheet), cuts, gaps, wall, sheet, low, high);
  }

  /** Empty where the wall runs out of the sheet, or is as thin elsewhere only. */
  private static Optional<Wall> wall(JointDetail.Wall wall, Frame sheet, List<Cut> cuts) {
    Vec3 at = sheet.local(wall.left().at());
    Vec3 end = at.plus(sheet.localDirection(wall.way()).times(wall.left().value()));
    Vec2 from = new Vec2(at.x(), at.y());
    Vec2 to = new Vec2(end.x(), end.y());
    double lost = wall.left().value() - from.distance(to);
    boolean flat = wall.way().length() > 0 && lost <= SEEN;
    boolean drawn =
        flat
            && isOnWood(from, cuts)
            && isOnWood(to, cuts)
            && isInWood(from.plus(to).times(0.5), cuts);
    return drawn
        ? Optional.of(new Wall(wall.face(), wall.left().value(), from, to))
        : Optional.empty();
  }

  private static boolean isOnWood(Vec2 at, List<Cut> cuts) {
    return cuts.stream()
        .filter(cut -> cut.role() == Role.MORTISED)
        .flatMap(cut -> cut.outlines().stream())
        .anyMatch(outline -> isOn(outline, at));
  }

  /** Whether a ray from there to the right leaves the wood of the mortised part at last. */
  private static boolean isInWood(Vec2 at, List<Cut> cuts) {
    boolean in = false;
    for (Cut cut : cuts) {
      for (List<Vec2> outline :
          cut.role() == Role.MORTISED ? cut.outlines() : List.<List<Vec2>>of()) {
        for (int i = 0; i < outline.size(); i++) {
          in ^= isCrossed(at, outline.get(i), outline.get((i + 1) % outline.size()));
        }
      }
    }
    return in;
  }

  private static boolean isCrossed(Vec2 at, Vec2 a, Vec2 b) {
    return a.y() > at.y() != b.y() > at.y()
        && at.x() < a.x() + (at.y() - a.y()) * (b.x() - a.x()) / (b.y() - a.y());
  }

  private static boolean isOn(List<Vec2> outline, Vec2 at) {
    for (int i = 0; i < outline.size(); i++) {
      Vec2 a = outline.get(i);
      Vec2 edge = outline.get((i + 1) % outline.size()).minus(a);
      double long2 = edge.dot(edge);
      double along = long2 > 0 ? Math.max(0, Math.min(1, at.minus(a).dot(edge) / long2)) : 0;
      if (at.distance(a.plus(edge.times(along))) <= SEEN) {
        return true;
      }
    }
    return false;
  }

  /** How the sheet lies: where up is, and where it looks along, what is at its top. */
  private static String lie(Frame sheet) {
    double across = sheet.x().dot(Vec3.UP);
    return Math.abs(across) > Math.abs(sheet.y().dot(Vec3.UP)) && Math.abs(across) > STEEP
        ? "up is to the " + (across > 0 ? "right" : "left")
        : "top is " + axis(sheet.y());
  }

  /** The chair's axis that a direction is nearest to, in words; of two alike the more upright. */
  private static String axis(Vec3 direction) {
    double x = Math.abs(direction.x());
    double y = Math.abs(direction.y());
    double z = Math.abs(direction.z());
    if (z >= y && z >= x) {
      return direction.z() > 0 ? "up" : "down";
    }
    return y >= x
        ? direction.y() > 0 ? "the back" : "the front"
        : direction.x() > 0 ? "the right" : "the left";
  }

  private static List<List<Vec2>> outlines(Part part, Frame sheet, Vec2 low, Vec2 high) {
    Frame own =
        new Frame(
            part.frame().local(sheet.origin()),
            part.frame().localDirection(sheet.x()),
            part.frame().localDirection(sheet.y()),
            part.frame().localDirection(sheet.z()));
    return CrossSection.of(part.solid().mesh(), own).stream()
        .filter(outline -> near(outline, low, high))
        .toList();
  }

  private static boolean near(List<Vec2> outline, Vec2 low, Vec2 high) {
    double x0 = outline.stream().mapToDouble(Vec2::x).min().orElse(0);
    double x1 = outline.stream().mapToDouble(Vec2::x).max().orElse(0);
    double y0 = outline.stream().mapToDouble(Vec2::y).min().orElse(0);
    double y1 = outline.stream().mapToDouble(Vec2::y).max().orElse(0);
    return x0 <= high.x() && x1 >= low.x() && y0 <= high.y() && y1 >= low.y();
  }
}
