package dryfit.view;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.scene.input.TouchEvent;
import javafx.scene.input.TouchPoint;

/** Fingers on the glass: one turns, two slide and bring nearer. */
final class Fingers {
  private final BiConsumer<Double, Double> one;
  private final Consumer<Pinch> two;
  private int down;
  private int set = -1;
  private Place last;

  /**
   * How two fingers went on since last time.
   *
   * @param x where the middle between them is now, pixels
   * @param dx how far that went
   * @param spread how much farther they are apart, as a factor
   */
  record Pinch(double x, double y, double dx, double dy, double spread) {}

  private record Place(double x, double y, double apart) {}

  /**
   * @param one told how far one finger went, pixels
   * @param two told how two fingers went
   */
  Fingers(BiConsumer<Double, Double> one, Consumer<Pinch> two) {
    this.one = one;
    this.two = two;
  }

  /** Whether there is a finger on the glass. */
  boolean any() {
    return down > 0;
  }

  /** Every finger has an event of its own, but the first of a set tells of all. */
  void handle(TouchEvent e) {
    e.consume();
    if (e.getEventSetId() == set) {
      return;
    }
    set = e.getEventSetId();
    List<TouchPoint> there =
        e.getTouchPoints().stream()
            .filter(p -> p.getState() != TouchPoint.State.RELEASED)
            .limit(2)
            .toList();
    Place now = there.isEmpty() ? null : place(there);
    if (now != null && last != null && there.size() == down) {
      if (down == 1) {
        one.accept(now.x() - last.x(), now.y() - last.y());
      } else {
        double spread = last.apart() > 1 ? now.apart() / last.apart() : 1;
        two.accept(new Pinch(now.x(), now.y(), now.x() - last.x(), now.y() - last.y(), spread));
      }
    }
    down = there.size();
    last = now;
  }

  private static Place place(List<TouchPoint> points) {
    TouchPoint a = points.get(0);
    TouchPoint b = points.get(points.size() - 1);
    return new Place(
        (a.getX() + b.getX()) / 2,
        (a.getY() + b.getY()) / 2,
        Math.hypot(a.getX() - b.getX(), a.getY() - b.getY()));
  }
}
