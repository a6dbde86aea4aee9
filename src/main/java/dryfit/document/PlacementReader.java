package dryfit.document;

import dryfit.document.PartPlan.Ends;
import dryfit.document.PartPlan.Level;
import dryfit.document.PartPlan.Level.Edge;
import dryfit.document.PartPlan.PartRef;
import dryfit.document.PartPlan.Placement;
import dryfit.document.PartPlan.Reveal;
import dryfit.document.PartPlan.Reveal.From;
import dryfit.document.PartPlan.Spot;
import dryfit.document.Quantity.Kind;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads where a part stands or runs. */
final class PlacementReader {
  /** The keys of each way of placing. */
  static final List<String> RUN =
      Stream.concat(Stream.of("from", "to"), LeaningRun.KEYS.stream()).toList();

  static final List<String> BETWEEN =
      List.of(
          "between",
          "top",
          "middle",
          "bottom",
          "underside",
          "outside",
          "inside",
          "centred",
          "x",
          "y");
  static final List<String> STANDS = List.of("stands-at");

  private static final Map<String, Edge> LEVELS = new LinkedHashMap<>();
  private static final Map<String, From> REVEALS = new LinkedHashMap<>();

  static {
    LEVELS.put("top", Edge.TOP);
    LEVELS.put("middle", Edge.MIDDLE);
    LEVELS.put("bottom", Edge.BOTTOM);
    LEVELS.put("underside", Edge.BOTTOM);
    REVEALS.put("outside", From.OUTSIDE);
    REVEALS.put("inside", From.INSIDE);
    REVEALS.put("centred", From.CENTRED);
  }

  private final Context context;
  private final Fields part;
  private final Refs refs;

  PlacementReader(Context context, Fields part) {
    this.context = context;
    this.part = part;
    this.refs = new Refs(context);
  }

  /** From a place to a place, or between two parts. */
  Placement runOrBetween() {
    if (part.has("between")) {
      refuseBeside("between", RUN);
      return between();
    }
    refuseBeside("from", BETWEEN);
    if (LeaningRun.isWritten(part)) {
      part.need("from");
      return new LeaningRun(context, part).read(spot("from"));
    }
    if (!part.has("from") && !part.has("to")) {
      missing("“from” and “to”, or “between”");
    } else {
      part.need("from");
      part.need("to");
    }
    return new Placement.Run(spot("from"), spot("to"));
  }

  /** At a place, or between two parts. */
  Placement standsOrBetween() {
    if (part.has("between")) {
      refuseBeside("between", STANDS);
      return between();
    }
    refuseBeside("stands-at", BETWEEN);
    if (!part.has("stands-at")) {
      missing("“stands-at” or “between”");
    }
    return new Placement.StandsAt(spot("stands-at"));
  }

  private void missing(String what) {
    context
        .problems()
        .add(
            "missing-value",
            part.at(),
            "nothing",
            what,
            "this part does not say where it is; it needs " + what);
  }

  private void refuseBeside(String key, List<String> others) {
    for (String other : others) {
      if (part.has(other)) {
        part.conflict(
            "conflict",
            other,
            Problems.quoted(other) + " does not go with placing a part by " + Problems.quoted(key));
      }
    }
  }

  private Spot spot(String key) {
    return part.node(key)
        .map(node -> context.spot(part, node, Kind.LENGTH))
        .orElse(new Spot(Double.NaN, Double.NaN, Double.NaN));
  }

  private Placement between() {
    Json node = part.node("between").orElseThrow();
    List<Json> items = context.exactly(part, node, 2);
    PartRef nobody = new PartRef("", Hand.NONE, node.pointer());
    PartRef first = items.isEmpty() ? nobody : refs.part(part, items.get(0));
    PartRef second = items.isEmpty() ? nobody : refs.part(part, items.get(1));
    if (!items.isEmpty()) {
      boolean pair = part.flag("pair", false);
      refs.needHand(pair, first, items.get(0));
      refs.needHand(pair, second, items.get(1));
      boolean known = context.parts().containsKey(first.part());
      boolean ofPair = context.parts().getOrDefault(first.part(), false);
      boolean handMissing = !pair && ofPair && first.hand() == Hand.NONE;
      if (known
          && !handMissing
          && first.part().equals(second.part())
          && first.hand() == second.hand()) {
        context
            .problems()
            .add(
                "same-part",
                items.get(1).at(),
                items.get(1).shown(),
                "two different parts",
                "a part cannot stand between a part and that same part");
      }
    }
    Optional<Level> level =
        one(LEVELS, "a level").map(key -> new Level(LEVELS.get(key), ends(key)));
    Optional<Reveal> reveal =
        one(REVEALS, "a reveal").map(key -> new Reveal(REVEALS.get(key), ends(key)));
    Optional<Ends> x = part.has("x") ? Optional.of(ends("x")) : Optional.empty();
    Optional<Ends> y = part.has("y") ? Optional.of(ends("y")) : Optional.empty();
    if (level.isEmpty() && x.isEmpty() && y.isEmpty()) {
      context
          .problems()
          .add(
              "missing-value",
              part.at(),
              "nothing",
              "top, middle or bottom; x or y",
              "a part between two others needs its height (top, middle or bottom), or if it stands"
                  + " upright its x");
    }
    if (reveal.isEmpty() && x.isEmpty() && y.isEmpty()) {
      reveal = Optional.of(new Reveal(From.CENTRED, new Ends(0, 0)));
    }
    return new Placement.Between(first, second, level, x, y, reveal);
  }

  private Ends ends(String key) {
    return context.ends(part, part.node(key).orElseThrow());
  }

  /** The one key of several that is there; a problem if there are more. */
  private Optional<String> one(Map<String, ?> words, String what) {
    List<String> there = words.keySet().stream().filter(part::has).toList();
    if (there.size() > 1) {
      part.conflict(
          "conflict",
          there.get(1),
          "only one of " + String.join(", ", there) + " can be given, for each is " + what);
    }
    return there.stream().findFirst();
  }
}
