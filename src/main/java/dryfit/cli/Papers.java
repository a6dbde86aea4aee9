package dryfit.cli;

import dryfit.document.Design;
import dryfit.export.paper.Page;
import java.util.Arrays;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The sheets of paper by their words. */
final class Papers implements ITypeConverter<Page.Paper> {
  @Override
  public Page.Paper convert(String word) {
    return Arrays.stream(Page.Paper.values())
        .filter(p -> p.word().equalsIgnoreCase(word))
        .findFirst()
        .orElseThrow(() -> new TypeConversionException("'" + word + "' is neither A4 nor letter"));
  }

  /** What is in the printer of someone who writes in this unit. */
  static Page.Paper usual(Design design) {
    return design.unit() == Design.LengthUnit.IN ? Page.Paper.LETTER : Page.Paper.A4;
  }
}
