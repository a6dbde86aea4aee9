package dryfit.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Each limit holds: the greatest size passes, one more is refused. */
class LimitsTest {

  private static String chair(String dimensions, String parts, String rest) {
    return "{\"format\":\"dryfit-chair/1\",\"name\":\"Demo\",\"unit\":\"mm\",\"timber\":\"teak\","
        + "\"dimensions\":{\"a\":1"
        + dimensions
        + "},\"parts\":{"
        + parts
        + "}"
        + rest
        + "}";
  }

  private static String rod(String name, String tail) {
    return "\"%s\":{\"form\":\"straight\",\"from\":[0,0,0],\"to\":[0,0,9],\"section\":[4,4]%s}"
        .formatted(name, tail);
  }

  private static String many(int count, java.util.function.IntFunction<String> each) {
    return IntStream.range(0, count).mapToObj(each).collect(Collectors.joining(","));
  }

  private static void accepted(String text) {
    assertThat(DocumentReader.read("chair.json", text)).isInstanceOf(Reading.Accepted.class);
  }

  private static void refused(String text, String code, String pointer) {
    List<Problem> problems = Samples.problems(text);
    assertThat(problems.get(0).code()).isEqualTo(code);
    assertThat(problems.get(0).pointer()).isEqualTo(pointer);
  }

  @Test
  void aDocumentOfOneMebibyte() {
    String text = chair("", rod("rod", ""), "");
    accepted(text + " ".repeat((1 << 20) - text.length()));
    refused(text + " ".repeat((1 << 20) - text.length() + 1), "too-large", "");
  }

  @Test
  void nestingOf64() {
    String deepest = "[".repeat(63) + "]".repeat(63);
    refused("{\"x\":" + deepest + "}", "unknown-key", "/x");
    String deeper = "[".repeat(64) + "]".repeat(64);
    refused("{\"x\":" + deeper + "}", "too-deep", "/x" + "/0".repeat(63));
    refused("[".repeat(500_000), "too-deep", "/0".repeat(64));
  }

  @Test
  void namesOf80Characters() {
    accepted(chair(",\"" + "n".repeat(80) + "\":1", rod("r".repeat(80), ""), ""));
    refused(
        chair(",\"" + "n".repeat(81) + "\":1", rod("rod", ""), ""),
        "bad-name",
        "/dimensions/" + "n".repeat(81));
    refused(chair("", rod("r".repeat(81), ""), ""), "bad-name", "/parts/" + "r".repeat(81));
  }

  @Test
  void aThousandDimensions() {
    accepted(chair("," + many(999, i -> "\"d" + i + "\":1"), rod("rod", ""), ""));
    refused(
        chair("," + many(1000, i -> "\"d" + i + "\":1"), rod("rod", ""), ""),
        "too-large",
        "/dimensions");
  }

  @Test
  void aThousandDimensionsEachRestingOnTheNext() {
    String chain = many(998, i -> "\"d%d\":\"-(-(d%d))\"".formatted(i, i + 1));
    accepted(chair("," + chain + ",\"d998\":4", rod("rod", ""), ""));
  }

  @Test
  void aThousandParts() {
    accepted(chair("", many(1000, i -> rod("r" + i, "")), ""));
    refused(chair("", many(1001, i -> rod("r" + i, "")), ""), "too-large", "/parts");
  }

  @Test
  void fourThousandJoints() {
    java.util.function.IntFunction<String> joint =
        i ->
            "\"j%d\":{\"tenon\":\"a top\",\"into\":\"b\",\"kind\":\"housing\",\"depth\":2}"
                .formatted(i);
    String parts = rod("a", "") + "," + rod("b", "");
    accepted(chair("", parts, ",\"joints\":{" + many(4000, joint) + "}"));
    refused(chair("", parts, ",\"joints\":{" + many(4001, joint) + "}"), "too-large", "/joints");
  }

  @Test
  void fiftyVariants() {
    java.util.function.IntFunction<String> variant = i -> "\"v%d\":{\"a\":2}".formatted(i);
    accepted(chair("", rod("rod", ""), ",\"variants\":{" + many(50, variant) + "}"));
    refused(
        chair("", rod("rod", ""), ",\"variants\":{" + many(51, variant) + "}"),
        "too-large",
        "/variants");
  }

  @Test
  void twoThousandItemsInAList() {
    java.util.function.IntFunction<String> jig = i -> "{\"kind\":\"spacer\"}";
    accepted(chair("", rod("rod", ""), ",\"jigs\":[" + many(2000, jig) + "]"));
    refused(chair("", rod("rod", ""), ",\"jigs\":[" + many(2001, jig) + "]"), "too-large", "/jigs");
  }

  @Test
  void notesOfTwoThousandCharacters() {
    accepted(chair("", rod("rod", ",\"note\":\"" + "n".repeat(2000) + "\""), ""));
    refused(
        chair("", rod("rod", ",\"note\":\"" + "n".repeat(2001) + "\""), ""),
        "too-large",
        "/parts/rod/note");
  }

  @Test
  void expressionsOf500Characters() {
    accepted(chair(",\"b\":\"a" + "+1".repeat(249) + " \"", rod("rod", ""), ""));
    refused(
        chair(",\"b\":\"a" + "+1".repeat(250) + "\"", rod("rod", ""), ""),
        "bad-expression",
        "/dimensions/b");
  }

  @Test
  void expressions50Deep() {
    accepted(chair(",\"b\":\"" + "(".repeat(49) + "a" + ")".repeat(49) + "\"", rod("rod", ""), ""));
    refused(
        chair(",\"b\":\"" + "(".repeat(50) + "a" + ")".repeat(50) + "\"", rod("rod", ""), ""),
        "bad-expression",
        "/dimensions/b");
    refused(
        chair(",\"b\":\"" + "-".repeat(50) + "a\"", rod("rod", ""), ""),
        "bad-expression",
        "/dimensions/b");
  }

  @Test
  void twoHundredProblemsAreToldAndTheRestCounted() {
    String text = chair("", rod("rod", "," + many(250, i -> "\"k" + i + "\":1")), "");
    List<Problem> problems = Samples.problems(text);
    assertThat(problems).hasSize(201);
    assertThat(problems.get(200).code()).isEqualTo("more-problems");
    assertThat(problems.get(200).found()).isEqualTo("50");
  }

  @Test
  void aNumberOfGreatLength() {
    refused("{\"x\":" + "9".repeat(2000) + "}", "too-large", "");
  }
}
