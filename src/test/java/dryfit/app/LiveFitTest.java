package dryfit.app;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.app.LiveFit.Built;
import dryfit.app.LiveFit.Failed;
import dryfit.app.LiveFit.Fitted;
import dryfit.app.LiveFit.Refused;
import dryfit.app.LiveFit.Result;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import dryfit.solid.Csg;
import dryfit.solid.Kernel;
import dryfit.solid.exact.ExactKernel;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(120)
class LiveFitTest {
  private final LinkedBlockingQueue<Result> results = new LinkedBlockingQueue<>();
  private final Draft draft = Draft.begun("new chair", Benches.TEXT);
  private LiveFit live = new LiveFit(new ExactKernel(), results::add);

  @AfterEach
  void end() {
    live.close();
  }

  private List<Result> until(Predicate<Result> last) throws InterruptedException {
    List<Result> all = new ArrayList<>();
    do {
      all.add(results.take());
    } while (!last.test(all.get(all.size() - 1)));
    return all;
  }

  private static List<Vec3> points(Mesh mesh) {
    return IntStream.range(0, mesh.pointCount()).mapToObj(mesh::point).toList();
  }

  private static Predicate<Result> fitted(long number) {
    return r -> r instanceof Fitted f && f.number() == number;
  }

  @Test
  void theChairComesFirstAndItsFindingsAfterIt() throws InterruptedException {
    live.show(draft.now());
    List<Result> all = until(fitted(1));
    assertThat(all).hasSize(2);
    assertThat(((Built) all.get(0)).chair().parts()).hasSize(2);
    assertThat(((Fitted) all.get(1)).report().chair()).isSameAs(((Built) all.get(0)).chair());
  }

  @Test
  void inAFloodOfChangesTheLastOneWinsAndNoneComesAfterANewerOne() throws InterruptedException {
    draft.whenChanged(live::show);
    for (int i = 1; i <= 2000; i++) {
      draft.dimension("height", Double.toString(400 + i / 32.0));
    }
    long last = draft.now().number();
    List<Result> all = until(fitted(last));
    assertThat(all).extracting(Result::number).isSorted();
    assertThat(all.size()).isLessThan(2000);
    Fitted end = (Fitted) all.get(all.size() - 1);
    assertThat(end.document().text()).isEqualTo(draft.now().text());
    // 400 + 2000 / 32 = 462.5, the top of both posts.
    assertThat(end.report().chair().parts())
        .allSatisfy(
            part ->
                assertThat(points(part.placedMesh()).stream().mapToDouble(Vec3::z).max())
                    .hasValue(462.5));
    while (!live.idle()) {
      Thread.onSpinWait();
    }
    assertThat(results).isEmpty();
  }

  @Test
  void aWarmShelfGivesTheChairAnEmptyOneGives() throws InterruptedException {
    draft.whenChanged(live::show);
    draft.dimension("height", "470");
    until(fitted(2));
    draft.undo();
    Fitted warm = (Fitted) until(fitted(3)).get(1);
    live.close();
    live = new LiveFit(new ExactKernel(), results::add);
    live.show(draft.now());
    Fitted cold = (Fitted) until(fitted(3)).get(1);
    assertThat(points(warm.report().chair().parts().get(0).solid().mesh()))
        .isEqualTo(points(cold.report().chair().parts().get(0).solid().mesh()));
  }

  @Test
  void anUnsoundTextGivesItsProblems() throws InterruptedException {
    draft.text("write", Benches.TEXT.replace("\"height\"]", "\"hight\"]"));
    live.show(draft.now());
    Refused refused = (Refused) results.take();
    assertThat(refused.number()).isEqualTo(draft.now().number());
    assertThat(refused.problems()).isNotEmpty();
  }

  @Test
  void theVariantThatIsChosenIsBuilt() throws InterruptedException {
    draft.choose("low");
    live.show(draft.now());
    Built built = (Built) results.take();
    assertThat(built.chair().design().variant()).isEqualTo("low");
  }

  /** Waits at the gate before every solid. */
  private static Kernel gated(CountDownLatch reached, CountDownLatch gate) {
    ExactKernel exact = new ExactKernel();
    return new Kernel() {
      @Override
      public String name() {
        return "gated";
      }

      @Override
      public Mesh evaluate(Csg expression) {
        reached.countDown();
        try {
          gate.await();
        } catch (InterruptedException e) {
          throw new IllegalStateException(e);
        }
        return exact.evaluate(expression);
      }
    };
  }

  @Test
  void whoAsksNeverWaitsAndWhatIsCancelledIsNotTold() throws InterruptedException {
    CountDownLatch reached = new CountDownLatch(1);
    CountDownLatch gate = new CountDownLatch(1);
    live.close();
    live = new LiveFit(gated(reached, gate), results::add);
    live.show(draft.now());
    reached.await();
    // The build stands still, and yet these return.
    draft.dimension("height", "450");
    live.show(draft.now());
    live.cancel();
    assertThat(live.idle()).isFalse();
    gate.countDown();
    while (!live.idle()) {
      Thread.onSpinWait();
    }
    assertThat(results).isEmpty();
    draft.dimension("height", "460");
    live.show(draft.now());
    assertThat(until(fitted(3))).extracting(Result::number).containsOnly(3L);
  }

  @Test
  void aFaultOfOursIsToldAndTheNextVersionIsBuilt() throws InterruptedException {
    ExactKernel exact = new ExactKernel();
    List<String> calls = Collections.synchronizedList(new ArrayList<>());
    live.close();
    live =
        new LiveFit(
            new Kernel() {
              @Override
              public String name() {
                return "failing at first";
              }

              @Override
              public Mesh evaluate(Csg expression) {
                calls.add("call");
                if (draftIsFirst()) {
                  throw new IllegalStateException("made to fail");
                }
                return exact.evaluate(expression);
              }

              private boolean draftIsFirst() {
                return draft.now().number() == 1;
              }
            },
            results::add);
    live.show(draft.now());
    Result first = results.poll(60, TimeUnit.SECONDS);
    assertThat(first).isInstanceOf(Failed.class);
    draft.dimension("height", "450");
    live.show(draft.now());
    assertThat(until(fitted(2))).hasSize(2);
    assertThat(calls).isNotEmpty();
  }
}
