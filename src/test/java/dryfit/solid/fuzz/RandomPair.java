package dryfit.solid.fuzz;

import dryfit.geometry.Frame;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import dryfit.solid.Csg;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A part and what cuts it. The tools are set to the part by a corner, an edge or a face of each,
 * turned with it, a little off or anyhow, and then moved by nothing, by a hair or by millimetres:
 * so flush faces, shared edges, touching corners, slivers and cuts through corners are all common.
 */
public record RandomPair(long seed, Csg part, List<Csg> tools) {
  /** Shifts that leave a sliver, mm; the first is the step on which kernels may round shapes. */
  private static final double[] HAIRS = {0x1p-14, 1e-5, 1e-4, 1e-3, 0.01};

  public RandomPair {
    tools = List.copyOf(tools);
  }

  /** The same seed gives the same pair. */
  public static RandomPair of(long seed) {
    Random random = new Random(seed);
    RandomShapes shapes = new RandomShapes(random);
    Frame stand = random.nextInt(3) == 0 ? Frame.CHAIR : turn(random, 4);
    Csg part = Moving.placed(shapes.part(), stand);
    List<Csg> tools = new ArrayList<>();
    int count = 1 + random.nextInt(random.nextInt(3) == 0 ? 5 : 2);
    for (int i = 0; i < count; i++) {
      tools.add(tool(random, shapes, part, tools, stand));
    }
    return new RandomPair(seed, part, tools);
  }

  /** All that cuts, as one. */
  public Csg cutters() {
    return tools.size() == 1 ? tools.get(0) : new Csg.Union(tools);
  }

  private static Csg tool(
      Random random, RandomShapes shapes, Csg part, List<Csg> before, Frame stand) {
    Csg against = before.isEmpty() || random.nextInt(3) > 0 ? part : before.get(0);
    if (random.nextInt(12) == 0) {
      return Moving.placed(against, Moving.shift(offset(random)));
    }
    Csg.Leaf tool = shapes.tool();
    Frame lie = turn(random, 5);
    Frame turned =
        new Frame(Vec3.ZERO, stand.turn(lie.x()), stand.turn(lie.y()), stand.turn(lie.z()));
    Vec3 on = spot(random, Moving.leaves(against).get(0).mesh());
    Vec3 own = spot(random, tool.mesh());
    Vec3 origin = on.minus(turned.turn(own)).plus(offset(random));
    return Moving.placed(tool, new Frame(origin, turned.x(), turned.y(), turned.z()));
  }

  /** A corner, the middle of an edge or of a triangle, or the middle of all. */
  private static Vec3 spot(Random random, Mesh mesh) {
    int t = random.nextInt(mesh.triangleCount());
    Vec3 a = mesh.point(mesh.corner(t, 0));
    Vec3 b = mesh.point(mesh.corner(t, 1));
    Vec3 c = mesh.point(mesh.corner(t, 2));
    return switch (random.nextInt(5)) {
      case 0, 1 -> a;
      case 2 -> a.midway(b);
      case 3 -> a.plus(b).plus(c).times(1.0 / 3);
      default -> mesh.bounds().middle();
    };
  }

  private static Vec3 offset(Random random) {
    double step =
        switch (random.nextInt(4)) {
          case 0, 1 -> 0;
          case 2 -> HAIRS[random.nextInt(HAIRS.length)];
          default -> 0.5 * (1 + random.nextInt(20));
        };
    return new Vec3(sign(random) * step, sign(random) * step, sign(random) * step);
  }

  private static int sign(Random random) {
    return random.nextInt(3) - 1;
  }

  /**
   * About the axes by quarters, or a few degrees about one axis, or anyhow: one in {@code rare}.
   */
  private static Frame turn(Random random, int rare) {
    Frame quarter = quarter(random);
    if (random.nextInt(rare) > 0) {
      return random.nextInt(3) > 0 ? quarter : lean(random, quarter);
    }
    Vec3 length = new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
    Vec3 width = new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
    return Frame.of(Vec3.ZERO, length, width);
  }

  private static Frame quarter(Random random) {
    Vec3[] axes = {Vec3.RIGHT, Vec3.BACK, Vec3.UP};
    int first = random.nextInt(3);
    int second = (first + 1 + random.nextInt(2)) % 3;
    Vec3 x = random.nextBoolean() ? axes[first] : axes[first].negated();
    Vec3 y = random.nextBoolean() ? axes[second] : axes[second].negated();
    return new Frame(Vec3.ZERO, x, y, x.cross(y));
  }

  private static Frame lean(Random random, Frame from) {
    double angle = Math.toRadians(1 + random.nextInt(12));
    Vec3 x = from.x().times(Math.cos(angle)).plus(from.y().times(Math.sin(angle)));
    Vec3 y = from.y().times(Math.cos(angle)).minus(from.x().times(Math.sin(angle)));
    return new Frame(Vec3.ZERO, x, y, from.z());
  }
}
