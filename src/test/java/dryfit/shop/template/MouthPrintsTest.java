package dryfit.shop.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.build.Chair;
import dryfit.fit.Fitted;
import dryfit.geometry.Vec2;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Mouths of the demo chairs' mortises. */
class MouthPrintsTest {

  private static List<MouthPrint> prints(String model, String part) throws IOException {
    Chair chair = Fitted.of(Files.readString(Path.of("models/" + model + ".json"))).chair();
    return MouthPrints.of(chair, List.of(part)).stream()
        .map(m -> ((MouthPrints.Made.Ready) m).print())
        .toList();
  }

  private static double area(List<Vec2> loop) {
    double twice = 0;
    for (int i = 0; i < loop.size(); i++) {
      twice += loop.get(i).cross(loop.get((i + 1) % loop.size()));
    }
    return Math.abs(twice) / 2;
  }

  /**
   * A plane across a cylinder cuts an ellipse whose area is that of the circle over the cosine of
   * the lean (elementary geometry).
   */
  @Test
  void aLeaningBoreHasAnEllipseForAMouth() throws IOException {
    List<MouthPrint> legs =
        prints("millrace-armchair", "seat").stream()
            .filter(p -> p.joint().startsWith("front leg to seat"))
            .toList();
    assertThat(legs).hasSize(2);
    for (MouthPrint leg : legs) {
      assertThat(Math.toDegrees(leg.lean())).isGreaterThan(5);
      double least = 2 * Math.PI;
      double across = Double.MAX_VALUE;
      for (int i = 0; i < 360; i++) {
        Vec2 way = new Vec2(Math.cos(least * i / 720), Math.sin(least * i / 720));
        double high = leg.loops().get(0).stream().mapToDouble(p -> p.dot(way)).max().orElse(0);
        double low = leg.loops().get(0).stream().mapToDouble(p -> p.dot(way)).min().orElse(0);
        across = Math.min(across, high - low);
      }
      double circle = Math.PI * across * across / 4;
      assertThat(area(leg.loops().get(0)))
          .isCloseTo(circle / Math.cos(leg.lean()), within(circle * 0.01));
    }
  }

  @Test
  void twoHandsHaveMirroredMouthsAtTheSameDistances() throws IOException {
    List<MouthPrint> all = prints("harbour-armchair", "front-leg");
    MouthPrint right =
        all.stream()
            .filter(p -> p.joint().equals("side rail to front leg, right"))
            .findFirst()
            .orElseThrow();
    MouthPrint left =
        all.stream()
            .filter(p -> p.joint().equals("side rail to front leg, left"))
            .findFirst()
            .orElseThrow();
    assertThat(Math.abs(left.edge())).isCloseTo(Math.abs(right.edge()), within(0.002));
    assertThat(Math.abs(left.end())).isCloseTo(Math.abs(right.end()), within(0.002));
    assertThat(left.deep()).isCloseTo(right.deep(), within(0.002));
    assertThat(area(left.loops().get(0))).isCloseTo(area(right.loops().get(0)), within(0.1));
    assertThat(left.leansTo().y()).isCloseTo(-right.leansTo().y(), within(1e-6));
  }

  @Test
  void aRoundPartHasNoFlatMouthAndThatIsTold() throws IOException {
    Chair chair = Fitted.of(Files.readString(Path.of("models/ferry-ladder-back.json"))).chair();
    assertThat(MouthPrints.of(chair, List.of("front-post")))
        .isNotEmpty()
        .allMatch(MouthPrints.Made.Without.class::isInstance);
  }
}
