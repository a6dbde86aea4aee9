package dryfit.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import de.javagl.jgltf.model.AccessorFloatData;
import de.javagl.jgltf.model.AccessorModel;
import de.javagl.jgltf.model.GltfModel;
import de.javagl.jgltf.model.MeshPrimitiveModel;
import de.javagl.jgltf.model.NodeModel;
import de.javagl.jgltf.model.io.GltfModelReader;
import dryfit.build.Part;
import dryfit.geometry.MassProperties;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Read by JglTF, a library that is not ours, and held to rules of the glTF 2.0 specification. */
class GltfFileTest {
  @TempDir Path folder;

  private Path written() throws IOException {
    Path path = folder.resolve("chair.glb");
    List<NamedMesh> parts =
        TestChair.chair().parts().stream()
            .map(p -> new NamedMesh(p.label(), p.placedMesh()))
            .toList();
    GltfFile file = GltfFile.write(path, parts, "Demo chair");
    double volume = parts.stream().mapToDouble(p -> MassProperties.of(p.mesh()).volume()).sum();
    assertThat(file.volume()).isCloseTo(volume, within(1e-4 * volume));
    return path;
  }

  @Test
  void anotherReaderFindsThePartsByNameInMetresStandingUpright() throws IOException {
    GltfModel model = new GltfModelReader().read(written().toUri());
    List<NodeModel> nodes = model.getSceneModels().get(0).getNodeModels();
    List<Part> parts = TestChair.chair().parts();
    assertThat(nodes)
        .extracting(NodeModel::getName)
        .containsExactlyElementsOf(parts.stream().map(Part::label).toList());
    for (int i = 0; i < parts.size(); i++) {
      Mesh mesh = parts.get(i).placedMesh();
      MeshPrimitiveModel shape =
          nodes.get(i).getMeshModels().get(0).getMeshPrimitiveModels().get(0);
      AccessorModel positions = shape.getAttributes().get("POSITION");
      AccessorFloatData data = (AccessorFloatData) positions.getAccessorData();
      assertThat(shape.getIndices().getCount()).isEqualTo(3 * mesh.triangleCount());
      for (int p = 0; p < mesh.pointCount(); p++) {
        // Up is y; the front of the chair, which is at small y of ours, looks along z.
        Vec3 at = mesh.point(p);
        assertThat(data.get(p, 0)).isCloseTo((float) (at.x() / 1000), within(1e-7f));
        assertThat(data.get(p, 1)).isCloseTo((float) (at.z() / 1000), within(1e-7f));
        assertThat(data.get(p, 2)).isCloseTo((float) (-at.y() / 1000), within(1e-7f));
      }
    }
  }

  // glTF 2.0, 3.6.2.5: minimum and maximum of a POSITION accessor are there and are those of the
  // stored floats; 3.6.2.4: offsets are multiples of the component's size; 4.4: chunks of the
  // container are padded to four bytes and add up to its length, and the binary one is at most
  // three bytes longer than its buffer.
  @Test
  void itKeepsTheRulesOfTheSpecification() throws IOException {
    byte[] bytes = Files.readAllBytes(written());
    ByteBuffer in = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    assertThat(new String(bytes, 0, 4, java.nio.charset.StandardCharsets.US_ASCII))
        .isEqualTo("glTF");
    assertThat(in.getInt(4)).isEqualTo(2);
    assertThat(in.getInt(8)).isEqualTo(bytes.length);
    int text = in.getInt(12);
    int from = 20 + text + 8;
    assertThat(text % 4).isZero();
    assertThat(from + in.getInt(20 + text)).isEqualTo(bytes.length);
    JsonNode root =
        JsonMapper.shared()
            .readTree(new String(bytes, 20, text, java.nio.charset.StandardCharsets.UTF_8));
    assertThat(root.at("/asset/version").asString()).isEqualTo("2.0");
    int buffer = root.at("/buffers/0/byteLength").asInt();
    assertThat(in.getInt(20 + text) - buffer).isBetween(0, 3);
    int end = 0;
    for (JsonNode view : root.path("bufferViews")) {
      assertThat(view.path("byteOffset").asInt()).isEqualTo(end);
      assertThat(end % 4).isZero();
      end += view.path("byteLength").asInt();
    }
    assertThat(end).isEqualTo(buffer);
    int points = 0;
    for (JsonNode accessor : root.path("accessors")) {
      int at =
          from
              + root.at("/bufferViews/" + accessor.path("bufferView").asInt() + "/byteOffset")
                  .asInt();
      int count = accessor.path("count").asInt();
      if (accessor.path("type").asString().equals("VEC3")) {
        points = count;
        for (int k = 0; k < 3; k++) {
          float low = Float.POSITIVE_INFINITY;
          float high = Float.NEGATIVE_INFINITY;
          for (int i = 0; i < count; i++) {
            low = Math.min(low, in.getFloat(at + 12 * i + 4 * k));
            high = Math.max(high, in.getFloat(at + 12 * i + 4 * k));
          }
          assertThat((float) accessor.path("min").path(k).asDouble()).isEqualTo(low);
          assertThat((float) accessor.path("max").path(k).asDouble()).isEqualTo(high);
        }
      } else {
        for (int i = 0; i < count; i++) {
          assertThat(in.getInt(at + 4 * i)).isBetween(0, points - 1);
        }
      }
    }
  }

  @Test
  void theSameSolidsGiveTheSameBytes() throws IOException {
    byte[] one = Files.readAllBytes(written());
    assertThat(Files.readAllBytes(written())).isEqualTo(one);
  }

  @Test
  void aFileThatIsCutShortOrForeignIsRefused() throws IOException {
    byte[] whole = Files.readAllBytes(written());
    for (int length : new int[] {0, 4, 20, whole.length - 4}) {
      byte[] cut = java.util.Arrays.copyOf(whole, length);
      assertThatThrownBy(() -> GltfReader.nodes(cut)).isInstanceOf(UnsoundFile.class);
    }
  }
}
