package dryfit.fit;

import dryfit.fit.ChairMeasure.FrameSquare;
import dryfit.fit.ChairMeasure.GrainRun;
import dryfit.fit.ChairMeasure.SeatLevel;
import dryfit.fit.ChairMeasure.Stance;
import dryfit.geometry.Vec3;
import java.util.List;
import java.util.Optional;

/** Measures the chair as a whole. */
final class WholeChair {
  private WholeChair() {}

  static ChairMeasure of(Assembly assembly, Twins twins) {
    Legs legs = Legs.of(assembly);
    Optional<Stance> stance = Standing.of(assembly, legs);
    Optional<SeatFrame> seat = SeatFrame.of(assembly, legs);
    List<FrameSquare> frames = seat.map(SeatFrame::squares).orElse(List.of());
    Optional<SeatLevel> level = seat.flatMap(s -> stance.map(t -> s.level(t.up(), onFloor(t))));
    List<GrainRun> grain = GrainLine.all(assembly, twins);
    return new ChairMeasure(frames, stance, level, grain, Mortises.near(assembly));
  }

  private static Vec3 onFloor(Stance stance) {
    return stance.feet().stream()
        .filter(f -> f.gap() == 0)
        .findFirst()
        .orElse(stance.feet().get(0))
        .at();
  }
}
