package dryfit.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class PrintingTest {
  private static Reading<Design> read(String more) {
    String json =
        """
        { "format": "dryfit-chair/1", "name": "Rod", "unit": "in", "timber": "ash-white",
          "parts": { "rod": { "form": "turned", "from": [0, 0, 0], "to": [0, 0, 20], "diameter": 1 } }
          MORE }
        """
            .replace("MORE", more);
    Reading<Document> document = DocumentReader.read("rod.json", json);
    return document instanceof Reading.Accepted<Document> accepted
        ? accepted.value().design(Design.AS_DRAWN)
        : new Reading.Refused<>(((Reading.Refused<Document>) document).problems());
  }

  private static Printing printing(String more) {
    return ((Reading.Accepted<Design>) read(more)).value().printing();
  }

  private static List<Problem> problems(String more) {
    return ((Reading.Refused<Design>) read(more)).problems();
  }

  @Test
  void whatIsNotWrittenIsAsUsual() {
    assertThat(printing("")).isEqualTo(Printing.USUAL);
    assertThat(printing(", \"printing\": {}")).isEqualTo(Printing.USUAL);
  }

  @Test
  void allowancesAreEachTheirOwnAndInTheUnitOfTheDocument() {
    Printing p =
        printing(
            ", \"printing\": { \"hole-allowance\": \"0.3 mm\", \"pin\": \"1/4 in\","
                + " \"bed\": [7, 7, \"180 mm\"], \"guide-tilt\": 0.5 }");
    assertThat(p.holeAllowance()).isEqualTo(0.3);
    assertThat(p.slideAllowance()).isEqualTo(Printing.USUAL.slideAllowance());
    assertThat(p.pin()).isCloseTo(6.35, within(1e-12));
    assertThat(p.bedX()).isCloseTo(177.8, within(1e-9));
    assertThat(p.bedZ()).isEqualTo(180);
    assertThat(p.guideTilt()).isCloseTo(Math.toRadians(0.5), within(1e-12));
  }

  @Test
  void aSlipIsRefusedWithItsPlace() {
    assertThat(problems(", \"printing\": { \"bad\": [180, 180, 180] }"))
        .singleElement()
        .satisfies(p -> assertThat(p.pointer()).isEqualTo("/printing/bad"));
    assertThat(problems(", \"printing\": { \"bed\": [1, 9, 9] }"))
        .singleElement()
        .satisfies(p -> assertThat(p.pointer()).isEqualTo("/printing/bed/0"));
    assertThat(problems(", \"printing\": { \"line\": 0 }")).hasSize(1);
    assertThat(problems(", \"jigs\": [ { \"kind\": \"angel-guide\" } ]"))
        .singleElement()
        .satisfies(p -> assertThat(p.nearest()).contains("angle-guide"));
  }
}
