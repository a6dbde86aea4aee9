package dryfit.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DocumentTest {
  private final Document document = Samples.document(Samples.everyForm());

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '\'',
      delimiter = '|',
      value = {
        "/dimensions/seatTop/value | 440 | 445",
        "/dimensions/armTop | \"seatTop + 220\" | \"seatTop + 200\"",
        "/joints/arm to back leg/depth | 14 | 12.5",
        "/measured/0/value | 29.4 | 29.1"
      })
  void changesOneValueAndNothingElse(String pointer, String before, String after) {
    Document edited = ((Reading.Accepted<Document>) document.edited(pointer, after)).value();
    int at = edited.text().indexOf(after);
    assertThat(at).isPositive();
    String undone =
        edited.text().substring(0, at) + before + edited.text().substring(at + after.length());
    assertThat(undone).isEqualTo(Samples.everyForm());
  }

  @Test
  void readsTheChangedDocument() {
    Document edited =
        ((Reading.Accepted<Document>) document.edited("/dimensions/seatTop/value", "450")).value();
    Design design = ((Reading.Accepted<Design>) edited.design(Design.AS_DRAWN)).value();
    assertThat(design.dimensions().get(0).value().value()).isEqualTo(450);
  }

  /** 14 times 25.4 is worked out a last bit below what "14 in" is read as. */
  @Test
  void aLimitReachedInAnotherWayIsWithinTheRange() {
    Document lower =
        ((Reading.Accepted<Document>) document.edited("/dimensions/seatTop/from", "\"14 in\""))
            .value();
    assertThat(lower.edited("/dimensions/seatTop/value", "\"14 * 1 in\""))
        .isInstanceOf(Reading.Accepted.class);
    assertThat(lower.edited("/dimensions/seatTop/value", "\"13.999 in\""))
        .isInstanceOf(Reading.Refused.class);
  }

  @Test
  void refusesAChangeThatMakesItUnsound() {
    Reading<Document> edited = document.edited("/dimensions/seatTop/value", "500");
    assertThat(((Reading.Refused<Document>) edited).problems())
        .extracting(Problem::code)
        .containsExactly("out-of-range");
  }

  @Test
  void changesNothingWhereNothingStands() {
    assertThatThrownBy(() -> document.edited("/dimensions/none", "1"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> document.edited("/measured/9/value", "1"))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void tellsTheLineOfAPlaceOrOfWhatIsAroundIt() {
    String text = Samples.everyForm();
    int line = text.substring(0, text.indexOf("\"arm to back leg\"")).split("\n", -1).length;
    assertThat(document.lineOf("/joints/arm to back leg")).isEqualTo(line);
    assertThat(document.lineOf("/joints/arm to back leg/none/such")).isEqualTo(line);
    assertThat(document.lineOf("")).isEqualTo(1);
  }
}
