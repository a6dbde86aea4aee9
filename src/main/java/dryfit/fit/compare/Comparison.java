package dryfit.fit.compare;

import dryfit.fit.Finding;
import dryfit.fit.FitReport;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Fitted chairs side by side; the first is what the others are held against.
 *
 * @param rows every figure that any of them has, in the order of the first
 * @param findings every finding that any of them has
 */
public record Comparison(List<Side> sides, List<Row> rows, List<FindingRow> findings) {
  public Comparison {
    sides = List.copyOf(sides);
    rows = List.copyOf(rows);
    findings = List.copyOf(findings);
  }

  /**
   * One chair.
   *
   * @param name what it is called beside the others
   */
  public record Side(String name, FitReport report) {}

  /**
   * One figure in all chairs.
   *
   * @param values one for each side, empty where a chair has no such figure
   */
  public record Row(Datum.Key key, List<OptionalDouble> values) {
    public Row {
      values = List.copyOf(values);
    }

    /** Whether any chair differs from the first. */
    public boolean differs() {
      OptionalDouble first = values.get(0);
      return values.stream().anyMatch(v -> !same(first, v));
    }

    private boolean same(OptionalDouble a, OptionalDouble b) {
      return a.isPresent() && b.isPresent()
          ? !Datum.differ(key.kind(), a.getAsDouble(), b.getAsDouble())
          : a.isPresent() == b.isPresent();
    }
  }

  /**
   * One finding in all chairs. It is the same if the same check says it of the same parts and
   * joints, even if the figures differ.
   *
   * @param told one for each side, as it tells it; empty where the side does not have it
   */
  public record FindingRow(List<Optional<Finding>> told) {
    public FindingRow {
      told = List.copyOf(told);
    }

    /** As the first side that has it tells it. */
    public Finding finding() {
      return told.stream().flatMap(Optional::stream).findFirst().orElseThrow();
    }

    /** One for each side. */
    public List<Boolean> present() {
      return told.stream().map(Optional::isPresent).toList();
    }

    /** Whether some have it and others not, or it is worse in one than in another. */
    public boolean differs() {
      return lacking() || worse();
    }

    /** Whether some have it and others not. */
    public boolean lacking() {
      return present().contains(true) && present().contains(false);
    }

    private boolean worse() {
      double[] margins =
          told.stream().flatMap(Optional::stream).mapToDouble(Finding::margin).toArray();
      double least = Arrays.stream(margins).min().orElse(0);
      double most = Arrays.stream(margins).max().orElse(0);
      return most - least > WORSE;
    }

    /** What shows in the tenths of a figure, whatever it measures. */
    private static final double WORSE = 0.05;

    /** The same with the same figures together: a row for each sentence that is said. */
    public List<FindingRow> sentences() {
      return told.stream()
          .flatMap(Optional::stream)
          .map(Finding::message)
          .distinct()
          .map(
              says ->
                  new FindingRow(
                      told.stream().map(t -> t.filter(f -> f.message().equals(says))).toList()))
          .toList();
    }
  }

  /**
   * Lays chairs side by side.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static Comparison of(List<Side> sides) {
    if (sides.isEmpty()) {
      throw new IllegalArgumentException("nothing to compare");
    }
    return new Comparison(sides, rows(sides), findings(sides));
  }

  /** Only what differs. */
  public Comparison differences() {
    return new Comparison(
        sides,
        rows.stream().filter(Row::differs).toList(),
        findings.stream().filter(FindingRow::differs).toList());
  }

  private static List<Row> rows(List<Side> sides) {
    Map<Datum.Key, List<OptionalDouble>> table = new LinkedHashMap<>();
    for (Datum.Group group : Datum.Group.values()) {
      for (int i = 0; i < sides.size(); i++) {
        for (Datum d : Data.of(sides.get(i).report())) {
          if (d.group() == group) {
            table
                .computeIfAbsent(d.key(), k -> blank(sides.size()))
                .set(i, OptionalDouble.of(d.value()));
          }
        }
      }
    }
    List<Row> rows = new ArrayList<>();
    table.forEach((key, values) -> rows.add(new Row(key, values)));
    return rows;
  }

  private static List<OptionalDouble> blank(int size) {
    List<OptionalDouble> values = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      values.add(OptionalDouble.empty());
    }
    return values;
  }

  private record Same(
      String check, List<String> parts, List<String> joints, boolean waived, int nth) {}

  private static List<FindingRow> findings(List<Side> sides) {
    Map<Same, List<Optional<Finding>>> told = new LinkedHashMap<>();
    for (int i = 0; i < sides.size(); i++) {
      Map<Same, Boolean> own = new LinkedHashMap<>();
      for (Finding f : sides.get(i).report().findings()) {
        int nth = 0;
        Same same = same(f, nth);
        while (own.containsKey(same)) {
          same = same(f, ++nth);
        }
        own.put(same, true);
        told.computeIfAbsent(same, k -> none(sides.size())).set(i, Optional.of(f));
      }
    }
    return told.values().stream().map(FindingRow::new).toList();
  }

  private static Same same(Finding f, int nth) {
    return new Same(f.check(), f.parts(), f.joints(), f.waived().isPresent(), nth);
  }

  private static List<Optional<Finding>> none(int size) {
    return new ArrayList<>(java.util.Collections.nCopies(size, Optional.empty()));
  }
}
