package dryfit.export;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.document.Design.LengthUnit;
import dryfit.fit.FitReport;
import dryfit.fit.Fitted;
import dryfit.fit.compare.Comparison;
import dryfit.fit.compare.Comparison.Side;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A comparison as text, JSON and a page. */
class CompareOutTest {
  private static final FitReport SHORT =
      Fitted.of(Fitted.frame("1 3/4", "7/8", "1/4", "3/8", "3/4", ""));
  private static final FitReport LONG =
      Fitted.of(Fitted.frame("1 3/4", "7/8", "1/4", "3/8", "1 1/2", ""));
  private static final Comparison COMPARISON =
      Comparison.of(List.of(new Side("short <tenons>", SHORT), new Side("long", LONG)));

  private static String text(Comparison comparison, boolean all) {
    return CompareText.of(comparison, TextStyle.of(LengthUnit.MM), all);
  }

  @Test
  void onlyWhatDiffersIsToldUnlessAllIsAskedFor() {
    assertThat(text(COMPARISON, false)).contains("length").doesNotContain("\n  setback");
    assertThat(text(COMPARISON, true)).contains("\n  setback");
  }

  @Test
  void theChangeIsToldBesideBothValues() {
    assertThat(text(COMPARISON, false).lines())
        .anySatisfy(l -> assertThat(l).matches("  length +19\\.\\d mm +38\\.1 mm +\\+19\\.05 mm"));
  }

  @Test
  void findingsGainedAreToldAndTheAnswerIsTheLastLine() {
    String text = text(COMPARISON, false);
    assertThat(text).contains("B gains").contains("tenons-meet");
    assertThat(text.strip().lines().reduce("", (a, b) -> b)).startsWith("DIFFERENT in ");
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void whatIsSaidOfBothHandsIsSaidAndCountedOnce() {
    List<FindingSaid> said = FindingSaid.of(COMPARISON.differences().findings());
    List<FindingSaid> meet =
        said.stream().filter(s -> s.finding().check().equals("tenons-meet")).toList();
    assertThat(meet).hasSize(1);
    assertThat(meet.get(0).alike()).hasSize(2);
    assertThat(meet.get(0).message()).contains("The same at ").contains("left");
    String text = text(COMPARISON, false);
    assertThat(text).containsOnlyOnce("tenons-meet. ");
    assertThat(text.strip())
        .endsWith(" and " + said.size() + (said.size() == 1 ? " finding" : " findings"));
  }

  @Test
  void theSameChairTwiceIsTheSame() {
    Comparison same = Comparison.of(List.of(new Side("a", SHORT), new Side("b", SHORT)));
    assertThat(text(same, false).strip()).endsWith("THE SAME in every figure and finding");
  }

  @Test
  void theJsonFollowsItsSchema() {
    String json = new String(CompareJson.bytes(COMPARISON), StandardCharsets.UTF_8);
    assertThat(Schemas.problems("compare-1.schema.json", json)).isEmpty();
  }

  @Test
  void thePageNeedsNothingElseAndIsTheSameEveryTime() {
    Comparison thick =
        Comparison.of(
            List.of(
                new Side("short <tenons>", SHORT),
                new Side("thick", Fitted.of(Fitted.frame("2", "7/8", "1/4", "3/8", "3/4", "")))));
    byte[] bytes = ComparePage.bytes(thick, TextStyle.of(LengthUnit.MM));
    String page = new String(bytes, StandardCharsets.UTF_8);
    assertThat(page)
        .contains("short &lt;tenons&gt;", "laid over each other", "data:image/png;base64,")
        .doesNotContain("http", "<script");
    // Three views, each with the two chairs and both over each other.
    assertThat(page.split("<img ", -1)).hasSize(1 + 9);
    assertThat(ComparePage.bytes(thick, TextStyle.of(LengthUnit.MM))).isEqualTo(bytes);
  }

  @Test
  void whatLooksTheSameIsNotLaidOverItself() {
    Comparison same = Comparison.of(List.of(new Side("a", SHORT), new Side("b", SHORT)));
    String page =
        new String(ComparePage.bytes(same, TextStyle.of(LengthUnit.MM)), StandardCharsets.UTF_8);
    assertThat(page).contains("B looks like A from here.").doesNotContain("laid over each other");
    assertThat(page).contains("prefers-color-scheme:dark", "name=\"viewport\"");
  }
}
