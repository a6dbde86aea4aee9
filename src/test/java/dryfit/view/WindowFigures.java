package dryfit.view;

import dryfit.app.StateFolder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javafx.animation.AnimationTimer;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.stage.Stage;

/**
 * Figures of the window, to be run by hand on a display: time to the first picture, time for a
 * frame while each model turns, from a dimension to the picture, and the heap while a dimension is
 * dragged for so many minutes. Arguments: the minutes.
 */
public final class WindowFigures {
  private static final long BEGAN = System.nanoTime();
  private static final int FRAMES = 60;

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
            print("first picture", (System.nanoTime() - BEGAN) / 1e6, "ms since main");
            turn(window, new ArrayList<>(models), () -> drag(window, harbour, minutes));
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
                private int frame;
                private long began;

                @Override
                public void handle(long now) {
                  if (window.session().busy().get()) {
                    return;
                  }
                  if (frame == 0) {
                    began = now;
                  }
                  Orbit orbit = window.chair().orbit().get();
                  window.chair().follow(orbit.turned(Math.toRadians(6), 0));
                  if (++frame > FRAMES) {
                    stop();
                    double each = (now - began) / 1e6 / FRAMES;
                    print("turning " + model.getFileName(), each, "ms a frame");
                    turn(window, models, then);
                  }
                }
              }.start());
    }

    private static void drag(ChairWindow window, Path model, double minutes) {
      window.open(model);
      awaitShown(window, model, () -> new Dragging(window, minutes).start());
    }

    /** Moves a dimension up and down; the next step as soon as the last is in the picture. */
    private static final class Dragging extends AnimationTimer {
      private final ChairWindow window;
      private final double minutes;
      private final long began = System.nanoTime();
      private final List<Double> times = new ArrayList<>();
      private long asked;
      private long number;
      private int step;
      private int told;

      Dragging(ChairWindow window, double minutes) {
        this.window = window;
        this.minutes = minutes;
      }

      @Override
      public void handle(long now) {
        long built = window.session().shown().get().number();
        if (asked != 0 && built == number) {
          return;
        }
        if (asked != 0) {
          times.add((now - asked) / 1e6);
        }
        double since = (System.nanoTime() - began) / 60e9;
        if (since >= told * Math.max(0.5, minutes / 10)) {
          System.gc();
          Runtime runtime = Runtime.getRuntime();
          double heap = (runtime.totalMemory() - runtime.freeMemory()) / 1e6;
          print(String.format(Locale.ROOT, "heap after %.1f min", since), heap, "MB");
          told++;
        }
        if (since > minutes) {
          stop();
          times.sort(null);
          print("steps of the drag", times.size(), "");
          print("step to picture, median", times.get(times.size() / 2), "ms");
          print("step to picture, 95 %", times.get(times.size() * 95 / 100), "ms");
          window.close();
          Platform.exit();
          return;
        }
        number = built;
        asked = System.nanoTime();
        int value = 400 + 5 * Math.abs(step++ % 32 - 16) / 2 * 2;
        window.session().dimension("seatTop", Integer.toString(value), why -> {});
      }
    }
  }
}
