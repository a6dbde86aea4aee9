package dryfit.fit.spread;

import dryfit.build.Chair;
import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.document.Quantity;
import dryfit.fit.FitReport;
import dryfit.fit.PlannedSizes;
import dryfit.fit.compare.Datum;
import dryfit.fit.compare.Rebuild;
import dryfit.solid.Kernel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * What dimensions do that have an accuracy of their own: the chair is built again with each as far
 * off as it may be, both ways, which gives the slope of every figure and its bend.
 *
 * @param terms for each figure
 * @param unbuilt dimensions at whose least or greatest size there is no such chair, and why
 */
record Bends(Map<Datum.Key, List<Term>> terms, Map<String, String> unbuilt) {

  static Bends of(Document document, Chair chair, Cuts cuts, Supplier<Kernel> kernels) {
    List<Design.Dimension> loose =
        chair.design().dimensions().stream().filter(d -> d.accuracy() > 0).toList();
    List<Map<String, Quantity>> sets = new ArrayList<>();
    for (Design.Dimension d : loose) {
      sets.add(Map.of(d.name(), off(d, -d.accuracy())));
      sets.add(Map.of(d.name(), off(d, d.accuracy())));
    }
    if (sets.isEmpty()) {
      return new Bends(Map.of(), Map.of());
    }
    sets.add(Map.of());
    List<Rebuild.Outcome> built =
        new Rebuild(document, chair.design().variant(), kernels).all(sets);
    Map<Datum.Key, Double> planned = figures(built.get(built.size() - 1));
    Map<Datum.Key, List<Term>> terms = new HashMap<>();
    Map<String, String> unbuilt = new LinkedHashMap<>();
    for (int i = 0; i < loose.size(); i++) {
      Rebuild.Outcome less = built.get(2 * i);
      Rebuild.Outcome more = built.get(2 * i + 1);
      String name = loose.get(i).name();
      if (less instanceof Rebuild.Refused r) {
        unbuilt.put(name, r.problems().get(0).message());
      } else if (more instanceof Rebuild.Refused r) {
        unbuilt.put(name, r.problems().get(0).message());
      } else {
        int cut = cuts.of(name, "").orElseThrow();
        add(cut, loose.get(i).accuracy(), figures(less), planned, figures(more), terms);
      }
    }
    return new Bends(terms, unbuilt);
  }

  private static Quantity off(Design.Dimension d, double by) {
    return new Quantity(d.value().value() + by, d.value().kind());
  }

  private static Map<Datum.Key, Double> figures(Rebuild.Outcome outcome) {
    Map<Datum.Key, Double> all = new HashMap<>();
    if (outcome instanceof Rebuild.Fitted fitted) {
      FitReport report = fitted.report();
      Figures.of(report, new PlannedSizes(report.chair()))
          .forEach(f -> all.put(f.datum().key(), f.datum().value()));
    }
    return all;
  }

  private static void add(
      int cut,
      double a,
      Map<Datum.Key, Double> less,
      Map<Datum.Key, Double> planned,
      Map<Datum.Key, Double> more,
      Map<Datum.Key, List<Term>> terms) {
    planned.forEach(
        (key, value) -> {
          if (less.containsKey(key) && more.containsKey(key)) {
            double each = (more.get(key) - less.get(key)) / (2 * a);
            double bend = (more.get(key) + less.get(key) - 2 * value) / (2 * a * a);
            terms.computeIfAbsent(key, k -> new ArrayList<>()).add(new Term(cut, a, each, bend));
          }
        });
  }
}
