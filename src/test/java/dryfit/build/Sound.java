package dryfit.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.document.DocumentReader;
import dryfit.document.Hand;
import dryfit.document.Reading;
import dryfit.geometry.MeshCheck;
import dryfit.solid.Kernel;
import dryfit.solid.exact.ExactKernel;

/** Builds a sketch with the usual kernel and asks of it what must hold for every chair. */
final class Sound {
  private Sound() {}

  private static final Kernel KERNEL = new ExactKernel();

  /**
   * The chair, if every part's surface is closed and holds as much as its cells, and twins hold the
   * same.
   */
  static Chair chair(String parts, String joints) {
    Document document = accepted(DocumentReader.read("sketch.json", Sketch.text(parts, joints)));
    Chair chair = chair(document, Design.AS_DRAWN);
    for (Part part : chair.parts()) {
      if (part.hand() == Hand.RIGHT) {
        double volume = Sketch.volume(part);
        assertThat(Sketch.volume(Sketch.part(chair, part.name(), Hand.LEFT)))
            .as(part.label())
            .isCloseTo(volume, within(1e-5 * volume));
      }
    }
    return chair;
  }

  /**
   * The chair of a whole document, if every part's surface is closed and holds as much as its
   * cells.
   */
  static Chair chair(Document document, String variant) {
    Chair chair = accepted(ChairBuilder.build(accepted(document.design(variant)), KERNEL));
    for (Part part : chair.parts()) {
      assertThat(MeshCheck.problems(part.solid().mesh())).as(part.label()).isEmpty();
      double volume = Sketch.volume(part);
      assertThat(Sketch.volume(part.solid().cells()))
          .as(part.label())
          .isCloseTo(volume, within(1e-4 * volume));
    }
    return chair;
  }

  static <T> T accepted(Reading<T> reading) {
    if (reading instanceof Reading.Refused<T> refused) {
      throw new AssertionError("refused: " + refused.problems());
    }
    return ((Reading.Accepted<T>) reading).value();
  }
}
