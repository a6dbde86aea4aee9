package dryfit.export;

import dryfit.geometry.Frame;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * glTF 2.0 in its binary form: one node with one mesh a solid, in metres, y up, the front of the
 * chair looking along +z as the format wants it. Normals are left out, which asks the reader for
 * flat faces. Source: Khronos Group, "glTF 2.0 Specification", 2.0.1 (ISO/IEC 12113:2022), sections
 * 3.4, 3.6, 3.7.2 and 4.4.
 */
final class GltfWriter {
  static final int MAGIC = 0x46546C67;
  static final int JSON_CHUNK = 0x4E4F534A;
  static final int BINARY_CHUNK = 0x004E4942;
  static final int FLOAT = 5126;
  static final int UNSIGNED_INT = 5125;

  private static final int ARRAY_BUFFER = 34962;
  private static final int ELEMENT_ARRAY_BUFFER = 34963;

  private GltfWriter() {}

  /** The mesh as the format wants it: metres, y up, z towards whoever faces the chair. */
  static Mesh inMetresYUp(Mesh mesh) {
    Mesh turned = mesh.placed(new Frame(Vec3.ZERO, Vec3.RIGHT, Vec3.UP.negated(), Vec3.BACK));
    double[] xyz = turned.coordinates();
    for (int i = 0; i < xyz.length; i++) {
      xyz[i] = xyz[i] / 1000 + 0.0;
    }
    int[][][] faces = new int[mesh.faceCount()][][];
    Arrays.setAll(faces, mesh::loops);
    return new Mesh(
        xyz, faces, mesh.triangles(), mesh.faceOfTriangle(), new int[faces.length], List.of(""));
  }

  /**
   * The file.
   *
   * @param solids closed, each coordinate a float, metres, y up
   */
  static byte[] bytes(List<NamedMesh> solids, String title) {
    ObjectNode root = JsonOut.NODES.objectNode();
    root.putObject("asset").put("version", "2.0").put("generator", "Dryfit");
    root.put("scene", 0);
    ObjectNode scene = root.putArray("scenes").addObject();
    scene.put("name", title);
    ArrayNode shown = scene.putArray("nodes");
    ArrayNode nodes = root.putArray("nodes");
    ArrayNode meshes = root.putArray("meshes");
    wood(root.putArray("materials").addObject());
    ArrayNode accessors = root.putArray("accessors");
    ArrayNode views = root.putArray("bufferViews");
    int size = solids.stream().mapToInt(s -> bytesOf(s.mesh())).sum();
    ByteBuffer data = ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
    for (int i = 0; i < solids.size(); i++) {
      NamedMesh solid = solids.get(i);
      shown.add(i);
      nodes.addObject().put("name", solid.name()).put("mesh", i);
      ObjectNode mesh = meshes.addObject();
      mesh.put("name", solid.name());
      ObjectNode primitive = mesh.putArray("primitives").addObject();
      primitive.putObject("attributes").put("POSITION", 2 * i);
      primitive.put("indices", 2 * i + 1).put("material", 0);
      points(solid.mesh(), data, views.addObject(), accessors.addObject(), 2 * i);
      triangles(solid.mesh(), data, views.addObject(), accessors.addObject(), 2 * i + 1);
    }
    root.putArray("buffers").addObject().put("byteLength", size);
    return container(JsonOut.bytes(root), data.array());
  }

  /** A plain light wood, our own choice by eye; without it a reader shows dull metal. */
  private static void wood(ObjectNode material) {
    material.put("name", "wood");
    ObjectNode surface = material.putObject("pbrMetallicRoughness");
    surface.putArray("baseColorFactor").add(0.71).add(0.53).add(0.32).add(1);
    surface.put("metallicFactor", 0).put("roughnessFactor", 0.75);
  }

  private static int bytesOf(Mesh mesh) {
    return 12 * mesh.pointCount() + 12 * mesh.triangleCount();
  }

  private static void points(
      Mesh mesh, ByteBuffer data, ObjectNode view, ObjectNode accessor, int number) {
    view(view, data.position(), 12 * mesh.pointCount(), ARRAY_BUFFER);
    float[] low = {Float.POSITIVE_INFINITY, Float.POSITIVE_INFINITY, Float.POSITIVE_INFINITY};
    float[] high = {Float.NEGATIVE_INFINITY, Float.NEGATIVE_INFINITY, Float.NEGATIVE_INFINITY};
    for (int i = 0; i < mesh.pointCount(); i++) {
      Vec3 p = mesh.point(i);
      float[] xyz = {(float) p.x(), (float) p.y(), (float) p.z()};
      for (int k = 0; k < 3; k++) {
        data.putFloat(xyz[k]);
        low[k] = Math.min(low[k], xyz[k]);
        high[k] = Math.max(high[k], xyz[k]);
      }
    }
    accessor.put("bufferView", number).put("componentType", FLOAT);
    accessor.put("count", mesh.pointCount()).put("type", "VEC3");
    // The limits must be those of the stored floats to the last bit, so they are not rounded.
    ArrayNode min = accessor.putArray("min");
    ArrayNode max = accessor.putArray("max");
    for (int k = 0; k < 3; k++) {
      min.add(low[k]);
      max.add(high[k]);
    }
  }

  private static void triangles(
      Mesh mesh, ByteBuffer data, ObjectNode view, ObjectNode accessor, int number) {
    view(view, data.position(), 12 * mesh.triangleCount(), ELEMENT_ARRAY_BUFFER);
    for (int corner : mesh.triangles()) {
      data.putInt(corner);
    }
    accessor.put("bufferView", number).put("componentType", UNSIGNED_INT);
    accessor.put("count", 3 * mesh.triangleCount()).put("type", "SCALAR");
  }

  private static void view(ObjectNode view, int from, int length, int target) {
    view.put("buffer", 0).put("byteOffset", from).put("byteLength", length).put("target", target);
  }

  /** Both chunks, each padded to four bytes: the text with spaces, the numbers with zeros. */
  private static byte[] container(byte[] json, byte[] data) {
    int text = (json.length + 3) / 4 * 4;
    int total = 12 + 8 + text + 8 + data.length;
    ByteBuffer out = ByteBuffer.allocate(total).order(ByteOrder.LITTLE_ENDIAN);
    out.putInt(MAGIC).putInt(2).putInt(total);
    out.putInt(text).putInt(JSON_CHUNK).put(json);
    for (int i = json.length; i < text; i++) {
      out.put((byte) ' ');
    }
    out.putInt(data.length).putInt(BINARY_CHUNK).put(data);
    return out.array();
  }
}
