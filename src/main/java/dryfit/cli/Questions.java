package dryfit.cli;

import dryfit.app.Family;
import dryfit.app.StartChair;
import dryfit.app.StartSize;
import dryfit.measure.Length;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.function.Function;

/**
 * Asks a person at the terminal, again and again until the answer can be taken. A bare return takes
 * what stands in brackets. Every question gives nothing when the answers end.
 */
final class Questions {
  private final BufferedReader answers;
  private final PrintStream out;

  Questions(BufferedReader answers, PrintStream out) {
    this.answers = answers;
    this.out = out;
  }

  Optional<Family> family() {
    for (Family family : Family.values()) {
      out.printf("  %-11s %s%n", family.word(), family.about());
    }
    String words = String.join(", ", Family.words());
    return ask("what to build", Family.SIDE_CHAIR.word(), Family::named, "none of " + words);
  }

  Optional<Length.Unit> unit() {
    return ask("unit, mm or in", Length.Unit.MM.symbol(), Units::named, "neither mm nor in");
  }

  Optional<StartChair> name(StartChair chair) {
    return put("name", chair.name(), chair, chair::withName);
  }

  Optional<StartChair> size(StartChair chair, StartSize size) {
    out.println("  " + size.dimension().note());
    return put(
        size.which().spoken() + ", " + chair.range(size),
        chair.printed(size.mm()),
        chair,
        written -> chair.withSize(size.which(), written));
  }

  Optional<StartChair> timber(StartChair chair) {
    return put("timber, ? for all", chair.timber(), chair, chair::withTimber);
  }

  private Optional<StartChair> put(
      String question, String usual, StartChair chair, Function<String, StartChair.Answer> put) {
    while (true) {
      Optional<String> line = line(question, usual);
      if (line.isEmpty()) {
        return Optional.empty();
      }
      if (line.get().isEmpty()) {
        return Optional.of(chair);
      }
      StartChair.Answer answer = put.apply(line.get());
      if (answer instanceof StartChair.Taken taken) {
        return Optional.of(taken.chair());
      }
      out.println("  " + ((StartChair.NotTaken) answer).why());
    }
  }

  private <T> Optional<T> ask(
      String question, String usual, Function<String, Optional<T>> meaning, String otherwise) {
    while (true) {
      Optional<String> line = line(question, usual);
      if (line.isEmpty()) {
        return Optional.empty();
      }
      Optional<T> meant = meaning.apply(line.get().isEmpty() ? usual : line.get());
      if (meant.isPresent()) {
        return meant;
      }
      out.println("  '" + line.get() + "' is " + otherwise);
    }
  }

  private Optional<String> line(String question, String usual) {
    out.print(question + " [" + usual + "]: ");
    out.flush();
    try {
      Optional<String> line = Optional.ofNullable(answers.readLine()).map(String::strip);
      if (line.isEmpty()) {
        out.println();
      }
      return line;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
