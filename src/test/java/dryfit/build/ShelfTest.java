package dryfit.build;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.document.DocumentReader;
import dryfit.document.Hand;
import dryfit.document.Reading;
import dryfit.geometry.Frame;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import dryfit.solid.Cells;
import dryfit.solid.Content;
import dryfit.solid.Csg;
import dryfit.solid.Extrusion;
import dryfit.solid.Kernel;
import dryfit.solid.exact.ExactKernel;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShelfTest {
  private final List<String> made = Collections.synchronizedList(new ArrayList<>());
  private Shelf shelf;

  /** Counts what is made; it makes it with the exact kernel. */
  private final Kernel counting =
      new Kernel() {
        private final Kernel exact = new ExactKernel();

        @Override
        public String name() {
          return "counting";
        }

        @Override
        public double step() {
          return exact.step();
        }

        @Override
        public Mesh evaluate(Csg what) {
          made.add(origin(what));
          return exact.evaluate(what);
        }
      };

  @BeforeEach
  void emptyShelf() {
    shelf = new Shelf(counting);
  }

  /** Two outlines crossed that are not alike on both sides of z = 0. */
  private static Csg crossed() {
    Frame page = Frame.of(Vec3.ZERO, Vec3.RIGHT, new Vec3(0, 0, 1));
    List<Vec2> plan = List.of(new Vec2(0, 1), new Vec2(90, 4), new Vec2(80, 33), new Vec2(5, 21));
    List<Vec2> side = List.of(new Vec2(1, 0), new Vec2(88, 2), new Vec2(40, 9), new Vec2(2, 28));
    return new Csg.Common(
        List.of(
            Extrusion.of(plan, -40, 40, page, "/arm"),
            Extrusion.of(side, -50, 50, Frame.CHAIR, "/arm")));
  }

  /** The left is turned into a right to be made: it has to come to the very same. */
  @Test
  void aLeftThatIsTurnedIsTheRightToTheLastBit() {
    Csg drawn = crossed();
    Csg right = shelf.canonical(drawn);
    Csg left = shelf.canonical(Shapes.mirroredZ(drawn));
    Csg turned = shelf.canonical(Shapes.mirroredZ(left));
    assertThat(Content.of(turned)).isEqualTo(Content.of(right));
    assertThat(Content.of(left)).isNotEqualTo(Content.of(right));
  }

  @Test
  void aFormStaysTheVerySameForBothHands() {
    Csg form = shelf.form("arm", ShelfTest::crossed);
    assertThat(shelf.form("arm", () -> null)).isSameAs(form);
    assertThat(shelf.canonical(form)).isSameAs(form);
    Csg left = shelf.canonical(Shapes.mirroredZ(form));
    assertThat(shelf.canonical(Shapes.mirroredZ(left))).isSameAs(form);
    assertThat(Cells.volume(Cells.of(left)))
        .as("asked before the right")
        .isEqualTo(Cells.volume(Cells.of(form)));
  }

  private static String origin(Csg what) {
    if (what instanceof Csg.Leaf leaf) {
      return leaf.mesh().origin(0).replace("/parts/", "");
    } else if (what instanceof Csg.Union union) {
      return origin(union.of().get(0));
    } else if (what instanceof Csg.Common common) {
      return origin(common.of().get(0));
    }
    return origin(((Csg.Cut) what).from());
  }

  private static String frame(int railTop, int railThick) {
    return Sketch.text(
        Sketch.SQUARE_LEGS
            + ","
            + Sketch.FRONT_RAIL
                .replace("380", Integer.toString(railTop))
                .replace("20]", railThick + "]")
            + ","
            + Sketch.SIDE_RAIL,
        """
        "front": { "tenon": "front-rail both", "into": "front-leg",
          "thickness": 8, "width": 40, "length": 20 },
        "side": { "tenon": "side-rail back", "into": "back-leg",
          "thickness": 8, "width": 40, "length": 20 },
        "side front": { "tenon": "side-rail front", "into": "front-leg",
          "thickness": 8, "width": 40, "length": 14 }""");
  }

  private Chair built(String text) {
    return built(accepted(DocumentReader.read("shelf.json", text)), shelf);
  }

  private static Chair built(Document document, Shelf on) {
    return accepted(ChairBuilder.build(accepted(document.design(Design.AS_DRAWN)), on));
  }

  private static <T> T accepted(Reading<T> reading) {
    if (reading instanceof Reading.Accepted<T> accepted) {
      return accepted.value();
    }
    throw new AssertionError(((Reading.Refused<T>) reading).problems().toString());
  }

  @Test
  void eachDifferentShapeIsMadeOnceAndAPairIsOneShape() {
    built(frame(380, 20));
    assertThat(made).containsExactlyInAnyOrder("front-leg", "back-leg", "front-rail", "side-rail");
  }

  @Test
  void theSameChairAgainMakesNothing() {
    built(frame(380, 20));
    made.clear();
    built(frame(380, 20));
    assertThat(made).isEmpty();
  }

  @Test
  void aChangeMakesOnlyThePartsThatItTouches() {
    built(frame(380, 20));
    made.clear();
    built(frame(380, 22));
    assertThat(made).containsExactlyInAnyOrder("front-rail", "front-leg");
  }

  @Test
  void aPartThatOnlyMovesIsNotMadeAgain() {
    built(frame(380, 20));
    made.clear();
    Chair chair = built(frame(371, 20));
    assertThat(made).containsExactly("front-leg");
    assertThat(Sketch.bounds(Sketch.part(chair, "front-rail")).high().z()).isEqualTo(371);
  }

  @Test
  void theLeftOfAPairIsTheMirrorImageToTheLastBit() {
    Chair chair = built(frame(380, 20));
    Mesh right = Sketch.part(chair, "front-leg", Hand.RIGHT).placedMesh();
    Mesh left = Sketch.part(chair, "front-leg", Hand.LEFT).placedMesh();
    List<Vec3> mirrored = new ArrayList<>();
    for (int i = 0; i < right.pointCount(); i++) {
      mirrored.add(right.point(i).mirrored());
    }
    assertThat(left.pointCount()).isEqualTo(right.pointCount());
    for (int i = 0; i < left.pointCount(); i++) {
      assertThat(left.point(i)).isEqualTo(mirrored.get(i));
    }
  }

  @Test
  void whatWasLongNotUsedIsForgotten() {
    built(frame(380, 20));
    for (int i = 0; i < 30; i++) {
      built(frame(300, 20));
    }
    made.clear();
    built(frame(380, 20));
    assertThat(made).containsExactly("front-leg");
  }

  /** What a chair is must not depend on what was built before it. */
  @ParameterizedTest
  @CsvSource({
    "harbour-armchair, seatTop, 440, 437.3",
    "harbour-armchair, frontWidth, 560, 571",
    "harbour-armchair, leg, 42, 43",
    "orchard-side-chair, seatTop, 17 1/2 in, 17 in",
    "kiln-stool, seatTop, 640, 655",
  })
  void aChairFromTheShelfIsTheChairMadeAfresh(
      String model, String dimension, String before, String after) {
    Document document = accepted(DocumentReader.read(Path.of("models", model + ".json")));
    String place = "/dimensions/" + dimension;
    if (document.edited(place + "/value", "1") instanceof Reading.Accepted<Document>) {
      place += "/value";
    }
    Document first = accepted(document.edited(place, quoted(before)));
    Document second = accepted(document.edited(place, quoted(after)));
    built(first, shelf);
    List<Content> warm = contents(built(second, shelf));
    assertThat(warm).isEqualTo(contents(built(second, new Shelf(counting))));
    assertThat(contents(built(first, shelf)))
        .isEqualTo(contents(built(first, new Shelf(counting))))
        .isNotEqualTo(warm);
  }

  private static String quoted(String value) {
    return value.contains(" ") ? '"' + value + '"' : value;
  }

  private static List<Content> contents(Chair chair) {
    return chair.parts().stream()
        .flatMap(
            p ->
                List.of(
                    Content.of(new Csg.Leaf(p.placedMesh(), p.placedCells())),
                    Content.of(new Csg.Leaf(p.solid().mesh(), p.bodyCells())))
                    .stream())
        .toList();
  }
}
