package dryfit.fit;

import dryfit.build.Joint;
import dryfit.document.FitLimit;
import dryfit.document.JointPlan.Kind;
import dryfit.document.JointPlan.Role;
import dryfit.fit.Finding.Severity;
import dryfit.geometry.AngledTenon;
import dryfit.geometry.Rays;
import dryfit.geometry.Vec3;
import dryfit.measure.Angle;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The shape of tenons that carry. {@code tenon-short}: shorter than so many of its thicknesses, and
 * shorter than half of the wood it goes into. {@code tenon-wide}: wider than so many of its
 * thicknesses. {@code tenon-thin}, {@code tenon-thick}: too small or too great a share of its part.
 * {@code tenon-short-grain}: too few of its fibres run whole from shoulder to tip. Exactly at a
 * limit passes; joints whose role is to locate are not asked.
 */
final class TenonShapeCheck implements Check {
  /** Of the wood a tenon goes into, this share is always long enough. */
  private static final double HALF = 0.5;

  @Override
  public List<Finding> findings(Assembly assembly, List<JointFit> measured) {
    List<Finding> out = new ArrayList<>();
    for (JointFit fit : measured) {
      Joint joint = fit.joint();
      boolean tenon =
          joint.plan().kind() == Kind.MORTISE_AND_TENON
              && joint.plan().role() == Role.STRUCTURAL
              && joint.plan().thickness().isPresent()
              && joint.plan().width().isPresent();
      if (tenon) {
        double thick = joint.plan().thickness().getAsDouble();
        length(assembly, fit, thick, out);
        width(assembly, joint, thick, joint.plan().width().getAsDouble(), out);
        share(assembly, joint, thick, out);
        fibres(assembly, joint, thick, out);
      }
    }
    return out;
  }

  private static void length(Assembly assembly, JointFit fit, double thick, List<Finding> out) {
    Joint joint = fit.joint();
    Limit limit = Limit.of(assembly.chair().design(), FitLimit.TENON_LENGTH_LEAST, joint);
    double wood = wood(assembly, joint);
    double wanted = Math.min(limit.value() * thick, HALF * wood);
    if (joint.plan().through() || joint.length() >= wanted - Tolerances.contact()) {
      return;
    }
    out.add(
        Found.of("tenon-short", Severity.LOOK)
            .part(assembly.tenoned(joint).part())
            .joint(joint)
            .atLeast(wanted, joint.length())
            .source(limit.source())
            .says(
                "The tenon of \""
                    + joint.label()
                    + "\" is "
                    + assembly.length(joint.length())
                    + " long, "
                    + times(joint.length() / thick)
                    + " its thickness; make it "
                    + assembly.lengthUp(wanted - joint.length())
                    + " longer if the wood it goes into allows. A short tenon holds less: test"
                    + " one before you trust it with a sitter.",
                joint.plan().pointer() + "/length",
                joint.at()));
  }

  /** How much wood there is along the tenon, from the mouth to where it would come out. */
  private static double wood(Assembly assembly, Joint joint) {
    List<Rays.Hit> hits = assembly.mortised(joint).rays().hits(joint.at(), joint.entry());
    return hits.isEmpty() ? joint.length() : hits.get(hits.size() - 1).distance();
  }

  private static void width(
      Assembly assembly, Joint joint, double thick, double wide, List<Finding> out) {
    Limit limit = Limit.of(assembly.chair().design(), FitLimit.TENON_WIDTH_MOST, joint);
    double most = limit.value() * thick;
    if (wide <= most + Tolerances.contact()) {
      return;
    }
    out.add(
        Found.of("tenon-wide", Severity.LOOK)
            .part(assembly.tenoned(joint).part())
            .joint(joint)
            .atMost(most, wide)
            .source(limit.source())
            .says(
                "The tenon of \""
                    + joint.label()
                    + "\" is "
                    + times(wide / thick)
                    + " as wide as thick; make it "
                    + assembly.lengthUp(wide - most)
                    + " narrower, or two tenons side by side, or the long mortise weakens "
                    + assembly.mortised(joint).part().label()
                    + ".",
                joint.plan().pointer() + "/width",
                joint.at()));
  }

  private static void share(Assembly assembly, Joint joint, double thick, List<Finding> out) {
    double part = across(assembly, joint);
    Limit least = Limit.of(assembly.chair().design(), FitLimit.TENON_SHARE_LEAST, joint);
    Limit most = Limit.of(assembly.chair().design(), FitLimit.TENON_SHARE_MOST, joint);
    boolean thin = thick < least.value() * part - Tolerances.contact();
    if (!thin && thick <= most.value() * part + Tolerances.contact()) {
      return;
    }
    Limit limit = thin ? least : most;
    double bound = limit.value() * part;
    Found found =
        Found.of(thin ? "tenon-thin" : "tenon-thick", Severity.LOOK)
            .part(assembly.tenoned(joint).part())
            .joint(joint)
            .source(limit.source());
    out.add(
        (thin ? found.atLeast(bound, thick) : found.atMost(bound, thick))
            .says(
                "The tenon of \""
                    + joint.label()
                    + "\" is "
                    + assembly.length(thick)
                    + " thick in a part of "
                    + assembly.length(part)
                    + "; make it "
                    + assembly.lengthUp(Math.abs(thick - bound))
                    + (thin ? " thicker." : " thinner, or its shoulders are too narrow to hold."),
                joint.plan().pointer() + "/thickness",
                joint.at()));
  }

  /**
   * The size of the tenoned part across its tenon's cheeks, so far behind the shoulder that a
   * shoulder which leans takes nothing off it.
   */
  private static double across(Assembly assembly, Joint joint) {
    double reach = assembly.tenoned(joint).part().blank().thickness();
    double behind = 1 + reach * Math.tan(Math.min(joint.lean(), MOST_LEAN));
    Vec3 from = joint.at().minus(joint.entry().times(behind));
    Rays rays = assembly.tenoned(joint).rays();
    double sum = 0;
    for (int sign = -1; sign <= 1; sign += 2) {
      List<Rays.Hit> hits = rays.hits(from, joint.thick().times(sign));
      sum += hits.isEmpty() ? 0 : hits.get(0).distance();
    }
    return sum;
  }

  private static void fibres(Assembly assembly, Joint joint, double thick, List<Finding> out) {
    Vec3 grain = assembly.tenoned(joint).part().grainNear(joint.at());
    Vec3 inCheeks = grain.across(joint.wide());
    double angle =
        Math.min(inCheeks.angleTo(joint.entry()), inCheeks.angleTo(joint.entry().negated()));
    if (angle >= Math.PI / 2) {
      return;
    }
    double whole = new AngledTenon(thick, joint.length(), angle).wholeFibres();
    Limit limit = Limit.of(assembly.chair().design(), FitLimit.TENON_FIBRE_LEAST, joint);
    double least = limit.value() * thick;
    if (whole * thick >= least - Tolerances.contact()) {
      return;
    }
    double longest = thick * (1 - limit.value()) / Math.tan(angle);
    out.add(
        Found.of("tenon-short-grain", Severity.LOOK)
            .part(assembly.tenoned(joint).part())
            .joint(joint)
            .atLeast(least, whole * thick)
            .source(limit.source())
            .says(
                "In the tenon of \""
                    + joint.label()
                    + "\" the grain runs off by "
                    + Angle.degrees(angle)
                    + String.format(
                        Locale.ROOT, "; only %.0f %% of its fibres are whole; ", 100 * whole)
                    + "make it "
                    + assembly.lengthUp(joint.length() - longest)
                    + " shorter, or let it in along the part (\"entry\": \"along\"); a tenon of"
                    + " short grain can snap off under a sitter.",
                joint.plan().pointer() + "/entry",
                joint.at()));
  }

  /** A shoulder that leans more is no longer looked behind, radians. */
  private static final double MOST_LEAN = Math.toRadians(60);

  private static String times(double ratio) {
    return String.format(Locale.ROOT, "%.1f times", ratio);
  }
}
