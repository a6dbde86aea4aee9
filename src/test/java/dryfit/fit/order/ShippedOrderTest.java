package dryfit.fit.order;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.fit.Fitted;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
  @ValueSource(strings = {"low-stool", "harbour-armchair", "orchard-side-chair", "kiln-stool"})
  void everyStepCanBeRehearsed(String model) throws IOException {
    Assembling order = order(model);
    assertThat(order.possible()).isTrue();
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
}
