package dryfit.build;

import dryfit.build.JointInstances.Instance;
import dryfit.document.JointPlan;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * Where one joint is to be made, as all kinds need it.
 *
 * @param tenoned index of the part that goes in
 * @param mortised index of the part that takes it
 * @param mouth plane the shoulder rests in, normal out of the wood
 * @param throughAll how far it is through the wood along the entry
 * @param pieces collects what the joint brings with it
 */
record JointSite(
    Instance of,
    String label,
    int tenoned,
    int mortised,
    Meeting meeting,
    Plane mouth,
    TenonAxes axes,
    double throughAll,
    Pieces pieces) {

  /** How far a tenon reaches back into its part, mm: only to make one piece of them. */
  static final double ROOT = 0.05;

  JointPlan plan() {
    return of.plan();
  }

  /** How far it goes in along the entry. */
  double length() {
    if (plan().through()) {
      return throughAll + plan().proud();
    }
    double length = plan().length().orElseThrow();
    return plan().lengthIs() == JointPlan.LengthIs.SQUARE_TO_THE_FACE
        ? length / -axes.entry().dot(mouth.normal())
        : length;
  }

  /** How deep the mortise is along the entry, with the room at its bottom. */
  double deep() {
    return plan().through() ? throughAll + Shapes.SPARE : length() + plan().fit().bottom();
  }

  /** A little outside the mouth, where a mortise begins, so that nothing is left standing in it. */
  Plane outsideMouth() {
    return mouth.moved(Shapes.SPARE);
  }

  Joint joint(List<Tenon> tenons, Vec3... openToo) {
    List<Vec3> open = new ArrayList<>();
    open.add(mouth.normal());
    if (plan().through()) {
      open.add(axes.entry());
    }
    open.addAll(List.of(openToo));
    return joint(axes.at(), length(), tenons, open);
  }

  Joint joint(Vec3 at, double length, List<Tenon> tenons, List<Vec3> open) {
    return new Joint(
        plan(),
        of.hand(),
        label,
        tenoned,
        of.atStart(),
        mortised,
        mouth,
        at,
        axes.entry(),
        axes.thick(),
        axes.wide(),
        length,
        tenons,
        open);
  }

  /** The part is cut off where its shoulder rests. */
  List<Plane> shoulder() {
    return plan().shoulder() == JointPlan.Shoulder.FLAT ? List.of(mouth.flipped()) : List.of();
  }

  Refusal refuse(String code, String key, String found, String allowed) {
    return Refusal.of(code, plan().pointer() + key, found, allowed);
  }
}
