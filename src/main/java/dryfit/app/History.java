package dryfit.app;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * The steps that can be taken back, and those taken back that can be done again. It remembers as
 * much text as {@link #MOST} and forgets the oldest steps first.
 */
final class History {
  /** Characters of text remembered: a thousand steps in a document of usual size. */
  static final int MOST = 32_000_000;

  /** What is shown at one moment: text and variant. */
  record Moment(String text, String variant) {}

  /** A step: what it is called, and what was before and after it. */
  record Step(String what, Moment before, Moment after) {
    int size() {
      return before.text().length();
    }
  }

  private final Deque<Step> done = new ArrayDeque<>();
  private final Deque<Step> undone = new ArrayDeque<>();
  private long size;

  /** A new step; what was taken back before it cannot be done again. */
  void add(Step step) {
    undone.clear();
    done.push(step);
    size += step.size();
    while (size > MOST && done.size() > 1) {
      size -= done.removeLast().size();
    }
  }

  Optional<Step> undo() {
    Optional<Step> step = Optional.ofNullable(done.poll());
    step.ifPresent(
        s -> {
          undone.push(s);
          size -= s.size();
        });
    return step;
  }

  Optional<Step> redo() {
    Optional<Step> step = Optional.ofNullable(undone.poll());
    step.ifPresent(
        s -> {
          done.push(s);
          size += s.size();
        });
    return step;
  }

  Optional<String> undoable() {
    return Optional.ofNullable(done.peek()).map(Step::what);
  }

  Optional<String> redoable() {
    return Optional.ofNullable(undone.peek()).map(Step::what);
  }
}
