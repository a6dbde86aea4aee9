package dryfit.build;

import dryfit.geometry.Frame;
import dryfit.solid.Convex;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;

/** The cells of a part in its own frame and, once they were asked for, where they stand. */
final class StandingCells {
  private final List<Convex> own;
  private final Frame frame;
  private final AtomicReference<List<Convex>> placed = new AtomicReference<>();

  private StandingCells(List<Convex> own, Frame frame) {
    this.own = List.copyOf(own);
    this.frame = frame;
  }

  static StandingCells of(List<Convex> own, Frame frame) {
    return new StandingCells(own, frame);
  }

  List<Convex> own() {
    return own;
  }

  /** In chair space. */
  List<Convex> placed() {
    List<Convex> known = placed.get();
    if (known == null) {
      known = own.stream().map(c -> c.placed(frame)).toList();
      placed.set(known);
    }
    return known;
  }
}
