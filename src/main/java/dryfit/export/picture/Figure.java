package dryfit.export.picture;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.geometry.Frame;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * One part in a picture.
 *
 * @param mesh its closed surface in chair space
 * @param timber key of a species, for the colour
 * @param label its name; decides which piece of the tree is seen
 * @param grain a frame whose x axis runs along the grain
 * @param marked whether it is tinted red
 */
public record Figure(Mesh mesh, String timber, String label, Frame grain, boolean marked) {

  /** The parts of a chair; those whose labels are in {@code marked} are tinted. */
  public static List<Figure> of(Chair chair, List<String> marked) {
    List<Figure> figures = new ArrayList<>();
    for (Part part : chair.parts()) {
      figures.add(
          new Figure(
              part.placedMesh(),
              part.plan().common().timber(),
              part.label(),
              alongGrain(part),
              marked.contains(part.label())));
    }
    return figures;
  }

  private static Frame alongGrain(Part part) {
    Vec3 along = part.frame().turn(part.grain());
    Vec3 side = part.frame().y();
    // A grain that runs along the width leaves the thickness as the second axis.
    boolean alike = Math.abs(along.unit().dot(side)) > 0.9;
    return Frame.of(part.frame().origin(), along, alike ? part.frame().z() : side);
  }
}
