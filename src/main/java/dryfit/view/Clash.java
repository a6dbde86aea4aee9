package dryfit.view;

import dryfit.build.Part;
import dryfit.fit.Finding;
import dryfit.fit.FitReport;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import dryfit.solid.Overlap;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.shape.TriangleMesh;

/**
 * Wood that two parts both claim, as a solid of its own.
 *
 * @param parts the labels of the two
 * @param pieces the solid in convex pieces, chair space
 */
record Clash(List<String> parts, List<Convex> pieces) {
  Clash {
    parts = List.copyOf(parts);
    pieces = List.copyOf(pieces);
  }

  /** One for each finding that two parts share wood: accepted or not, the wood is there twice. */
  static List<Clash> of(FitReport report) {
    List<Clash> clashes = new ArrayList<>();
    for (Finding finding : report.findings()) {
      if (finding.severity() == Finding.Severity.STOPS && finding.parts().size() >= 2) {
        between(report, finding.parts().get(0), finding.parts().get(1)).ifPresent(clashes::add);
      }
    }
    return clashes;
  }

  private static Optional<Clash> between(FitReport report, String one, String other) {
    return cells(report, one)
        .flatMap(a -> cells(report, other).flatMap(b -> Overlap.between(a, b)))
        .map(overlap -> new Clash(List.of(one, other), overlap.pieces()));
  }

  private static Optional<List<Convex>> cells(FitReport report, String label) {
    return report.chair().parts().stream()
        .filter(p -> p.label().equals(label))
        .findFirst()
        .map(Part::placedCells);
  }

  /**
   * Its surface in chair space; none if nothing is left of it.
   *
   * @param cut its normal points out of the half that is left
   */
  Optional<TriangleMesh> mesh(Optional<Plane> cut) {
    TriangleMesh mesh = new TriangleMesh();
    mesh.getTexCoords().addAll(0, 0);
    for (Convex whole : pieces) {
      Optional<Convex> left = cut.map(whole::clipped).orElse(Optional.of(whole));
      if (left.isEmpty()) {
        continue;
      }
      Convex piece = left.get();
      int first = mesh.getPoints().size() / 3;
      for (Vec3 p : piece.points()) {
        mesh.getPoints().addAll((float) p.x(), (float) p.y(), (float) p.z());
      }
      for (int[] face : piece.faces()) {
        for (int i = 1; i + 1 < face.length; i++) {
          mesh.getFaces().addAll(first + face[0], 0, first + face[i], 0, first + face[i + 1], 0);
        }
      }
    }
    return mesh.getFaces().size() == 0 ? Optional.empty() : Optional.of(mesh);
  }
}
