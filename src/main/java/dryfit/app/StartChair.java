package dryfit.app;

import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.document.DocumentReader;
import dryfit.document.DocumentWriter;
import dryfit.document.Problem;
import dryfit.document.Reading;
import dryfit.export.SafeFile;
import dryfit.export.UnsoundFile;
import dryfit.measure.Length;
import dryfit.measure.Tolerances;
import dryfit.timber.Species;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Begins a new chair from a pattern: an ordinary document that ships with the program, one for each
 * family and unit, in which the answers are put. Ranges, usual values and notes are the pattern's
 * own dimensions, so the document refuses later what would be refused here.
 */
public final class StartChair {
  /** An inch is asked for and told in sixty-fourths. */
  private static final int DIVISION = 64;

  private final Family family;
  private final Document document;
  private final Design design;

  private StartChair(Family family, Document document) {
    this.family = family;
    this.document = document;
    this.design = sound(document.design(Design.AS_DRAWN));
  }

  /** What comes of an answer. */
  public sealed interface Answer {}

  /** It is taken: the chair with the answer in it, every other letter as it was. */
  public record Taken(StartChair chair) implements Answer {}

  /** It cannot be taken; why, and what could be. */
  public record NotTaken(String why) implements Answer {}

  /** The beginning of a chair of that family, written in that unit, as it usually is. */
  public static StartChair of(Family family, Length.Unit unit) {
    String name = family.word() + "-" + unit.symbol() + ".json";
    return new StartChair(family, sound(DocumentReader.read(name, text(name))));
  }

  /** The chair as a document. */
  public Document document() {
    return document;
  }

  /** The sizes to ask for, in the order of asking. */
  public List<StartSize> sizes() {
    return Arrays.stream(StartSize.Which.values()).flatMap(which -> size(which).stream()).toList();
  }

  /** The usual wood of its parts, by its key; before an answer, what most take. */
  public String timber() {
    return design.timber();
  }

  /** What it is called; before an answer, after its family. */
  public String name() {
    return design.name();
  }

  /** A length for people, in the unit of the chair. */
  public String printed(double mm) {
    Length.Unit unit = design.unit().printed();
    // Whole millimetres are usual here; a decimal would only be noise.
    return unit == Length.Unit.MM && mm == Math.rint(mm)
        ? Length.decimal(mm, unit, 0)
        : Length.print(mm, unit, DIVISION);
  }

  /** From the least to the greatest that a size may be. */
  public String range(StartSize size) {
    return printed(size.dimension().from()) + " to " + printed(size.dimension().to());
  }

  /**
   * A size as a maker writes it: {@code 440}, {@code 17 1/2 in}, {@code 44 cm}. It goes into the
   * document as it was written.
   */
  public Answer withSize(StartSize.Which which, String written) {
    Optional<StartSize> asked = size(which);
    if (asked.isEmpty()) {
      return new NotTaken("a " + family.word() + " has no " + which.spoken());
    }
    StartSize size = asked.get();
    String text = written.strip();
    OptionalDouble mm = Length.parse(text, design.unit().printed());
    if (mm.isEmpty()) {
      return new NotTaken(
          "'" + written + "' is no length such as 440, 17.5, 17 1/2 in or 44 cm (decimal point)");
    }
    return within(size, mm.getAsDouble())
        ? answered(size.dimension().pointer(), json(text), written)
        : new NotTaken(outside(size, text, mm.getAsDouble()));
  }

  /** The usual wood of the parts, by its key. */
  public Answer withTimber(String key) {
    return Species.named(key.strip()).isPresent()
        ? answered("/timber", DocumentWriter.quoted(key.strip()), key)
        : new NotTaken("'" + key + "' is none of " + String.join(", ", Species.names()));
  }

  /** What the chair is called. */
  public Answer withName(String name) {
    return name.isBlank()
        ? new NotTaken("a chair needs a name")
        : answered("/name", DocumentWriter.quoted(name.strip()), name);
  }

  private Answer answered(String pointer, String json, String written) {
    Reading<Document> edited = document.edited(pointer, json);
    return edited instanceof Reading.Refused<Document> refused
        ? new NotTaken("'" + written + "': " + refused.problems().get(0).message())
        : new Taken(new StartChair(family, ((Reading.Accepted<Document>) edited).value()));
  }

  /**
   * Writes the chair, whole or not at all, read back and found sound.
   *
   * @param replace whether a file that stands there may be written over
   */
  public WrittenFiles write(Path path, boolean replace) {
    if (Files.isDirectory(path)) {
      return new WrittenFiles.Failed(path, "it is a folder", Exit.USAGE);
    }
    try {
      if (!replace && stands(path)) {
        throw new FileAlreadyExistsException(path.toString());
      }
      SafeFile.write(
          path,
          document.text().getBytes(StandardCharsets.UTF_8),
          readBack -> check(path, new String(readBack, StandardCharsets.UTF_8)));
      return new WrittenFiles.Finished<>(path);
    } catch (FileAlreadyExistsException e) {
      return new WrittenFiles.Failed(path, "it stands there already", Exit.USAGE);
    } catch (IOException e) {
      return WrittenFiles.Failed.of(path, e);
    } catch (UnsoundFile e) {
      return WrittenFiles.Failed.of(path, e);
    }
  }

  /** Whether something has that name, be it a link that leads nowhere. */
  public static boolean stands(Path path) {
    return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
  }

  private Optional<StartSize> size(StartSize.Which which) {
    return design.dimensions().stream()
        .filter(d -> d.name().equals(which.dimension()))
        .map(d -> new StartSize(which, d))
        .findFirst();
  }

  private static boolean within(StartSize size, double mm) {
    return mm >= size.dimension().from() - Tolerances.coincident()
        && mm <= size.dimension().to() + Tolerances.coincident();
  }

  private String outside(StartSize size, String text, double mm) {
    String which = size.which().spoken();
    String end =
        mm < size.dimension().from()
            ? printed(mm) + " is too little"
            : printed(mm) + " is too much";
    Length.Unit other = design.unit().printed() == Length.Unit.MM ? Length.Unit.IN : Length.Unit.MM;
    OptionalDouble meant = Length.parse(text, other);
    boolean mistaken = meant.isPresent() && within(size, meant.getAsDouble());
    return String.format(
        Locale.ROOT,
        "%s; the %s of this %s may be %s%s",
        end,
        which,
        family.word(),
        range(size),
        mistaken ? " (if you mean " + text + " " + other.symbol() + ", write the unit)" : "");
  }

  /** A bare number stays one; what has a fraction or a unit is a text. */
  private String json(String text) {
    if (text.matches("[0-9.]+")) {
      return new BigDecimal(text).toPlainString();
    }
    boolean bare = Character.isDigit(text.charAt(text.length() - 1));
    return DocumentWriter.quoted(bare ? text + " " + design.unit().printed().symbol() : text);
  }

  private static void check(Path path, String text) {
    if (DocumentReader.read(path.toString(), text) instanceof Reading.Refused<Document> refused) {
      throw new UnsoundFile(refused.problems().get(0).message());
    }
  }

  private static String text(String name) {
    try (InputStream in = StartChair.class.getResourceAsStream("/dryfit/start/" + name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Patterns are ours and answers were read, so what is refused here is our fault. */
  private static <T> T sound(Reading<T> reading) {
    if (reading instanceof Reading.Refused<T> refused) {
      Stream<String> why = refused.problems().stream().map(Problem::message);
      throw new IllegalStateException("a pattern is refused: " + String.join("; ", why.toList()));
    }
    return ((Reading.Accepted<T>) reading).value();
  }
}
