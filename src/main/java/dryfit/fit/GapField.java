package dryfit.fit;

import dryfit.build.Joint;
import dryfit.document.JointPlan.Kind;
import dryfit.fit.JointDetail.SideGap;
import dryfit.fit.JointDetail.Spot;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The gap between a tenon and its mortise all over each side. Between two flat faces it changes
 * evenly, and then its corners say everything; where its middle is not half way between them, or
 * part of the side faces nothing, the side is divided into four and each quarter is looked at
 * again.
 */
final class GapField {
  /** How often a side is divided. */
  private static final int DEPTH = 3;

  /** Places along a side, when it was divided that often. */
  private static final int PLACES = (2 << DEPTH) + 1;

  private static final int HALF = 1 << DEPTH;

  /** A middle this near to half way counts as even, mm: a tenth of what is printed. */
  private static final double EVEN = 0.001;

  /** How far from its rim a side is looked at, as a share of half its size. */
  private static final double RIM = 0.96;

  private static final double[] ALONG = {0.04, 0.5, 0.96};
  private static final int ROUND_ABOUT = 16;

  private final Joint joint;
  private final Facing facing;
  private final JointWords words;

  GapField(Joint joint, Facing facing, JointWords words) {
    this.joint = joint;
    this.facing = facing;
    this.words = words;
  }

  /** Each side that anything faces: cheeks, edges, bottom. */
  List<SideGap> sides() {
    List<SideGap> out = new ArrayList<>();
    if (joint.plan().diameter().isPresent()) {
      round().ifPresent(out::add);
    } else {
      beside(joint.thick(), joint.wide(), true, out);
      if (joint.plan().kind() != Kind.GROOVE) {
        // Along a groove there is nothing to meet.
        beside(joint.wide(), joint.thick(), false, out);
      }
    }
    if (!joint.through()) {
      bottom().ifPresent(out::add);
    }
    return out;
  }

  /** One place on a side, from -1 to 1 both ways. */
  private interface Side {
    OptionalDouble gap(double u, double v);

    Vec3 at(double u, double v);
  }

  private void beside(Vec3 outward, Vec3 across, boolean cheek, List<SideGap> out) {
    double half = cheek ? words.halfThick() : words.halfWide();
    double halfAcross = cheek ? words.halfWide() : words.halfThick();
    for (int sign = 1; sign >= -1; sign -= 2) {
      Vec3 way = outward.times(sign);
      Side side =
          new Side() {
            @Override
            public Vec3 at(double u, double v) {
              Vec3 beside =
                  joint.at().plus(way.times(half)).plus(across.times(v * RIM * halfAcross));
              double mouth = joint.mouth().along(beside, joint.entry());
              double tip = joint.inWood();
              double depth = mouth + (tip - mouth) * (0.5 + u * RIM / 2);
              return beside.plus(joint.entry().times(depth));
            }

            @Override
            public OptionalDouble gap(double u, double v) {
              Vec3 at = at(u, v);
              double depth = at.minus(joint.at()).dot(joint.entry());
              if (!cheek && belowTheHaunch(depth)) {
                return OptionalDouble.empty();
              }
              OptionalDouble gap = facing.gap(inside(u, v), way);
              return gap.orElse(0) < 0 && inWoodOfAnotherSide(u, v) ? OptionalDouble.empty() : gap;
            }

            private Vec3 inside(double u, double v) {
              return at(u, v).minus(way.times(half / 2));
            }

            /** Near its rim a side may lie in the wood that the side round the corner stands in. */
            private boolean inWoodOfAnotherSide(double u, double v) {
              return facing.isInWood(inside(u, v), way) && !facing.isInWood(inside(0, 0), way);
            }
          };
      found(side, words.side(way), true, cheek, !cheek).ifPresent(out::add);
    }
  }

  private Optional<SideGap> bottom() {
    Side side =
        new Side() {
          @Override
          public Vec3 at(double u, double v) {
            return joint
                .at()
                .plus(joint.entry().times(joint.length()))
                .plus(joint.thick().times(u * 0.7 * words.halfThick()))
                .plus(joint.wide().times(v * 0.7 * words.halfWide()));
          }

          @Override
          public OptionalDouble gap(double u, double v) {
            OptionalDouble gap = facing.gap(inside(u, v), joint.entry());
            return gap.orElse(0) < 0 && inWoodOfASide(u, v) ? OptionalDouble.empty() : gap;
          }

          private Vec3 inside(double u, double v) {
            return at(u, v).minus(joint.entry().times(joint.length() / 2));
          }

          /** Near its rim the bottom of a tenon that is too fat stands over wood, not the hole. */
          private boolean inWoodOfASide(double u, double v) {
            return facing.isInWood(inside(u, v), joint.entry())
                && !facing.isInWood(inside(0, 0), joint.entry());
          }
        };
    return found(side, "bottom", false, true, true);
  }

  private Optional<SideGap> found(
      Side side, String name, boolean alongDepth, boolean alongEdges, boolean alongCheeks) {
    Extremes extremes = new Extremes();
    double[] corners = {-1, -1, 1, -1, -1, 1, 1, 1};
    OptionalDouble[] gaps = new OptionalDouble[4];
    for (int i = 0; i < 4; i++) {
      gaps[i] = extremes.look(side, corners[2 * i], corners[2 * i + 1]);
    }
    divide(side, -1, -1, 1, 1, gaps, DEPTH, extremes);
    return extremes.spots(name, place -> words.where(place, alongDepth, alongEdges, alongCheeks));
  }

  /** Looks at the middle of a piece whose corners are known, and divides it if it is not even. */
  private static void divide(
      Side side,
      double u0,
      double v0,
      double u1,
      double v1,
      OptionalDouble[] corners,
      int depth,
      Extremes extremes) {
    double u = (u0 + u1) / 2;
    double v = (v0 + v1) / 2;
    OptionalDouble middle = extremes.look(side, u, v);
    if (depth == 0 || even(corners, middle)) {
      return;
    }
    OptionalDouble low = extremes.look(side, u, v0);
    OptionalDouble high = extremes.look(side, u, v1);
    OptionalDouble first = extremes.look(side, u0, v);
    OptionalDouble second = extremes.look(side, u1, v);
    OptionalDouble[] a = {corners[0], low, first, middle};
    OptionalDouble[] b = {low, corners[1], middle, second};
    OptionalDouble[] c = {first, middle, corners[2], high};
    OptionalDouble[] d = {middle, second, high, corners[3]};
    divide(side, u0, v0, u, v, a, depth - 1, extremes);
    divide(side, u, v0, u1, v, b, depth - 1, extremes);
    divide(side, u0, v, u, v1, c, depth - 1, extremes);
    divide(side, u, v, u1, v1, d, depth - 1, extremes);
  }

  private static boolean even(OptionalDouble[] corners, OptionalDouble middle) {
    int seen = 0;
    double sum = 0;
    for (OptionalDouble corner : corners) {
      if (corner.isPresent()) {
        seen++;
        sum += corner.getAsDouble();
      }
    }
    if (seen == 0 && middle.isEmpty()) {
      return true;
    }
    return seen == 4
        && middle.isPresent()
        && Math.abs(sum / 4 - middle.getAsDouble()) <= EVEN
        && Math.abs(corners[0].getAsDouble() + corners[3].getAsDouble() - sum / 2) <= 2 * EVEN;
  }

  private Optional<SideGap> round() {
    Extremes extremes = new Extremes();
    for (double a : ALONG) {
      double depth = a * joint.inWood();
      for (int i = 0; i < ROUND_ABOUT; i++) {
        double angle = 2 * Math.PI * i / ROUND_ABOUT;
        Vec3 d = joint.wide().times(Math.cos(angle)).plus(joint.thick().times(Math.sin(angle)));
        Vec3 middle = joint.at().plus(joint.entry().times(depth));
        Vec3 at = middle.plus(d.times(words.halfThick()));
        if (joint.mouth().height(at) < -0.5) {
          OptionalDouble gap = facing.gap(middle, d);
          gap.ifPresent(g -> extremes.add(g, at));
        }
      }
    }
    return extremes.spots("all round", place -> words.where(place, true, true, true));
  }

  /** Whether a depth is in the room below a haunch, where the tenon has no edge facing it. */
  private boolean belowTheHaunch(double depth) {
    return joint
        .plan()
        .haunch()
        .filter(h -> depth > h.deep() - 0.5 && depth < h.deep() + joint.plan().fit().bottom() + 0.5)
        .isPresent();
  }

  /** Keeps the least and the greatest, and where they were; the first of equals. */
  static final class Extremes {
    /** What was seen at each place of a side: pieces that lie beside each other share theirs. */
    private final OptionalDouble[] seen = new OptionalDouble[PLACES * PLACES];

    private double least = Double.POSITIVE_INFINITY;
    private double greatest = Double.NEGATIVE_INFINITY;
    private Vec3 leastAt = Vec3.ZERO;
    private Vec3 greatestAt = Vec3.ZERO;

    private OptionalDouble look(Side side, double u, double v) {
      int place = place(u) * PLACES + place(v);
      if (seen[place] == null) {
        seen[place] = side.gap(u, v);
        seen[place].ifPresent(g -> add(g, side.at(u, v)));
      }
      return seen[place];
    }

    /** Places are halves of halves: exact. */
    private static int place(double share) {
      return (int) ((share + 1) * HALF);
    }

    void add(double gap, Vec3 at) {
      // What differs by less than is printed is the same, so that places do not wander.
      if (gap < least - EVEN) {
        least = gap;
        leastAt = at;
      }
      if (gap > greatest + EVEN) {
        greatest = gap;
        greatestAt = at;
      }
    }

    Optional<SideGap> spots(String side, java.util.function.Function<Vec3, String> words) {
      return least > greatest
          ? Optional.empty()
          : Optional.of(
              new SideGap(
                  side,
                  new Spot(least, leastAt, words.apply(leastAt)),
                  new Spot(greatest, greatestAt, words.apply(greatestAt))));
    }
  }
}
