package dryfit.shop.setting;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.fit.FitReport;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Everything that is set at the bench for one chair: what belongs to a joint in the order of the
 * joints, then what belongs to a part in the order of the parts.
 */
public record Settings(Chair chair, Bench bench, List<Setting> all) {
  public Settings {
    all = List.copyOf(all);
  }

  /** With a {@link Bench#USUAL} bench. */
  public static Settings of(FitReport report) {
    return of(report, Bench.USUAL);
  }

  /** The settings of a chair, from its dry fit. */
  public static Settings of(FitReport report, Bench bench) {
    List<Setting> all = new ArrayList<>();
    for (int i = 0; i < report.joints().size(); i++) {
      new JointSettings(report, bench, i).addTo(all);
    }
    for (int i = 0; i < report.chair().parts().size(); i++) {
      if (!report.chair().parts().get(i).isPiece()) {
        new PartSettings(report, bench, i).addTo(all);
      }
    }
    return new Settings(report.chair(), bench, all);
  }

  /** Those of one joint; its number is its index in the chair. */
  public List<Setting> ofJoint(int joint) {
    return all.stream().filter(s -> s.joint().orElse(-1) == joint).toList();
  }

  /** Those that are for no one joint but for a part; its number is its index in the chair. */
  public List<Setting> ofPart(int part) {
    return all.stream().filter(s -> s.joint().isEmpty() && s.part() == part).toList();
  }

  /** Those of a joint and of a part, each by its name or its label; empty for any. */
  public Settings only(String joint, String part) {
    return new Settings(
        chair,
        bench,
        all.stream()
            .filter(
                s ->
                    joint.isEmpty()
                        || s.joint().isPresent()
                            && isCalled(chair.joints().get(s.joint().getAsInt()), joint))
            .filter(s -> part.isEmpty() || isCalled(chair.parts().get(s.part()), part))
            .toList());
  }

  private static boolean isCalled(Joint joint, String name) {
    return joint.name().equals(name) || joint.label().equals(name);
  }

  private static boolean isCalled(Part part, String name) {
    return part.name().equals(name) || part.label().equals(name);
  }

  /** What to keep in mind with the machines that are named, each once. */
  public List<String> cautions() {
    Set<String> once = new LinkedHashSet<>();
    all.stream().map(Setting::caution).filter(c -> !c.isEmpty()).forEach(once::add);
    return List.copyOf(once);
  }
}
