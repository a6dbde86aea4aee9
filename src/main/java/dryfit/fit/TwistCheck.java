package dryfit.fit;

import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.PartPlan;
import dryfit.document.PartPlan.Section;
import dryfit.fit.Assembly.Placed;
import dryfit.fit.Finding.Severity;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * {@code twisted-leg}: a square leg that leans both ways cannot face two rails at right angles to
 * each other. Its sides are square to each other across the leg, but level they are not: turned so
 * that one faces its rail, the other is out by the angle whose tangent is
 *
 * <pre>tan(rake) tan(splay) / (1 + tan²(rake))</pre>
 *
 * <p>A shoulder sawn square across its thickness then stands open by thickness times that tangent.
 * The solids have bevelled shoulders, so nothing is wrong with them; the finding says what a square
 * saw would leave. Told from 1/64 in on, where a gap shows.
 */
final class TwistCheck implements Check {
  private static final double SHOWS = 25.4 / 64;

  private static final Source SOURCE =
      Source.geometry("the level lines of two faces that are square to each other across a leg");

  @Override
  public List<Finding> findings(Assembly assembly, List<JointFit> measured) {
    List<Finding> out = new ArrayList<>();
    for (int i = 0; i < assembly.parts().size(); i++) {
      int part = i;
      List<Joint> into =
          measured.stream()
              .map(JointFit::joint)
              .filter(j -> j.mortised() == part && hasShoulders(assembly.tenoned(j)))
              .toList();
      twist(assembly, assembly.part(i).part(), into).ifPresent(out::add);
    }
    return out;
  }

  private static boolean hasShoulders(Placed tenoned) {
    return !tenoned.part().isPiece()
        && tenoned.part().plan() instanceof PartPlan.Straight s
        && s.section() instanceof Section.Rectangle
        && Math.abs(tenoned.part().frame().x().z()) < 0.5;
  }

  private static Optional<Finding> twist(Assembly assembly, Part leg, List<Joint> into) {
    boolean square =
        leg.plan() instanceof PartPlan.Straight s && s.section() instanceof Section.Rectangle;
    Frame f = leg.frame();
    if (!square || Math.abs(f.x().z()) < 0.5) {
      return Optional.empty();
    }
    double off = offSquare(f);
    double thickest = 0;
    Joint first = null;
    Joint second = null;
    for (Joint a : into) {
      for (Joint b : into) {
        // Two neighbouring sides: each takes a rail.
        if (Math.abs(a.mouth().normal().dot(b.mouth().normal())) < 0.1) {
          double t = assembly.tenoned(b).part().blank().thickness();
          if (t > thickest) {
            thickest = t;
            first = a;
            second = b;
          }
        }
      }
    }
    double gap = thickest * Math.tan(off);
    if (first == null || gap < SHOWS) {
      return Optional.empty();
    }
    Part rail = assembly.tenoned(second).part();
    String degrees = String.format(java.util.Locale.ROOT, "%.1f°", Math.toDegrees(off));
    String half = String.format(java.util.Locale.ROOT, "%.1f°", Math.toDegrees(off) / 2);
    return Optional.of(
        Found.of("twisted-leg", Severity.KNOW)
            .part(leg)
            .part(rail)
            .joint(first)
            .joint(second)
            .atMost(SHOWS, gap)
            .source(SOURCE)
            .says(
                leg.label()
                    + " leans both ways, so its two sides are "
                    + degrees
                    + " off square to each other where the rails meet them: with one rail square"
                    + " to its side, a shoulder of "
                    + rail.label()
                    + " sawn square across its thickness would stand open by "
                    + assembly.gap(gap)
                    + ". Bevel that shoulder by "
                    + degrees
                    + ", turn the leg by "
                    + half
                    + " and share it between both rails, or shape the leg to the section that is"
                    + " square when level.",
                leg.pointer(),
                second.at()));
  }

  /** How far the level lines of two neighbouring sides are from a right angle, radians. */
  private static double offSquare(Frame f) {
    Vec3 one = f.y().cross(Vec3.UP).unit();
    Vec3 other = f.z().cross(Vec3.UP).unit();
    return Math.asin(Math.min(1, Math.abs(one.dot(other))));
  }
}
