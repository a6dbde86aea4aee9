package dryfit.fit.spread;

import dryfit.document.Document;
import dryfit.fit.Finding;
import dryfit.fit.FitReport;
import dryfit.fit.PlannedSizes;
import dryfit.fit.loop.Chain;
import dryfit.fit.spread.Spread.Share;
import dryfit.solid.Kernel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;

/** Adds up what the cuts of a chair may do to its figures. */
public final class Spreading {
  private static final double OUTSIDE = 0.05;

  /** A cut that moves a figure by less never shows, mm. */
  private static final double NOTHING = 1e-6;

  private Spreading() {}

  /**
   * The spread of every figure; on all cores, and the same on any number of them.
   *
   * @param document what the chair was built from, for its dimensions that have an accuracy
   * @param kernels makes a kernel for each thread
   */
  public static Spreads of(Document document, FitReport report, Supplier<Kernel> kernels) {
    PlannedSizes plan = new PlannedSizes(report.chair());
    Chain chain = new Chain(report.chair(), plan);
    Cuts cuts = new Cuts(report.chair(), chain);
    Shares shares = new Shares(report.chair(), chain, cuts);
    Bends bends = Bends.of(document, report.chair(), cuts, kernels);
    Draws draws = new Draws(cuts.all().size());
    List<Spread> all =
        Figures.of(report, plan).parallelStream()
            .map(
                f -> {
                  List<Term> terms = terms(cuts, shares.of(f.site()));
                  terms.addAll(bends.terms().getOrDefault(f.datum().key(), List.of()));
                  return spread(f, terms, cuts, draws);
                })
            .toList();
    int stops = (int) report.findings().stream().filter(Finding::stopsTheBuild).count();
    return new Spreads(report.chair(), Draws.COUNT, all, stops, bends.unbuilt());
  }

  private static List<Term> terms(Cuts cuts, double[] each) {
    List<Term> terms = new ArrayList<>();
    for (int i = 0; i < each.length; i++) {
      double accuracy = cuts.all().get(i).accuracy();
      if (Math.abs(each[i]) * accuracy > NOTHING) {
        terms.add(new Term(i, accuracy, each[i], 0));
      }
    }
    return terms;
  }

  private static Spread spread(Figure figure, List<Term> terms, Cuts cuts, Draws draws) {
    double planned = figure.datum().value();
    double[] values = draws.of(planned, terms);
    Arrays.sort(values);
    double[] interval = Draws.interval(values, OUTSIDE);
    double variance = terms.stream().mapToDouble(Term::variance).sum();
    List<Share> shares =
        terms.stream()
            .filter(t -> t.variance() > 0)
            .map(t -> new Share(cuts.all().get(t.cut()), t.each(), t.variance() / variance))
            .sorted(Comparator.comparingDouble(Share::of).reversed())
            .toList();
    return new Spread(
        figure.datum(),
        figure.least(),
        figure.most(),
        planned + terms.stream().mapToDouble(Term::least).sum(),
        planned + terms.stream().mapToDouble(Term::most).sum(),
        Math.sqrt(variance),
        interval[0],
        interval[1],
        Draws.beyond(values, figure.least(), figure.most()),
        shares);
  }
}
