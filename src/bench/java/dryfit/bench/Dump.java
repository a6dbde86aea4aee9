package dryfit.bench;

import dryfit.export.SolidJson;
import dryfit.geometry.MassProperties;
import dryfit.geometry.Mesh;
import dryfit.solid.Csg;
import dryfit.solid.KernelFailure;
import dryfit.solid.exact.ExactKernel;
import dryfit.solid.fuzz.RandomPair;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalDouble;

/**
 * Writes solids for peers that are not Java: as expressions over polyhedra with triangles (JSON).
 * Arguments: a folder, and how many random cuts to add to the solids of the benchmarks.
 */
public final class Dump {
  private Dump() {}

  public static void main(String[] arguments) throws IOException {
    Path folder = Files.createDirectories(Path.of(arguments[0]));
    for (var each : Shapes.all().entrySet()) {
      Shapes.Shape shape = each.getValue();
      write(folder, each.getKey(), shape.solid());
    }
    for (long seed = 0; seed < Integer.parseInt(arguments[1]); seed++) {
      RandomPair pair = RandomPair.of(seed);
      write(folder, "random-" + seed, pair.part().minus(pair.tools()));
    }
  }

  private static void write(Path folder, String name, Csg solid) throws IOException {
    try {
      Mesh mesh = new ExactKernel().evaluate(solid);
      double volume = mesh.isEmpty() ? 0 : MassProperties.of(mesh).volume();
      byte[] json =
          SolidJson.bytes(
              name, "none: made for this collection", solid, OptionalDouble.of(volume));
      Files.write(folder.resolve(name + ".json"), json);
    } catch (KernelFailure e) {
      System.err.println(name + " is left out: " + e.getMessage());
    }
  }
}
