package dryfit.document;

import dryfit.document.Design.FitPlan;
import dryfit.document.PartPlan.Ends;
import dryfit.document.PartPlan.Spot;
import dryfit.document.PartPlan.Spot2;
import dryfit.document.Quantity.Kind;
import dryfit.measure.Angle;
import dryfit.measure.Length;
import dryfit.measure.Tolerances;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What the readers of parts and joints share: where problems go, the numbers, and the names they
 * may refer to.
 *
 * @param parts every part, and whether it is a pair
 * @param joints every joint
 * @param timber the chair's timber, for parts that name none
 * @param fit the chair's fit, for joints that change none of it
 */
record Context(
    Problems problems,
    Numbers numbers,
    Map<String, Boolean> parts,
    Set<String> joints,
    String timber,
    FitPlan fit) {

  /** What a number may be. */
  enum Bound {
    ANY,
    NOT_NEGATIVE,
    POSITIVE
  }

  double length(Json node, Bound bound) {
    return number(node, Kind.LENGTH, bound);
  }

  double number(Json node, Kind kind, Bound bound) {
    double value = numbers.number(node, kind);
    if (bound == Bound.POSITIVE && value <= 0) {
      numbers.refuse(
          node,
          "not-positive",
          "above zero",
          "comes to " + told(value, kind) + ", and this must be above zero");
    } else if (bound == Bound.POSITIVE && kind == Kind.LENGTH && value < Tolerances.leastSize()) {
      numbers.refuse(
          node,
          "out-of-range",
          "at least " + least(),
          "is less than " + least() + ", the least size of anything that can be built");
    } else if (bound == Bound.NOT_NEGATIVE && value < 0) {
      numbers.refuse(
          node,
          "out-of-range",
          "zero or more",
          "comes to " + told(value, kind) + ", and this cannot be below zero");
    }
    return value;
  }

  private String least() {
    Length.Unit unit = numbers.printed();
    return Length.decimal(Tolerances.leastSize(), unit, unit == Length.Unit.IN ? 4 : 2);
  }

  private String told(double value, Kind kind) {
    return switch (kind) {
      case LENGTH -> told(value);
      case ANGLE -> Angle.degrees(value);
      case NUMBER -> String.format(Locale.ROOT, "%.3f", value).replace('-', '−');
    };
  }

  /** A length in the unit that the document is written in. */
  String told(double mm) {
    return Length.told(mm, numbers.printed());
  }

  double needLength(Fields fields, String key, Bound bound) {
    return fields.need(key).map(node -> length(node, bound)).orElse(Double.NaN);
  }

  OptionalDouble lengthIfAny(Fields fields, String key, Bound bound) {
    Optional<Json> node = fields.node(key);
    return node.isPresent() ? OptionalDouble.of(length(node.get(), bound)) : OptionalDouble.empty();
  }

  double length(Fields fields, String key, Bound bound, double otherwise) {
    return lengthIfAny(fields, key, bound).orElse(otherwise);
  }

  /** {@code [x, y, z]}, lengths or, for a direction, plain numbers. */
  Spot spot(Fields fields, Json node, Kind kind) {
    List<Json> items = exactly(fields, node, 3);
    return items.isEmpty()
        ? new Spot(Double.NaN, Double.NaN, Double.NaN)
        : new Spot(
            numbers.number(items.get(0), kind),
            numbers.number(items.get(1), kind),
            numbers.number(items.get(2), kind));
  }

  /** A direction {@code [x, y, z]}, not nothing in every way. */
  Spot direction(Fields fields, Json node) {
    Spot spot = spot(fields, node, Kind.NUMBER);
    if (spot.x() == 0 && spot.y() == 0 && spot.z() == 0) {
      problems.add(
          "not-positive", node.at(), "[0, 0, 0]", "a direction", "a direction cannot be all zeros");
    }
    return spot;
  }

  /** {@code [u, v]}, the second within a bound. */
  Spot2 spot2(Fields fields, Json node, Bound second) {
    List<Json> items = exactly(fields, node, 2);
    return items.isEmpty()
        ? new Spot2(Double.NaN, Double.NaN)
        : new Spot2(length(items.get(0), Bound.ANY), length(items.get(1), second));
  }

  /** One number for both ends, or {@code [first, second]}. */
  Ends ends(Fields fields, Json node) {
    if (node instanceof Json.Arr) {
      Spot2 both = spot2(fields, node, Bound.ANY);
      return new Ends(both.u(), both.v());
    }
    double same = length(node, Bound.ANY);
    return new Ends(same, same);
  }

  /** The items of a list of a given size, or a problem and nothing. */
  List<Json> exactly(Fields fields, Json node, int size) {
    if (node instanceof Json.Arr array && array.items().size() == size) {
      return array.items();
    }
    String wanted = "a list of " + size + " values";
    if (node instanceof Json.Arr array) {
      int n = array.items().size();
      String has = n == 0 ? "none" : Integer.toString(n);
      problems.add(
          "wrong-type", node.at(), has, wanted, wanted + " is needed here, and this has " + has);
    } else {
      fields.wrongType(node, wanted);
    }
    return List.of();
  }
}
