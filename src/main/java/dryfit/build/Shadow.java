package dryfit.build;

import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;

/** What a solid sweeps on its way in. */
final class Shadow {
  private Shadow() {}

  /**
   * The convex outline of the cells seen along {@code entry}, grown by a parallelogram, swept far
   * out and far in.
   *
   * @param one half a side of the parallelogram, as a vector square to {@code entry}
   * @param other half its other side
   */
  static Convex swept(List<Convex> cells, Vec3 at, Vec3 entry, Vec3 one, Vec3 other, double far) {
    Vec3 helper = Math.abs(entry.z()) < 0.9 ? Vec3.UP : Vec3.RIGHT;
    Frame f = Frame.of(at, entry, helper);
    List<double[]> shadow = new ArrayList<>();
    for (Convex cell : cells) {
      for (Vec3 p : cell.points()) {
        for (int side = 0; side < 4; side++) {
          Vec3 q =
              f.local(
                  p.plus(one.times(side % 2 == 0 ? 1 : -1))
                      .plus(other.times(side / 2 == 0 ? 1 : -1)));
          shadow.add(new double[] {q.y(), q.z()});
        }
      }
    }
    List<Vec3> loop =
        FlatHull.of(shadow).stream().map(c -> f.place(new Vec3(-far, c[0], c[1]))).toList();
    return Convex.prism(loop, entry.times(2 * far));
  }
}
