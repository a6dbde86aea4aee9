package dryfit.shop.template;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.document.JointPlan;
import dryfit.document.PartPlan;
import dryfit.geometry.Mesh;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import dryfit.shop.Step;
import dryfit.shop.Steps;
import dryfit.shop.template.Holes.Hole;
import java.util.ArrayList;
import java.util.List;

/** The mouths of a chair's mortises, each on the face that the order of work cuts it from. */
public final class MouthPrints {
  private final Chair chair;
  private final List<Steps> steps;

  private MouthPrints(Chair chair) {
    this.chair = chair;
    this.steps = Steps.of(chair);
  }

  /** What comes of one mortise. */
  public sealed interface Made {
    /** It is drawn. */
    record Ready(MouthPrint print) implements Made {}

    /** It cannot be printed flat, and why. */
    record Without(String joint, String because) implements Made {}
  }

  /** Those in the parts of these names, in the order of the chair's parts and joints. */
  public static List<Made> of(Chair chair, List<String> parts) {
    MouthPrints prints = new MouthPrints(chair);
    List<Made> out = new ArrayList<>();
    for (Part part : chair.parts()) {
      if (!part.isPiece() && parts.contains(part.name())) {
        for (Hole hole : Holes.of(chair, part)) {
          if (hole.joint().plan().kind() != JointPlan.Kind.GROOVE && !hole.mouth().isEmpty()) {
            out.add(prints.made(part, hole));
          }
        }
      }
    }
    return out;
  }

  private Made made(Part part, Hole hole) {
    if (isRound(part)) {
      return new Made.Without(
          hole.joint().label(),
          "it goes into the round " + part.name() + "; mark it from the stick for the lathe");
    }
    Step step = step(part, hole);
    boolean blank =
        step.kind() == Step.Kind.MORTISE || step.kind() == Step.Kind.MORTISE_BEFORE_SAWING;
    Plane plane = blank ? blankFace(part, hole.plane().normal()) : hole.plane();
    return new Made.Ready(print(part, hole, plane, blank));
  }

  private static boolean isRound(Part part) {
    return part.plan() instanceof PartPlan.Turned
        || part.plan() instanceof PartPlan.Straight s
            && s.section() instanceof PartPlan.Section.Round;
  }

  private Step step(Part part, Hole hole) {
    int index = chair.parts().indexOf(part);
    return steps.get(index).steps().stream()
        .filter(s -> s.about().equals(hole.joint().label()) && isMortise(s.kind()))
        .findFirst()
        .orElseThrow(
            () -> new IllegalStateException("no step cuts the mortise of " + hole.joint().label()));
  }

  private static boolean isMortise(Step.Kind kind) {
    return switch (kind) {
      case MORTISE,
          MORTISE_BEFORE_SAWING,
          MORTISE_LYING_FLAT,
          MORTISE_IN_OFFCUTS,
          MORTISE_IN_A_CRADLE ->
          true;
      default -> false;
    };
  }

  /** The face of the block that looks most the same way. */
  private static Plane blankFace(Part part, Vec3 normal) {
    Vec3 best = Face.THICKNESS;
    for (Vec3 axis : List.of(Face.WIDTH, Face.THICKNESS)) {
      for (Vec3 out : List.of(axis, axis.negated())) {
        best = out.dot(normal) > best.dot(normal) ? out : best;
      }
    }
    return new Face(part, best).plane();
  }

  private MouthPrint print(Part part, Hole hole, Plane plane, boolean blank) {
    Vec3 out = plane.normal();
    boolean endGrain = Math.abs(out.x()) > Math.sqrt(0.5);
    Vec3 right = (endGrain ? Face.WIDTH : Face.LENGTH).across(out).unit();
    Vec3 up = out.cross(right);
    // Along the entry to the plane: what is cut is alike all along it.
    List<List<Vec2>> cells =
        hole.mouth().stream()
            .map(
                loop ->
                    loop.stream()
                        .map(p -> p.plus(hole.entry().times(plane.along(p, hole.entry()))))
                        .map(p -> new Vec2(p.dot(right), p.dot(up)))
                        .toList())
            .toList();
    Region mouth = Region.ofHulls(cells).cleaned();
    Vec2 middle = mouth.low().plus(mouth.high()).times(0.5);
    List<List<Vec2>> loops =
        mouth.loops().stream().map(l -> l.stream().map(p -> p.minus(middle)).toList()).toList();
    boolean upIsEdge = Face.preferred(part, up);
    boolean rightIsEnd = isDatum(part, right, endGrain);
    Region face = blank ? Region.empty() : faceAround(part, plane, right, up, middle);
    double edge = reach(part, face, up, upIsEdge, middle, false) - middle.y();
    double end = reach(part, face, right, rightIsEnd, middle, true) - middle.x();
    Vec3 at = part.frame().local(hole.joint().at());
    double toFace = -plane.along(at, hole.entry());
    boolean through = hole.joint().through();
    double deep = through ? 0 : hole.joint().length() + hole.joint().plan().fit().bottom() + toFace;
    Vec3 leaning = hole.entry().across(out);
    return new MouthPrint(
        hole.joint().label(),
        part,
        part.frame().turn(out),
        blank,
        loops,
        edge,
        part.frame().turn(upIsEdge ? up : up.negated()),
        end,
        part.frame().turn(rightIsEnd ? right : right.negated()),
        deep,
        through,
        hole.entry().angleTo(out.negated()),
        new Vec2(leaning.dot(right), leaning.dot(up)));
  }

  /** Places along a part are measured from the foot of an upright, or from its start. */
  private static boolean isDatum(Part part, Vec3 right, boolean endGrain) {
    if (endGrain) {
      return Face.preferred(part, right);
    }
    boolean fromHigh = part.frame().x().z() < -Math.sqrt(0.5);
    return right.x() > 0 == fromHigh;
  }

  /** How far the face, or if none is known the block, reaches one way. */
  private static double reach(
      Part part, Region face, Vec3 way, boolean plus, Vec2 middle, boolean along) {
    if (!face.isEmpty()) {
      double at = along ? middle.y() : middle.x();
      Region slice =
          along
              ? face.common(Region.rectangle(FAR * -1, at - THIN, FAR, at + THIN))
              : face.common(Region.rectangle(at - THIN, FAR * -1, at + THIN, FAR));
      if (!slice.isEmpty()) {
        Vec2 end = plus ? slice.high() : slice.low();
        return along ? end.x() : end.y();
      }
    }
    double best = Double.NEGATIVE_INFINITY;
    Vec3 out = plus ? way : way.negated();
    for (int corner = 0; corner < 8; corner++) {
      Vec3 low = part.blank().net().low();
      Vec3 high = part.blank().net().high();
      Vec3 p =
          new Vec3(
              (corner & 1) == 0 ? low.x() : high.x(),
              (corner & 2) == 0 ? low.y() : high.y(),
              (corner & 4) == 0 ? low.z() : high.z());
      best = Math.max(best, p.dot(out));
    }
    return plus ? best : -best;
  }

  /** Further than any part reaches, mm. */
  private static final double FAR = 10_000;

  /** A face is measured along a strip so wide to either side, mm. */
  private static final double THIN = 0.05;

  /** The flat face of the finished part that a mouth lies in, its holes filled. */
  private static Region faceAround(Part part, Plane plane, Vec3 right, Vec3 up, Vec2 middle) {
    Mesh mesh = part.solid().mesh();
    List<List<Vec2>> triangles = new ArrayList<>();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      List<Vec3> corners =
          List.of(
              mesh.point(mesh.corner(t, 0)),
              mesh.point(mesh.corner(t, 1)),
              mesh.point(mesh.corner(t, 2)));
      if (corners.stream().allMatch(p -> Math.abs(plane.height(p)) <= SAME_PLANE)) {
        triangles.add(corners.stream().map(p -> new Vec2(p.dot(right), p.dot(up))).toList());
      }
    }
    for (Region piece : Region.ofHulls(triangles).pieces()) {
      if (piece.filled().contains(middle)) {
        return piece.filled();
      }
    }
    return Region.empty();
  }

  /** Faces that differ by no more than this are one to a maker, mm. */
  private static final double SAME_PLANE = 0.02;
}
