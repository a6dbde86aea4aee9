package dryfit.export;

import dryfit.build.Chair;
import dryfit.document.Design;
import dryfit.document.Hand;
import dryfit.shop.setting.Bench;
import dryfit.shop.setting.Setting;
import dryfit.shop.setting.Settings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * What each tool is set to, in eighty columns: joint by joint, then part by part. What is the same
 * for both hands is written once; what is not, is written for each.
 */
public final class SettingsText {
  private final Settings settings;
  private final Chair chair;
  private final TextStyle style;
  private final SettingWords words;
  private final StringBuilder out = new StringBuilder();

  private SettingsText(Settings settings, TextStyle style) {
    this.settings = settings;
    this.chair = settings.chair();
    this.style = style;
    this.words = new SettingWords(style);
  }

  /** The whole text, each line ended by a line feed. */
  public static String of(Settings settings, TextStyle style) {
    SettingsText text = new SettingsText(settings, style);
    text.heading();
    text.section("JOINTS", s -> s.joint().isPresent());
    text.section("PARTS", s -> s.joint().isEmpty());
    text.cautions();
    return text.out.toString();
  }

  /** What is taken for granted. */
  public static String granted(Settings settings, TextStyle style) {
    return new SettingsText(settings, style).granted();
  }

  /** The settings of each joint, then of each part. */
  public static List<Told> told(Settings settings, TextStyle style) {
    SettingsText text = new SettingsText(settings, style);
    List<Told> out = new ArrayList<>();
    text.groups(s -> s.joint().isPresent()).forEach((n, g) -> out.add(text.rows(n, g).told()));
    text.groups(s -> s.joint().isEmpty()).forEach((n, g) -> out.add(text.rows(n, g).told()));
    return out;
  }

  private void line(String text) {
    out.append(text.stripTrailing()).append('\n');
  }

  private void paragraph(String text) {
    Wrapped.lines("", "", text).forEach(this::line);
  }

  private void heading() {
    Design design = chair.design();
    line(style.bold(design.name()) + " · " + design.variant() + " · settings");
    paragraph(
        "Left and right are as you "
            + (design.labels() == Design.Labels.AS_SEATED ? "sit in" : "face")
            + " the chair. Outside and inside are the same words for both hands, and not the same"
            + " wood.");
    paragraph(granted());
  }

  private String granted() {
    Bench bench = settings.bench();
    List<String> taken = new ArrayList<>();
    taken.add(
        bench.drillPoint() > 0
            ? "a bit whose point stands out " + style.length(bench.drillPoint())
            : "a flat-bottomed bit (--drill-point says otherwise)");
    taken.add(bench.fits() + " trial fits of " + style.length(bench.eachFit()));
    for (Bench.Follower bit : bench.followers()) {
      taken.add(
          "a follower bit cutting "
              + style.length(bit.cutter())
              + " with its bearing at the "
              + bit.bearing().word());
    }
    return "Taken for granted: " + String.join("; ", taken) + ".";
  }

  private void section(String title, Predicate<Setting> which) {
    Map<String, List<Setting>> groups = groups(which);
    if (groups.isEmpty()) {
      return;
    }
    line("");
    line(style.bold(title));
    groups.forEach(
        (name, group) -> {
          line("");
          rows(style.bold(name), group).lines().forEach(this::line);
        });
  }

  private Map<String, List<Setting>> groups(Predicate<Setting> which) {
    Map<String, List<Setting>> groups = new LinkedHashMap<>();
    settings.all().stream()
        .filter(which)
        .forEach(s -> groups.computeIfAbsent(name(s), k -> new ArrayList<>()).add(s));
    return groups;
  }

  private String name(Setting s) {
    return s.joint().isPresent()
        ? chair.joints().get(s.joint().getAsInt()).name()
        : chair.parts().get(s.part()).name();
  }

  private Rows rows(String name, List<Setting> unsorted) {
    List<Setting> group = unsorted.stream().sorted(Comparator.comparing(Setting::tool)).toList();
    Rows rows = new Rows(name);
    boolean[] done = new boolean[group.size()];
    for (int i = 0; i < done.length; i++) {
      if (!done[i]) {
        one(rows, group, i, done);
      }
    }
    return rows;
  }

  private void one(Rows rows, List<Setting> group, int i, boolean[] done) {
    Setting s = group.get(i);
    List<String> own = words.lines(s);
    String which = which(s);
    for (int k = i + 1; k < done.length && !which.isEmpty(); k++) {
      if (!done[k] && isTwin(s, group.get(k)) && words.lines(group.get(k)).equals(own)) {
        done[k] = true;
        which = "both hands";
        break;
      }
    }
    rows.add(s.tool().word(), own.get(0) + (which.isEmpty() ? "" : ", " + which));
    rows.addAll("", own.subList(1, own.size()));
  }

  private static boolean isTwin(Setting one, Setting other) {
    return one.tool() == other.tool()
        && one.hand() == other.hand().other()
        && one.hand() != Hand.NONE;
  }

  /** The hand that a setting is for, as the document names it. */
  private String which(Setting s) {
    if (s.hand() == Hand.NONE) {
      return "";
    }
    boolean seated = chair.design().labels() == Design.Labels.AS_SEATED;
    return (s.hand() == Hand.RIGHT) == seated ? "left" : "right";
  }

  private void cautions() {
    List<String> cautions = settings.cautions();
    if (!cautions.isEmpty()) {
      line("");
      line(style.bold("TAKE CARE"));
      cautions.forEach(this::paragraph);
    }
  }
}
