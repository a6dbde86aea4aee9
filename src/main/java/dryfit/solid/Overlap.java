package dryfit.solid;

import dryfit.geometry.Box;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where two solids claim the same wood. What is no thicker than {@link Tolerances#contact} is
 * contact, not overlap, and is not in here.
 *
 * @param pieces what they share, as interior-disjoint cells
 * @param volume cubic millimetres
 * @param middle the centroid of the overlap; it need not lie in it if that is bent
 * @param deepest a point of the overlap, in the middle of the piece that is deepest
 * @param depth how far the first must be moved to free the deepest pair of cells; the solids as
 *     wholes need at least as much
 * @param out the unit direction of that move
 */
public record Overlap(
    List<Convex> pieces, double volume, Vec3 middle, Vec3 deepest, double depth, Vec3 out) {
  public Overlap {
    pieces = List.copyOf(pieces);
  }

  /** The overlap of two solids; nothing if they are apart or only touch. */
  public static Optional<Overlap> between(List<Convex> a, List<Convex> b) {
    List<Convex> pieces = new ArrayList<>();
    double deepestSoFar = 0;
    Vec3 deepest = Vec3.ZERO;
    Vec3 out = Vec3.ZERO;
    for (Convex one : a) {
      for (Convex other : b) {
        Depth depth = depthOf(one, other);
        Convex piece = depth == null ? null : Clip.common(one, other);
        if (piece == null || piece.thickness() <= Tolerances.contact()) {
          continue;
        }
        pieces.add(piece);
        if (depth.least > deepestSoFar) {
          deepestSoFar = depth.least;
          deepest = piece.middle();
          out = new Vec3(depth.nx, depth.ny, depth.nz);
        }
      }
    }
    return pieces.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Overlap(
                pieces, Cells.volume(pieces), centroid(pieces), deepest, deepestSoFar, out));
  }

  /** Whether the solids overlap: as {@link #between}, but it stops at the first pair of cells. */
  public static boolean exists(List<Convex> a, List<Convex> b) {
    for (Convex one : a) {
      for (Convex other : b) {
        if (depthOf(one, other) != null) {
          Convex piece = Clip.common(one, other);
          if (piece != null && piece.thickness() > Tolerances.contact()) {
            return true;
          }
        }
      }
    }
    return false;
  }

  public Box bounds() {
    Box box = pieces.get(0).bounds();
    for (Convex piece : pieces) {
      box = box.with(piece.bounds());
    }
    return box;
  }

  /** Where the overlap begins along a unit direction: the least {@code direction . p} in it. */
  public double from(Vec3 direction) {
    double low = Double.POSITIVE_INFINITY;
    Vec3 back = direction.negated();
    for (Convex piece : pieces) {
      low = Math.min(low, -piece.reach(back));
    }
    return low;
  }

  private static Vec3 centroid(List<Convex> pieces) {
    Vec3 sum = Vec3.ZERO;
    for (Convex piece : pieces) {
      sum = sum.plus(piece.middle().times(piece.volume()));
    }
    return sum.times(1 / Cells.volume(pieces));
  }

  /** How deep two cells are in each other; null if no deeper than contact. */
  private static Depth depthOf(Convex a, Convex b) {
    if (!Clip.near(a, b) || Clip.apart(a, b, Tolerances.contact())) {
      return null;
    }
    Depth depth = new Depth();
    return Minkowski.walk(a, b, depth) ? depth : null;
  }

  /** Keeps the face of the moves that is nearest to standing still. */
  private static final class Depth implements Minkowski.Faces {
    private double least = Double.POSITIVE_INFINITY;
    private double nx;
    private double ny;
    private double nz;

    @Override
    public boolean face(double x, double y, double z, double reach) {
      if (reach < least) {
        least = reach;
        nx = x;
        ny = y;
        nz = z;
      }
      return reach > Tolerances.contact();
    }
  }
}
