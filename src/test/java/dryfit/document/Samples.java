package dryfit.document;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Documents for the tests, all demo data. */
final class Samples {
  private Samples() {}

  /** A chair that uses every form and every key. */
  static String everyForm() {
    try (InputStream in = Samples.class.getResourceAsStream("every-form.json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The design of a sound text. */
  static Design design(String text, String variant) {
    return accepted(document(text).design(variant));
  }

  static Document document(String text) {
    return accepted(DocumentReader.read("chair.json", text));
  }

  /** The problems of a text that must be refused. */
  static List<Problem> problems(String text) {
    Reading<Document> reading = DocumentReader.read("chair.json", text);
    if (reading instanceof Reading.Refused<Document> refused) {
      return refused.problems();
    }
    throw new AssertionError("the document was accepted");
  }

  private static <T> T accepted(Reading<T> reading) {
    if (reading instanceof Reading.Accepted<T> accepted) {
      return accepted.value();
    }
    throw new AssertionError(((Reading.Refused<T>) reading).problems().toString());
  }
}
