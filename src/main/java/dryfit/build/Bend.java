package dryfit.build;

import dryfit.geometry.Vec3;
import java.util.List;

/**
 * How a bent part is bent, for what the wood has to say about it.
 *
 * @param line points along the middle line from start to end, the part's own frame
 * @param directions of the middle line at these points, unit, start to end
 * @param length of the middle line from start to end, mm
 * @param along where the bend is tightest for the thickness there, mm along the middle line
 * @param radius of the middle line there, mm; infinite for a part that is straight
 * @param thickness of the section in the direction of the bend there, mm
 */
public record Bend(
    List<Vec3> line,
    List<Vec3> directions,
    double length,
    double along,
    double radius,
    double thickness) {
  public Bend {
    line = List.copyOf(line);
    directions = List.copyOf(directions);
  }

  /** Thickness over radius where it is greatest: what a bent piece is stretched by, times two. */
  public double tightness() {
    return thickness / radius;
  }

  /** The unit direction of the middle line, start to end, nearest to a place in the own frame. */
  public Vec3 directionNear(Vec3 place) {
    return directions.get(nearest(place));
  }

  /** How far along the middle line the point of it lies that is nearest to a place, mm. */
  public double alongNear(Vec3 place) {
    double along = 0;
    for (int i = nearest(place); i > 0; i--) {
      along += line.get(i).distance(line.get(i - 1));
    }
    return along;
  }

  private int nearest(Vec3 place) {
    int best = 0;
    for (int i = 1; i < line.size(); i++) {
      if (line.get(i).distance(place) < line.get(best).distance(place)) {
        best = i;
      }
    }
    return best;
  }

  /** The bend of a twin mirrored in its own z. */
  Bend mirroredZ() {
    return new Bend(mirrored(line), mirrored(directions), length, along, radius, thickness);
  }

  private static List<Vec3> mirrored(List<Vec3> all) {
    return all.stream().map(p -> new Vec3(p.x(), p.y(), -p.z())).toList();
  }
}
