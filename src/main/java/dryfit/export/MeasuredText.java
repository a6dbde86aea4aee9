package dryfit.export;

import dryfit.fit.AsMeasured.Told;
import dryfit.fit.compare.Datum;
import dryfit.fit.loop.Afterwards;
import dryfit.fit.loop.Cause;
import dryfit.fit.loop.HeldOpen;
import dryfit.fit.loop.HeldOpen.Suspect;
import dryfit.fit.loop.LeftOut;
import dryfit.fit.loop.Remade;
import dryfit.fit.loop.Remade.Because;
import dryfit.fit.loop.Remade.Change;
import dryfit.fit.loop.Remade.Conflict;
import dryfit.fit.loop.Remade.Cure;
import dryfit.fit.loop.Remade.Square;
import dryfit.measure.Angle;
import java.util.List;
import java.util.stream.Collectors;

/** What was measured and what to do about it, as text; the last line is the answer. */
public final class MeasuredText {
  /** More suspects than this nobody goes and measures; JSON has them all. */
  private static final int SUSPECTS = 8;

  /** Diagonals that are both off by no more are as good as a rule shows, mm. */
  private static final double LARGER = 0.5;

  private final TextStyle style;
  private final StringBuilder out = new StringBuilder();

  private MeasuredText(TextStyle style) {
    this.style = style;
  }

  public static String of(Afterwards all, TextStyle style) {
    MeasuredText text = new MeasuredText(style);
    text.told(all.told());
    all.open().forEach(text::heldOpen);
    text.remade(all.remade());
    text.answer(all);
    return text.out.toString();
  }

  private void told(List<Told> all) {
    for (Told t : all) {
      String on = t.measurement().on().isEmpty() ? "" : ", " + t.measurement().on();
      String at = t.measurement().at().isEmpty() ? "" : " at the " + t.measurement().at();
      Datum.Kind kind = kind(t);
      String real = DatumText.of(kind, t.measurement().value().value(), style);
      String planned =
          t.planned().isPresent()
              ? ", planned " + DatumText.of(kind, t.planned().getAsDouble(), style)
              : "";
      line("", "  ", t.subject() + ": " + t.measurement().what() + at + " " + real + planned + on);
      t.advice().forEach(advice -> line("    ", "    ", advice));
    }
  }

  private static Datum.Kind kind(Told t) {
    return switch (t.measurement().value().kind()) {
      case LENGTH -> Datum.Kind.GAP;
      case ANGLE -> Datum.Kind.ANGLE;
      case NUMBER -> Datum.Kind.NUMBER;
    };
  }

  private void line(String first, String rest, String text) {
    Wrapped.lines(first, rest, text).forEach(l -> out.append(l).append('\n'));
  }

  private void head(String text) {
    out.append('\n').append(style.bold(text)).append('\n');
  }

  // ---- who holds it open ----

  private void heldOpen(HeldOpen held) {
    String at = held.at().isEmpty() ? "" : ", at the " + held.at();
    head("WHO HOLDS OPEN " + held.joint() + at + ", by " + style.gap(held.gap()));
    if (held.round().isEmpty()) {
      line(
          "  ",
          "  ",
          "no closed frame goes through this joint: look at its own tenon and shoulder");
      return;
    }
    line("  ", "    ", "round by " + String.join(" > ", held.round()));
    line(
        "  ",
        "    ",
        "what was measured makes "
            + style.gap(held.measured())
            + " of it; left to explain: "
            + style.gap(held.unexplained()));
    if (!held.touching().isEmpty()) {
      line(
          "  ",
          "    ",
          "the shoulder is taken to touch at the "
              + held.touching()
              + ", where nothing was measured: then it is turned, and lengths have no part in it");
    }
    if (held.isExplained()) {
      held.suspects().stream().filter(Suspect::measured).forEach(this::suspect);
      line("  ", "    ", "that explains it: nothing else need be looked for");
      return;
    }
    List<Suspect> first = held.suspects().stream().limit(SUSPECTS).toList();
    List<Suspect> rest = held.suspects().stream().skip(SUSPECTS).toList();
    first.forEach(this::suspect);
    // What was measured is told even where it closes the gap: it is part of the sum above.
    rest.stream().filter(Suspect::measured).forEach(this::suspect);
    long more = rest.stream().filter(s -> !s.measured()).count();
    if (more > 0) {
      line("  ", "    ", "and " + more + " more that could make less, all in --json");
    }
    leftOut(held);
  }

  private void leftOut(HeldOpen held) {
    if (!held.leftOut().isEmpty()) {
      line("  ", "    ", "not looked at: " + String.join("; ", held.leftOut()));
    }
  }

  private void suspect(Suspect s) {
    Cause cause = s.cause();
    String name = cause.subject() + ": " + cause.what();
    if (s.measured()) {
      String off = off(cause, cause.off().getAsDouble());
      String does = s.could() < 0 ? "closes it by " : "opens it by ";
      line("  ", "    ", name + ", found " + off + ": " + does + style.gap(Math.abs(s.could())));
    } else {
      String alone = off(cause, s.alone().orElse(Double.NaN));
      line(
          "  ",
          "    ",
          name
              + ", not measured: could make "
              + style.gap(s.could())
              + "; alone it would be "
              + alone);
    }
  }

  /** How far something is off, with words for which way. */
  private String off(Cause cause, double by) {
    String size = cause.angle() ? Angle.degrees(Math.abs(by)) : style.gap(Math.abs(by));
    boolean length = cause.what().equals("shoulder to shoulder");
    boolean gap = cause.what().equals("shoulder gap") || cause.what().startsWith("tenon meets");
    if (gap) {
      return size;
    }
    return size + (by < 0 ? (length ? " short" : " less") : (length ? " long" : " more"));
  }

  // ---- the chair closed again ----

  private void remade(Remade remade) {
    if (!remade.changes().isEmpty()) {
      head("STILL TO BE MADE, to fit what is made");
      remade.changes().forEach(this::change);
    }
    if (!remade.conflicts().isEmpty()) {
      head("MADE PARTS AT ODDS");
      remade.conflicts().forEach(this::conflict);
      cures(remade.cures());
    }
    if (!remade.frames().isEmpty()) {
      head("SQUARE");
      remade.frames().forEach(this::square);
    }
    if (!remade.leftOut().isEmpty()) {
      head("LEFT OUT, fit it to what is made");
      remade.leftOut().forEach(this::leftOut);
    }
  }

  private void leftOut(LeftOut l) {
    String by = style.gap(l.by());
    line("  ", "    ", l.what() + ": the parts around it stand up to " + by + " off the plan");
  }

  private void change(Change c) {
    String size = c.angle() ? Angle.degrees(Math.abs(c.by())) : style.gap(Math.abs(c.by()));
    String text =
        c.planned().isPresent()
            ? style.length(c.planned().getAsDouble() + c.by())
                + ", "
                + size
                + more(c)
                + " than the planned "
                + style.length(c.planned().getAsDouble())
            : (c.by() < 0 ? "shorter by " : c.what().startsWith("length") ? "longer by " : "by ")
                + size;
    line("  ", "    ", c.part() + ": " + c.what() + " " + text + because(c.because()));
  }

  private static String more(Change c) {
    boolean across = c.what().equals("width") || c.what().equals("thickness");
    return c.by() < 0 ? (across ? " less" : " shorter") : (across ? " more" : " longer");
  }

  private String because(List<Because> all) {
    if (all.isEmpty()) {
      return "";
    }
    return all.stream()
        .map(b -> b.cause().subject() + " " + off(b.cause(), b.cause().off().getAsDouble()))
        .distinct()
        .collect(Collectors.joining(", ", ", because of ", ""));
  }

  private void conflict(Conflict c) {
    line(
        "  ",
        "    ",
        c.joint()
            + ": open by "
            + style.gap(c.open())
            + " at its widest, more than "
            + style.gap(c.limit())
            + because(c.because()));
  }

  private void cures(List<Cure> cures) {
    if (cures.isEmpty()) {
      line("  ", "    ", "no one length closes them: make more than one of these parts anew");
    }
    for (Cure c : cures) {
      String parts = String.join(" and ", c.parts());
      String by = style.gap(Math.abs(c.by()));
      String each = c.parts().size() > 1 ? " each" : "";
      line(
          "  ",
          "    ",
          c.trims()
              ? "trim " + parts + " by " + by + each + " between the shoulders"
              : "or make " + parts + " anew, " + by + each + " longer: it cannot be made longer");
    }
  }

  private void square(Square s) {
    line(
        "  ",
        "    ",
        s.frame()
            + " frame: as the made parts are, the diagonal from the left is "
            + longer(s.expected())
            + " than that from the right, planned "
            + longer(s.planned()));
    if (s.measured().isPresent()) {
      double racked = s.racked().getAsDouble();
      String side = racked > 0 ? "left" : "right";
      line(
          "    ",
          "    ",
          "it is "
              + longer(s.measured().getAsDouble())
              + ": "
              + (Math.abs(racked) < 0.05
                  ? "nothing to pull"
                  : "pull the diagonal from the "
                      + side
                      + " together until it has gone in by "
                      + style.gap(Math.abs(racked) / 2)));
      larger(s);
    }
  }

  /** Pulling makes one diagonal shorter by what the other gains; both together is another size. */
  private void larger(Square s) {
    double by = s.larger().orElse(0);
    if (Math.abs(by) <= LARGER) {
      return;
    }
    boolean more = by > 0;
    String second =
        s.frame().equals("seat") ? more ? "deeper" : "shallower" : more ? "taller" : "lower";
    line(
        "    ",
        "    ",
        "both diagonals are "
            + style.gap(Math.abs(by))
            + (more ? " longer" : " shorter")
            + " than the made parts make them, and no pulling changes that: the frame is about "
            + style.gap(Math.abs(s.across()))
            + (more ? " wider" : " narrower")
            + ", or "
            + style.gap(Math.abs(s.along()))
            + " "
            + second
            + ", or some of both; measure its rails from shoulder to shoulder, and its shoulders"
            + " for gaps");
  }

  private String longer(double by) {
    return style.gap(Math.abs(by)) + (by < 0 ? " shorter" : " longer");
  }

  private void answer(Afterwards all) {
    long conflicts = all.told().stream().filter(Told::conflict).count();
    if (all.told().isEmpty()) {
      out.append("NOTHING MEASURED\n");
    } else if (conflicts == 0) {
      out.append('\n').append(style.green("AS PLANNED")).append('\n');
    } else {
      String answer = style.amber("DIFFERS FROM THE PLAN");
      out.append('\n').append(answer).append(" in ").append(conflicts);
      out.append(" of ").append(all.told().size()).append('\n');
    }
  }
}
