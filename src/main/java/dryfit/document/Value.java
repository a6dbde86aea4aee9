package dryfit.document;

import dryfit.document.Quantity.Kind;

/**
 * A number on its way through an expression, with what it measures.
 *
 * <p>Three sorts: <i>bare</i>, a number written without a unit, which takes the unit of what it
 * meets; a power of a length (millimetres to that power; power nought is a ratio, which is no
 * longer bare and cannot be added to a length); and an angle in radians.
 */
record Value(double number, Sort sort, int power) {

  enum Sort {
    BARE,
    LENGTH,
    ANGLE
  }

  Value {
    if (!Double.isFinite(number)) {
      throw ExpressionFault.of(
          "not-a-number", "it does not come to a finite number (is something divided by zero?)");
    }
    number = number + 0.0; // turns -0.0 into 0.0
  }

  static Value bare(double number) {
    return new Value(number, Sort.BARE, 0);
  }

  static Value length(double mm) {
    return new Value(mm, Sort.LENGTH, 1);
  }

  static Value ratio(double number) {
    return new Value(number, Sort.LENGTH, 0);
  }

  static Value angle(double radians) {
    return new Value(radians, Sort.ANGLE, 0);
  }

  static Value of(Quantity quantity) {
    return switch (quantity.kind()) {
      case LENGTH -> length(quantity.value());
      case ANGLE -> angle(quantity.value());
      case NUMBER -> ratio(quantity.value());
    };
  }

  /** The same with another number in it, for what keeps its unit: minus, rounding, the greatest. */
  Value with(double other) {
    return new Value(other, sort, power);
  }

  boolean isBare() {
    return sort == Sort.BARE;
  }

  boolean isRatio() {
    return sort == Sort.LENGTH && power == 0;
  }

  /**
   * This value in the unit of another, so that the two can be added or compared.
   *
   * @param unit millimetres of the document's unit, for a bare number that meets a length
   */
  Value like(Value other, double unit) {
    if (sort == other.sort && power == other.power) {
      return this;
    }
    if (isBare()) {
      return other.with(
          other.sort == Sort.ANGLE ? Math.toRadians(number) : number * Math.pow(unit, other.power));
    }
    if (other.isBare()) {
      return this;
    }
    throw ExpressionFault.of(
        "wrong-unit", "it puts " + measure() + " together with " + other.measure());
  }

  Value plus(Value other, double unit) {
    Value left = like(other, unit);
    return left.with(left.number + other.like(left, unit).number);
  }

  Value times(Value other) {
    double product = number * other.number;
    if (isBare()) {
      return other.with(product);
    }
    if (other.isBare()) {
      return with(product);
    }
    if (sort == Sort.LENGTH && other.sort == Sort.LENGTH) {
      return new Value(product, Sort.LENGTH, power + other.power);
    }
    if (isRatio() || other.isRatio()) {
      return angle(product);
    }
    throw ExpressionFault.of("wrong-unit", "it multiplies " + measure() + " by " + other.measure());
  }

  Value over(Value other) {
    if (other.number == 0) {
      throw ExpressionFault.of("not-a-number", "it divides by zero");
    }
    double quotient = number / other.number;
    if (other.isBare()) {
      return with(quotient);
    }
    if (sort == Sort.ANGLE && other.sort == Sort.ANGLE) {
      return ratio(quotient);
    }
    if (sort == Sort.ANGLE && other.isRatio()) {
      return angle(quotient);
    }
    if (sort != Sort.ANGLE && other.sort == Sort.LENGTH) {
      return new Value(quotient, Sort.LENGTH, power - other.power);
    }
    throw ExpressionFault.of("wrong-unit", "it divides " + measure() + " by " + other.measure());
  }

  /** Radians of an angle; a bare number is degrees. */
  double radians() {
    if (isBare()) {
      return Math.toRadians(number);
    }
    if (sort == Sort.ANGLE) {
      return number;
    }
    throw ExpressionFault.of("wrong-unit", "an angle is needed where it has " + measure());
  }

  /** The number of a bare number or a ratio. */
  double plain() {
    if (isBare() || isRatio()) {
      return number;
    }
    throw ExpressionFault.of("wrong-unit", "a plain number is needed where it has " + measure());
  }

  /** The end of the way: a quantity of the kind that is wanted. */
  Quantity as(Kind kind, double unit) {
    return switch (kind) {
      case LENGTH -> {
        if (!isBare() && !(sort == Sort.LENGTH && power == 1)) {
          throw ExpressionFault.of(
              "wrong-unit", "a length is needed here, and this is " + measure());
        }
        yield new Quantity(isBare() ? number * unit : number, kind);
      }
      case ANGLE -> {
        if (!isBare() && sort != Sort.ANGLE) {
          throw ExpressionFault.of(
              "wrong-unit", "an angle is needed here, and this is " + measure());
        }
        yield new Quantity(radians(), kind);
      }
      case NUMBER -> {
        if (!isBare() && !isRatio()) {
          throw ExpressionFault.of(
              "wrong-unit", "a plain number is needed here, and this is " + measure());
        }
        yield new Quantity(number, kind);
      }
    };
  }

  /** What it is where nothing says what it should be: a bare number is a length. */
  Kind natural() {
    if (sort == Sort.ANGLE) {
      return Kind.ANGLE;
    }
    return isRatio() ? Kind.NUMBER : Kind.LENGTH;
  }

  /** What it measures, in words. */
  String measure() {
    if (isBare()) {
      return "a plain number";
    }
    if (sort == Sort.ANGLE) {
      return "an angle";
    }
    return switch (power) {
      case 0 -> "a ratio";
      case 1 -> "a length";
      case 2 -> "an area";
      case 3 -> "a volume";
      default -> "a length to the power " + power;
    };
  }
}
