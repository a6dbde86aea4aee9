package dryfit.geometry;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Takes a closed mesh to the coordinates that 32-bit files can hold, and keeps it closed.
 *
 * <p>Files such as STL store floats, whose step at 500 mm is 3e-5 mm, and no topology: whoever
 * reads them welds equal points. So what would happen in the reader happens here first: points are
 * rounded and welded, triangles that lost a side are dropped, pairs that fell onto each other
 * cancel, and triangles left without area give their longest side up to their neighbour.
 */
public final class FloatGrid {
  private FloatGrid() {}

  /** Rounded points without repeats, and the triangles over them, none left out. */
  static Triangles welded(Mesh mesh) {
    double[] rounded = mesh.coordinates();
    for (int i = 0; i < rounded.length; i++) {
      rounded[i] = (float) rounded[i];
    }
    Map<Vec3, Integer> numbers = new LinkedHashMap<>();
    int[] number = new int[mesh.pointCount()];
    for (int i = 0; i < number.length; i++) {
      Vec3 p = new Vec3(rounded[3 * i], rounded[3 * i + 1], rounded[3 * i + 2]);
      number[i] = numbers.computeIfAbsent(p, k -> numbers.size());
    }
    double[] xyz = new double[3 * numbers.size()];
    int size = 0;
    for (Vec3 p : numbers.keySet()) {
      xyz[size++] = p.x();
      xyz[size++] = p.y();
      xyz[size++] = p.z();
    }
    int[] triangles = mesh.triangles();
    for (int i = 0; i < triangles.length; i++) {
      triangles[i] = number[triangles[i]];
    }
    return new Triangles(xyz, triangles, mesh.faceOfTriangle());
  }

  /**
   * The mesh as it will be written: every coordinate is a float, and it is closed, also for a
   * reader that welds equal points.
   *
   * @param mesh closed
   * @throws MeshFailure if it cannot be kept closed
   */
  public static Mesh snapped(Mesh mesh) {
    Triangles kept = welded(mesh);
    int[] originOfFace = new int[mesh.faceCount()];
    List<String> origins = new ArrayList<>();
    for (int f = 0; f < originOfFace.length; f++) {
      int known = origins.indexOf(mesh.origin(f));
      originOfFace[f] = known < 0 ? origins.size() : known;
      if (known < 0) {
        origins.add(mesh.origin(f));
      }
    }
    Mesh out = closed(kept, originOfFace, origins);
    List<String> problems = new ArrayList<>(MeshCheck.problems(out));
    problems.addAll(MeshCheck.problemsAsFloats(out));
    if (!problems.isEmpty()) {
      throw failure(problems.get(0));
    }
    return out;
  }

  private static Mesh closed(Triangles kept, int[] originOfFace, List<String> origins) {
    try {
      return Meshes.ofTriangles(kept.xyz(), kept.corners(), kept.faces(), originOfFace, origins);
    } catch (MeshFailure e) {
      throw failure(e.getMessage());
    }
  }

  private static MeshFailure failure(String problem) {
    return new MeshFailure("rounded to 32-bit floats: " + problem);
  }
}
