package dryfit.document;

import dryfit.document.Context.Bound;
import dryfit.document.PartCuts.Foot;
import dryfit.document.PartCuts.Head;
import dryfit.document.PartCuts.Notch;
import dryfit.document.PartCuts.Oversize;
import dryfit.document.PartCuts.Rebate;
import dryfit.document.PartPlan.PartRef;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads what is cut off a part besides its form: feet, heads, rebates, notches; and its oversize.
 */
final class PartCutsReader {
  /** A notch is looser across the grain, where wood moves, unless it is told; common practice. */
  private static final double NOTCH_GAP = 0.5;

  private static final double NOTCH_ACROSS = 2;

  private final Context context;
  private final Fields part;

  PartCutsReader(Context context, Fields part) {
    this.context = context;
    this.part = part;
  }

  PartCuts read() {
    List<Rebate> rebates = new ArrayList<>();
    part.node("rebate").ifPresent(node -> rebate(node).ifPresent(rebates::add));
    part.list("rebates").forEach(node -> rebate(node).ifPresent(rebates::add));
    return new PartCuts(
        part.node("foot").map(this::foot),
        part.node("upper-end").map(this::head),
        rebates,
        part.node("notch-round").flatMap(this::notch),
        part.node("oversize").map(this::oversize).orElse(new Oversize(0, 0)));
  }

  private Foot foot(Json node) {
    if (!(node instanceof Json.Obj)) {
      Map<String, Double> words = new LinkedHashMap<>();
      words.put("floor", 0.0);
      return new Foot(part.word(node, words).orElse(0.0), 0, node.pointer());
    }
    Fields foot = new Fields(context.problems(), node, List.of("z", "ease"), "a foot");
    return new Foot(
        context.length(foot, "z", Bound.NOT_NEGATIVE, 0),
        context.length(foot, "ease", Bound.NOT_NEGATIVE, 0),
        node.pointer());
  }

  private Head head(Json node) {
    if (!(node instanceof Json.Obj)) {
      Map<String, OptionalDouble> words = new LinkedHashMap<>();
      words.put("level", OptionalDouble.empty());
      return new Head(part.word(node, words).orElse(OptionalDouble.empty()), node.pointer());
    }
    Fields head = new Fields(context.problems(), node, List.of("z"), "an upper end");
    return new Head(
        OptionalDouble.of(context.needLength(head, "z", Bound.POSITIVE)), node.pointer());
  }

  private Optional<Rebate> rebate(Json node) {
    Fields rebate =
        new Fields(context.problems(), node, List.of("edge", "wide", "deep"), "a rebate");
    double wide = context.needLength(rebate, "wide", Bound.POSITIVE);
    double deep = context.needLength(rebate, "deep", Bound.POSITIVE);
    Optional<Json> edge = rebate.need("edge");
    List<Json> items = edge.map(e -> context.exactly(rebate, e, 2)).orElse(List.of());
    List<String> faces = new ArrayList<>();
    items.forEach(item -> rebate.word(item, PartReader.FACES).ifPresent(faces::add));
    return faces.size() == 2
        ? Optional.of(new Rebate(faces.get(0), faces.get(1), wide, deep, node.pointer()))
        : Optional.empty();
  }

  private Optional<Notch> notch(Json node) {
    if (node instanceof Json.Arr) {
      return Optional.of(new Notch(parts(part, node), NOTCH_GAP, NOTCH_ACROSS, node.pointer()));
    }
    Fields notch =
        new Fields(context.problems(), node, List.of("parts", "gap", "across"), "a notch");
    double gap = context.length(notch, "gap", Bound.NOT_NEGATIVE, NOTCH_GAP);
    double across = context.length(notch, "across", Bound.NOT_NEGATIVE, NOTCH_ACROSS);
    return notch
        .need("parts")
        .map(list -> new Notch(parts(notch, list), gap, across, node.pointer()));
  }

  private List<PartRef> parts(Fields fields, Json list) {
    Refs refs = new Refs(context);
    List<PartRef> parts = new ArrayList<>();
    List<Json> items = fields.list(list);
    items.forEach(item -> parts.add(refs.part(fields, item)));
    if (items.isEmpty() && list instanceof Json.Arr) {
      context
          .problems()
          .add("missing-value", list.at(), "nothing", "at least one", "this list is empty");
    }
    return parts;
  }

  private Oversize oversize(Json node) {
    if (!(node instanceof Json.Obj)) {
      return new Oversize(context.length(node, Bound.NOT_NEGATIVE), 0);
    }
    Fields oversize = new Fields(context.problems(), node, List.of("sides", "ends"), "an oversize");
    return new Oversize(
        context.length(oversize, "sides", Bound.NOT_NEGATIVE, 0),
        context.length(oversize, "ends", Bound.NOT_NEGATIVE, 0));
  }
}
