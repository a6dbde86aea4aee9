package dryfit.fit.spread;

import dryfit.build.Chair;
import dryfit.fit.spread.Spread.Share;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How far every figure of a chair may come out from the plan.
 *
 * @param draws how many chairs were made by chance
 * @param all every figure, in the order of {@link dryfit.fit.compare.Data}
 * @param stops how many findings stop the chair as drawn
 * @param unbuilt dimensions at whose least or greatest size there is no such chair, and why; they
 *     are left out
 */
public record Spreads(
    Chair chair, int draws, List<Spread> all, int stops, Map<String, String> unbuilt) {
  /** From this chance on something is likely enough to act on: one chair in twenty. */
  public static final double LIKELY = 0.05;

  public Spreads {
    all = List.copyOf(all);
  }

  /**
   * The same figure of both hands, or of both cheeks.
   *
   * @param subject without its hand
   * @param what without a hand or a cheek
   * @param worst the one more likely to be beyond its limit
   * @param hands how many figures these are
   */
  public record Folded(String subject, String what, Spread worst, int hands) {}

  /**
   * A cut, of both hands, and how much it matters.
   *
   * @param subject without its hand
   * @param what without a hand
   * @param cut one of them
   * @param share its share of the variance of what is likely to be beyond a limit, 0 to 1
   * @param figures how many of these it has at least a tenth of
   */
  public record Matter(String subject, String what, Cut cut, double share, int figures) {}

  /** Both hands and both cheeks as one, those most likely to be beyond a limit first. */
  public List<Folded> folded() {
    Map<List<String>, List<Spread>> hands = new LinkedHashMap<>();
    for (Spread s : all) {
      List<String> key = List.of(handless(s.figure().subject()), what(s));
      hands.computeIfAbsent(key, k -> new ArrayList<>()).add(s);
    }
    List<Folded> out = new ArrayList<>();
    hands.forEach(
        (key, list) -> {
          // The first of those as likely.
          Spread worst = list.get(0);
          for (Spread s : list) {
            worst = s.chance() > worst.chance() ? s : worst;
          }
          out.add(new Folded(key.get(0), key.get(1), worst, list.size()));
        });
    out.sort(Comparator.comparingDouble((Folded f) -> f.worst().chance()).reversed());
    return out;
  }

  /** What fits as drawn and may well not when it is cut, the likeliest first. */
  public List<Folded> likely() {
    return folded().stream()
        .filter(f -> !f.worst().beyondAsDrawn() && f.worst().chance() > LIKELY)
        .toList();
  }

  /**
   * A cut of both hands.
   *
   * @param subject without its hand
   * @param what without a hand
   * @param cut one of them
   * @param of their share of a figure's variance, 0 to 1
   */
  public record Part(String subject, String what, Cut cut, double of) {}

  /** The cuts behind a figure, both hands as one, the greatest share first. */
  public static List<Part> parts(Spread spread) {
    Map<List<String>, Part> parts = new LinkedHashMap<>();
    for (Share s : spread.shares()) {
      String subject = handless(s.cut().subject());
      String what = handless(s.cut().what());
      parts.merge(
          List.of(subject, what),
          new Part(subject, what, s.cut(), s.of()),
          (a, b) -> new Part(subject, what, a.cut(), a.of() + b.of()));
    }
    return parts.values().stream().sorted(Comparator.comparingDouble(Part::of).reversed()).toList();
  }

  /**
   * What has most of the variance of {@link #likely}, the greatest first; the likelier a figure is
   * to go wrong, the more its share counts.
   */
  public List<Matter> matters() {
    List<Folded> likely = likely();
    double chances = likely.stream().mapToDouble(f -> f.worst().chance()).sum();
    Map<List<String>, Matter> matters = new LinkedHashMap<>();
    for (Folded f : likely) {
      for (Part p : parts(f.worst())) {
        double share = p.of() * f.worst().chance() / chances;
        matters.merge(
            List.of(p.subject(), p.what()),
            new Matter(p.subject(), p.what(), p.cut(), share, p.of() >= TELLS ? 1 : 0),
            (a, b) ->
                new Matter(
                    a.subject(),
                    a.what(),
                    a.cut(),
                    a.share() + b.share(),
                    a.figures() + b.figures()));
      }
    }
    return matters.values().stream()
        .sorted(Comparator.comparingDouble(Matter::share).reversed())
        .toList();
  }

  private static final double TELLS = 0.1;

  /** The same by sorts of cuts, in a maker's words, the greatest share first. */
  public Map<String, Double> sorts() {
    Map<String, Double> sorts = new LinkedHashMap<>();
    matters().forEach(m -> sorts.merge(sort(m.what()), m.share(), Double::sum));
    Map<String, Double> sorted = new LinkedHashMap<>();
    sorts.entrySet().stream()
        .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
        .forEach(e -> sorted.put(e.getKey(), e.getValue()));
    return sorted;
  }

  private static String sort(String what) {
    if (what.isEmpty()) {
      return "dimensions";
    } else if (what.startsWith("angle of")) {
      return "angles of mortises and shoulders";
    } else if (what.startsWith("mortise off")) {
      return "places of mortises";
    } else if (what.equals("shoulder to shoulder")) {
      return "lengths between shoulders";
    } else if (what.endsWith("of the tenon") || what.endsWith("of the mortise")) {
      return "sizes of tenons and mortises";
    }
    return "widths and thicknesses of parts";
  }

  /** Both cheeks are as far off as each other, and so are both edges. */
  private static String what(Spread s) {
    String what = s.figure().what();
    if (s.figure().subject().isEmpty() && !what.startsWith("seat height")) {
      // Left and right are not two hands of a frame.
      return what;
    }
    return handless(what)
        .replaceAll("gap at the .* (cheek|edge)$", "gap at each $1")
        .replace("gap at the all round", "gap all round");
  }

  /** A label without its hand. */
  public static String handless(String label) {
    return label.replaceAll(",? (right|left)\\b", "");
  }
}
