package dryfit.document;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** What the maker's own names may look like. */
final class Names {
  private Names() {}

  /** Words with a meaning of their own where a dimension's name can stand. */
  private static final List<String> TAKEN = List.of("note", "joints", "parts");

  private static final Set<String> UNITS =
      new TreeSet<>(List.of("mm", "cm", "m", "in", "inch", "inches", "deg", "degrees", "rad"));

  /** Whether a letter can stand in a dimension's name; digits not at its head. */
  static boolean isWordPart(char c, boolean head) {
    boolean letter = c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z';
    return letter || !head && (c >= '0' && c <= '9' || c == '_');
  }

  /** A dimension: letters, digits and underscores, a letter first; no unit or function. */
  static boolean fitsDimension(String name) {
    for (int i = 0; i < name.length(); i++) {
      if (!isWordPart(name.charAt(i), i == 0)) {
        return false;
      }
    }
    return fitsAny(name)
        && !TAKEN.contains(name)
        && !UNITS.contains(name)
        && Function.named(name).isEmpty();
  }

  /** A part: small letters, digits and hyphens, a letter first. */
  static boolean fitsPart(String name) {
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      boolean fits = c >= 'a' && c <= 'z' || i > 0 && (c >= '0' && c <= '9' || c == '-');
      if (!fits) {
        return false;
      }
    }
    return fitsAny(name);
  }

  /** A chair, joint or variant: any words, not blank, no control characters. */
  static boolean fitsAny(String name) {
    return !name.isBlank()
        && name.length() <= Limits.name()
        && name.chars().noneMatch(Character::isISOControl);
  }
}
