package dryfit.fit;

import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.build.Tenon;
import dryfit.document.JointPlan.Kind;
import dryfit.document.PartPlan;
import dryfit.fit.Assembly.Placed;
import dryfit.fit.Finding.Severity;
import dryfit.geometry.Box;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import dryfit.solid.Overlap;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Two parts that claim the same wood: {@code parts-collide}, or {@code tenons-meet} where two
 * tenons run into each other inside a third part. Touching is not colliding. A tenon that is too
 * fat for its own mortise is {@link ClearanceCheck}'s to tell.
 */
final class CollisionCheck implements Check {

  @Override
  public List<Finding> findings(Assembly assembly, List<JointFit> measured) {
    int n = assembly.parts().size();
    return IntStream.range(0, n * n)
        .parallel()
        .filter(k -> k / n < k % n)
        .mapToObj(k -> collision(assembly, k / n, k % n))
        .flatMap(Optional::stream)
        .toList();
  }

  private static Optional<Finding> collision(Assembly assembly, int i, int k) {
    Placed a = assembly.part(i);
    Placed b = assembly.part(k);
    if (!a.bounds().meets(b.bounds())
        || drivenThrough(assembly, i, k)
        || drivenThrough(assembly, k, i)) {
      return Optional.empty();
    }
    List<Convex> mine = outsideTheirJoints(assembly, near(a.cells(), b.bounds()), i, k);
    List<Convex> theirs = near(b.cells(), a.bounds());
    return Overlap.between(mine, theirs).map(o -> finding(assembly, i, k, o));
  }

  /** A peg or wedge is meant to press on the two parts of its joint. */
  private static boolean drivenThrough(Assembly assembly, int pin, int other) {
    return assembly.part(pin).part().plan() instanceof PartPlan.Pin driven
        && assembly.chair().joints().stream()
            .filter(j -> j.name().equals(driven.place().joint()))
            .anyMatch(j -> j.tenoned() == other || j.mortised() == other);
  }

  private static List<Convex> near(List<Convex> cells, Box bounds) {
    return cells.stream().filter(c -> c.bounds().meets(bounds)).toList();
  }

  /**
   * Whether a tenon is cut from the one part and goes into the other. Loose tenons, dowels and
   * wedges are parts of their own, held against their holes like any other wood.
   */
  private static boolean isBetween(Assembly assembly, Tenon t, int into, int i, int k) {
    boolean between = t.part() == i && into == k || t.part() == k && into == i;
    return between && !assembly.part(t.part()).part().isPiece();
  }

  /** Without what lies in a joint that the two have with each other. */
  private static List<Convex> outsideTheirJoints(
      Assembly assembly, List<Convex> cells, int i, int k) {
    List<Convex> holes =
        assembly.chair().joints().stream()
            .filter(j -> j.plan().kind() != Kind.GROOVE && j.plan().kind() != Kind.NOTCH)
            .flatMap(
                j ->
                    j.tenons().stream()
                        .filter(t -> isBetween(assembly, t, j.mortised(), i, k))
                        .flatMap(t -> Stream.concat(t.hole().stream(), t.wood().stream())))
            .toList();
    return holes.isEmpty() ? cells : dryfit.solid.Cells.minus(cells, holes);
  }

  private static Finding finding(Assembly assembly, int i, int k, Overlap o) {
    Part a = assembly.part(i).part();
    Part b = assembly.part(k).part();
    Optional<Joint[]> tenons = tenons(assembly, i, k, o.deepest());
    Vec3 size = o.bounds().size();
    String extent =
        assembly.length(size.x())
            + " × "
            + assembly.length(size.y())
            + " × "
            + assembly.length(size.z());
    if (tenons.isPresent()) {
      Joint ja = tenons.get()[0];
      Joint jb = tenons.get()[1];
      Part into = assembly.mortised(ja).part();
      String shorter =
          "shorten the tenon of \""
              + ja.name()
              + "\" by "
              + assembly.lengthUp(beyond(ja, i, o))
              + " or that of \""
              + jb.name()
              + "\" by "
              + assembly.lengthUp(beyond(jb, k, o))
              + ", or mitre the two tips";
      return Found.of("tenons-meet", Severity.STOPS)
          .part(a)
          .part(b)
          .part(into)
          .joint(ja)
          .joint(jb)
          .atMost(0, o.depth())
          .says(
              "The tenons of "
                  + a.label()
                  + " and "
                  + b.label()
                  + " meet inside "
                  + into.label()
                  + " and share "
                  + extent
                  + "; "
                  + shorter
                  + ".",
              ja.plan().pointer() + "/length",
              o.deepest());
    }
    return Found.of("parts-collide", Severity.STOPS)
        .part(a)
        .part(b)
        .atMost(0, o.depth())
        .says(
            a.label()
                + " and "
                + b.label()
                + " are in each other's way: they share "
                + extent
                + " ("
                + assembly.volume(o.volume())
                + "); move one of them by at least "
                + assembly.lengthUp(o.depth())
                + ".",
            a.pointer(),
            o.deepest());
  }

  /** How much of a tenon lies beyond the place where the overlap begins: so much has to go. */
  private static double beyond(Joint joint, int part, Overlap o) {
    double tip =
        joint.tenons().stream()
            .filter(t -> t.part() == part)
            .flatMap(t -> t.wood().stream())
            .mapToDouble(c -> c.reach(joint.entry()))
            .max()
            .orElseThrow();
    return tip - o.from(joint.entry());
  }

  /** The two joints whose tenons both reach the place, into one and the same part. */
  private static Optional<Joint[]> tenons(Assembly assembly, int i, int k, Vec3 place) {
    List<Joint> mine = new ArrayList<>();
    List<Joint> theirs = new ArrayList<>();
    for (Joint j : assembly.chair().joints()) {
      for (Tenon t : j.tenons()) {
        if (t.wood().stream().anyMatch(c -> c.contains(place))) {
          if (t.part() == i) {
            mine.add(j);
          } else if (t.part() == k) {
            theirs.add(j);
          }
        }
      }
    }
    for (Joint a : mine) {
      for (Joint b : theirs) {
        if (a.mortised() == b.mortised()) {
          return Optional.of(new Joint[] {a, b});
        }
      }
    }
    return Optional.empty();
  }
}
