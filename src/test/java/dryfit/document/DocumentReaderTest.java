package dryfit.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.document.JointPlan.End;
import dryfit.document.JointPlan.EndRef;
import dryfit.document.PartPlan.Ends;
import dryfit.document.PartPlan.Level;
import dryfit.document.PartPlan.Outline;
import dryfit.document.PartPlan.PanelShape;
import dryfit.document.PartPlan.PartRef;
import dryfit.document.PartPlan.Placement;
import dryfit.document.PartPlan.Reveal;
import dryfit.document.PartPlan.Section;
import dryfit.document.PartPlan.Spot;
import dryfit.document.PartPlan.Spot2;
import dryfit.document.PartPlan.Station;
import dryfit.document.PartPlan.Step;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class DocumentReaderTest {
  private final Design chair = Samples.design(Samples.everyForm(), Design.AS_DRAWN);

  private PartPlan part(String name) {
    return chair.parts().stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
  }

  private JointPlan joint(String name) {
    return chair.joints().stream().filter(j -> j.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void readsTheHeadOfTheDocument() {
    assertThat(chair.name()).isEqualTo("Quay armchair");
    assertThat(chair.file()).isEqualTo("chair.json");
    assertThat(chair.unit()).isEqualTo(Design.LengthUnit.MM);
    assertThat(chair.labels()).isEqualTo(Design.Labels.AS_SEATED);
    assertThat(chair.timber()).isEqualTo("ash-white");
    assertThat(chair.fit()).isEqualTo(new Design.FitPlan(0.1, 0.5, 2, 6));
  }

  @Test
  void worksOutDimensionsWhateverTheirOrder() {
    assertThat(dimension("armTop").value()).isEqualTo(new Quantity(660, Quantity.Kind.LENGTH));
    assertThat(dimension("armTop").formula()).isEqualTo("seatTop + 220");
    assertThat(dimension("seatDrop").value().kind()).isEqualTo(Quantity.Kind.ANGLE);
    assertThat(dimension("seatDrop").formula()).isEmpty();
    assertThat(dimension("railAngle").value().value()).isCloseTo(Math.atan(0.1), within(1e-15));
    assertThat(dimension("slats").value()).isEqualTo(new Quantity(5, Quantity.Kind.NUMBER));
    assertThat(dimension("seatTop").from()).isEqualTo(380);
    assertThat(dimension("seatTop").pointer()).isEqualTo("/dimensions/seatTop/value");
  }

  private Design.Dimension dimension(String name) {
    return chair.dimensions().stream().filter(d -> d.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void keepsPartsInTheOrderOfTheDocument() {
    assertThat(chair.parts())
        .extracting(PartPlan::name)
        .startsWith("front-leg", "back-leg", "side-rail", "front-rail");
  }

  @Test
  void readsAStraightPartThatRunsFromAPlaceToAPlace() {
    PartPlan.Straight leg = (PartPlan.Straight) part("front-leg");
    assertThat(leg.common().pair()).isTrue();
    assertThat(leg.common().pointer()).isEqualTo("/parts/front-leg");
    assertThat(leg.placement())
        .isEqualTo(new Placement.Run(new Spot(259, 21, 0), new Spot(259, 21, 630)));
    assertThat(leg.section()).isEqualTo(new Section.Rectangle(42, 42));
    assertThat(leg.tapers()).hasSize(1);
    assertThat(leg.tapers().get(0).from()).isEqualTo(352);
    assertThat(leg.tapers().get(0).faces()).containsExactly("inside", "back");
  }

  @Test
  void readsAPartBetweenTwoOthers() {
    Placement.Between place =
        (Placement.Between) ((PartPlan.Straight) part("side-rail")).placement();
    assertThat(place.first())
        .isEqualTo(new PartRef("front-leg", Hand.NONE, "/parts/side-rail/between/0"));
    assertThat(place.level().orElseThrow().edge()).isEqualTo(Level.Edge.TOP);
    assertThat(place.level().orElseThrow().height().second())
        .isCloseTo(440 - 450 * Math.tan(Math.toRadians(4)), within(1e-12));
    assertThat(place.reveal()).contains(new Reveal(Reveal.From.OUTSIDE, new Ends(4, 4)));
  }

  @Test
  void saysWhichOfAPairAPartMeets() {
    Placement.Between place =
        (Placement.Between) ((PartPlan.Straight) part("front-rail")).placement();
    assertThat(place.first().hand()).isEqualTo(Hand.RIGHT);
    assertThat(place.second().hand()).isEqualTo(Hand.LEFT);
    assertThat(part("front-rail").common().timber()).isEqualTo("oak-white");
  }

  @Test
  void readsTheOtherWaysToPlaceAPart() {
    PartPlan.Straight back = (PartPlan.Straight) part("back-rail");
    Placement.Between place = (Placement.Between) back.placement();
    assertThat(place.level().orElseThrow().edge()).isEqualTo(Level.Edge.MIDDLE);
    assertThat(place.reveal()).contains(new Reveal(Reveal.From.INSIDE, new Ends(8, 9)));
    assertThat(back.turn()).isEqualTo(Math.atan(1.0 / 8));
    Placement.Between upright = (Placement.Between) ((PartPlan.Turned) part("spindle")).placement();
    assertThat(upright.x()).contains(new Ends(0, 0));
    assertThat(upright.y()).contains(new Ends(21, 450));
    assertThat(upright.level()).isEmpty();
    assertThat(upright.reveal()).isEmpty();
    PartPlan.Straight stretcher = (PartPlan.Straight) part("stretcher");
    assertThat(stretcher.section()).isEqualTo(new Section.Round(24));
    assertThat(((Placement.Between) stretcher.placement()).reveal())
        .contains(new Reveal(Reveal.From.CENTRED, new Ends(0, 0)));
  }

  @Test
  void makesTheSecondEdgeOfABandFromItsWidths() {
    PartPlan.Sawn leg = (PartPlan.Sawn) part("back-leg");
    assertThat(leg.thickness()).contains(42.0);
    assertThat(leg.common().grain()).isEqualTo(new PartPlan.Grain.AlongChord());
    Outline.Band band = (Outline.Band) leg.side().orElseThrow();
    assertThat(band.firstName()).isEqualTo("front");
    assertThat(band.secondName()).isEqualTo("back");
    assertThat(band.second().start()).isEqualTo(new Spot2(-2, 0));
    Step.Curve back = (Step.Curve) band.second().steps().get(0);
    assertThat(back.through()).extracting(Spot2::v).containsExactly(260.0, 440.0, 470.0, 960.0);
    assertThat(back.through().get(3)).isEqualTo(new Spot2(88, 960));
    double widthAt260 = 34 + 8 * 260.0 / 440;
    assertThat(back.through().get(0).u()).isCloseTo(widthAt260, within(1e-12));
  }

  @Test
  void readsASawnPartWithTwoOutlines() {
    PartPlan.Sawn arm = (PartPlan.Sawn) part("arm");
    assertThat(arm.thickness()).isEmpty();
    assertThat(arm.front()).isEmpty();
    Outline.Band side = (Outline.Band) arm.side().orElseThrow();
    assertThat(side.first().steps())
        .containsExactly(new Step.Arc(new Spot2(0, 0), -2), new Step.Line(new Spot2(430, 0)));
    assertThat(arm.common().grain()).isEqualTo(new PartPlan.Grain.Along(new Spot(0, 1, 0)));
    assertThat(((Placement.Between) arm.placement()).level().orElseThrow().edge())
        .isEqualTo(Level.Edge.BOTTOM);
  }

  @Test
  void readsTurnedParts() {
    PartPlan.Turned spindle = (PartPlan.Turned) part("spindle");
    assertThat(spindle.smooth()).isTrue();
    assertThat(spindle.stations())
        .containsExactly(new Station(0, 14), new Station(150, 20), new Station(300, 14));
    assertThat(((PartPlan.Turned) part("peg")).stations()).containsExactly(new Station(0, 9.525));
  }

  @Test
  void readsPanels() {
    PartPlan.Panel held = (PartPlan.Panel) part("arm-panel");
    PanelShape.Fills fills = (PanelShape.Fills) held.shape();
    assertThat(fills.parts()).hasSize(4);
    assertThat(fills.deep()).isEqualTo(8);
    assertThat(fills.gap()).isEqualTo(2);
    assertThat(fills.slack()).isEqualTo(0.15);
    PanelShape.Drawn seat = (PanelShape.Drawn) ((PartPlan.Panel) part("seat")).shape();
    assertThat(seat.view()).isEqualTo(PartPlan.View.PLAN);
    assertThat(((Outline.Closed) seat.outline()).path().steps()).hasSize(3);
    PanelShape.Drawn button = (PanelShape.Drawn) ((PartPlan.Panel) part("button")).shape();
    assertThat(button.outline()).isEqualTo(new Outline.Circle(18));
  }

  @Test
  void readsAMortiseAndTenon() {
    JointPlan joint = joint("front rail to leg");
    assertThat(joint.kind()).isEqualTo(JointPlan.Kind.MORTISE_AND_TENON);
    assertThat(joint.tenon())
        .isEqualTo(
            new EndRef("front-rail", Hand.NONE, End.BOTH, "/joints/front rail to leg/tenon"));
    assertThat(joint.thickness().orElseThrow()).isCloseTo(9.9, within(1e-12));
    assertThat(joint.length()).isEqualTo(OptionalDouble.of(26));
    assertThat(joint.haunch()).contains(new JointPlan.Haunch(10, true, false));
    assertThat(joint.mitre()).contains(new JointPlan.Mitre("side rail to front leg", 1));
    assertThat(joint.lengthIs()).isEqualTo(JointPlan.LengthIs.ALONG_THE_TENON);
    assertThat(joint.fit()).isEqualTo(chair.fit());
  }

  @Test
  void readsPlaceFitEntryAndShoulder() {
    JointPlan front = joint("side rail to front leg");
    assertThat(front.entry()).isEqualTo(new JointPlan.Entry.AlongThePart());
    assertThat(front.place().fromOutside()).isEqualTo(OptionalDouble.of(6));
    assertThat(front.fit()).isEqualTo(new Design.FitPlan(0.15, 0.5, 2, 6));
    JointPlan back = joint("side rail to back leg");
    assertThat(back.through()).isTrue();
    assertThat(back.proud()).isEqualTo(3);
    assertThat(back.length()).isEmpty();
    assertThat(back.lengthIs()).isEqualTo(JointPlan.LengthIs.SQUARE_TO_THE_FACE);
    assertThat(back.entry()).isEqualTo(new JointPlan.Entry.SquareToTheFace());
    assertThat(back.shoulder()).isEqualTo(JointPlan.Shoulder.SCRIBED);
  }

  @Test
  void readsTheOtherKindsOfJoint() {
    JointPlan round = joint("arm to front leg");
    assertThat(round.diameter()).isEqualTo(OptionalDouble.of(20));
    assertThat(round.thickness()).isEmpty();
    assertThat(round.entry()).isEqualTo(new JointPlan.Entry.Along(new Spot(0, 0, 1)));
    JointPlan housing = joint("arm to back leg");
    assertThat(housing.depth()).isEqualTo(OptionalDouble.of(14));
    assertThat(housing.role()).isEqualTo(JointPlan.Role.LOCATING);
    assertThat(joint("stretcher to leg").into().hand()).isEqualTo(Hand.LEFT);
    assertThat(joint("stretcher to leg").tenon().end()).isEqualTo(End.LEFT);
  }

  @Test
  void takesTheHandOfAPairBeforeTheEnd() {
    String text = Samples.everyForm().replace("\"front-leg top\"", "\"front-leg left top\"");
    Design other = Samples.design(text, Design.AS_DRAWN);
    EndRef end =
        other.joints().stream()
            .filter(j -> j.name().equals("arm to front leg"))
            .findFirst()
            .orElseThrow()
            .tenon();
    assertThat(end.hand()).isEqualTo(Hand.LEFT);
    assertThat(end.end()).isEqualTo(End.TOP);
  }

  @Test
  void keepsWhatWasMeasuredWaivedAndWanted() {
    assertThat(chair.measured().get(0).value()).isEqualTo(new Quantity(29.4, Quantity.Kind.LENGTH));
    assertThat(chair.measured().get(0).part()).isEqualTo("arm left");
    assertThat(chair.waived().get(0).because()).isEqualTo("the panel carries the arm");
    assertThat(chair.jigs()).extracting(Design.JigPlan::from).containsExactly("", "side-rail top");
    assertThat(chair.jigs()).extracting(Design.JigPlan::hand).containsExactly("both", "both");
  }

  @Test
  void appliesVariants() {
    Document document = Samples.document(Samples.everyForm());
    assertThat(document.variants()).containsExactly("low", "deep tenons", "no peg");
    Design low = Samples.design(Samples.everyForm(), "low");
    assertThat(low.variant()).isEqualTo("low");
    assertThat(low.dimensions().get(0).value().value()).isEqualTo(405);
    assertThat(low.dimensions().get(0).pointer()).isEqualTo("/variants/low/seatTop");
    assertThat(low.dimensions().get(9).value().value()).isEqualTo(625);
    Design deep = Samples.design(Samples.everyForm(), "deep tenons");
    assertThat(deep.joints().get(0).length()).isEqualTo(OptionalDouble.of(34));
    assertThat(deep.joints().get(0).mitre()).isEqualTo(Optional.empty());
    assertThat(deep.joints().get(0).pointer()).isEqualTo("/joints/front rail to leg");
    assertThat(Samples.design(Samples.everyForm(), "no peg").parts())
        .extracting(PartPlan::name)
        .doesNotContain("peg")
        .contains("spindle");
  }

  @Test
  void readsInchesToTheFraction() {
    String text =
        """
        {"format":"dryfit-chair/1","name":"Stool","unit":"in","timber":"teak",
         "dimensions":{"high":"17 3/8 in","wide":16,"metric":"20 mm"},
         "parts":{"post":{"form":"straight","from":[0,0,0],"to":[0,0,"high"],
                  "section":["1-1/2 in","wide / 8"]}}}
        """;
    Design stool = Samples.design(text, Design.AS_DRAWN);
    assertThat(stool.dimensions().get(0).value().value()).isCloseTo(17.375 * 25.4, within(1e-9));
    assertThat(stool.dimensions().get(1).value().value()).isCloseTo(406.4, within(1e-9));
    assertThat(stool.dimensions().get(2).value().value()).isEqualTo(20);
    Section.Rectangle section =
        (Section.Rectangle) ((PartPlan.Straight) stool.parts().get(0)).section();
    assertThat(section.width()).isCloseTo(38.1, within(1e-9));
    assertThat(section.thickness()).isCloseTo(50.8, within(1e-9));
  }

  @Test
  void readsTheSameTextToTheSameDesign() {
    assertThat(Samples.design(Samples.everyForm(), "low"))
        .isEqualTo(Samples.design(Samples.everyForm(), "low"));
  }
}
