package dryfit.view;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.app.StateFolder;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.IntStream;
import javafx.application.Platform;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/** The real window on a real display, and what a test asks of it. Without a display tests fail. */
final class OnScreen {
  /** Patience for a machine that has much else to do, seconds. */
  private static final int PATIENCE = 240;

  final Stage stage;
  final ChairWindow window;
  final DeskDouble desk = new DeskDouble();

  OnScreen(Stage stage, Path state) {
    this.stage = stage;
    this.window = new ChairWindow(stage, new StateFolder(state), desk);
    stage.show();
    // All tests share one stage, and one before may have left it smaller.
    stage.sizeToScene();
  }

  static void await(String what, Callable<Boolean> condition) {
    try {
      WaitForAsyncUtils.waitFor(
          PATIENCE, TimeUnit.SECONDS, () -> WaitForAsyncUtils.asyncFx(condition).get());
    } catch (TimeoutException e) {
      throw new AssertionError("still waiting for: " + what, e);
    }
  }

  /** Opens a chair and waits until it is built, fitted and nothing is left to do. */
  void open(Path chair) {
    Platform.runLater(() -> window.open(chair));
    await("the chair " + chair, () -> window.session().shown().get() != null);
    settled();
  }

  /** Waits until all that was asked for is done and drawn. */
  void settled() {
    WaitForAsyncUtils.waitForFxEvents();
    await("the builder", () -> !window.session().busy().get());
    WaitForAsyncUtils.waitForFxEvents();
  }

  Shown shown() {
    return ask(() -> window.session().shown().get());
  }

  Orbit orbit() {
    return ask(() -> window.chair().orbit().get());
  }

  static <T> T ask(Callable<T> question) {
    try {
      return WaitForAsyncUtils.asyncFx(question).get(PATIENCE, TimeUnit.SECONDS);
    } catch (Exception e) {
      throw new AssertionError(e);
    }
  }

  /** A place of the screen where a part is the nearest thing, seen from where the eye is now. */
  Point2D pointOn(Shown shown, String label) {
    return ask(
        () -> {
          ChairView chair = window.chair();
          for (int y = 10; y < chair.getHeight(); y += 5) {
            for (int x = 10; x < chair.getWidth(); x += 3) {
              if (chair.touch(x, y).filter(t -> t.part().equals(label)).isPresent()
                  && chair.touch(x + 3, y + 3).filter(t -> t.part().equals(label)).isPresent()) {
                return chair.localToScreen(x + 2, y + 2);
              }
            }
          }
          throw new AssertionError(label + " is not in sight of " + shown.design().name());
        });
  }

  /** Waits until a flight of the eye is over. */
  void landed() {
    Orbit[] last = {null};
    await(
        "the eye to stand still",
        () -> {
          Orbit now = window.chair().orbit().get();
          boolean still = now.equals(last[0]);
          last[0] = now;
          Thread.sleep(120);
          return still;
        });
  }

  /** How many pixels of the middle are wood: warmer and darker than paper. */
  long wood() {
    return wood(window.chair());
  }

  long wood(Node node) {
    WritableImage image = picture(node);
    long count = 0;
    for (int y = 0; y < image.getHeight(); y += 2) {
      for (int x = 0; x < image.getWidth(); x += 2) {
        Color c = image.getPixelReader().getColor(x, y);
        if (c.getRed() - c.getBlue() > 0.15) {
          count++;
        }
      }
    }
    return count;
  }

  /** How many pixels have any colour of cut faces. */
  long freshlySawn() {
    return IntStream.range(0, SceneDrawing.SAWN.size()).mapToLong(this::freshlySawn).sum();
  }

  /** How many pixels have a colour of cut faces, which no light changes. */
  long freshlySawn(int tone) {
    return coloured(SceneDrawing.SAWN.get(tone));
  }

  /** How many pixels have the one colour of wood that two parts claim. */
  long glowing() {
    return coloured(Color.web("#d8261a"));
  }

  private long coloured(Color wanted) {
    WritableImage image = picture(window.chair());
    long count = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        Color c = image.getPixelReader().getColor(x, y);
        double off =
            Math.abs(c.getRed() - wanted.getRed())
                + Math.abs(c.getGreen() - wanted.getGreen())
                + Math.abs(c.getBlue() - wanted.getBlue());
        count += off < 0.03 ? 1 : 0;
      }
    }
    return count;
  }

  static WritableImage picture(Node node) {
    return ask(() -> node.snapshot(new SnapshotParameters(), null));
  }

  /** Share of pixels that differ between two pictures, where both have any. */
  static double difference(WritableImage a, WritableImage b) {
    long differ = 0;
    long all = 0;
    double width = Math.min(a.getWidth(), b.getWidth());
    double height = Math.min(a.getHeight(), b.getHeight());
    for (int y = 0; y < height; y += 2) {
      for (int x = 0; x < width; x += 2) {
        all++;
        Color p = a.getPixelReader().getColor(x, y);
        Color q = b.getPixelReader().getColor(x, y);
        if (Math.abs(p.getRed() - q.getRed()) + Math.abs(p.getBlue() - q.getBlue()) > 0.08) {
          differ++;
        }
      }
    }
    return (double) differ / all;
  }

  /** Keeps a picture of the whole window for people to look at. */
  void photograph(String name) {
    WritableImage image = ask(() -> stage.getScene().snapshot(null));
    int w = (int) image.getWidth();
    int h = (int) image.getHeight();
    BufferedImage out = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < h; y++) {
      for (int x = 0; x < w; x++) {
        out.setRGB(x, y, image.getPixelReader().getArgb(x, y));
      }
    }
    try {
      Path folder = Files.createDirectories(Path.of("target", "window"));
      assertThat(ImageIO.write(out, "png", folder.resolve(name + ".png").toFile())).isTrue();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  void click(FxRobot robot, String query) {
    robot.clickOn(query);
    settled();
  }

  void close() {
    Platform.runLater(
        () -> {
          window.close();
          stage.hide();
        });
    WaitForAsyncUtils.waitForFxEvents();
  }
}
