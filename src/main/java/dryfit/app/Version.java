package dryfit.app;

import dryfit.document.Document;
import dryfit.document.Reading;
import java.util.Optional;

/**
 * What a draft says at one moment. Immutable, so that any thread may work on it.
 *
 * @param number rises with every change, whether made, undone or done again
 * @param text the document's text, whether sound or not
 * @param variant the variant chosen, or {@link dryfit.document.Design#AS_DRAWN}
 * @param reading what comes of reading the text
 */
public record Version(long number, String text, String variant, Reading<Document> reading) {

  /** The document, if the text is sound. */
  public Optional<Document> document() {
    return reading instanceof Reading.Accepted<Document> accepted
        ? Optional.of(accepted.value())
        : Optional.empty();
  }
}
