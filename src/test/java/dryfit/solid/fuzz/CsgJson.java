package dryfit.solid.fuzz;

import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import dryfit.solid.Csg;
import java.util.List;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Writes expressions as the kernel corpus reads them, every leaf as a polyhedron with all its
 * digits. The triangles go along for programs that take nothing else.
 */
public final class CsgJson {
  private static final JsonMapper JSON = new JsonMapper();

  private CsgJson() {}

  /** The whole case: what it is, the solid, and what its volume should be. */
  public static String of(String about, Csg solid, double volume) {
    ObjectNode out = JSON.createObjectNode();
    out.put("about", about);
    out.put("source", "none: found by random trial");
    out.set("solid", node(solid));
    out.put("volume", volume);
    out.put("relative", 1e-9);
    return JSON.writeValueAsString(out);
  }

  static ObjectNode node(Csg what) {
    ObjectNode out = JSON.createObjectNode();
    if (what instanceof Csg.Leaf leaf) {
      out.set("polyhedron", polyhedron(leaf.mesh()));
    } else if (what instanceof Csg.Union union) {
      out.set("union", nodes(union.of()));
    } else if (what instanceof Csg.Common common) {
      out.set("common", nodes(common.of()));
    } else if (what instanceof Csg.Cut cut) {
      ArrayNode all = JSON.createArrayNode();
      all.add(node(cut.from()));
      all.addAll(nodes(cut.tools()));
      out.set("cut", all);
    }
    return out;
  }

  private static ArrayNode nodes(List<Csg> all) {
    ArrayNode out = JSON.createArrayNode();
    all.forEach(each -> out.add(node(each)));
    return out;
  }

  private static ObjectNode polyhedron(Mesh mesh) {
    ObjectNode out = JSON.createObjectNode();
    ArrayNode points = out.putArray("points");
    for (int i = 0; i < mesh.pointCount(); i++) {
      Vec3 p = mesh.point(i);
      points.addArray().add(p.x()).add(p.y()).add(p.z());
    }
    ArrayNode faces = out.putArray("faces");
    for (int f = 0; f < mesh.faceCount(); f++) {
      ArrayNode loop = faces.addArray();
      for (int point : mesh.loops(f)[0]) {
        loop.add(point);
      }
    }
    ArrayNode triangles = out.putArray("triangles");
    for (int corner : mesh.triangles()) {
      triangles.add(corner);
    }
    return out;
  }
}
