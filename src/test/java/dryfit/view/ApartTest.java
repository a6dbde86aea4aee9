package dryfit.view;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.build.Chair;
import dryfit.build.ChairBuilder;
import dryfit.build.Joint;
import dryfit.build.Shelf;
import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.document.DocumentReader;
import dryfit.document.Reading;
import dryfit.fit.order.Assembling;
import dryfit.geometry.Vec3;
import dryfit.solid.exact.ExactKernel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Pulled apart, a chair is apart: nothing was drawn back into what it had left before. */
class ApartTest {
  static List<Path> models() throws IOException {
    try (Stream<Path> all = Files.list(Path.of("models"))) {
      return all.filter(p -> p.toString().endsWith(".json")).sorted().toList();
    }
  }

  private static <T> T sound(Reading<T> reading) {
    return ((Reading.Accepted<T>) reading).value();
  }

  @ParameterizedTest
  @MethodSource("models")
  void atTheEndNoTenonIsInItsMortise(Path model) {
    Document document = sound(DocumentReader.read(model));
    Design design = sound(document.design(Design.AS_DRAWN));
    Chair chair = sound(ChairBuilder.build(design, new Shelf(new ExactKernel())));
    Assembling order = Assembling.of(chair);
    assertThat(order.possible()).isTrue();
    List<Vec3> moved = Apart.of(order).moved(1);

    assertThat(Apart.of(order).moved(0)).allMatch(Vec3.ZERO::equals);
    for (Joint joint : chair.joints()) {
      Vec3 apart = moved.get(joint.tenoned()).minus(moved.get(joint.mortised()));
      // Drawn out of its mortise, or far along the groove it slides in.
      boolean out = -apart.dot(joint.entry()) > joint.length();
      assertThat(out || apart.length() > 50).as(joint.label() + " " + apart).isTrue();
    }
  }
}
