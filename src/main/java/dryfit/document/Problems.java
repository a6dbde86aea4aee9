package dryfit.document;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Collects what is wrong with one document. It is filled by a single reader and never shared, which
 * is why it may change.
 */
final class Problems {
  private final String file;
  private final List<Problem> found = new ArrayList<>();

  /** Code and pointer of each, asked only whether it contains one, never walked through. */
  private final Set<String> places = new HashSet<>();

  private int more;

  /** What is told of the chair as drawn; a variant tells only what it adds. */
  private final Set<String> told;

  Problems(String file) {
    this(file, Set.of());
  }

  private Problems(String file, Set<String> told) {
    this.file = file;
    this.told = told;
  }

  /** For reading a variant: faults already noted here are not looked into again. */
  Problems ofVariant() {
    return new Problems(file, places);
  }

  boolean none() {
    return found.isEmpty();
  }

  /** Everything found, in the order of the document. */
  List<Problem> all() {
    List<Problem> sorted = new ArrayList<>(found);
    sorted.sort(Comparator.comparingInt(Problem::line));
    if (more > 0) {
      sorted.add(
          new Problem(
              "more-problems",
              file,
              sorted.get(sorted.size() - 1).line(),
              "",
              Integer.toString(more),
              "",
              Optional.empty(),
              "There are " + more + " more problems beside these."));
    }
    return sorted;
  }

  /** Notes a fault at a node; {@code what} is a sentence without its full stop. */
  void add(String code, Json.At at, String found, String allowed, String what) {
    add(code, at, found, allowed, Optional.empty(), what);
  }

  private void add(
      String code,
      Json.At at,
      String found,
      String allowed,
      Optional<String> nearest,
      String what) {
    if (isTold(code, at)) {
      return;
    }
    String place = at.pointer().isEmpty() ? "The document" : at.pointer();
    keep(
        new Problem(
            code,
            file,
            at.line(),
            at.pointer(),
            plain(found),
            plain(allowed),
            nearest,
            plain(place + ": " + what + ".")));
  }

  private void keep(Problem problem) {
    if (isFull()) {
      more++;
    } else {
      found.add(problem);
      places.add(problem.code() + problem.pointer());
    }
  }

  private boolean isTold(String code, Json.At at) {
    return told.contains(code + at.pointer());
  }

  /** Whether no more are kept, only counted. */
  boolean isFull() {
    return found.size() >= Limits.problems();
  }

  /** A word that is not one of those known. */
  void unknown(String code, Json.At at, String word, Collection<String> known, String what) {
    String allowed = known.isEmpty() ? "there is none" : listed(known);
    if (isTold(code, at)) {
      return;
    }
    // Looking for the nearest of many names is the one costly thing here.
    Optional<String> nearest = isFull() ? Optional.empty() : Nearest.to(word, known);
    String hint = nearest.map(name -> "; the nearest name is " + quoted(name)).orElse("");
    add(
        code,
        at,
        word,
        allowed,
        nearest,
        quoted(word) + " is not " + what + hint + "; known: " + allowed);
  }

  /**
   * Takes over what a variant adds.
   *
   * @param removed parts and joints that the variant takes out, and where; who still names them is
   *     told there, in one sentence
   */
  void addFromVariant(String variant, Problems other, Map<String, Json> removed) {
    String own = Json.pointer("/variants", variant);
    Map<String, List<Problem>> following = new LinkedHashMap<>();
    for (Problem problem : other.found) {
      boolean follows =
          List.of("absent-part", "absent-joint").contains(problem.code())
              && removed.containsKey(problem.found());
      if (follows) {
        following.computeIfAbsent(problem.found(), name -> new ArrayList<>()).add(problem);
      } else if (!places.contains(problem.code() + problem.pointer())) {
        keep(problem.pointer().startsWith(own) ? problem : inVariant(variant, problem));
      }
    }
    following.forEach((name, all) -> stillNamed(name, removed.get(name), all, variant));
    more += other.more;
  }

  private void stillNamed(String name, Json out, List<Problem> all, String variant) {
    int n = all.size();
    if (n == 1) {
      keep(inVariant(variant, all.get(0)));
      return;
    }
    add(
        all.get(0).code(),
        out.at(),
        name,
        "whatever names it taken out or changed too",
        quoted(name)
            + " is taken out here, and is still named at "
            + all.get(0).pointer()
            + (n == 2 ? " and one more place" : " and " + (n - 1) + " more places")
            + "; take out or change those too");
  }

  private static Problem inVariant(String variant, Problem p) {
    String message =
        p.message().substring(0, p.message().length() - 1)
            + " (in the variant "
            + quoted(variant)
            + ").";
    return new Problem(
        p.code(), p.file(), p.line(), p.pointer(), p.found(), p.allowed(), p.nearest(), message);
  }

  /** Names in a row; a long row is cut. */
  static String listed(Collection<String> names) {
    int shown = 24;
    String row = String.join(", ", names.stream().limit(shown).toList());
    return names.size() > shown ? row + " and " + (names.size() - shown) + " more" : row;
  }

  /** A text in quotation marks, cut short. */
  static String quoted(String text) {
    int end = text.offsetByCodePoints(0, Math.min(60, text.codePointCount(0, text.length())));
    return "“" + plain(text.substring(0, end)) + (end < text.length() ? "…" : "") + "”";
  }

  /**
   * A text without control and format characters, so that a document cannot play with a terminal.
   */
  private static String plain(String text) {
    return text.replaceAll("[\\p{Cc}\\p{Cf}]", "·");
  }
}
