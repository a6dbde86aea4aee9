package dryfit.app;

import dryfit.build.Chair;
import dryfit.document.BoardsPlan;
import dryfit.document.Design;
import dryfit.export.CutListCsv;
import dryfit.export.CutListPages;
import dryfit.export.TextStyle;
import dryfit.export.paper.Page;
import dryfit.export.paper.PdfFile;
import dryfit.shop.CutList;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** What wood a chair takes: its cut list. */
public record PlanBoards(Chair chair, CutList list) {

  /** The cut list by what the maker allows. */
  public static PlanBoards of(Chair chair, BoardsPlan plan) {
    return new PlanBoards(chair, CutList.of(chair, plan));
  }

  /**
   * Writes the list as CSV and as PDF, stopping at the first file that fails.
   *
   * @param each is told of every file as it is finished or fails
   */
  public Exit write(Path folder, TextStyle style, Page.Paper paper, Consumer<WrittenFiles> each) {
    Exit exit = put(folder.resolve("cut-list.csv"), CutListCsv.bytes(list), each);
    if (exit != Exit.FITS) {
      return exit;
    }
    List<Page> pages = new ArrayList<>(CutListPages.of(chair, list, style, paper));
    return put(folder.resolve("boards.pdf"), PdfFile.bytes(pages, title()), each);
  }

  private String title() {
    Design design = chair.design();
    return design.name()
        + (design.variant().equals(Design.AS_DRAWN) ? "" : ", " + design.variant())
        + ": boards";
  }

  private static Exit put(Path file, byte[] bytes, Consumer<WrittenFiles> each) {
    WrittenFiles result = WrittenFiles.of(file, bytes);
    each.accept(result);
    return result.exit();
  }
}
