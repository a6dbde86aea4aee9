package dryfit.fit.order;

import dryfit.build.Joint;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import dryfit.solid.Way;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Takes a piece out of a group by two straight moves: first along the way of some joint, just far
 * enough for its tenon to be out, then another way. So an arm is lifted off its uprights and drawn
 * out of a tall mortise behind.
 */
final class TwoWays {
  /** So far beyond its length a tenon is drawn out before the piece goes the other way, mm. */
  private static final double BEYOND = 0.5;

  private final Pieces pieces;
  private List<Blocking> starts = List.of();

  TwoWays(Pieces pieces) {
    this.pieces = pieces;
  }

  /**
   * A piece that leaves by two moves.
   *
   * @param first unit direction in which it is moved first
   * @param far how far, mm
   * @param away unit direction in which it then leaves
   */
  record Cornered(BitSet piece, Vec3 first, double far, Vec3 away) {
    /** The same seen from what stays. */
    Cornered turned(BitSet staying) {
      return new Cornered(staying, first.negated(), far, away.negated());
    }
  }

  /**
   * The first piece of a group that leaves so.
   *
   * @param freed groups that are taken as free among themselves
   */
  Optional<Cornered> out(BitSet group, List<BitSet> glued, List<BitSet> freed) {
    for (Blocking start : starts()) {
      BitSet[] with = (freed.isEmpty() ? start : start.freed(freed)).movesWith(group, glued);
      Set<BitSet> tried = new LinkedHashSet<>();
      for (BitSet piece : with) {
        if (!piece.isEmpty() && piece.cardinality() < group.cardinality() && tried.add(piece)) {
          for (Vec3 away : ways(piece, group, start.direction())) {
            Optional<Cornered> found = out(start, with, piece, group, away, freed);
            if (found.isPresent()) {
              return found;
            }
          }
        }
      }
    }
    return Optional.empty();
  }

  /** What is in the way of the second move has to make both moves too. */
  private Optional<Cornered> out(
      Blocking start, BitSet[] with, BitSet first, BitSet group, Vec3 away, List<BitSet> freed) {
    BitSet piece = (BitSet) first.clone();
    BitSet looked = new BitSet();
    Vec3 by = start.direction().times(start.far());
    Frame there = new Frame(by, Vec3.RIGHT, Vec3.BACK, Vec3.UP);
    while (!looked.equals(piece) && piece.cardinality() < group.cardinality()) {
      BitSet next = (BitSet) piece.clone();
      next.andNot(looked);
      int part = next.nextSetBit(0);
      looked.set(part);
      List<Convex> moved = pieces.cells(part).stream().map(c -> c.placed(there)).toList();
      BitSet others = (BitSet) group.clone();
      others.andNot(piece);
      freed.stream().filter(f -> f.get(part)).forEach(others::andNot);
      for (int k = others.nextSetBit(0); k >= 0; k = others.nextSetBit(k + 1)) {
        if (!piece.get(k) && !Way.clear(moved, pieces.cells(k), away)) {
          piece.or(with[k]);
        }
      }
    }
    return piece.cardinality() < group.cardinality()
        ? Optional.of(new Cornered(piece, start.direction(), start.far(), away))
        : Optional.empty();
  }

  /** The ways of the joints that the piece still has to leave by, and those of the chair. */
  private List<Vec3> ways(BitSet piece, BitSet group, Vec3 first) {
    BitSet others = (BitSet) group.clone();
    others.andNot(piece);
    List<Vec3> all = new ArrayList<>();
    for (Joint j : pieces.between(piece, others)) {
      add(all, piece.get(j.tenoned()) ? j.entry().negated() : j.entry());
    }
    for (Vec3 d : List.of(Vec3.BACK, Vec3.UP, Vec3.RIGHT)) {
      add(all, d);
      add(all, d.negated());
    }
    all.removeIf(d -> d.cross(first).length() <= Tolerances.parallel());
    return all;
  }

  private static void add(List<Vec3> all, Vec3 d) {
    if (all.stream().noneMatch(f -> f.distance(d) <= Tolerances.parallel())) {
      all.add(d);
    }
  }

  /** The first moves: along each joint, as far as it is long; worked out when first asked for. */
  private List<Blocking> starts() {
    if (starts.isEmpty()) {
      List<Vec3> moves = new ArrayList<>();
      for (Joint j : pieces.holding()) {
        Vec3 move = j.entry().times(-j.length() - BEYOND);
        if (moves.stream().noneMatch(m -> m.distance(move) <= BEYOND)) {
          moves.add(move);
          moves.add(move.negated());
        }
      }
      starts =
          moves.parallelStream().map(m -> Blocking.along(m.unit(), m.length(), pieces)).toList();
    }
    return starts;
  }
}
