package dryfit.view;

import dryfit.fit.Finding;

/** How things are called on screen. */
final class Words {
  private Words() {}

  /** {@code front-leg right} becomes {@code front leg, right}. */
  static String part(String label) {
    String plain = label.replace('-', ' ');
    for (String hand : new String[] {" right", " left"}) {
      if (plain.endsWith(hand) && !plain.endsWith("," + hand)) {
        return plain.substring(0, plain.length() - hand.length()) + "," + hand;
      }
    }
    return plain;
  }

  /** {@code seatTop} becomes {@code seat top}. */
  static String dimension(String name) {
    return name.replace('_', ' ')
        .replaceAll("(?<=[a-z0-9])(?=[A-Z])", " ")
        .toLowerCase(java.util.Locale.ROOT);
  }

  static String severity(Finding finding) {
    if (finding.waived().isPresent()) {
      return "Accepted";
    }
    return switch (finding.severity()) {
      case STOPS -> "Stops the build";
      case LOOK -> "Look at this";
      case KNOW -> "Good to know";
    };
  }
}
