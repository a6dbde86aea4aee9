package dryfit.app;

import dryfit.export.GltfFile;
import dryfit.export.NamedMesh;
import dryfit.export.SolidFile;
import dryfit.export.StlFile;
import dryfit.export.ThreeMfFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The formats that solids can be written in. */
public enum SolidFormat {
  /** Triangles without unit or names; read by everything. */
  STL("stl", "stl"),
  /** The text form of the same. */
  STL_TEXT("", "stl"),
  /** Named objects with a unit, for printers. */
  THREE_MF("3mf", "3mf"),
  /** Named nodes in metres, for showing. */
  GLTF("gltf", "glb");

  private final String word;
  private final String ending;

  SolidFormat(String word, String ending) {
    this.word = word;
    this.ending = ending;
  }

  /** What a file's name ends with. */
  public String ending() {
    return ending;
  }

  public static Optional<SolidFormat> named(String word) {
    return Arrays.stream(values()).filter(f -> !word.isEmpty() && f.word.equals(word)).findFirst();
  }

  /** The words that can be asked for. */
  public static List<String> words() {
    return Arrays.stream(values()).map(f -> f.word).filter(w -> !w.isEmpty()).toList();
  }

  SolidFile write(Path path, List<NamedMesh> solids, String title) throws IOException {
    return switch (this) {
      case STL -> StlFile.write(path, meshes(solids), title, StlFile.Form.BINARY);
      case STL_TEXT -> StlFile.write(path, meshes(solids), title, StlFile.Form.ASCII);
      case THREE_MF -> ThreeMfFile.write(path, solids, title);
      case GLTF -> GltfFile.write(path, solids, title);
    };
  }

  private static List<dryfit.geometry.Mesh> meshes(List<NamedMesh> solids) {
    return solids.stream().map(NamedMesh::mesh).toList();
  }
}
