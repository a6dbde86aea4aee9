package dryfit.fit;

import dryfit.build.Chair;
import dryfit.document.Design.Waiver;
import java.util.List;

/**
 * The dry fit of a chair.
 *
 * @param joints in the order of {@link Chair#joints}
 * @param findings what stops the build first, then by the order of checks and of the document
 * @param whole what is measured on the chair as a whole
 */
public record FitReport(
    Chair chair, List<JointFit> joints, List<Finding> findings, ChairMeasure whole) {
  public FitReport {
    joints = List.copyOf(joints);
    findings = List.copyOf(findings);
  }

  /** A report without measures of the whole. */
  public FitReport(Chair chair, List<JointFit> joints, List<Finding> findings) {
    this(chair, joints, findings, ChairMeasure.NONE);
  }

  public boolean fits() {
    return findings.stream().noneMatch(Finding::stopsTheBuild);
  }

  /** Whether it fits only because the maker accepted what would otherwise stop the build. */
  public boolean fitsOnlyAsAccepted() {
    return fits() && findings.stream().anyMatch(Finding::wouldStopTheBuild);
  }

  /** What of the document accepts a finding; none where it is not accepted. */
  public List<Waiver> accepting(Finding finding) {
    return Waivers.accepting(chair, finding);
  }

  /** The verdict in a few words, small letters. */
  public String verdict() {
    return !fits() ? "does not fit" : fitsOnlyAsAccepted() ? "fits only as accepted" : "fits";
  }
}
