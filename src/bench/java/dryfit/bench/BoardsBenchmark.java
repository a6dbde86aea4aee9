package dryfit.bench;

import dryfit.build.Chair;
import dryfit.document.BoardsPlan;
import dryfit.document.BoardsPlan.Board;
import dryfit.document.Document;
import dryfit.document.DocumentReader;
import dryfit.shop.BoardLayout;
import dryfit.shop.ByChance;
import dryfit.shop.CutList;
import dryfit.shop.ThicknessClass;
import dryfit.solid.exact.ExactKernel;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The layout of boards held against the best of many by chance, on every model. A program of its
 * own: a search that counts its steps is timed once, in a fresh machine, as a maker waits for it.
 */
public final class BoardsBenchmark {
  /** The bars: this share of the best yield by chance, in this time. */
  private static final double SHARE = 0.9;

  private static final double SECONDS = 2;

  private BoardsBenchmark() {}

  /** {@code args}: the project's folder, and how many layouts by chance. */
  public static void main(String[] args) throws IOException {
    int count = Integer.parseInt(args[1]);
    List<Path> models;
    try (Stream<Path> all = Files.list(Path.of(args[0], "models"))) {
      models = all.filter(p -> p.toString().endsWith(".json")).sorted().toList();
    }
    System.out.println("| model | parts | boards | yield | by chance | share | left | s |");
    System.out.println("|---|---|---|---|---|---|---|---|");
    boolean held = true;
    for (Path model : models) {
      held &= row(model, count);
    }
    if (!held) {
      throw new AssertionError("a bar is missed");
    }
  }

  private static boolean row(Path model, int count) {
    Document document = Chairs.sound(DocumentReader.read(model));
    Chair chair = Chairs.built(Chairs.design(document), new ExactKernel());
    BoardsPlan plan = chair.design().boards();
    boolean own = !plan.have().isEmpty();
    if (!own) {
      plan = plan.with(stock(CutList.of(chair, plan)));
    }
    long begin = busy();
    BoardLayout laid = BoardLayout.of(chair, plan);
    double took = (busy() - begin) / 1e9;
    BoardLayout best = new ByChance(chair, plan).best(count);
    double share = laid.yielded() / best.yielded();
    System.out.printf(
        Locale.ROOT,
        "| %s | %d | %s | %.1f %% | %.1f %% | %.3f | %d, %d | %.2f |%n",
        model.getFileName().toString().replace(".json", ""),
        laid.boards().stream().mapToInt(b -> b.parts().size()).sum(),
        own ? "its own" : "demo",
        100 * laid.yielded(),
        100 * best.yielded(),
        share,
        laid.left().size(),
        best.left().size(),
        took);
    return laid.left().size() <= best.left().size() && share >= SHARE && took < SECONDS;
  }

  /** Processor time of this thread, ns: others on the machine do not count. */
  private static long busy() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  /** Boards for a chair that has none: demo data, invented. Two wide and two narrow of each kind. */
  private static List<Board> stock(CutList list) {
    List<Board> out = new ArrayList<>();
    for (CutList.Group group : list.groups()) {
      Optional<ThicknessClass> from = group.from();
      double thick = from.orElse(ThicknessClass.ALL.get(ThicknessClass.ALL.size() - 1)).rough();
      for (double[] size : new double[][] {{2400, 200}, {1500, 140}}) {
        String name = size[1] + " wide";
        out.add(
            new Board(
                name, group.timber(), size[0], size[1], thick, false, 0, 2, List.of(), "demo"));
      }
    }
    return out;
  }
}
