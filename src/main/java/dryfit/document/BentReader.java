package dryfit.document;

import dryfit.document.Context.Bound;
import dryfit.document.PartPlan.Bow;
import dryfit.document.PartPlan.Common;
import dryfit.document.PartPlan.Course;
import dryfit.document.PartPlan.Section;
import dryfit.document.PartPlan.SectionAt;
import dryfit.document.PartPlan.Spot;
import dryfit.document.Quantity.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads a bent part: the curve of its middle line and the sections along it. */
final class BentReader {
  static final List<String> KEYS =
      List.of("along", "rise", "toward", "section", "sections", "diameters", "upright", "turn");
  private static final List<String> BOW = List.of("rise", "toward");

  private final Context context;
  private final Common common;
  private final Fields part;

  BentReader(Context context, Common common, Fields part) {
    this.context = context;
    this.common = common;
    this.part = part;
  }

  PartPlan read() {
    List<SectionAt> sections = sections();
    boolean upright = part.flag("upright", false);
    if (upright && sections.stream().anyMatch(s -> s.section() instanceof Section.Round)) {
      part.conflict("conflict", "upright", "a round section has no width to keep upright");
    }
    double turn =
        part.node("turn").map(node -> context.number(node, Kind.ANGLE, Bound.ANY)).orElse(0.0);
    return new PartPlan.Bent(common, course(), sections, upright, turn);
  }

  // ---- middle line ----

  private Course course() {
    if (part.has("along")) {
      Stream.of(PlacementReader.RUN, PlacementReader.BETWEEN, BOW)
          .flatMap(List::stream)
          .filter(part::has)
          .forEach(
              other ->
                  part.conflict(
                      "conflict", other, Problems.quoted(other) + " does not go with “along”"));
      return through(part.node("along").orElseThrow());
    }
    if (!part.has("between") && !part.has("from") && !part.has("to")) {
      context
          .problems()
          .add(
              "missing-value",
              part.at(),
              "nothing",
              "along; from, to, rise and toward; or between, rise and toward",
              "this part does not say where it is; it needs “along”, “from” and “to”, or"
                  + " “between”");
      return new Course.Through(List.of(), part.self().pointer());
    }
    return new Course.Bowed(new PlacementReader(context, part).runOrBetween(), bow(context, part));
  }

  /** The bow that a part says it has; both its keys are needed. */
  static Bow bow(Context context, Fields part) {
    double rise = context.needLength(part, "rise", Bound.POSITIVE);
    String toward =
        part.need("toward").flatMap(node -> part.word(node, PartReader.FACES)).orElse("back");
    return new Bow(rise, toward, part.self().pointer());
  }

  private Course through(Json node) {
    List<Spot> points = new ArrayList<>();
    List<Json> items = part.list(node);
    for (Json item : items) {
      points.add(context.spot(part, item, Kind.LENGTH));
    }
    if (points.size() < 2 && node instanceof Json.Arr) {
      context
          .problems()
          .add(
              "missing-value",
              node.at(),
              points.size() + " points",
              "at least two points",
              "a middle line goes through at least two points");
    }
    return new Course.Through(points, node.pointer());
  }

  // ---- sections ----

  private List<SectionAt> sections() {
    List<String> written = Stream.of("section", "sections", "diameters").filter(part::has).toList();
    if (written.isEmpty()) {
      part.need("section");
      return List.of(new SectionAt(0, new Section.Rectangle(Double.NaN, Double.NaN)));
    }
    if (written.size() > 1) {
      part.conflict(
          "conflict",
          written.get(1),
          Problems.quoted(written.get(0))
              + " and "
              + Problems.quoted(written.get(1))
              + " say the same thing twice");
    }
    Json node = part.node(written.get(0)).orElseThrow();
    return switch (written.get(0)) {
      case "section" -> List.of(new SectionAt(0, new PartReader(context).section(part, node)));
      case "diameters" ->
          new OutlineReader(context, part)
              .stations(part, "diameters").stream()
                  .map(s -> new SectionAt(s.u(), new Section.Round(s.v())))
                  .toList();
      default -> changing(node);
    };
  }

  /** A list of {@code [position, width, thickness]}, positions rising. */
  private List<SectionAt> changing(Json list) {
    List<SectionAt> sections = new ArrayList<>();
    for (Json item : part.list(list)) {
      List<Json> three = context.exactly(part, item, 3);
      if (three.isEmpty()) {
        continue;
      }
      SectionAt next =
          new SectionAt(
              context.length(three.get(0), Bound.ANY),
              new Section.Rectangle(
                  context.length(three.get(1), Bound.POSITIVE),
                  context.length(three.get(2), Bound.POSITIVE)));
      Optional<SectionAt> last =
          sections.isEmpty() ? Optional.empty() : Optional.of(sections.get(sections.size() - 1));
      if (last.isPresent() && next.along() <= last.get().along()) {
        context
            .problems()
            .add(
                "out-of-range",
                item.at(),
                item.shown(),
                "each position greater than the one before",
                "the positions in this list must rise from one to the next");
      }
      sections.add(next);
    }
    if (sections.isEmpty() && list instanceof Json.Arr) {
      context
          .problems()
          .add("missing-value", list.at(), "nothing", "at least one", "this list is empty");
    }
    return sections;
  }
}
