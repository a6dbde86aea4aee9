package dryfit.solid.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.geometry.Box;
import dryfit.geometry.MassProperties;
import dryfit.geometry.Mesh;
import dryfit.geometry.MeshCheck;
import dryfit.geometry.Meshes;
import dryfit.geometry.Vec3;
import dryfit.solid.Csg;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Random expressions of boxes with whole-numbered corners, where faces, edges and corners meet all
 * the time. Their volume is the number of unit cubes, counted one by one.
 */
class RandomBoxesTest {
  private final IdentityHashMap<Csg, int[]> boxes = new IdentityHashMap<>();

  @ParameterizedTest(name = "seeds from {0}")
  @ValueSource(ints = {0, 250, 500, 750, 1000, 1250, 1500, 1750})
  void theVolumeIsTheNumberOfUnitCubes(int first) {
    for (int seed = first; seed < first + 250; seed++) {
      Random random = new Random(seed);
      int size = 2 + random.nextInt(4);
      Csg what = tree(random, 1 + random.nextInt(4), size);
      Mesh mesh = new ExactKernel().evaluate(what);
      int cubes = cubes(what, size);
      assertThat(mesh.isEmpty()).as("seed " + seed).isEqualTo(cubes == 0);
      if (cubes > 0) {
        assertThat(MassProperties.of(mesh).volume())
            .as("seed " + seed)
            .isCloseTo(cubes, within(1e-9));
        assertThat(MeshCheck.problems(mesh)).as("seed " + seed).isEmpty();
        assertThat(MeshCheck.problemsAsFloats(mesh)).as("seed " + seed).isEmpty();
      }
    }
  }

  private Csg tree(Random random, int depth, int size) {
    if (depth == 0 || random.nextInt(5) == 0) {
      int[] box = new int[6];
      for (int k = 0; k < 3; k++) {
        box[k] = random.nextInt(size);
        box[k + 3] = box[k] + 1 + random.nextInt(size - box[k]);
      }
      Vec3 low = new Vec3(box[0], box[1], box[2]);
      Vec3 high = new Vec3(box[3], box[4], box[5]);
      Csg leaf = new Csg.Leaf(Meshes.box(new Box(low, high), "/box"), List.of());
      boxes.put(leaf, box);
      return leaf;
    }
    List<Csg> of = new ArrayList<>();
    int count = 2 + random.nextInt(2);
    for (int i = 0; i < count; i++) {
      of.add(tree(random, depth - 1, size));
    }
    return switch (random.nextInt(3)) {
      case 0 -> new Csg.Union(of);
      case 1 -> new Csg.Common(of);
      default -> new Csg.Cut(of.get(0), of.subList(1, of.size()));
    };
  }

  private int cubes(Csg what, int size) {
    int count = 0;
    for (int x = 0; x <= size; x++) {
      for (int y = 0; y <= size; y++) {
        for (int z = 0; z <= size; z++) {
          count += holds(what, x, y, z) ? 1 : 0;
        }
      }
    }
    return count;
  }

  private boolean holds(Csg what, int x, int y, int z) {
    if (what instanceof Csg.Union union) {
      return union.of().stream().anyMatch(o -> holds(o, x, y, z));
    }
    if (what instanceof Csg.Common common) {
      return common.of().stream().allMatch(o -> holds(o, x, y, z));
    }
    if (what instanceof Csg.Cut cut) {
      return holds(cut.from(), x, y, z) && cut.tools().stream().noneMatch(o -> holds(o, x, y, z));
    }
    int[] b = boxes.get(what);
    return x >= b[0] && x < b[3] && y >= b[1] && y < b[4] && z >= b[2] && z < b[5];
  }
}
