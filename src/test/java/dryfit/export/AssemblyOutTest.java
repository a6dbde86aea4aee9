package dryfit.export;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.build.Chair;
import dryfit.document.Design.LengthUnit;
import dryfit.fit.Fitted;
import dryfit.fit.order.Assembling;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The order of assembly as text and as JSON. */
class AssemblyOutTest {
  private static Chair chair(String model) throws IOException {
    return Fitted.of(Files.readString(Path.of("models", model + ".json"))).chair();
  }

  private static List<Integer> numbers(Chair chair, String... names) {
    return java.util.stream.IntStream.range(0, chair.parts().size())
        .filter(i -> List.of(names).contains(chair.parts().get(i).name()))
        .boxed()
        .toList();
  }

  private static String json(Assembling order) {
    return new String(AssemblyJson.bytes(order), StandardCharsets.UTF_8);
  }

  private static String text(Assembling order) {
    return AssemblyText.of(order, TextStyle.of(LengthUnit.MM));
  }

  @ParameterizedTest
  @ValueSource(strings = {"low-stool", "orchard-side-chair", "kiln-stool"})
  void anOrderFollowsItsSchema(String model) throws IOException {
    assertThat(Schemas.problems("assembly-1.schema.json", json(Assembling.of(chair(model)))))
        .isEmpty();
  }

  @Test
  void aSeatIsPutDownLastAndTheAnswerIsTheLastLine() throws IOException {
    String text = text(Assembling.of(chair("low-stool")));
    assertThat(text).contains(" 10  Put seat straight down onto what step 9 made.");
    assertThat(text)
        .contains("  9  Push the right side (step 8) straight to the left onto what step 5");
    assertThat(text.strip().lines().reduce("", (a, b) -> b))
        .isEqualTo("GOES TOGETHER: in 10 steps");
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void legsThatSplayAreClosedTogether() throws IOException {
    assertThat(text(Assembling.of(chair("kiln-stool")))).contains("close them together");
  }

  @Test
  void framesThatCannotBeClosedAreToldByTheirNamesWithWhatWouldFreeThem() throws IOException {
    Chair chair = chair("orchard-side-chair");
    List<Integer> front = numbers(chair, "front-leg", "front-rail");
    List<Integer> back =
        numbers(chair, "back-leg", "back-rail", "crest-rail", "side-slat", "middle-slat");
    Assembling order = Assembling.of(chair, List.of(front, back));
    String text = text(order);
    assertThat(text).contains("the front frame, the back frame");
    assertThat(text).contains("free if \"side rail to front leg\" goes in straight to the front");
    // Below the rails the stretchers lock as well, and would when the rails are mended.
    assertThat(text)
        .contains("  2  the front frame, the back frame, side-stretcher right and side");
    // Turned in the front legs the tenons of the side rails would meet those of the front rail.
    assertThat(order.openings())
        .containsExactly(List.of("side rail to back leg", "side stretcher to front leg"));
    assertThat(text.strip()).endsWith("DOES NOT GO TOGETHER: 2 groups of parts lock");
    assertThat(Schemas.problems("assembly-1.schema.json", json(order))).isEmpty();
  }
}
