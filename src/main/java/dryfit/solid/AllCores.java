package dryfit.solid;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/**
 * Does a few tasks of unequal size on all cores: whoever is free takes the next one. A parallel
 * stream shares a list out beforehand, in pieces of several tasks, and the last piece is waited
 * for.
 */
public final class AllCores {
  private AllCores() {}

  /**
   * The results in the order of the tasks, which are begun in that order too.
   *
   * @throws RuntimeException what the first task that failed has thrown
   */
  public static <T, R> List<R> map(List<T> tasks, Function<T, R> work) {
    return map(tasks, task -> 0, work);
  }

  /**
   * The same; the largest tasks are begun first, so that none of them is left for the end.
   *
   * @param size of a task, roughly, in any unit
   */
  public static <T, R> List<R> map(List<T> tasks, ToIntFunction<T> size, Function<T, R> work) {
    List<Integer> order =
        IntStream.range(0, tasks.size())
            .boxed()
            .sorted(Comparator.comparingInt(i -> -size.applyAsInt(tasks.get(i))))
            .toList();
    List<Outcome<R>> done = new ArrayList<>(Collections.nCopies(tasks.size(), null));
    AtomicInteger next = new AtomicInteger();
    Runnable turn =
        () -> {
          for (int i = next.getAndIncrement(); i < order.size(); i = next.getAndIncrement()) {
            int task = order.get(i);
            done.set(task, outcome(tasks.get(task), work));
          }
        };
    List<ForkJoinTask<?>> others = new ArrayList<>();
    int cores = Math.min(ForkJoinPool.getCommonPoolParallelism(), tasks.size() - 1);
    for (int i = 0; i < cores; i++) {
      others.add(ForkJoinPool.commonPool().submit(turn));
    }
    turn.run();
    others.forEach(ForkJoinTask::quietlyJoin);
    return done.stream().map(Outcome::result).toList();
  }

  /** A result or what was thrown instead: a pool that passes on an exception may pass on a copy. */
  private record Outcome<R>(R value, RuntimeException thrown, Error fault) {
    R result() {
      if (thrown != null) {
        throw thrown;
      }
      if (fault != null) {
        throw fault;
      }
      return value;
    }
  }

  private static <T, R> Outcome<R> outcome(T task, Function<T, R> work) {
    try {
      return new Outcome<>(work.apply(task), null, null);
    } catch (RuntimeException thrown) {
      return new Outcome<>(null, thrown, null);
    } catch (Error fault) {
      return new Outcome<>(null, null, fault);
    }
  }
}
