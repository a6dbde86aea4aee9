package dryfit.document;

import dryfit.document.Context.Bound;
import dryfit.document.PartPlan.Common;
import dryfit.document.PartPlan.CornerBlock;
import dryfit.document.PartPlan.Hollow;
import dryfit.document.PartPlan.Outline;
import dryfit.document.PartPlan.PartRef;
import dryfit.document.PartPlan.Spot;
import dryfit.document.PartPlan.Spot2;
import dryfit.document.Quantity.Kind;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads a seat board, and the block that stiffens the corner below it. */
final class SeatReader {
  static final List<String> SEAT =
      List.of("at", "thickness", "slope", "outline", "hollow", "notch-round");
  static final List<String> BLOCK =
      List.of("in-corner", "along", "angle", "high", "top", "thickness", "notch-round");

  private final Context context;
  private final Common common;
  private final Fields part;

  SeatReader(Context context, Common common, Fields part) {
    this.context = context;
    this.common = common;
    this.part = part;
  }

  // ---- seat ----

  /** The seat, or empty if it has no outline. */
  Optional<PartPlan> seat() {
    double thickness = context.needLength(part, "thickness", Bound.POSITIVE);
    Spot at =
        part.need("at")
            .map(node -> context.spot(part, node, Kind.LENGTH))
            .orElse(new Spot(Double.NaN, Double.NaN, Double.NaN));
    double slope =
        part.node("slope").map(node -> context.number(node, Kind.ANGLE, Bound.ANY)).orElse(0.0);
    Optional<Hollow> hollow = part.node("hollow").map(node -> hollow(node, thickness));
    return part.need("outline")
        .flatMap(node -> new OutlineReader(context, part).read(node))
        .map(outline -> new PartPlan.Seat(common, at, thickness, slope, outline, hollow));
  }

  private Hollow hollow(Json node, double thickness) {
    Fields hollow =
        new Fields(
            context.problems(), node, List.of("deep", "inset", "outline", "deepest"), "a hollow");
    double deep = context.needLength(hollow, "deep", Bound.POSITIVE);
    if (deep >= thickness) {
      context
          .problems()
          .add(
              "out-of-range",
              hollow.node("deep").map(Json::at).orElse(hollow.at()),
              hollow.node("deep").map(Json::shown).orElse(""),
              "less than the thickness of the seat",
              "the hollow is as deep as the seat is thick, and would come through");
    }
    if (hollow.has("inset") && hollow.has("outline")) {
      hollow.conflict("conflict", "inset", "a hollow has an inset or an outline, not both");
    }
    Optional<Outline> outline =
        hollow.node("outline").flatMap(o -> new OutlineReader(context, hollow).read(o));
    if (!hollow.has("outline")) {
      hollow.need("inset");
    }
    return new Hollow(
        deep,
        outline,
        context.length(hollow, "inset", Bound.NOT_NEGATIVE, 0),
        hollow.node("deepest").map(place -> context.spot2(hollow, place, Bound.ANY)),
        node.pointer());
  }

  // ---- corner block ----

  PartPlan cornerBlock() {
    Refs refs = new Refs(context);
    PartRef nobody = new PartRef("", Hand.NONE, part.self().pointer());
    Optional<Json> corner = part.need("in-corner");
    List<Json> rails = corner.map(node -> context.exactly(part, node, 2)).orElse(List.of());
    PartRef first = rails.isEmpty() ? nobody : refs.part(part, rails.get(0));
    PartRef second = rails.isEmpty() ? nobody : refs.part(part, rails.get(1));
    if (!rails.isEmpty()) {
      refs.needHand(common.pair(), first, rails.get(0));
      refs.needHand(common.pair(), second, rails.get(1));
      if (first.part().equals(second.part()) && first.hand() == second.hand()) {
        context
            .problems()
            .add(
                "same-part",
                rails.get(1).at(),
                rails.get(1).shown(),
                "two different rails",
                "a rail makes no corner with itself");
      }
    }
    OptionalDouble angle = OptionalDouble.empty();
    if (part.has("angle")) {
      angle =
          OptionalDouble.of(
              context.number(part.node("angle").orElseThrow(), Kind.ANGLE, Bound.POSITIVE));
    }
    double[] along = along(angle.isPresent());
    return new CornerBlock(
        common,
        first,
        second,
        along[0],
        angle.isPresent() ? OptionalDouble.empty() : OptionalDouble.of(along[1]),
        angle,
        context.needLength(part, "high", Bound.POSITIVE),
        context.needLength(part, "top", Bound.ANY),
        context.lengthIfAny(part, "thickness", Bound.POSITIVE));
  }

  /** How far the block reaches along each rail; with an angle only the first can be said. */
  private double[] along(boolean angled) {
    Optional<Json> node = part.need("along");
    if (node.isEmpty()) {
      return new double[] {Double.NaN, Double.NaN};
    }
    if (node.get() instanceof Json.Arr) {
      if (angled) {
        part.conflict(
            "conflict", "along", "with an angle the block is measured along the first rail only");
      }
      Spot2 both = context.spot2(part, node.get(), Bound.POSITIVE);
      if (both.u() <= 0) {
        context
            .problems()
            .add(
                "not-positive",
                node.get().at(),
                node.get().shown(),
                "above zero",
                "a corner block reaches some way along each rail");
      }
      return new double[] {both.u(), both.v()};
    }
    double same = context.length(node.get(), Bound.POSITIVE);
    return new double[] {same, same};
  }
}
