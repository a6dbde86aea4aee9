package dryfit.document;

import dryfit.document.JointPlan.Haunch;
import dryfit.document.JointPlan.Shoulder;
import dryfit.document.PartPlan.Section;
import dryfit.measure.Tolerances;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Whether a tenon can be cut from the section of its part, as far as the written sizes tell. Only
 * straight parts have a section to hold it against; the others are found above, on the solids.
 *
 * <p>A tenon must be smaller than the section, for it needs shoulders; without shoulders it may be
 * as large. Placed flush with an edge it is still inside.
 */
final class TenonCheck {
  private final Context context;
  private final Json.Obj node;
  private final JointPlan joint;

  private TenonCheck(Context context, Json.Obj node, JointPlan joint) {
    this.context = context;
    this.node = node;
    this.joint = joint;
  }

  /**
   * @param node where the joint is written
   * @param parts those of the chair by name
   */
  static void check(JointPlan joint, Json.Obj node, Map<String, PartPlan> parts, Context context) {
    if (parts.get(joint.tenon().part()) instanceof PartPlan.Straight part
        && (joint.diameter().isPresent() || joint.thickness().isPresent())) {
      new TenonCheck(context, node, joint).against(part.section());
    }
  }

  /** A section that is refused itself has no say in what goes into it. */
  private void against(Section section) {
    if (section instanceof Section.Round round && round.diameter() > 0) {
      against(round.diameter());
    } else if (section instanceof Section.Rectangle rectangle
        && rectangle.width() > 0
        && rectangle.thickness() > 0) {
      against(rectangle);
    }
  }

  private void against(double sectionDiameter) {
    JointSizes.Row row = joint.row();
    if (joint.diameter().isPresent()) {
      double span = row.span(joint.diameter().getAsDouble());
      size("diameter", span, sectionDiameter, "the part's diameter");
    } else {
      double corner = Math.hypot(thickness(Double.NaN), width(sectionDiameter));
      size("width", corner, sectionDiameter, "the part's diameter, corner to corner");
    }
  }

  private void against(Section.Rectangle section) {
    double thickness = thickness(section.thickness());
    double width = width(section.width());
    boolean round = joint.diameter().isPresent();
    String key = round ? "diameter" : "thickness";
    boolean thickFits = size(key, thickness, section.thickness(), "the part's thickness");
    boolean wideFits =
        joint.kind() == JointPlan.Kind.BRIDLE
            || size(round ? "diameter" : "width", width, section.width(), "the part's width");
    if (thickFits && wideFits) {
      place("from-top", joint.place().fromTop(), width, section.width());
      place("from-bottom", joint.place().fromBottom(), width, section.width());
      place("from-outside", joint.place().fromOutside(), thickness, section.thickness());
      place("from-inside", joint.place().fromInside(), thickness, section.thickness());
      joint.haunch().ifPresent(haunch -> haunch(haunch, section.width() - width));
    }
  }

  /** What all the tenons of the joint take of the part's thickness. */
  private double thickness(double whole) {
    double one = joint.diameter().orElseGet(() -> joint.thickness().orElse(whole));
    return joint.row().above() ? one : joint.row().span(one);
  }

  /** What they take of its width; a bridle takes all of it. */
  private double width(double whole) {
    double one = joint.diameter().orElseGet(() -> joint.width().orElse(whole));
    return joint.row().above() ? joint.row().span(one) : one;
  }

  private boolean size(String key, double size, double whole, String what) {
    boolean bare = joint.shoulder() == Shoulder.NONE;
    boolean tooLarge =
        bare ? size > whole + Tolerances.coincident() : size >= whole - Tolerances.coincident();
    if (tooLarge) {
      tooLarge(
          key,
          context.told(size),
          (bare ? "at most " : "less than ") + context.told(whole),
          "the tenon is "
              + context.told(size)
              + " and must be "
              + (bare ? "at most " : "less than ")
              + context.told(whole)
              + ", "
              + what);
    }
    return !tooLarge;
  }

  private void place(String key, OptionalDouble from, double size, double whole) {
    if (from.isPresent() && from.getAsDouble() + size > whole + Tolerances.coincident()) {
      tooLarge(
          key,
          context.told(from.getAsDouble()),
          "at most " + context.told(whole - size),
          "a tenon of "
              + context.told(size)
              + ", "
              + context.told(from.getAsDouble())
              + " in from the edge, runs out of a part of "
              + context.told(whole));
    }
  }

  /** A haunch needs wood beside the tenon to be made of, and ends before the tenon does. */
  private void haunch(Haunch haunch, double spare) {
    OptionalDouble fromIts = haunch.atTop() ? joint.place().fromTop() : joint.place().fromBottom();
    OptionalDouble fromOther =
        haunch.atTop() ? joint.place().fromBottom() : joint.place().fromTop();
    double room =
        fromIts.orElseGet(
            () -> fromOther.isPresent() ? spare - fromOther.getAsDouble() : spare / 2);
    if (room <= Tolerances.coincident()) {
      tooLarge(
          "haunch",
          "no room",
          "room beside the tenon",
          "the tenon reaches the " + (haunch.atTop() ? "top" : "bottom") + ", where the haunch is");
    }
    if (haunch.deep() >= joint.length().orElse(Double.POSITIVE_INFINITY)) {
      tooLarge(
          "haunch",
          context.told(haunch.deep()),
          "less than the length",
          "the haunch is as deep as the tenon is long");
    }
  }

  private void tooLarge(String key, String found, String allowed, String what) {
    Json.At at = node.members().containsKey(key) ? node.members().get(key).at() : node.at();
    context.problems().add("tenon-too-large", at, found, allowed, what);
  }
}
