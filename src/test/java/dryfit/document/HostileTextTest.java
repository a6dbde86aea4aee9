package dryfit.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Whatever is done to a document, reading answers with a document or with problems. */
class HostileTextTest {
  private static final String CHAIR = Samples.everyForm();
  private static final Document DOCUMENT = Samples.document(CHAIR);

  private static void isAnswered(Reading<Document> reading) {
    if (reading instanceof Reading.Refused<Document> refused) {
      assertThat(refused.problems()).isNotEmpty();
      for (Problem problem : refused.problems()) {
        assertThat(problem.line()).isPositive();
        assertThat(problem.message()).endsWith(".").doesNotContain("\n", "\u001b", "NaN mm");
      }
    } else {
      Document document = ((Reading.Accepted<Document>) reading).value();
      for (String variant : document.variants()) {
        assertThat(document.design(variant)).isInstanceOf(Reading.Accepted.class);
      }
    }
  }

  @Property(tries = 300)
  void answersToAnySlipOfThePen(
      @ForAll @IntRange(max = 5000) int at,
      @ForAll @IntRange(max = 12) int cut,
      @ForAll("scraps") String scrap) {
    int from = Math.min(at, CHAIR.length());
    int to = Math.min(from + cut, CHAIR.length());
    isAnswered(
        DocumentReader.read("chair.json", CHAIR.substring(0, from) + scrap + CHAIR.substring(to)));
  }

  @Property(tries = 600)
  void answersToAnyValueInAnyPlace(
      @ForAll("pointers") String pointer, @ForAll("values") String value) {
    isAnswered(DOCUMENT.edited(pointer, value));
  }

  @Provide
  Arbitrary<String> scraps() {
    return Arbitraries.of(
        "", "{", "}", "[", "]", ",", ":", "\"", "\\", "\\u001b", "\u0000", "\n", "null", "-", "0",
        "1e400", "NaN", "é", "\uD83D", "//", "/**/", "'");
  }

  @Provide
  Arbitrary<String> values() {
    return Arbitraries.of(
        "null",
        "true",
        "{}",
        "[]",
        "[[]]",
        "\"\"",
        "\" \"",
        "\"x\"",
        "\"leg\"",
        "0",
        "-1",
        "1e9",
        "1e-320",
        "NaN",
        "\"1 in\"",
        "\"4 deg\"",
        "\"leg left left\"",
        "\"arm\"",
        "[1,2]",
        "[[0,0],[0,0],[0,0]]",
        "{\"note\":1}",
        "{\"curve-through\":[[1,1],[1,1]]}",
        "\"a\\u001b[31m\\nb\"",
        "[\"arm\",\"arm\"]",
        "{\"circle\":\"leg\"}");
  }

  @Provide
  Arbitrary<String> pointers() {
    List<String> pointers = new ArrayList<>();
    collect(JsonMapper.builder().build().readTree(CHAIR), "", pointers);
    return Arbitraries.of(pointers);
  }

  private static void collect(JsonNode node, String pointer, List<String> pointers) {
    pointers.add(pointer);
    if (node.isObject()) {
      node.propertyStream()
          .forEach(
              entry -> collect(entry.getValue(), Json.pointer(pointer, entry.getKey()), pointers));
    }
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      collect(node.get(i), pointer + "/" + i, pointers);
    }
  }
}
