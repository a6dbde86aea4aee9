package dryfit.view;

import dryfit.app.StateFolder;
import dryfit.document.Design;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.lang.management.MemoryUsage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import javafx.animation.AnimationTimer;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.stage.Stage;

/**
 * Figures of the window, to be run by hand on a display: for each model the time of a frame while
 * it turns and from a step of a dragged dimension to the picture; then the heap while one dimension
 * is dragged for so many minutes. Arguments: the minutes, and
 * {@code drag} if only that is wanted.
 */
public final class WindowFigures {
  private static final int WARM = 60;
  private static final int FRAMES = 120;
  private static final int STEPS = 60;

  private WindowFigures() {}

  public static void main(String[] args) {
    Application.launch(Shown.class, args);
  }

  /** The window, and who drives it. */
  public static final class Shown extends Application {
    @Override
    public void start(Stage stage) throws Exception {
      Path state = Files.createTempDirectory("figures");
      ChairWindow window = new ChairWindow(stage, new StateFolder(state), new DeskDouble());
      double minutes = Double.parseDouble(getParameters().getRaw().get(0));
      List<Path> models;
      try (Stream<Path> all = Files.list(Path.of("models"))) {
        models = all.filter(p -> p.toString().endsWith(".json")).sorted().toList();
      }
      Path harbour = Path.of("models/harbour-armchair.json");
      window.open(harbour);
      stage.show();
      awaitShown(
          window,
          harbour,
          () -> {
            boolean all = !getParameters().getRaw().contains("drag");
            List<Path> turned = all ? new ArrayList<>(models) : new ArrayList<>();
            turn(window, turned, () -> drag(window, harbour, minutes));
          });
    }

    private static void print(String what, double value, String unit) {
      System.out.println(String.format(Locale.ROOT, "%-28s %8.1f %s", what, value, unit));
    }

    /** Two pulses after the chair is there, it is on screen. */
    private static void awaitShown(ChairWindow window, Path file, Runnable then) {
      new AnimationTimer() {
        private int pulses;

        @Override
        public void handle(long now) {
          var shown = window.session().shown().get();
          boolean there = shown != null && shown.document().file().equals(file.toString());
          if (there && ++pulses > 2) {
            stop();
            then.run();
          }
        }
      }.start();
    }

    private static void turn(ChairWindow window, List<Path> models, Runnable then) {
      if (models.isEmpty()) {
        then.run();
        return;
      }
      Path model = models.remove(0);
      window.open(model);
      awaitShown(
          window,
          model,
          () ->
              new AnimationTimer() {
                private final List<Double> times = new ArrayList<>();
                private int frame;
                private long last;

                @Override
                public void handle(long now) {
                  if (window.session().busy().get()) {
                    return;
                  }
                  if (++frame > WARM) {
                    times.add((System.nanoTime() - last) / 1e6);
                  }
                  last = System.nanoTime();
                  Orbit orbit = window.chair().orbit().get();
                  window.chair().follow(orbit.turned(Math.toRadians(6), 0));
                  if (times.size() == FRAMES) {
                    stop();
                    print(model.getFileName().toString(), "turning", times);
                    new Dragging(window, STEPS, 0, () -> turn(window, models, then)).start();
                  }
                }
              }.start());
    }

    private static void drag(ChairWindow window, Path model, double minutes) {
      window.open(model);
      awaitShown(
          window,
          model,
          () ->
              new Dragging(
                      window,
                      Integer.MAX_VALUE,
                      minutes,
                      () -> {
                        window.close();
                        Platform.exit();
                      })
                  .start());
    }

    private static void print(String model, String what, List<Double> times) {
      List<Double> sorted = new ArrayList<>(times);
      sorted.sort(null);
      print(model + " " + what + ", median", sorted.get(sorted.size() / 2), "ms");
      print(model + " " + what + ", 95 %", sorted.get(sorted.size() * 95 / 100), "ms");
    }

    /**
     * Moves a dimension up and down; the next step as soon as the last is in the picture. Ends
     * after so many steps, or so many minutes.
     */
    private static final class Dragging extends AnimationTimer {
      private final ChairWindow window;
      private final int steps;
      private final double minutes;
      private final Runnable then;
      private final long began = System.nanoTime();
      private final List<Double> times = new ArrayList<>();
      private String name;
      private double middle;
      private long asked;
      private long number;
      private int step;
      private int told;

      Dragging(ChairWindow window, int steps, double minutes, Runnable then) {
        this.window = window;
        this.steps = steps;
        this.minutes = minutes;
        this.then = then;
        // One drag is one step that can be taken back, however long it takes.
        window.session().press();
        first(window.session().shown().get());
      }

      /** What the last collection left, for other threads go on while this one looks; MB. */
      private static double heap() {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .map(MemoryPoolMXBean::getCollectionUsage)
                .filter(Objects::nonNull)
                .mapToLong(MemoryUsage::getUsed)
                .sum()
            / 1e6;
      }

      /** Most models call it so; the height of the seat moves nearly everything. */
      private void first(dryfit.view.Shown shown) {
        Design.Dimension seat =
            shown.design().dimensions().stream()
                .filter(d -> d.name().equals("seatTop") || d.name().equals("seatFront"))
                .findFirst()
                .orElseThrow();
        name = seat.name();
        middle = seat.value().value() / shown.design().unit().printed().mm();
      }

      @Override
      public void handle(long now) {
        long built = window.session().shown().get().number();
        if (asked != 0 && built == number) {
          return;
        }
        if (asked != 0) {
          times.add((System.nanoTime() - asked) / 1e6);
        }
        double since = (System.nanoTime() - began) / 60e9;
        if (minutes > 0 && since >= told * Math.max(0.5, minutes / 10)) {
          System.gc();
          print(String.format(Locale.ROOT, "heap after %.1f min", since), heap(), "MB");
          told++;
        }
        if (minutes > 0 ? since > minutes : times.size() == steps) {
          stop();
          window.session().lift();
          Path file = Path.of(window.session().shown().get().document().file());
          String model = file.getFileName().toString();
          print(model, "step to picture", times);
          then.run();
          return;
        }
        number = built;
        asked = System.nanoTime();
        double share = 1 + 0.002 * (Math.abs(step++ % 32 - 16) - 8);
        String value = String.format(Locale.ROOT, "%.4f", middle * share);
        window.session().dimension(name, value, why -> why.forEach(System.out::println));
      }
    }
  }
}
