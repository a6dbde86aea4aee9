package dryfit.document;

import dryfit.document.Context.Bound;
import dryfit.document.PartPlan.Common;
import dryfit.document.PartPlan.Ends;
import dryfit.document.PartPlan.Peg;
import dryfit.document.PartPlan.PinPlace;
import dryfit.document.PartPlan.Wedge;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads pegs and wedges, which are placed at a joint. */
final class PinReader {
  private static final List<String> PLACE =
      List.of(
          "in-joint", "from-shoulder", "off-centre", "across", "driven-from", "length", "proud");
  private static final List<String> PEG = List.of("diameter", "tapered", "tip", "offset", "gap");
  private static final List<String> WEDGE = List.of("width", "head", "tip", "gap");
  private static final Map<String, Boolean> ACROSS = new LinkedHashMap<>();

  static {
    ACROSS.put("cheeks", false);
    ACROSS.put("edges", true);
  }

  private final Context context;
  private final Common common;
  private final Fields part;

  PinReader(Context context, Common common, Fields part) {
    this.context = context;
    this.common = common;
    this.part = part;
  }

  static List<List<String>> pegKeys() {
    return List.of(PLACE, PEG);
  }

  static List<List<String>> wedgeKeys() {
    return List.of(PLACE, WEDGE);
  }

  PartPlan peg() {
    PinPlace place = place();
    double diameter = context.needLength(part, "diameter", Bound.POSITIVE);
    double tapered = context.length(part, "tapered", Bound.NOT_NEGATIVE, 0);
    double tip = context.length(part, "tip", Bound.POSITIVE, diameter);
    if (part.has("tapered") != part.has("tip")) {
      part.conflict(
          "missing-value",
          part.has("tip") ? "tip" : "tapered",
          "a tapered end needs both: “tapered”, how long it is, and “tip”, its diameter");
    }
    if (tip > diameter) {
      outOfRange("tip", "at most the diameter", "a peg is driven in with its thinner end first");
    }
    if (place.length().isPresent() && tapered >= place.length().getAsDouble()) {
      outOfRange("tapered", "less than the length", "the taper is as long as the peg");
    }
    double offset = context.length(part, "offset", Bound.NOT_NEGATIVE, 0);
    if (offset >= diameter) {
      outOfRange(
          "offset",
          "less than the diameter",
          "a peg cannot find a hole that is a whole diameter aside");
    }
    return new Peg(common, place, diameter, tapered, tip, offset);
  }

  PartPlan wedge() {
    PinPlace place = place();
    double head = context.needLength(part, "head", Bound.POSITIVE);
    double tip = context.needLength(part, "tip", Bound.POSITIVE);
    if (tip >= head) {
      outOfRange("tip", "less than the head", "a wedge is thinner at its tip than at its head");
    }
    return new Wedge(common, place, context.needLength(part, "width", Bound.POSITIVE), head, tip);
  }

  private void outOfRange(String key, String allowed, String what) {
    Json node = part.node(key).orElse(part.self());
    context.problems().add("out-of-range", node.at(), node.shown(), allowed, what);
  }

  private PinPlace place() {
    String joint = part.needText("in-joint");
    part.node("in-joint")
        .filter(Json.Text.class::isInstance)
        .filter(node -> !context.joints().contains(joint))
        .ifPresent(
            node ->
                context
                    .problems()
                    .unknown(
                        "absent-joint",
                        node.at(),
                        joint,
                        context.joints(),
                        "a joint of this chair"));
    Ends proud = part.node("proud").map(node -> context.ends(part, node)).orElse(new Ends(0, 0));
    if (part.has("length") && proud.second() != 0 && part.node("proud").get() instanceof Json.Arr) {
      part.conflict("conflict", "proud", "with a length only the head can be said to stand proud");
    }
    return new PinPlace(
        joint,
        context.needLength(part, "from-shoulder", Bound.POSITIVE),
        context.length(part, "off-centre", Bound.ANY, 0),
        part.wordIfAny("across", ACROSS).orElse(false),
        part.wordIfAny("driven-from", PartReader.FACES).orElse("outside"),
        context.lengthIfAny(part, "length", Bound.POSITIVE),
        proud,
        context.length(part, "gap", Bound.NOT_NEGATIVE, 0));
  }
}
