package dryfit.export.picture;

import dryfit.geometry.Vec3;

/**
 * Two lights: a warm one over the viewer's left shoulder, and the sky from above with its bounce
 * from the floor.
 *
 * @param towardsKey unit direction to the warm light
 * @param up where the sky is, as the viewer sees it
 */
record Lights(Vec3 towardsKey, Vec3 up) {

  /** How strong each light is in red, green and blue; chosen by eye. */
  private static final double[] KEY = {0.40, 0.385, 0.35};

  private static final double[] SKY = {0.68, 0.665, 0.65};
  private static final double[] FLOOR = {0.55, 0.485, 0.42};

  static Lights behind(Camera camera) {
    Vec3 key =
        camera
            .right()
            .times(-0.5)
            .plus(camera.up().times(0.95))
            .plus(camera.forward().times(-0.6))
            .unit();
    // Seen from below, the chair is lit as if it lay on its back.
    Vec3 up = camera.forward().dot(Vec3.UP) > 0.5 ? Vec3.UP.negated() : Vec3.UP;
    return new Lights(key, up);
  }

  double key(double nx, double ny, double nz) {
    return Math.max(0, nx * towardsKey.x() + ny * towardsKey.y() + nz * towardsKey.z());
  }

  double upward(double nx, double ny, double nz) {
    return nx * up.x() + ny * up.y() + nz * up.z();
  }

  /** Light in one colour (0 red, 1 green, 2 blue) on a surface. */
  static double on(double key, double upward, int colour) {
    double sky = (1 + upward) / 2;
    return KEY[colour] * key + SKY[colour] * sky + FLOOR[colour] * (1 - sky);
  }
}
