package dryfit.fit;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.document.Design;
import dryfit.document.Hand;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * What a part's own directions are called: top, bottom, front, back, and sideways outside and
 * inside for one of a pair (so that the words are the same for both hands and the wood is not),
 * right and left for a part of its own. Each of its three axes gets a different pair of words, the
 * ones that fit best together, so that two faces of one part never share a name.
 */
public final class PartSides {
  /** The ways to give three own axes to three chair axes; the first wins a tie. */
  private static final int[][] WAYS = {
    {0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}
  };

  private final Frame frame;
  private final Hand hand;
  private final boolean seated;
  private final int[] chairAxisOf;

  private PartSides(Frame frame, Hand hand, boolean seated) {
    this.frame = frame;
    this.hand = hand;
    this.seated = seated;
    this.chairAxisOf = best(frame);
  }

  public static PartSides of(Chair chair, Part part) {
    return of(chair, part, Hand.NONE);
  }

  /**
   * @param where the hand of the joint that the words are about: at a part of its own, outside and
   *     inside are then meant from the middle of the chair
   */
  public static PartSides of(Chair chair, Part part, Hand where) {
    return of(chair, part, where, part.frame());
  }

  /**
   * @param frame whose axes are named: at an end of a bent part those of the section there
   */
  static PartSides of(Chair chair, Part part, Hand where, Frame frame) {
    Hand hand = part.hand() == Hand.NONE ? where : part.hand();
    return new PartSides(frame, hand, chair.design().labels() == Design.Labels.AS_SEATED);
  }

  private static int[] best(Frame frame) {
    int[] best = WAYS[0];
    double most = -1;
    for (int[] way : WAYS) {
      double fit = 0;
      for (int own = 0; own < 3; own++) {
        fit += Math.abs(component(axis(frame, own), way[own]));
      }
      // A hair more is rounding and must not decide differently for the mirrored twin.
      if (fit > most + Tolerances.sameDirection()) {
        most = fit;
        best = way;
      }
    }
    return best;
  }

  private static Vec3 axis(Frame frame, int own) {
    return own == 0 ? frame.x() : own == 1 ? frame.y() : frame.z();
  }

  private static double component(Vec3 d, int chairAxis) {
    return chairAxis == 0 ? d.x() : chairAxis == 1 ? d.y() : d.z();
  }

  /** The word for the own axis that lies nearest to a direction of chair space, in its sense. */
  public String nearest(Vec3 direction) {
    int own = 0;
    double most = -1;
    for (int k = 0; k < 3; k++) {
      double along = Math.abs(direction.dot(axis(frame, k)));
      if (along > most + Tolerances.sameDirection()) {
        most = along;
        own = k;
      }
    }
    Vec3 axis = axis(frame, own);
    Vec3 way = direction.dot(axis) < 0 ? axis.negated() : axis;
    return word(chairAxisOf[own], component(way, chairAxisOf[own]));
  }

  /**
   * A direction of chair space in one word, or two where it runs between, or three in the corner of
   * a room: {@code top}, {@code top outside}. A share below tan 22.5° of the greatest is not told.
   */
  public String compass(Vec3 direction) {
    double[] d = {direction.x(), direction.y(), direction.z()};
    double most = Math.max(Math.abs(d[0]), Math.max(Math.abs(d[1]), Math.abs(d[2])));
    List<String> words = new ArrayList<>();
    for (int axis : new int[] {2, 1, 0}) {
      if (Math.abs(d[axis]) >= most * Math.tan(Math.PI / 8)) {
        words.add(word(axis, d[axis]));
      }
    }
    return String.join(" ", words);
  }

  private String word(int chairAxis, double sense) {
    boolean plus = sense > 0;
    return switch (chairAxis) {
      case 2 -> plus ? "top" : "bottom";
      case 1 -> plus ? "back" : "front";
      default -> sideways(plus);
    };
  }

  private String sideways(boolean toTheRight) {
    if (hand != Hand.NONE) {
      return toTheRight == (hand == Hand.RIGHT) ? "outside" : "inside";
    }
    return toTheRight != seated ? "right" : "left";
  }
}
