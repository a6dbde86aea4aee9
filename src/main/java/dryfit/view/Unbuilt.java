package dryfit.view;

import dryfit.app.Version;
import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.document.Reading;
import java.util.Optional;

/**
 * A document that says nothing wrong, and yet no chair comes of it.
 *
 * @param design of the variant on the bench
 */
record Unbuilt(Document document, Design design) {

  /** Nothing if the document itself is unsound: then its numbers are not known. */
  static Optional<Unbuilt> of(Version version) {
    return version
        .document()
        .flatMap(
            document ->
                document.design(version.variant()) instanceof Reading.Accepted<Design> accepted
                    ? Optional.of(new Unbuilt(document, accepted.value()))
                    : Optional.empty());
  }
}
