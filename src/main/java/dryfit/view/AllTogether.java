package dryfit.view;

import dryfit.fit.order.Assembling;
import dryfit.fit.order.Stuck;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import javafx.animation.PauseTransition;
import javafx.application.Platform;

/**
 * Which of several designs can be put together, found out one after the other: each joint of a
 * design may fit and the whole still lock.
 */
final class AllTogether {
  private final PauseTransition quiet = new PauseTransition(GoingTogether.QUIET);
  private final Errands errands;
  private final Consumer<List<String>> told;
  private volatile List<String> answers = List.of();

  /**
   * @param trouble told of faults
   * @param told of what is known so far, one for each design, on the window's thread
   */
  AllTogether(Consumer<Throwable> trouble, Consumer<List<String>> told) {
    this.errands = new Errands("which go together", trouble, () -> {});
    this.told = told;
  }

  /** Other designs are beside each other now. */
  void show(List<Shown> designs) {
    List<String> now = new ArrayList<>();
    for (Shown design : designs) {
      // What does not fit is told as that; nobody puts it together.
      now.add(design.report().fits() ? "trying …" : "not tried");
    }
    answers = now;
    told.accept(now);
    // Not while someone is still changing them.
    quiet.setOnFinished(e -> look(now, designs));
    quiet.playFromStart();
  }

  private void look(List<String> of, List<Shown> designs) {
    for (int i = 0; i < designs.size(); i++) {
      if (designs.get(i).report().fits()) {
        int design = i;
        errands.run("", () -> look(of, design, designs.get(design)));
      }
    }
  }

  private void look(List<String> of, int design, Shown shown) {
    try {
      List<Stuck> stuck = Assembling.stuck(shown.chair(), new AsLongAs(() -> answers == of));
      long lock = stuck.stream().flatMap(s -> s.parts().stream()).distinct().count();
      String answer = stuck.isEmpty() ? "yes" : "no, " + lock + " parts lock";
      Platform.runLater(
          () -> {
            if (answers == of) {
              of.set(design, answer);
              told.accept(of);
            }
          });
    } catch (CancellationException e) {
      // Others are beside each other by now.
      return;
    }
  }

  void close() {
    answers = List.of();
    quiet.stop();
    errands.close();
  }
}
