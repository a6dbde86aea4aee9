package dryfit.fit.order;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.build.Chair;
import dryfit.fit.Fitted;
import dryfit.fit.order.Mark.Wrong;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which parts would also go in wrong. Demo data, invented. */
class OrientationsTest {

  /** Two legs and a rail whose tenons may be off its middle. */
  private static Chair chair(String tenonPlace, String legTenonWidth) {
    return chair(tenonPlace, legTenonWidth, "300");
  }

  private static Chair chair(String tenonPlace, String legTenonWidth, String railTop) {
    return Fitted.of(
            """
            { "format": "dryfit-chair/1", "name": "Trestle", "about": "Demo data, invented.",
              "unit": "mm", "timber": "ash-white",
              "fit": { "cheek": 0.1, "edge": 0.5, "bottom": 2, "least-wall": 0 },
              "parts": {
                "leg": { "form": "straight", "pair": true, "section": [60, 40],
                  "from": [180, 0, 0], "to": [180, 0, 400] },
                "rail": { "form": "straight", "section": [60, 20],
                  "between": ["leg right", "leg left"], "top": TOP, "centred": 0 }
              },
              "joints": {
                "right": { "tenon": "rail right", "into": "leg right", "thickness": 8, "width": 30,
                  "length": 20 PLACE },
                "left": { "tenon": "rail left", "into": "leg left", "thickness": 8,
                  "width": WIDTH, "length": 20 PLACE }
              } }
            """
                .replace("PLACE", tenonPlace)
                .replace("WIDTH", legTenonWidth)
                .replace("TOP", railTop))
        .chair();
  }

  private static List<Wrong> wrong(Chair chair, String label) {
    Optional<Mark> mark =
        Assembling.of(chair).marks().stream()
            .filter(m -> chair.parts().get(m.part()).label().equals(label))
            .findFirst();
    return mark.map(Mark::wrong).orElse(List.of());
  }

  @Test
  void aRailThatIsTheSameEitherWayNeedsNoMark() {
    assertThat(wrong(chair("", "30"), "rail")).isEmpty();
  }

  @Test
  void aRailWhoseTenonsAreOffItsMiddleGoesInUpsideDown() {
    // Turned about its length, or end for end with the other edge up: its top is lower either way,
    // so that it is told once.
    assertThat(wrong(chair(", \"from-top\": 10", "30"), "rail"))
        .containsExactly(new Wrong(false, 2, false));
  }

  @Test
  void aRailWithADifferentTenonAtEachEndGoesInOnlyOneWayRound() {
    assertThat(wrong(chair("", "40"), "rail")).isEmpty();
  }

  @Test
  void aLegThatWouldStickUpAboveTheRestIsNotMistaken() {
    // Its mortise is 70 above its middle: end for end it would stand 140 higher.
    assertThat(wrong(chair("", "30"), "leg right")).noneMatch(Wrong::endForEnd);
  }

  @Test
  void aLegThatWouldStandALittleHigherIsMarked() {
    // 10 above its middle: 20 higher, which shows only once the chair rocks.
    Chair chair = chair("", "30", "240");
    assertThat(wrong(chair, "leg right")).anyMatch(Wrong::endForEnd);
  }

  @Test
  void legsWithMortisesOfTheirOwnSizesCannotBeSwapped() {
    Chair chair = chair("", "40");
    assertThat(wrong(chair, "leg right")).noneMatch(w -> w.swapped() && w.quarters() == 0);
  }

  private static List<String> elsewhere(String model, String label) throws IOException {
    Chair chair = Fitted.of(Files.readString(Path.of("models", model + ".json"))).chair();
    return Assembling.of(chair).marks().stream()
        .filter(m -> chair.parts().get(m.part()).label().equals(label))
        .flatMap(m -> m.elsewhere().stream())
        .map(i -> chair.parts().get(i).label())
        .toList();
  }

  @Test
  void aRailThatIsALittleShorterGoesInWhereAnotherBelongs() throws IOException {
    // The shorter rail goes in where a longer one belongs, its tenons less deep, and not the other.
    assertThat(elsewhere("low-stool", "side-rail right")).contains("front-rail", "back-rail");
    assertThat(elsewhere("low-stool", "front-rail")).isEmpty();
    assertThat(elsewhere("orchard-side-chair", "front-rail")).isEmpty();
  }

  @Test
  void aRungTurnedRoundGoesInEndForEndOnlyAndOneHandStandsInForTheOther() throws IOException {
    Chair chair = Fitted.of(Files.readString(Path.of("models/ferry-ladder-back.json"))).chair();
    assertThat(wrong(chair, "side-rung right")).containsExactly(new Wrong(true, 0, false));
  }
}
