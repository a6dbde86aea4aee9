package dryfit.cli;

import dryfit.app.Exit;
import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.document.DocumentReader;
import dryfit.document.Reading;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(
    name = "variants",
    description = "List the variants of a chair, one a line, the chair as drawn first.",
    footer = {"", "Example:", "  variants models/low-stool.json"})
final class VariantsCommand implements Callable<Integer> {
  private final Screen screen;

  @Parameters(index = "0", paramLabel = "FILE", description = "the chair document")
  private Path file;

  VariantsCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    Reading<Document> reading = DocumentReader.read(file);
    if (reading instanceof Reading.Refused<Document> refused) {
      return screen.refused(refused.problems(), Exit.REFUSED);
    }
    screen.out().println(Design.AS_DRAWN);
    ((Reading.Accepted<Document>) reading).value().variants().forEach(screen.out()::println);
    return Exit.FITS.code();
  }
}
