package dryfit.build;

import dryfit.document.Hand;
import dryfit.document.JointPlan;
import dryfit.geometry.Mesh;
import dryfit.solid.AllCores;
import dryfit.solid.Cells;
import dryfit.solid.Content;
import dryfit.solid.Convex;
import dryfit.solid.Csg;
import dryfit.solid.KernelFailure;
import dryfit.solid.Solid;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Supplier;

/**
 * Turns the shapes of all parts into solids, each different shape once. The left of a pair is the
 * mirror image of its twin where the two are made alike, so it is made by mirroring, and the two
 * can never differ.
 */
final class Joinery {
  private final Shelf shelf;
  private final List<JointPlan> joints;

  /** What was asked for during this build, by the shape itself: each is asked for several times. */
  private final Map<Same, Csg> turned = new ConcurrentHashMap<>();

  private final Map<Same, List<Convex>> cells = new ConcurrentHashMap<>();

  private final List<ForkJoinTask<?>> begun = new ArrayList<>();

  /**
   * @param joints all joints of the chair, to name those at which a part cannot be made
   */
  Joinery(Shelf shelf, List<JointPlan> joints) {
    this.shelf = shelf;
    this.joints = List.copyOf(joints);
  }

  /**
   * A part ready to be made.
   *
   * @param body the shape before mortises, tenons included, own frame, canonical
   * @param cuts what is taken off it, own frame, canonical
   */
  record Work(String label, Hand hand, Csg body, List<Csg> cuts) {

    Csg finished() {
      return body.minus(cuts);
    }
  }

  /** As it is made: the left of a pair turned into a right one. */
  private Work asMade(Work work) {
    return work.hand() != Hand.LEFT
        ? work
        : new Work(
            work.label(),
            Hand.RIGHT,
            turned(work.body()),
            work.cuts().stream().map(this::turned).toList());
  }

  private Csg turned(Csg shape) {
    return turned.computeIfAbsent(
        new Same(shape), s -> shelf.canonical(Shapes.mirroredZ(s.shape())));
  }

  /** The cells of a body, the left of a pair by mirroring. */
  List<Convex> cells(Csg body, Hand hand) {
    return cells.computeIfAbsent(new Same(body), b -> made(b.shape(), hand));
  }

  private List<Convex> made(Csg body, Hand hand) {
    Csg made = hand == Hand.LEFT ? turned(body) : body;
    List<Convex> known = shelf.cells(Content.of(made), () -> Cells.of(made));
    return hand == Hand.LEFT ? known.stream().map(Convex::mirroredZ).toList() : known;
  }

  /** The very same shape, without a look at what it is made of. */
  private record Same(Csg shape) {
    @Override
    public boolean equals(Object other) {
      return other instanceof Same same && same.shape == shape;
    }

    @Override
    public int hashCode() {
      return System.identityHashCode(shape);
    }
  }

  /**
   * Begins to make a solid on another thread. It waits on the shelf for {@link #solids}; if it
   * cannot be made, that is told there.
   *
   * @param work asked for on that thread
   */
  void begin(Supplier<Work> work) {
    begun.add(
        ForkJoinPool.commonPool()
            .submit(
                () -> {
                  Work made = asMade(work.get());
                  shelf.solid(Content.of(made.finished()), () -> solid(made));
                }));
  }

  /** Waits for what was begun, so that nobody works with the shelf any more. */
  void awaitBegun() {
    begun.forEach(ForkJoinTask::quietlyJoin);
    begun.clear();
  }

  /**
   * The solids of all, in their order.
   *
   * @throws KernelFailure if one could not be made; it names the first in order
   */
  List<Solid> solids(List<Work> all) {
    awaitBegun();
    List<Work> made = all.stream().map(this::asMade).toList();
    List<Content> keys = made.parallelStream().map(w -> Content.of(w.finished())).toList();
    List<Integer> missing = new ArrayList<>();
    Set<Content> seen = new HashSet<>();
    for (int i = 0; i < made.size(); i++) {
      if (!shelf.hasSolid(keys.get(i)) && seen.add(keys.get(i))) {
        missing.add(i);
      }
    }
    AllCores.map(
        missing,
        i -> made.get(i).cuts().size(),
        i -> shelf.solid(keys.get(i), () -> solid(made.get(i))));
    return java.util.stream.IntStream.range(0, all.size())
        .parallel()
        .mapToObj(i -> taken(all.get(i), made.get(i), keys.get(i)))
        .toList();
  }

  private Solid taken(Work work, Work made, Content key) {
    Solid right = shelf.solid(key, () -> solid(made));
    return work.hand() == Hand.LEFT ? shelf.mirrored(key, right::mirroredZ) : right;
  }

  private Solid solid(Work work) {
    Mesh mesh;
    try {
      mesh = shelf.kernel().evaluate(work.finished());
    } catch (KernelFailure failure) {
      throw FailedPart.named(work.label(), joints, shelf.kernel(), failure);
    }
    List<Convex> tools = work.cuts().stream().flatMap(c -> Cells.of(c).stream()).toList();
    return new Solid(mesh, Cells.minus(cells(work.body(), Hand.RIGHT), tools));
  }
}
