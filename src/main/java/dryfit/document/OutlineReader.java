package dryfit.document;

import dryfit.document.Context.Bound;
import dryfit.document.PartPlan.Outline;
import dryfit.document.PartPlan.Path;
import dryfit.document.PartPlan.Spot2;
import dryfit.document.PartPlan.Step;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads an outline: a closed path, a circle, or a band given by two edges or by one edge and a
 * width.
 */
final class OutlineReader {
  private static final List<String> KEYS =
      List.of("circle", "at", "inside", "outside", "bottom", "top", "front", "back", "width");

  /** The edges of a band that go together; the second lies further along the view's axis. */
  private static final Map<String, String> SECOND = new LinkedHashMap<>();

  static {
    SECOND.put("inside", "outside");
    SECOND.put("bottom", "top");
    SECOND.put("front", "back");
  }

  private final Context context;
  private final Fields part;

  OutlineReader(Context context, Fields part) {
    this.context = context;
    this.part = part;
  }

  /** An outline, or empty after a problem. */
  Optional<Outline> read(Json node) {
    if (node instanceof Json.Arr || isCurve(node)) {
      return path(node, 2).map(Outline.Closed::new);
    }
    if (!(node instanceof Json.Obj)) {
      part.wrongType(node, "an outline: a list of steps, a circle, or a band of two edges");
      return Optional.empty();
    }
    Fields fields = new Fields(context.problems(), node, KEYS);
    if (fields.has("circle")) {
      edgesIn(fields).stream()
          .findFirst()
          .ifPresent(key -> fields.conflict("conflict", key, "a circle has no edges"));
      double diameter = context.needLength(fields, "circle", Bound.POSITIVE);
      return Optional.of(
          new Outline.Circle(
              diameter,
              fields
                  .node("at")
                  .map(at -> context.spot2(fields, at, Bound.ANY))
                  .orElse(new Spot2(0, 0))));
    }
    if (fields.has("at")) {
      fields.conflict("conflict", "at", "only a circle has a middle to be “at”");
    }
    return band(fields);
  }

  private static boolean isCurve(Json node) {
    return node instanceof Json.Obj object && object.members().containsKey("curve-through");
  }

  private static List<String> edgesIn(Fields fields) {
    return KEYS.subList(2, 8).stream().filter(fields::has).toList();
  }

  // ---- bands ----

  private Optional<Outline> band(Fields fields) {
    List<String> edges = edgesIn(fields);
    boolean width = fields.has("width");
    if (edges.size() == 2 && !width && edges.get(1).equals(SECOND.get(edges.get(0)))) {
      Optional<Path> first = path(fields.node(edges.get(0)).orElseThrow(), 1);
      Optional<Path> second = path(fields.node(edges.get(1)).orElseThrow(), 1);
      return first.isPresent() && second.isPresent()
          ? Optional.of(new Outline.Band(edges.get(0), first.get(), edges.get(1), second.get()))
          : Optional.empty();
    }
    if (edges.size() == 1 && width) {
      return banded(fields, edges.get(0));
    }
    context
        .problems()
        .add(
            "wrong-kind",
            fields.at(),
            edges.isEmpty() ? "no edge" : String.join(", ", edges) + (width ? ", width" : ""),
            "inside and outside, bottom and top, front and back, or one of them and a width",
            "a band has two edges that go together (inside and outside, bottom and top, or front and"
                + " back), or one of them and a width");
    return Optional.empty();
  }

  /** One edge and a table of widths: the other edge is the first, moved across by the width. */
  private Optional<Outline> banded(Fields fields, String name) {
    List<Spot2> widths = stations(fields, "width");
    Optional<Path> edge = path(fields.node(name).orElseThrow(), 1);
    if (edge.isEmpty() || widths.isEmpty()) {
      return Optional.empty();
    }
    boolean isFirst = SECOND.containsKey(name);
    String other =
        isFirst
            ? SECOND.get(name)
            : SECOND.entrySet().stream()
                .filter(entry -> entry.getValue().equals(name))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow();
    String pointer = fields.node("width").orElseThrow().pointer();
    Path moved = new Widening(widths, isFirst ? 1 : -1).across(edge.get(), pointer);
    return Optional.of(
        isFirst
            ? new Outline.Band(name, edge.get(), other, moved)
            : new Outline.Band(other, moved, name, edge.get()));
  }

  /** A list of {@code [position, size]}, positions rising, sizes above zero. */
  List<Spot2> stations(Fields fields, String key) {
    Json list = fields.node(key).orElseThrow();
    List<Spot2> stations = new ArrayList<>();
    for (Json item : fields.list(list)) {
      Spot2 station = context.spot2(fields, item, Bound.POSITIVE);
      if (!stations.isEmpty() && station.u() <= stations.get(stations.size() - 1).u()) {
        context
            .problems()
            .add(
                "out-of-range",
                item.at(),
                item.shown(),
                "each position greater than the one before",
                "the positions in this list must rise from one to the next");
      }
      stations.add(station);
    }
    if (stations.isEmpty() && list instanceof Json.Arr) {
      context
          .problems()
          .add("missing-value", list.at(), "nothing", "at least one", "this list is empty");
    }
    return stations;
  }

  // ---- paths ----

  /** One edge, or empty after a problem. */
  Optional<Path> edge(Json node) {
    return path(node, 1);
  }

  /** A path of at least so many steps after its start. */
  private Optional<Path> path(Json node, int leastSteps) {
    if (isCurve(node)) {
      List<Spot2> points = curve(node);
      return points.isEmpty()
          ? Optional.empty()
          : Optional.of(
              new Path(
                  points.get(0),
                  List.of(new Step.Curve(points.subList(1, points.size()))),
                  node.pointer()));
    }
    List<Json> items = part.list(node);
    if (items.isEmpty()) {
      if (node instanceof Json.Arr) {
        tooFew(node);
      }
      return Optional.empty();
    }
    if (!(items.get(0) instanceof Json.Arr)) {
      part.wrongType(items.get(0), "the point where the path starts, [u, v],");
      return Optional.empty();
    }
    if (items.size() <= leastSteps) {
      boolean bowed = items.stream().anyMatch(Json.Obj.class::isInstance);
      if (items.size() < 2 || !bowed) {
        tooFew(node);
      }
    }
    Spot2 start = context.spot2(part, items.get(0), Bound.ANY);
    List<Step> steps = new ArrayList<>();
    for (Json item : items.subList(1, items.size())) {
      step(item).ifPresent(steps::add);
    }
    return Optional.of(new Path(start, steps, node.pointer()));
  }

  private void tooFew(Json node) {
    context
        .problems()
        .add(
            "missing-value",
            node.at(),
            "too few points",
            "two points for an edge, three for an outline",
            "this path has too few points: an edge needs two, a closed outline three, or a curve"
                + " or arc among them");
  }

  private Optional<Step> step(Json item) {
    if (item instanceof Json.Arr) {
      return Optional.of(new Step.Line(context.spot2(part, item, Bound.ANY)));
    }
    if (isCurve(item)) {
      List<Spot2> points = curve(item);
      return points.isEmpty() ? Optional.empty() : Optional.of(new Step.Curve(points));
    }
    if (!(item instanceof Json.Obj)) {
      part.wrongType(item, "a point [u, v], a “curve-through” or an “arc-to”");
      return Optional.empty();
    }
    Fields arc = new Fields(context.problems(), item, List.of("arc-to", "rise", "curve-through"));
    Spot2 to =
        arc.need("arc-to")
            .map(node -> context.spot2(arc, node, Bound.ANY))
            .orElse(new Spot2(Double.NaN, Double.NaN));
    return Optional.of(new Step.Arc(to, context.needLength(arc, "rise", Bound.ANY)));
  }

  private List<Spot2> curve(Json node) {
    Fields fields = new Fields(context.problems(), node, List.of("curve-through"));
    List<Spot2> points =
        fields.list("curve-through").stream()
            .map(item -> context.spot2(fields, item, Bound.ANY))
            .toList();
    if (points.size() < 2) {
      tooFew(node);
      return List.of();
    }
    return points;
  }
}
