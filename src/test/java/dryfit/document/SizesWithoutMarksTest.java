package dryfit.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A size that is not JSON as it stands is told with what would be right. */
class SizesWithoutMarksTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '#',
      value = {
        "1 1/2       | 1 1/2 is a text to JSON, write it in quotation marks: \"1 1/2\".",
        "1-1/2       | 1-1/2 is a text to JSON, write it in quotation marks: \"1-1/2\".",
        "5/8         | 5/8 is a text to JSON, write it in quotation marks: \"5/8\".",
        "17.5 in     | 17.5 in is a text to JSON, write it in quotation marks: \"17.5 in\".",
        "440mm       | 440mm is a text to JSON, write it in quotation marks: \"440mm\".",
        "½           | ½ is a text to JSON, write it in quotation marks: \"½\".",
        "1 1/2\"     | 1 1/2\" is a text to JSON, write it in quotation marks: \"1 1/2 in\".",
        "\"1 1/2\"\" | the inch mark ends the text, write in for it: \"1 1/2 in\".",
        "17,5        | a decimal is written with a point: 17.5."
      })
  void isToldHowToWriteIt(String size, String told) {
    for (String after : List.of("}", "\n}", ", \"wide\": 14 }", ",\n    \"wide\": 14 }")) {
      String text =
          "{ \"format\": \"dryfit-chair/1\",\n  \"dimensions\": { \"leg\": " + size + after + "}";
      List<Problem> problems = Samples.problems(text);
      assertThat(problems).hasSize(1);
      Problem problem = problems.get(0);
      assertThat(problem.code()).isEqualTo("not-json");
      assertThat(problem.line()).isBetween(2, 3);
      assertThat(problem.message()).contains("at column ").endsWith(told);
    }
  }

  @ParameterizedTest
  @CsvSource({"mm", "leg", "'{ 1 : 2 }'", "\"\""})
  void otherSlipsAreToldAsBefore(String word) {
    List<Problem> problems =
        Samples.problems("{ \"format\": \"dryfit-chair/1\", \"unit\": " + word + " 3 }");
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0).message())
        .endsWith("often a missing comma, quotation mark or bracket just before.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '$',
      value = {
        "{ \"name\": \"x\", }    | comma before “}”",
        "{ \"parts\": [1, 2,~ ] } | comma before “]”",
        "{ name: \"x\" }          | a key stands in quotation marks: \"name\"",
        "{ \"a\": 1, b-c: 2 }     | a key stands in quotation marks: \"b-c\"",
        "{ 'name': 1 }            | a key stands in quotation marks: \"name\"",
        "// mine~{ }             | JSON has no comments",
        "{ \"a\": 1, /* no */ }   | JSON has no comments",
        "{ “name”: 1 }            | curly",
        "{ \"name\": “x” }         | curly"
      })
  void saysWhichSlipItIs(String text, String told) {
    List<Problem> problems = Samples.problems(text.replace('~', '\n'));
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0).code()).isEqualTo("not-json");
    assertThat(problems.get(0).message()).contains(told);
  }
}
