package dryfit.cli;

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
}
