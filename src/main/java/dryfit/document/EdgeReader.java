package dryfit.document;

import dryfit.document.Context.Bound;
import dryfit.document.EdgePlan.Shape;
import dryfit.document.EdgePlan.Which;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads what is done to the edges of a part. */
final class EdgeReader {
  private static final List<String> KEYS =
      List.of("between", "shape", "size", "from", "to", "leave-ends");
  private static final Map<String, Which> WHICH = new LinkedHashMap<>();
  private static final Map<String, Shape> SHAPES = new LinkedHashMap<>();

  static {
    WHICH.put("all long", Which.ALL_LONG);
    WHICH.put("all", Which.ALL);
    SHAPES.put("eased", Shape.EASED);
    SHAPES.put("chamfer", Shape.CHAMFER);
    SHAPES.put("round-over", Shape.ROUND_OVER);
  }

  private final Context context;

  EdgeReader(Context context) {
    this.context = context;
  }

  /** Parts that are shaped only by what they are let into or driven through. */
  private static final List<String> LATE = List.of("fills", "drops-into", "in-joint");

  List<EdgePlan> read(Fields part) {
    List<EdgePlan> edges = new ArrayList<>();
    if (part.has("edges")) {
      LATE.stream()
          .filter(part::has)
          .forEach(
              other ->
                  part.conflict(
                      "conflict", "edges", "“edges” does not go with " + Problems.quoted(other)));
    }
    for (Json item : part.list("edges")) {
      edge(item).ifPresent(edges::add);
    }
    return edges;
  }

  private Optional<EdgePlan> edge(Json item) {
    Fields edge = new Fields(context.problems(), item, KEYS);
    Optional<Json> between = edge.need("between");
    Which which = Which.BETWEEN;
    List<String> faces = List.of();
    if (between.isPresent() && between.get() instanceof Json.Text) {
      which = edge.word(between.get(), WHICH).orElse(Which.ALL);
    } else if (between.isPresent()) {
      faces = faces(edge, between.get());
    }
    Optional<Shape> shape = edge.need("shape").flatMap(node -> edge.word(node, SHAPES));
    double size = context.needLength(edge, "size", Bound.POSITIVE);
    OptionalDouble from = context.lengthIfAny(edge, "from", Bound.NOT_NEGATIVE);
    OptionalDouble to = context.lengthIfAny(edge, "to", Bound.POSITIVE);
    OptionalDouble leave = context.lengthIfAny(edge, "leave-ends", Bound.POSITIVE);
    if (leave.isPresent() && (from.isPresent() || to.isPresent())) {
      edge.conflict("conflict", "leave-ends", "“leave-ends” does not go with “from” or “to”");
    }
    if (from.isPresent() && to.isPresent() && to.getAsDouble() <= from.getAsDouble()) {
      Json node = edge.node("to").orElseThrow();
      context
          .problems()
          .add(
              "out-of-range",
              node.at(),
              node.shown(),
              "more than “from”",
              "the end must lie further along the part than the beginning");
    }
    Which of = which;
    List<String> named = faces;
    return shape.map(s -> new EdgePlan(of, named, s, size, from, to, leave, item.pointer()));
  }

  private List<String> faces(Fields edge, Json node) {
    List<Json> two = context.exactly(edge, node, 2);
    if (two.isEmpty()) {
      return List.of();
    }
    Map<String, String> words = new LinkedHashMap<>(PartReader.FACES);
    words.put(EdgePlan.ROUND, EdgePlan.ROUND);
    Optional<String> first = edge.word(two.get(0), words);
    words.put(EdgePlan.ANY, EdgePlan.ANY);
    Optional<String> second = edge.word(two.get(1), words);
    if (first.isPresent() && first.equals(second)) {
      context
          .problems()
          .add(
              "conflict",
              two.get(1).at(),
              two.get(1).shown(),
              "another face",
              "an edge is where two different faces meet");
    }
    return first.isPresent() && second.isPresent() ? List.of(first.get(), second.get()) : List.of();
  }
}
