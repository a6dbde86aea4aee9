package dryfit.build;

import dryfit.geometry.Vec3;
import java.util.List;

/**
 * How a bent part is bent, for what the wood has to say about it.
 *
 * @param line points along the middle line from start to end, the part's own frame
 * @param length of the middle line from start to end, mm
 * @param along where the bend is tightest for the thickness there, mm along the middle line
 * @param radius of the middle line there, mm; infinite for a part that is straight
 * @param thickness of the section in the direction of the bend there, mm
 */
public record Bend(List<Vec3> line, double length, double along, double radius, double thickness) {
  public Bend {
    line = List.copyOf(line);
  }

  /** Thickness over radius where it is greatest: what a bent piece is stretched by, times two. */
  public double tightness() {
    return thickness / radius;
  }

  /** The unit direction of the middle line, start to end, nearest to a place in the own frame. */
  public Vec3 directionNear(Vec3 place) {
    Vec3 best = Vec3.RIGHT;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 1; i < line.size(); i++) {
      double away = line.get(i - 1).midway(line.get(i)).distance(place);
      if (away < least) {
        least = away;
        best = line.get(i).minus(line.get(i - 1));
      }
    }
    return best.unit();
  }

  /** The bend of a twin mirrored in its own z. */
  Bend mirroredZ() {
    return new Bend(
        line.stream().map(p -> new Vec3(p.x(), p.y(), -p.z())).toList(),
        length,
        along,
        radius,
        thickness);
  }
}
