package dryfit.document;

import java.util.List;
import java.util.Set;

/** An expression, taken apart. */
sealed interface Expression {

  /** What names stand for, and how long the document's unit is in millimetres. */
  interface Scope {
    Value dimension(String name);

    double unit();
  }

  /**
   * Works it out.
   *
   * @throws ExpressionFault if units do not go together or the result is no number
   */
  Value value(Scope scope);

  /** Adds the names of dimensions it rests on. */
  void collectNames(Set<String> names);

  record Constant(Value value) implements Expression {
    @Override
    public Value value(Scope scope) {
      return value;
    }

    @Override
    public void collectNames(Set<String> names) {}
  }

  record Name(String name) implements Expression {
    @Override
    public Value value(Scope scope) {
      return scope.dimension(name);
    }

    @Override
    public void collectNames(Set<String> names) {
      names.add(name);
    }
  }

  record Minus(Expression of) implements Expression {
    @Override
    public Value value(Scope scope) {
      Value value = of.value(scope);
      return value.with(-value.number());
    }

    @Override
    public void collectNames(Set<String> names) {
      of.collectNames(names);
    }
  }

  record Sum(Expression left, Expression right) implements Expression {
    @Override
    public Value value(Scope scope) {
      return left.value(scope).plus(right.value(scope), scope.unit());
    }

    @Override
    public void collectNames(Set<String> names) {
      left.collectNames(names);
      right.collectNames(names);
    }
  }

  record Product(Expression left, Expression right) implements Expression {
    @Override
    public Value value(Scope scope) {
      return left.value(scope).times(right.value(scope));
    }

    @Override
    public void collectNames(Set<String> names) {
      left.collectNames(names);
      right.collectNames(names);
    }
  }

  record Quotient(Expression left, Expression right) implements Expression {
    @Override
    public Value value(Scope scope) {
      return left.value(scope).over(right.value(scope));
    }

    @Override
    public void collectNames(Set<String> names) {
      left.collectNames(names);
      right.collectNames(names);
    }
  }

  record Call(Function function, List<Expression> arguments) implements Expression {
    public Call {
      arguments = List.copyOf(arguments);
    }

    @Override
    public Value value(Scope scope) {
      return function.apply(
          arguments.stream().map(argument -> argument.value(scope)).toList(), scope.unit());
    }

    @Override
    public void collectNames(Set<String> names) {
      arguments.forEach(argument -> argument.collectNames(names));
    }
  }
}
