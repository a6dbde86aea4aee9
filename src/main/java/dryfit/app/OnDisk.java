package dryfit.app;

import dryfit.document.ChairFile;
import dryfit.document.Difference;
import dryfit.document.Document;
import dryfit.document.DocumentReader;
import dryfit.document.Reading;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** How the file of a draft now stands on the disk, as against what was last read or written. */
public sealed interface OnDisk {

  /** As it was. */
  record Same() implements OnDisk {}

  /** It is there no longer. */
  record Gone() implements OnDisk {}

  /** It is there but is no text that could be shown. */
  record Unreadable(String reason) implements OnDisk {}

  /**
   * Someone else has written it.
   *
   * @param file what it now says
   * @param theirs what comes of reading that
   * @param differences between the draft and the file; none are told if either is unsound
   */
  record Changed(ChairFile file, Reading<Document> theirs, List<Difference> differences)
      implements OnDisk {
    public Changed {
      differences = List.copyOf(differences);
    }
  }

  /**
   * A look at the disk that any thread may take, for reading a file can take a while.
   *
   * @param path the draft's file
   * @param known fingerprint of what was last read or written there
   * @param mine what the draft says
   */
  record Look(Path path, String known, Version mine) {

    /** Reads the file; its time alone would miss a change within one tick of the clock. */
    public OnDisk now() {
      Reading<ChairFile> reading = ChairFile.read(path);
      if (reading instanceof Reading.Refused<ChairFile> refused) {
        return Files.exists(path)
            ? new Unreadable(refused.problems().get(0).message())
            : new Gone();
      }
      ChairFile file = ((Reading.Accepted<ChairFile>) reading).value();
      if (file.fingerprint().equals(known)) {
        return new Same();
      }
      Reading<Document> theirs = DocumentReader.read(path.toString(), file.text());
      List<Difference> differences =
          theirs instanceof Reading.Accepted<Document> accepted
              ? mine.document()
                  .map(own -> Difference.between(own, accepted.value()))
                  .orElse(List.of())
              : List.of();
      return new Changed(file, theirs, differences);
    }
  }
}
