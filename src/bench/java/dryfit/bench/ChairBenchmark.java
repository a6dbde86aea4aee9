package dryfit.bench;

import dryfit.build.Chair;
import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.fit.DryFit;
import dryfit.fit.FitReport;
import dryfit.solid.Kernel;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** A whole chair, and what a maker waits for after moving one dimension. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
public class ChairBenchmark {
  @Param({"exact", "jcsg"})
  public String engine;

  private Kernel kernel;
  private Document document;
  private Design design;
  private Chair chair;
  private int step;

  @Setup
  public void prepare() {
    kernel = Engines.kernel(engine);
    document = Chairs.model(Path.of(System.getProperty("dryfit.root", ".")), "harbour-armchair");
    design = Chairs.design(document);
    chair = Chairs.built(design, kernel);
  }

  @Benchmark
  public Chair build() {
    return Chairs.built(design, kernel);
  }

  @Benchmark
  public FitReport fit() {
    return DryFit.of(chair);
  }

  /** From the edited text to the findings; the seat goes up and down so that nothing is repeated. */
  @Benchmark
  public FitReport changeSeatTop() {
    step = (step + 1) % 8;
    Document edited =
        Chairs.sound(document.edited("/dimensions/seatTop/value", Integer.toString(430 + step)));
    return DryFit.of(Chairs.built(Chairs.design(edited), kernel));
  }
}
