package dryfit.fit;

import dryfit.build.Chair;
import dryfit.solid.AllCores;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.stream.Stream;

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
          new TwistCheck(),
          new TenonShapeCheck(),
          new HoleCheck(),
          new SideRailCheck(),
          new RevealCheck(),
          new NotchCheck(),
          new MeasuredCheck());

  /** The dry fit of a chair; the same chair gives the same report. */
  public static FitReport of(Chair chair) {
    Assembly assembly = Assembly.of(chair);
    Twins twins = Twins.of(assembly);
    // What needs the whole chair does not wait for the joints.
    ForkJoinTask<ChairMeasure> looking =
        ForkJoinPool.commonPool().submit(() -> WholeChair.of(assembly, twins));
    List<JointFit> measured = JointMeasure.all(assembly, twins);
    List<List<Finding>> ofJoints =
        AllCores.map(CHECKS, check -> check.findings(assembly, measured));
    ChairMeasure whole = looking.join();
    Stream<Finding> ofWhole =
        Stream.of(
                MortiseCheck.findings(assembly, whole),
                ShapeCheck.findings(assembly, whole),
                GrainCheck.findings(assembly, whole))
            .flatMap(List::stream);
    List<Finding> all = Stream.concat(ofJoints.stream().flatMap(List::stream), ofWhole).toList();
    List<Finding> findings =
        Waivers.laidOver(chair, all).stream()
            .sorted(Comparator.comparing(Finding::severity))
            .toList();
    return new FitReport(chair, measured, findings, whole);
  }
}
