package dryfit.export;

import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads the nodes of a binary glTF file as far as we write it: a mesh a node, in metres, y up. */
final class GltfReader {
  private final JsonNode root;
  private final ByteBuffer data;

  private GltfReader(JsonNode root, ByteBuffer data) {
    this.root = root;
    this.data = data;
  }

  /**
   * The nodes in the order of the file.
   *
   * @throws UnsoundFile if it is not such a file
   */
  static List<NamedMesh> nodes(byte[] file) {
    ByteBuffer in = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
    try {
      if (in.getInt() != GltfWriter.MAGIC || in.getInt() != 2 || in.getInt() != file.length) {
        throw new UnsoundFile("this is not a binary glTF file");
      }
      JsonNode root = JsonMapper.shared().readTree(chunk(in, GltfWriter.JSON_CHUNK));
      byte[] data = chunk(in, GltfWriter.BINARY_CHUNK);
      GltfReader reader =
          new GltfReader(root, ByteBuffer.wrap(data).order(ByteOrder.LITTLE_ENDIAN));
      return reader.read();
    } catch (BufferUnderflowException | IndexOutOfBoundsException | JacksonException e) {
      throw new UnsoundFile("the glTF file does not hold what it says");
    }
  }

  private static byte[] chunk(ByteBuffer in, int kind) {
    int length = in.getInt();
    if (in.getInt() != kind || length > in.remaining() || length < 0) {
      throw new UnsoundFile("the chunks of the glTF file are not in order");
    }
    byte[] bytes = new byte[length];
    in.get(bytes);
    return bytes;
  }

  private List<NamedMesh> read() {
    List<NamedMesh> nodes = new ArrayList<>();
    for (JsonNode node : root.path("nodes")) {
      JsonNode shape =
          root.path("meshes").path(node.path("mesh").asInt()).path("primitives").path(0);
      nodes.add(
          new NamedMesh(
              node.path("name").asString(),
              ThreeMfReader.triangles(
                  points(shape.path("attributes").path("POSITION").asInt()),
                  corners(shape.path("indices").asInt()))));
    }
    return nodes;
  }

  private double[] points(int accessor) {
    int at = from(accessor);
    double[] xyz = new double[3 * count(accessor)];
    for (int i = 0; i < xyz.length; i++) {
      xyz[i] = data.getFloat(at + 4 * i);
    }
    return xyz;
  }

  private int[] corners(int accessor) {
    int at = from(accessor);
    int[] corners = new int[count(accessor)];
    for (int i = 0; i < corners.length; i++) {
      corners[i] = data.getInt(at + 4 * i);
    }
    return corners;
  }

  private int from(int accessor) {
    int view = root.path("accessors").path(accessor).path("bufferView").asInt();
    return root.path("bufferViews").path(view).path("byteOffset").asInt();
  }

  private int count(int accessor) {
    return root.path("accessors").path(accessor).path("count").asInt();
  }
}
