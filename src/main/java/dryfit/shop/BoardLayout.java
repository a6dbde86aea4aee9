package dryfit.shop;

import dryfit.build.Chair;
import dryfit.document.BoardsPlan;
import dryfit.document.BoardsPlan.Board;
import dryfit.geometry.Vec2;
import java.util.List;

/**
 * Where each blank is cut from the boards that are there.
 *
 * @param boards every board, used or not, thin before thick
 * @param pairs what is to be known about parts of a pair
 * @param left what found no place
 */
public record BoardLayout(List<Laid> boards, List<PairNote> pairs, List<Left> left) {
  public BoardLayout {
    boards = List.copyOf(boards);
    pairs = List.copyOf(pairs);
    left = List.copyOf(left);
  }

  /**
   * A board and what is cut from it.
   *
   * @param name its name, with a number where there are several alike
   * @param planed its thickness when planed
   * @param used length used up, from its left end, with the last saw cut; 0 if nothing is cut from
   *     it
   */
  public record Laid(Board board, String name, double planed, List<Placed> parts, double used) {
    public Laid {
      parts = List.copyOf(parts);
    }
  }

  /**
   * A part on a board, seen from above, from the board's near left corner.
   *
   * @param net its finished outline
   * @param rough what is sawn out
   * @param up the face that looks up
   * @param endForEnd whether its start is to the right
   * @param turn how far it is turned from lying along the board, radians
   * @param offGrain angle between its grain and the board's, radians
   */
  public record Placed(
      String label,
      List<Vec2> net,
      List<Vec2> rough,
      String up,
      boolean endForEnd,
      double turn,
      double offGrain) {
    public Placed {
      net = List.copyOf(net);
      rough = List.copyOf(rough);
    }
  }

  /** How the two parts of a pair are marked out so that their grain mirrors. */
  public enum Mirroring {
    /** The grain runs along the board: same face up, one outline the mirror of the other. */
    SAME_FACE_UP,
    /** The grain slopes: one is turned over and end for end. */
    TURNED_OVER,
    /** They did not find room on one board. */
    APART
  }

  /** A pair and how it lies. */
  public record PairNote(String name, Mirroring mirroring) {}

  /** A part that found no place, and why. */
  public record Left(String label, Why why) {
    /** Why a part found no place. */
    public enum Why {
      NO_SUCH_TIMBER,
      TOO_THICK,
      TOO_LARGE,
      NO_ROOM
    }
  }

  /** Area of the finished outlines, mm^2. */
  public double partArea() {
    return boards.stream().flatMap(b -> b.parts().stream()).mapToDouble(p -> area(p.net())).sum();
  }

  /** Area of the boards that is used up, over their full width, mm^2. */
  public double usedArea() {
    return boards.stream().mapToDouble(b -> b.used() * b.board().width()).sum();
  }

  /** The share of the used-up area that becomes parts; 0 if nothing is placed. */
  public double yielded() {
    return usedArea() > 0 ? partArea() / usedArea() : 0;
  }

  static double area(List<Vec2> loop) {
    double twice = 0;
    for (int i = 0; i < loop.size(); i++) {
      twice += loop.get(i).cross(loop.get((i + 1) % loop.size()));
    }
    return Math.abs(twice) / 2;
  }

  /** Lays the blanks of a chair out on the plan's boards; always the same way. */
  public static BoardLayout of(Chair chair, BoardsPlan plan) {
    return new Nesting(chair, plan).best();
  }
}
