package dryfit.cli;

import dryfit.app.Exit;
import dryfit.app.Exporting;
import dryfit.app.OpenChair;
import dryfit.app.PlanBoards;
import dryfit.app.WrittenFiles;
import dryfit.build.Chair;
import dryfit.document.Design;
import dryfit.export.BoardText;
import dryfit.export.CutListCsv;
import dryfit.export.CutListJson;
import dryfit.export.CutListText;
import dryfit.export.TextStyle;
import dryfit.export.paper.Page;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
    name = "boards",
    description = {
      "List the blanks of a chair by timber and thickness, with what to buy, and lay",
      "them out on the boards of the document or of --board. Ends with 4 if one of them",
      "finds no place there.",
      "The allowances are those of the document, unless an option says otherwise."
    },
    footer = {
      "",
      "Examples:",
      "  boards models/harbour-armchair.json",
      "  boards models/orchard-side-chair.json --allow \"1,1/4,0\" --to lists",
      "  boards models/kiln-stool.json --board 1200x200x52 --board 900x120x52"
    })
final class BoardsCommand implements Callable<Integer> {
  private final Screen screen;

  @Spec private CommandSpec spec;

  @Mixin private ChairArguments chair;

  @Mixin private WoodOptions wood;

  @ArgGroup private Form form;

  @Mixin private UnitOption units = new UnitOption();

  @Option(
      names = "--to",
      paramLabel = "FOLDER",
      description = "also write CSV, PDF and, if there are boards, SVG into this folder")
  private Path to;

  @Option(
      names = "--paper",
      paramLabel = "A4|letter",
      converter = Papers.class,
      description = "pages of the PDF; without it A4, or letter for a document in inches")
  private Page.Paper paper;

  /** What is printed instead of the table. */
  static final class Form {
    @Option(names = "--json", description = "print JSON for other programs")
    boolean json;

    @Option(names = "--csv", description = "print comma-separated values for a spreadsheet")
    boolean csv;
  }

  BoardsCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    OpenChair.Opened opened = chair.open();
    if (opened instanceof OpenChair.Refused refused) {
      return screen.refused(refused.problems(), refused.exit(), form != null && form.json);
    }
    Chair built = ((OpenChair.Ready) opened).chair();
    PlanBoards boards = PlanBoards.of(built, wood.over(built.design(), spec.commandLine()));
    TextStyle style = style(built.design());
    // First, so that a list that scrolls by does not hide that nothing was written.
    Exit written = to == null ? Exit.FITS : write(boards, style);
    if (written != Exit.FITS) {
      return written.code();
    }
    if (form != null && form.json) {
      screen.print(CutListJson.bytes(built, boards.list(), boards.layout()));
    } else if (form != null && form.csv) {
      screen.print(CutListCsv.bytes(boards.list(), style.unit()));
    } else {
      screen.out().print(CutListText.of(built, boards.list(), style));
      boards.layout().ifPresent(layout -> screen.out().print("\n" + BoardText.of(layout, style)));
    }
    return boards.exit().code();
  }

  private Exit write(PlanBoards boards, TextStyle style) {
    Page.Paper sheet = paper != null ? paper : Exporting.usualPaper(boards.chair().design());
    return boards.write(
        to,
        style,
        sheet,
        result -> {
          if (result instanceof WrittenFiles.Failed failed) {
            screen.notWritten(failed);
          } else if (result instanceof WrittenFiles.Finished<?> finished) {
            screen.err().println(finished.file());
          }
        });
  }

  private TextStyle style(Design design) {
    TextStyle usual = TextStyle.of(design.unit());
    // Sixteenths: a blank is cut with a margin, and nobody saws to a sixty-fourth.
    return new TextStyle(units.or(usual.unit()), 16, false, screen.terminal());
  }
}
