package dryfit.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dryfit.document.Design.Waiver;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EditsTest {
  private static final String HEAD =
      "{ \"format\": \"dryfit-chair/1\", \"name\": \"Post\", \"unit\": \"mm\", \"timber\":"
          + " \"ash-white\", \"parts\": { \"post\": { \"form\": \"straight\", \"section\": [40, 40],"
          + " \"from\": [0, 0, 0], \"to\": [0, 0, 400] } }";

  private static String text(Reading<Document> reading) {
    return ((Reading.Accepted<Document>) reading).value().text();
  }

  private static String waived(String tail) {
    return text(Edits.waiver(Samples.document(HEAD + tail), "thin-wall", "", "post", "tried it"));
  }

  private static final String WAIVER =
      "{ \"check\": \"thin-wall\", \"part\": \"post\", \"because\": \"tried it\" }";

  @Test
  void theFirstOfItsKindIsSpacedAsWhatIsThere() {
    assertThat(waived(" }")).isEqualTo(HEAD + ", \"waived\": [ " + WAIVER + " ] }");
    assertThat(waived(",\n  \"about\": \"x\"\n}"))
        .isEqualTo(HEAD + ",\n  \"about\": \"x\",\n  \"waived\": [ " + WAIVER + " ]\n}");
    assertThat(waived(", \"waived\": [] }")).isEqualTo(HEAD + ", \"waived\": [ " + WAIVER + " ] }");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n"})
  void anotherIsSpacedAsTheOthers(String line) {
    String one = "{ \"check\": \"thin-wall\", \"because\": \"a\" }";
    String indent = line + "    ";
    String before = ", \"waived\": [" + indent + one;
    assertThat(waived(before + line + "  ] }"))
        .isEqualTo(HEAD + before + "," + indent + WAIVER + line + "  ] }");
    String grouped = before + "," + line + indent + one;
    assertThat(waived(grouped + "] }")).isEqualTo(HEAD + grouped + "," + indent + WAIVER + "] }");
  }

  @Test
  void whatWasAddedCanBeTakenOutToTheLetter() {
    String text = HEAD + ",\n  \"variants\": {\n    \"a\": { },\n    \"b\": {}\n  }\n}";
    Document document = Samples.document(text);
    Document added = ((Reading.Accepted<Document>) Edits.variant(document, "c \"d\"", "")).value();
    assertThat(added.variants()).containsExactly("a", "b", "c \"d\"");
    assertThat(text(added.without("/variants/c \"d\""))).isEqualTo(text);
  }

  @Test
  void whatIsAcceptedNoLongerGoesAndTheListWithTheLast() {
    String other = WAIVER.replace("thin-wall", "tenon-short");
    String two = HEAD + ", \"waived\": [ " + WAIVER + ", " + other + " ] }";
    Document document = Samples.document(two);
    Waiver first = new Waiver("thin-wall", "", "post", "tried it", "/waived/0");
    Waiver second = new Waiver("tenon-short", "", "post", "tried it", "/waived/1");
    assertThat(text(Edits.withoutWaivers(document, List.of(first))))
        .isEqualTo(HEAD + ", \"waived\": [ " + other + " ] }");
    assertThat(text(Edits.withoutWaivers(document, List.of(second))))
        .isEqualTo(HEAD + ", \"waived\": [ " + WAIVER + " ] }");
    assertThat(text(Edits.withoutWaivers(document, List.of(first, second)))).isEqualTo(HEAD + " }");
  }

  /** As with a second click before the window has followed the first. */
  @Test
  void whatIsAcceptedNoLongerTwiceTakesNothingElseAlong() {
    String other = WAIVER.replace("thin-wall", "tenon-short");
    Document document =
        Samples.document(HEAD + ", \"waived\": [ " + WAIVER + ", " + other + " ] }");
    List<Waiver> first = List.of(new Waiver("thin-wall", "", "post", "tried it", "/waived/0"));
    Document once = ((Reading.Accepted<Document>) Edits.withoutWaivers(document, first)).value();
    assertThat(text(Edits.withoutWaivers(once, first))).isEqualTo(once.text());
    Document none = Samples.document(HEAD + " }");
    assertThat(text(Edits.withoutWaivers(none, first))).isEqualTo(none.text());
  }

  @Test
  void whatIsTakenOutTakesItsCommaAlong() {
    Document document = Samples.document(HEAD + ", \"variants\": { \"a\": {}, \"b\": {} } }");
    assertThat(text(document.without("/variants/a")))
        .isEqualTo(HEAD + ", \"variants\": { \"b\": {} } }");
    assertThat(text(document.without("/variants/b")))
        .isEqualTo(HEAD + ", \"variants\": { \"a\": {} } }");
    assertThat(text(document.without("/variants"))).isEqualTo(HEAD + " }");
  }

  @Test
  void aWaiverThatSaysNothingAndAVariantThatIsThereAlreadyAreRefused() {
    Document document = Samples.document(HEAD + ", \"variants\": { \"a\": {} } }");
    assertThat(Edits.waiver(document, "thin-wall", "", "", " "))
        .isInstanceOf(Reading.Refused.class);
    assertThat(Edits.waiver(document, "thin-wall", "no such joint", "", "why"))
        .isInstanceOf(Reading.Refused.class);
    assertThat(Edits.variant(document, "a", "")).isInstanceOf(Reading.Refused.class);
    assertThat(Edits.variant(document, Design.AS_DRAWN, "")).isInstanceOf(Reading.Refused.class);
    assertThat(Edits.dimensionIn(document, "none", "height", "3"))
        .isInstanceOf(Reading.Refused.class);
  }

  @Test
  void nothingIsAddedToWhatHoldsNothing() {
    Document document = Samples.document(HEAD + " }");
    assertThatThrownBy(() -> document.added("/name", "x", "1"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> document.without("")).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void everyCharacterOfAReasonComesBack() {
    String because = "\u00e4 \"q\" \\ / \n \t \u0001 \u001f \ud83e\ude91";
    Document document = Samples.document(HEAD + " }");
    Document edited =
        ((Reading.Accepted<Document>) Edits.waiver(document, "thin-wall", "", "", because)).value();
    Design design = ((Reading.Accepted<Design>) edited.design(Design.AS_DRAWN)).value();
    assertThat(design.waived().get(0).because()).isEqualTo(because);
  }

  @Test
  void theWayItIsWrittenIsNoDifference() {
    Document one = Samples.document(HEAD + ", \"dimensions\": { \"a\": 440, \"b\": 1 } }");
    Document other = Samples.document(HEAD + ",\n\"dimensions\": { \"b\" : 1.0, \"a\": 4.4e2 } }");
    assertThat(Difference.between(one, other)).isEmpty();
  }

  @Test
  void whatIsAddedAndTakenAwayAndChangedIsADifference() {
    Document one =
        Samples.document(HEAD + ", \"dimensions\": { \"a\": 440, \"b\": 1, \"c\": \"1 mm\" } }");
    Document other =
        Samples.document(
            HEAD.replace("Post", "Pole")
                + ", \"dimensions\": { \"a\": 440, \"c\": 1, \"d\": 2 } }");
    List<String> told =
        Difference.between(one, other).stream()
            .map(
                d ->
                    String.join(
                        " ", d.section(), d.name(), d.mine().orElse("-"), d.theirs().orElse("-")))
            .toList();
    assertThat(told)
        .containsExactly(
            "name  \"Post\" \"Pole\"",
            "dimensions b 1 -",
            "dimensions c \"1 mm\" 1",
            "dimensions d - 2");
  }
}
