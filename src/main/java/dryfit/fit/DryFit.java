package dryfit.fit;

import dryfit.build.Chair;
import dryfit.document.Design.Waiver;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Fits a chair together: measures every joint and asks every check. */
public final class DryFit {
  private DryFit() {}

  /** The checks, in the order their findings are told. */
  private static final List<Check> CHECKS =
      List.of(
          new CollisionCheck(),
          new ClearanceCheck(),
          new InWoodCheck(),
          new WallCheck(),
          new ShoulderCheck(),
          new SlantCheck(),
          new WedgeCheck(),
          new DowelCheck(),
          new TwistCheck());

  /** The dry fit of a chair; the same chair gives the same report. */
  public static FitReport of(Chair chair) {
    Assembly assembly = Assembly.of(chair);
    List<JointFit> measured =
        chair.joints().parallelStream().map(j -> JointMeasure.of(assembly, j)).toList();
    List<Finding> findings =
        CHECKS.stream()
            .flatMap(check -> check.findings(assembly, measured).stream())
            .map(f -> waived(chair, f))
            .sorted(Comparator.comparing(Finding::severity))
            .toList();
    return new FitReport(chair, measured, findings);
  }

  /** A finding the maker has accepted keeps its place and says why. */
  private static Finding waived(Chair chair, Finding f) {
    Optional<String> because =
        chair.design().waived().stream()
            .filter(w -> w.check().equals(f.check()) && names(w, f))
            .map(Waiver::because)
            .findFirst();
    return because.isEmpty() ? f : f.waivedBecause(because.get());
  }

  private static boolean names(Waiver w, Finding f) {
    return (w.joint().isEmpty() || f.joints().stream().anyMatch(l -> isOf(l, w.joint(), ", ")))
        && (w.part().isEmpty() || f.parts().stream().anyMatch(l -> isOf(l, w.part(), " ")));
  }

  /** Whether a label is that of a named joint or part, whichever hand. */
  private static boolean isOf(String label, String name, String beforeHand) {
    return label.equals(name) || label.startsWith(name + beforeHand);
  }
}
