package dryfit.fit.order;

import dryfit.build.Joint;
import dryfit.fit.order.Step.Tip;
import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import dryfit.solid.Overlap;
import dryfit.solid.Way;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Takes one piece out of a group by tipping it: it is lifted as far as its clearance lets it,
 * turned about a place at one joint until it is free of another, and drawn out of the first along
 * its tipped way. So an arm leaves a glued frame that holds it at both ends.
 */
final class Tipping {
  /** Joints whose ways are nearer to parallel than this are left by one straight move or none. */
  private static final double ACROSS = Math.cos(Math.toRadians(30));

  /** More than this is not tipping but turning, radians. */
  private static final double MOST = Math.toRadians(10);

  /** How far a piece is lifted at most, mm; more room than this is not clearance. */
  private static final double LIFT = 3;

  /** Shares of the angle that would do if the tip of the tenon went straight. */
  private static final double[] ANGLES = {1.01, 1.05, 1.2};

  /** Depths in the first joint and places across it, as shares, where the axis is tried. */
  private static final double[] DEPTHS = {0, 0.5, 1};

  /** A tenon that a turn draws out by less than this share of its length is still held. */
  private static final double DRAWN = 0.5;

  /** How far beyond the piece wood is looked at while it turns, mm: farther than it swings. */
  private static final double NEAR = 100;

  /** Positions looked at along the turn. */
  private static final int PLACES = 60;

  private final BitSet piece;
  private final List<Convex> cells;
  private final List<Convex> still;
  private final List<Convex> near;
  private final List<Joint> joints;

  private Tipping(Pieces pieces, BitSet piece, BitSet others) {
    this.piece = piece;
    this.joints = pieces.between(piece, others);
    this.cells = pieces.cells(piece);
    this.still = pieces.cells(others);
    Box room = pieces.bounds(piece).grown(NEAR);
    this.near = still.stream().filter(c -> c.bounds().meets(room)).toList();
  }

  /**
   * A piece that can be tipped out.
   *
   * @param away unit direction in which it leaves once it is tipped
   */
  record Tipped(BitSet piece, Vec3 away, Tip tip) {}

  /**
   * The first piece of a group that can be tipped out of it.
   *
   * @param freed groups that are taken as free among themselves
   */
  static Optional<Tipped> out(Pieces pieces, BitSet group, List<BitSet> glued, List<BitSet> freed) {
    BitSet tried = new BitSet();
    for (int i = group.nextSetBit(0); i >= 0; i = group.nextSetBit(i + 1)) {
      if (tried.get(i)) {
        continue;
      }
      int part = i;
      BitSet piece =
          glued.stream().filter(g -> g.get(part)).findFirst().orElse(Assembling.bits(List.of(i)));
      tried.or(piece);
      BitSet others = (BitSet) group.clone();
      others.andNot(piece);
      freed.stream().filter(f -> f.intersects(piece)).forEach(others::andNot);
      Tipping tipping = new Tipping(pieces, piece, others);
      for (Joint slides : tipping.joints) {
        for (Joint lifts : tipping.joints) {
          Optional<Tipped> found = tipping.out(slides, lifts);
          if (found.isPresent()) {
            return found;
          }
        }
      }
    }
    return Optional.empty();
  }

  private Vec3 exit(Joint joint) {
    return piece.get(joint.tenoned()) ? joint.entry().negated() : joint.entry();
  }

  private Optional<Tipped> out(Joint slides, Joint lifts) {
    Vec3 out = exit(slides);
    Vec3 up = exit(lifts);
    Vec3 arm = lifts.at().minus(slides.at());
    double reach = arm.across(up).length();
    if (Math.abs(out.dot(up)) > ACROSS || reach * Math.tan(MOST) < lifts.length()) {
      return Optional.empty();
    }
    Vec3 axis = arm.cross(up).unit();
    Vec3 side = axis.cross(out);
    if (side.length() < ACROSS) {
      return Optional.empty();
    }
    side = side.unit();
    if (!drawsAll(slides, out, axis, Math.atan2(lifts.length(), reach))) {
      return Optional.empty();
    }
    for (Vec3 lift : lifts(side)) {
      for (double share : ANGLES) {
        double angle = Math.atan2(lifts.length() * share, reach);
        for (Vec3 pivot : pivots(slides, out, side)) {
          Tip tip = new Tip(pivot.plus(lift), axis, angle, lift);
          Vec3 away = turned(out, axis, angle);
          if (works(tip, away)) {
            return Optional.of(new Tipped(piece, away, tip));
          }
        }
      }
    }
    return Optional.empty();
  }

  /**
   * Whether the turn draws every tenon out that the slide does not: else no place need be tried.
   */
  private boolean drawsAll(Joint slides, Vec3 out, Vec3 axis, double angle) {
    for (Joint j : joints) {
      Vec3 exit = exit(j);
      double goes = axis.cross(j.at().minus(slides.at())).dot(exit) * angle + LIFT;
      if (out.dot(exit) < ACROSS && goes < DRAWN * j.length()) {
        return false;
      }
    }
    return true;
  }

  /** None, and as far as it goes either way. */
  private List<Vec3> lifts(Vec3 side) {
    List<Vec3> all = new ArrayList<>(List.of(Vec3.ZERO));
    for (Vec3 d : List.of(side, side.negated())) {
      OptionalDouble stop = Way.of(cells, near, d, LIFT).stop();
      if (stop.orElse(0) > 0) {
        all.add(d.times(stop.getAsDouble()));
      }
    }
    return all;
  }

  private List<Vec3> pivots(Joint joint, Vec3 out, Vec3 side) {
    double low = 0;
    double high = 0;
    for (Convex cell : cells) {
      for (Vec3 p : cell.points()) {
        Vec3 d = p.minus(joint.at());
        // The shoulder: what of the piece is at the mouth.
        if (Math.abs(d.dot(out)) < 1) {
          low = Math.min(low, d.dot(side));
          high = Math.max(high, d.dot(side));
        }
      }
    }
    double sense = piece.get(joint.tenoned()) ? -1 : 1;
    List<Vec3> all = new ArrayList<>();
    for (double depth : DEPTHS) {
      for (double across : new double[] {0, low, high, low / 2, high / 2}) {
        all.add(
            joint.at().plus(out.times(sense * depth * joint.length())).plus(side.times(across)));
      }
    }
    return all;
  }

  private boolean works(Tip tip, Vec3 away) {
    List<Convex> tipped = tipped(tip, 1);
    if (Overlap.exists(tipped, near) || !Way.clear(tipped, still, away)) {
      return false;
    }
    for (int k = PLACES - 1; k >= 0; k--) {
      if (Overlap.exists(tipped(tip, (double) k / PLACES), near)) {
        return false;
      }
    }
    return true;
  }

  private List<Convex> tipped(Tip tip, double share) {
    double angle = tip.angle() * share;
    Vec3 x = turned(Vec3.RIGHT, tip.axis(), angle);
    Vec3 y = turned(Vec3.BACK, tip.axis(), angle);
    Vec3 z = turned(Vec3.UP, tip.axis(), angle);
    Frame about = new Frame(Vec3.ZERO, x, y, z);
    Vec3 origin = tip.pivot().minus(about.turn(tip.pivot().minus(tip.lift())));
    Frame frame = new Frame(origin, x, y, z);
    return cells.stream().map(c -> c.placed(frame)).toList();
  }

  private static Vec3 turned(Vec3 v, Vec3 axis, double angle) {
    Vec3 along = axis.times(axis.dot(v));
    return along
        .plus(v.minus(along).times(Math.cos(angle)))
        .plus(axis.cross(v).times(Math.sin(angle)));
  }
}
