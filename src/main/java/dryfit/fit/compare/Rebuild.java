package dryfit.fit.compare;

import dryfit.build.Chair;
import dryfit.build.ChairBuilder;
import dryfit.build.Shelf;
import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.document.Problem;
import dryfit.document.Quantity;
import dryfit.document.Reading;
import dryfit.fit.DryFit;
import dryfit.fit.FitReport;
import dryfit.solid.Kernel;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/** One document, built and fitted again with some of its dimensions set; on all cores. */
public final class Rebuild {
  private final Document document;
  private final String variant;
  private final Supplier<Kernel> kernels;
  // A shelf serves one builder at a time, and what was made before is only of use to who has it.
  private final ThreadLocal<Shelf> shelves;

  /**
   * @param variant one of the document's, or {@link Design#AS_DRAWN}
   * @param kernels makes a kernel for each thread
   */
  public Rebuild(Document document, String variant, Supplier<Kernel> kernels) {
    this.document = document;
    this.variant = variant;
    this.kernels = kernels;
    this.shelves = ThreadLocal.withInitial(() -> new Shelf(this.kernels.get()));
  }

  /** What comes of it. */
  public sealed interface Outcome {}

  /** It was built and fitted. */
  public record Fitted(FitReport report) implements Outcome {}

  /** It could not be built; at least one problem. */
  public record Refused(List<Problem> problems) implements Outcome {
    public Refused {
      problems = List.copyOf(problems);
    }
  }

  /** Builds and fits it with these dimensions set. */
  public Outcome with(Map<String, Quantity> set) {
    Reading<Design> design = document.design(variant, set);
    if (design instanceof Reading.Refused<Design> refused) {
      return new Refused(refused.problems());
    }
    Design accepted = ((Reading.Accepted<Design>) design).value();
    Reading<Chair> chair = ChairBuilder.build(accepted, shelves.get());
    if (chair instanceof Reading.Refused<Chair> refused) {
      return new Refused(refused.problems());
    }
    return new Fitted(DryFit.of(((Reading.Accepted<Chair>) chair).value()));
  }

  /** All of them, in the order given. */
  public List<Outcome> all(List<Map<String, Quantity>> sets) {
    return IntStream.range(0, sets.size()).parallel().mapToObj(i -> with(sets.get(i))).toList();
  }
}
