package dryfit.export.picture;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.geometry.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;

class MarkLayoutTest {
  private static final Camera.Sheet SHEET =
      Camera.at(Vec3.ZERO, Vec3.BACK.negated(), 1000, Vec3.UP, 0.5).sheet(800, 600);

  private static MarkLayout layout() {
    return new MarkLayout(SHEET, 12, 12);
  }

  @Test
  void marksOnTopOfEachOtherShareARing() {
    List<MarkLayout.Ring> rings =
        layout()
            .rings(
                List.of(
                    new Mark(Vec3.ZERO, "1"),
                    new Mark(new Vec3(200, 0, 0), "2"),
                    new Mark(new Vec3(1, 0, 1), "3")));
    assertThat(rings).extracting(MarkLayout.Ring::label).containsExactly("1,3", "2");
  }

  @Test
  void labelsOfNeighboursDoNotCoverEachOther() {
    MarkLayout layout = layout();
    List<MarkLayout.Ring> rings =
        layout.rings(
            List.of(
                new Mark(Vec3.ZERO, "11"),
                new Mark(new Vec3(25, 0, 0), "12"),
                new Mark(new Vec3(50, 0, 0), "13")));
    assertThat(rings).hasSize(3);
    double wide = Lettering.width("11", 12);
    List<MarkLayout.Label> labels = rings.stream().map(layout::beside).toList();
    for (int i = 0; i < 3; i++) {
      for (int k = i + 1; k < 3; k++) {
        boolean apart =
            Math.abs(labels.get(i).left() - labels.get(k).left()) >= wide
                || Math.abs(labels.get(i).middleY() - labels.get(k).middleY()) >= 12;
        assertThat(apart).isTrue();
      }
    }
  }

  @Test
  void aLabelStaysInThePicture() {
    MarkLayout layout = layout();
    double right = SHEET.camera().tangent() * 1000 * 4 / 3;
    MarkLayout.Ring ring = layout.rings(List.of(new Mark(new Vec3(right - 5, 0, 0), "17"))).get(0);
    MarkLayout.Label label = layout.beside(ring);
    assertThat(ring.x()).isGreaterThan(770);
    assertThat(label.left() + Lettering.width("17", 12)).isLessThan(800);
  }

  @Test
  void whatIsBehindTheEyeIsLeftOut() {
    assertThat(layout().rings(List.of(new Mark(new Vec3(0, -2000, 0), "1")))).isEmpty();
  }
}
