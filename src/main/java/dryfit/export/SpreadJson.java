package dryfit.export;

import static dryfit.export.JsonOut.NODES;
import static dryfit.export.JsonOut.number;

import dryfit.fit.compare.Datum;
import dryfit.fit.spread.Cut;
import dryfit.fit.spread.Spread;
import dryfit.fit.spread.Spreads;
import java.util.OptionalDouble;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Spreads as JSON, described by {@code spread-1.schema.json}; millimetres and degrees. */
public final class SpreadJson {
  private SpreadJson() {}

  public static byte[] bytes(Spreads spreads) {
    ObjectNode root = NODES.objectNode();
    root.put("format", "dryfit-spread/1");
    root.put("file", spreads.chair().design().file());
    root.put("variant", spreads.chair().design().variant());
    root.put("draws", spreads.draws());
    root.put("stopsAsDrawn", spreads.stops());
    ArrayNode figures = root.putArray("figures");
    spreads.all().forEach(s -> figures.add(figure(s)));
    ArrayNode matters = root.putArray("cutsThatMatter");
    for (Spreads.Matter m : spreads.matters()) {
      ObjectNode out = matters.addObject();
      out.put("subject", m.subject());
      out.put("what", m.what());
      out.set("share", number(m.share()));
      out.put("figures", m.figures());
    }
    ArrayNode unbuilt = root.putArray("leftOut");
    spreads
        .unbuilt()
        .forEach(
            (name, why) -> {
              ObjectNode out = unbuilt.addObject();
              out.put("dimension", name);
              out.put("reason", why);
            });
    return JsonOut.bytes(root);
  }

  private static JsonNode figure(Spread s) {
    ObjectNode out = NODES.objectNode();
    out.put("group", CompareJson.word(s.figure().group()));
    out.put("subject", s.figure().subject());
    out.put("what", s.figure().what());
    out.set("planned", number(s.figure().value()));
    out.set("least", number(s.least()));
    out.set("most", number(s.most()));
    out.set("worstLow", number(s.worstLow()));
    out.set("worstHigh", number(s.worstHigh()));
    out.set("standardDeviation", number(s.deviation()));
    out.set("low95", number(s.low()));
    out.set("high95", number(s.high()));
    out.set("chance", number(s.limited() ? s.chance() : Double.NaN));
    ArrayNode cuts = out.putArray("cuts");
    for (Spread.Share share : s.shares()) {
      ObjectNode cut = cuts.addObject();
      Cut of = share.cut();
      boolean angle = of.kind() == Datum.Kind.ANGLE;
      cut.put("subject", of.subject());
      cut.put("what", of.what());
      cut.put("unit", CompareJson.unit(of.kind()));
      cut.set("accuracy", CompareJson.value(of.kind(), OptionalDouble.of(of.accuracy())));
      cut.set("each", number(angle ? Math.toRadians(share.each()) : share.each()));
      cut.set("share", number(share.of()));
    }
    return out;
  }
}
