package dryfit.app;

import dryfit.app.History.Moment;
import dryfit.app.History.Step;
import dryfit.document.ChairFile;
import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.document.DocumentReader;
import dryfit.document.DocumentWriter;
import dryfit.document.Edits;
import dryfit.document.Reading;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * A chair document that is being changed. Every change, the choice of a variant too, is a step that
 * can be taken back and done again. The text keeps its notes, order and layout: only the letters a
 * change is about are written anew.
 *
 * <p>A draft belongs to one thread. What it hands out ({@link Version}, {@link OnDisk.Look}) may go
 * to any.
 */
public final class Draft {
  private final List<Consumer<Version>> listeners = new CopyOnWriteArrayList<>();
  private final History history = new History();
  private Optional<Path> path;
  private String name;

  /** What is known to stand on the disk; for a draft without a file, what it began with. */
  private ChairFile disk;

  private boolean unsaved;
  private Version now;

  /** The drag that is going on, null if none is. */
  private Drag drag;

  private Draft(Optional<Path> path, String name, ChairFile file, boolean unsaved) {
    this.path = path;
    this.name = name;
    this.disk = file;
    this.unsaved = unsaved;
    this.now = read(1, file.text(), Design.AS_DRAWN);
  }

  /**
   * A draft that has no file yet.
   *
   * @param name what to call it in messages until it has one
   */
  public static Draft begun(String name, String text) {
    return new Draft(Optional.empty(), name, new ChairFile(text, false), true);
  }

  /**
   * A draft of a file. One whose text is no sound chair opens all the same, for it can be mended;
   * refused is only what is no text.
   */
  public static Reading<Draft> open(Path path) {
    Reading<ChairFile> file = ChairFile.read(path);
    return file instanceof Reading.Accepted<ChairFile> accepted
        ? new Reading.Accepted<>(
            new Draft(Optional.of(path), path.toString(), accepted.value(), false))
        : new Reading.Refused<>(((Reading.Refused<ChairFile>) file).problems());
  }

  // ---- what it says ----

  /** What the draft says now. */
  public Version now() {
    return now;
  }

  /** The file it is saved to, as the user named it. */
  public Optional<Path> file() {
    return path;
  }

  /** What to call it: its file, or the name it was begun under. */
  public String name() {
    return name;
  }

  /** Whether the file says something else, or there is none yet. */
  public boolean unsaved() {
    return unsaved || !now.text().equals(disk.text());
  }

  /** Fingerprint of what was last read from or written to the file. */
  String knownOnDisk() {
    return disk.fingerprint();
  }

  /**
   * Asks to be told of every change, on the draft's thread, and when it has been saved.
   *
   * @return stops it
   */
  public Runnable whenChanged(Consumer<Version> listener) {
    listeners.add(listener);
    return () -> listeners.remove(listener);
  }

  // ---- changes ----

  /**
   * Gives a dimension another value, where the value in force is written ({@link Edits#dimension}).
   *
   * @param entry as a maker writes it
   * @return the document, or why the draft stays as it was
   */
  public Reading<Document> dimension(String dimension, String entry) {
    return edit(
        dimension + " to " + entry.strip(),
        document -> Edits.dimension(document, now.variant(), dimension, entry));
  }

  /** Gives a dimension a value of its own in the variant that is chosen. */
  public Reading<Document> dimensionHere(String dimension, String entry) {
    return now.variant().equals(Design.AS_DRAWN)
        ? dimension(dimension, entry)
        : edit(
            dimension + " to " + entry.strip() + " in “" + now.variant() + "”",
            document -> Edits.dimensionIn(document, now.variant(), dimension, entry));
  }

  /** Adds a variant that is as the chosen one is now, and chooses it. */
  public Reading<Document> addVariant(String variant, String note) {
    if (!(now.reading() instanceof Reading.Accepted<Document> accepted)) {
      return now.reading();
    }
    Reading<Document> edited = Edits.variantLike(accepted.value(), now.variant(), variant, note);
    if (edited instanceof Reading.Accepted<Document> sound) {
      step("new variant “" + variant + "”", sound.value().text(), variant, edited);
    }
    return edited;
  }

  /**
   * Accepts a finding ({@link Edits#waiver}).
   *
   * @param joint name as in the document, may be empty
   * @param part likewise
   */
  public Reading<Document> waive(String check, String joint, String part, String because) {
    return edit("accept " + check, document -> Edits.waiver(document, check, joint, part, because));
  }

  /**
   * Accepts findings no longer ({@link Edits#withoutWaivers}).
   *
   * @param check what was accepted, to call the step by
   */
  public Reading<Document> acceptNoLonger(String check, Collection<Design.Waiver> waivers) {
    return edit(
        "accept " + check + " no longer", document -> Edits.withoutWaivers(document, waivers));
  }

  /**
   * Any other change of a sound document.
   *
   * @param what what to call it where it can be taken back
   * @return what {@code change} gave; if it was refused, the draft stays as it was. If the draft is
   *     unsound already, its problems, and {@code change} is not asked
   */
  public Reading<Document> edit(String what, Function<Document, Reading<Document>> change) {
    if (!(now.reading() instanceof Reading.Accepted<Document> accepted)) {
      return now.reading();
    }
    Reading<Document> edited = change.apply(accepted.value());
    if (edited instanceof Reading.Accepted<Document> sound) {
      step(what, sound.value().text(), now.variant(), edited);
    }
    return edited;
  }

  /** Replaces the whole text by one that need not be sound: the maker may be writing. */
  public Reading<Document> text(String what, String text) {
    String plain = ChairFile.of(text).text();
    if (!plain.equals(now.text())) {
      step(what, plain, now.variant(), DocumentReader.read(name, plain));
    }
    return now.reading();
  }

  /**
   * Chooses a variant.
   *
   * @param variant one of the document's, or {@link Design#AS_DRAWN}; another is not taken
   * @return whether it is chosen now
   */
  public boolean choose(String variant) {
    boolean known = isKnown(variant, now.reading());
    if (known) {
      step("show “" + variant + "”", now.text(), variant, now.reading());
    }
    return known;
  }

  /**
   * Begins a drag: until it ends, all changes are one step. A drag that was still going on ends.
   */
  public Drag drag() {
    endDrag();
    drag = new Drag(this, moment());
    return drag;
  }

  /** Changes that are one step, such as those along the way of a slider. */
  public static final class Drag implements AutoCloseable {
    private final Draft draft;
    private final Moment before;
    private String what = "";

    private Drag(Draft draft, Moment before) {
      this.draft = draft;
      this.before = before;
    }

    /** Ends it; the last change stays. */
    @Override
    public void close() {
      if (draft.drag == this) {
        draft.endDrag();
      }
    }

    /** Ends it; everything is again as it was at the beginning, and there is no step. */
    public void cancel() {
      if (draft.drag == this) {
        draft.drag = null;
        draft.show(before);
      }
    }
  }

  private void endDrag() {
    Drag ended = drag;
    drag = null;
    if (ended != null && !ended.before.equals(moment())) {
      history.add(new Step(ended.what, ended.before, moment()));
      tell();
    }
  }

  // ---- taking back ----

  /** What would be taken back, in words; empty if nothing can be. */
  public Optional<String> undoable() {
    return drag != null && !drag.before.equals(moment())
        ? Optional.of(drag.what)
        : history.undoable();
  }

  /** What would be done again. */
  public Optional<String> redoable() {
    return history.redoable();
  }

  /**
   * Takes the last step back; a drag that is going on ends and is that step.
   *
   * @return whether there was one
   */
  public boolean undo() {
    endDrag();
    Optional<Step> step = history.undo();
    step.ifPresent(s -> show(s.before()));
    return step.isPresent();
  }

  /** Does again what was last taken back. */
  public boolean redo() {
    endDrag();
    Optional<Step> step = history.redo();
    step.ifPresent(s -> show(s.after()));
    return step.isPresent();
  }

  // ---- the disk ----

  /** Saves to the draft's file, unless someone else has changed it since. */
  public Saving save() {
    endDrag();
    if (path.isEmpty()) {
      return new Saving.NeedsName();
    }
    OnDisk there = look().orElseThrow().now();
    if (there instanceof OnDisk.Changed theirs && theirs.file().text().equals(now.text())) {
      takeTheirs(theirs);
      return new Saving.Done(path.get());
    }
    boolean clear = there instanceof OnDisk.Same || there instanceof OnDisk.Gone;
    if (!clear) {
      return new Saving.Moved(there);
    }
    return there instanceof OnDisk.Same && !unsaved()
        ? new Saving.Done(path.get())
        : write(path.get());
  }

  /** Saves under another name, replacing what is there, and goes on with that file. */
  public Saving saveAs(Path target) {
    endDrag();
    return write(target);
  }

  private Saving write(Path target) {
    ChairFile file = disk.with(now.text());
    try {
      DocumentWriter.save(target, file);
    } catch (IOException e) {
      return new Saving.Failed(target, WrittenFiles.reason(e));
    }
    if (!path.equals(Optional.of(target))) {
      path = Optional.of(target);
      name = target.toString();
      now = read(now.number() + 1, now.text(), now.variant());
    }
    disk = file;
    unsaved = false;
    tell();
    return new Saving.Done(target);
  }

  /** For seeing whether someone else has changed the file; empty if there is none. */
  public Optional<OnDisk.Look> look() {
    return path.map(p -> new OnDisk.Look(p, disk.fingerprint(), now));
  }

  /** Keeps the draft against a file that someone else has changed: saving will replace theirs. */
  public void keepMine(OnDisk.Changed theirs) {
    disk = theirs.file();
    tell();
  }

  /** Takes what someone else has written; a step, so that one's own can be had back. */
  public void takeTheirs(OnDisk.Changed theirs) {
    disk = theirs.file();
    unsaved = false;
    if (theirs.file().text().equals(now.text())) {
      tell();
    } else {
      step("take the file as it is now", theirs.file().text(), now.variant(), theirs.theirs());
    }
  }

  // ---- within ----

  private Moment moment() {
    return new Moment(now.text(), now.variant());
  }

  private void step(String what, String text, String variant, Reading<Document> reading) {
    Moment before = moment();
    String shown = isKnown(variant, reading) ? variant : Design.AS_DRAWN;
    Moment after = new Moment(text, shown);
    if (after.equals(before)) {
      return;
    }
    now = new Version(now.number() + 1, text, shown, reading);
    if (drag == null) {
      history.add(new Step(what, before, after));
    } else {
      drag.what = what;
    }
    tell();
  }

  private void show(Moment moment) {
    if (!moment.equals(moment())) {
      now =
          moment.text().equals(now.text())
              ? new Version(now.number() + 1, now.text(), moment.variant(), now.reading())
              : read(now.number() + 1, moment.text(), moment.variant());
    }
    tell();
  }

  private Version read(long number, String text, String variant) {
    return new Version(number, text, variant, DocumentReader.read(name, text));
  }

  /** While the text is unsound its variants are not known, and the choice stays. */
  private static boolean isKnown(String variant, Reading<Document> reading) {
    return variant.equals(Design.AS_DRAWN)
        || !(reading instanceof Reading.Accepted<Document> accepted)
        || accepted.value().variants().contains(variant);
  }

  private void tell() {
    listeners.forEach(listener -> listener.accept(now));
  }
}
