package dryfit.fit;

import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.PartPlan;
import dryfit.fit.Assembly.Placed;
import dryfit.fit.ChairMeasure.GrainRun;
import dryfit.geometry.Plane;
import dryfit.geometry.Rays;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The grain of a part against the part's own middle line, which runs through the middles of its
 * sections from shoulder to shoulder; and the fibres through that line, each as long as it stays in
 * the part. A fibre that runs out at an end of the part, or that only a mortise cuts, counts as
 * whole: the joint's own checks look at mortises.
 */
final class GrainLine {
  private GrainLine() {}

  private static final int STATIONS = 25;

  /** A face that looks along the part by more than this cosine is one of its ends. */
  private static final double END = 0.7;

  /** Of all parts that have one, in their order; what mirrors another is not looked at again. */
  static List<GrainRun> all(Assembly assembly, Twins twins) {
    int n = assembly.parts().size();
    List<Optional<GrainRun>> looked =
        IntStream.range(0, n)
            .parallel()
            .mapToObj(
                i -> twins.ofPartWithItsEnds(i) < 0 ? of(assembly, i) : Optional.<GrainRun>empty())
            .toList();
    return IntStream.range(0, n)
        .mapToObj(
            i -> {
              int twin = twins.ofPartWithItsEnds(i);
              return twin < 0
                  ? looked.get(i)
                  : looked.get(twin).map(run -> mirrored(run, assembly.part(i).part()));
            })
        .flatMap(Optional::stream)
        .toList();
  }

  private static GrainRun mirrored(GrainRun run, Part part) {
    return new GrainRun(
        part.label(),
        part.pointer(),
        run.slope(),
        run.steepest().mirrored(),
        run.fibre(),
        run.shortest().mirrored());
  }

  /** Empty where grain and part run alike, and for panels, which have no line. */
  static Optional<GrainRun> of(Assembly assembly, int index) {
    Placed placed = assembly.part(index);
    PartPlan plan = placed.part().plan();
    Vec3 own = placed.part().grain();
    boolean alike =
        !(plan instanceof PartPlan.Sawn) && own.angleTo(Vec3.RIGHT) <= Tolerances.parallel();
    boolean hasLine =
        plan instanceof PartPlan.Sawn
            || plan instanceof PartPlan.Straight
            || plan instanceof PartPlan.Turned;
    if (alike || !hasLine) {
      return Optional.empty();
    }
    List<Vec3> line = line(assembly, index);
    if (line.size() < 3) {
      return Optional.empty();
    }
    Vec3 grain = placed.part().frame().turn(own);
    double slope = 0;
    Vec3 steepest = line.get(0);
    double fibre = Double.POSITIVE_INFINITY;
    Vec3 shortest = line.get(0);
    for (int i = 0; i + 1 < line.size(); i++) {
      Vec3 d = line.get(i + 1).minus(line.get(i)).unit();
      double angle = Math.min(d.angleTo(grain), d.negated().angleTo(grain));
      Vec3 here = line.get(i).midway(line.get(i + 1));
      if (angle > slope) {
        slope = angle;
        steepest = here;
      }
      double length = fibre(placed, here, grain);
      if (length < fibre) {
        fibre = length;
        shortest = here;
      }
    }
    return Optional.of(
        new GrainRun(
            placed.part().label(), placed.part().pointer(), slope, steepest, fibre, shortest));
  }

  /** Middles of the part's sections between its shoulders. */
  private static List<Vec3> line(Assembly assembly, int index) {
    Placed placed = assembly.part(index);
    Vec3 x = placed.part().frame().x();
    double low =
        -placed.bodyCells().stream().mapToDouble(c -> c.reach(x.negated())).max().orElse(0);
    double high = placed.bodyCells().stream().mapToDouble(c -> c.reach(x)).max().orElse(0);
    for (Joint j : assembly.chair().joints()) {
      if (j.tenoned() == index && j.atStart()) {
        low = Math.max(low, j.at().dot(x));
      } else if (j.tenoned() == index) {
        high = Math.min(high, j.at().dot(x));
      }
    }
    List<Vec3> out = new ArrayList<>();
    double inset = (high - low) / STATIONS;
    for (int i = 0; i < STATIONS; i++) {
      double at = low + inset / 2 + (high - low - inset) * i / (STATIONS - 1);
      Legs.middle(placed.bodyCells(), new Plane(x, at)).ifPresent(out::add);
    }
    return out;
  }

  /** The length of the fibre through a place; infinite if it runs out at an end of the part. */
  private static double fibre(Placed placed, Vec3 at, Vec3 grain) {
    double sum = 0;
    boolean aside = true;
    for (int sign = -1; sign <= 1; sign += 2) {
      Rays.Hit out = null;
      for (Rays.Hit hit : placed.rays().hits(at, grain.times(sign))) {
        boolean own = placed.mesh().origin(hit.face()).equals(placed.part().pointer());
        if (own && !hit.entering()) {
          out = hit;
          break;
        }
      }
      if (out == null) {
        return Double.POSITIVE_INFINITY;
      }
      sum += out.distance();
      Vec3 n = placed.mesh().normal(out.face());
      aside &= Math.abs(n.dot(placed.part().frame().x())) < END;
    }
    return aside ? sum : Double.POSITIVE_INFINITY;
  }
}
