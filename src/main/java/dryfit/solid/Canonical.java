package dryfit.solid;

import dryfit.geometry.Meshes;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Shapes written in one way only, so that the same shape worked out in two places of a chair is the
 * same to the last bit: coordinates are rounded to a step, and the corners and faces of a convex
 * shape come in rising order. A step far above the error of a calculation and far below what a
 * kernel can tell apart makes no other difference.
 */
public final class Canonical {
  private Canonical() {}

  /**
   * @param step millimetres, a power of two; 0 leaves the shape as it is
   */
  public static Csg shape(Csg shape, double step) {
    if (step == 0) {
      return shape;
    }
    if (shape instanceof Csg.Leaf leaf) {
      return leaf.cells().size() == 1 && ofOneOrigin(leaf)
          ? cell(leaf.cells().get(0), step).asLeaf(leaf.mesh().origin(0))
          : new Csg.Leaf(
              Meshes.canonical(leaf.mesh(), step),
              leaf.cells().stream()
                  .map(c -> cell(c, step))
                  .sorted(Comparator.comparing(c -> c.xyz, Arrays::compare))
                  .toList());
    } else if (shape instanceof Csg.Union union) {
      return new Csg.Union(all(union.of(), step));
    } else if (shape instanceof Csg.Common common) {
      return common.lasts(step) ? common : new Csg.Common(all(common.of(), step));
    }
    Csg.Cut cut = (Csg.Cut) shape;
    return new Csg.Cut(shape(cut.from(), step), all(cut.tools(), step));
  }

  /**
   * The same for a shape that many others are made from: shapes in common stay the very same object
   * whenever they, or their mirror images, are made canonical again.
   */
  public static Csg lasting(Csg shape, double step) {
    Csg canonical = shape(shape, step);
    return canonical instanceof Csg.Common common && step != 0 && !common.lasts(step)
        ? new Csg.Common(common.of(), step)
        : canonical;
  }

  private static List<Csg> all(List<Csg> shapes, double step) {
    return shapes.stream().map(s -> shape(s, step)).toList();
  }

  private static boolean ofOneOrigin(Csg.Leaf leaf) {
    return IntStream.range(1, leaf.mesh().faceCount())
        .allMatch(f -> leaf.mesh().origin(f).equals(leaf.mesh().origin(0)));
  }

  /** Itself where rounding would lose a face. Faces stay flat to about a step. */
  private static Convex cell(Convex cell, double step) {
    double[] near = numbers(cell.xyz, step);
    int[] order = rising(near);
    double[] xyz = new double[near.length];
    int[] renumbered = new int[order.length];
    for (int i = 0; i < order.length; i++) {
      renumbered[order[i]] = i;
      System.arraycopy(near, 3 * order[i], xyz, 3 * i, 3);
    }
    int[][] faces = Arrays.stream(cell.faces).map(f -> loop(f, renumbered)).toArray(int[][]::new);
    Arrays.sort(faces, Arrays::compare);
    double[] planes = new double[cell.planes.length];
    for (int f = 0; f < faces.length; f++) {
      if (!FacePlanes.fit(xyz, faces[f], planes, f)) {
        return cell;
      }
    }
    return new Convex(xyz, faces, planes);
  }

  /** The numbers of the points in rising order; few, so each is moved down to its place. */
  private static int[] rising(double[] xyz) {
    int[] order = new int[xyz.length / 3];
    for (int i = 0; i < order.length; i++) {
      int k = i;
      for (; k > 0 && compare(xyz, i, order[k - 1]) < 0; k--) {
        order[k] = order[k - 1];
      }
      order[k] = i;
    }
    return order;
  }

  private static int compare(double[] xyz, int p, int q) {
    int byX = Double.compare(xyz[3 * p], xyz[3 * q]);
    int byY = byX != 0 ? byX : Double.compare(xyz[3 * p + 1], xyz[3 * q + 1]);
    return byY != 0 ? byY : Double.compare(xyz[3 * p + 2], xyz[3 * q + 2]);
  }

  /** The loop in new numbers, its lowest first. */
  private static int[] loop(int[] old, int[] renumbered) {
    int n = old.length;
    int lowest = 0;
    for (int i = 1; i < n; i++) {
      if (renumbered[old[i]] < renumbered[old[lowest]]) {
        lowest = i;
      }
    }
    int[] loop = new int[n];
    for (int i = 0; i < n; i++) {
      loop[i] = renumbered[old[(lowest + i) % n]];
    }
    return loop;
  }

  /**
   * Every number rounded to the nearest multiple of {@code step}; a copy without negative zeros.
   */
  public static double[] numbers(double[] values, double step) {
    double[] out = new double[values.length];
    for (int i = 0; i < out.length; i++) {
      out[i] = Math.rint(values[i] / step) * step + 0.0;
    }
    return out;
  }
}
