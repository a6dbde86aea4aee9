package dryfit.export.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.app.KernelChoice;
import dryfit.app.OpenChair;
import dryfit.build.Part;
import dryfit.document.Design;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class ContourTest {
  private static Mesh mesh(String file, String label) {
    OpenChair.Ready ready =
        (OpenChair.Ready)
            OpenChair.open(Path.of("models", file), Design.AS_DRAWN, KernelChoice.USUAL.kernel());
    return ready.chair().parts().stream()
        .filter(p -> p.label().equals(label))
        .map(Part::solid)
        .findFirst()
        .orElseThrow()
        .mesh();
  }

  @Test
  void aRoundStretcherSeenFromTheSideIsOutlinedAtItsGreatestWidth() {
    Mesh stretcher = mesh("kiln-stool.json", "middle-stretcher");
    double length = stretcher.bounds().size().x();
    double middle = stretcher.bounds().middle().x();
    Contour contour = Contour.of(stretcher);
    assertThat(contour.isEmpty()).isFalse();
    int[] ends = contour.seenFrom(new Vec3(middle, 0, 1e6));
    assertThat(ends).isNotEmpty();
    double greatest = 0;
    for (int point : ends) {
      Vec3 p = stretcher.point(point);
      greatest = Math.max(greatest, Math.abs(p.y()));
      if (Math.abs(p.x() - middle) < length / 4) {
        // The facets of a circle turn away within one facet of its side.
        assertThat(Math.abs(p.z())).isLessThan(0.35 * Math.abs(p.y()));
      }
    }
    assertThat(greatest).isCloseTo(stretcher.bounds().size().y() / 2, within(0.05 * greatest));
  }
}
