package published;

import static java.lang.Math.toDegrees;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.fit.FitReport;
import dryfit.fit.Fitted;
import dryfit.shop.setting.Bench;
import dryfit.shop.setting.Reading;
import dryfit.shop.setting.Setting;
import dryfit.shop.setting.Settings;
import dryfit.shop.setting.Tool;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What tools are set to, against figures that makers have printed; all chairs are demo data. */
class BenchSettingsTest {

  /** The first of its kind: that of the right hand, where there are two. */
  private static Setting first(FitReport report, Tool tool) {
    return Settings.of(report).all().stream()
        .filter(s -> s.tool() == tool)
        .findFirst()
        .orElseThrow();
  }

  private static double inches(Setting setting, String what) {
    return setting.readings().stream()
            .filter(r -> r.what().equals(what))
            .mapToDouble(r -> ((Reading.Size) r).mm())
            .findFirst()
            .orElseThrow()
        / 25.4;
  }

  /**
   * What one angle on what line to drill for a leg of such rake and splay
   * (blackdogswoodshop.blogspot.com/2020/02; rows by a separate script).
   */
  @ParameterizedTest
  @CsvSource({"14, 8, 15.972, 29.409", "20, 15, 24.32, 36.36"})
  void oneBevelStandsOnTheSightLineFromTheForeAftLine(
      double rake, double splay, double angle, double sight) {
    Setting bore =
        first(
            Fitted.of(LegRakeAndSplayTest.stool("\"rake\": " + rake + ", \"splay\": " + splay)),
            Tool.DRILL);
    Reading.Bevel bevel = (Reading.Bevel) bore.readings().get(0);
    assertThat(toDegrees(bevel.angle().offSquare())).isCloseTo(angle, within(0.006));
    Reading.Line line = (Reading.Line) bore.readings().get(1);
    assertThat(line.from()).isEqualTo("the fore-aft line");
    assertThat(toDegrees(line.angle())).isCloseTo(sight, within(0.006));
    Reading.Line other = (Reading.Line) bore.readings().get(2);
    assertThat(other.from()).isEqualTo("the side-to-side line");
    assertThat(toDegrees(other.angle())).isCloseTo(90 - sight, within(0.006));
  }

  /**
   * A tape at 1 1/4 on a 5/8 bit that leans 16 degrees (moonlightwoodworker.blogspot.com/2013/10/
   * two-chairs-completed.html): 1.202 deep in the middle, 1.288 at the deep edge; on the low side
   * the tape touches 5/16 tan 16 = 0.0896 before the middle is there (separate script).
   */
  @Test
  void theTapeTouchesOnTheLowSideFirst() {
    Setting depth = first(Fitted.of(BoredAtAnAngleTest.rung(16, "\"length\": 1.25")), Tool.DEPTH);
    assertThat(inches(depth, "tape or stop, along the tool")).isCloseTo(1.25, within(0.0005));
    assertThat(inches(depth, "if you stop as the tape first touches"))
        .isCloseTo(1.3396, within(0.0005));
    assertThat(inches(depth, "middle, square to the face")).isCloseTo(1.202, within(0.0005));
    assertThat(inches(depth, "deepest edge, square to the face")).isCloseTo(1.288, within(0.001));
  }

  /**
   * A threaded or brad point goes further than the edges that cut the hole, and one author built a
   * stop for it into his jig (wood-mag.co.uk/articles/chair-making.html; the quarter inch is
   * invented).
   */
  @Test
  void thePointOfTheBitIsAddedToTheTape() {
    FitReport report = Fitted.of(BoredAtAnAngleTest.rung(16, "\"length\": 1.25"));
    Bench bench = new Bench(25.4 / 4, 3, 1, List.of());
    Setting depth =
        Settings.of(report, bench).all().stream()
            .filter(s -> s.tool() == Tool.DEPTH)
            .findFirst()
            .orElseThrow();
    assertThat(inches(depth, "tape or stop, along the tool")).isCloseTo(1.5, within(0.0005));
  }

  /**
   * A round frame is drawn from centre to centre: that side is the rung's length less twice what
   * the mortise is deeper than the leg's radius. Legs of 1 3/4 and mortises 1 1/4 deep: subtract
   * 3/4 (jefflefkowitzchairmaker.com/chairmakers-journal/angles-part-1 and its sequel).
   */
  @Test
  void aRungIsThreeQuartersLongerThanItsLegsAreApart() {
    Setting blank = first(Fitted.of(roundFrame("none", 0.875)), Tool.BLANK);
    assertThat(inches(blank, "finished, over all")).isCloseTo(18 + 0.75, within(0.01));
    assertThat(inches(blank, "of that goes in at the right end")).isCloseTo(1.25, within(1e-9));
  }

  /**
   * A rail coped to a round post: the rise of a segment, radius less the root of radius squared
   * less half the chord squared (plane geometry; in handbooks under segments of a circle). A rail
   * 7/8 thick on a post of 1 3/4: 0.1172. Every fitting pass shortens such a part, and parts left
   * without room for it come out short (issuhub.com, id 2855, page 138).
   */
  @Test
  void aCopedShoulderIsStruckNearerToTheEndByTheRiseOfTheSegment() {
    Setting blank = first(Fitted.of(roundFrame("scribed", 0.875)), Tool.BLANK);
    assertThat(inches(blank, "for coping at the right end")).isCloseTo(0.1172, within(0.003));
    // Three fits of a thirty-second at each of two ends.
    assertThat(inches(blank, "for trial fits")).isCloseTo(6 / 32.0, within(1e-9));
    assertThat(inches(blank, "leave it at least") - inches(blank, "finished, over all"))
        .isCloseTo(6 / 32.0, within(1e-9));
  }

  /** Two posts of 1 3/4, 18 apart, and a rail or rung between them. */
  private static String roundFrame(String shoulder, double thick) {
    String joint =
        shoulder.equals("none")
            ? "\"kind\": \"round-tenon\", \"diameter\": \"5/8 in\", \"length\": 1.25"
            : "\"thickness\": 0.375, \"width\": 1.5, \"length\": 1, \"shoulder\": \"scribed\"";
    String form =
        shoulder.equals("none")
            ? "\"form\": \"turned\", \"diameter\": THICK"
            : "\"form\": \"straight\", \"section\": [2, THICK]";
    return """
        { "format": "dryfit-chair/1", "name": "Posts", "about": "Demo data, invented.", "unit": "in",
          "timber": "ash-white",
          "fit": { "cheek": 0, "edge": 0, "bottom": 0, "least-wall": 0 },
          "parts": {
            "post": { "form": "turned", "pair": true, "diameter": 1.75,
              "from": [9, 0, 0], "to": [9, 0, 18] },
            "rung": { FORM, "between": ["post right", "post left"], "middle": 10 }
          },
          "joints": { "rung": { "tenon": "rung both", "into": "post", JOINT } } }
        """
        .replace("FORM", form)
        .replace("JOINT", joint)
        .replace("THICK", "" + thick);
  }
}
