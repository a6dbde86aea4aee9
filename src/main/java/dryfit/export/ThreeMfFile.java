package dryfit.export;

import dryfit.geometry.Box;
import dryfit.geometry.MassProperties;
import dryfit.geometry.Mesh;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A finished 3MF file: written, read back, and every object in it found closed.
 *
 * @param path where it is
 * @param solids how many objects it holds
 * @param triangles how many triangles
 * @param bounds what it takes up, mm
 * @param volume of all objects together, cubic millimetres
 */
public record ThreeMfFile(Path path, int solids, int triangles, Box bounds, double volume)
    implements SolidFile {

  /**
   * Writes solids into one file, each an object with its name, where they stand to each other.
   *
   * @param solids at least one
   * @param title of the whole
   * @throws IOException if the disk does not take it
   * @throws UnsoundFile if a solid does not stay closed
   */
  public static ThreeMfFile write(Path path, List<NamedMesh> solids, String title)
      throws IOException {
    List<NamedMesh> rounded = new ArrayList<>();
    for (NamedMesh solid : solids) {
      rounded.add(new NamedMesh(solid.name(), StlFile.rounded(solid.mesh(), solid.name())));
    }
    byte[] bytes = ThreeMfWriter.bytes(rounded, title);
    SafeFile.write(path, bytes, readBack -> check(readBack, rounded));
    List<Mesh> meshes = rounded.stream().map(NamedMesh::mesh).toList();
    return new ThreeMfFile(
        path,
        meshes.size(),
        meshes.stream().mapToInt(Mesh::triangleCount).sum(),
        meshes.stream().map(Mesh::bounds).reduce(Box::with).orElseThrow(),
        meshes.stream().mapToDouble(m -> MassProperties.of(m).volume()).sum());
  }

  /** Holds what was read back to what was written. */
  static void check(byte[] file, List<NamedMesh> written) {
    List<NamedMesh> read = ThreeMfReader.objects(file);
    if (!read.stream()
        .map(NamedMesh::name)
        .toList()
        .equals(written.stream().map(NamedMesh::name).toList())) {
      throw new UnsoundFile("the file does not hold the objects that were written");
    }
    for (NamedMesh object : read) {
      StlFile.closed(object.mesh());
    }
  }
}
