package dryfit.cli;

import dryfit.app.KernelChoice;
import dryfit.app.OpenChair.Opened;
import dryfit.document.Design;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Iterator;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;

/** The chair a command is about. */
final class ChairArguments {
  @Parameters(index = "0", paramLabel = "FILE", description = "the chair document")
  Path file;

  @Option(
      names = "--variant",
      paramLabel = "NAME",
      description = "a variant of the document; without it, the chair as drawn")
  String variant = Design.AS_DRAWN;

  @Option(
      names = "--kernel",
      paramLabel = "NAME",
      converter = Kernels.class,
      completionCandidates = Kernels.class,
      description = "how solids are computed: ${COMPLETION-CANDIDATES}; normally the first")
  KernelChoice kernel = KernelChoice.USUAL;

  private final Foreseen foreseen;

  ChairArguments(Foreseen foreseen) {
    this.foreseen = foreseen;
  }

  Opened open() {
    return foreseen.open(file, variant, kernel);
  }

  /** The kernels by their words. */
  static final class Kernels implements ITypeConverter<KernelChoice>, Iterable<String> {
    @Override
    public KernelChoice convert(String word) {
      return Arrays.stream(KernelChoice.values())
          .filter(k -> k.word().equals(word))
          .findFirst()
          .orElseThrow(
              () ->
                  new TypeConversionException(
                      "'" + word + "' is none of " + String.join(", ", this)));
    }

    @Override
    public Iterator<String> iterator() {
      return Arrays.stream(KernelChoice.values()).map(KernelChoice::word).iterator();
    }
  }
}
