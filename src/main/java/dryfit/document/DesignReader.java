package dryfit.document;

import dryfit.document.Design.FitPlan;
import dryfit.document.Design.Labels;
import dryfit.document.Design.LengthUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads a whole document, with its variant already laid over it. */
final class DesignReader {
  /** The one format this reads. */
  static final String FORMAT = "dryfit-chair/1";

  private static final FitPlan USUAL_FIT = new FitPlan(0.1, 0.5, 2, FitLimit.LEAST_WALL.usual());
  private static final List<String> KEYS =
      List.of(
          "format",
          "name",
          "about",
          "unit",
          "labels",
          "timber",
          "fit",
          "limits",
          "dimensions",
          "parts",
          "joints",
          "variants",
          "measured",
          "waived",
          "jigs",
          "boards",
          "printing",
          "accuracy");
  private static final Map<String, LengthUnit> UNITS = new LinkedHashMap<>();
  private static final Map<String, Labels> LABELS = new LinkedHashMap<>();

  static {
    UNITS.put("mm", LengthUnit.MM);
    UNITS.put("in", LengthUnit.IN);
    LABELS.put("as-you-face-it", Labels.AS_YOU_FACE_IT);
    LABELS.put("as-seated", Labels.AS_SEATED);
  }

  private final Problems problems;
  private final Json.Obj drawn;
  private final Fields root;

  /**
   * @param drawn the document without any variant
   * @param merged the same with a variant laid over it, or {@code drawn} itself
   */
  DesignReader(Json.Obj drawn, Json.Obj merged, Problems problems) {
    this.problems = problems;
    this.drawn = drawn;
    this.root = new Fields(problems, merged, KEYS, "a chair document");
  }

  /** The design, which means something only if no problem was noted. */
  Design read(String file, String variant) {
    format();
    String name = root.needWords("name");
    if (name.length() > Limits.name()) {
      tooLong(root.node("name").orElseThrow());
    }
    Optional<LengthUnit> known = root.need("unit").flatMap(node -> root.word(node, UNITS));
    String timber =
        root.need("timber").flatMap(node -> root.word(node, Timbers.byName())).orElse("");
    Labels labels = root.wordIfAny("labels", LABELS).orElse(Labels.AS_YOU_FACE_IT);
    if (known.isEmpty()) {
      return unread(file, name, labels, variant, timber);
    }
    LengthUnit unit = known.get();
    Dimensions.Worked worked =
        Dimensions.read(root.object("dimensions"), unit.printed().mm(), problems);

    Map<String, Json> parts = things("parts", Limits.parts());
    Map<String, Json> joints = things("joints", Limits.joints());
    if (root.need("parts").isPresent() && parts.isEmpty()) {
      emptyChair();
    }
    Context before =
        new Context(problems, worked.numbers(), pairs(parts), joints.keySet(), timber, USUAL_FIT);
    FitPlan fit =
        root.node("fit").map(node -> JointReader.fit(node, before, USUAL_FIT)).orElse(USUAL_FIT);
    Context context =
        new Context(problems, worked.numbers(), pairs(parts), joints.keySet(), timber, fit);

    Map<String, PartPlan> partPlans = parts(parts, context);
    List<JointPlan> jointPlans = joints(joints, partPlans, context);
    ListsReader lists = new ListsReader(withDrawnNames(context));
    Variants.check(root);
    Design design =
        new Design(
            file,
            name,
            root.text("about", ""),
            unit,
            labels,
            variant,
            timber,
            fit,
            worked.list(),
            List.copyOf(partPlans.values()),
            jointPlans,
            lists.waived(root),
            lists.measured(root),
            lists.jigs(root),
            new LimitsReader(context).read((Json.Obj) root.self(), joints),
            root.node("boards").map(new BoardsReader(context)::read).orElse(BoardsPlan.USUAL),
            new PrintingReader(context).read(root),
            accuracy(context));
    worked.numbers().blame().tell(problems);
    return design;
  }

  /** Without a unit no number means anything, and whatever is said of one would be noise. */
  private static Design unread(
      String file, String name, Labels labels, String variant, String timber) {
    return new Design(
        file,
        name,
        "",
        LengthUnit.MM,
        labels,
        variant,
        timber,
        USUAL_FIT,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  private Design.Accuracy accuracy(Context context) {
    Optional<Json> node = root.node("accuracy");
    if (node.isEmpty()) {
      return Design.Accuracy.USUAL;
    }
    Fields fields =
        new Fields(problems, node.get(), List.of("length", "angle", "bored", "fit"), "an accuracy");
    Design.Accuracy usual = Design.Accuracy.USUAL;
    double angle = accuracy(fields, "angle", Quantity.Kind.ANGLE, usual.angle(), context);
    // Who says one angle means it for all of them.
    double bored = fields.node("angle").isPresent() ? angle : usual.bored();
    return new Design.Accuracy(
        accuracy(fields, "length", Quantity.Kind.LENGTH, usual.length(), context),
        angle,
        accuracy(fields, "bored", Quantity.Kind.ANGLE, bored, context),
        accuracy(fields, "fit", Quantity.Kind.LENGTH, usual.fit(), context));
  }

  private static double accuracy(
      Fields fields, String key, Quantity.Kind kind, double usual, Context context) {
    return fields
        .node(key)
        .map(node -> Dimensions.accuracy(node, kind, context.numbers(), context.problems()))
        .orElse(usual);
  }

  private void format() {
    Map<String, String> formats = new LinkedHashMap<>();
    formats.put(FORMAT, FORMAT);
    Optional<Json> node = root.need("format");
    if (node.isPresent() && node.get() instanceof Json.Text text && !text.value().equals(FORMAT)) {
      problems.unknown(
          "unknown-format",
          text.at(),
          text.value(),
          formats.keySet(),
          "a format this program reads");
    } else {
      node.ifPresent(value -> root.word(value, formats));
    }
  }

  private void tooLong(Json name) {
    problems.add(
        "bad-name",
        name.at(),
        name.shown(),
        "at most 80 characters",
        "a chair's name has at most 80 characters");
  }

  private void emptyChair() {
    root.node("parts")
        .filter(Json.Obj.class::isInstance)
        .ifPresent(
            node ->
                problems.add(
                    "empty-chair", node.at(), "no part", "at least one part", "a chair has parts"));
  }

  /** The members of one of the two big objects, none of them if there are too many. */
  private Map<String, Json> things(String key, int most) {
    Optional<Json.Obj> object = root.object(key);
    if (object.isEmpty()) {
      return Map.of();
    }
    int size = object.get().members().size();
    if (size > most) {
      problems.add(
          "too-large",
          object.get().at(),
          size + " " + key,
          "at most " + most,
          "a chair may have at most " + most + " " + key);
      return Map.of();
    }
    return object.get().members();
  }

  private static Map<String, Boolean> pairs(Map<String, Json> parts) {
    Map<String, Boolean> pairs = new LinkedHashMap<>();
    parts.forEach(
        (name, node) ->
            pairs.put(
                name, node instanceof Json.Obj object && isPair(object.members().get("pair"))));
    return pairs;
  }

  /** What is neither true nor false is told once, and not again at every hand. */
  private static boolean isPair(Json pair) {
    return pair instanceof Json.Bool bool ? bool.value() : pair != null;
  }

  /** Lists may go on naming what a variant leaves out. */
  private Context withDrawnNames(Context context) {
    Map<String, Boolean> parts = new LinkedHashMap<>();
    Set<String> joints = new LinkedHashSet<>();
    if (drawn.members().get("parts") instanceof Json.Obj object) {
      parts.putAll(pairs(object.members()));
    }
    if (drawn.members().get("joints") instanceof Json.Obj object) {
      joints.addAll(object.members().keySet());
    }
    parts.putAll(context.parts());
    joints.addAll(context.joints());
    return new Context(problems, context.numbers(), parts, joints, context.timber(), context.fit());
  }

  // ---- parts and joints ----

  private Map<String, PartPlan> parts(Map<String, Json> nodes, Context context) {
    PartReader reader = new PartReader(context);
    Map<String, PartPlan> plans = new LinkedHashMap<>();
    nodes.forEach((name, node) -> reader.read(name, node).ifPresent(plan -> plans.put(name, plan)));
    refuseCycles(nodes, plans);
    return plans;
  }

  private void refuseCycles(Map<String, Json> nodes, Map<String, PartPlan> plans) {
    Map<String, Set<String>> needs = new LinkedHashMap<>();
    plans.forEach((name, plan) -> needs.put(name, RestsOn.parts(plan)));
    needs.values().forEach(names -> names.retainAll(plans.keySet()));
    for (List<String> cycle : Ordering.of(needs).cycles()) {
      String first = cycle.get(0);
      String round = String.join(" → ", cycle) + " → " + first;
      problems.add(
          "cycle",
          nodes.get(first).at(),
          round,
          "parts that stand between others, never between themselves",
          "the part's place rests on its own: " + round);
    }
  }

  private List<JointPlan> joints(
      Map<String, Json> nodes, Map<String, PartPlan> parts, Context context) {
    JointReader reader = new JointReader(context);
    List<JointPlan> plans = new ArrayList<>();
    nodes.forEach(
        (name, node) -> {
          Optional<JointPlan> plan = reader.read(name, node);
          plan.ifPresent(plans::add);
          if (plan.isPresent() && node instanceof Json.Obj object) {
            TenonCheck.check(plan.get(), object, parts, context);
          }
        });
    return plans;
  }
}
