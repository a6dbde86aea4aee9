package dryfit.export;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.export.paper.Typeface;
import dryfit.geometry.Vec2;
import dryfit.shop.BoardLayout.Placed;
import java.util.List;
import org.junit.jupiter.api.Test;

class BoardNamesTest {
  private static Placed part(String label, double x, double long0, double wide) {
    List<Vec2> net =
        List.of(
            new Vec2(x, 0), new Vec2(x + long0, 0), new Vec2(x + long0, wide), new Vec2(x, wide));
    return new Placed(label, net, net, "", false, 0, 0);
  }

  @Test
  void aNameThatHasRoomIsWrittenOnThePart() {
    BoardNames names = BoardNames.of(List.of(part("seat", 0, 400, 300)), 0.1, 0);
    assertThat(names.numbers()).isZero();
    assertThat(names.names().get(0).written()).isEqualTo("seat");
    assertThat(names.legend(2.6, 200)).isEmpty();
  }

  @Test
  void smallPartsHaveNumbersThatGoOnFromBoardToBoard() {
    List<Placed> parts =
        List.of(
            part("seat", 0, 400, 300),
            part("stretcher between the legs", 400, 100, 60),
            part("spindle 1", 500, 600, 16));
    BoardNames names = BoardNames.of(parts, 0.1, 4);
    assertThat(names.names())
        .extracting(BoardNames.Name::written)
        .containsExactly("seat", "5", "6");
    assertThat(names.legend(2.6, 200)).containsExactly("5 stretcher between the legs; 6 spindle 1");
  }

  @Test
  void nothingIsWrittenSmallerThanCanBeRead() {
    for (double wide = 5; wide < 400; wide += 5) {
      Placed part = part("low stretcher right", 0, wide, 30);
      BoardNames.Name name = BoardNames.of(List.of(part), 0.1, 0).names().get(0);
      assertThat(name.size()).isGreaterThanOrEqualTo(BoardNames.LEAST);
      if (name.number() == 0) {
        assertThat(Typeface.width(name.text(), name.size())).isLessThanOrEqualTo(wide * 0.1);
      }
    }
  }
}
