package dryfit.document;

import dryfit.document.Quantity.Kind;
import dryfit.measure.Length.Unit;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Works out the numbers of a document, whether written as numbers or as expressions. A fault is
 * noted, and NaN stands in for the value, which fails no later comparison.
 *
 * @param unit millimetres of the document's unit
 * @param dimensions those that could be worked out
 * @param known the names of all dimensions
 * @param blame where faults go that a dimension may be to blame for
 */
record Numbers(
    Problems problems,
    double unit,
    Map<String, Quantity> dimensions,
    Set<String> known,
    Blame blame)
    implements Expression.Scope {

  /** The document's unit. */
  Unit printed() {
    return unit == Unit.IN.mm() ? Unit.IN : Unit.MM;
  }

  @Override
  public Value dimension(String name) {
    Quantity quantity = dimensions.get(name);
    if (quantity != null) {
      return Value.of(quantity);
    }
    if (known.contains(name)) {
      throw ExpressionFault.toldElsewhere();
    }
    throw ExpressionFault.unknown("a dimension", name, known);
  }

  /** Millimetres, radians or a plain number. */
  double number(Json node, Kind kind) {
    Expression expression;
    try {
      expression = expression(node);
    } catch (ExpressionFault fault) {
      report(node, fault, problems);
      return Double.NaN;
    }
    try {
      Quantity quantity = expression.value(this).as(kind, unit);
      blame.right(expression);
      if (kind == Kind.LENGTH && Math.abs(quantity.value()) > Limits.longest()) {
        problems.add(
            "out-of-range",
            node.at(),
            node.shown(),
            "at most 100 metres",
            node.shown() + " is longer than 100 metres");
        return Double.NaN;
      }
      return quantity.value();
    } catch (ExpressionFault fault) {
      tell(node, expression, fault);
      return Double.NaN;
    }
  }

  /** A number that came out right but may not be what it is; told of the dimension that it is. */
  void refuse(Json node, String code, String allowed, String what) {
    ExpressionFault fault = ExpressionFault.of(code, "it " + what);
    try {
      if (blame.keeps(node, expression(node), fault)) {
        return;
      }
    } catch (ExpressionFault unread) {
      throw new IllegalStateException(unread);
    }
    problems.add(code, node.at(), node.shown(), allowed, node.shown() + " " + what);
  }

  private void tell(Json node, Expression expression, ExpressionFault fault) {
    if (!fault.code().equals("wrong-unit") || !blame.keeps(node, expression, fault)) {
      report(node, fault, problems);
    }
  }

  /** A quantity of whatever kind it turns out to be; empty after a problem. */
  Optional<Quantity> quantity(Json node) {
    try {
      Value value = value(node, this);
      return Optional.of(value.as(value.natural(), unit));
    } catch (ExpressionFault fault) {
      report(node, fault, problems);
      return Optional.empty();
    }
  }

  /** The value of a node before it is known what it should measure. */
  static Value value(Json node, Expression.Scope scope) {
    return expression(node).value(scope);
  }

  /** A number or an expression, taken apart. */
  static Expression expression(Json node) {
    if (node instanceof Json.Num num) {
      double number;
      try {
        number = Double.parseDouble(num.text());
      } catch (NumberFormatException e) {
        number = Double.NaN;
      }
      if (!Double.isFinite(number)) {
        throw ExpressionFault.of("not-a-number", num.text() + " is not a number a chair can have");
      }
      return new Expression.Constant(Value.bare(number));
    }
    if (node instanceof Json.Text text) {
      String word = text.value().strip();
      if (Set.of("NaN", "Infinity", "-Infinity").contains(word)) {
        throw ExpressionFault.of("not-a-number", word + " is not a number a chair can have");
      }
      return ExpressionParser.parse(text.value());
    }
    throw ExpressionFault.of(
        "wrong-type", "a number or an expression is needed here, and this is " + node.kind());
  }

  /** Notes the fault at the node, unless it is told elsewhere. */
  static void report(Json node, ExpressionFault fault, Problems problems) {
    if (fault.code().isEmpty()) {
      return;
    }
    if (fault.code().equals("unknown-name")) {
      problems.unknown(fault.code(), node.at(), fault.found(), fault.known(), fault.getMessage());
      return;
    }
    String place = node instanceof Json.Text ? node.shown() + ": " : "";
    problems.add(
        fault.code(),
        node.at(),
        node.shown(),
        "a number with the right unit",
        place + fault.getMessage());
  }
}
