package dryfit.export;

import static dryfit.export.JsonOut.NODES;

import dryfit.document.Problem;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Why a document was refused, as JSON; described by {@code problems-1.schema.json}. */
public final class ProblemsJson {
  private ProblemsJson() {}

  public static byte[] bytes(List<Problem> problems) {
    ObjectNode root = NODES.objectNode();
    root.put("format", "dryfit-problems/1");
    ArrayNode all = root.putArray("problems");
    for (Problem p : problems) {
      ObjectNode out = all.addObject();
      out.put("code", p.code());
      out.put("file", p.file());
      out.put("line", p.line());
      out.put("pointer", p.pointer());
      out.put("found", p.found());
      out.put("allowed", p.allowed());
      p.nearest().ifPresentOrElse(n -> out.put("nearest", n), () -> out.putNull("nearest"));
      out.put("message", p.message());
    }
    return JsonOut.bytes(root);
  }
}
