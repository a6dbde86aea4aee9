package dryfit.document;

import dryfit.document.Context.Bound;
import dryfit.document.PartPlan.Common;
import dryfit.document.PartPlan.PanelShape;
import dryfit.document.PartPlan.PartRef;
import dryfit.document.PartPlan.Raised;
import dryfit.document.PartPlan.Spot;
import dryfit.document.PartPlan.View;
import dryfit.document.Quantity.Kind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a panel, drawn or filling an opening. */
final class PanelReader {
  /** Keys of a panel that lies loose, or is cut round others. */
  static final List<String> LOOSE = List.of("drops-into", "gap", "notch-round");

  private static final Map<String, String> SIDES = new LinkedHashMap<>();

  static {
    for (String side : List.of("front", "back", "left", "right", "top", "bottom")) {
      SIDES.put(side, side);
    }
  }

  private final Context context;
  private final Common common;
  private final Fields part;

  PanelReader(Context context, Common common, Fields part) {
    this.context = context;
    this.common = common;
    this.part = part;
  }

  /** The panel, or empty if it cannot be told where it is. */
  Optional<PartPlan> read() {
    double thickness = context.needLength(part, "thickness", Bound.POSITIVE);
    if (part.has("fills")) {
      refuseBeside(
          "fills", List.of("plane", "at", "outline", "drops-into", "notch-round", "openings"));
      refuseGap();
      PanelShape.Fills fills = fills();
      return Optional.of(
          new PartPlan.Panel(common, thickness, fills, raised(thickness, fills.deep()), List.of()));
    }
    if (part.has("drops-into")) {
      refuseBeside(
          "drops-into",
          List.of("plane", "at", "outline", "groove", "notch-round", "raised", "openings"));
      double gap = context.needLength(part, "gap", Bound.NOT_NEGATIVE);
      List<PartRef> parts = around("drops-into");
      return Optional.of(
          new PartPlan.Panel(common, thickness, new PanelShape.DropsInto(parts, gap)));
    }
    refuseGap();
    if (part.has("groove")) {
      part.conflict("conflict", "groove", "a groove goes only with “fills”");
    }
    if (!part.has("plane")) {
      context
          .problems()
          .add(
              "missing-value",
              part.at(),
              "nothing",
              "fills, or plane, at and outline",
              "a panel needs “fills”, or “plane” with “at” and “outline”");
      return Optional.empty();
    }
    View view = part.wordIfAny("plane", PartReader.VIEWS).orElse(View.PLAN);
    Spot at =
        part.need("at")
            .map(node -> context.spot(part, node, Kind.LENGTH))
            .orElse(new Spot(Double.NaN, Double.NaN, Double.NaN));
    return part.need("outline")
        .flatMap(node -> new OutlineReader(context, part).read(node))
        .map(
            outline ->
                new PartPlan.Panel(
                    common,
                    thickness,
                    new PanelShape.Drawn(at, view, outline),
                    raised(thickness, 0),
                    SplatReader.openings(context, part)));
  }

  /**
   * @param flat how wide the tongue is if nothing is said
   */
  private Optional<Raised> raised(double thickness, double flat) {
    Optional<Json> node = part.node("raised");
    if (node.isEmpty()) {
      return Optional.empty();
    }
    Fields raised =
        new Fields(context.problems(), node.get(), List.of("tongue", "flat", "margin", "face"));
    Raised read =
        new Raised(
            context.needLength(raised, "tongue", Bound.POSITIVE),
            context.length(raised, "flat", Bound.NOT_NEGATIVE, flat),
            context.needLength(raised, "margin", Bound.POSITIVE),
            raised.node("face").flatMap(face -> raised.word(face, SIDES)),
            node.get().pointer());
    if (read.tongue() >= thickness) {
      outOfRange(raised, "tongue", "less than the thickness of the panel");
    }
    if (read.flat() >= read.margin()) {
      outOfRange(raised, "margin", "more than the flat of the tongue");
    }
    return Optional.of(read);
  }

  private void outOfRange(Fields raised, String key, String allowed) {
    Json node = raised.node(key).orElse(raised.self());
    context
        .problems()
        .add(
            "out-of-range",
            node.at(),
            node.shown(),
            allowed,
            Problems.quoted(key) + " of a raised panel must be " + allowed);
  }

  private void refuseBeside(String key, List<String> others) {
    for (String other : others) {
      if (part.has(other)) {
        part.conflict(
            "conflict",
            other,
            Problems.quoted(other) + " does not go with " + Problems.quoted(key));
      }
    }
  }

  private void refuseGap() {
    if (part.has("gap")) {
      part.conflict("conflict", "gap", "a gap all round goes only with “drops-into”");
    }
  }

  private List<PartRef> around(String key) {
    Refs refs = new Refs(context);
    List<PartRef> parts = new ArrayList<>();
    List<Json> items = part.list(key);
    for (Json item : items) {
      PartRef ref = refs.part(part, item);
      refs.needHand(common.pair(), ref, item);
      parts.add(ref);
    }
    if (parts.size() < 3) {
      Json node = part.node(key).orElseThrow();
      context
          .problems()
          .add(
              "missing-value",
              node.at(),
              parts.size() + " parts",
              "at least three parts",
              "a panel fills the opening between at least three parts");
    }
    return parts;
  }

  private PanelShape.Fills fills() {
    List<PartRef> parts = around("fills");
    Optional<Json> written = part.need("groove");
    if (written.isEmpty()) {
      return new PanelShape.Fills(parts, Double.NaN, Double.NaN, Double.NaN);
    }
    Fields groove = new Fields(context.problems(), written.get(), List.of("deep", "gap", "slack"));
    return new PanelShape.Fills(
        parts,
        context.needLength(groove, "deep", Bound.POSITIVE),
        context.length(groove, "gap", Bound.NOT_NEGATIVE, 2),
        context.length(groove, "slack", Bound.NOT_NEGATIVE, 0.15));
  }
}
