package published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.fit.Fitted;
import dryfit.fit.order.Assembling;
import dryfit.fit.order.Remedy;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Straight tenons in leaning mortises: the sides go together first, and front and back frames that
 * were glued first can no longer be closed. "Angled mortise is better than angled tenon", Fine
 * Woodworking, February 2012
 * (https://finewoodworking.com/2012/02/09/angled-mortise-is-better-than-angled-tenon), and P.
 * Sellers' answer to the same question, December 2012
 * (https://paulsellers.com/2012/12/fine-woodworking-qa-section-answer/). The trade states the fact;
 * the figure of the longest tenon is worked by hand: at 6.71 degrees and 0.008 in of room at each
 * cheek a tenon moves aside by more than its room once it is 0.008 / tan 6.71 = 0.068 in long.
 */
class SidesFirstTest {
  private static final double ANGLE = Math.toRadians(6.71);
  private static final double ROOM = 0.008;
  private static final double INCH = 25.4;

  /** Thin, so that the figure for a tenon without thickness nearly holds, inches. */
  private static final double THICK = 0.0625;

  /** Front legs at the side rails' ends 8 in from the middle, back legs nearer by 12 tan 6.71. */
  private static Chair chair(double tenon) {
    String json =
        """
        { "format": "dryfit-chair/1", "name": "Frame", "about": "Demo data, invented.", "unit": "in",
          "timber": "ash-white",
          "fit": { "cheek": 0.008, "edge": 0.02, "bottom": 0.1, "least-wall": 0 },
          "parts": {
            "front-leg": { "form": "straight", "pair": true, "section": [1.5, 1.5],
              "from": [8, 0, 0], "to": [8, 0, 18] },
            "back-leg": { "form": "straight", "pair": true, "section": [1.5, 1.5],
              "from": [BACK, 13.5, 0], "to": [BACK, 13.5, 18] },
            "front-rail": { "form": "straight", "section": [3, 0.75],
              "between": ["front-leg right", "front-leg left"], "top": 16, "centred": 0 },
            "back-rail": { "form": "straight", "section": [3, 0.75],
              "between": ["back-leg right", "back-leg left"], "top": 16, "centred": 0 },
            "side-rail": { "form": "straight", "pair": true, "section": [3, 0.75],
              "between": ["front-leg", "back-leg"], "top": 12, "centred": 0 }
          },
          "joints": {
            "front": { "tenon": "front-rail both", "into": "front-leg", "thickness": 0.25,
              "width": 2, "length": 0.75 },
            "back": { "tenon": "back-rail both", "into": "back-leg", "thickness": 0.25,
              "width": 2, "length": 0.75 },
            "side front": { "tenon": "side-rail front", "into": "front-leg", "thickness": THICK,
              "width": 2, "length": TENON },
            "side back": { "tenon": "side-rail back", "into": "back-leg", "thickness": THICK,
              "width": 2, "length": TENON }
          } }
        """
            .replace("BACK", String.format(Locale.ROOT, "%.6f", 8 - 12 * Math.tan(ANGLE)))
            .replace("THICK", String.format(Locale.ROOT, "%.4f", THICK))
            .replace("TENON", String.format(Locale.ROOT, "%.4f", tenon));
    return Fitted.of(json).chair();
  }

  private static Assembling framesFirst(Chair chair) {
    List<String> labels = chair.parts().stream().map(Part::label).toList();
    return Assembling.of(
        chair,
        Stream.of("front", "back")
            .map(
                end ->
                    Stream.of(end + "-leg right", end + "-leg left", end + "-rail")
                        .map(labels::indexOf)
                        .sorted()
                        .toList())
            .toList());
  }

  @Test
  void straightTenonsGoTogetherSidesFirstAndNotFramesFirst() {
    Chair chair = chair(0.75);
    assertThat(Assembling.of(chair).possible()).isTrue();
    assertThat(framesFirst(chair).possible()).isFalse();
  }

  @Test
  void theLongestStraightTenonThatEntersFrontToBackIsItsRoomOverTheTangent() {
    List<Remedy> remedies = framesFirst(chair(0.75)).stuck().get(0).remedies();
    assertThat(remedies).isNotEmpty();
    double bare = ROOM / Math.tan(ANGLE);
    assertThat(bare).isCloseTo(0.068, within(0.0005));
    // The mouth is slanted to the tenon: at the cheek that meets first the tenon is less deep.
    double slanted = bare + THICK / 2 * Math.tan(ANGLE);
    for (Remedy remedy : remedies) {
      assertThat(remedy.off()).isCloseTo(ANGLE, within(1e-4));
      assertThat(remedy.longest() / INCH).isCloseTo(slanted, within(0.002));
    }
  }

  @Test
  void aTenonNoLongerThanThatGoesInAndALongerOneDoesNot() {
    assertThat(framesFirst(chair(0.068)).possible()).isTrue();
    assertThat(framesFirst(chair(0.075)).possible()).isFalse();
  }
}
