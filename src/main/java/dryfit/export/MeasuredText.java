package dryfit.export;

import dryfit.fit.AsMeasured.Told;
import dryfit.fit.compare.Datum;
import java.util.List;

/** What was measured and what to do about it, as text; the last line is the answer. */
public final class MeasuredText {
  private MeasuredText() {}

  public static String of(List<Told> all, TextStyle style) {
    StringBuilder out = new StringBuilder();
    for (Told t : all) {
      String on = t.measurement().on().isEmpty() ? "" : ", " + t.measurement().on();
      String real = DatumText.of(kind(t), t.measurement().value().value(), style);
      String planned =
          t.planned().isPresent() ? ", planned " + style.gap(t.planned().getAsDouble()) : "";
      String head = t.subject() + ": " + t.measurement().what() + " " + real + planned + on;
      Wrapped.lines("", "  ", head).forEach(l -> out.append(l).append('\n'));
      for (String advice : t.advice()) {
        Wrapped.lines("    ", "    ", advice).forEach(l -> out.append(l).append('\n'));
      }
    }
    long conflicts = all.stream().filter(Told::conflict).count();
    if (all.isEmpty()) {
      out.append("NOTHING MEASURED\n");
    } else if (conflicts == 0) {
      out.append('\n').append(style.green("AS PLANNED")).append('\n');
    } else {
      String answer = style.amber("DIFFERS FROM THE PLAN");
      out.append('\n').append(answer).append(" in ").append(conflicts);
      out.append(" of ").append(all.size()).append('\n');
    }
    return out.toString();
  }

  private static Datum.Kind kind(Told t) {
    return switch (t.measurement().value().kind()) {
      case LENGTH -> Datum.Kind.GAP;
      case ANGLE -> Datum.Kind.ANGLE;
      case NUMBER -> Datum.Kind.NUMBER;
    };
  }
}
