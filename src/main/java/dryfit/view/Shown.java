package dryfit.view;

import dryfit.build.Chair;
import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.fit.FitReport;
import dryfit.fit.JointFit;
import dryfit.geometry.Box;
import java.util.List;
import java.util.Optional;

/**
 * A chair ready to be looked at: built, fitted, its surfaces made for drawing.
 *
 * @param number another for every build
 * @param parts in the order of the chair's parts; none on a machine without 3D
 */
record Shown(
    long number,
    Document document,
    FitReport report,
    List<PartShape> parts,
    List<Clash> clashes,
    FloorPicture floor,
    Box bounds) {
  Shown {
    parts = List.copyOf(parts);
    clashes = List.copyOf(clashes);
  }

  Chair chair() {
    return report.chair();
  }

  Design design() {
    return chair().design();
  }

  /** Whether nothing was built between the two. */
  boolean is(Shown other) {
    return other != null && other.number == number;
  }

  /** The index of a part by its label; -1 if there is none of that name. */
  int part(String label) {
    for (int i = 0; i < chair().parts().size(); i++) {
      if (chair().parts().get(i).label().equals(label)) {
        return i;
      }
    }
    return -1;
  }

  Optional<JointFit> joint(String label) {
    return report.joints().stream().filter(j -> j.joint().label().equals(label)).findFirst();
  }
}
