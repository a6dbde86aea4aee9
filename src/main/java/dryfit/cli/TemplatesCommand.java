package dryfit.cli;

import dryfit.app.DrawTemplates;
import dryfit.app.Exporting;
import dryfit.app.FileNames;
import dryfit.app.OpenChair;
import dryfit.app.PaperFormat;
import dryfit.app.WrittenFiles;
import dryfit.build.Chair;
import dryfit.document.Design;
import dryfit.export.TextStyle;
import dryfit.export.paper.Page.Paper;
import dryfit.measure.Length;
import dryfit.shop.template.GuideBush;
import dryfit.shop.template.TemplateMaker;
import dryfit.shop.template.Wanted;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

@Command(
    name = "templates",
    description = {
      "Draw the parts that are sawn, bent, carved or turned at full size, to be printed and stuck"
          + " on a template or on the wood: outline, mortises, where other parts land, grain, and"
          + " waste for screws.",
      "Each sheet has bars of 100 mm and 4 in to check the printer by."
    },
    footer = {
      "",
      "Examples:",
      "  templates models/harbour-armchair.json",
      "  templates models/harbour-armchair.json --part arm --paper letter --units in",
      "  templates models/lantern-side-chair.json --part splat --format svg",
      "  templates models/millrace-armchair.json --mouths --part seat",
      "  templates models/harbour-armchair.json --part arm --guide-bush \"16 mm\" --cutter \"12 mm\"",
      "",
      "A template does not make a saw or a router safe: clamp it and the part, keep",
      "hands out of the way of the cutter, and follow the machine's manual."
    })
final class TemplatesCommand implements Callable<Integer> {
  private final Screen screen;

  @Spec private CommandSpec spec;

  @Mixin private ChairArguments chair;

  @Option(
      names = "--to",
      paramLabel = "FOLDER",
      description = "where the files go; without it, exports/, the chair's file, and templates")
  private Path to;

  @Option(
      names = "--part",
      paramLabel = "NAME",
      description = {
        "only this part, straight or not; several parts by several options;",
        "without it, all that are sawn, bent, carved or turned"
      })
  private List<String> parts = new ArrayList<>();

  @Option(
      names = "--paper",
      paramLabel = "NAME",
      converter = Sheets.class,
      completionCandidates = Sheets.class,
      description = {
        "${COMPLETION-CANDIDATES}; one is one sheet as large as the drawing;",
        "without it, letter for a document in inches, A4 for one in mm"
      })
  private Sheet paper;

  @Option(
      names = "--format",
      paramLabel = "NAME",
      converter = Formats.class,
      completionCandidates = Formats.class,
      description = "${COMPLETION-CANDIDATES}; an SVG is one sheet whatever the paper")
  private PaperFormat format = PaperFormat.PDF;

  @Option(
      names = "--hand",
      paramLabel = "NAME",
      converter = HandWords.class,
      completionCandidates = HandWords.class,
      description = {
        "${COMPLETION-CANDIDATES}: of a pair, one template to be turned over, or only",
        "that of the one hand"
      })
  private Wanted.Hands hand = Wanted.Hands.BOTH;

  @Option(
      names = "--mouths",
      description = {
        "the mouths of the mortises instead, in their true shape, to be stuck on the",
        "wood and knifed through"
      })
  private boolean mouths;

  @Option(
      names = "--waste",
      paramLabel = "LENGTH",
      description = "what each end is left longer for screws, 0 for nothing")
  private String waste;

  @Option(
      names = "--guide-bush",
      paramLabel = "LENGTH",
      description = "outside diameter of a guide bush that runs along the template")
  private String bush;

  @Option(
      names = "--cutter",
      paramLabel = "LENGTH",
      description = "diameter of the cutter in the guide bush")
  private String cutter;

  @Mixin private UnitOption units = new UnitOption();

  TemplatesCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    OpenChair.Opened opened = chair.open();
    if (opened instanceof OpenChair.Refused refused) {
      return screen.refused(refused.problems(), refused.exit());
    }
    Chair built = ((OpenChair.Ready) opened).chair();
    Design design = built.design();
    Path folder = to != null ? to : FileNames.folder(design).resolve("templates");
    Length.Unit unit = units.or(TextStyle.of(design.unit()).unit());
    TextStyle style = new TextStyle(unit, DrawTemplates.FRACTIONS, false, false);
    Optional<Paper> sheet = paper == null ? Optional.of(Exporting.usualPaper(design)) : paper.of();
    DrawTemplates draw = new DrawTemplates(folder, wanted(design), style, sheet, format);
    return (mouths
            ? draw.mouths(
                built, parts.isEmpty() ? DrawTemplates.parts(built) : names(built), this::tell)
            : draw.draw(built, names(built), this::tell))
        .code();
  }

  private List<String> names(Chair built) {
    List<String> shaped = TemplateMaker.shaped(built);
    List<String> all = DrawTemplates.parts(built);
    for (String part : parts) {
      Named.check("part", part, all, List.of(), spec.commandLine());
    }
    if (parts.isEmpty() && shaped.isEmpty()) {
      throw new ParameterException(
          spec.commandLine(), "no part of it is sawn, bent, carved or turned; name one by --part");
    }
    return parts.isEmpty() ? shaped : parts.stream().distinct().toList();
  }

  private Wanted wanted(Design design) {
    Wanted usual = DrawTemplates.usual(design);
    double left = waste == null ? usual.waste() : length("--waste", waste, design);
    return new Wanted(left, bush(design), hand, usual.depths());
  }

  private Optional<GuideBush> bush(Design design) {
    if (bush == null && cutter == null) {
      return Optional.empty();
    }
    if (bush == null || cutter == null) {
      throw new ParameterException(
          spec.commandLine(),
          "--guide-bush and --cutter go together: the template stands back by half of what the"
              + " bush is thicker");
    }
    double outside = length("--guide-bush", bush, design);
    double inner = length("--cutter", cutter, design);
    if (inner <= 0 || inner >= outside) {
      throw new ParameterException(
          spec.commandLine(),
          "--cutter: '" + cutter + "' does not go through a guide bush of '" + bush + "'");
    }
    return Optional.of(new GuideBush(outside, inner));
  }

  private double length(String option, String text, Design design) {
    OptionalDouble mm = Length.parse(text.strip(), design.unit().printed());
    if (mm.isEmpty() || !(mm.getAsDouble() >= 0) || mm.getAsDouble() > 1000) {
      throw new ParameterException(
          spec.commandLine(), option + ": '" + text + "' is not a length from 0 to 1 metre");
    }
    return mm.getAsDouble();
  }

  private void tell(DrawTemplates.Told told) {
    ProgressBar bar = new ProgressBar(screen);
    if (told instanceof DrawTemplates.Told.Done done) {
      bar.show(done.parts(), done.of());
      return;
    }
    bar.clear();
    if (told instanceof DrawTemplates.Told.NotDrawn none) {
      screen.out().println(none.part() + ": not drawn: " + none.because());
    } else if (told instanceof DrawTemplates.Told.File file) {
      if (file.result() instanceof WrittenFiles.Failed failed) {
        screen.notWritten(failed);
      } else if (file.result() instanceof WrittenFiles.Finished<?> finished) {
        screen.out().println(finished.file());
      }
    }
  }

  /** Sheets of a printer; none for one as large as the drawing. */
  record Sheet(Optional<Paper> of) {}

  /** The sheets by their words. */
  static final class Sheets extends Words<Sheet> {
    private static final String ONE = "one";

    private static Optional<Sheet> named(String word) {
      return word.equals(ONE)
          ? Optional.of(new Sheet(Optional.empty()))
          : Arrays.stream(Paper.values())
              .filter(p -> p.word().equalsIgnoreCase(word))
              .findFirst()
              .map(p -> new Sheet(Optional.of(p)));
    }

    Sheets() {
      super(
          Stream.concat(Arrays.stream(Paper.values()).map(Paper::word), Stream.of(ONE)).toList(),
          Sheets::named);
    }
  }

  /** The formats by their words. */
  static final class Formats extends Words<PaperFormat> {
    Formats() {
      super(
          Arrays.stream(PaperFormat.values()).map(PaperFormat::word).toList(),
          word ->
              Arrays.stream(PaperFormat.values()).filter(f -> f.word().equals(word)).findFirst());
    }
  }

  /** The hands by their words. */
  static final class HandWords extends Words<Wanted.Hands> {
    HandWords() {
      super(
          Arrays.stream(Wanted.Hands.values()).map(HandWords::word).toList(),
          word ->
              Arrays.stream(Wanted.Hands.values()).filter(h -> word(h).equals(word)).findFirst());
    }

    private static String word(Wanted.Hands hand) {
      return hand.name().toLowerCase(java.util.Locale.ROOT);
    }
  }
}
