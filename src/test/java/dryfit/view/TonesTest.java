package dryfit.view;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.app.KernelChoice;
import dryfit.app.OpenChair;
import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.document.Design;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Cut faces of parts that are joined never have one tone, and there are tones enough. */
class TonesTest {
  @Test
  void joinedPartsHaveDifferentTonesInEveryModel() throws IOException {
    List<Path> models;
    try (Stream<Path> all = Files.list(Path.of("models"))) {
      models = all.filter(p -> p.toString().endsWith(".json")).sorted().toList();
    }
    assertThat(models).isNotEmpty();
    for (Path model : models) {
      Chair chair = chair(model);
      int[] tones = Tones.of(chair);
      for (Joint joint : chair.joints()) {
        assertThat(tones[joint.tenoned()])
            .as(model + ": " + joint.label())
            .isNotEqualTo(tones[joint.mortised()]);
      }
      assertThat(Arrays.stream(tones).max().orElseThrow())
          .as(model + ": tones")
          .isLessThan(SceneDrawing.SAWN.size());
    }
  }

  private static Chair chair(Path model) {
    OpenChair.Opened opened = OpenChair.open(model, Design.AS_DRAWN, KernelChoice.USUAL.kernel());
    return ((OpenChair.Ready) opened).chair();
  }
}
