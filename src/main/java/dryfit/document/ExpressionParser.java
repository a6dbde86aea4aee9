package dryfit.document;

import dryfit.measure.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Takes an expression apart.
 *
 * <pre>
 * sum     = product { ("+" | "-") product }
 * product = signed { ("*" | "/") signed }
 * signed  = ["-"] operand
 * operand = literal | name | function "(" sum { "," sum } ")" | "(" sum ")"
 * </pre>
 *
 * A literal is what {@link Literal} reads, so {@code 3/8 in} is one length and {@code 1:8} one
 * angle.
 */
final class ExpressionParser {
  /** A whole text like {@code 1-3/4} is a size as a maker writes it, never a quarter. */
  private static final Pattern MIXED = Pattern.compile("^\\s*(\\d+)-(\\d+/\\d+|[½¼¾⅛⅜⅝⅞])\\s*$");

  private final String text;
  private int at;
  private int depth;

  private ExpressionParser(String text) {
    this.text = text;
  }

  /**
   * Parses a whole text.
   *
   * @throws ExpressionFault {@code bad-expression} or {@code unknown-name}
   */
  static Expression parse(String text) {
    if (text.length() > Limits.expression()) {
      throw ExpressionFault.of(
          "bad-expression",
          "it is longer than "
              + Limits.expression()
              + " characters; split it over named dimensions");
    }
    String plain = text.replace('−', '-').replace('×', '*');
    Slips.refuse(plain);
    ExpressionParser parser = new ExpressionParser(MIXED.matcher(plain).replaceFirst("$1 $2"));
    Expression whole = parser.sum();
    parser.skipSpaces();
    if (parser.at < text.length()) {
      throw parser.unexpected();
    }
    return whole;
  }

  private Expression sum() {
    Expression left = product();
    while (true) {
      if (takes('+')) {
        left = new Expression.Sum(left, product());
      } else if (takes('-')) {
        left = new Expression.Sum(left, new Expression.Minus(product()));
      } else {
        return left;
      }
    }
  }

  private Expression product() {
    Expression left = signed();
    while (true) {
      if (takes('*')) {
        left = new Expression.Product(left, signed());
      } else if (takes('/')) {
        left = new Expression.Quotient(left, signed());
      } else {
        return left;
      }
    }
  }

  private Expression signed() {
    if (++depth > Limits.expressionDepth()) {
      throw ExpressionFault.of(
          "bad-expression",
          "brackets, calls and signs stand more than "
              + Limits.expressionDepth()
              + " deep inside one another");
    }
    Expression result = takes('-') ? new Expression.Minus(signed()) : operand();
    depth--;
    return result;
  }

  private Expression operand() {
    skipSpaces();
    if (takes('(')) {
      Expression inside = sum();
      need(')');
      return inside;
    }
    Optional<Literal> literal = at < text.length() ? Literal.at(text, at) : Optional.empty();
    if (literal.isPresent()) {
      at = literal.get().end();
      return new Expression.Constant(value(literal.get()));
    }
    String word = word();
    if (word.isEmpty()) {
      throw unexpected();
    }
    return takes('(') ? call(word) : new Expression.Name(word);
  }

  private static Value value(Literal literal) {
    return switch (literal.kind()) {
      case BARE -> Value.bare(literal.value());
      case LENGTH -> Value.length(literal.value());
      case ANGLE -> Value.angle(literal.value());
    };
  }

  private Expression call(String word) {
    Function function =
        Function.named(word)
            .orElseThrow(() -> ExpressionFault.unknown("a function", word, Function.words()));
    List<Expression> arguments = new ArrayList<>();
    arguments.add(sum());
    while (takes(',')) {
      arguments.add(sum());
    }
    need(')');
    if (!function.takes(arguments.size())) {
      throw ExpressionFault.of(
          "bad-expression",
          word + " takes " + function.arity() + " values and is given " + arguments.size());
    }
    return new Expression.Call(function, arguments);
  }

  private String word() {
    int from = at;
    while (at < text.length() && Names.isWordPart(text.charAt(at), at == from)) {
      at++;
    }
    return text.substring(from, at);
  }

  private boolean takes(char sign) {
    skipSpaces();
    if (at < text.length() && text.charAt(at) == sign) {
      at++;
      return true;
    }
    return false;
  }

  private void need(char sign) {
    if (!takes(sign)) {
      throw unexpected();
    }
  }

  private void skipSpaces() {
    while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
      at++;
    }
  }

  private ExpressionFault unexpected() {
    if (at >= text.length()) {
      return ExpressionFault.of("bad-expression", "the expression ends too soon");
    }
    String hint =
        text.charAt(at) == ','
            ? " (a decimal is written with a point)"
            : followsNumber() ? " (a size is written like 8 3/4 in, 5 ft 6 in, 44 cm or 440)" : "";
    return ExpressionFault.of(
        "bad-expression",
        "the expression makes no sense from " + Problems.quoted(text.substring(at)) + " on" + hint);
  }

  /** Whether what makes no sense stands where the unit of a number would. */
  private boolean followsNumber() {
    String before = text.substring(0, at).stripTrailing();
    char last = before.isEmpty() ? ' ' : before.charAt(before.length() - 1);
    return Character.isDigit(last) || "½¼¾⅛⅜⅝⅞".indexOf(last) >= 0;
  }
}
