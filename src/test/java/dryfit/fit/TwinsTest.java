package dryfit.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Hand;
import dryfit.fit.JointDetail.SideGap;
import dryfit.fit.JointDetail.Wall;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is told of a mirror image is what would be measured on it. */
class TwinsTest {
  /** The exact kernel puts corners on a grid; mirrored looks may take the other side of a seam. */
  private static final double GRID = 2e-3;

  static List<Path> models() throws IOException {
    return ShippedModelsTest.models();
  }

  @ParameterizedTest
  @MethodSource("models")
  void whatIsToldOfATwinIsWhatIsMeasuredOnIt(Path model) {
    Assembly assembly = Assembly.of(Fitted.chair(model));
    Twins twins = Twins.of(assembly);
    List<Joint> joints = assembly.chair().joints();
    List<JointFit> told = JointMeasure.all(assembly, twins);

    int mirrored = 0;
    for (int i = 0; i < joints.size(); i++) {
      JointFit measured = JointMeasure.of(assembly, joints.get(i));
      String label = joints.get(i).label();
      mirrored += twins.ofJoint(i) >= 0 ? 1 : 0;
      assertSame(label, told.get(i).cheek().least(), measured.cheek().least());
      assertSame(label, told.get(i).edge().greatest(), measured.edge().greatest());
      assertSame(label, told.get(i).bottom().least(), measured.bottom().least());
      assertSame(label, told.get(i).shoulder().greatest(), measured.shoulder().greatest());
      assertSame(label, told.get(i).wall(), measured.wall());
      assertThat(told.get(i).wallFace()).as(label).isEqualTo(measured.wallFace());
      assertThat(told.get(i).leanAcross()).as(label).isEqualTo(measured.leanAcross());
      assertThat(told.get(i).glueLong()).as(label).isCloseTo(measured.glueLong(), within(0.1));
      assertThat(sides(told.get(i))).as(label).isEqualTo(sides(measured));
      assertThat(walls(told.get(i))).as(label).isEqualTo(walls(measured));
      for (int k = 0; k < sides(measured).size(); k++) {
        SideGap one = sorted(told.get(i)).get(k);
        SideGap other = sorted(measured).get(k);
        assertThat(one.least().value())
            .as(label + " " + one.side())
            .isCloseTo(other.least().value(), within(GRID));
        // The place itself may be another of those that are alike.
        assertThat(Math.signum(one.least().at().x()))
            .as(label + " " + one.side())
            .isEqualTo(Math.signum(other.least().at().x()));
      }
    }
    // All between lefts, and of those across the middle as many as are their own mirror image.
    long between = joints.stream().filter(j -> isOfLefts(assembly, j)).count();
    long lefts = joints.stream().filter(j -> j.hand() == Hand.LEFT).count();
    assertThat(mirrored).as("mirrored").isBetween((int) between, (int) lefts);
  }

  @Test
  void aSideThatDiffersIsMeasuredByItself() {
    Chair chair = Fitted.of(Fitted.frame("1.5", "0.75", "0.125", "0.25", "0.75", "")).chair();
    Assembly assembly = Assembly.of(chair);
    int left = 0;
    while (!isOfLefts(assembly, chair.joints().get(left))) {
      left++;
    }
    assertThat(Twins.of(assembly).ofJoint(left)).isNotNegative();

    // The left leg half a millimetre from where its twin would have it.
    int leg = chair.joints().get(left).mortised();
    List<Part> parts = new ArrayList<>(chair.parts());
    Part part = parts.get(leg);
    Frame f = part.frame();
    Frame moved = new Frame(f.origin().plus(new Vec3(0.5, 0, 0)), f.x(), f.y(), f.z());
    parts.set(leg, moved(part, moved));
    Chair askew = new Chair(chair.design(), parts, chair.joints());
    assertThat(Twins.of(Assembly.of(askew)).ofJoint(left)).isNegative();
  }

  @Test
  void aRailAcrossTheMiddleIsItsOwnMirrorImageUntilOneEndDiffers() {
    Chair chair = Fitted.of(Fitted.frame("1.5", "0.75", "0.125", "0.25", "0.75", "")).chair();
    Assembly assembly = Assembly.of(chair);
    int left = 0;
    while (chair.joints().get(left).hand() != Hand.LEFT
        || assembly.tenoned(chair.joints().get(left)).part().hand() != Hand.NONE) {
      left++;
    }
    assertThat(Twins.of(assembly).ofJoint(left)).isNotNegative();

    // The rail a hundredth of a millimetre to one side: its ends are no longer alike.
    int rail = chair.joints().get(left).tenoned();
    List<Part> parts = new ArrayList<>(chair.parts());
    Frame f = parts.get(rail).frame();
    parts.set(
        rail,
        moved(
            parts.get(rail),
            new Frame(f.origin().plus(new Vec3(0.01, 0, 0)), f.x(), f.y(), f.z())));
    Chair askew = new Chair(chair.design(), parts, chair.joints());
    assertThat(Twins.of(Assembly.of(askew)).ofJoint(left)).isNegative();
  }

  private static Part moved(Part part, Frame frame) {
    return new Part(
        part.plan(),
        part.hand(),
        part.label(),
        frame,
        part.body(),
        part.bodyCells(),
        part.solid(),
        part.blank(),
        part.grain());
  }

  private static boolean isOfLefts(Assembly assembly, Joint j) {
    return assembly.tenoned(j).part().hand() == Hand.LEFT
        && assembly.mortised(j).part().hand() == Hand.LEFT;
  }

  private static List<SideGap> sorted(JointFit fit) {
    return fit.detail().gaps().stream().sorted(Comparator.comparing(SideGap::side)).toList();
  }

  private static List<String> sides(JointFit fit) {
    return sorted(fit).stream().map(SideGap::side).toList();
  }

  private static List<String> walls(JointFit fit) {
    return fit.detail().walls().stream().map(Wall::face).sorted().toList();
  }

  private static void assertSame(String label, OptionalDouble told, OptionalDouble measured) {
    assertThat(told.isPresent()).as(label).isEqualTo(measured.isPresent());
    if (told.isPresent()) {
      assertThat(told.getAsDouble()).as(label).isCloseTo(measured.getAsDouble(), within(GRID));
    }
  }
}
