package dryfit.document;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Seats, blocks, pins, feet and rebates that say too little, too much or what cannot be. */
class FormsRefusedTest {
  private static String chair(String part) {
    return """
        { "format": "dryfit-chair/1", "name": "Stool", "unit": "mm", "timber": "ash-white",
          "parts": {
            "post": { "form": "straight", "pair": true, "section": [40, 40],
              "from": [200, 0, 0], "to": [200, 0, 400] },
            "rail": { "form": "straight", "section": [60, 20],
              "between": ["post right", "post left"], "top": 300 },
            "it": { %s } },
          "joints": { "rail to post": { "tenon": "rail both", "into": "post",
            "thickness": 8, "width": 40, "length": 20 } } }"""
        .formatted(part);
  }

  private static final String SEAT =
      "\"form\": \"seat\", \"at\": [0, 0, 400], \"thickness\": 30, \"outline\": { \"circle\": 300 }";
  private static final String BLOCK =
      "\"form\": \"corner-block\", \"in-corner\": [\"rail\", \"post right\"], \"along\": 50,"
          + " \"high\": 30, \"top\": 290";
  private static final String PEG =
      "\"form\": \"peg\", \"pair\": true, \"in-joint\": \"rail to post\", \"from-shoulder\": 8,"
          + " \"diameter\": 6";
  private static final String WEDGE =
      "\"form\": \"wedge\", \"pair\": true, \"in-joint\": \"rail to post\", \"from-shoulder\": 8,"
          + " \"width\": 20, \"head\": 6, \"tip\": 4";
  private static final String ROD =
      "\"form\": \"turned\", \"diameter\": 30, \"from\": [0, 90, 0], \"to\": [0, 90, 400]";
  private static final String LEG =
      "\"form\": \"straight\", \"section\": [30, 30], \"from\": [0, 90, 0], \"to\": [0, 90, 400]";

  @ParameterizedTest
  @CsvSource({"SEAT", "BLOCK", "PEG", "WEDGE", "ROD", "LEG"})
  void eachIsSoundAsItStands(String form) {
    Samples.document(chair(text(form)));
  }

  private static String text(String form) {
    return switch (form) {
      case "SEAT" -> SEAT;
      case "BLOCK" -> BLOCK;
      case "PEG" -> PEG;
      case "WEDGE" -> WEDGE;
      case "ROD" -> ROD;
      default -> LEG;
    };
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "SEAT | 'hollow': { 'deep': 30, 'inset': 20 } | out-of-range | /parts/it/hollow/deep",
        "SEAT | 'hollow': { 'deep': 9 } | missing-value | /parts/it/hollow",
        "SEAT | 'hollow': { 'deep': 9, 'inset': 9, 'outline': { 'circle': 90 } } | conflict | /parts/it/hollow/inset",
        "SEAT | 'notch-round': [] | missing-value | /parts/it/notch-round",
        "SEAT | 'notch-round': ['pots'] | absent-part | /parts/it/notch-round/0",
        "SEAT | 'notch-round': { 'parts': ['post'], 'gap': -1 } | out-of-range | /parts/it/notch-round/gap",
        "SEAT | 'foot': 'floor' | unknown-key | /parts/it/foot",
        "SEAT | 'slope': '3 mm' | wrong-unit | /parts/it/slope",
        "BLOCK | 'in-corner': ['rail', 'rail'] | same-part | /parts/it/in-corner/1",
        "BLOCK | 'in-corner': ['rail', 'post'] | which-hand | /parts/it/in-corner/1",
        "BLOCK | 'in-corner': ['rail'] | wrong-type | /parts/it/in-corner",
        "BLOCK | 'along': [-5, 50] | not-positive | /parts/it/along",
        "BLOCK | 'angle': '45 deg', 'along': [50, 50] | conflict | /parts/it/along",
        "PEG | 'in-joint': 'rail to past' | absent-joint | /parts/it/in-joint",
        "PEG | 'from-shoulder': 0 | not-positive | /parts/it/from-shoulder",
        "PEG | 'tip': 4 | missing-value | /parts/it/tip",
        "PEG | 'tip': 8, 'tapered': 5 | out-of-range | /parts/it/tip",
        "PEG | 'tip': 4, 'tapered': 5, 'length': 5 | out-of-range | /parts/it/tapered",
        "PEG | 'offset': 6 | out-of-range | /parts/it/offset",
        "PEG | 'across': 'grain' | unknown-word | /parts/it/across",
        "PEG | 'length': 20, 'proud': [1, 1] | conflict | /parts/it/proud",
        "WEDGE | 'tip': 6 | out-of-range | /parts/it/tip",
        "WEDGE | 'tip': 0 | not-positive | /parts/it/tip",
        "WEDGE | 'offset': 1 | unknown-key | /parts/it/offset",
        "ROD | 'details': [ {} ] | missing-value | /parts/it/details/0",
        "ROD | 'details': [ { 'bead': { 'at': 50, 'wide': 10, 'high': 6 } } ] | out-of-range | /parts/it/details/0/bead/high",
        "ROD | 'details': [ { 'cove': { 'at': 50, 'wide': 10, 'deep': 0 } } ] | not-positive | /parts/it/details/0/cove/deep",
        "ROD | 'details': [ { 'fillet': { 'at': 50, 'wide': 10, 'high': 6 } }, { 'fillet': { 'at': 59, 'wide': 10, 'high': 6 } } ] | out-of-range | /parts/it/details/1",
        "LEG | 'foot': 'ground' | unknown-word | /parts/it/foot",
        "LEG | 'foot': { 'z': -1 } | out-of-range | /parts/it/foot/z",
        "LEG | 'rebate': { 'edge': ['top'], 'wide': 5, 'deep': 5 } | wrong-type | /parts/it/rebate/edge",
        "LEG | 'rebate': { 'edge': ['left', 'font'], 'wide': 5, 'deep': 5 } | unknown-word | /parts/it/rebate/edge/1",
        "LEG | 'rebate': { 'edge': ['left', 'front'], 'wide': 0, 'deep': 5 } | not-positive | /parts/it/rebate/wide",
        "LEG | 'oversize': -2 | out-of-range | /parts/it/oversize"
      })
  void whatIsWrongIsToldWhereItIs(String form, String more, String code, String pointer) {
    String added = more.replace('\'', '"');
    // A key written anew takes the place of the sound one.
    String key = added.substring(0, added.indexOf(':'));
    String whole = replaced(text(form), key, added);
    assertThat(Samples.problems(chair(whole)))
        .extracting(Problem::code, Problem::pointer)
        .containsExactly(org.assertj.core.groups.Tuple.tuple(code, pointer));
  }

  private static String replaced(String part, String key, String added) {
    String without = part.replaceFirst(", " + key + ": (\\[[^]]*\\]|\"[^\"]*\"|[^,\\[\"]+)", "");
    if (added.contains("\"along\"")) {
      without = without.replaceFirst(", \"along\": 50", "");
    }
    return without + ", " + added;
  }

  @ParameterizedTest
  @CsvSource({"fills", "at", "groove"})
  void aLooseBoardIsNotPlacedTwice(String other) {
    String loose =
        "\"form\": \"panel\", \"thickness\": 10, \"gap\": 2,"
            + " \"drops-into\": [\"rail\", \"post right\", \"post left\"], \"";
    String value =
        switch (other) {
          case "fills" -> "[\"rail\", \"post right\", \"post left\"]";
          case "at" -> "[0, 0, 0]";
          default -> "{ \"deep\": 5 }";
        };
    assertThat(Samples.problems(chair(loose + other + "\": " + value)))
        .extracting(Problem::code)
        .contains("conflict");
  }
}
