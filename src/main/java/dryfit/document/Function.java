package dryfit.document;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The functions an expression may call, under their usual names in mathematics. */
enum Function {
  SIN(1, 1),
  COS(1, 1),
  TAN(1, 1),
  ASIN(1, 1),
  ACOS(1, 1),
  ATAN(1, 1),
  ATAN2(2, 2),
  SQRT(1, 1),
  ABS(1, 1),
  HYPOT(2, 9),
  MIN(2, 9),
  MAX(2, 9),
  ROUND(1, 2);

  private final int least;
  private final int most;

  Function(int least, int most) {
    this.least = least;
    this.most = most;
  }

  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  boolean takes(int arguments) {
    return arguments >= least && arguments <= most;
  }

  /** How many arguments it takes, in words. */
  String arity() {
    return least == most ? Integer.toString(least) : least + " to " + most;
  }

  static Optional<Function> named(String word) {
    return Arrays.stream(values()).filter(function -> function.word().equals(word)).findFirst();
  }

  static List<String> words() {
    return Arrays.stream(values()).map(Function::word).toList();
  }

  /**
   * Works it out.
   *
   * @param arguments as many as it takes
   * @param unit millimetres of the document's unit
   */
  Value apply(List<Value> arguments, double unit) {
    Value first = arguments.get(0);
    return switch (this) {
      case SIN -> Value.ratio(Math.sin(first.radians()));
      case COS -> Value.ratio(Math.cos(first.radians()));
      case TAN -> Value.ratio(Math.tan(first.radians()));
      case ASIN -> Value.angle(Math.asin(first.plain()));
      case ACOS -> Value.angle(Math.acos(first.plain()));
      case ATAN -> Value.angle(Math.atan(first.plain()));
      case ATAN2 -> {
        List<Value> same = alike(arguments, unit);
        yield Value.angle(Math.atan2(same.get(0).number(), same.get(1).number()));
      }
      case SQRT -> root(first);
      case ABS -> first.with(Math.abs(first.number()));
      case HYPOT -> {
        List<Value> same = alike(arguments, unit);
        yield same.get(0).with(same.stream().mapToDouble(Value::number).reduce(0, Math::hypot));
      }
      case MIN -> fold(alike(arguments, unit), Math::min);
      case MAX -> fold(alike(arguments, unit), Math::max);
      case ROUND -> round(first, arguments.size() > 1 ? arguments.get(1) : Value.bare(1), unit);
    };
  }

  private static Value root(Value of) {
    if (of.sort() == Value.Sort.ANGLE || of.power() % 2 != 0) {
      throw ExpressionFault.of("wrong-unit", "it takes the square root of " + of.measure());
    }
    return new Value(Math.sqrt(of.number()), of.sort(), of.power() / 2);
  }

  /** To the nearest step; exactly half way goes up. */
  private static Value round(Value value, Value step, double unit) {
    List<Value> same = alike(List.of(value, step), unit);
    double by = same.get(1).number();
    if (!(by > 0)) {
      throw ExpressionFault.of("not-a-number", "it rounds to a step that is not above zero");
    }
    return same.get(0).with(Math.floor(same.get(0).number() / by + 0.5) * by);
  }

  private static Value fold(List<Value> values, java.util.function.DoubleBinaryOperator choose) {
    double chosen = values.stream().mapToDouble(Value::number).reduce(choose).orElseThrow();
    return values.get(0).with(chosen);
  }

  /** All in the unit of the first that has one. */
  private static List<Value> alike(List<Value> values, double unit) {
    Value model =
        values.stream().filter(value -> !value.isBare()).findFirst().orElse(values.get(0));
    return values.stream().map(value -> value.like(model, unit)).toList();
  }
}
