package dryfit.shop.template;

import dryfit.geometry.Vec2;
import java.util.List;

/** What is drawn on a template besides its outline; mm of the drawing. */
public sealed interface Mark {

  /**
   * The mouth of a mortise in the face that is seen, or in the face behind.
   *
   * @param about name of the joint
   */
  record Mouth(String about, List<List<Vec2>> loops, boolean seen) implements Mark {
    public Mouth {
      loops = Mark.copy(loops);
    }
  }

  /** A mortise inside the wood, cut from an edge of what is seen. */
  record Inside(String about, List<List<Vec2>> loops) implements Mark {
    public Inside {
      loops = Mark.copy(loops);
    }
  }

  /** A middle line: of a mortise along the way it is cut, or of the whole part. */
  record Middle(Vec2 from, Vec2 to) implements Mark {}

  /**
   * Where another part lies flat against this one on the face that is seen.
   *
   * @param about the other part
   */
  record FlatArea(String about, List<List<Vec2>> loops) implements Mark {
    public FlatArea {
      loops = Mark.copy(loops);
    }
  }

  /** The same on an edge of what is seen. */
  record FlatEdge(String about, Vec2 from, Vec2 to) implements Mark {}

  /** An edge on the face that is seen: a shoulder, a bevel. */
  record Crease(Vec2 from, Vec2 to) implements Mark {}

  /** Where the part ends and its waste begins. */
  record End(List<Vec2> line) implements Mark {
    public End {
      line = List.copyOf(line);
    }
  }

  /** A place for a screw in the waste. */
  record Screw(Vec2 at) implements Mark {}

  /**
   * Which way the grain runs.
   *
   * @param way unit direction on the drawing
   */
  record Grain(Vec2 at, Vec2 way) implements Mark {}

  /** A line of equal depth of a hollow; at depth 0 its rim. */
  record Depth(List<Vec2> loop, double deep) implements Mark {
    public Depth {
      loop = List.copyOf(loop);
    }
  }

  /** Where a hollow is deepest. */
  record Deepest(Vec2 at, double deep) implements Mark {}

  /** A diameter so far along a turning, to be marked from a stick. */
  record Diameter(double along, double diameter) implements Mark {}

  /**
   * An inside corner that the cutter leaves rounded.
   *
   * @param left how far the wood that is left stands out of the corner
   */
  record TightCorner(Vec2 at, double left) implements Mark {}

  private static List<List<Vec2>> copy(List<List<Vec2>> loops) {
    return loops.stream().map(List::copyOf).toList();
  }
}
