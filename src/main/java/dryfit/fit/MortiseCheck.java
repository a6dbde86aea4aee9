package dryfit.fit;

import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.FitLimit;
import dryfit.fit.ChairMeasure.MortisePair;
import dryfit.fit.Finding.Severity;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import dryfit.solid.Distance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Mortises against each other. {@code thin-wall}: less wood between two than the least wall;
 * exactly at the limit passes. {@code mortises-meet}: two run into each other; expected where two
 * tips are mitred together.
 */
final class MortiseCheck {
  private MortiseCheck() {}

  static List<Finding> findings(Assembly assembly, ChairMeasure whole) {
    List<Finding> out = new ArrayList<>();
    for (MortisePair pair : whole.mortises()) {
      Joint a = joint(assembly, pair.first());
      Joint b = joint(assembly, pair.second());
      finding(assembly, pair, a, b).ifPresent(out::add);
    }
    return out;
  }

  private static Joint joint(Assembly assembly, String label) {
    return assembly.chair().joints().stream()
        .filter(j -> j.label().equals(label))
        .findFirst()
        .orElseThrow();
  }

  private static Optional<Finding> finding(Assembly assembly, MortisePair pair, Joint a, Joint b) {
    Part part = assembly.mortised(a).part();
    if (!pair.plug().isEmpty()) {
      boolean mitred = isMitred(a, b);
      return Optional.of(
          Found.of("mortises-meet", mitred ? Severity.KNOW : Severity.LOOK)
              .part(part)
              .joint(a)
              .joint(b)
              .atLeast(mitred ? pair.wood() : 0, pair.wood())
              .source(
                  Source.commonPractice(
                      "the second mortise breaks the walls of the first unless that is plugged"))
              .says(
                  "The mortises of \""
                      + a.label()
                      + "\" and \""
                      + b.label()
                      + "\" run into each other inside "
                      + part.label()
                      + ", "
                      + assembly.length(-pair.wood())
                      + " deep"
                      + (mitred ? " at their mitred tips" : "")
                      + "; cut that of \""
                      + a.label()
                      + "\" first and fill it with a block "
                      + size(assembly, pair)
                      + " while you cut the other.",
                  a.plan().pointer(),
                  pair.at()));
    }
    Limit one = Limit.of(assembly.chair().design(), FitLimit.LEAST_WALL, a);
    Limit other = Limit.of(assembly.chair().design(), FitLimit.LEAST_WALL, b);
    Limit least = other.value() < one.value() ? other : one;
    if (pair.wood() >= least.value() - Tolerances.contact()) {
      return Optional.empty();
    }
    return Optional.of(
        Found.of("thin-wall", Severity.LOOK)
            .part(part)
            .joint(a)
            .joint(b)
            .atLeast(least.value(), pair.wood())
            .source(least.source())
            .says(
                "Between the mortises of \""
                    + a.label()
                    + "\" and \""
                    + b.label()
                    + "\" "
                    + part.label()
                    + " keeps "
                    + assembly.gap(pair.wood())
                    + " of wood, less than "
                    + assembly.length(least.value())
                    + "; "
                    + shorter(assembly, a, b, least.value())
                    + shorter(assembly, b, a, least.value())
                    + "move them apart by "
                    + assembly.lengthUp(least.value() - pair.wood())
                    + ".",
                a.plan().pointer(),
                pair.at()));
  }

  /** By how much the tenon of one would have to be shorter, if that helps; ends with "or". */
  private static String shorter(Assembly assembly, Joint one, Joint other, double limit) {
    List<Convex> beside = Mortises.inWood(other);
    OptionalDouble by =
        new LessWood(
                assembly,
                one,
                cut ->
                    Distance.between(Mortises.inWood(one, cut), beside, limit)
                        .filter(d -> d.length() < limit - Tolerances.contact())
                        .isEmpty())
            .shorter();
    return by.isEmpty()
        ? ""
        : "shorten the tenon of \""
            + one.label()
            + "\" by "
            + assembly.length(by.getAsDouble())
            + " or ";
  }

  private static String size(Assembly assembly, MortisePair pair) {
    return assembly.length(pair.plug().get(0))
        + " × "
        + assembly.length(pair.plug().get(1))
        + " × "
        + assembly.length(pair.plug().get(2));
  }

  private static boolean isMitred(Joint a, Joint b) {
    return a.plan().mitre().filter(m -> m.with().equals(b.name())).isPresent()
        || b.plan().mitre().filter(m -> m.with().equals(a.name())).isPresent();
  }
}
