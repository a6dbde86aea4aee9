package dryfit.solid;

import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What happens to a solid that is pushed straight along a direction past another that stands still.
 * To touch is free: only what reaches deeper than {@link Tolerances#contact} blocks, so a tenon
 * slides along its mortise.
 *
 * @param blocked the stretches of the move on which the two overlap, in order, apart
 * @param length how far was looked, millimetres
 */
public record Way(List<Stretch> blocked, double length) {
  public Way {
    blocked = List.copyOf(blocked);
  }

  /** A stretch of the move, millimetres from where it begins. */
  public record Stretch(double from, double to) {}

  /**
   * Looks along a move.
   *
   * @param direction unit direction of the move
   * @param length how far, not negative; may be infinite
   */
  public static Way of(List<Convex> moving, List<Convex> still, Vec3 direction, double length) {
    List<Stretch> found = new ArrayList<>();
    Ray ray = new Ray(direction, length);
    for (Convex a : moving) {
      for (Convex b : still) {
        if (ray.boxesMeet(a, b)) {
          ray.restart();
          if (Minkowski.walk(a, b, ray)) {
            found.add(new Stretch(ray.from, ray.to));
          }
        }
      }
    }
    return new Way(joined(found), length);
  }

  /**
   * Whether a move never ends at anything, however far it goes: as {@link #of} to infinity, but it
   * stops at the first pair of cells in each other's way.
   *
   * @param direction unit direction of the move
   */
  public static boolean clear(List<Convex> moving, List<Convex> still, Vec3 direction) {
    Ray ray = new Ray(direction, Double.POSITIVE_INFINITY);
    for (Convex a : moving) {
      for (Convex b : still) {
        if (ray.boxesMeet(a, b)) {
          ray.restart();
          if (Minkowski.walk(a, b, ray)) {
            return false;
          }
        }
      }
    }
    return true;
  }

  /** Whether nothing is in the way from beginning to end. */
  public boolean free() {
    return blocked.isEmpty();
  }

  /** How far the solid can go before it is stopped: 0 if it overlaps where it stands. */
  public OptionalDouble stop() {
    return free() ? OptionalDouble.empty() : OptionalDouble.of(blocked.get(0).from());
  }

  /** From where on nothing more is in the way: 0 if nothing ever is. */
  public double clearFrom() {
    return free() ? 0 : blocked.get(blocked.size() - 1).to();
  }

  /** Stretches that meet, or leave a gap no wider than touching leaves, become one. */
  private static List<Stretch> joined(List<Stretch> found) {
    List<Stretch> sorted = new ArrayList<>(found);
    sorted.sort(Comparator.comparingDouble(Stretch::from).thenComparingDouble(Stretch::to));
    List<Stretch> out = new ArrayList<>();
    for (Stretch each : sorted) {
      int last = out.size() - 1;
      if (last >= 0 && each.from() <= out.get(last).to() + 2 * Tolerances.contact()) {
        Stretch before = out.get(last);
        out.set(last, new Stretch(before.from(), Math.max(before.to(), each.to())));
      } else {
        out.add(each);
      }
    }
    return out;
  }

  /** Cuts the move, as a ray from standing still, by the faces of the moves that overlap. */
  private static final class Ray implements Minkowski.Faces {
    private final double[] d;
    private final double length;
    private double from;
    private double to;

    Ray(Vec3 direction, double length) {
      this.d = new double[] {direction.x(), direction.y(), direction.z()};
      this.length = length;
    }

    void restart() {
      from = 0;
      to = length;
    }

    @Override
    public boolean face(double nx, double ny, double nz, double reach) {
      return cut(nx * d[0] + ny * d[1] + nz * d[2], reach - Tolerances.contact());
    }

    /** Keeps the s with rate s &lt; room. */
    private boolean cut(double rate, double room) {
      if (Math.abs(rate) < Tolerances.sameDirection()) {
        return room > 0;
      }
      double s = room / rate;
      if (rate > 0) {
        to = Math.min(to, s);
      } else {
        from = Math.max(from, s);
      }
      return from < to;
    }

    /** The same cut by the six faces that the boxes make: cheap, and it settles most pairs. */
    boolean boxesMeet(Convex a, Convex b) {
      restart();
      for (int axis = 0; axis < 3; axis++) {
        if (!cut(d[axis], b.box[axis + 3] - a.box[axis])
            || !cut(-d[axis], a.box[axis + 3] - b.box[axis])) {
          return false;
        }
      }
      return true;
    }
  }
}
