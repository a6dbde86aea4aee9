package dryfit.view;

import dryfit.export.picture.Camera;
import dryfit.export.picture.Figure;
import dryfit.export.picture.Picture;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;

/**
 * The chair on paper, for machines without 3D: the renderer of pictures, run on a thread of its own
 * each time something changes; the newest wish wins.
 */
final class PaperDrawing implements Drawing {
  /** Fewer pixels while the processor does all the work; the screen stretches them. */
  private static final int MOST_PIXELS = 900;

  private final ImageView view = new ImageView();
  private final AtomicReference<Wish> wanted = new AtomicReference<>();
  private Shown shown;
  private Look how = Look.PLAIN;
  private Camera camera;
  private double width = Picture.SMALLEST;
  private double height = Picture.SMALLEST;
  private boolean drawing;

  private record Wish(Picture picture, PaperInk ink, Camera camera, int width, int height) {}

  PaperDrawing() {
    view.setId("drawing");
    view.setManaged(false);
    view.setSmooth(true);
  }

  @Override
  public Node node() {
    return view;
  }

  @Override
  public void resize(double newWidth, double newHeight) {
    width = Math.max(Picture.SMALLEST, newWidth);
    height = Math.max(Picture.SMALLEST, newHeight);
    view.setFitWidth(width);
    view.setFitHeight(height);
    draw();
  }

  @Override
  public void show(Shown next) {
    shown = next;
    draw();
  }

  /** Paper takes one chair only. */
  @Override
  public void lay(Optional<Shown> over) {}

  @Override
  public void look(Orbit from) {
    camera = from.camera();
    draw();
  }

  @Override
  public void see(Look next) {
    how = next;
    draw();
  }

  private void draw() {
    if (shown == null || camera == null) {
      return;
    }
    List<Figure> figures =
        Figure.of(shown.chair(), List.copyOf(how.chosen())).stream()
            .filter(f -> !how.hidden().contains(f.label()))
            .toList();
    if (figures.isEmpty()) {
      view.setImage(null);
      return;
    }
    figures = new ArrayList<>(figures);
    figures.addAll(PaperScale.figures(how.scale(), shown.bounds()));
    double share = Math.min(1, MOST_PIXELS / Math.max(width, height));
    int w = Math.max(Picture.SMALLEST, (int) Math.round(width * share));
    int h = Math.max(Picture.SMALLEST, (int) Math.round(height * share));
    PaperInk ink =
        new PaperInk(
            shown.chair(),
            how.hidden(),
            shown.fit().flatMap(fit -> Footprint.of(fit.whole())),
            how.scale(),
            shown.bounds());
    wanted.set(new Wish(new Picture(figures, List.of()), ink, camera, w, h));
    if (!drawing) {
      drawing = true;
      Thread pen = new Thread(this::pen, "drawing");
      pen.setDaemon(true);
      pen.start();
    }
  }

  private void pen() {
    for (Wish wish = wanted.getAndSet(null); wish != null; wish = wanted.getAndSet(null)) {
      WritableImage image = drawn(wish);
      Platform.runLater(() -> view.setImage(image));
    }
    Platform.runLater(
        () -> {
          drawing = false;
          if (wanted.get() != null) {
            draw();
          }
        });
  }

  private static WritableImage drawn(Wish wish) {
    int w = wish.width();
    int h = wish.height();
    BufferedImage drawn = wish.picture().draw(wish.camera(), w, h);
    wish.ink().draw(drawn, wish.camera());
    int[] pixels = drawn.getRGB(0, 0, w, h, null, 0, w);
    WritableImage image = new WritableImage(w, h);
    image.getPixelWriter().setPixels(0, 0, w, h, PixelFormat.getIntArgbPreInstance(), pixels, 0, w);
    return image;
  }
}
