package dryfit.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A mesh written in one way only: points rounded and in rising order, every loop from its lowest
 * point, faces and triangles in rising order. Two meshes of the same faces and triangles are then
 * equal number by number, whatever order they were made in.
 */
final class CanonicalMesh {
  private CanonicalMesh() {}

  static Mesh of(Mesh mesh, double step) {
    double[] near = mesh.coordinates();
    for (int i = 0; i < near.length; i++) {
      near[i] = Math.rint(near[i] / step) * step + 0.0;
    }
    int[] order =
        sorted(
            near.length / 3,
            Comparator.<Integer>comparingDouble(i -> near[3 * i])
                .thenComparingDouble(i -> near[3 * i + 1])
                .thenComparingDouble(i -> near[3 * i + 2]));
    int[] number = inverse(order);
    double[] xyz = new double[near.length];
    for (int i = 0; i < order.length; i++) {
      System.arraycopy(near, 3 * order[i], xyz, 3 * i, 3);
    }

    int[][][] faces = new int[mesh.faceCount()][][];
    for (int f = 0; f < faces.length; f++) {
      faces[f] = loops(mesh.loops(f), number);
    }
    int[] faceOrder =
        sorted(
            faces.length,
            Comparator.<Integer, int[]>comparing(f -> faces[f][0], Arrays::compare)
                .thenComparing(mesh::origin));
    int[] faceNumber = inverse(faceOrder);

    int[][] triangles = new int[mesh.triangleCount()][];
    int[] met = new int[faces.length];
    for (int t = 0; t < triangles.length; t++) {
      int f = mesh.faceOf(t);
      int[] corners = {mesh.corner(t, 0), mesh.corner(t, 1), mesh.corner(t, 2)};
      int[] loop = convexQuad(faces[f], xyz) ? half(faces[f][0], met[f]++) : loop(corners, number);
      triangles[t] = new int[] {faceNumber[f], loop[0], loop[1], loop[2]};
    }
    Arrays.sort(triangles, Arrays::compare);

    List<String> origins = new ArrayList<>();
    int[] originOfFace = new int[faces.length];
    int[][][] inOrder = new int[faces.length][][];
    for (int f = 0; f < faces.length; f++) {
      inOrder[f] = faces[faceOrder[f]];
      String origin = mesh.origin(faceOrder[f]);
      if (!origins.contains(origin)) {
        origins.add(origin);
      }
      originOfFace[f] = origins.indexOf(origin);
    }
    return new Mesh(
        xyz,
        inOrder,
        Arrays.stream(triangles).flatMapToInt(t -> Arrays.stream(t, 1, 4)).toArray(),
        Arrays.stream(triangles).mapToInt(t -> t[0]).toArray(),
        originOfFace,
        origins);
  }

  /** A face that may be halved along either diagonal. */
  private static boolean convexQuad(int[][] loops, double[] xyz) {
    if (loops.length != 1 || loops[0].length != 4) {
      return false;
    }
    Vec3[] p = new Vec3[4];
    for (int i = 0; i < 4; i++) {
      int at = 3 * loops[0][i];
      p[i] = new Vec3(xyz[at], xyz[at + 1], xyz[at + 2]);
    }
    Vec3 normal = p[2].minus(p[0]).cross(p[3].minus(p[1]));
    for (int i = 0; i < 4; i++) {
      Vec3 before = p[i].minus(p[(i + 3) % 4]);
      Vec3 after = p[(i + 1) % 4].minus(p[i]);
      if (!(before.cross(after).dot(normal) > 0)) {
        return false;
      }
    }
    return true;
  }

  /** The first or second triangle of a quad that is halved from its lowest point. */
  private static int[] half(int[] quad, int which) {
    return which == 0
        ? new int[] {quad[0], quad[1], quad[2]}
        : new int[] {quad[0], quad[2], quad[3]};
  }

  private static int[] sorted(int n, Comparator<Integer> by) {
    return IntStream.range(0, n).boxed().sorted(by).mapToInt(i -> i).toArray();
  }

  private static int[] inverse(int[] order) {
    int[] number = new int[order.length];
    for (int i = 0; i < order.length; i++) {
      number[order[i]] = i;
    }
    return number;
  }

  /** The outer loop stays the first; the holes are put in rising order. */
  private static int[][] loops(int[][] old, int[] number) {
    int[][] loops = new int[old.length][];
    for (int i = 0; i < old.length; i++) {
      loops[i] = loop(old[i], number);
    }
    if (loops.length > 2) {
      Arrays.sort(loops, 1, loops.length, Arrays::compare);
    }
    return loops;
  }

  private static int[] loop(int[] old, int[] number) {
    int n = old.length;
    int lowest = 0;
    for (int i = 1; i < n; i++) {
      if (number[old[i]] < number[old[lowest]]) {
        lowest = i;
      }
    }
    int[] loop = new int[n];
    for (int i = 0; i < n; i++) {
      loop[i] = number[old[(lowest + i) % n]];
    }
    return loop;
  }
}
