package dryfit.document;

import dryfit.document.Quantity.Kind;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads the named dimensions: takes each apart, puts them in an order in which each rests on those
 * before it, works them out, and holds each against its range.
 */
final class Dimensions {
  private static final List<String> KEYS =
      List.of("value", "from", "to", "step", "accuracy", "kind", "note");
  private static final Map<String, Kind> KINDS = new LinkedHashMap<>();

  static {
    KINDS.put("length", Kind.LENGTH);
    KINDS.put("angle", Kind.ANGLE);
    KINDS.put("number", Kind.NUMBER);
  }

  /** What the rest of the document needs: the numbers, and the list for the design. */
  record Worked(Numbers numbers, List<Design.Dimension> list) {}

  /** A dimension as written. */
  private record Entry(
      String name, Json value, Optional<Fields> fields, Optional<Expression> formula) {}

  private final Problems problems;
  private final double unit;
  private final Map<String, Entry> entries = new LinkedHashMap<>();
  private final Map<String, Quantity> worked = new LinkedHashMap<>();

  private Dimensions(Problems problems, double unit) {
    this.problems = problems;
    this.unit = unit;
  }

  /**
   * @param node the object of dimensions, empty if the document has none
   * @param unit millimetres of the document's unit
   */
  static Worked read(Optional<Json.Obj> node, double unit, Problems problems) {
    Dimensions reader = new Dimensions(problems, unit);
    node.ifPresent(reader::takeApart);
    Numbers numbers =
        new Numbers(
            problems,
            unit,
            reader.worked,
            new LinkedHashSet<>(reader.entries.keySet()),
            new Blame());
    reader.entries.forEach(
        (name, entry) -> numbers.blame().written(name, entry.value(), entry.formula()));
    for (String name : reader.inOrder()) {
      reader.workOut(reader.entries.get(name), numbers);
    }
    List<Design.Dimension> list = new ArrayList<>();
    for (Entry entry : reader.entries.values()) {
      reader.finish(entry, numbers).ifPresent(list::add);
    }
    return new Worked(numbers, list);
  }

  private void takeApart(Json.Obj all) {
    if (all.members().size() > Limits.dimensions()) {
      problems.add(
          "too-large",
          all.at(),
          all.members().size() + " dimensions",
          "at most " + Limits.dimensions(),
          "a chair may have at most " + Limits.dimensions() + " dimensions");
      return;
    }
    all.members().forEach(this::takeApart);
  }

  private void takeApart(String name, Json node) {
    if (!Names.fitsDimension(name)) {
      problems.add(
          "bad-name",
          node.at(),
          name,
          "a letter, then letters, digits and underscores",
          "a dimension's name is made of letters, digits and underscores, begins with a letter, has"
              + " at most 80 of them, and is not a unit or a function");
    }
    Optional<Fields> fields =
        node instanceof Json.Obj ? Optional.of(new Fields(problems, node, KEYS)) : Optional.empty();
    Json value = fields.isPresent() ? fields.get().need("value").orElse(null) : node;
    Optional<Expression> formula = Optional.empty();
    if (value != null) {
      try {
        formula = Optional.of(Numbers.expression(value));
      } catch (ExpressionFault fault) {
        Numbers.report(value, fault, problems);
      }
    }
    entries.put(name, new Entry(name, value == null ? node : value, fields, formula));
  }

  // ---- order ----

  private List<String> inOrder() {
    Map<String, Set<String>> needs = new LinkedHashMap<>();
    for (Entry entry : entries.values()) {
      Set<String> names = new LinkedHashSet<>();
      entry.formula().ifPresent(formula -> formula.collectNames(names));
      names.retainAll(entries.keySet());
      needs.put(entry.name(), names);
    }
    Ordering ordering = Ordering.of(needs);
    for (List<String> cycle : ordering.cycles()) {
      String first = cycle.get(0);
      String round = String.join(" → ", cycle) + " → " + first;
      problems.add(
          "cycle",
          entries.get(first).value().at(),
          round,
          "dimensions that rest on others, never on themselves",
          "the dimension rests on itself: " + round);
    }
    return ordering.sound();
  }

  // ---- values ----

  private void workOut(Entry entry, Numbers numbers) {
    if (entry.formula().isEmpty()) {
      return;
    }
    try {
      Value value = entry.formula().get().value(numbers);
      Kind kind =
          entry.fields().flatMap(fields -> fields.wordIfAny("kind", KINDS)).orElse(value.natural());
      Quantity quantity = value.as(kind, unit);
      if (kind == Kind.LENGTH && Math.abs(quantity.value()) > Limits.longest()) {
        problems.add(
            "out-of-range",
            entry.value().at(),
            entry.value().shown(),
            "at most 100 metres",
            entry.name() + " is longer than 100 metres");
        return;
      }
      worked.put(entry.name(), quantity);
    } catch (ExpressionFault fault) {
      Numbers.report(entry.value(), fault, problems);
    }
  }

  private Optional<Design.Dimension> finish(Entry entry, Numbers numbers) {
    Quantity quantity = worked.get(entry.name());
    if (quantity == null) {
      return Optional.empty();
    }
    Kind kind = quantity.kind();
    double from = limit(entry, "from", kind, numbers);
    double to = limit(entry, "to", kind, numbers);
    double step = limit(entry, "step", kind, numbers);
    if (step <= 0) {
      problems.add(
          "not-positive",
          entry.fields().orElseThrow().need("step").orElseThrow().at(),
          Double.toString(step),
          "above zero",
          "a step is above zero");
    } else if (to > from && step > to - from + Tolerances.coincident()) {
      Json at = entry.fields().orElseThrow().need("step").orElseThrow();
      problems.add(
          "out-of-range",
          at.at(),
          at.shown(),
          "at most the range",
          "one step is longer than the whole way from “from” to “to”");
    }
    checkRange(entry, quantity.value(), from, to);
    boolean plain = entry.formula().filter(Dimensions::isPlain).isPresent();
    String formula = !plain && entry.value() instanceof Json.Text text ? text.value() : "";
    return Optional.of(
        new Design.Dimension(
            entry.name(),
            quantity,
            formula,
            entry.fields().map(Fields::note).orElse(""),
            from,
            to,
            step,
            accuracy(entry, kind, numbers),
            entry.value().pointer()));
  }

  private double accuracy(Entry entry, Kind kind, Numbers numbers) {
    return entry
        .fields()
        .flatMap(fields -> fields.node("accuracy"))
        .map(node -> accuracy(node, kind, numbers, problems))
        .orElse(0.0);
  }

  /** How far off something may come out; not below zero. */
  static double accuracy(Json node, Kind kind, Numbers numbers, Problems problems) {
    double value = numbers.number(node, kind);
    if (value < 0) {
      problems.add(
          "not-positive",
          node.at(),
          node.shown(),
          "zero or more: how far off it may be, either way",
          "an accuracy is how far off a cut may be either way, and not below zero");
    }
    return value;
  }

  private static boolean isPlain(Expression formula) {
    return formula instanceof Expression.Constant
        || formula instanceof Expression.Minus minus && isPlain(minus.of());
  }

  private static double limit(Entry entry, String key, Kind kind, Numbers numbers) {
    return entry
        .fields()
        .flatMap(fields -> fields.node(key))
        .map(node -> numbers.number(node, kind))
        .orElse(Double.NaN);
  }

  /** Exactly at a limit is within it; 14 and 14 in differ in their last bit. */
  private void checkRange(Entry entry, double value, double from, double to) {
    if (from > to) {
      Json at = entry.fields().orElseThrow().need("from").orElseThrow();
      problems.add(
          "out-of-range", at.at(), at.shown(), "not above “to”", "“from” is greater than “to”");
    } else if (value < from - Tolerances.coincident() || value > to + Tolerances.coincident()) {
      String range =
          entry.fields().flatMap(fields -> fields.node("from")).map(Json::shown).orElse("any")
              + " to "
              + entry.fields().flatMap(fields -> fields.node("to")).map(Json::shown).orElse("any");
      problems.add(
          "out-of-range",
          entry.value().at(),
          entry.value().shown(),
          range,
          entry.name() + " is " + entry.value().shown() + ", outside its range, " + range);
    }
  }
}
