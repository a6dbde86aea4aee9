package dryfit.bench;

import dryfit.geometry.MassProperties;
import dryfit.geometry.MeshCheck;
import dryfit.geometry.Mesh;
import java.util.Locale;

/** Checks that the solids of the benchmarks come out right, before anyone times them. */
public final class Right {
  private Right() {}

  public static void main(String[] arguments) {
    boolean right = true;
    for (var each : Shapes.all().entrySet()) {
      for (String engine : new String[] {"exact", "jcsg"}) {
        Mesh mesh = Engines.kernel(engine).evaluate(each.getValue().solid());
        double volume = MassProperties.of(mesh).volume();
        double expected = each.getValue().volume();
        // Kernels may set corners on a grid of 61 nm, which is worth a few mm^3 all round.
        boolean close = Double.isNaN(expected) || Math.abs(volume - expected) < 1e-5 * expected;
        boolean closed = MeshCheck.problems(mesh).isEmpty();
        right &= close && closed;
        System.out.printf(
            Locale.ROOT,
            "%-14s %-6s %5d faces %6d triangles %16.3f mm^3%s%s%n",
            each.getKey(),
            engine,
            mesh.faceCount(),
            mesh.triangleCount(),
            volume,
            close ? "" : " WRONG, expected " + expected,
            closed ? "" : " NOT CLOSED");
      }
    }
    System.exit(right ? 0 : 1);
  }
}
