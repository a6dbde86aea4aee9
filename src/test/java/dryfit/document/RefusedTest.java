package dryfit.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * One test for each way a document is refused. Each takes the same sound stool, spoils one thing,
 * and asks for the code, the place, the line and, for a slip of the pen, the nearest name.
 */
class RefusedTest {
  /** Line numbers below are those of this text; the comments count every tenth. */
  private static final String STOOL =
      """
      {
        "format": "dryfit-chair/1",
        "name": "Low stool",
        "unit": "mm",
        "labels": "as-you-face-it",
        "timber": "ash-white",
        "fit": { "cheek": 0.1 },
        "dimensions": {
          "seatTop": { "value": 440, "from": 380, "to": 480, "step": 5 },
          "leg": 42,
          "lean": "4 deg",
          "railWidth": "leg + 20"
        },
        "parts": {
          "post": { "form": "straight", "pair": true, "from": [200, 0, 0], "to": [200, 0, "seatTop"],
            "section": ["leg", "leg"] },
          "rail": { "form": "straight", "between": ["post right", "post left"], "top": 300,
            "section": ["railWidth", 22], "outside": 4 },
          "shelf": { "form": "panel", "thickness": 12, "plane": "plan", "at": [0, 0, 100],
            "outline": { "circle": 200 } },
          "bow": { "form": "sawn", "stands-at": [0, 0, 0], "thickness": 20,
            "side": { "front": [[0, 0], [0, 100]], "width": [[0, 20], [100, 30]] } },
          "peg": { "form": "turned", "from": [0, 0, 0], "to": [0, 0, 60], "diameter": 12 }
        },
        "joints": {
          "rail to post": { "tenon": "rail both", "into": "post",
            "thickness": 8, "width": 40, "length": 25 },
          "peg in shelf": { "tenon": "peg end", "into": "shelf", "kind": "round-tenon",
            "diameter": 10, "length": 6 }
        },
        "variants": {
          "high": { "seatTop": 470 }
        },
        "measured": [ { "part": "rail", "what": "width", "value": 61.5, "on": "2026-03-02" } ],
        "waived": [ { "check": "tenon-short", "joint": "rail to post", "because": "the shelf helps" } ],
        "jigs": [ { "kind": "spacer", "from": "rail top", "to": "shelf" } ]
      }
      """;

  private static List<Problem> spoiled(String sound, String spoiled) {
    assertThat(STOOL).contains(sound);
    return Samples.problems(STOOL.replace(sound, spoiled));
  }

  /** The one and only problem, where it should be. */
  private static Problem only(List<Problem> problems, String code, String pointer, int line) {
    assertThat(problems).hasSize(1);
    Problem problem = problems.get(0);
    assertThat(problem.code()).isEqualTo(code);
    assertThat(problem.pointer()).isEqualTo(pointer);
    assertThat(problem.line()).isEqualTo(line);
    assertThat(problem.file()).isEqualTo("chair.json");
    assertThat(problem.message()).endsWith(".").doesNotContain("\n");
    return problem;
  }

  private static void nearest(Problem problem, String name) {
    assertThat(problem.nearest()).isEqualTo(Optional.of(name));
    assertThat(problem.message()).contains("the nearest name is “" + name + "”");
  }

  @Test
  void theStoolItselfIsSound() {
    assertThat(Samples.document(STOOL).variants()).containsExactly("high");
  }

  // ---- the text ----

  @Test
  void textThatIsNotJson() {
    only(spoiled("\"unit\": \"mm\",", "\"unit\": mm,"), "not-json", "", 4);
  }

  @Test
  void anEmptyFile() {
    only(Samples.problems(""), "not-json", "", 1);
  }

  @Test
  void textAfterTheDocument() {
    only(Samples.problems(STOOL + "{}"), "trailing-text", "", 38);
    only(Samples.problems(STOOL + "#"), "trailing-text", "", 38);
  }

  @Test
  void aDocumentThatIsNotAnObject() {
    only(Samples.problems("[1]"), "wrong-type", "", 1);
  }

  @Test
  void anotherFormat() {
    Problem problem =
        only(spoiled("dryfit-chair/1", "dryfit-chair/2"), "unknown-format", "/format", 2);
    assertThat(problem.allowed()).isEqualTo("dryfit-chair/1");
  }

  @Test
  void aKeyWrittenTwice() {
    only(
        spoiled("\"unit\": \"mm\",", "\"unit\": \"mm\", \"unit\": \"in\","),
        "duplicate-key",
        "/unit",
        4);
  }

  @Test
  void aNameGivenTwice() {
    only(spoiled("\"lean\": \"4 deg\"", "\"leg\": 43"), "duplicate-name", "/dimensions/leg", 11);
  }

  // ---- keys, types and words ----

  @Test
  void anUnknownKey() {
    Problem problem =
        only(spoiled("\"outside\": 4", "\"outsid\": 4"), "unknown-key", "/parts/rail/outsid", 18);
    nearest(problem, "outside");
  }

  @Test
  void anUnknownKeyOfTheWholeDocument() {
    nearest(only(spoiled("\"labels\"", "\"lables\""), "unknown-key", "/lables", 5), "labels");
  }

  @Test
  void aSizeOfAnotherKindOfJoint() {
    Problem problem =
        only(
            spoiled("\"diameter\": 10,", "\"diameter\": 10, \"width\": 9,"),
            "unknown-key",
            "/joints/peg in shelf/width",
            29);
    assertThat(problem.allowed()).contains("diameter").doesNotContain("thickness");
    assertThat(problem.message()).contains("round-tenon");
  }

  @Test
  void aMissingValue() {
    only(spoiled("\"name\": \"Low stool\",", ""), "missing-value", "", 1);
    only(
        spoiled("\"section\": [\"leg\", \"leg\"]", "\"turn\": 0"),
        "missing-value",
        "/parts/post",
        15);
  }

  @Test
  void aPartThatDoesNotSayWhereItIs() {
    only(
        spoiled("\"stands-at\": [0, 0, 0], \"thickness\"", "\"thickness\""),
        "missing-value",
        "/parts/bow",
        21);
  }

  @Test
  void aPartBetweenOthersWithoutItsHeight() {
    only(
        spoiled("\"post left\"], \"top\": 300,", "\"post left\"],"),
        "missing-value",
        "/parts/rail",
        17);
  }

  @Test
  void aJointWithoutASizeItsKindNeeds() {
    only(spoiled(", \"length\": 25", ""), "missing-value", "/joints/rail to post", 26);
  }

  @Test
  void aTextWhereANumberBelongs() {
    only(spoiled("\"leg\": 42", "\"leg\": true"), "wrong-type", "/dimensions/leg", 10);
    only(spoiled("\"pair\": true", "\"pair\": \"yes\""), "wrong-type", "/parts/post/pair", 15);
    only(
        spoiled("\"from\": [200, 0, 0]", "\"from\": [200, 0]"),
        "wrong-type",
        "/parts/post/from",
        15);
  }

  @Test
  void nullWhereAValueBelongs() {
    only(spoiled("\"leg\": 42", "\"leg\": null"), "wrong-type", "/dimensions/leg", 10);
  }

  @Test
  void aNoteThatIsNotAText() {
    only(spoiled("\"cheek\": 0.1", "\"cheek\": 0.1, \"note\": 3"), "wrong-type", "/fit/note", 7);
  }

  @Test
  void anUnknownForm() {
    nearest(
        only(
            spoiled("\"form\": \"turned\"", "\"form\": \"truned\""),
            "unknown-word",
            "/parts/peg/form",
            23),
        "turned");
  }

  @Test
  void anUnknownKindOfJoint() {
    nearest(
        only(
            spoiled("\"round-tenon\"", "\"round-tennon\""),
            "unknown-word",
            "/joints/peg in shelf/kind",
            28),
        "round-tenon");
  }

  @Test
  void anUnknownTimber() {
    nearest(only(spoiled("ash-white", "ash-wite"), "unknown-word", "/timber", 6), "ash-white");
  }

  @Test
  void anUnknownUnit() {
    only(spoiled("\"unit\": \"mm\"", "\"unit\": \"cubit\""), "unknown-word", "/unit", 4);
  }

  // ---- names ----

  @Test
  void aBadName() {
    only(spoiled("\"lean\"", "\"le-an\""), "bad-name", "/dimensions/le-an", 11);
    only(spoiled("\"lean\"", "\"min\""), "bad-name", "/dimensions/min", 11);
    only(spoiled("\"shelf\": {", "\"Shelf x\": {").subList(0, 1), "bad-name", "/parts/Shelf x", 19);
    only(spoiled("\"high\"", "\"as drawn\""), "bad-name", "/variants/as drawn", 32);
    only(spoiled("Low stool", "x".repeat(81)), "bad-name", "/name", 3);
    only(spoiled("\"peg in shelf\"", "\" \""), "bad-name", "/joints/ ", 28);
  }

  @Test
  void anUnknownDimension() {
    Problem problem =
        only(spoiled("leg + 20", "lge + 20"), "unknown-name", "/dimensions/railWidth", 12);
    nearest(problem, "leg");
    assertThat(problem.found()).isEqualTo("lge");
  }

  @Test
  void anUnknownFunction() {
    nearest(
        only(spoiled("leg + 20", "sqr(leg)"), "unknown-name", "/dimensions/railWidth", 12), "sqrt");
  }

  @Test
  void aVariantOfAnUnknownDimension() {
    nearest(
        only(
            spoiled("\"seatTop\": 470", "\"seatTp\": 470"),
            "unknown-name",
            "/variants/high/seatTp",
            32),
        "seatTop");
  }

  @Test
  void anAbsentPart() {
    nearest(
        only(
            spoiled("\"into\": \"post\"", "\"into\": \"posst\""),
            "absent-part",
            "/joints/rail to post/into",
            26),
        "post");
    nearest(
        only(spoiled("\"rail top\"", "\"rial top\""), "absent-part", "/jigs/0/from", 36), "rail");
  }

  @Test
  void anAbsentEnd() {
    nearest(
        only(
            spoiled("\"rail both\"", "\"rail bth\""),
            "absent-end",
            "/joints/rail to post/tenon",
            26),
        "both");
    only(spoiled("\"rail both\"", "\"rail\""), "absent-end", "/joints/rail to post/tenon", 26);
  }

  @Test
  void anAbsentJoint() {
    nearest(
        only(
            spoiled("\"joint\": \"rail to post\"", "\"joint\": \"rail to pots\""),
            "absent-joint",
            "/waived/0/joint",
            35),
        "rail to post");
    only(
        spoiled("\"length\": 25", "\"length\": 25, \"mitre-with\": \"no such\""),
        "absent-joint",
        "/joints/rail to post/mitre-with",
        27);
    nearest(
        only(
            spoiled("\"seatTop\": 470", "\"joints\": { \"rail to pst\": { \"length\": 20 } }"),
            "absent-joint",
            "/variants/high/joints/rail to pst",
            32),
        "rail to post");
  }

  @Test
  void aPartTakenAwayByAVariantThatAJointStillNeeds() {
    Problem problem =
        only(
            spoiled("\"seatTop\": 470", "\"parts\": { \"peg\": null }"),
            "absent-part",
            "/joints/peg in shelf/tenon",
            28);
    assertThat(problem.message()).contains("in the variant “high”");
  }

  @Test
  void oneOfAPairWithoutItsHand() {
    only(
        spoiled("\"post right\", \"post left\"", "\"post\", \"post left\""),
        "which-hand",
        "/parts/rail/between/0",
        17);
  }

  @Test
  void aHandOfAPartThatIsNotAPair() {
    only(
        spoiled("\"into\": \"shelf\"", "\"into\": \"shelf left\""),
        "not-a-pair",
        "/joints/peg in shelf/into",
        28);
  }

  @Test
  void aPartBetweenOnePartAndItself() {
    only(
        spoiled("\"post right\", \"post left\"", "\"post left\", \"post left\""),
        "same-part",
        "/parts/rail/between/1",
        17);
  }

  @Test
  void anUnknownVariantIsRefusedWhenItIsAskedFor() {
    Reading<Design> reading = Samples.document(STOOL).design("hihg");
    Problem problem =
        only(((Reading.Refused<Design>) reading).problems(), "unknown-variant", "/variants", 31);
    nearest(problem, "high");
  }

  // ---- numbers ----

  @Test
  void dimensionsThatRestOnThemselves() {
    Problem problem =
        only(spoiled("\"leg\": 42", "\"leg\": \"railWidth / 2\""), "cycle", "/dimensions/leg", 10);
    assertThat(problem.found()).isEqualTo("leg → railWidth → leg");
  }

  @Test
  void partsThatStandBetweenThemselves() {
    only(
        spoiled("\"post right\", \"post left\"", "\"post right\", \"rail\""),
        "cycle",
        "/parts/rail",
        17);
  }

  @Test
  void aTenonMitredWithItself() {
    only(
        spoiled("\"length\": 25", "\"length\": 25, \"mitre-with\": \"rail to post\""),
        "cycle",
        "/joints/rail to post/mitre-with",
        27);
  }

  @Test
  void aLengthAddedToAnAngle() {
    only(spoiled("leg + 20", "leg + lean"), "wrong-unit", "/dimensions/railWidth", 12);
  }

  /** A dimension that is wrong for every place that uses it is told once, at its own place. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "-1      | not-positive   | it comes to −1.00 mm",
        "0       | not-positive   | above zero; it is used at /parts/post/section/0 and one more place.",
        "1e-9    | out-of-range   | it is less than 0.01 mm",
        "'4 deg' | wrong-unit     | /parts/post/section/0 and 2 more places.",
        "'1:8'   | wrong-unit     | and this is an angle",
        "'1.3/4' | bad-expression | write 1 3/4, or 1.3 / 4",
        "'1.5/2' | bad-expression | write 1.5 / 2",
        "'1-3/4-1/2' | bad-expression | write 1 3/4, or 1 - 3/4 with spaces"
      },
      quoteCharacter = '$')
  void aDimensionToBlameForManySizes(String leg, String code, String told) {
    List<Problem> problems =
        Samples.problems(
            STOOL
                .replace("\"leg\": 42", "\"leg\": " + leg.replace('\'', '"'))
                .replace("leg + 20", "leg * 0 + 60"));
    assertThat(problems)
        .extracting(Problem::code, Problem::pointer)
        .contains(org.assertj.core.groups.Tuple.tuple(code, "/dimensions/leg"));
    assertThat(problems).noneMatch(p -> p.pointer().startsWith("/parts"));
    assertThat(problems).anySatisfy(p -> assertThat(p.message()).contains(told));
  }

  @Test
  void divisionsAndSizesThatCannotBeMistaken() {
    for (String sound : List.of("84 / 2", "84.0 / 2", "1-3/4 in", "40 1/2", "50 - 1/2", "45-1/2")) {
      Samples.document(STOOL.replace("\"leg\": 42", "\"leg\": \"" + sound + "\""));
    }
  }

  @Test
  void nothingIsSaidOfNumbersWithoutAUnit() {
    Problem problem =
        only(
            spoiled("\"unit\": \"mm\"", "\"unit\": \"cm\"").stream().toList(),
            "unknown-word",
            "/unit",
            4);
    nearest(problem, "mm");
    only(
        Samples.problems(
            STOOL.replace("\"unit\": \"mm\"", "\"unit\": \"cm\"").replace("42", "\"no\"")),
        "unknown-word",
        "/unit",
        4);
  }

  @Test
  void aPartThatGoesIntoItself() {
    Problem problem =
        only(
            spoiled("\"rail both\", \"into\": \"post\"", "\"rail both\", \"into\": \"rail\""),
            "same-part",
            "/joints/rail to post/into",
            26);
    assertThat(problem.message()).endsWith("a part cannot go into itself.");
  }

  @Test
  void aPairNamedTwiceWithoutAHandIsNotTakenForOnePart() {
    assertThat(spoiled("[\"post right\", \"post left\"]", "[\"post\", \"post\"]"))
        .extracting(Problem::code)
        .containsExactly("which-hand", "which-hand");
  }

  @Test
  void howManyValuesAListHas() {
    assertThat(spoiled("[\"railWidth\", 22]", "[22]").get(0).message())
        .endsWith("a list of 2 values is needed here, and this has 1.");
    assertThat(spoiled("[\"railWidth\", 22]", "[]").get(0).message()).endsWith("this has none.");
  }

  @Test
  void aVariantThatTakesOutWhatIsStillNamed() {
    Problem problem =
        only(
            spoiled("{ \"seatTop\": 470 }", "{ \"parts\": { \"post\": null } }"),
            "absent-part",
            "/variants/high/parts/post",
            32);
    assertThat(problem.message()).contains("/parts/rail/between/0 and 2 more places");
  }

  @Test
  void variantsThatDifferOnlyInCapitals() {
    only(
        spoiled("\"high\": { \"seatTop\": 470 }", "\"high\": {}, \"High\": {}"),
        "duplicate-name",
        "/variants/High",
        32);
  }

  @Test
  void aStepLongerThanTheRange() {
    only(spoiled("\"step\": 5", "\"step\": 101"), "out-of-range", "/dimensions/seatTop/step", 9);
    Samples.document(STOOL.replace("\"step\": 5", "\"step\": 100"));
  }

  @Test
  void aCheckThatIsMisspelt() {
    nearest(
        only(spoiled("\"tenon-short\"", "\"tenon-shrt\""), "unknown-word", "/waived/0/check", 35),
        "tenon-short");
  }

  @Test
  void anAngleWhereALengthBelongs() {
    only(
        spoiled("\"thickness\": 8,", "\"thickness\": \"lean\","),
        "wrong-unit",
        "/joints/rail to post/thickness",
        27);
  }

  @Test
  void anAreaWhereALengthBelongs() {
    only(spoiled("leg + 20", "leg * leg"), "wrong-unit", "/dimensions/railWidth", 12);
  }

  @Test
  void numbersThatAreNone() {
    only(spoiled("\"leg\": 42", "\"leg\": NaN"), "not-a-number", "/dimensions/leg", 10);
    only(spoiled("\"leg\": 42", "\"leg\": 1e999"), "not-a-number", "/dimensions/leg", 10);
    only(spoiled("\"leg\": 42", "\"leg\": \"NaN\""), "not-a-number", "/dimensions/leg", 10);
    only(spoiled("\"leg\": 42", "\"leg\": \"1e999\""), "not-a-number", "/dimensions/leg", 10);
    only(spoiled("\"leg\": 42", "\"leg\": \"42 / 0\""), "not-a-number", "/dimensions/leg", 10);
    only(spoiled("\"leg\": 42", "\"leg\": \"sqrt(-4)\""), "not-a-number", "/dimensions/leg", 10);
  }

  @Test
  void anExpressionThatMakesNoSense() {
    for (String text :
        List.of("leg +", "(leg", "leg leg", "8,5", "", "sin()", "atan2(1)", "3 $ 4")) {
      only(
          spoiled("\"leg + 20\"", "\"" + text + "\""),
          "bad-expression",
          "/dimensions/railWidth",
          12);
    }
  }

  @Test
  void aValueOutsideItsRange() {
    only(
        spoiled("\"value\": 440", "\"value\": 379.9"),
        "out-of-range",
        "/dimensions/seatTop/value",
        9);
    only(
        spoiled("\"seatTop\": 470", "\"seatTop\": 481"),
        "out-of-range",
        "/variants/high/seatTop",
        32);
  }

  @Test
  void aValueExactlyAtTheEndOfItsRangeIsAccepted() {
    assertThat(Samples.document(STOOL.replace("\"value\": 440", "\"value\": 380")).variants())
        .hasSize(1);
  }

  @Test
  void aRangeTheWrongWayRound() {
    only(spoiled("\"from\": 380", "\"from\": 490"), "out-of-range", "/dimensions/seatTop/from", 9);
  }

  @Test
  void aLeastWallBelowZero() {
    only(
        spoiled("\"cheek\": 0.1", "\"cheek\": 0.1, \"least-wall\": -6"),
        "out-of-range",
        "/fit/least-wall",
        7);
  }

  @Test
  void aLengthOfMoreThanAHundredMetres() {
    only(
        spoiled("\"leg\": 42", "\"leg\": \"101 m\"").subList(0, 1),
        "out-of-range",
        "/dimensions/leg",
        10);
  }

  @Test
  void stationsThatDoNotRise() {
    only(
        spoiled("[[0, 20], [100, 30]]", "[[0, 20], [0, 30]]"),
        "out-of-range",
        "/parts/bow/side/width/1",
        22);
  }

  @Test
  void aSizeThatIsNotAboveZero() {
    only(
        spoiled("\"section\": [\"railWidth\", 22]", "\"section\": [\"railWidth\", 0]")
            .subList(0, 1),
        "not-positive",
        "/parts/rail/section/1",
        18);
    only(
        spoiled("\"diameter\": 12", "\"diameter\": -1"), "not-positive", "/parts/peg/diameter", 23);
    only(spoiled("\"step\": 5", "\"step\": 0"), "not-positive", "/dimensions/seatTop/step", 9);
    only(
        spoiled("\"step\": 5", "\"accuracy\": -1"),
        "not-positive",
        "/dimensions/seatTop/accuracy",
        9);
  }

  @Test
  void aDateThatIsNone() {
    only(spoiled("2026-03-02", "2026-02-30"), "not-a-date", "/measured/0/on", 34);
  }

  private static List<Problem> withBoards(String boards) {
    return spoiled("\"variants\": {", "\"boards\": { " + boards + " }, \"variants\": {");
  }

  @Test
  void aBoardWithoutAThickness() {
    only(
        withBoards("\"have\": [ { \"length\": 2000, \"width\": 150 } ]"),
        "missing-value",
        "/boards/have/0",
        31);
  }

  @Test
  void aBadPlaceThatRunsBackwards() {
    only(
        withBoards(
            "\"have\": [ { \"length\": 2000, \"width\": 150, \"thickness\": 27,"
                + " \"bad\": [ { \"from\": [50, 0], \"to\": [20, 10] } ] } ]"),
        "not-positive",
        "/boards/have/0/bad/0",
        31);
  }

  @Test
  void halfABoard() {
    only(
        withBoards(
            "\"have\": [ { \"length\": 2000, \"width\": 150, \"thickness\": 27, \"count\": 1.5 } ]"),
        "out-of-range",
        "/boards/have/0/count",
        31);
  }

  @Test
  void grainThatRunsAcrossTheBoard() {
    only(withBoards("\"grain-within\": 60"), "out-of-range", "/boards/grain-within", 31);
  }

  @Test
  void aWaiverWithoutAReason() {
    only(spoiled("the shelf helps", "  "), "missing-value", "/waived/0/because", 35);
  }

  // ---- the chair ----

  @Test
  void aChairWithoutParts() {
    only(
        Samples.problems(
            """
            { "format": "dryfit-chair/1", "name": "Nothing", "unit": "mm", "timber": "teak",
              "parts": {} }
            """),
        "empty-chair",
        "/parts",
        2);
  }

  @Test
  void twoWaysToSayTheSame() {
    only(
        spoiled("\"thickness\": 20,", "\"thickness\": 20, \"plan\": [[0, 0], [1, 0], [0, 1]],"),
        "conflict",
        "/parts/bow/thickness",
        21);
    only(
        spoiled("\"top\": 300,", "\"top\": 300, \"bottom\": 200,"),
        "conflict",
        "/parts/rail/bottom",
        17);
    only(
        spoiled("\"length\": 25", "\"length\": 25, \"through\": true"),
        "conflict",
        "/joints/rail to post/length",
        27);
    only(
        spoiled("\"length\": 25", "\"length\": 25, \"from-top\": 1, \"from-bottom\": 1"),
        "conflict",
        "/joints/rail to post/from-bottom",
        27);
    only(
        spoiled(
            "\"between\": [\"post right\"", "\"from\": [0, 0, 0], \"between\": [\"post right\""),
        "conflict",
        "/parts/rail/from",
        17);
  }

  @Test
  void aBandWhoseEdgesDoNotGoTogether() {
    only(
        spoiled("\"width\": [[0, 20], [100, 30]]", "\"top\": [[0, 20], [100, 30]]"),
        "wrong-kind",
        "/parts/bow/side",
        22);
  }

  @Test
  void aPathOfTooFewPoints() {
    only(spoiled("[[0, 0], [0, 100]]", "[[0, 0]]"), "missing-value", "/parts/bow/side/front", 22);
  }

  @Test
  void aTenonAsLargeAsItsPart() {
    only(
        spoiled("\"thickness\": 8,", "\"thickness\": 22,"),
        "tenon-too-large",
        "/joints/rail to post/thickness",
        27);
    only(
        spoiled("\"width\": 40, \"length\"", "\"width\": 63, \"length\""),
        "tenon-too-large",
        "/joints/rail to post/width",
        27);
  }

  @Test
  void aTenonWithoutShouldersMayBeAsLargeAsItsPart() {
    String bare = "\"width\": 62, \"shoulder\": \"none\", \"thickness\": 22, \"length\": 25";
    assertThat(
            Samples.document(STOOL.replace("\"thickness\": 8, \"width\": 40, \"length\": 25", bare))
                .variants())
        .hasSize(1);
  }

  @Test
  void aTenonPlacedOutsideItsPart() {
    only(
        spoiled("\"length\": 25", "\"length\": 25, \"from-top\": 23"),
        "tenon-too-large",
        "/joints/rail to post/from-top",
        27);
    assertThat(
            Samples.document(STOOL.replace("\"length\": 25", "\"length\": 25, \"from-top\": 22"))
                .variants())
        .hasSize(1);
  }

  @Test
  void aHaunchWithoutRoom() {
    only(
        spoiled("\"length\": 25", "\"length\": 25, \"from-top\": 0, \"haunch\": 8"),
        "tenon-too-large",
        "/joints/rail to post/haunch",
        27);
    only(
        spoiled("\"length\": 25", "\"length\": 25, \"haunch\": 25"),
        "tenon-too-large",
        "/joints/rail to post/haunch",
        27);
  }

  private static final String RAIL_TENON = "\"thickness\": 8, \"width\": 40, \"length\": 25";

  private static void joint(String sizes, String code, String key) {
    Problem problem =
        only(
            spoiled(RAIL_TENON, sizes),
            code,
            "/joints/rail to post" + key,
            key.isEmpty() ? 26 : 27);
    assertThat(problem.message()).isNotBlank();
  }

  @Test
  void whoTakesTheAngleIsSaidOnce() {
    joint(RAIL_TENON + ", \"entry\": \"along\", \"angled\": \"tenon\"", "conflict", "/angled");
    joint(RAIL_TENON + ", \"angled\": \"leg\"", "unknown-word", "/angled");
  }

  @Test
  void twinTenonsThatDoNotFitTheirPart() {
    // Two of 30 and 4 between them are 64; the rail is 62 wide.
    joint(
        "\"thickness\": 8, \"width\": 30, \"length\": 25, \"twin\": 4",
        "tenon-too-large",
        "/width");
    joint(
        "\"thickness\": 8, \"width\": 20, \"length\": 25, \"twin\": { \"count\": 1.5, \"gap\": 2 }",
        "out-of-range",
        "/twin/count");
    joint(RAIL_TENON + ", \"twin\": { \"count\": 2 }", "missing-value", "/twin");
  }

  @Test
  void bareFaceAndPlaceTogether() {
    joint(
        RAIL_TENON + ", \"bare-faced\": \"inside\", \"from-outside\": 2",
        "conflict",
        "/from-outside");
  }

  @Test
  void wedgesInATenonThatDoesNotGoThrough() {
    joint(
        RAIL_TENON + ", \"wedges\": { \"deep\": 20, \"angle\": \"4 deg\" }", "conflict", "/wedges");
    joint(
        "\"thickness\": 8, \"width\": 40, \"through\": true,"
            + " \"wedges\": { \"deep\": 20, \"angle\": \"16 deg\" }",
        "out-of-range",
        "/wedges/angle");
  }

  @Test
  void dowelsThatRunIntoEachOther() {
    joint(
        "\"kind\": \"dowels\", \"diameter\": 8, \"length\": 20, \"spacing\": 8",
        "tenon-too-large",
        "/spacing");
    joint("\"kind\": \"dowels\", \"diameter\": 8, \"length\": 20", "missing-value", "");
  }

  @Test
  void throughDowelsHaveToSayHowFarTheyGoIntoTheirOwnPart() {
    joint(
        "\"kind\": \"dowels\", \"diameter\": 8, \"through\": true, \"count\": 1",
        "missing-value",
        "");
  }

  @Test
  void aShareIsMoreThanNothingAndLessThanAll() {
    joint("\"kind\": \"lap\", \"share\": 1", "out-of-range", "/share");
    joint("\"kind\": \"lap\", \"share\": 0", "out-of-range", "/share");
    joint("\"kind\": \"lap\", \"entry\": \"along\"", "unknown-key", "/entry");
  }

  @Test
  void onlyJointsBetweenTheEndsAreInTheMiddle() {
    only(spoiled("rail both", "rail middle"), "absent-end", "/joints/rail to post/tenon", 26);
    only(
        spoiled(RAIL_TENON, "\"kind\": \"notch\", \"across\": 3, \"along\": 1"),
        "absent-end",
        "/joints/rail to post/tenon",
        26);
  }

  @Test
  void aGrooveIsNotWrittenAsAJoint() {
    joint("\"kind\": \"groove\"", "unknown-word", "/kind");
  }

  @Test
  void everythingWrongIsToldAtOnceInTheOrderOfTheDocument() {
    String text =
        STOOL
            .replace("ash-white", "ash")
            .replace("leg + 20", "lge + 20")
            .replace("\"into\": \"shelf\"", "\"into\": \"shelv\"")
            .replace("\"seatTop\": 470", "\"seatTop\": 500");
    assertThat(Samples.problems(text))
        .extracting(Problem::code)
        .containsExactly("unknown-word", "unknown-name", "absent-part", "out-of-range");
  }

  @Test
  void aFaultIsNotRepeatedByWhatRestsOnIt() {
    assertThat(spoiled("\"leg\": 42", "\"leg\": \"nothing\"")).hasSize(1);
  }

  // ---- bent parts ----

  private static final String PEG =
      "\"form\": \"turned\", \"from\": [0, 0, 0], \"to\": [0, 0, 60], \"diameter\": 12";

  private static void bent(String keys, String code, String place) {
    only(spoiled(PEG, "\"form\": \"bent\", " + keys), code, "/parts/peg" + place, 23);
  }

  @Test
  void aBentPartThatDoesNotSayHowItRuns() {
    bent("\"section\": [10, 10]", "missing-value", "");
    bent(
        "\"section\": [10, 10], \"from\": [0, 0, 0], \"to\": [0, 0, 60], \"toward\": \"back\"",
        "missing-value",
        "");
    bent("\"section\": [10, 10], \"along\": [ [0, 0, 0] ]", "missing-value", "/along");
    bent(
        "\"section\": [10, 10], \"along\": [ [0, 0, 0], [0, 0, 9] ], \"rise\": 3",
        "conflict",
        "/rise");
  }

  @Test
  void aBowThatMakesNoSense() {
    String run = "\"section\": [10, 10], \"from\": [0, 0, 0], \"to\": [0, 0, 60], ";
    bent(run + "\"rise\": 0, \"toward\": \"back\"", "not-positive", "/rise");
    bent(run + "\"rise\": 3, \"toward\": \"behind\"", "unknown-word", "/toward");
  }

  @Test
  void aBentSectionThatMakesNoSense() {
    String along = "\"along\": [ [0, 0, 0], [0, 0, 60] ]";
    bent(along, "missing-value", "");
    bent(along + ", \"section\": [9, 9], \"diameters\": [ [0, 9] ]", "conflict", "/diameters");
    bent(along + ", \"sections\": [ [0, 9, 9], [0, 8, 8] ]", "out-of-range", "/sections/1");
    bent(along + ", \"sections\": [ [0, 9, 0] ]", "not-positive", "/sections/0/2");
    bent(along + ", \"sections\": []", "missing-value", "/sections");
    bent(along + ", \"section\": { \"round\": 9 }, \"upright\": true", "conflict", "/upright");
  }

  // ---- edges, raised panels, splats ----

  private static void edge(String keys, String code, String place) {
    only(
        spoiled(PEG, PEG + ", \"edges\": [ { " + keys + " } ]"),
        code,
        "/parts/peg/edges/0" + place,
        23);
  }

  @Test
  void anEdgeThatMakesNoSense() {
    String all = "\"between\": \"all\", \"shape\": \"chamfer\"";
    edge(all, "missing-value", "");
    edge("\"shape\": \"chamfer\", \"size\": 2", "missing-value", "");
    edge("\"between\": \"all\", \"size\": 2", "missing-value", "");
    edge(all + ", \"size\": 0", "not-positive", "/size");
    edge(all + ", \"size\": 2, \"to\": 10, \"from\": 10", "out-of-range", "/to");
    edge(all + ", \"size\": 2, \"from\": 3, \"leave-ends\": 5", "conflict", "/leave-ends");
    edge("\"between\": \"al\", \"shape\": \"eased\", \"size\": 2", "unknown-word", "/between");
    edge("\"between\": [\"top\"], \"shape\": \"eased\", \"size\": 2", "wrong-type", "/between");
    edge(
        "\"between\": [\"any\", \"top\"], \"shape\": \"eased\", \"size\": 2",
        "unknown-word",
        "/between/0");
    edge(
        "\"between\": [\"top\", \"top\"], \"shape\": \"eased\", \"size\": 2",
        "conflict",
        "/between/1");
  }

  private static void shelf(String keys, String code, String place) {
    only(
        spoiled("\"outline\": { \"circle\": 200 }", "\"outline\": { \"circle\": 200 }, " + keys),
        code,
        "/parts/shelf" + place,
        20);
  }

  @Test
  void aRaisedPanelThatMakesNoSense() {
    shelf("\"raised\": { \"tongue\": 12, \"margin\": 30 }", "out-of-range", "/raised/tongue");
    shelf("\"raised\": { \"tongue\": 6 }", "missing-value", "/raised");
    shelf(
        "\"raised\": { \"tongue\": 6, \"flat\": 30, \"margin\": 30 }",
        "out-of-range",
        "/raised/margin");
    shelf(
        "\"raised\": { \"tongue\": 6, \"margin\": 30, \"face\": \"outside\" }",
        "unknown-word",
        "/raised/face");
    shelf("\"openings\": [ { \"circle\": -3 } ]", "not-positive", "/openings/0/circle");
  }

  @Test
  void aSplatThatMakesNoSense() {
    String splat = "\"form\": \"splat\", \"thickness\": 9, \"from\": [0, 0, 0], \"to\": [0, 0, 60]";
    only(spoiled(PEG, splat), "missing-value", "/parts/peg", 23);
    String edge = splat + ", \"edge\": [ [20, 0], [20, 60] ]";
    only(spoiled(PEG, edge + ", \"rise\": 5"), "missing-value", "/parts/peg", 23);
    only(
        spoiled(PEG, edge + ", \"outline\": { \"circle\": 9 }"),
        "conflict",
        "/parts/peg/outline",
        23);
  }
}
