package dryfit.shop.jig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.build.Chair;
import dryfit.build.ChairBuilder;
import dryfit.build.Joint;
import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.document.DocumentReader;
import dryfit.document.Hand;
import dryfit.document.JigKind;
import dryfit.document.Reading;
import dryfit.geometry.Frame;
import dryfit.geometry.MassProperties;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import dryfit.solid.Csg;
import dryfit.solid.Kernel;
import dryfit.solid.exact.ExactKernel;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class JigProofTest {
  private static final Kernel KERNEL = new ExactKernel();

  /** Side rails that lean, and a round tenon into a seat at an angle. */
  private static Chair leaning;

  private static Chair round;
  private static List<Jig> ofLeaning;

  @BeforeAll
  static void make() {
    leaning = chair("harbour-armchair");
    round = chair("kiln-stool");
    ofLeaning = jigs(leaning, "side rail to front leg", Optional.empty());
  }

  private static Chair chair(String model) {
    Document document = accepted(DocumentReader.read(Path.of("models/" + model + ".json")));
    return accepted(ChairBuilder.build(accepted(document.design(Design.AS_DRAWN)), KERNEL));
  }

  private static <T> T accepted(Reading<T> reading) {
    return ((Reading.Accepted<T>) reading).value();
  }

  private static List<Jig> jigs(Chair chair, String joint, Optional<JigKind> kind) {
    JigMaker maker = new JigMaker(chair, KERNEL);
    List<Jig> out = new ArrayList<>();
    maker.make(
        maker.wanted(joint, kind),
        made -> {
          if (made instanceof JigMaker.Made.Ready ready) {
            out.add(ready.jig());
          }
        });
    return out;
  }

  private static Jig one(List<Jig> jigs, String name) {
    return jigs.stream().filter(j -> j.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void everyKindOfJigOfALeaningJointIsProvedForBothHands() {
    assertThat(ofLeaning)
        .extracting(Jig::kind)
        .contains(
            JigKind.ANGLE_GUIDE,
            JigKind.BEVEL_SETTER,
            JigKind.HEIGHT_STICK,
            JigKind.DEPTH_GAUGE,
            JigKind.SHOULDER_GUIDE,
            JigKind.CRADLE,
            JigKind.CAUL);
    assertThat(ofLeaning).anyMatch(j -> j.name().endsWith("right"));
    assertThat(ofLeaning).anyMatch(j -> j.name().endsWith("left"));
    for (Jig jig : ofLeaning) {
      JigProof proof = JigProof.of(leaning, jig);
      assertThat(proof.faults()).as(jig.name()).isEmpty();
      assertThat(proof.deepest()).as(jig.name()).isLessThanOrEqualTo(2e-3);
      assertThat(Math.toDegrees(proof.guideTurn())).as(jig.name()).isLessThan(0.01);
      assertThat(proof.guideOff()).as(jig.name()).isLessThan(0.01);
      assertThat(Math.toDegrees(proof.boreTurn())).as(jig.name()).isLessThan(0.01);
      assertThat(proof.boreOff()).as(jig.name()).isLessThan(0.01);
    }
  }

  @Test
  void aDrillGuideForARakedRoundTenonIsProved() {
    Jig jig =
        one(
            jigs(round, "back leg to seat", Optional.of(JigKind.ANGLE_GUIDE)),
            "angle-guide drill, back leg to seat, right");
    assertThat(JigProof.of(round, jig).faults()).isEmpty();
    // The hole is 25.2 mm for a tenon of 25, and 0.2 mm is the allowance for what is printed.
    assertThat(jig.bores())
        .singleElement()
        .satisfies(b -> assertThat(b.acrossFlats()).isCloseTo(25.4, within(0.01)));
  }

  @Test
  void aBlockThatIsMovedOrTurnedIsNoLongerProved() {
    Jig jig = one(ofLeaning, "angle-guide chisel, side rail to front leg, right");
    Joint joint = leaning.joints().get(jig.joint());
    Frame on = jig.pieces().get(0).on();
    Vec3 aside = joint.thick().times(0.05);
    assertThat(JigProof.of(leaning, placed(jig, moved(on, aside))).faults())
        .anyMatch(f -> f.contains("mm off") || f.contains("into the wood"));
    Vec3 down = joint.mouth().normal().times(-0.05);
    assertThat(JigProof.of(leaning, placed(jig, moved(on, down))).faults())
        .anyMatch(f -> f.contains("into the wood"));
    Vec3 up = joint.mouth().normal().times(0.05);
    assertThat(JigProof.of(leaning, placed(jig, moved(on, up))).faults())
        .anyMatch(f -> f.contains("touches"));
    double a = Math.toRadians(0.05);
    Frame turned = Frame.of(on.origin(), on.x().plus(on.y().times(Math.tan(a))), on.y());
    assertThat(JigProof.of(leaning, placed(jig, turned)).holds()).isFalse();
  }

  /**
   * What the jig of one hand is on the part of the other, laid as that part's own jig lies, and
   * turned end for end.
   */
  private static List<JigProof> onTheOtherHand(Jig jig, Jig own) {
    Frame on = own.pieces().get(0).on();
    Vec3 at = leaning.joints().get(own.joint()).at();
    Vec3 foot = on.origin().plus(on.z().times(at.minus(on.origin()).dot(on.z())));
    Frame about =
        new Frame(
            on.origin().plus(at.minus(foot).times(2)), on.x().negated(), on.y().negated(), on.z());
    List<JigProof> out = new ArrayList<>();
    for (Frame frame : List.of(on, about)) {
      JigPiece piece = jig.pieces().get(0);
      JigPiece there = new JigPiece(piece.name(), piece.mesh(), piece.cells(), frame);
      out.add(
          JigProof.of(
              leaning,
              new Jig(
                  own.kind(),
                  own.name(),
                  own.part(),
                  own.joint(),
                  own.hand(),
                  own.letters(),
                  List.of(there),
                  own.rests(),
                  own.guides(),
                  own.bores(),
                  own.notes())));
    }
    return out;
  }

  /**
   * As its twin's lies, the jig of the other hand stands in the wood or does not touch. A guide
   * that is turned end for end does sit, but leads the tool to the wrong side: its proof says so
   * there, its letters name its hand, and its arrow points down.
   */
  @Test
  void theJigOfOneHandDoesNotServeTheOther() {
    int handed = 0;
    for (Jig jig : ofLeaning) {
      if (jig.hand() == Hand.RIGHT && jig.part() >= 0) {
        Jig own = one(ofLeaning, jig.name().replace("right", "left"));
        List<JigProof> there = onTheOtherHand(jig, own);
        assertThat(there).as(jig.name()).noneMatch(JigProof::holds);
        boolean block = jig.kind() != JigKind.HEIGHT_STICK;
        if (block) {
          assertThat(there.get(0).deepest()).as(jig.name()).isGreaterThan(1);
        }
        assertThat(jig.letters().get(0)).endsWith("RIGHT");
        assertThat(own.letters().get(0)).endsWith("LEFT");
        handed++;
      }
    }
    assertThat(handed).isEqualTo(7);
  }

  private static Frame moved(Frame f, Vec3 by) {
    return new Frame(f.origin().plus(by), f.x(), f.y(), f.z());
  }

  private static Jig placed(Jig jig, Frame on) {
    JigPiece piece = jig.pieces().get(0);
    return new Jig(
        jig.kind(),
        jig.name(),
        jig.part(),
        jig.joint(),
        jig.hand(),
        jig.letters(),
        List.of(new JigPiece(piece.name(), piece.mesh(), piece.cells(), on)),
        jig.rests(),
        jig.guides(),
        jig.bores(),
        jig.notes());
  }

  @Test
  void theKernelFindsNothingThatBlockAndPartShare() {
    Jig jig = one(ofLeaning, "angle-guide drill, side rail to front leg, right");
    JigPiece piece = jig.pieces().get(0);
    Mesh block = piece.mesh().placed(piece.on());
    Mesh wood = leaning.parts().get(jig.part()).placedMesh();
    Frame near = new Frame(piece.on().origin().negated(), Vec3.RIGHT, Vec3.BACK, Vec3.UP);
    Mesh shared =
        KERNEL.evaluate(
            new Csg.Common(
                List.of(
                    new Csg.Leaf(block.placed(near), List.of()),
                    new Csg.Leaf(wood.placed(near), List.of()))));
    // Two surfaces on grids of their own may cross by a grid step over all that they touch.
    assertThat(MassProperties.of(shared).volume()).isLessThan(0.5);
  }

  @Test
  void everyJigIsEngravedWithPartJointHandAngleAndWhichWayIsUp() {
    for (Jig jig : ofLeaning) {
      String text = String.join(" ", jig.letters());
      assertThat(text).as(jig.name()).contains("SIDE RAIL TO FRONT LEG").containsPattern("[0-9]");
      boolean right = jig.name().endsWith("right");
      assertThat(text).as(jig.name()).contains(right ? "RIGHT" : "LEFT");
    }
    Jig jig = one(ofLeaning, "angle-guide chisel, side rail to front leg, right");
    assertThat(jig.letters()).contains("FRONT-LEG RIGHT", "CHISEL", "UP");
    // The letters are in the surface too: a block without them has a few dozen triangles.
    assertThat(jig.pieces().get(0).mesh().triangleCount()).isGreaterThan(1000);
  }

  @Test
  void aStickLongerThanTheBedComesInPiecesThatAddUpToItsLength() {
    Jig stick = one(ofLeaning, "height-stick, side rail to front leg, right");
    assertThat(stick.pieces()).hasSize(2);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    Vec3 along = stick.guides().get(1).normal();
    for (JigPiece piece : stick.pieces()) {
      assertThat(piece.mesh().bounds().size().x()).isLessThan(220);
      Mesh placed = piece.mesh().placed(piece.on());
      for (int i = 0; i < placed.pointCount(); i++) {
        low = Math.min(low, placed.point(i).dot(along));
        high = Math.max(high, placed.point(i).dot(along));
      }
    }
    double planned = stick.guides().get(1).offset() + stick.guides().get(0).offset();
    assertThat(high - low).isCloseTo(planned, within(0.01));
  }

  @Test
  void aGuideOfOneHandDoesNotAgreeWithTheMortiseOfTheOtherHoweverItIsTurned() {
    int tried = 0;
    for (Jig jig : ofLeaning) {
      if (jig.kind() != JigKind.ANGLE_GUIDE || !jig.name().endsWith("right")) {
        continue;
      }
      Jig twin = one(ofLeaning, jig.name().replace("right", "left"));
      // The mirrored place has a left-handed frame; a thing of plastic can be put there turned
      // round, or with its fence against the other edge.
      Frame on = jig.pieces().get(0).on();
      Vec3 at = mirrored(on.origin());
      Vec3 x = mirrored(on.x());
      Vec3 y = mirrored(on.y());
      Vec3 z = mirrored(on.z());
      for (Frame wrong :
          List.of(new Frame(at, x.negated(), y, z), new Frame(at, x, y.negated(), z))) {
        Jig there = onTheOtherHand(jig, twin, wrong);
        assertThat(JigProof.of(leaning, there).holds()).as(jig.name()).isFalse();
        tried++;
      }
      assertThat(jig.letters()).contains("FRONT-LEG RIGHT").doesNotContain("FRONT-LEG LEFT");
      assertThat(twin.letters()).contains("FRONT-LEG LEFT").doesNotContain("FRONT-LEG RIGHT");
    }
    assertThat(tried).isEqualTo(4);
  }

  private static Vec3 mirrored(Vec3 p) {
    return new Vec3(-p.x(), p.y(), p.z());
  }

  private static Jig onTheOtherHand(Jig jig, Jig twin, Frame on) {
    JigPiece piece = jig.pieces().get(0);
    return new Jig(
        jig.kind(),
        jig.name(),
        twin.part(),
        twin.joint(),
        jig.hand(),
        jig.letters(),
        List.of(new JigPiece(piece.name(), piece.mesh(), piece.cells(), on)),
        twin.rests(),
        twin.guides(),
        twin.bores(),
        jig.notes());
  }

  @Test
  void aJigThatServesOneHandOnlyIsMarkedWithIt() {
    for (Jig jig : ofLeaning) {
      boolean handed = jig.name().endsWith("right") || jig.name().endsWith("left");
      String letters = String.join(" ", jig.letters());
      assertThat(handed).as(jig.name()).isTrue();
      assertThat(letters.contains("RIGHT") ^ letters.contains("LEFT") || letters.contains("BOTH"))
          .as(jig.name())
          .isTrue();
    }
  }

  @Test
  void onACurvedRailTheFenceOfAGuideLiesAlongItsHollowAndIsProved() {
    Jig jig =
        one(
            jigs(leaning, "crest rail to leg", Optional.of(JigKind.ANGLE_GUIDE)),
            "angle-guide drill, crest rail to leg, right");
    assertThat(JigProof.of(leaning, jig).faults()).isEmpty();
    assertThat(jig.rests()).hasSize(1);
  }

  @Test
  void theTongueOfADepthGaugeEndsOnTheFloorOfAHousingThatFollowsALeaningFace() {
    Jig jig =
        one(
            jigs(leaning, "arm to back leg", Optional.of(JigKind.DEPTH_GAUGE)),
            "depth-gauge, arm to back leg, right");
    assertThat(JigProof.of(leaning, jig).faults()).isEmpty();
    assertThat(jig.rests().get(0).normal())
        .isEqualTo(leaning.joints().get(jig.joint()).mouth().normal());
  }

  @Test
  void whereNoJigCanSitTheMakerIsToldWhatToDoInstead() {
    List<String> told = new ArrayList<>();
    JigMaker maker = new JigMaker(leaning, KERNEL);
    for (JigKind kind : List.of(JigKind.SHOULDER_GUIDE, JigKind.CRADLE)) {
      maker.make(
          maker.wanted("arm to back leg", Optional.of(kind)),
          made -> {
            if (made instanceof JigMaker.Made.Without without) {
              told.add(without.because());
            }
          });
    }
    assertThat(told).anyMatch(because -> because.contains("the whole end goes in"));
    assertThat(told).allMatch(because -> because.contains(":"));
  }
}
