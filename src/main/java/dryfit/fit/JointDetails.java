package dryfit.fit;

import dryfit.build.Joint;
import dryfit.fit.Assembly.Placed;
import dryfit.fit.JointDetail.Play;
import dryfit.fit.JointDetail.SideGap;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Measures a joint side by side. */
final class JointDetails {
  private JointDetails() {}

  static JointDetail of(
      Assembly assembly,
      Joint joint,
      List<Facing> facing,
      WallLeft wall,
      List<ShoulderGap.Sample> shoulder) {
    Placed tenoned = assembly.tenoned(joint);
    Placed mortised = assembly.mortised(joint);
    JointWords words = new JointWords(joint);
    return new JointDetail(
        () -> sides(joint, tenoned, facing, shoulder),
        wall.sides(words),
        Reveals.of(joint, tenoned, mortised));
  }

  private static JointDetail.Sides sides(
      Joint joint, Placed tenoned, List<Facing> facing, List<ShoulderGap.Sample> shoulder) {
    List<SideGap> gaps = new ArrayList<>();
    for (int i = 0; i < facing.size(); i++) {
      Joint alone = joint.alone(joint.tenons().get(i));
      new GapField(alone, facing.get(i), new JointWords(alone))
          .sides()
          .forEach(side -> add(gaps, side));
    }
    // Several tenons side by side hold a part straight over their whole row.
    Optional<Play> play =
        joint.tenons().size() == 1 ? play(joint, tenoned, gaps) : Optional.empty();
    ShoulderGap.side(joint, shoulder, new JointWords(joint)).ifPresent(gaps::add);
    return new JointDetail.Sides(gaps, play);
  }

  /** The same side of several tenons is one side. */
  private static void add(List<SideGap> gaps, SideGap side) {
    for (int i = 0; i < gaps.size(); i++) {
      SideGap known = gaps.get(i);
      if (known.side().equals(side.side())) {
        boolean less = side.least().value() < known.least().value();
        boolean more = side.greatest().value() > known.greatest().value();
        gaps.set(
            i,
            new SideGap(
                side.side(),
                less ? side.least() : known.least(),
                more ? side.greatest() : known.greatest()));
        return;
      }
    }
    gaps.add(side);
  }

  private static Optional<Play> play(Joint joint, Placed tenoned, List<SideGap> gaps) {
    Vec3 length = tenoned.part().lengthNear(joint.at());
    Vec3 out = joint.atStart() ? length : length.negated();
    double lever =
        tenoned.bodyCells().stream().mapToDouble((Convex c) -> c.reach(out)).max().orElse(0)
            - joint.at().dot(out);
    double deep = joint.inWood();
    if (joint.plan().diameter().isPresent()) {
      return both(gaps, "all round", "all round")
          .map(c -> new Play(angle(c, deep), OptionalDouble.empty(), lever));
    }
    JointWords words = new JointWords(joint);
    Optional<Double> cheeks =
        both(gaps, words.side(joint.thick()), words.side(joint.thick().negated()));
    Optional<Double> edges =
        both(gaps, words.side(joint.wide()), words.side(joint.wide().negated()));
    return cheeks.map(
        c ->
            new Play(
                angle(c, deep),
                edges.map(e -> OptionalDouble.of(angle(e, deep))).orElse(OptionalDouble.empty()),
                lever));
  }

  /** The room between two sides that face each other; none if either is not there. */
  private static Optional<Double> both(List<SideGap> gaps, String one, String other) {
    return least(gaps, one).flatMap(a -> least(gaps, other).map(b -> Math.max(0, a + b)));
  }

  private static Optional<Double> least(List<SideGap> gaps, String side) {
    return gaps.stream().filter(g -> g.side().equals(side)).map(g -> g.least().value()).findFirst();
  }

  private static double angle(double gap, double length) {
    return Math.atan2(gap, length);
  }
}
