package dryfit.view;

import dryfit.document.Design.Dimension;
import dryfit.document.Problem;
import dryfit.document.Quantity;
import dryfit.measure.Length;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Why a dimension does not take what was typed, in the words on screen: what was typed, what is
 * wrong with it, and what would be right, in the unit that is shown.
 */
final class NotTaken {
  private final Dimension dimension;
  private final String typed;
  private final Collection<String> names;
  private final Length.Unit unit;

  /**
   * @param typed as it stood in the field
   * @param names of all dimensions, as the document has them
   * @param unit that lengths are shown in
   */
  NotTaken(Dimension dimension, String typed, Collection<String> names, Length.Unit unit) {
    this.dimension = dimension;
    this.typed = typed.strip();
    this.names = names;
    this.unit = unit;
  }

  /** Two sentences; for the problems that the document has with it, at least one. */
  String why(List<Problem> problems) {
    return wrong(problems) + ". " + right() + ".";
  }

  /** Nothing was typed. */
  String empty() {
    return "Nothing is typed. " + right() + ".";
  }

  /** A fraction of an inch, where a bare number is in millimetres. */
  String inches() {
    return "“"
        + typed
        + "” has no unit. In inches it is written "
        + typed
        + " in. "
        + right()
        + ".";
  }

  /** A bare number that is added in a formula, where the document's unit is not the one shown. */
  String noUnit() {
    return "“"
        + typed
        + "” has a number without a unit. In a formula, say which is meant, as in "
        + Words.dimension(dimension.name())
        + " + 2 mm, or + 1/8 in.";
  }

  private String wrong(List<Problem> problems) {
    Problem first = problems.get(0);
    String said = "“" + typed + "”";
    String label = Words.dimension(dimension.name());
    boolean here = isHere(first);
    boolean range = Double.isFinite(dimension.from()) || Double.isFinite(dimension.to());
    if (problems.stream().anyMatch(this::isOfAnotherKind)) {
      return said + " is not " + kind();
    }
    return switch (here ? first.code() : "") {
      case "unknown-name" ->
          "“"
              + first.found()
              + "” is neither a size nor a dimension of this chair"
              + first.nearest().map(n -> "; is " + Words.dimension(n) + " meant?").orElse("");
      case "bad-expression" ->
          typed.matches(".*\\d,\\d.*")
              ? said + " has a comma; a decimal is written with a point: " + typed.replace(',', '.')
              : said + " cannot be read as a size";
      case "not-a-number" ->
          first.message().contains("divides by zero")
              ? said + " divides by zero"
              : said + " is no size that a chair can have";
      case "cycle" -> label + " cannot be worked out from itself";
      case "not-positive" -> said + " is too small: " + label + " is more than 0";
      case "out-of-range" ->
          range ? said + " is outside its range" : said + " is longer than 100 metres";
      default -> said + " makes no chair: " + place(first) + told(first);
    };
  }

  /** A length where an angle is wanted, and so on; its limits are then of the wrong kind too. */
  private boolean isOfAnotherKind(Problem problem) {
    String own = "/dimensions/" + dimension.name();
    return problem.code().equals("wrong-unit")
        && (isHere(problem) || problem.pointer().startsWith(own + "/"));
  }

  /** Whether it is told of the value itself, wherever a variant or the chair has it. */
  private boolean isHere(Problem problem) {
    String pointer = problem.pointer();
    String name = dimension.name();
    return pointer.equals(dimension.pointer())
        || pointer.matches("/variants/[^/]*/" + Pattern.quote(name))
        || pointer.equals("/dimensions/" + name)
        || pointer.equals("/dimensions/" + name + "/value");
  }

  /** The joint or the part that is in the way. */
  private static String place(Problem problem) {
    String[] keys = problem.pointer().split("/", -1);
    boolean named = keys.length > 2 && List.of("joints", "parts").contains(keys[1]);
    return named ? Words.part(keys[2].replace("~1", "/").replace("~0", "~")) + ": " : "";
  }

  private String told(Problem problem) {
    return Words.formula(Words.reason(problem), names);
  }

  private String right() {
    String label = Words.dimension(dimension.name());
    String what = label.substring(0, 1).toUpperCase(Locale.ROOT) + label.substring(1) + " is ";
    boolean from = Double.isFinite(dimension.from());
    boolean to = Double.isFinite(dimension.to());
    if (from && to) {
      return what + kind() + " from " + bare(dimension.from()) + " to " + told(dimension.to());
    }
    if (from || to) {
      return what
          + kind()
          + (from ? " of at least " : " of at most ")
          + told(from ? dimension.from() : dimension.to());
    }
    return what + kind() + ", now " + told(dimension.value().value());
  }

  private String kind() {
    return switch (dimension.value().kind()) {
      case LENGTH -> "a length";
      case ANGLE -> "an angle";
      case NUMBER -> "a number";
    };
  }

  private String bare(double value) {
    return Entry.shown(new Quantity(value, dimension.value().kind()), unit);
  }

  private String told(double value) {
    boolean length = dimension.value().kind() == Quantity.Kind.LENGTH;
    return bare(value) + (length ? " " + unit.symbol() : "");
  }
}
