package dryfit.view;

import dryfit.app.Draft;
import dryfit.app.KeepFailure;
import dryfit.app.Keeping;
import dryfit.app.Kept;
import dryfit.app.KernelChoice;
import dryfit.app.LiveFit;
import dryfit.app.OnDisk;
import dryfit.app.Saving;
import dryfit.app.StateFolder;
import dryfit.app.Version;
import dryfit.build.Shelf;
import dryfit.document.Design;
import dryfit.document.Design.Waiver;
import dryfit.document.Document;
import dryfit.document.Problem;
import dryfit.document.Reading;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/**
 * The document that is open, and what comes of it. It is changed on one thread, built and fitted on
 * another, and what takes long without being the chair itself is done on a third. What the maker
 * asks for meanwhile is gathered and built in one go, so the newest wins. Every method is called on
 * the window's thread and returns at once; properties change on it.
 */
final class Session {
  /** How long closing waits for work to be kept, milliseconds. */
  private static final long LAST_WORDS = 3000;

  private final Deque<Waiting> wishes = new ArrayDeque<>();
  private final Thread worker;
  private final LiveFit live;
  private final Errands errands;
  private final Variants variants;
  private final ShownMaker maker;
  private final Watch watch;
  private final Kept kept;

  // Guarded by the wishes, like them.
  private boolean closed;
  private boolean granting;
  private long asked;
  private long answered;

  // Of the worker's thread alone.
  private Draft draft;
  private Draft.Drag drag;
  private Optional<Keeping> keeping = Optional.empty();

  // Of the thread that fits alone.
  private Shown newest;

  private final ReadOnlyObjectWrapper<Shown> shown = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyObjectWrapper<List<Problem>> problems =
      new ReadOnlyObjectWrapper<>(List.of());
  private final ReadOnlyObjectWrapper<Optional<Unbuilt>> unbuilt =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<Kept.Work>> left =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<OnDisk> onDisk = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");
  private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
  private final ReadOnlyObjectWrapper<State> state =
      new ReadOnlyObjectWrapper<>(State.of(Optional.empty()));

  /**
   * How the draft stands.
   *
   * @param file where it is saved, if anywhere
   * @param unsaved whether there is something to save
   * @param undoable what would be taken back, in words
   * @param redoable what would be done again
   */
  record State(
      Optional<Path> file, boolean unsaved, Optional<String> undoable, Optional<String> redoable) {
    static State of(Optional<Draft> draft) {
      return draft
          .map(d -> new State(d.file(), d.unsaved(), d.undoable(), d.redoable()))
          .orElse(new State(Optional.empty(), false, Optional.empty(), Optional.empty()));
    }
  }

  /** Something the maker asked for; answers whether there is something new to build. */
  @FunctionalInterface
  private interface Wish {
    boolean grant();
  }

  /**
   * @param what wishes of the same kind that follow each other are one: the last; empty is no kind
   */
  private record Waiting(String what, Wish wish) {}

  /**
   * @param surfaces whether surfaces for the graphics are wanted
   * @param folder where unsaved work is kept
   * @param ahead what has been built of the first chair already
   */
  Session(boolean surfaces, StateFolder folder, Supplier<Shelf> ahead) {
    this.kept = new Kept(folder);
    this.maker = new ShownMaker(surfaces);
    this.variants = new Variants(surfaces);
    this.live = new LiveFit(KernelChoice.USUAL.kernel(), ahead, this::told);
    this.errands = new Errands("errands", this::fault, () -> Platform.runLater(this::isBusy));
    this.watch = new Watch(() -> Platform.runLater(this::look));
    worker = new Thread(this::work, "building and fitting");
    worker.setDaemon(true);
    worker.start();
  }

  /** The newest chair; null until there is one. */
  ReadOnlyObjectProperty<Shown> shown() {
    return shown.getReadOnlyProperty();
  }

  /** What keeps the newest document from being a chair. */
  ReadOnlyObjectProperty<List<Problem>> problems() {
    return problems.getReadOnlyProperty();
  }

  ReadOnlyBooleanProperty busy() {
    return busy.getReadOnlyProperty();
  }

  ReadOnlyObjectProperty<State> state() {
    return state.getReadOnlyProperty();
  }

  void open(Path file) {
    wish(
        () -> {
          Reading<Draft> reading = Draft.open(file);
          if (reading instanceof Reading.Refused<Draft> refused) {
            refuse(refused.problems());
            return false;
          }
          take(((Reading.Accepted<Draft>) reading).value());
          tellLeft(kept.found(file));
          return true;
        });
  }

  private void take(Draft next) {
    letGo();
    live.cancel();
    draft = next;
    keeping = Optional.of(kept.keep(next, this::say));
  }

  /** What is not saved stays kept, and is offered when the chair is opened again. */
  private void letGo() {
    keeping.ifPresent(
        k -> {
          if (draft.unsaved()) {
            k.leave();
          } else {
            k.close();
          }
        });
    keeping = Optional.empty();
  }

  private void tellLeft(List<Kept.Found> found) {
    for (Kept.Found one : found) {
      if (one instanceof Kept.Work work) {
        Platform.runLater(() -> left.set(Optional.of(work)));
        return;
      }
      say(((Kept.Broken) one).message());
      kept.discard(one);
    }
    Platform.runLater(() -> left.set(Optional.empty()));
  }

  private void say(String text) {
    Platform.runLater(() -> said.set(text));
  }

  /** Unsaved work that an earlier run left behind of the chair that was opened. */
  ReadOnlyObjectProperty<Optional<Kept.Work>> left() {
    return left.getReadOnlyProperty();
  }

  /** What the maker should be told, newest. */
  ReadOnlyStringProperty said() {
    return said.getReadOnlyProperty();
  }

  /** Puts work that was left behind into the chair that is open. */
  void bringBack(Kept.Work work) {
    left.set(Optional.empty());
    wish(
        () -> {
          keeping.ifPresent(k -> k.bringBack(work));
          return keeping.isPresent();
        });
  }

  void discard(Kept.Work work) {
    left.set(Optional.empty());
    wish(
        () -> {
          kept.discard(work);
          return false;
        });
  }

  /** Begins a chair that has no file yet. */
  void begin(String name, String text) {
    wish(
        () -> {
          take(Draft.begun(name, text));
          return true;
        });
  }

  /** Goes on with a chair that never had a file. */
  void goOn(String name, Kept.Work work) {
    wish(
        () -> {
          take(Draft.begun(name, work.text()));
          keeping.ifPresent(k -> k.bringBack(work));
          return true;
        });
  }

  /**
   * Looks for work that was left unsaved, once what is on the bench has been put away.
   *
   * @param then told of it, the latest first
   */
  void leave(Consumer<List<Kept.Work>> then) {
    wish(
        () -> {
          letGo();
          draft = null;
          live.cancel();
          synchronized (wishes) {
            answered = asked;
          }
          List<Kept.Work> all =
              kept.found().stream()
                  .filter(Kept.Work.class::isInstance)
                  .map(Kept.Work.class::cast)
                  .toList();
          Platform.runLater(() -> then.accept(all));
          return false;
        });
  }

  /** Looks at once how the file stands. */
  void lookAgain() {
    look();
  }

  void choose(String variant) {
    wish(() -> draft != null && draft.choose(variant));
  }

  /** Builds designs to be seen beside each other; those that cannot be built are left out. */
  void variants(
      Document of, List<String> names, Design.LengthUnit told, Consumer<Variants.Beside> then) {
    workOut("variants", () -> variants.of(of, names, told), then);
  }

  /**
   * Gives a dimension another value.
   *
   * @param entry as a maker writes it
   * @param answer told no problem if the document takes it, otherwise all that are in its way
   */
  void dimension(String name, String entry, Consumer<List<Problem>> answer) {
    wish(
        "dimension " + name,
        () -> {
          if (draft == null) {
            return false;
          }
          Reading<Document> reading = draft.dimensionHere(name, entry);
          List<Problem> why =
              reading instanceof Reading.Refused<Document> refused ? refused.problems() : List.of();
          Platform.runLater(() -> answer.accept(why));
          return why.isEmpty();
        });
  }

  /**
   * Accepts a finding; a step that can be taken back.
   *
   * @param joint name as in the document, may be empty
   * @param part likewise
   * @param answer told nothing if the document takes it, otherwise why it does not
   */
  void waive(
      String check, String joint, String part, String because, Consumer<Optional<String>> answer) {
    change(d -> d.waive(check, joint, part, because), answer);
  }

  /**
   * Accepts findings no longer; a step that can be taken back.
   *
   * @param waivers what of the document accepts them
   */
  void acceptNoLonger(String check, Collection<Waiver> waivers, Consumer<Optional<String>> answer) {
    change(d -> d.acceptNoLonger(check, waivers), answer);
  }

  /** Adds a variant that is as the chosen one is now, and chooses it. */
  void addVariant(String name, Consumer<Optional<String>> answer) {
    change(d -> d.addVariant(name, ""), answer);
  }

  private void change(Function<Draft, Reading<Document>> how, Consumer<Optional<String>> answer) {
    wish(
        () -> {
          if (draft == null) {
            return false;
          }
          Optional<String> why =
              how.apply(draft) instanceof Reading.Refused<Document> refused
                  ? Optional.of(Words.reason(refused.problems().get(0)))
                  : Optional.empty();
          Platform.runLater(() -> answer.accept(why));
          return why.isEmpty();
        });
  }

  /** Until the hand is lifted, all changes are one step. */
  void press() {
    wish(
        () -> {
          if (draft != null) {
            drag = draft.drag();
          }
          return false;
        });
  }

  void lift() {
    wish(
        () -> {
          if (drag != null) {
            drag.close();
            drag = null;
          }
          return false;
        });
  }

  void undo() {
    wish(() -> draft != null && draft.undo());
  }

  void redo() {
    wish(() -> draft != null && draft.redo());
  }

  /**
   * Saves to the chair's file.
   *
   * @param answer told what came of it
   */
  void save(Consumer<Saving> answer) {
    saving(Draft::save, answer);
  }

  void saveAs(Path file, Consumer<Saving> answer) {
    saving(d -> d.saveAs(file), answer);
  }

  /** Saves over what someone else has written. */
  void keepMine(OnDisk.Changed theirs, Consumer<Saving> answer) {
    saving(
        d -> {
          d.keepMine(theirs);
          return d.save();
        },
        answer);
  }

  /** Goes on with what someone else has written; a step that can be taken back. */
  void takeTheirs(OnDisk.Changed theirs) {
    wish(
        () -> {
          draft.takeTheirs(theirs);
          return true;
        });
  }

  /** Goes on with what is here; saving will replace what someone else has written. */
  void keep(OnDisk.Changed theirs) {
    wish(
        () -> {
          draft.keepMine(theirs);
          return false;
        });
  }

  /** How the file stands on the disk, where it is not as it was; null at first. */
  ReadOnlyObjectProperty<OnDisk> onDisk() {
    return onDisk.getReadOnlyProperty();
  }

  /** Looks again, on the draft's thread, so that what was just saved here is no surprise. */
  private void look() {
    wish(
        "look",
        () -> {
          Optional<OnDisk> there =
              Optional.ofNullable(draft).flatMap(Draft::look).map(l -> l.now());
          there.ifPresent(now -> Platform.runLater(() -> onDisk.set(now)));
          return false;
        });
  }

  private void saving(Function<Draft, Saving> how, Consumer<Saving> answer) {
    wish(
        () -> {
          if (draft != null) {
            Saving saved = how.apply(draft);
            Platform.runLater(() -> answer.accept(saved));
          }
          return false;
        });
  }

  /**
   * Has something worked out, without holding up the chair.
   *
   * @param kind of what waits of one kind the newest is worked out; empty is no kind
   */
  <T> void workOut(String kind, Supplier<T> what, Consumer<T> then) {
    busy.set(true);
    errands.run(
        kind,
        () -> {
          T done = what.get();
          Platform.runLater(() -> then.accept(done));
        });
  }

  /** Ends the threads; waits until unsaved work is kept. */
  void close() {
    live.close();
    errands.close();
    watch.close();
    synchronized (wishes) {
      closed = true;
      wishes.notifyAll();
    }
    try {
      worker.join(LAST_WORDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  // ---- the worker ----

  private void wish(Wish wish) {
    wish("", wish);
  }

  private void wish(String what, Wish wish) {
    busy.set(true);
    synchronized (wishes) {
      if (!what.isEmpty() && !wishes.isEmpty() && wishes.getLast().what().equals(what)) {
        wishes.removeLast();
      }
      wishes.add(new Waiting(what, wish));
      wishes.notifyAll();
    }
  }

  private void work() {
    while (true) {
      List<Waiting> taken;
      synchronized (wishes) {
        try {
          while (wishes.isEmpty() && !closed) {
            wishes.wait();
          }
        } catch (InterruptedException e) {
          return;
        }
        if (closed) {
          break;
        }
        taken = new ArrayList<>(wishes);
        wishes.clear();
        granting = true;
      }
      grant(taken);
      synchronized (wishes) {
        granting = false;
      }
      watch.over(Optional.ofNullable(draft).flatMap(Draft::look));
      State state = State.of(Optional.ofNullable(draft));
      Platform.runLater(() -> idle(state));
    }
    letGo();
    kept.close();
  }

  private void grant(List<Waiting> taken) {
    try {
      boolean build = false;
      for (Waiting one : taken) {
        build |= one.wish().grant();
      }
      if (build) {
        build();
      }
    } catch (RuntimeException | StackOverflowError fault) {
      fault(fault);
    }
  }

  /** Tells of a fault of ours; from any thread. */
  void fault(Throwable fault) {
    String where =
        KeepFailure.keep(fault, String.valueOf(fault))
            .map(folder -> "; details are in " + folder)
            .orElse("");
    say("This is our fault, not yours: " + fault.getMessage() + where);
  }

  private void idle(State now) {
    state.set(now);
    isBusy();
  }

  private void isBusy() {
    synchronized (wishes) {
      busy.set(!wishes.isEmpty() || granting || asked != answered || !errands.idle());
    }
  }

  /** Has the newest version built; drafts count each for itself, so the number is one of ours. */
  private void build() {
    long number;
    synchronized (wishes) {
      number = ++asked;
    }
    Version now = draft.now();
    live.show(new Version(number, now.text(), now.variant(), now.reading()));
  }

  /** On the thread that fits. */
  private void told(LiveFit.Result result) {
    if (result instanceof LiveFit.Built built) {
      if (newest != null && !newest.document().file().equals(built.document().file())) {
        // What clashed in another chair is none of this one's.
        maker.keep(List.of());
      }
      newest = maker.built(built.number(), built.document(), built.chair());
      show(newest);
      return;
    }
    if (result instanceof LiveFit.Fitted fitted) {
      newest = newest.fitted(fitted.report());
      maker.keep(newest.clashes());
      show(newest);
    } else if (result instanceof LiveFit.Refused refused) {
      refuse(refused.problems());
      Platform.runLater(() -> unbuilt.set(Unbuilt.of(refused.version())));
    } else if (result instanceof LiveFit.Failed failed) {
      fault(failed.fault());
    }
    synchronized (wishes) {
      answered = result.number();
    }
    Platform.runLater(this::isBusy);
  }

  private void show(Shown made) {
    Platform.runLater(
        () -> {
          problems.set(List.of());
          unbuilt.set(Optional.empty());
          shown.set(made);
        });
  }

  /** A sound document whose chair cannot be built, until one can that came later. */
  ReadOnlyObjectProperty<Optional<Unbuilt>> unbuilt() {
    return unbuilt.getReadOnlyProperty();
  }

  private void refuse(List<Problem> found) {
    Platform.runLater(() -> problems.set(found));
  }
}
