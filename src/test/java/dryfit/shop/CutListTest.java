package dryfit.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.build.Chair;
import dryfit.document.BoardsPlan;
import dryfit.document.BoardsPlan.Allowance;
import dryfit.fit.Fitted;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two legs, a rail between them, an oak board and a dowelled bar; demo data. */
class CutListTest {
  private static Chair chair() {
    return Fitted.of(
            """
            { "format": "dryfit-chair/1", "name": "Sketch", "unit": "mm", "timber": "ash-white",
              "parts": {
                "leg": { "form": "straight", "pair": true, "section": [40, 40],
                  "from": [200, 0, 0], "to": [200, 0, 400] },
                "rail": { "form": "straight", "section": [60, 20],
                  "between": ["leg right", "leg left"], "middle": 300 },
                "bar": { "form": "straight", "section": [30, 20], "oversize": { "sides": 2, "ends": 20 },
                  "between": ["leg right", "leg left"], "middle": 100 },
                "top": { "form": "panel", "thickness": 15, "plane": "plan", "timber": "oak-white",
                  "at": [0, 0, 420], "grain": [0, 1, 0],
                  "outline": [ [-250, -100], [250, -100], [250, 100], [-250, 100] ] } },
              "joints": {
                "rail": { "tenon": "rail both", "into": "leg", "thickness": 8, "width": 40, "length": 25 },
                "bar": { "tenon": "bar both", "into": "leg", "kind": "dowels", "diameter": 8,
                  "length": 20, "own-length": 20, "count": 2, "spacing": 14 } } }""")
        .chair();
  }

  private static final BoardsPlan PLAN =
      new BoardsPlan(new Allowance(30, 6, 1), 0.25, 3, 3, 0.1, List.of());

  private static CutList list() {
    return CutList.of(chair(), PLAN);
  }

  private static CutList.Row row(CutList list, String name) {
    return list.groups().stream()
        .flatMap(g -> g.rows().stream())
        .filter(r -> r.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aPairIsOneRowOfTwo() {
    CutList.Row leg = row(list(), "leg");
    assertThat(leg.count()).isEqualTo(2);
    assertThat(leg.pair()).isTrue();
    assertThat(leg.finished()).isEqualTo(new Blank.Size(400, 40, 40));
    assertThat(leg.rough()).isEqualTo(new Blank.Size(430, 46, 41));
  }

  @Test
  void aBlankIsAsLongAsThePartWithItsTenons() {
    CutList.Row rail = row(list(), "rail");
    // 400 between the middles of the legs, less 40, and two tenons of 25.
    assertThat(rail.finished().length()).isCloseTo(410, within(1e-3));
    assertThat(rail.finished().width()).isCloseTo(60, within(1e-3));
    assertThat(rail.finished().thickness()).isCloseTo(20, within(1e-3));
  }

  @Test
  void theLengthOfABlankIsAlongItsGrain() {
    CutList.Row top = row(list(), "top");
    assertThat(top.finished()).isEqualTo(new Blank.Size(200, 500, 15));
  }

  @Test
  void anOversizeOfItsOwnComesBeforeWhatIsAllowedForAll() {
    CutList.Row bar = row(list(), "bar");
    assertThat(bar.rough().length()).isCloseTo(bar.finished().length() + 40, within(1e-9));
    assertThat(bar.rough().width()).isCloseTo(34, within(1e-3));
    assertThat(bar.rough().thickness()).isCloseTo(24, within(1e-3));
  }

  @Test
  void blanksAreGroupedByTimberAndByWhatTheyAreSawnFrom() {
    assertThat(list().groups())
        .extracting(g -> g.timber() + " " + g.from().map(ThicknessClass::word).orElse("none"))
        .containsExactly("ash-white 5/4", "ash-white 8/4", "oak-white 4/4");
  }

  @Test
  void whatAJointBringsAlongIsNoBlankOfABoard() {
    assertThat(list().pieces()).allMatch(r -> r.timber().equals("ash-white"));
    assertThat(list().pieces().stream().mapToInt(CutList.Row::count).sum()).isEqualTo(4);
    assertThat(list().pieces().get(0).finished().thickness()).isCloseTo(8, within(0.1));
  }

  /** 430 x 46 mm of 2 in is 2 x 430 x 46 x 50.8 / 2 359 737 mm3, worked by hand: 0.8517. */
  @Test
  void boardFeetCountTheThicknessTheWoodIsSawnTo() {
    CutList.Group legs = list().groups().get(1);
    assertThat(legs.rows()).extracting(CutList.Row::name).containsExactly("leg");
    assertThat(legs.boardFeet()).isCloseTo(0.8517, within(5e-4));
    assertThat(BoardMeasure.toBuy(legs.boardFeet(), 0.25)).isEqualTo(2);
  }

  @Test
  void thicknessThatNobodySawsHasToBeGluedUp() {
    BoardsPlan thick = new BoardsPlan(new Allowance(0, 0, 60), 0, 3, 3, 0.1, List.of());
    assertThat(CutList.of(chair(), thick).groups())
        .filteredOn(g -> g.from().isEmpty())
        .flatExtracting(CutList.Group::rows)
        .extracting(CutList.Row::name)
        .containsExactly("leg");
  }
}
