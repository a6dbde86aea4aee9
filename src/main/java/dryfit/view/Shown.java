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
 * A chair ready to be looked at: built, its surfaces made for drawing, and once it has been fitted
 * what was found.
 *
 * @param number another for every build; the same before and after the findings
 * @param fit what was found, if it is known yet
 * @param parts in the order of the chair's parts; none on a machine without 3D
 * @param clashes wood claimed twice; until the findings are known, as it was in the chair before
 */
record Shown(
    long number,
    Document document,
    Chair chair,
    Optional<FitReport> fit,
    List<PartShape> parts,
    List<Clash> clashes,
    FloorPicture floor,
    Box bounds) {
  Shown {
    parts = List.copyOf(parts);
    clashes = List.copyOf(clashes);
  }

  /** The same chair, now fitted. */
  Shown fitted(FitReport report) {
    List<Clash> found = parts.isEmpty() ? List.of() : Clash.of(report);
    return new Shown(number, document, chair, Optional.of(report), parts, found, floor, bounds);
  }

  /**
   * What was found.
   *
   * @throws java.util.NoSuchElementException if it is not known yet
   */
  FitReport report() {
    return fit.orElseThrow();
  }

  Design design() {
    return chair.design();
  }

  /** Whether nothing was built between the two. */
  boolean is(Shown other) {
    return other != null && other.number == number;
  }

  /** The index of a part by its label; -1 if there is none of that name. */
  int part(String label) {
    for (int i = 0; i < chair.parts().size(); i++) {
      if (chair.parts().get(i).label().equals(label)) {
        return i;
      }
    }
    return -1;
  }

  /** A joint's measures by its label; empty if there is none, or it has not been fitted yet. */
  Optional<JointFit> joint(String label) {
    return fit.stream()
        .flatMap(report -> report.joints().stream())
        .filter(j -> j.joint().label().equals(label))
        .findFirst();
  }
}
