package dryfit.solid.jcsg;

import dryfit.geometry.FloatGrid;
import dryfit.geometry.MassProperties;
import dryfit.geometry.Mesh;
import dryfit.geometry.MeshCheck;
import dryfit.geometry.MeshFailure;
import dryfit.measure.Tolerances;
import dryfit.solid.Csg;
import dryfit.solid.Kernel;
import dryfit.solid.KernelFailure;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.FutureTask;

/** Booleans by JCSG, repaired and checked; see the package. Thread-safe. */
public final class JcsgKernel implements Kernel {
  /** Bytes of stack: JCSG's recursion is as deep as a convex shape has faces. */
  private static final long DEEP = 512L << 20;

  @Override
  public String name() {
    return "jcsg";
  }

  @Override
  public Mesh evaluate(Csg what) {
    FutureTask<Mesh> task = new FutureTask<>(() -> checked(what));
    Thread thread = new Thread(null, task, "jcsg", DEEP);
    thread.setDaemon(true);
    thread.start();
    try {
      ForkJoinPool.managedBlock(new Wait(task));
      return task.get();
    } catch (ExecutionException e) {
      throw failure(e.getCause(), what);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new KernelFailure("interrupted", what, e);
    }
  }

  /**
   * A worker that waits here makes room for another: JCSG splits its own work over the same pool,
   * and would never end if all its workers waited for it.
   */
  private record Wait(FutureTask<Mesh> task) implements ForkJoinPool.ManagedBlocker {
    @Override
    public boolean block() throws InterruptedException {
      try {
        task.get();
      } catch (ExecutionException e) {
        return true;
      }
      return true;
    }

    @Override
    public boolean isReleasable() {
      return task.isDone();
    }
  }

  private static KernelFailure failure(Throwable cause, Csg what) {
    if (cause instanceof Error error && !(cause instanceof StackOverflowError)) {
      throw error;
    }
    String reason =
        cause instanceof StackOverflowError
            ? "JCSG found no end"
            : String.valueOf(cause.getMessage());
    return new KernelFailure(reason.lines().findFirst().orElse("unknown"), what, cause);
  }

  private static Mesh checked(Csg what) {
    Leaves leaves = new Leaves();
    Optional<Operand> result = new Booleans(leaves).evaluate(what);
    if (result.isEmpty()) {
      return Mesh.EMPTY;
    }
    List<Fragment> fragments = result.get().fragments();
    Mesh mesh = Merging.of(fragments, Seams.of(fragments, leaves.points()), leaves.sheets());
    if (mesh.isEmpty()) {
      requireSameVolume(result.get(), 0);
      return Mesh.EMPTY;
    }
    List<String> problems = MeshCheck.problems(mesh);
    if (!problems.isEmpty()) {
      throw new MeshFailure(problems.get(0));
    }
    requireSameVolume(result.get(), MassProperties.of(mesh).volume());
    requireRoundable(mesh);
    return mesh;
  }

  /** Welding moves faces by no more than its distance. */
  private static void requireSameVolume(Operand before, double after) {
    double slack = Booleans.slack(before.box().size()) + Tolerances.volumeShare() * before.volume();
    if (Math.abs(before.volume() - after) > slack) {
      throw new MeshFailure(
          "repair changed the volume from " + before.volume() + " to " + after + " mm^3");
    }
  }

  /** The promise of every kernel: closed also as 32-bit floats. */
  private static void requireRoundable(Mesh mesh) {
    if (FloatGrid.snapped(mesh).isEmpty()) {
      throw new MeshFailure("rounded to 32-bit floats: nothing is left");
    }
  }
}
