package dryfit.view;

import dryfit.geometry.Box;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * A round dowel with round ends, of which a sitter is made.
 *
 * @param from middle of the one round end, chair space, mm
 * @param to middle of the other; the same for a ball
 * @param wide how much it is stretched from side to side about its middle
 * @param deep how much it is stretched from front to back
 */
record Limb(Vec3 from, Vec3 to, double radius, double wide, double deep) {

  Vec3 middle() {
    return from.midway(to);
  }

  /**
   * The body of a sitter. Thicknesses of limbs and the place of the neck are invented; heights and
   * lengths are not.
   *
   * @param chair what it sits beside, chair space; at the middle of its depth are the thighs
   */
  static List<Limb> of(Scale.Sits sits, Box chair) {
    Sitter s = sits.sitter();
    double away = ScaleFigure.ASIDE + s.shoulders() / 2;
    double x = sits.onLeft() ? chair.low().x() - away : chair.high().x() + away;
    double back = chair.middle().y() + s.toHollow() / 2;
    double seat = s.hollow();
    double limb = (s.knee() - s.hollow()) / 2;
    double thigh = seat + limb;
    double kneeY = back - s.toKnee() + limb;
    double hipY = back - 110;
    double top = seat + s.sitting();
    double shoulder = top - 300;
    double elbow = seat + s.elbow() + 35;
    List<Limb> body = new ArrayList<>();
    for (int hand = -1; hand <= 1; hand += 2) {
      double leg = x + hand * (s.hips() / 2 - limb);
      double arm = x + hand * (s.shoulders() / 2 - 40);
      body.add(round(new Vec3(leg, hipY, thigh), new Vec3(leg, kneeY, thigh), limb));
      body.add(round(new Vec3(leg, kneeY, thigh), new Vec3(leg, kneeY, 40), limb * 0.75));
      body.add(round(new Vec3(leg, kneeY, 40), new Vec3(leg, kneeY - 160, 35), 35));
      body.add(round(new Vec3(arm, hipY, shoulder), new Vec3(arm, hipY, elbow), 40));
      body.add(round(new Vec3(arm, hipY, elbow), new Vec3(arm, hipY - 250, elbow), 35));
      body.add(round(new Vec3(x, hipY, shoulder), new Vec3(arm, hipY, shoulder), 45));
      body.add(round(new Vec3(x, hipY, thigh), new Vec3(leg, hipY, thigh), limb));
    }
    Vec3 waist = new Vec3(x, hipY, seat + 95);
    Vec3 chest = new Vec3(x, hipY, shoulder - 40);
    body.add(new Limb(waist, chest, 95, 0.3 * s.shoulders() / 95, 1));
    body.add(round(new Vec3(x, hipY, shoulder), new Vec3(x, hipY, top - 200), 50));
    Vec3 head = new Vec3(x, hipY, top - 110);
    body.add(new Limb(head, head, 110, 0.72, 0.86));
    return body;
  }

  private static Limb round(Vec3 from, Vec3 to, double radius) {
    return new Limb(from, to, radius, 1, 1);
  }
}
