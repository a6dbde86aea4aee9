package dryfit.shop.template;

import dryfit.build.Part;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import java.util.List;

/**
 * The mouth of a mortise in its true shape on the flat face it is cut from; mm of that face. x runs
 * along the part, or across it in the face of an end; the middle of the mouth is at 0, 0.
 *
 * @param joint label of the joint
 * @param part which is mortised
 * @param looks which way the face looks, chair space
 * @param fromBlank whether it is the face of the squared block, part of which may be sawn away
 *     later
 * @param loops the mouth
 * @param edge y of the edge it is dimensioned from
 * @param edgeLooks which way that edge looks, chair space
 * @param end x of the end it is dimensioned from
 * @param endLooks which way that end looks, chair space
 * @param deep along the entry from this face, mm
 * @param through whether it comes out at the far side
 * @param lean of the entry off square to the face, radians
 * @param leansTo unit direction in the face to which the bottom of the mortise leans
 */
public record MouthPrint(
    String joint,
    Part part,
    Vec3 looks,
    boolean fromBlank,
    List<List<Vec2>> loops,
    double edge,
    Vec3 edgeLooks,
    double end,
    Vec3 endLooks,
    double deep,
    boolean through,
    double lean,
    Vec2 leansTo) {
  public MouthPrint {
    loops = loops.stream().map(List::copyOf).toList();
  }

  /** Lower left corner of the mouth. */
  public Vec2 low() {
    return new Vec2(
        loops.stream().flatMap(List::stream).mapToDouble(Vec2::x).min().orElse(0),
        loops.stream().flatMap(List::stream).mapToDouble(Vec2::y).min().orElse(0));
  }

  /** Upper right corner of the mouth. */
  public Vec2 high() {
    return new Vec2(
        loops.stream().flatMap(List::stream).mapToDouble(Vec2::x).max().orElse(0),
        loops.stream().flatMap(List::stream).mapToDouble(Vec2::y).max().orElse(0));
  }
}
