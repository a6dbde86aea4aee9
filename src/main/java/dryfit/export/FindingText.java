package dryfit.export;

import dryfit.fit.Finding;
import dryfit.fit.Source;
import java.util.ArrayList;
import java.util.List;

/** A finding as a few lines: the sentence, the figures, where the limit comes from, the place. */
final class FindingText {
  private static final String INDENT = "     ";

  private FindingText() {}

  static List<String> lines(int number, Finding f, TextStyle style) {
    String first = String.format(java.util.Locale.ROOT, "%3d  ", number);
    List<String> out = new ArrayList<>(Wrapped.lines(first, INDENT, f.message()));
    String figures =
        "measured "
            + style.quantity(f.measured(), f.unit())
            + " · limit "
            + style.quantity(f.limit(), f.unit())
            + " · margin "
            + style.quantity(f.margin(), f.unit());
    add(out, "", figures);
    add(out, "limit from ", source(f.source()));
    if (!f.parts().isEmpty()) {
      add(out, "parts ", String.join("; ", f.parts()));
    }
    if (!f.joints().isEmpty()) {
      add(out, "joints ", String.join("; ", f.joints()));
    }
    f.waived().ifPresent(why -> add(out, "accepted, because ", why));
    add(out, "written at ", f.pointer().isEmpty() ? "the whole document" : f.pointer());
    return out;
  }

  private static void add(List<String> out, String name, String text) {
    out.addAll(Wrapped.lines(INDENT + name, INDENT + "  ", text));
  }

  private static String source(Source source) {
    return switch (source.kind()) {
      case PUBLISHED -> source.text() + " (published)";
      case COMMON_PRACTICE, THE_MAKER -> source.text();
      case GEOMETRY -> "geometry: " + source.text();
    };
  }
}
