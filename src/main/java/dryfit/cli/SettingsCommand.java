package dryfit.cli;

import dryfit.app.Exit;
import dryfit.app.FitChair;
import dryfit.app.OpenChair;
import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Design;
import dryfit.export.SettingsCsv;
import dryfit.export.SettingsJson;
import dryfit.export.SettingsText;
import dryfit.export.TextStyle;
import dryfit.shop.setting.Settings;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
    name = "settings",
    description = {
      "Tell what each tool is set to, joint by joint and part by part, left and right:",
      "bevels, saw, sight lines and depths of bored holes, gauges, spacers, how much",
      "longer a blank is left, and how an outline is cut with a follower bit."
    },
    footer = {
      "",
      "Examples:",
      "  settings models/kiln-stool.json",
      "  settings models/harbour-armchair.json --part arm --units in",
      "  settings models/harbour-armchair.json --drill-point 6 --follower 50:shank"
    })
final class SettingsCommand implements Callable<Integer> {
  private final Screen screen;

  @Spec private CommandSpec spec;

  @Mixin private ChairArguments chair;

  @Mixin private BenchOptions bench = new BenchOptions();

  @ArgGroup private Form form;

  @Option(
      names = "--joint",
      paramLabel = "NAME",
      description =
          "only for this joint, or for its right or left one, as in \"arm to post, left\"")
  private String joint = "";

  @Option(
      names = "--part",
      paramLabel = "NAME",
      description = {
        "only what is done on this part, its joints included; of a pair on both, or on",
        "one by its hand, as in \"arm left\""
      })
  private String part = "";

  @Mixin private UnitOption units = new UnitOption();

  /** Not a text. */
  static final class Form {
    @Option(names = "--json", description = "print JSON for other programs")
    boolean json;

    @Option(names = "--csv", description = "print comma-separated values for a spreadsheet")
    boolean csv;
  }

  SettingsCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    OpenChair.Opened opened = chair.open();
    if (opened instanceof OpenChair.Refused refused) {
      return screen.refused(refused.problems(), refused.exit(), form != null && form.json);
    }
    Chair built = ((OpenChair.Ready) opened).chair();
    List<Joint> joints = built.joints();
    List<Part> parts = built.parts();
    if (!joint.isEmpty()) {
      check("joint", joint, joints.stream().map(Joint::name), joints.stream().map(Joint::label));
    }
    if (!part.isEmpty()) {
      check("part", part, parts.stream().map(Part::name), parts.stream().map(Part::label));
    }
    Settings settings =
        Settings.of(FitChair.of(built).report(), bench.over(built.design(), spec.commandLine()))
            .only(joint, part);
    if (form != null && form.json) {
      screen.print(SettingsJson.bytes(settings));
    } else if (form != null && form.csv) {
      screen.print(SettingsCsv.bytes(settings));
    } else {
      screen.out().print(SettingsText.of(settings, style(built.design())));
    }
    return Exit.FITS.code();
  }

  private void check(String what, String name, Stream<String> names, Stream<String> labels) {
    Named.check(what, name, names.distinct().toList(), labels.toList(), spec.commandLine());
  }

  private TextStyle style(Design design) {
    TextStyle usual = TextStyle.of(design.unit());
    return new TextStyle(units.or(usual.unit()), usual.denominator(), false, screen.terminal());
  }
}
