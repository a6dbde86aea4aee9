package dryfit.cli;

import dryfit.document.Design;
import dryfit.export.paper.Page;
import java.util.Arrays;

/** The sheets of paper by their words. */
final class Papers extends Words<Page.Paper> {
  Papers() {
    super(
        Arrays.stream(Page.Paper.values()).map(Page.Paper::word).toList(),
        word ->
            Arrays.stream(Page.Paper.values())
                .filter(p -> p.word().equalsIgnoreCase(word))
                .findFirst());
  }

  /** What is in the printer of someone who writes in this unit. */
  static Page.Paper usual(Design design) {
    return design.unit() == Design.LengthUnit.IN ? Page.Paper.LETTER : Page.Paper.A4;
  }
}
