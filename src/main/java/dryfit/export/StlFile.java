package dryfit.export;

import dryfit.geometry.Box;
import dryfit.geometry.FloatGrid;
import dryfit.geometry.MassProperties;
import dryfit.geometry.Mesh;
import dryfit.geometry.MeshCheck;
import dryfit.geometry.MeshFailure;
import dryfit.geometry.Vec3;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A finished STL file: written, read back and found closed.
 *
 * @param path where it is
 * @param solids how many closed solids it holds
 * @param triangles how many triangles
 * @param bounds what it takes up, mm
 * @param volume of all solids together, cubic millimetres
 */
public record StlFile(Path path, int solids, int triangles, Box bounds, double volume)
    implements SolidFile {

  /** The two forms of the format. */
  public enum Form {
    BINARY,
    ASCII
  }

  /**
   * Writes solids into one file. Each is rounded to what the format holds, and after reading the
   * file back each must be closed, outward, and without a degenerate or repeated triangle;
   * otherwise there is no file.
   *
   * @param solids closed surfaces, mm, at least one
   * @param name goes into the file
   * @throws IOException if the disk does not take it
   * @throws UnsoundFile if a solid does not stay closed
   */
  public static StlFile write(Path path, List<Mesh> solids, String name, Form form)
      throws IOException {
    List<Mesh> rounded = new ArrayList<>();
    for (Mesh solid : solids) {
      rounded.add(rounded(solid, name));
    }
    byte[] bytes =
        form == Form.BINARY ? StlWriter.binary(rounded, name) : StlWriter.ascii(rounded, name);
    SafeFile.write(path, bytes, readBack -> check(readBack, rounded));
    Box bounds = rounded.stream().map(Mesh::bounds).reduce(Box::with).orElseThrow();
    int triangles = rounded.stream().mapToInt(Mesh::triangleCount).sum();
    double volume = rounded.stream().mapToDouble(m -> MassProperties.of(m).volume()).sum();
    return new StlFile(path, rounded.size(), triangles, bounds, volume);
  }

  /** The solid as 32-bit files hold it, still closed. */
  static Mesh rounded(Mesh solid, String name) {
    if (solid.isEmpty()) {
      throw new UnsoundFile(name + ": there is no wood left to write");
    }
    try {
      return FloatGrid.snapped(solid);
    } catch (MeshFailure e) {
      throw new UnsoundFile(name + ": " + e.getMessage());
    }
  }

  /** Holds what was read back to the rules, solid by solid in the order they were written. */
  static void check(byte[] file, List<Mesh> written) {
    List<Vec3> corners = StlReader.corners(file);
    int from = 0;
    for (Mesh mesh : written) {
      int to = from + 3 * mesh.triangleCount();
      if (to > corners.size()) {
        throw new UnsoundFile("the file holds fewer triangles than were written");
      }
      closed(StlReader.welded(corners.subList(from, to)));
      from = to;
    }
    if (from != corners.size()) {
      throw new UnsoundFile("the file holds more triangles than were written");
    }
  }

  /** Throws unless what was read back is closed, outward, and has no triangle twice. */
  static void closed(Mesh mesh) {
    List<String> problems = MeshCheck.problemsAsFloats(mesh);
    if (!problems.isEmpty()) {
      throw new UnsoundFile("read back, " + problems.get(0));
    }
    if (!(MassProperties.of(mesh).volume() > 0)) {
      throw new UnsoundFile("read back, the surface is inside out");
    }
    Set<Set<Integer>> seen = new HashSet<>();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      if (!seen.add(Set.of(mesh.corner(t, 0), mesh.corner(t, 1), mesh.corner(t, 2)))) {
        throw new UnsoundFile("read back, a triangle is there twice");
      }
    }
  }
}
