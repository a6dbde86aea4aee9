package dryfit.bench;

import dryfit.build.Chair;
import dryfit.build.ChairBuilder;
import dryfit.build.Shelf;
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
  private Shelf shelf;
  private int step;

  @Setup
  public void prepare() {
    kernel = Engines.kernel(engine);
    document = Chairs.model(Path.of(System.getProperty("dryfit.root", ".")), "harbour-armchair");
    design = Chairs.design(document);
    chair = Chairs.built(design, kernel);
    shelf = new Shelf(kernel);
  }

  @Benchmark
  public Chair build() {
    return Chairs.built(design, kernel);
  }

  @Benchmark
  public FitReport fit() {
    return DryFit.of(chair);
  }

  /**
   * From the edited text to the findings. The seat goes through a thousand heights, so that every
   * height is new to the shelf, which keeps what this change does not touch.
   */
  @Benchmark
  public FitReport changeSeatTop() {
    return changed("seatTop", 400 + step());
  }

  /** The same for the thickness of the arms, which fewer parts depend on. */
  @Benchmark
  public FitReport changeArmThick() {
    return changed("armThick", 26 + step() / 16);
  }

  private double step() {
    step = (step + 1) % 1000;
    return step / 16.0;
  }

  private FitReport changed(String dimension, double value) {
    Document edited =
        Chairs.sound(
            document.edited(place(dimension), Double.toString(value)));
    return DryFit.of(Chairs.sound(ChairBuilder.build(Chairs.design(edited), shelf)));
  }

  private static String place(String dimension) {
    return "/dimensions/" + dimension + "/value";
  }
}
