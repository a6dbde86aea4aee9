package dryfit.export.picture;

import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;

/**
 * Growth rings through a part: cylinders about a pith that lies a little way outside it and wanders
 * along the grain. Every part gets its own piece of the tree, from its label, the same each time.
 */
final class Grain {
  private static final int WANDER_STEPS = 1024;
  private static final double WANDER_STEP = 4; // mm along the grain
  private static final int RING_STEPS = 4096;
  private static final double RING_STEP = 0.125; // mm from the pith

  private final Frame frame;
  private final float[] wander = new float[WANDER_STEPS];
  private final float[] dark = new float[RING_STEPS];
  private final double pithY;
  private final double pithZ;

  /**
   * @param frame the part's frame in the chair, x along the grain
   */
  Grain(Frame frame, WoodTone tone, String label) {
    this.frame = frame;
    int seed = label.hashCode();
    double a = Math.floorMod(seed, 628) / 100.0;
    double b = Math.floorMod(seed / 628, 628) / 100.0;
    pithY = 40 + 30 * Math.sin(a);
    pithZ = 55 + 25 * Math.cos(b);
    for (int i = 0; i < WANDER_STEPS; i++) {
      double x = (i - WANDER_STEPS / 2) * WANDER_STEP;
      wander[i] = (float) (4 * Math.sin(x * 0.0087 + a) + 1.6 * Math.sin(x * 0.027 + b));
    }
    for (int i = 0; i < RING_STEPS; i++) {
      double r = i * RING_STEP;
      double phase = r / tone.ring() + 0.6 * Math.sin(r * 0.11 + a) + 0.3 * Math.sin(r * 0.31 + b);
      double f = phase - Math.floor(phase);
      // Early wood darkens slowly towards late wood, which ends abruptly.
      double late = f < 0.8 ? f / 0.8 : (1 - f) / 0.2;
      dark[i] = (float) (late * late);
    }
  }

  /** Distance of a chair-space point from the pith, mm. */
  double radius(double px, double py, double pz) {
    Vec3 o = frame.origin();
    double dx = px - o.x();
    double dy = py - o.y();
    double dz = pz - o.z();
    double along = along(frame.x(), dx, dy, dz);
    double y = along(frame.y(), dx, dy, dz) + pithY;
    double z = along(frame.z(), dx, dy, dz) + pithZ;
    y += wander(along);
    return Math.sqrt(y * y + z * z);
  }

  /** How much late wood there is so far from the pith, 0 to 1. */
  double late(double radius) {
    double at = Math.min(RING_STEPS - 1.001, radius / RING_STEP);
    int ring = (int) at;
    return dark[ring] + (at - ring) * (dark[ring + 1] - dark[ring]);
  }

  /** Between the steps it runs straight, so that no step shows. */
  private double wander(double along) {
    double at = along / WANDER_STEP + WANDER_STEPS / 2.0;
    double held = Math.max(0, Math.min(WANDER_STEPS - 1.001, at));
    int step = (int) held;
    return wander[step] + (held - step) * (wander[step + 1] - wander[step]);
  }

  private static double along(Vec3 axis, double dx, double dy, double dz) {
    return axis.x() * dx + axis.y() * dy + axis.z() * dz;
  }
}
