package dryfit.export;

import static dryfit.export.JsonOut.NODES;
import static dryfit.export.JsonOut.degrees;
import static dryfit.export.JsonOut.number;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.fit.JointAngles;
import dryfit.fit.KnifeLine;
import dryfit.fit.MortiseAngles;
import dryfit.fit.RakeAndSplay;
import dryfit.fit.SawSet;
import dryfit.fit.ShoulderAngles;
import dryfit.geometry.Lean;
import dryfit.measure.BenchAngle;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The angles of a joint and the rake and splay of an upright part as JSON; degrees and millimetres.
 */
final class AngleJson {
  private AngleJson() {}

  static JsonNode angles(Chair chair, Joint joint) {
    JointAngles angles = JointAngles.of(chair, joint);
    ObjectNode out = NODES.objectNode();
    out.set("shoulder", angles.shoulder().map(AngleJson::shoulder).orElse(NODES.nullNode()));
    out.set("mortise", angles.mortise().map(AngleJson::mortise).orElse(NODES.nullNode()));
    return out;
  }

  private static JsonNode shoulder(ShoulderAngles s) {
    ObjectNode out = NODES.objectNode();
    out.set("angle", angle(s.offSquare()));
    out.put("longest", s.longest());
    out.set("wide", line(s.wide()));
    out.set("narrow", line(s.narrow()));
    out.set("saw", s.saw().map(AngleJson::saw).orElse(NODES.nullNode()));
    return out;
  }

  /** Every reading of one angle; the slope is the rise in a run of one. */
  private static JsonNode angle(BenchAngle a) {
    ObjectNode out = NODES.objectNode();
    out.set("offSquare", degrees(a.offSquare()));
    out.set("fromLongEdge", degrees(a.fromLongEdge()));
    out.set("fromShortEdge", degrees(a.fromShortEdge()));
    out.set("rise", number(a.rise()));
    return out;
  }

  private static JsonNode line(Optional<KnifeLine> line) {
    if (line.isEmpty()) {
      return NODES.nullNode();
    }
    KnifeLine l = line.get();
    ObjectNode out = NODES.objectNode();
    out.put("face", l.face());
    out.put("opposite", l.opposite());
    out.put("longEdge", l.angle().isSquare() ? "" : l.longEdge());
    out.put("shortEdge", l.angle().isSquare() ? "" : l.shortEdge());
    out.set("angle", angle(l.angle()));
    out.set("longer", number(l.longer()));
    return out;
  }

  private static JsonNode saw(SawSet saw) {
    ObjectNode out = NODES.objectNode();
    out.put("up", saw.up());
    out.set("mitre", angle(saw.mitre()));
    out.set("tilt", angle(saw.tilt()));
    out.put("longOn", saw.mitre().isSquare() ? "" : saw.longOnRight() ? "right" : "left");
    out.put("longFace", saw.tilt().isSquare() ? "" : saw.longUp() ? "upper" : "lower");
    return out;
  }

  private static JsonNode mortise(MortiseAngles m) {
    ObjectNode out = NODES.objectNode();
    out.set("lean", angle(m.lean()));
    out.set("along", share(m.along()));
    out.set("across", share(m.across()));
    ObjectNode sight = out.putObject("sightLine");
    sight.put("from", m.sight().from());
    sight.set("angle", degrees(m.sight().angle()));
    sight.put("otherFrom", m.sight().otherFrom());
    sight.set("otherAngle", degrees(m.sight().otherAngle()));
    sight.put("towards", m.sight().towards());
    out.set("opening", m.opening().map(AngleJson::opening).orElse(NODES.nullNode()));
    out.set("deepEdge", number(m.deepEdge()));
    return out;
  }

  private static JsonNode share(MortiseAngles.Share share) {
    ObjectNode out = NODES.objectNode();
    out.set("angle", angle(share.angle()));
    out.put("towards", share.towards());
    return out;
  }

  private static JsonNode opening(MortiseAngles.Opening o) {
    ObjectNode out = NODES.objectNode();
    out.set("acrossCheeks", number(o.acrossCheeks()));
    out.set("acrossEdges", number(o.acrossEdges()));
    out.set("corner", degrees(o.corner().offSquare()));
    out.put("firstCheek", o.firstCheek());
    out.set("cheekSooner", number(o.cheekSooner()));
    out.put("firstEdge", o.firstEdge());
    out.set("edgeSooner", number(o.edgeSooner()));
    return out;
  }

  static ArrayNode rakeAndSplay(Chair chair) {
    ArrayNode out = NODES.arrayNode();
    for (RakeAndSplay one : RakeAndSplay.of(chair)) {
      ObjectNode node = out.addObject();
      node.put("part", one.part().label());
      node.set("floor", view(one.floor()));
      node.set("seat", one.seat().map(AngleJson::view).orElse(NODES.nullNode()));
    }
    return out;
  }

  private static JsonNode view(RakeAndSplay.View view) {
    Lean lean = view.lean();
    ObjectNode out = NODES.objectNode();
    out.set("rake", degrees(Math.abs(lean.rake())));
    out.put("rakeFoot", view.rakeFoot());
    out.set("splay", degrees(Math.abs(lean.splay())));
    out.put("splayFoot", view.splayFoot());
    out.set("resultant", angle(BenchAngle.of(lean.resultant())));
    out.set("sightFromForeAft", degrees(Math.abs(lean.sightLine())));
    out.set("sightFromSide", degrees(Math.abs(lean.sightLineFromSide())));
    out.set("tip", degrees(Math.abs(lean.turns().tip())));
    out.set("swing", degrees(Math.abs(lean.turns().swing())));
    return out;
  }
}
