package dryfit.fit.spread;

import dryfit.document.Document;
import dryfit.document.DocumentReader;
import dryfit.document.Reading;
import dryfit.fit.Fitted;
import dryfit.solid.exact.ExactKernel;

/** Spreads small chairs written out in tests. */
public final class Spreader {
  private Spreader() {}

  /** The square frame, inches; its dimension {@code rail} has this accuracy. */
  public static String rail(String accuracy) {
    return Fitted.frame("1 3/4", "7/8", "1/4", "3/8", "3/4", "")
        .replace(
            "\"rail\": \"7/8\"",
            "\"rail\": {\"value\": \"7/8\", \"accuracy\": \"" + accuracy + "\"}");
  }

  /** The spreads of a document. */
  public static Spreads of(String json) {
    Document document =
        ((Reading.Accepted<Document>) DocumentReader.read("test.json", json)).value();
    return Spreading.of(document, Fitted.of(json), ExactKernel::new);
  }
}
