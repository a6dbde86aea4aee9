package dryfit.fit.order;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Hand;
import dryfit.fit.Fitted;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Wedges spread a tenon that is already through: they come last (common practice, no source). */
class WedgesLastTest {
  private static final String TRESTLE =
      """
      { "format": "dryfit-chair/1", "name": "Trestle", "about": "Demo data, invented.", "unit": "mm",
        "timber": "ash-white",
        "parts": {
          "leg": { "form": "straight", "pair": true, "section": [50, 50],
            "from": [220, 0, 0], "to": [220, 0, 400] },
          "rail": { "form": "straight", "section": [60, 24],
            "between": ["leg right", "leg left"], "middle": 250 } },
        "joints": {
          "rail to leg": { "tenon": "rail both", "into": "leg", "thickness": 8, "width": 40,
            "through": true, "wedges": { "count": 2, "deep": 30, "angle": "1:20" } } } }
      """;

  @Test
  void theWedgesOfAThroughTenonAreDrivenFromOutsideOnceItIsThrough() {
    Assembling order = Assembling.of(Fitted.of(TRESTLE).chair());
    assertThat(order.possible()).isTrue();
    List<Part> parts = order.chair().parts();
    int wedges = 0;
    for (int i = 0; i < parts.size(); i++) {
      Part part = parts.get(i);
      if (part.isPiece()) {
        wedges++;
        List<Integer> alone = List.of(i);
        int driven =
            IntStream.range(0, order.steps().size())
                .filter(n -> order.steps().get(n).moves().get(0).parts().equals(alone))
                .findFirst()
                .orElseThrow(() -> new AssertionError(part.label() + " is not driven by itself"));
        assertThat(driven).as(part.label()).isGreaterThan(closing(order, part.hand()));
        // From outside: towards the middle of the chair.
        double in = order.steps().get(driven).moves().get(0).push().x();
        assertThat(part.hand() == Hand.RIGHT ? -in : in).as(part.label()).isGreaterThan(0.99);
      }
    }
    assertThat(wedges).isEqualTo(4);
  }

  private static int closing(Assembling order, Hand hand) {
    for (int n = 0; n < order.steps().size(); n++) {
      for (Joint j : order.steps().get(n).closes()) {
        if (j.name().equals("rail to leg") && j.hand() == hand) {
          return n;
        }
      }
    }
    throw new AssertionError("the wedged joint is never closed");
  }
}
