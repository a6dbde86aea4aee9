package dryfit.view;

import dryfit.app.Draft;
import dryfit.app.KeepFailure;
import dryfit.app.Keeping;
import dryfit.app.Kept;
import dryfit.app.KernelChoice;
import dryfit.app.OnDisk;
import dryfit.app.Saving;
import dryfit.app.StateFolder;
import dryfit.app.Version;
import dryfit.build.Chair;
import dryfit.build.ChairBuilder;
import dryfit.build.Part;
import dryfit.build.Shelf;
import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.document.Problem;
import dryfit.document.Reading;
import dryfit.fit.DryFit;
import dryfit.fit.FitReport;
import dryfit.geometry.Box;
import dryfit.geometry.Vec3;
import dryfit.solid.Solid;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/**
 * The document that is open, and what comes of it. All is read, built and fitted on one thread of
 * its own; what the maker asks for meanwhile is gathered and done in one go, so the newest wins.
 * Every method is called on the window's thread and returns at once; properties change on it.
 */
final class Session {
  /** How long closing waits for work to be kept, milliseconds. */
  private static final long LAST_WORDS = 3000;

  private Shelf shelf = new Shelf(KernelChoice.USUAL.kernel());
  private final Deque<Waiting> wishes = new ArrayDeque<>();
  private final Thread worker;
  private final boolean surfaces;
  private final Kept kept;
  private boolean closed;

  // Of the worker's thread alone.
  private Draft draft;
  private Draft.Drag drag;
  private Optional<Keeping> keeping = Optional.empty();
  private long builds;
  private IdentityHashMap<Solid, PartShape> shapes = new IdentityHashMap<>();

  private final ReadOnlyObjectWrapper<Shown> shown = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyObjectWrapper<List<Problem>> problems =
      new ReadOnlyObjectWrapper<>(List.of());
  private final ReadOnlyObjectWrapper<Optional<Kept.Work>> left =
      new ReadOnlyObjectWrapper<>(Optional.empty());
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
   */
  Session(boolean surfaces, StateFolder folder) {
    this.surfaces = surfaces;
    this.kept = new Kept(folder);
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
    draft = next;
    keeping = Optional.of(kept.keep(next, this::say));
  }

  /** What is not saved stays kept, and is offered when the chair is opened again. */
  private void letGo() {
    keeping.ifPresent(
        k -> {
          if (draft.unsaved()) {
            k.now();
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

  void choose(String variant) {
    wish(() -> draft != null && draft.choose(variant));
  }

  /**
   * Builds the chair as drawn and its first variants, to be seen beside each other; those that
   * cannot be built are left out.
   */
  void variants(int most, Consumer<List<Shown>> then) {
    wish(
        "variants",
        () -> {
          Optional<Document> document = Optional.ofNullable(draft).flatMap(d -> d.now().document());
          List<Shown> all = new ArrayList<>();
          document.ifPresent(
              of ->
                  Stream.concat(Stream.of(Design.AS_DRAWN), of.variants().stream())
                      .limit(most)
                      .forEach(variant -> built(of, variant).ifPresent(all::add)));
          Platform.runLater(() -> then.accept(all));
          return false;
        });
  }

  private Optional<Shown> built(Document of, String variant) {
    return of.design(variant) instanceof Reading.Accepted<Design> design
            && ChairBuilder.build(design.value(), shelf) instanceof Reading.Accepted<Chair> chair
        ? Optional.of(shown(of, chair.value()))
        : Optional.empty();
  }

  /**
   * Gives a dimension another value.
   *
   * @param entry as a maker writes it
   * @param answer told nothing if the document takes it, otherwise why it does not
   */
  void dimension(String name, String entry, Consumer<Optional<String>> answer) {
    wish(
        "dimension " + name,
        () -> {
          if (draft == null) {
            return false;
          }
          Reading<Document> reading = draft.dimensionHere(name, entry);
          Optional<String> why =
              reading instanceof Reading.Refused<Document> refused
                  ? Optional.of(reason(refused.problems().get(0)))
                  : Optional.empty();
          Platform.runLater(() -> answer.accept(why));
          return why.isEmpty();
        });
  }

  /** The reason without the place: the maker is looking at it. */
  private static String reason(Problem problem) {
    String place = problem.pointer() + ": ";
    String message = problem.message();
    return message.startsWith(place) ? message.substring(place.length()) : message;
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
   * Has something worked out about the chair, after what was asked for before.
   *
   * @param kind of wishes of one kind that wait the last is granted; empty is no kind
   */
  <T> void workOut(String kind, Supplier<T> what, Consumer<T> then) {
    wish(
        kind,
        () -> {
          T done = what.get();
          Platform.runLater(() -> then.accept(done));
          return false;
        });
  }

  /** Ends the thread; waits until unsaved work is kept. */
  void close() {
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
      }
      grant(taken);
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
      // What a build that broke off has left on the shelf is not to be trusted.
      shelf = new Shelf(KernelChoice.USUAL.kernel());
      String where =
          KeepFailure.keep(fault, String.valueOf(fault))
              .map(folder -> "; details are in " + folder)
              .orElse("");
      say("This is our fault, not yours: " + fault.getMessage() + where);
    }
  }

  private void idle(State now) {
    state.set(now);
    synchronized (wishes) {
      busy.set(!wishes.isEmpty());
    }
  }

  private void build() {
    Version version = draft.now();
    if (version.reading() instanceof Reading.Refused<Document> refused) {
      refuse(refused.problems());
      return;
    }
    Document document = version.document().orElseThrow();
    Reading<Design> design = document.design(version.variant());
    if (design instanceof Reading.Refused<Design> refused) {
      refuse(refused.problems());
      return;
    }
    Reading<Chair> built = ChairBuilder.build(((Reading.Accepted<Design>) design).value(), shelf);
    if (built instanceof Reading.Refused<Chair> refused) {
      refuse(refused.problems().stream().map(p -> p.onLine(document.lineOf(p.pointer()))).toList());
      return;
    }
    Shown made = shown(document, ((Reading.Accepted<Chair>) built).value());
    Platform.runLater(
        () -> {
          problems.set(List.of());
          shown.set(made);
        });
  }

  private Shown shown(Document of, Chair chair) {
    IdentityHashMap<Solid, PartShape> next = new IdentityHashMap<>();
    List<PartShape> parts = new ArrayList<>();
    for (Part part : surfaces ? chair.parts() : List.<Part>of()) {
      PartShape known = shapes.get(part.solid());
      PartShape shape = known == null ? PartShape.of(part) : known.placed(part);
      next.put(part.solid(), shape);
      parts.add(shape);
    }
    shapes = next;
    Box bounds = bounds(chair);
    FitReport report = DryFit.of(chair);
    builds++;
    return new Shown(
        builds,
        of,
        report,
        parts,
        surfaces ? Clash.of(report) : List.of(),
        FloorPicture.of(chair, bounds),
        bounds);
  }

  private static Box bounds(Chair chair) {
    List<Vec3> corners = new ArrayList<>();
    for (Part part : chair.parts()) {
      Box box = part.placedMesh().bounds();
      corners.add(box.low());
      corners.add(box.high());
    }
    return Box.around(corners);
  }

  private void refuse(List<Problem> found) {
    Platform.runLater(() -> problems.set(found));
  }
}
