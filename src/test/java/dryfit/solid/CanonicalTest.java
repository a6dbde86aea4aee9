package dryfit.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.geometry.Frame;
import dryfit.geometry.MassProperties;
import dryfit.geometry.MeshCheck;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CanonicalTest {
  private static final double STEP = Tolerances.sameShape();
  private static final List<Vec3> CORNERS =
      List.of(
          new Vec3(0, 0, 0),
          new Vec3(30, 0, 0),
          new Vec3(30, 20, 0),
          new Vec3(0, 20, 0),
          new Vec3(4, 3, 10),
          new Vec3(26, 3, 10),
          new Vec3(26, 17, 10),
          new Vec3(4, 17, 10));

  private static Content canonical(Csg shape) {
    return Content.of(Canonical.shape(shape, STEP));
  }

  @Test
  void theSameCellFromCornersInAnyOrderIsTheSame() {
    Content first = canonical(Convex.hull(CORNERS).asLeaf("/a"));
    Random random = new Random(7);
    for (int i = 0; i < 20; i++) {
      List<Vec3> mixed = new ArrayList<>(CORNERS);
      Collections.shuffle(mixed, random);
      assertThat(canonical(Convex.hull(mixed).asLeaf("/a"))).isEqualTo(first);
    }
  }

  @Test
  void theErrorOfACalculationIsNoDifference() {
    Frame there =
        Frame.of(new Vec3(612.3, -87.1, 433.9), new Vec3(1, 0.3, -0.2), new Vec3(0, 1, 0.4));
    Csg cell = Convex.hull(CORNERS).asLeaf("/a");
    Csg and = Convex.hull(CORNERS).placed(there).localTo(there).asLeaf("/a");
    assertThat(Content.of(and)).isNotEqualTo(Content.of(cell));
    assertThat(canonical(and)).isEqualTo(canonical(cell));
  }

  @Test
  void aMirroredMirrorImageIsTheSameEvenWhereItsOutlineHasAHollow() {
    List<Vec2> outline =
        List.of(
            new Vec2(0, 0), new Vec2(50, 0), new Vec2(50, 30), new Vec2(25, 12), new Vec2(0, 30));
    Csg.Leaf leaf = Extrusion.of(outline, -4, 4, Frame.CHAIR, "/a");
    Csg twice =
        new Csg.Leaf(
            dryfit.geometry.Meshes.mirroredZ(leaf.mesh()),
            leaf.cells().stream().map(Convex::mirroredZ).toList());
    assertThat(canonical(twice)).isEqualTo(canonical(leaf));
  }

  /** Cutting asks whether a corner lies on a face; what was rounded must still answer yes. */
  @Test
  void roundedCellsWithManySlantingFacesCanBeCutAsBefore() {
    List<Vec3> bowl = new ArrayList<>();
    for (int ring = 0; ring <= 6; ring++) {
      for (int i = 0; i < 48; i++) {
        double r = 150 * ring / 6.0;
        double angle = 2 * Math.PI * (i + ring * 0.3) / 48 + 0.01;
        bowl.add(
            new Vec3(
                r * Math.cos(angle), r * Math.sin(angle), -12 * (1 - Math.pow(ring / 6.0, 2))));
      }
    }
    bowl.add(new Vec3(0, 0, -12));
    Convex dish = Convex.hull(bowl);
    Csg rounded = Canonical.shape(dish.asLeaf("/a"), STEP);
    List<Convex> board = Cells.of(CellsTest.box(-200, -200, -30, 200, 200, 0));
    assertThat(Cells.volume(Cells.common(Cells.of(rounded), board)))
        .isCloseTo(dish.volume(), within(1e-3));
    assertThat(Cells.volume(Cells.minus(board, Cells.of(rounded))))
        .isCloseTo(400.0 * 400 * 30 - dish.volume(), within(1e-3));
  }

  @Test
  void anotherOriginOrAnotherSizeIsAnotherShape() {
    Content first = canonical(Convex.hull(CORNERS).asLeaf("/a"));
    assertThat(canonical(Convex.hull(CORNERS).asLeaf("/b"))).isNotEqualTo(first);
    List<Vec3> larger = CORNERS.stream().map(p -> p.times(1 + 1e-8)).toList();
    assertThat(canonical(Convex.hull(larger).asLeaf("/a"))).isNotEqualTo(first);
  }

  @Test
  void cutAndJoinedShapesDifferThoughTheirPiecesAreTheSame() {
    Csg a = Convex.hull(CORNERS).asLeaf("/a");
    Csg b = CellsTest.box(0, 0, 0, 5, 5, 5);
    assertThat(canonical(a.minus(List.of(b)))).isNotEqualTo(canonical(a.plus(List.of(b))));
    assertThat(canonical(a.minus(List.of(b)))).isNotEqualTo(canonical(b.minus(List.of(a))));
  }

  @Test
  void whatIsWrittenAnewIsStillClosedAndHoldsAsMuch() {
    Csg.Leaf leaf = Convex.hull(CORNERS).asLeaf("/a");
    Csg.Leaf anew = (Csg.Leaf) Canonical.shape(leaf, STEP);
    assertThat(MeshCheck.problems(anew.mesh())).isEmpty();
    assertThat(MassProperties.of(anew.mesh()).volume())
        .isCloseTo(MassProperties.of(leaf.mesh()).volume(), within(1e-4));
    assertThat(Cells.volume(anew.cells())).isCloseTo(Cells.volume(leaf.cells()), within(1e-4));
  }

  @Test
  void aKernelWithoutAStepGetsTheShapeAsItIs() {
    Csg a = Convex.hull(CORNERS).asLeaf("/a");
    assertThat(Canonical.shape(a, 0)).isSameAs(a);
  }
}
