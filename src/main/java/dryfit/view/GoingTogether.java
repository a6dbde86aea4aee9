package dryfit.view;

import dryfit.fit.order.Assembling;
import dryfit.fit.order.Stuck;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.util.Duration;

/**
 * Whether the chair on the bench can be put together at all, found out while nobody is changing it:
 * each joint may fit and the whole still lock. Takes a second, or ten for a chair of many parts.
 */
final class GoingTogether {
  static final Duration QUIET = Duration.millis(900);

  private final PauseTransition quiet = new PauseTransition(QUIET);
  private final Errands errands;
  private final Consumer<Answer> told;
  private final ReadOnlyBooleanWrapper looking = new ReadOnlyBooleanWrapper();
  private Optional<Answer> answer = Optional.empty();
  private volatile long wanted;

  /**
   * @param of the chair that was looked at
   * @param stuck what holds; nothing if all comes together
   */
  record Answer(Shown of, List<Stuck> stuck) {}

  /**
   * @param trouble told of faults
   * @param told of each answer, on the window's thread, as long as its chair is on the bench
   */
  GoingTogether(Consumer<Throwable> trouble, Consumer<Answer> told) {
    this.errands = new Errands("whether it goes together", trouble, () -> {});
    this.told = told;
  }

  /** Whether the answer is still to come. */
  ReadOnlyBooleanProperty looking() {
    return looking.getReadOnlyProperty();
  }

  /** A chair is on the bench, perhaps the same with its findings. */
  void show(Shown shown) {
    wanted = shown.number();
    if (answer.filter(a -> a.of().is(shown)).isPresent()) {
      told.accept(answer.get());
      return;
    }
    quiet.stop();
    // What does not fit is told as that; nobody puts it together.
    looking.set(shown.fit().isPresent() && shown.report().fits());
    if (looking.get()) {
      quiet.setOnFinished(e -> errands.run("order", () -> look(shown)));
      quiet.playFromStart();
    }
  }

  private void look(Shown shown) {
    try {
      List<Stuck> stuck =
          Assembling.stuck(shown.chair(), new AsLongAs(() -> wanted == shown.number()));
      Platform.runLater(
          () -> {
            if (wanted == shown.number()) {
              looking.set(false);
              answer = Optional.of(new Answer(shown, stuck));
              told.accept(answer.get());
            }
          });
    } catch (CancellationException e) {
      // Another chair is on the bench by now.
      return;
    }
  }

  void close() {
    wanted = -1;
    quiet.stop();
    errands.close();
  }
}
