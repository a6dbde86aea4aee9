package dryfit.view;

import dryfit.export.SafeFile;
import dryfit.export.UnsoundFile;
import dryfit.export.paper.PngWriter;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import javafx.scene.Group;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;

/** What is seen of the chair, as a PNG of any size. */
final class PictureSaver {
  private static final int LEAST = 100;

  /** What the graphics can hold in one piece, with the height of a tall window. */
  private static final int MOST = 8000;

  /** What is told of a width that cannot be. */
  static final String WIDTHS = "A whole number of pixels from " + LEAST + " to " + MOST + ".";

  private PictureSaver() {}

  /** A width as it was typed; empty if no picture is that wide. */
  static Optional<Integer> width(String typed) {
    return Optional.of(typed.strip())
        .filter(t -> t.matches("\\d{1,5}"))
        .map(Integer::valueOf)
        .filter(w -> w >= LEAST && w <= MOST);
  }

  /**
   * Draws once more, in another size, what {@code chair} shows. On the window's thread.
   *
   * @param paper the colour behind the chair
   */
  static BufferedImage draw(ChairView chair, Shown shown, int width, int height, Color paper) {
    SceneDrawing drawing = new SceneDrawing();
    drawing.resize(width, height);
    drawing.look(chair.orbit().get());
    drawing.show(shown);
    drawing.see(chair.look().get());
    Group alone = new Group(drawing.node());
    Scene scene = new Scene(alone, width, height, paper);
    SnapshotParameters how = new SnapshotParameters();
    how.setFill(paper);
    WritableImage image = scene.getRoot().snapshot(how, new WritableImage(width, height));
    BufferedImage out = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        out.setRGB(x, y, image.getPixelReader().getArgb(x, y));
      }
    }
    return out;
  }

  /**
   * Writes a picture whole or not at all.
   *
   * @return why it was not written
   */
  static Optional<String> write(BufferedImage picture, Path file) {
    try {
      byte[] bytes = PngWriter.bytes(picture);
      SafeFile.write(
          file,
          bytes,
          readBack -> {
            if (!Arrays.equals(bytes, readBack)) {
              throw new UnsoundFile("the picture reads back differently");
            }
          });
      return Optional.empty();
    } catch (IOException | UnsoundFile e) {
      return Optional.of("The picture was not saved: " + e.getMessage());
    }
  }
}
