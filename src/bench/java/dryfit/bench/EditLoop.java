package dryfit.bench;

import dryfit.build.ChairBuilder;
import dryfit.build.Shelf;
import dryfit.document.Document;
import dryfit.fit.DryFit;
import java.lang.management.CompilationMXBean;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * One dimension of the Harbour armchair moved again and again, as by a slider, from the edited text
 * to all findings. JMH's few seconds of warming up are too short for it: the compiler is busy for
 * thousands of edits. Prints one line, times in milliseconds.
 */
final class EditLoop {
  private static final double NANOS = 1e6;

  private EditLoop() {}

  /**
   * Moves the dimension to a height it never had before, every time. Runs in the folder of the
   * benchmarks.
   *
   * @param arguments dimension, its first value, step in the unit of the document, edits before
   *     anything is timed, and edits that are timed
   */
  public static void main(String[] arguments) {
    String place = "/dimensions/" + arguments[0] + "/value";
    double first = Double.parseDouble(arguments[1]);
    double step = Double.parseDouble(arguments[2]);
    int before = Integer.parseInt(arguments[3]);
    double[] took = new double[Integer.parseInt(arguments[4])];
    Document document =
        Chairs.model(Path.of(System.getProperty("dryfit.root", "../..")), "harbour-armchair");
    Shelf shelf = new Shelf(Engines.kernel("exact"));
    CompilationMXBean compiler = ManagementFactory.getCompilationMXBean();
    long compiled = 0;
    long cpu = 0;
    for (int i = -before; i < took.length; i++) {
      if (i == 0) {
        compiled = compiler.getTotalCompilationTime();
        cpu = cpu();
      }
      long began = System.nanoTime();
      String value = Double.toString(first + (i + before) * step);
      Document edited = Chairs.sound(document.edited(place, value));
      DryFit.of(Chairs.sound(ChairBuilder.build(Chairs.design(edited), shelf)));
      if (i >= 0) {
        took[i] = (System.nanoTime() - began) / NANOS;
      }
    }
    double perEdit = (cpu() - cpu) / NANOS / took.length;
    double compiling = (double) (compiler.getTotalCompilationTime() - compiled) / took.length;
    Arrays.sort(took);
    System.out.printf(
        "%s: median %.1f, least %.1f, 95 %% %.1f; processor time an edit %.1f, the compiler %.1f%n",
        arguments[0],
        took[took.length / 2],
        took[0],
        took[took.length * 95 / 100],
        perEdit,
        compiling);
  }

  private static long cpu() {
    return ((com.sun.management.OperatingSystemMXBean)
            ManagementFactory.getOperatingSystemMXBean())
        .getProcessCpuTime();
  }
}
