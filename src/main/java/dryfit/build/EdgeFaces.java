package dryfit.build;

import dryfit.document.EdgePlan;
import dryfit.document.EdgePlan.Which;
import dryfit.geometry.Vec3;
import java.util.List;
import java.util.Optional;

/**
 * The faces of a part as words mean them: each face of its surface belongs to the side of the own
 * frame that it looks to most; on a round part to one of the two ends or to the round face.
 */
final class EdgeFaces {
  /** More than this along the length, a face of a round part is its end: cosine. */
  private static final double END = 0.7;

  private final Stock stock;
  private final boolean round;

  /** A side of a part: six for a squared one; two ends and the round one for a turned one. */
  enum Side {
    START(-1, 0, 0),
    END(1, 0, 0),
    LOW_WIDTH(0, -1, 0),
    HIGH_WIDTH(0, 1, 0),
    LOW_THICKNESS(0, 0, -1),
    HIGH_THICKNESS(0, 0, 1),
    ROUND(0, 0, 0);

    private final int x;
    private final int y;
    private final int z;

    Side(int x, int y, int z) {
      this.x = x;
      this.y = y;
      this.z = z;
    }

    /** The direction it looks to, own frame; nothing for the round face. */
    Vec3 out() {
      return new Vec3(x, y, z);
    }

    boolean isEnd() {
      return this == START || this == END;
    }
  }

  EdgeFaces(Stock stock) {
    this.stock = stock;
    this.round = Meeting.isRound(stock.plan());
  }

  /** The side that a face with this outward normal belongs to; own frame. */
  Side side(Vec3 normal) {
    if (round) {
      return normal.x() > END ? Side.END : normal.x() < -END ? Side.START : Side.ROUND;
    }
    Side best = Side.START;
    for (Side side : Side.values()) {
      if (normal.dot(side.out()) > normal.dot(best.out())) {
        best = side;
      }
    }
    return best;
  }

  private Side side(String word, EdgePlan plan) {
    String pointer = plan.pointer() + "/between";
    if (word.equals(EdgePlan.ROUND)) {
      if (!round) {
        throw Refusal.of(
            "absent-face",
            pointer,
            stock.name() + " is not round",
            "name its faces: front, back, left, right, top, bottom, inside or outside");
      }
      return Side.ROUND;
    }
    Vec3 wanted = stock.frame().localDirection(FaceNames.inChair(word, stock.outside(), pointer));
    Side best = side(wanted);
    if (best == Side.ROUND || wanted.dot(best.out()) <= 0.5) {
      throw Refusal.of(
          "absent-face",
          pointer,
          stock.name() + " has no face that looks to the " + word,
          round ? "name an end, or \"round\"" : "name one of its six faces");
    }
    return best;
  }

  /** Edges chosen: whether one between these two sides is among them. */
  interface Choice {
    boolean takes(Side a, Side b);
  }

  Choice chosen(EdgePlan plan) {
    if (plan.which() == Which.ALL) {
      return (a, b) -> a != b;
    } else if (plan.which() == Which.ALL_LONG) {
      return (a, b) -> a != b && !a.isEnd() && !b.isEnd();
    }
    List<String> words = plan.faces();
    Side first = side(words.get(0), plan);
    Optional<Side> second =
        words.get(1).equals(EdgePlan.ANY)
            ? Optional.empty()
            : Optional.of(side(words.get(1), plan));
    return (a, b) ->
        a != b
            && (a == first || b == first)
            && (second.isEmpty() || a == second.get() || b == second.get());
  }
}
