package dryfit.fit.order;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.build.Chair;
import dryfit.build.ChairBuilder;
import dryfit.build.Part;
import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.document.DocumentReader;
import dryfit.document.Reading;
import dryfit.fit.Fitted;
import dryfit.solid.exact.ExactKernel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The chairs that ship go together, and every step of it can really be done. */
class ShippedOrderTest {

  private static Assembling order(String model) throws IOException {
    String json = Files.readString(Path.of("models", model + ".json"));
    return Assembling.of(Fitted.of(json).chair());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "low-stool",
        "harbour-armchair",
        "orchard-side-chair",
        "kiln-stool",
        "lantern-side-chair",
        "millrace-armchair",
        "ferry-ladder-back",
        "weir-settee"
      })
  void everyStepCanBeRehearsed(String model) throws IOException {
    Assembling order = order(model);
    assertThat(order.possible()).isTrue();
    assertThat(Rehearsal.problems(order)).isEmpty();
  }

  @Test
  void legsThatAreNotInOnePlaneDoNotCloseOnTheStretcherBetweenThem() throws IOException {
    Path model = Path.of("models/millrace-armchair.json");
    Document document = ((Reading.Accepted<Document>) DocumentReader.read(model)).value();
    Design askew = ((Reading.Accepted<Design>) document.design("legs askew")).value();
    Chair chair = ((Reading.Accepted<Chair>) ChairBuilder.build(askew, new ExactKernel())).value();
    Assembling order = Assembling.of(chair);
    // Each side by itself; the stretcher across goes in while they are open, and locks nothing.
    for (Stuck stuck : order.stuck()) {
      assertThat(stuck.parts().stream().map(i -> chair.parts().get(i).name()))
          .containsExactlyInAnyOrder("front-leg", "back-leg", "side-stretcher", "seat");
    }
    assertThat(order.stuck()).hasSize(2);
    assertThat(order.openings())
        .containsExactly(List.of("front leg to seat"), List.of("back leg to seat"));
    assertThat(order.asOne()).hasSize(1);
    assertThat(order.asOne().get(0)).hasSize(8);
    assertThat(Rehearsal.problems(order)).isEmpty();
  }

  @Test
  void aPanelIsHeldOnceTheLastMemberAroundItIsIn() throws IOException {
    Assembling order = order("harbour-armchair");
    List<Part> parts = order.chair().parts();
    for (int i = 0; i < parts.size(); i++) {
      int part = i;
      if (parts.get(i).name().equals("arm-panel")) {
        assertThat(order.steps().stream().filter(s -> s.held().contains(part))).hasSize(1);
      }
    }
  }

  @Test
  void theSidesOfTheHarbourArmchairAreMadeBeforeTheyMeetTheFrontRail() throws IOException {
    Assembling order = order("harbour-armchair");
    Chair chair = order.chair();
    Step last = order.steps().get(order.steps().size() - 1);
    Groups names = new Groups(chair);
    assertThat(names.frame(Assembling.bits(last.moves().get(0).parts()))).contains("right side");
  }

  @Test
  void aPanelDoesNotGoIntoFourGroovesThatAreClosed() throws IOException {
    Chair chair = order("harbour-armchair").chair();
    List<String> labels = chair.parts().stream().map(Part::label).toList();
    List<Integer> frame =
        Stream.of("front-leg right", "side-rail right", "back-leg right", "arm right")
            .map(labels::indexOf)
            .sorted()
            .toList();
    Assembling order = Assembling.of(chair, List.of(frame));
    assertThat(order.possible()).isFalse();
    assertThat(order.stuck()).hasSize(1);
    assertThat(order.stuck().get(0).parts()).contains(labels.indexOf("arm-panel right"));
    assertThat(order.stuck().get(0).joints()).isEmpty();
  }

  @Test
  void partsThatClaimTheSameWoodAreToldAsSuch() throws IOException {
    String json = Files.readString(Path.of("models/low-stool.json"));
    String close =
        json.replace("\"at\": [0, 0, \"seatTop + 10\"]", "\"at\": [0, 0, \"seatTop + 9\"]");
    Stuck stuck = Assembling.of(Fitted.of(close).chair()).stuck().get(0);
    assertThat(stuck.collide()).isNotEmpty();
    assertThat(stuck.remedies()).isEmpty();
  }

  @Test
  void theSameChairGivesTheSameOrder() throws IOException {
    assertThat(order("orchard-side-chair").steps())
        .usingRecursiveComparison()
        .isEqualTo(order("orchard-side-chair").steps());
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1})
  void pegsAreDrivenFromTheirHeadsOnceTheirJointIsClosed(int offset) throws IOException {
    String json =
        Files.readString(Path.of("models/low-stool.json"))
            .replace(
                "\"seat\": {",
                """
                "peg": { "form": "peg", "pair": true, "in-joint": "side rail to front leg",
                  "diameter": 6, "from-shoulder": 8, "offset": %d },
                "seat": {"""
                    .formatted(offset));
    Assembling order = Assembling.of(Fitted.of(json).chair());
    assertThat(order.possible()).isTrue();
    List<Part> parts = order.chair().parts();
    for (int i = 0; i < parts.size(); i++) {
      if (parts.get(i).name().equals("peg")) {
        Part peg = parts.get(i);
        List<Integer> alone = List.of(i);
        Step driven =
            order.steps().stream()
                .filter(s -> s.moves().get(0).parts().equals(alone))
                .findFirst()
                .orElseThrow();
        assertThat(driven.moves().get(0).push().dot(peg.frame().x())).isGreaterThan(0.999);
        assertThat(order.steps().indexOf(driven)).isGreaterThan(closing(order, peg));
      }
    }
  }

  private static int closing(Assembling order, Part peg) {
    for (int n = 0; n < order.steps().size(); n++) {
      boolean closes =
          order.steps().get(n).closes().stream()
              .anyMatch(j -> j.name().equals("side rail to front leg") && j.hand() == peg.hand());
      if (closes) {
        return n;
      }
    }
    throw new AssertionError("the pegged joint is never closed");
  }
}
