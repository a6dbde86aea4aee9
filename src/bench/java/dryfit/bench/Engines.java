package dryfit.bench;

import dryfit.solid.Csg;
import dryfit.solid.Kernel;
import dryfit.solid.exact.ExactKernel;
import dryfit.solid.fuzz.CommonsRegions;
import dryfit.solid.jcsg.JcsgKernel;
import java.util.List;
import java.util.function.Supplier;
import org.apache.commons.geometry.euclidean.threed.RegionBSPTree3D;

/**
 * Makes a task of an engine and a solid. Each engine has its operands ready in the form it likes
 * best, and has to end with triangles.
 */
final class Engines {
  private Engines() {}

  static Kernel kernel(String name) {
    return switch (name) {
      case "exact" -> new ExactKernel();
      case "jcsg" -> new JcsgKernel();
      default -> throw new IllegalArgumentException("no such kernel: " + name);
    };
  }

  static Supplier<Object> task(String engine, Csg what) {
    if (!engine.equals("commons")) {
      Kernel kernel = kernel(engine);
      return () -> kernel.evaluate(what);
    }
    boolean common = what instanceof Csg.Common;
    List<RegionBSPTree3D> trees =
        operands(what).stream().map(CommonsRegions::of).toList();
    return () -> {
      RegionBSPTree3D result = trees.get(0);
      for (RegionBSPTree3D next : trees.subList(1, trees.size())) {
        result = common ? CommonsRegions.common(result, next) : CommonsRegions.minus(result, next);
      }
      return result.toTriangleMesh(CommonsRegions.PRECISION);
    };
  }

  private static List<Csg> operands(Csg what) {
    if (what instanceof Csg.Common common) {
      return common.of();
    }
    Csg.Cut cut = (Csg.Cut) what;
    List<Csg> all = new java.util.ArrayList<>(List.of(cut.from()));
    all.addAll(cut.tools());
    return all;
  }
}
