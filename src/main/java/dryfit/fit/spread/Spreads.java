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
 * @param unbuilt dimensions at whose least or greatest size there is no such chair, and why; they
 *     are left out
 */
public record Spreads(Chair chair, int draws, List<Spread> all, Map<String, String> unbuilt) {
  /** From this chance on something is likely enough to act on: one chair in twenty. */
  public static final double LIKELY = 0.05;

  public Spreads {
    all = List.copyOf(all);
  }

  /**
   * The same figure of both hands.
   *
   * @param subject without its hand
   * @param what without a hand
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
   * @param share its mean share of the variance of what is likely to be beyond a limit, 0 to 1
   * @param figures how many of these it has at least a tenth of
   */
  public record Matter(String subject, String what, Cut cut, double share, int figures) {}

  /** Both hands as one, those most likely to be beyond a limit first. */
  public List<Folded> folded() {
    Map<List<String>, List<Spread>> hands = new LinkedHashMap<>();
    for (Spread s : all) {
      List<String> key = List.of(handless(s.figure().subject()), handless(s.figure().what()));
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

  /** What has most of the variance of {@link #likely}, the greatest first. */
  public List<Matter> matters() {
    List<Folded> likely = likely();
    Map<List<String>, List<Double>> shares = new LinkedHashMap<>();
    Map<List<String>, Cut> cuts = new LinkedHashMap<>();
    for (Folded f : likely) {
      Map<List<String>, Double> here = new LinkedHashMap<>();
      for (Share s : f.worst().shares()) {
        List<String> key = List.of(handless(s.cut().subject()), handless(s.cut().what()));
        here.merge(key, s.of(), Double::sum);
        cuts.putIfAbsent(key, s.cut());
      }
      here.forEach((key, of) -> shares.computeIfAbsent(key, k -> new ArrayList<>()).add(of));
    }
    return shares.entrySet().stream()
        .map(
            e -> {
              double share = e.getValue().stream().mapToDouble(d -> d).sum() / likely.size();
              int figures = (int) e.getValue().stream().filter(d -> d >= TELLS).count();
              List<String> key = e.getKey();
              return new Matter(key.get(0), key.get(1), cuts.get(key), share, figures);
            })
        .sorted(Comparator.comparingDouble(Matter::share).reversed())
        .toList();
  }

  private static final double TELLS = 0.1;

  /** A label without its hand. */
  public static String handless(String label) {
    return label.replaceAll(",? (right|left)\\b", "");
  }
}
