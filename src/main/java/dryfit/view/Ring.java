package dryfit.view;

import dryfit.export.picture.Camera;
import dryfit.geometry.Vec3;
import java.util.Optional;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Circle;

/** A ring round the place of what was taken up, also where that lies inside the wood. */
final class Ring extends Pane {
  private static final double RADIUS = 20;

  private final ChairView chair;
  private final Circle ring = new Circle(RADIUS);
  private final Circle halo = new Circle(RADIUS);
  private Optional<Vec3> place = Optional.empty();
  private long number;

  Ring(ChairView chair) {
    this.chair = chair;
    setMouseTransparent(true);
    setMinSize(0, 0);
    halo.getStyleClass().add("ring-halo");
    ring.getStyleClass().add("ring");
    ring.setId("ring");
    getChildren().addAll(halo, ring);
    chair.orbit().addListener(o -> draw());
    chair.look().addListener(o -> draw());
    widthProperty().addListener(o -> draw());
    heightProperty().addListener(o -> draw());
    draw();
  }

  /** Rings a place, chair space, or nothing. */
  void put(Optional<Vec3> at) {
    place = at;
    draw();
  }

  /** A chair that was changed may have its findings elsewhere. */
  void show(Shown shown) {
    if (shown.number() != number) {
      number = shown.number();
      put(Optional.empty());
    }
  }

  private void draw() {
    // Drawn apart, parts are not where they were measured.
    boolean seen = place.isPresent() && getWidth() > 1 && chair.look().get().moved().isEmpty();
    ring.setVisible(seen);
    halo.setVisible(seen);
    if (seen) {
      Camera camera = chair.orbit().get().camera();
      Camera.Sheet sheet = camera.sheet((int) getWidth(), (int) getHeight());
      for (Circle circle : new Circle[] {halo, ring}) {
        circle.setCenterX(sheet.x(place.get()));
        circle.setCenterY(sheet.y(place.get()));
        circle.setVisible(camera.depth(place.get()) > 1);
      }
    }
  }
}
