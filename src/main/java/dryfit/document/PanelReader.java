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
      for (String other : List.of("plane", "at", "outline")) {
        if (part.has(other)) {
          part.conflict("conflict", other, Problems.quoted(other) + " does not go with “fills”");
        }
      }
      return Optional.of(new PartPlan.Panel(common, thickness, fills()));
    }
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

  private PanelShape fills() {
    Refs refs = new Refs(context);
    List<PartRef> parts = new ArrayList<>();
    List<Json> items = part.list("fills");
    for (Json item : items) {
      PartRef ref = refs.part(part, item);
      refs.needHand(common.pair(), ref, item);
      parts.add(ref);
    }
    if (parts.size() < 3) {
      Json node = part.node("fills").orElseThrow();
      context
          .problems()
          .add(
              "missing-value",
              node.at(),
              parts.size() + " parts",
              "at least three parts",
              "a panel fills the opening between at least three parts");
    }
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
