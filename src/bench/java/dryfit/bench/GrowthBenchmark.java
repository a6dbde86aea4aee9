package dryfit.bench;

import dryfit.build.Chair;
import dryfit.document.Design;
import dryfit.fit.DryFit;
import dryfit.fit.FitReport;
import dryfit.solid.Kernel;
import dryfit.solid.exact.ExactKernel;
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

/** More and more spindles: the time for each should stay the same. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
public class GrowthBenchmark {
  @Param({"10", "50", "200", "1000"})
  public int spindles;

  private Kernel kernel;
  private Design design;
  private Chair chair;

  @Setup
  public void prepare() {
    kernel = new ExactKernel();
    design = Chairs.design(Chairs.spindles(spindles));
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
}
