package dryfit.bench;

import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** One solid by one engine, warm, on one thread. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = {"-Djava.util.concurrent.ForkJoinPool.common.parallelism=1", "-Xss64m"})
public class SolidBenchmark {
  @Param({"leg", "arm", "arm-with-hole", "plate-10", "plate-50", "turned-leg"})
  public String solid;

  @Param({"exact", "jcsg", "commons"})
  public String engine;

  private Supplier<Object> task;

  @Setup
  public void prepare() {
    task = Engines.task(engine, Shapes.all().get(solid).solid());
  }

  @Benchmark
  public Object make() {
    return task.get();
  }
}
