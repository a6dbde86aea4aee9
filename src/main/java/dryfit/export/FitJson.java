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
import dryfit.document.Hand;
import dryfit.document.JointSizes;
import dryfit.fit.Finding;
import dryfit.fit.FitReport;
import dryfit.fit.JointFit;
import dryfit.fit.Slant;
import dryfit.geometry.Box;
import java.util.Locale;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The dry fit as JSON for other programs, described by {@code fit-report-1.schema.json}. Lengths in
 * millimetres, areas and volumes likewise, angles in degrees, whatever the document's unit. The
 * same report gives the same bytes.
 */
public final class FitJson {
  private FitJson() {}

  public static byte[] bytes(FitReport report) {
    Chair chair = report.chair();
    Design design = chair.design();
    ObjectNode root = NODES.objectNode();
    root.put("format", "dryfit-fit/1");
    root.put("model", design.name());
    root.put("file", design.file());
    root.put("variant", design.variant());
    root.put("unit", design.unit().name().toLowerCase(Locale.ROOT));
    root.put("labels", word(design.labels()));
    root.put("fits", report.fits());
    ArrayNode findings = root.putArray("findings");
    report.findings().forEach(f -> findings.add(finding(f)));
    root.set("whole", DetailJson.whole(report.whole()));
    ArrayNode joints = root.putArray("joints");
    report.joints().forEach(j -> joints.add(joint(chair, j)));
    ArrayNode parts = root.putArray("parts");
    chair.parts().forEach(p -> parts.add(part(p)));
    root.set("rakeAndSplay", AngleJson.rakeAndSplay(chair));
    return JsonOut.bytes(root);
  }

  private static JsonNode finding(Finding f) {
    ObjectNode out = NODES.objectNode();
    out.put("check", f.check());
    out.put("severity", f.severity().name().toLowerCase(Locale.ROOT));
    out.set("parts", texts(f.parts()));
    out.set("joints", texts(f.joints()));
    out.set("measured", number(f.measured()));
    out.set("limit", number(f.limit()));
    out.set("margin", number(f.margin()));
    out.put("unit", f.unit());
    ObjectNode source = out.putObject("source");
    source.put("kind", word(f.source().kind()));
    source.put("text", f.source().text());
    source.put("limit", f.source().limit());
    out.put("message", f.message());
    out.put("pointer", f.pointer());
    out.set("at", place(f.at()));
    f.waived().ifPresentOrElse(why -> out.put("waived", why), () -> out.putNull("waived"));
    return out;
  }

  private static JsonNode joint(Chair chair, JointFit fit) {
    Joint joint = fit.joint();
    ObjectNode out = NODES.objectNode();
    out.put("name", joint.name());
    out.put("label", joint.label());
    hand(out, joint.hand());
    out.put("kind", joint.plan().kind().word());
    out.put("tenoned", chair.parts().get(joint.tenoned()).label());
    out.put("end", chair.endWord(joint));
    out.put("mortised", chair.parts().get(joint.mortised()).label());
    out.put("pointer", joint.plan().pointer());
    out.set("cheek", gap(fit.cheek()));
    out.set("edge", gap(fit.edge()));
    out.set("bottom", gap(fit.bottom()));
    out.set("shoulder", gap(fit.shoulder()));
    out.set("wall", number(fit.wall()));
    out.put("wallFace", fit.wallFace());
    out.set("lean", degrees(fit.lean()));
    out.set("leanAlong", degrees(fit.leanAlong()));
    out.set("leanAcross", degrees(fit.leanAcross()));
    out.set("depthSquare", number(fit.depthSquare()));
    out.set("depthAlong", number(fit.depthAlong()));
    out.set("shoulderWide", degrees(fit.shoulderWide()));
    out.set("shoulderNarrow", degrees(fit.shoulderNarrow()));
    out.set("angles", AngleJson.angles(chair, joint));
    out.set("glueLong", number(fit.glueLong()));
    out.set("glueOther", number(fit.glueOther()));
    out.put("count", joint.tenons().size());
    out.set("pieces", texts(chair.pieces(joint)));
    out.set("slant", Slant.of(chair, joint).map(FitJson::slant).orElseGet(NODES::nullNode));
    out.set("wedges", joint.plan().wedges().map(FitJson::wedges).orElseGet(NODES::nullNode));
    DetailJson.add(out, fit.detail());
    return out;
  }

  private static JsonNode slant(Slant s) {
    ObjectNode out = NODES.objectNode();
    out.put("angled", s.leaningMortise() ? "mortise" : "tenon");
    out.set("angle", degrees(s.angle()));
    out.set("shift", number(s.shift()));
    out.set("wholeFibres", number(s.wholeFibres()));
    out.set("stockNeeded", number(s.stockNeeded()));
    out.set("stockThere", number(s.stockThere()));
    out.set("squareEntry", number(s.squareEntry()));
    out.put("order", s.order().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    out.put("first", s.firstFrames().isEmpty() ? null : s.firstFrames());
    return out;
  }

  private static JsonNode wedges(JointSizes.Wedges w) {
    ObjectNode out = NODES.objectNode();
    out.put("count", w.count());
    out.set("thickness", number(w.kerf() + w.swell()));
    out.set("spread", number(w.spread()));
    out.set("flare", number(w.flare().orElse(w.spread())));
    return out;
  }

  private static JsonNode gap(JointFit.Gap gap) {
    if (gap.least().isEmpty() || gap.greatest().isEmpty()) {
      return NODES.nullNode();
    }
    ObjectNode out = NODES.objectNode();
    out.set("least", number(gap.least()));
    out.set("greatest", number(gap.greatest()));
    return out;
  }

  private static JsonNode part(Part part) {
    ObjectNode out = NODES.objectNode();
    out.put("name", part.name());
    out.put("label", part.label());
    hand(out, part.hand());
    out.put("pointer", part.pointer());
    out.put("timber", part.plan().common().timber());
    Weights weights = Weights.of(part);
    out.set("volume", number(weights.volume()));
    out.set("mass", number(weights.mass()));
    Box box = part.placedMesh().bounds();
    ObjectNode bounds = out.putObject("bounds");
    bounds.set("low", place(box.low()));
    bounds.set("high", place(box.high()));
    ObjectNode blank = out.putObject("blank");
    blank.set("length", number(part.blank().length()));
    blank.set("width", number(part.blank().width()));
    blank.set("thickness", number(part.blank().thickness()));
    return out;
  }

  private static void hand(ObjectNode out, Hand hand) {
    if (hand == Hand.NONE) {
      out.putNull("hand");
    } else {
      out.put("hand", word(hand));
    }
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
