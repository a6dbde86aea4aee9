package dryfit.export;

import dryfit.fit.Finding;
import dryfit.fit.Source;
import java.util.ArrayList;
import java.util.List;

/** A finding as a few lines: the sentence, the figures, where the limit comes from, the place. */
public final class FindingText {
  private static final String INDENT = "     ";

  private FindingText() {}

  /** Findings that say the same of the right and of the left, together; in the order given. */
  public static List<List<Finding>> alike(List<Finding> findings) {
    List<List<Finding>> groups = new ArrayList<>();
    for (Finding f : findings) {
      groups.stream()
          .filter(g -> sameOfTheOtherHand(g.get(0), f))
          .findFirst()
          .ifPresentOrElse(g -> g.add(f), () -> groups.add(new ArrayList<>(List.of(f))));
    }
    return groups;
  }

  static boolean sameOfTheOtherHand(Finding a, Finding b) {
    return a.check().equals(b.check())
        && a.pointer().equals(b.pointer())
        && !(a.parts().equals(b.parts()) && a.joints().equals(b.joints()))
        && mirrored(a.message()).equals(mirrored(b.message()));
  }

  private static String mirrored(String message) {
    return message.replaceAll("\\b(right|left)\\b", "hand");
  }

  /** The first of findings that are alike, and what the others concern. */
  static List<String> lines(int number, List<Finding> alike, TextStyle style) {
    Finding f = alike.get(0);
    String first = String.format(java.util.Locale.ROOT, "%3d  ", number);
    List<String> out = new ArrayList<>(Wrapped.lines(first, INDENT, f.message()));
    for (Finding other : alike.subList(1, alike.size())) {
      add(out, "the same at ", String.join("; ", concerned(other)));
    }
    if (f.severity() != Finding.Severity.KNOW) {
      add(out, "", figures(f, style));
    }
    String limit = f.source().limit();
    add(out, (limit.isEmpty() ? "limit" : limit) + " from ", source(f.source()));
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

  /** Measured, limit and margin in one line. */
  public static String figures(Finding f, TextStyle style) {
    return "measured "
        + style.quantity(f.measured(), f.unit())
        + " · limit "
        + style.quantity(f.limit(), f.unit())
        + " · margin "
        + style.quantity(f.margin(), f.unit());
  }

  /** The labels of the joints, or else the parts, that it is about. */
  public static List<String> concerned(Finding f) {
    return f.joints().isEmpty() ? f.parts() : f.joints();
  }

  private static void add(List<String> out, String name, String text) {
    out.addAll(Wrapped.lines(INDENT + name, INDENT + "  ", text));
  }

  /** Where a limit comes from, in words. */
  public static String source(Source source) {
    return switch (source.kind()) {
      case PUBLISHED -> source.text() + " (published)";
      case COMMON_PRACTICE, THE_MAKER -> source.text();
      case GEOMETRY -> "geometry: " + source.text();
    };
  }
}
