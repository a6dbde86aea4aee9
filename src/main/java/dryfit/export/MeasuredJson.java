package dryfit.export;

import static dryfit.export.JsonOut.NODES;
import static dryfit.export.JsonOut.degrees;
import static dryfit.export.JsonOut.number;
import static dryfit.export.JsonOut.texts;

import dryfit.document.Quantity;
import dryfit.fit.AsMeasured.Told;
import dryfit.fit.loop.Afterwards;
import dryfit.fit.loop.Cause;
import dryfit.fit.loop.HeldOpen;
import dryfit.fit.loop.HeldOpen.Suspect;
import dryfit.fit.loop.LeftOut;
import dryfit.fit.loop.Remade;
import dryfit.fit.loop.Remade.Because;
import java.util.List;
import java.util.OptionalDouble;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What follows from what was measured, as JSON; millimetres and degrees. */
public final class MeasuredJson {
  private MeasuredJson() {}

  public static byte[] of(Afterwards all) {
    ObjectNode root = NODES.objectNode();
    root.put("format", "dryfit-measured/1");
    ArrayNode told = root.putArray("measured");
    all.told().forEach(t -> told.add(told(t)));
    ArrayNode open = root.putArray("heldOpen");
    all.open().forEach(h -> open.add(heldOpen(h)));
    Remade remade = all.remade();
    root.set("made", texts(remade.made()));
    ArrayNode changes = root.putArray("makeOtherwise");
    for (Remade.Change c : remade.changes()) {
      ObjectNode out = changes.addObject();
      out.put("part", c.part());
      out.put("what", c.what());
      out.put("unit", c.angle() ? "deg" : "mm");
      out.set("planned", number(c.planned()));
      out.set("by", c.angle() ? degrees(c.by()) : number(c.by()));
      because(out, c.because());
    }
    ArrayNode conflicts = root.putArray("atOdds");
    for (Remade.Conflict c : remade.conflicts()) {
      ObjectNode out = conflicts.addObject();
      out.put("joint", c.joint());
      out.set("open", number(c.open()));
      out.set("limit", number(c.limit()));
      because(out, c.because());
    }
    ArrayNode cures = root.putArray("cures");
    for (Remade.Cure c : remade.cures()) {
      ObjectNode out = cures.addObject();
      out.put("how", c.trims() ? "trim" : "anew");
      out.set("parts", texts(c.parts()));
      out.set("by", number(c.by()));
    }
    ArrayNode frames = root.putArray("diagonals");
    for (Remade.Square s : remade.frames()) {
      ObjectNode out = frames.addObject();
      out.put("frame", s.frame());
      out.set("planned", number(s.planned()));
      out.set("expected", number(s.expected()));
      out.set("measured", number(s.measured()));
      out.set("racked", number(s.racked()));
      out.set("bothLonger", number(s.larger()));
      out.set("wider", s.larger().isPresent() ? number(s.across()) : NODES.nullNode());
      out.set(
          s.frame().equals("seat") ? "deeper" : "taller",
          s.larger().isPresent() ? number(s.along()) : NODES.nullNode());
    }
    ArrayNode leftOut = root.putArray("leftOut");
    for (LeftOut l : remade.leftOut()) {
      ObjectNode out = leftOut.addObject();
      out.put("what", l.what());
      out.set("by", number(l.by()));
    }
    return JsonOut.bytes(root);
  }

  private static JsonNode told(Told t) {
    ObjectNode out = NODES.objectNode();
    boolean angle = t.measurement().value().kind() == Quantity.Kind.ANGLE;
    out.put("of", t.subject());
    out.put("what", t.measurement().what());
    out.put("at", t.measurement().at());
    out.put("on", t.measurement().on());
    out.put("unit", angle ? "deg" : "mm");
    out.set("value", value(angle, OptionalDouble.of(t.measurement().value().value())));
    out.set("planned", value(angle, t.planned()));
    out.put("differs", t.conflict());
    out.set("advice", texts(t.advice()));
    out.put("pointer", t.measurement().pointer());
    return out;
  }

  private static JsonNode value(boolean angle, OptionalDouble value) {
    return angle ? degrees(value.orElse(Double.NaN)) : number(value);
  }

  private static JsonNode heldOpen(HeldOpen h) {
    ObjectNode out = NODES.objectNode();
    out.put("joint", h.joint());
    out.put("at", h.at());
    out.put("touching", h.touching());
    out.set("gap", number(h.gap()));
    out.set("round", texts(h.round()));
    out.set("measured", number(h.measured()));
    out.set("unexplained", number(h.unexplained()));
    out.set("notLookedAt", texts(h.leftOut()));
    ArrayNode suspects = out.putArray("suspects");
    for (Suspect s : h.suspects()) {
      Cause c = s.cause();
      ObjectNode suspect = suspects.addObject();
      suspect.put("of", c.subject());
      suspect.put("what", c.what());
      suspect.put("unit", c.angle() ? "deg" : "mm");
      // For one unit of it: a degree is what a maker can be off by, a radian is not.
      suspect.set("gapForOne", number(c.angle() ? Math.toRadians(s.each()) : s.each()));
      suspect.set("off", value(c.angle(), c.off()));
      suspect.set("could", number(s.could()));
      suspect.set("alone", value(c.angle(), s.alone()));
    }
    return out;
  }

  private static void because(ObjectNode out, List<Because> all) {
    ArrayNode because = out.putArray("because");
    for (Because b : all) {
      ObjectNode one = because.addObject();
      one.put("of", b.cause().subject());
      one.put("what", b.cause().what());
      one.put("unit", b.cause().angle() ? "deg" : "mm");
      one.set("off", value(b.cause().angle(), b.cause().off()));
    }
  }
}
