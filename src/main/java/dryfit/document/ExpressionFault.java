package dryfit.document;

import java.util.Collection;
import java.util.List;

/** Carries what is wrong with an expression out of the recursion, to where its place is known. */
final class ExpressionFault extends RuntimeException {
  private final String code;
  private final String found;
  private final List<String> known;

  private ExpressionFault(String code, String message, String found, Collection<String> known) {
    super(message);
    this.code = code;
    this.found = found;
    this.known = List.copyOf(known);
  }

  static ExpressionFault of(String code, String message) {
    return new ExpressionFault(code, message, "", List.of());
  }

  static ExpressionFault unknown(String message, String word, Collection<String> known) {
    return new ExpressionFault("unknown-name", message, word, known);
  }

  /** It rests on a dimension whose own fault is told already. */
  static ExpressionFault toldElsewhere() {
    return new ExpressionFault("", "", "", List.of());
  }

  /** Empty when the fault is told elsewhere. */
  String code() {
    return code;
  }

  /** The unknown word, if that is the fault. */
  String found() {
    return found;
  }

  /** What the word could have been. */
  List<String> known() {
    return known;
  }
}
