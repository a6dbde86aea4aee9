package dryfit.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class AllCoresTest {
  private static final List<Integer> TASKS = IntStream.range(0, 100).boxed().toList();

  @Test
  void resultsComeInTheOrderOfTheTasks() {
    assertThat(AllCores.map(TASKS, i -> i % 7, i -> 2 * i))
        .isEqualTo(TASKS.stream().map(i -> 2 * i).toList());
    assertThat(AllCores.map(List.<Integer>of(), i -> i)).isEmpty();
  }

  @Test
  void tasksMayShareTheirOwnTasks() {
    List<Integer> sums =
        AllCores.map(TASKS, i -> AllCores.map(TASKS, k -> i * k).stream().mapToInt(k -> k).sum());
    assertThat(sums).isEqualTo(TASKS.stream().map(i -> 4950 * i).toList());
  }

  @Test
  void theFirstThatFailsIsTold() {
    Set<Integer> done = ConcurrentHashMap.newKeySet();
    assertThatThrownBy(
            () ->
                AllCores.map(
                    TASKS,
                    i -> i,
                    i -> {
                      if (i == 40 || i == 90) {
                        throw new IllegalStateException("task " + i);
                      }
                      return done.add(i);
                    }))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("task 40");
    // The rest was not broken off.
    assertThat(done).hasSize(98);
  }
}
