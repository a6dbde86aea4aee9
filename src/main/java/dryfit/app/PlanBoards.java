package dryfit.app;

import dryfit.build.Chair;
import dryfit.document.BoardsPlan;
import dryfit.document.Design;
import dryfit.export.BoardPages;
import dryfit.export.CutListCsv;
import dryfit.export.CutListPages;
import dryfit.export.TextStyle;
import dryfit.export.paper.Page;
import dryfit.export.paper.PdfFile;
import dryfit.export.paper.SvgFile;
import dryfit.shop.BoardLayout;
import dryfit.shop.CutList;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What wood a chair takes: its cut list, and where its blanks are cut from the boards that are
 * there.
 *
 * @param layout none if no boards are given
 */
public record PlanBoards(Chair chair, CutList list, Optional<BoardLayout> layout) {

  /** By what the maker allows and has. */
  public static PlanBoards of(Chair chair, BoardsPlan plan) {
    return new PlanBoards(
        chair,
        CutList.of(chair, plan),
        plan.have().isEmpty() ? Optional.empty() : Optional.of(BoardLayout.of(chair, plan)));
  }

  /** How the command ends: not well if a blank found no place. */
  public Exit exit() {
    return layout.isPresent() && !layout.get().left().isEmpty() ? Exit.DOES_NOT_FIT : Exit.FITS;
  }

  /**
   * Writes the list as CSV, both as PDF, and the boards as SVG, stopping at the first file that
   * fails.
   *
   * @param each is told of every file as it is finished or fails
   */
  public Exit write(Path folder, TextStyle style, Page.Paper paper, Consumer<WrittenFiles> each) {
    Exit exit = put(folder.resolve("cut-list.csv"), CutListCsv.bytes(list, style.unit()), each);
    if (exit != Exit.FITS) {
      return exit;
    }
    List<Page> pages = new ArrayList<>(CutListPages.of(chair, list, style, paper));
    if (layout.isPresent()) {
      pages.addAll(BoardPages.of(layout.get(), style, paper));
      Page page = BoardPages.one(layout.get(), style);
      Exit drawn = put(folder.resolve("boards.svg"), SvgFile.bytes(page, title()), each);
      if (drawn != Exit.FITS) {
        return drawn;
      }
    }
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
