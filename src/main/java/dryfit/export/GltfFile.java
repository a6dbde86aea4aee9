package dryfit.export;

import dryfit.geometry.Box;
import dryfit.geometry.MassProperties;
import dryfit.geometry.Mesh;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A finished glTF file in its binary form: written, read back, and every mesh in it found closed.
 *
 * @param path where it is
 * @param solids how many nodes with a mesh it holds
 * @param triangles how many triangles
 * @param bounds what it takes up, mm
 * @param volume of all meshes together, cubic millimetres
 */
public record GltfFile(Path path, int solids, int triangles, Box bounds, double volume)
    implements SolidFile {

  /**
   * Writes solids into one file, each a node with its name, where they stand to each other.
   *
   * @param solids at least one
   * @param title of the whole
   * @throws IOException if the disk does not take it
   * @throws UnsoundFile if a solid does not stay closed
   */
  public static GltfFile write(Path path, List<NamedMesh> solids, String title) throws IOException {
    List<NamedMesh> metres = new ArrayList<>();
    for (NamedMesh solid : solids) {
      Mesh turned = GltfWriter.inMetresYUp(solid.mesh());
      metres.add(new NamedMesh(solid.name(), StlFile.rounded(turned, solid.name())));
    }
    byte[] bytes = GltfWriter.bytes(metres, title);
    SafeFile.write(path, bytes, readBack -> check(readBack, metres));
    return new GltfFile(
        path,
        metres.size(),
        metres.stream().mapToInt(m -> m.mesh().triangleCount()).sum(),
        solids.stream().map(m -> m.mesh().bounds()).reduce(Box::with).orElseThrow(),
        metres.stream().mapToDouble(m -> MassProperties.of(m.mesh()).volume()).sum() * 1e9);
  }

  /** Holds what was read back to what was written. */
  static void check(byte[] file, List<NamedMesh> written) {
    List<NamedMesh> read = GltfReader.nodes(file);
    if (!read.stream()
        .map(NamedMesh::name)
        .toList()
        .equals(written.stream().map(NamedMesh::name).toList())) {
      throw new UnsoundFile("the file does not hold the nodes that were written");
    }
    for (NamedMesh node : read) {
      StlFile.closed(node.mesh());
    }
  }
}
