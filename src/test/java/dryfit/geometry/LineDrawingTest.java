package dryfit.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.solid.Convex;
import dryfit.solid.Csg;
import dryfit.solid.exact.ExactKernel;
import java.util.List;
import org.junit.jupiter.api.Test;

class LineDrawingTest {
  private static final Frame FROM_ABOVE = Frame.of(Vec3.ZERO, Vec3.RIGHT, Vec3.BACK);

  private static Csg.Leaf box(double x0, double y0, double z0, double x1, double y1, double z1) {
    return Convex.box(new Box(new Vec3(x0, y0, z0), new Vec3(x1, y1, z1))).asLeaf("/box");
  }

  private static List<LineDrawing.Line> lines(Csg csg, Frame sheet) {
    Mesh mesh = new ExactKernel().evaluate(csg);
    return LineDrawing.of(mesh, Rays.of(mesh), sheet);
  }

  private static double length(List<LineDrawing.Line> lines, boolean seen) {
    return lines.stream()
        .filter(l -> l.seen() == seen)
        .mapToDouble(l -> l.from().distance(l.to()))
        .sum();
  }

  @Test
  void ofABoxTheNearEdgesAreSeenAndTheFarOnesAreNot() {
    List<LineDrawing.Line> lines = lines(box(0, 0, 0, 30, 20, 10), FROM_ABOVE);
    assertThat(length(lines, true)).isCloseTo(100, within(1e-6));
    assertThat(length(lines, false)).isCloseTo(100, within(1e-6));
    assertThat(lines).filteredOn(LineDrawing.Line::seen).allMatch(LineDrawing.Line::outline);
  }

  @Test
  void aHoleFromBelowIsHiddenAndOneFromAboveIsSeen() {
    Csg.Leaf board = box(0, 0, 0, 30, 20, 10);
    Csg holed = board.minus(List.of(box(5, 5, -1, 15, 15, 5)));
    assertThat(length(lines(holed, FROM_ABOVE), true)).isCloseTo(100, within(1e-6));
    Csg open = board.minus(List.of(box(5, 5, 5, 15, 15, 11)));
    List<LineDrawing.Line> lines = lines(open, FROM_ABOVE);
    // The rim and the bottom of the hole coincide as seen from above.
    assertThat(length(lines, true)).isCloseTo(100 + 40 + 40, within(1e-6));
  }

  @Test
  void aLineThatRunsBehindSomethingIsCutWhereItGoesOutOfSight() {
    // A low board with a post on it: the board's far edge is hidden where the post stands before
    // it.
    Csg both = box(0, 0, 0, 100, 20, 10).plus(List.of(box(40, -5, 0, 60, 15, 50)));
    Frame front = Frame.of(Vec3.ZERO, Vec3.RIGHT, Vec3.UP);
    List<LineDrawing.Line> lines = lines(both, front);
    double seenOfTop =
        lines.stream()
            .filter(l -> l.seen() && l.from().y() == 10 && l.to().y() == 10)
            .mapToDouble(l -> l.from().distance(l.to()))
            .sum();
    assertThat(seenOfTop).isCloseTo(80, within(1e-6));
  }
}
