package dryfit.view;

import dryfit.app.CompareChairs;
import dryfit.app.KernelChoice;
import dryfit.build.Shelf;
import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.fit.FitReport;
import dryfit.fit.compare.Comparison;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Designs of one document, to be seen beside each other. For one thread. */
final class Variants {
  private final Shelf shelf = new Shelf(KernelChoice.USUAL.kernel());
  private final ShownMaker maker;

  /**
   * The designs that can be built, and how they compare; both have the same order.
   *
   * @param comparison what differs between them
   */
  record Beside(List<Shown> shown, Comparison comparison) {
    Beside {
      shown = List.copyOf(shown);
    }
  }

  /**
   * @param surfaces whether surfaces for the graphics are wanted
   */
  Variants(boolean surfaces) {
    maker = new ShownMaker(surfaces);
  }

  /** All designs of a document, the chair as drawn first. */
  static List<String> names(Document document) {
    return Stream.concat(Stream.of(Design.AS_DRAWN), document.variants().stream()).toList();
  }

  /**
   * Designs of a document by their names.
   *
   * @param told the unit in which findings speak
   */
  Beside of(Document document, List<String> names, Design.LengthUnit told) {
    Comparison comparison = CompareChairs.of(document, names, told, shelf);
    List<FitReport> reports = comparison.sides().stream().map(Comparison.Side::report).toList();
    List<Shown> stands = maker.together(document, reports.stream().map(FitReport::chair).toList());
    List<Shown> fitted = new ArrayList<>();
    for (int i = 0; i < stands.size(); i++) {
      fitted.add(stands.get(i).fitted(reports.get(i)));
    }
    return new Beside(fitted, comparison.differences());
  }
}
