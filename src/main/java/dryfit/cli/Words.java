package dryfit.cli;

import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The values that an option may have, by their words. */
abstract class Words<T> implements ITypeConverter<T>, Iterable<String> {
  private final List<String> words;
  private final Function<String, Optional<T>> named;

  Words(List<String> words, Function<String, Optional<T>> named) {
    this.words = words;
    this.named = named;
  }

  @Override
  public T convert(String word) {
    return named
        .apply(word)
        .orElseThrow(
            () ->
                new TypeConversionException(
                    "'" + word + "' is none of " + String.join(", ", words)));
  }

  @Override
  public Iterator<String> iterator() {
    return words.iterator();
  }
}
