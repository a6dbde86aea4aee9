package dryfit.app;

import dryfit.document.Reading;
import java.nio.file.Path;
import java.time.Duration;

/** A program that changes a draft and is killed while it waits. */
final class CrashingMaker {
  private CrashingMaker() {}

  /**
   * @param args the state folder, the document, the width to change it to
   */
  public static void main(String[] args) throws InterruptedException {
    Draft draft = ((Reading.Accepted<Draft>) Draft.open(Path.of(args[1]))).value();
    Kept kept = new Kept(new StateFolder(Path.of(args[0])), Duration.ofMillis(20));
    Keeping keeping = kept.keep(draft, System.err::println);
    draft.choose("low");
    draft.dimension("width", args[2]);
    Thread.sleep(Duration.ofMinutes(5).toMillis());
    keeping.close();
  }
}
