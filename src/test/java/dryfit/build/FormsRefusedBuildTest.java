package dryfit.build;

import static dryfit.build.Sketch.FRONT_RAIL;
import static dryfit.build.Sketch.SIDE_RAIL;
import static dryfit.build.Sketch.SQUARE_LEGS;
import static dryfit.build.Sketch.problems;
import static org.assertj.core.api.Assertions.assertThat;

import dryfit.document.Problem;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Seats, blocks, pins, feet and rebates that read well and yet cannot be made. */
class FormsRefusedBuildTest {
  private static final String FRAME = SQUARE_LEGS + "," + FRONT_RAIL + "," + SIDE_RAIL;
  private static final String JOINT =
      """
      "rail to leg": { "tenon": "front-rail both", "into": "front-leg",
        "thickness": 8, "width": 40, "length": 20 }""";

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        // The deepest place outside its rim.
        "'form': 'seat', 'at': [0, 0, 400], 'thickness': 30, 'outline': { 'circle': 300 }, 'hollow': { 'deep': 9, 'inset': 20, 'deepest': [0, 140] } | outline-crosses | /hollow",
        // More inset than there is.
        "'form': 'seat', 'at': [0, 0, 400], 'thickness': 30, 'outline': { 'circle': 300 }, 'hollow': { 'deep': 9, 'inset': 160 } | out-of-range | /hollow/inset",
        // A disc of 15 mm radius under a leg 40 square: its notch takes all of it.
        "'form': 'seat', 'at': [180, 20, 390], 'thickness': 30, 'outline': { 'circle': 30 }, 'notch-round': ['front-leg'] | nothing-left | /notch-round/0",
        // Rails on either side of the chair make no corner.
        "'form': 'corner-block', 'in-corner': ['side-rail right', 'side-rail left'], 'along': 50, 'high': 30, 'top': 370 | no-corner | /in-corner",
        // Above the rails.
        "'form': 'corner-block', 'pair': true, 'in-corner': ['front-rail', 'side-rail'], 'along': 50, 'high': 30, 'top': 470 | mortise-misses | /top",
        // 40 tan 88 is 1145: far beyond a rail of 240.
        "'form': 'corner-block', 'pair': true, 'in-corner': ['front-rail', 'side-rail'], 'along': 40, 'angle': '88 deg', 'high': 30, 'top': 370 | out-of-range | /angle",
        // At 90 degrees it runs beside the second rail for ever.
        "'form': 'corner-block', 'pair': true, 'in-corner': ['front-rail', 'side-rail'], 'along': 50, 'angle': '90 deg', 'high': 30, 'top': 370 | out-of-range | /angle",
        // Two joints of one name and no word which.
        "'form': 'peg', 'in-joint': 'rail to leg', 'from-shoulder': 8, 'diameter': 6 | which-hand | /in-joint",
        // Beyond the leg there is no wood.
        "'form': 'peg', 'pair': true, 'in-joint': 'rail to leg', 'from-shoulder': 90, 'diameter': 6 | mortise-misses | /from-shoulder",
        // Its cheeks look to the front and back.
        "'form': 'peg', 'pair': true, 'in-joint': 'rail to leg', 'from-shoulder': 8, 'diameter': 6, 'driven-from': 'top' | absent-face | /driven-from",
        "'form': 'turned', 'diameter': 20, 'from': [0, 100, 0], 'to': [0, 100, 90], 'details': [ { 'bead': { 'at': 3, 'wide': 10, 'high': 2 } } ] | out-of-range | /details/0/bead/at",
        "'form': 'turned', 'diameter': 20, 'from': [0, 100, 0], 'to': [0, 100, 90], 'details': [ { 'cove': { 'at': 30, 'wide': 30, 'deep': 10 } } ] | out-of-range | /details/0/cove/deep",
        // It stops short of the floor.
        "'form': 'sawn', 'stands-at': [0, 100, 10], 'thickness': 20, 'side': [[0, 0], [30, 0], [30, 300], [0, 300]], 'foot': 'floor' | no-foot | /foot",
        // Two chamfers of 16 do not both find room on a face of 30, nor one of 31.
        "'form': 'straight', 'section': [30, 60], 'from': [0, 100, 0], 'to': [0, 100, 300], 'edges': [ { 'between': 'all long', 'shape': 'chamfer', 'size': 16 } ] | edge-too-large | /edges/0/size",
        "'form': 'straight', 'section': [30, 60], 'from': [0, 100, 0], 'to': [0, 100, 300], 'edges': [ { 'between': ['front', 'right'], 'shape': 'chamfer', 'size': 31 } ] | edge-too-large | /edges/0/size",
        "'form': 'straight', 'section': [30, 30], 'from': [0, 100, 0], 'to': [0, 300, 10], 'foot': 'floor' | conflict | /foot",
        "'form': 'straight', 'section': [30, 30], 'from': [0, 100, 0], 'to': [0, 100, 300], 'foot': { 'ease': 15 } | out-of-range | /foot/ease",
        "'form': 'straight', 'section': [30, 30], 'from': [0, 100, 90], 'to': [90, 100, 90], 'rebate': { 'edge': ['top', 'bottom'], 'wide': 5, 'deep': 5 } | wrong-kind | /rebate/edge",
        "'form': 'straight', 'section': [30, 30], 'from': [0, 100, 90], 'to': [90, 100, 90], 'rebate': { 'edge': ['top', 'front'], 'wide': 30, 'deep': 5 } | out-of-range | /rebate/wide"
      })
  void whatCannotBeMadeIsToldWhereItIs(String part, String code, String place) {
    String parts = FRAME + ", \"it\": { " + part.replace('\'', '"') + " }";
    assertThat(problems(parts, JOINT))
        .extracting(Problem::code, Problem::pointer)
        .containsExactly(Tuple.tuple(code, "/parts/it" + place));
  }
}
