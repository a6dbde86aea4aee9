package dryfit.view;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Difference;
import dryfit.document.Problem;
import dryfit.export.FindingText;
import dryfit.export.TextStyle;
import dryfit.fit.Finding;
import dryfit.fit.FitReport;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** How things are called on screen. */
final class Words {
  /** What a check measures, where its sentence does not begin with it. */
  private static final Map<String, String> MEASURED =
      Map.ofEntries(
          Map.entry("tenon-too-fat", "gap"),
          Map.entry("tenon-loose", "gap"),
          Map.entry("no-glue-room", "gap"),
          Map.entry("shoulder-open", "gap"),
          Map.entry("thin-wall", "wood left"),
          Map.entry("mortise-breaks-out", "wood left"),
          Map.entry("parts-collide", "overlap"),
          Map.entry("tenons-meet", "overlap"),
          Map.entry("mortises-meet", "wood between"),
          Map.entry("tenon-thin", "tenon"),
          Map.entry("tenon-thick", "tenon"),
          Map.entry("tenon-wide", "tenon"),
          Map.entry("tenon-short", "tenon"),
          Map.entry("short-fibre", "fibre"),
          Map.entry("grain-runs-out", "slope"),
          Map.entry("side-rail-joint", "tenon"),
          Map.entry("out-of-square", "off square"),
          Map.entry("out-of-level", "off level"));

  private static final int MOST = 6;
  private static final int BRIEF = 60;

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

  /**
   * A sentence in which parts and joints are called as everywhere on screen, not as in the
   * document.
   */
  static String spoken(String sentence, Chair chair) {
    String told = sentence;
    List<String> labels =
        Stream.concat(
                chair.parts().stream().map(Part::label), chair.joints().stream().map(Joint::label))
            // The longest first, so that a part whose name begins another's leaves that alone.
            .sorted(Comparator.comparing(String::length).reversed())
            .toList();
    for (String label : labels) {
      told =
          told.replaceAll(
              "(?<![\\w-])" + Pattern.quote(label) + "(?![\\w-])",
              Matcher.quoteReplacement(part(label)));
    }
    return told;
  }

  /** {@code seatTop} becomes {@code seat top}. */
  static String dimension(String name) {
    return name.replace('_', ' ')
        .replaceAll("(?<=[a-z0-9])(?=[A-Z])", " ")
        .toLowerCase(Locale.ROOT);
  }

  /** A formula with every dimension as it is called on screen: {@code seat top + 220}. */
  static String formula(String formula, Collection<String> names) {
    String told = formula;
    for (String name : names) {
      told =
          told.replaceAll(
              "\\b" + Pattern.quote(name) + "\\b", Matcher.quoteReplacement(dimension(name)));
    }
    return told;
  }

  /** The reason without the place in the document: the maker is looking at it. */
  static String reason(Problem problem) {
    String place = problem.pointer() + ": ";
    String message = problem.message();
    String reason = message.startsWith(place) ? message.substring(place.length()) : message;
    // Where else it counts is told in places of the document, which nobody sees on screen.
    return reason.replaceAll("; it is used at /.*$", "").replaceAll("\\.$", "");
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

  /**
   * Findings as the terminal lists and counts them: those that say the same of both hands are one.
   * In the report's order.
   */
  static List<List<Finding>> told(FitReport report) {
    Map<List<Object>, List<Finding>> sorts = new LinkedHashMap<>();
    for (Finding f : report.findings()) {
      sorts
          .computeIfAbsent(List.of(f.severity(), f.waived().isPresent()), sort -> new ArrayList<>())
          .add(f);
    }
    return sorts.values().stream()
        .flatMap(sort -> FindingText.alike(sort).stream())
        .sorted(Comparator.comparing(alike -> report.findings().indexOf(alike.get(0))))
        .toList();
  }

  /** What keeps a chair from being built, as a sentence. */
  static String problem(Problem problem) {
    String reason = reason(problem);
    return reason.isEmpty()
        ? ""
        : reason.substring(0, 1).toUpperCase(Locale.ROOT) + reason.substring(1) + ".";
  }

  /** Where it is written; empty if the document could not be read at all. */
  static String line(Problem problem) {
    String part = problem.pointer().replaceFirst("^/(part|joint|dimension)s/([^/]+).*", "$1 “$2”");
    String line = problem.line() > 0 ? "line " + problem.line() + " of the document" : "";
    return part.startsWith("/") || part.isEmpty()
        ? line
        : line.isEmpty() ? part : part + ", " + line;
  }

  /** The answer to whether it fits, with the terminal's counts. */
  static String verdict(FitReport report) {
    long stops = counted(report, Finding::stopsTheBuild);
    long looks =
        counted(report, f -> f.severity() == Finding.Severity.LOOK && f.waived().isEmpty());
    String look = looks == 0 ? "" : ", " + looks + " to look at";
    long taken = counted(report, Finding::wouldStopTheBuild);
    String accepted = taken == 0 ? "" : " only as accepted: " + taken + " would stop the build";
    return report.fits()
        ? "fits" + accepted + look
        : "does not fit: " + stops + (stops == 1 ? " stops" : " stop") + " the build" + look;
  }

  private static long counted(FitReport report, Predicate<Finding> which) {
    return told(report).stream().filter(alike -> which.test(alike.get(0))).count();
  }

  /** What was measured and what is allowed; empty where nothing is. */
  static String figures(Finding f, TextStyle style) {
    if (f.severity() == Finding.Severity.KNOW) {
      return "";
    }
    boolean atLeast =
        Math.abs(f.measured() - f.limit() - f.margin())
            <= Math.abs(f.limit() - f.measured() - f.margin());
    return MEASURED.getOrDefault(f.check(), "measured")
        + " "
        + style.quantity(f.measured(), f.unit())
        + (atLeast ? " · at least " : " · at most ")
        + style.quantity(f.limit(), f.unit());
  }

  /**
   * The first of what differs from the file, as more to a sentence.
   *
   * @param mine what the file is compared with: {@code here}
   */
  static String differences(String mine, List<Difference> all) {
    if (all.isEmpty()) {
      return "";
    }
    StringBuilder text = new StringBuilder("\nDifferent in the file:");
    all.stream().limit(MOST).forEach(d -> text.append("\n   ").append(difference(mine, d)));
    if (all.size() > MOST) {
      text.append("\n   and ").append(all.size() - MOST).append(" more");
    }
    return text.toString();
  }

  private static String difference(String where, Difference d) {
    String what =
        d.name().isEmpty() ? section(d.section()) : dimension(d.name()).replaceFirst(" value$", "");
    String mine = d.mine().map(Words::written).orElse("nothing");
    String theirs = d.theirs().map(Words::written).orElse("nothing");
    boolean brief = mine.length() + theirs.length() < BRIEF && !(mine + theirs).contains("\n");
    return brief ? what + ": " + where + " " + mine + ", in the file " + theirs : what;
  }

  /** As a maker wrote it: a mark for inches stands in the document with a stroke before it. */
  private static String written(String json) {
    return json.replace("\\\"", "\"");
  }

  private static String section(String key) {
    return switch (key) {
      case "waived" -> "accepted findings";
      case "measured" -> "measured sizes";
      default -> key;
    };
  }
}
