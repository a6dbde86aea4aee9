package published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.build.Part;
import dryfit.fit.Fitted;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import org.junit.jupiter.api.Test;

class ArmTemplateTest {

  /**
   * A side pattern wrapped round an arm that is sawn already comes out long: an arm 17 in from end
   * to end with 2 in of bow in plan is 17.62 along its curve (common practice, no source; separate
   * script). Measured on the solid: the area of its bowed side over its thickness.
   */
  @Test
  void theCurveOfABowedArmIsLongerThanItsChord() {
    Part arm =
        Fitted.of(
                """
                { "format": "dryfit-chair/1", "name": "Arm", "about": "Demo data, invented.",
                  "unit": "in", "timber": "cherry-black",
                  "parts": { "arm": { "form": "sawn", "stands-at": [0, 0, 25], "thickness": 1,
                    "plan": [[0, 0], { "arc-to": [0, 17], "rise": 2 }, [4, 17], [4, 0]] } } }
                """)
            .chair()
            .parts()
            .get(0);
    double area = 0;
    Mesh mesh = arm.placedMesh();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      Vec3 a = mesh.point(mesh.corner(t, 0));
      Vec3 twice =
          mesh.point(mesh.corner(t, 1)).minus(a).cross(mesh.point(mesh.corner(t, 2)).minus(a));
      Vec3 n = twice.unit();
      boolean bowed = n.x() < -0.1 && Math.abs(n.z()) < 0.1;
      area += bowed ? twice.length() / 2 : 0;
    }
    // Straight facets within five hundredths of a millimetre of the curve are a trifle shorter.
    assertThat(area / (25.4 * 25.4)).isCloseTo(17.62, within(0.01));
  }
}
