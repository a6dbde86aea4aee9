package dryfit.view;

import dryfit.build.Part;
import dryfit.fit.Finding;
import dryfit.fit.FitReport;
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
 * @param mesh its surface in chair space
 */
record Clash(List<String> parts, TriangleMesh mesh) {

  /** One for each finding that stops the build because two parts share wood. */
  static List<Clash> of(FitReport report) {
    List<Clash> clashes = new ArrayList<>();
    for (Finding finding : report.findings()) {
      if (finding.stopsTheBuild() && finding.parts().size() >= 2) {
        between(report, finding.parts().get(0), finding.parts().get(1)).ifPresent(clashes::add);
      }
    }
    return clashes;
  }

  private static Optional<Clash> between(FitReport report, String one, String other) {
    return cells(report, one)
        .flatMap(a -> cells(report, other).flatMap(b -> Overlap.between(a, b)))
        .map(overlap -> new Clash(List.of(one, other), mesh(overlap.pieces())));
  }

  private static Optional<List<Convex>> cells(FitReport report, String label) {
    return report.chair().parts().stream()
        .filter(p -> p.label().equals(label))
        .findFirst()
        .map(Part::placedCells);
  }

  private static TriangleMesh mesh(List<Convex> pieces) {
    TriangleMesh mesh = new TriangleMesh();
    mesh.getTexCoords().addAll(0, 0);
    for (Convex piece : pieces) {
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
    return mesh;
  }
}
