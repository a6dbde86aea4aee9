package dryfit.export;

import static dryfit.export.JsonOut.NODES;

import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import dryfit.solid.Csg;
import java.util.List;
import java.util.OptionalDouble;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Writes an expression of solids as the kernel corpus reads it: every shape as a polyhedron with
 * all digits, and the JSON pointer of what made it. A face with holes is a list of loops. The
 * triangles go along for programs that take nothing else.
 */
public final class SolidJson {
  private SolidJson() {}

  /**
   * A whole case.
   *
   * @param about what it is, a sentence
   * @param source where it comes from
   * @param volume what the volume must be, mm^3, if that is known
   */
  public static byte[] bytes(String about, String source, Csg solid, OptionalDouble volume) {
    ObjectNode out = NODES.objectNode();
    out.put("about", about);
    out.put("source", source);
    out.set("solid", node(solid));
    volume.ifPresent(v -> out.put("volume", v));
    out.put("relative", 1e-9);
    return JsonOut.bytes(out);
  }

  private static ObjectNode node(Csg what) {
    ObjectNode out = NODES.objectNode();
    if (what instanceof Csg.Leaf leaf) {
      out.set("polyhedron", polyhedron(leaf.mesh()));
    } else if (what instanceof Csg.Union union) {
      out.set("union", nodes(union.of()));
    } else if (what instanceof Csg.Common common) {
      out.set("common", nodes(common.of()));
    } else if (what instanceof Csg.Cut cut) {
      ArrayNode all = NODES.arrayNode();
      all.add(node(cut.from()));
      all.addAll(nodes(cut.tools()));
      out.set("cut", all);
    }
    return out;
  }

  private static ArrayNode nodes(List<Csg> all) {
    ArrayNode out = NODES.arrayNode();
    all.forEach(each -> out.add(node(each)));
    return out;
  }

  private static ObjectNode polyhedron(Mesh mesh) {
    ObjectNode out = NODES.objectNode();
    if (mesh.faceCount() > 0) {
      out.put("origin", mesh.origin(0));
    }
    ArrayNode points = out.putArray("points");
    for (int i = 0; i < mesh.pointCount(); i++) {
      Vec3 p = mesh.point(i);
      points.addArray().add(p.x()).add(p.y()).add(p.z());
    }
    ArrayNode faces = out.putArray("faces");
    for (int f = 0; f < mesh.faceCount(); f++) {
      int[][] loops = mesh.loops(f);
      ArrayNode face = faces.addArray();
      for (int[] loop : loops) {
        ArrayNode corners = loops.length == 1 ? face : face.addArray();
        for (int point : loop) {
          corners.add(point);
        }
      }
    }
    ArrayNode triangles = out.putArray("triangles");
    for (int corner : mesh.triangles()) {
      triangles.add(corner);
    }
    return out;
  }
}
