package dryfit.app;

import dryfit.build.Chair;
import dryfit.document.Document;
import dryfit.document.DocumentReader;
import dryfit.document.DocumentWriter;
import dryfit.document.Problem;
import dryfit.document.Reading;
import dryfit.fit.loop.Afterwards;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Writes what was measured on a real part into its document. */
public final class MeasureParts {
  private MeasureParts() {}

  /**
   * A measurement as the maker gives it.
   *
   * @param subject the key of what {@code of} is: part, joint or frame
   * @param hand which of a pair of joints, or null
   * @param at which edge of a shoulder, or null
   * @param value with its unit, such as {@code 17.6 mm}
   * @param on the day, year-month-day
   */
  public record Noted(
      String subject, String of, String what, String hand, String at, String value, String on) {
    String json() {
      List<String> members = new ArrayList<>();
      members.add(quoted(subject) + ": " + quoted(of));
      members.add(quoted("what") + ": " + quoted(what));
      if (hand != null) {
        members.add(quoted("hand") + ": " + quoted(hand));
      }
      if (at != null) {
        members.add(quoted("at") + ": " + quoted(at));
      }
      members.add(quoted("value") + ": " + quoted(value));
      members.add(quoted("on") + ": " + quoted(on));
      return "{ " + String.join(", ", members) + " }";
    }

    private static String quoted(String text) {
      return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
  }

  /** What follows from all measurements of a chair. */
  public static Afterwards afterwards(Chair chair) {
    return Afterwards.of(chair);
  }

  /**
   * Adds it to the file, all else to the letter as it was. A measurement that the document cannot
   * have leaves the file alone.
   *
   * @return what is wrong with it; nothing if it was written
   * @throws IOException if the file cannot be written; it is then as it was
   */
  public static List<Problem> add(Path file, Noted noted) throws IOException {
    Reading<Document> reading = DocumentReader.read(file);
    if (reading instanceof Reading.Refused<Document> refused) {
      return refused.problems();
    }
    Document document = ((Reading.Accepted<Document>) reading).value();
    Reading<Document> more =
        document.has("/measured")
            ? document.added("/measured", "", noted.json())
            : document.added("", "measured", "[\n    " + noted.json() + "\n  ]");
    if (more instanceof Reading.Refused<Document> refused) {
      return refused.problems();
    }
    DocumentWriter.save(file, ((Reading.Accepted<Document>) more).value().text());
    return List.of();
  }
}
