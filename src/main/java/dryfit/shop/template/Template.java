package dryfit.shop.template;

import dryfit.build.Part;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import java.util.List;

/**
 * A full-size drawing of a part on one flat face of its squared block, seen from outside; mm. x
 * runs along the part.
 *
 * @param part the part it is drawn for; of a pair that one template serves, the right one
 * @param serves whether it serves one part, or turned over its twin too
 * @param shows what is drawn
 * @param looks which way the face that is seen looks, chair space
 * @param up which way y of the drawing runs, chair space
 * @param outline the true edge of the part: the outer line, then its openings; without mortises
 * @param edge the edge of the template: the same with ends of waste and stood back for a bush
 * @param line the middle of the line that is drawn, whose edge towards the template is {@code edge}
 * @param width of that line
 * @param low lower left corner of the squared block
 * @param high upper right corner
 * @param datum x of the end that places along the part are measured from
 * @param datumLooks which way that end looks, chair space
 * @param marks all else
 * @param sits where a template for a follower bit has to sit
 */
public record Template(
    Part part,
    Serves serves,
    Shows shows,
    Vec3 looks,
    Vec3 up,
    List<List<Vec2>> outline,
    List<List<Vec2>> edge,
    List<List<Vec2>> line,
    double width,
    Vec2 low,
    Vec2 high,
    double datum,
    Vec3 datumLooks,
    List<Mark> marks,
    Sits sits) {

  public Template {
    outline = outline.stream().map(List::copyOf).toList();
    edge = edge.stream().map(List::copyOf).toList();
    line = line.stream().map(List::copyOf).toList();
    marks = List.copyOf(marks);
  }

  /** Which parts it is for. */
  public enum Serves {
    /** A part without a twin. */
    ONE,
    /** The part it is drawn for, and turned over its twin. */
    BOTH_HANDS,
    /** Only one of a pair. */
    THIS_HAND
  }

  /** What is drawn. */
  public enum Shows {
    /** An outline to saw or rout to. */
    OUTLINE,
    /** A face whose edges are not sawn to a drawn outline: only what is marked on it counts. */
    MARKS,
    /** The profile of a turning, with its diameters. */
    TURNING,
    /** The curve of a bent part, for its form. */
    BEND
  }

  /** Which face of the wood a template lies on when a follower bit runs along it. */
  public enum Sits {
    /** Both faces are flat. */
    EITHER_FACE,
    /** Only the face that is seen is flat. */
    SEEN_FACE,
    /** Only the face behind is flat. */
    FACE_BEHIND,
    /** Both faces are sawn to the other outline first, and the offcuts are held in their places. */
    OFFCUTS
  }
}
