package dryfit.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.build.Chair;
import dryfit.build.ChairBuilder;
import dryfit.build.Part;
import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.document.DocumentReader;
import dryfit.document.Reading;
import dryfit.solid.exact.ExactKernel;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class CrossSectionTest {

  /** By the shoelace formula; holes count against what is round them. */
  private static double area(List<List<Vec2>> outlines) {
    double sum = 0;
    for (List<Vec2> loop : outlines) {
      for (int i = 0; i < loop.size(); i++) {
        sum += loop.get(i).cross(loop.get((i + 1) % loop.size())) / 2;
      }
    }
    return sum;
  }

  private static Chair harbour() {
    Document document =
        ((Reading.Accepted<Document>) DocumentReader.read(Path.of("models/harbour-armchair.json")))
            .value();
    Design design = ((Reading.Accepted<Design>) document.design(Design.AS_DRAWN)).value();
    return ((Reading.Accepted<Chair>) ChairBuilder.build(design, new ExactKernel())).value();
  }

  @Test
  void cutsTurnedIntoSlicesAddUpToTheVolumeOfThePart() {
    for (Part part : harbour().parts()) {
      Mesh mesh = part.solid().mesh();
      Box box = mesh.bounds();
      int slices = 400;
      double thick = box.size().x() / slices;
      double volume = 0;
      for (int i = 0; i < slices; i++) {
        Vec3 origin = new Vec3(box.low().x() + (i + 0.5) * thick, 0, 0);
        Frame sheet = Frame.of(origin, Vec3.BACK, Vec3.UP);
        volume += area(CrossSection.of(mesh, sheet)) * thick;
      }
      double exact = MassProperties.of(mesh).volume();
      assertThat(volume).as(part.label()).isCloseTo(exact, within(0.004 * exact));
    }
  }

  @Test
  void aPlaneThatPassesByMeetsNothing() {
    Mesh mesh = harbour().parts().get(0).solid().mesh();
    Frame sheet = Frame.of(new Vec3(-10, 0, 0).plus(mesh.bounds().low()), Vec3.BACK, Vec3.UP);
    assertThat(CrossSection.of(mesh, sheet)).isEmpty();
  }
}
