package dryfit.document;

import dryfit.document.Context.Bound;
import dryfit.document.PartPlan.Common;
import dryfit.document.PartPlan.PanelShape;
import dryfit.document.PartPlan.PartRef;
import dryfit.document.PartPlan.Spot;
import dryfit.document.PartPlan.View;
import dryfit.document.Quantity.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a panel, drawn or filling an opening. */
final class PanelReader {
  /** Keys of a panel that lies loose, or is cut round others. */
  static final List<String> LOOSE = List.of("drops-into", "gap", "notch-round");

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
      refuseBeside("fills", List.of("plane", "at", "outline", "drops-into", "notch-round"));
      refuseGap();
      return Optional.of(new PartPlan.Panel(common, thickness, fills()));
    }
    if (part.has("drops-into")) {
      refuseBeside("drops-into", List.of("plane", "at", "outline", "groove", "notch-round"));
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
                new PartPlan.Panel(common, thickness, new PanelShape.Drawn(at, view, outline)));
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

  private PanelShape fills() {
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
