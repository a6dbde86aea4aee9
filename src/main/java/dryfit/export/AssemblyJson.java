package dryfit.export;

import static dryfit.export.JsonOut.NODES;
import static dryfit.export.JsonOut.degrees;
import static dryfit.export.JsonOut.number;
import static dryfit.export.JsonOut.place;
import static dryfit.export.JsonOut.texts;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Design;
import dryfit.fit.order.Assembling;
import dryfit.fit.order.Mark;
import dryfit.fit.order.Remedy;
import dryfit.fit.order.Step;
import dryfit.fit.order.Step.Move;
import dryfit.fit.order.Step.Tip;
import dryfit.fit.order.Stuck;
import java.util.List;
import java.util.Locale;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The order of assembly as JSON for other programs, described by {@code assembly-1.schema.json}.
 * Millimetres and degrees in chair space; the same order gives the same bytes.
 */
public final class AssemblyJson {
  private AssemblyJson() {}

  public static byte[] bytes(Assembling order) {
    Chair chair = order.chair();
    Design design = chair.design();
    ObjectNode root = NODES.objectNode();
    root.put("format", "dryfit-assembly/1");
    root.put("model", design.name());
    root.put("file", design.file());
    root.put("variant", design.variant());
    root.put("labels", word(design.labels()));
    root.put("possible", order.possible());
    ArrayNode glued = root.putArray("glued");
    order.glued().forEach(g -> glued.add(labels(chair, g)));
    ArrayNode steps = root.putArray("steps");
    order.steps().forEach(s -> steps.add(step(chair, s)));
    ArrayNode stuck = root.putArray("stuck");
    order.stuck().forEach(s -> stuck.add(stuck(chair, s)));
    ArrayNode asOne = root.putArray("asOne");
    order.asOne().forEach(g -> asOne.add(labels(chair, g)));
    ArrayNode openings = root.putArray("openings");
    order.openings().forEach(names -> openings.add(texts(names)));
    ArrayNode marks = root.putArray("marks");
    order.marks().forEach(m -> marks.add(mark(chair, m)));
    return JsonOut.bytes(root);
  }

  private static JsonNode mark(Chair chair, Mark mark) {
    ObjectNode out = NODES.objectNode();
    out.put("part", chair.parts().get(mark.part()).label());
    ArrayNode wrong = out.putArray("wrong");
    for (Mark.Wrong w : mark.wrong()) {
      ObjectNode way = NODES.objectNode();
      way.put("endForEnd", w.endForEnd());
      way.put("turned", 90 * w.quarters());
      way.put("swapped", w.swapped());
      wrong.add(way);
    }
    out.set("elsewhere", labels(chair, mark.elsewhere()));
    return out;
  }

  private static JsonNode step(Chair chair, Step step) {
    ObjectNode out = NODES.objectNode();
    out.put("kind", word(step.kind()));
    out.set("onto", labels(chair, step.onto()));
    ArrayNode moves = out.putArray("moves");
    step.moves().forEach(m -> moves.add(move(chair, m)));
    out.set("closes", joints(step.closes()));
    ArrayNode asides = out.putArray("aside");
    for (Step.Aside a : step.aside()) {
      ObjectNode one = NODES.objectNode();
      one.put("joint", a.joint().label());
      one.set("off", degrees(a.off()));
      one.set("aside", number(a.aside()));
      asides.add(one);
    }
    out.set("held", labels(chair, step.held()));
    return out;
  }

  private static JsonNode move(Chair chair, Move move) {
    ObjectNode out = NODES.objectNode();
    out.set("parts", labels(chair, move.parts()));
    out.set("push", place(move.push()));
    out.set("share", number(move.share()));
    move.tip().ifPresentOrElse(t -> out.set("tip", tip(t)), () -> out.putNull("tip"));
    move.last().ifPresentOrElse(l -> out.set("last", last(l)), () -> out.putNull("last"));
    return out;
  }

  private static JsonNode last(Step.Leg leg) {
    ObjectNode out = NODES.objectNode();
    out.set("push", place(leg.push()));
    out.set("far", number(leg.far()));
    return out;
  }

  private static JsonNode tip(Tip tip) {
    ObjectNode out = NODES.objectNode();
    out.set("pivot", place(tip.pivot()));
    out.set("axis", place(tip.axis()));
    out.set("angle", degrees(tip.angle()));
    out.set("lift", place(tip.lift()));
    return out;
  }

  private static JsonNode stuck(Chair chair, Stuck stuck) {
    ObjectNode out = NODES.objectNode();
    out.set("parts", labels(chair, stuck.parts()));
    out.set("joints", joints(stuck.joints()));
    ArrayNode collide = out.putArray("collide");
    stuck.collide().forEach(pair -> collide.add(labels(chair, pair)));
    ArrayNode remedies = out.putArray("remedies");
    stuck.remedies().forEach(r -> remedies.add(remedy(r)));
    return out;
  }

  private static JsonNode remedy(Remedy remedy) {
    ObjectNode out = NODES.objectNode();
    out.set("joints", joints(remedy.joints()));
    out.set("entry", place(remedy.entry()));
    out.set("off", degrees(remedy.off()));
    out.set("longest", number(remedy.longest()));
    return out;
  }

  private static ArrayNode labels(Chair chair, List<Integer> parts) {
    return texts(parts.stream().map(chair.parts()::get).map(Part::label).toList());
  }

  private static ArrayNode joints(List<Joint> joints) {
    return texts(joints.stream().map(Joint::label).toList());
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
