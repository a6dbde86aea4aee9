package dryfit.shop.setting;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.build.Tenon;
import dryfit.fit.PartSides;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Angle;
import dryfit.measure.BenchAngle;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Where the mouth of a mortise is knifed on its face: from one end of the part and from one edge of
 * the face, or on a round part from a line along it.
 *
 * @param readings lengths from the end, then from the edge
 */
record Mouth(List<Reading> readings, List<String> notes) {
  /** Words of edges that a maker would rather measure from, best first. */
  private static final List<String> PREFERRED = List.of("outside", "front", "top", "right");

  /** Half of the stretch of a part in which its edge is looked for beside a mortise, mm. */
  private static final double BESIDE = 0.5;

  static Optional<Mouth> of(Chair chair, Joint joint) {
    Part part = chair.parts().get(joint.mortised());
    Vec3 n = joint.mouth().normal();
    Vec3 along = part.lengthNear(joint.at());
    boolean inEnd = Math.abs(along.dot(n)) > Math.sqrt(0.5);
    if (joint.mortise().isEmpty() || part.bend().isPresent() || inEnd) {
      return Optional.empty();
    }
    return Optional.of(new Setter(chair, joint, part, along.across(n).unit()).mouth());
  }

  /** The lengths of one mouth. */
  private static final class Setter {
    private final Joint joint;
    private final Part part;
    private final PartSides sides;
    private final Vec3 along;
    private final Vec3 across;
    private final List<Reading> readings = new ArrayList<>();

    Setter(Chair chair, Joint joint, Part part, Vec3 along) {
      this.joint = joint;
      this.part = part;
      this.sides = PartSides.of(chair, part, joint.hand());
      this.along = along;
      Vec3 beside = along.cross(joint.mouth().normal()).unit();
      this.across = PREFERRED.contains(sides.nearest(beside)) ? beside : beside.negated();
    }

    Mouth mouth() {
      double low = -reach(along.negated());
      double high = reach(along);
      double at = joint.at().dot(along);
      boolean fromLow = at - low <= high - at;
      Vec3 out = fromLow ? along.negated() : along;
      double end = reach(out);
      String endWord = "the " + sides.nearest(out) + " end";
      boolean round = part.isRound();
      Vec3 middle = part.frame().origin();
      double edge = round ? middle.dot(across) : edge();
      String edgeWord =
          round ? "a line along its middle" : "the " + sides.nearest(across) + " edge";
      int number = 0;
      boolean askew = false;
      for (Tenon tenon : joint.tenons()) {
        if (tenon.hole().isEmpty()) {
          continue;
        }
        number++;
        String which = joint.tenons().size() > 1 ? number + ": " : "";
        List<Vec3> corners = onMouth(tenon.hole().get(0));
        span(which + "along the part", corners, p -> end - p.dot(out), endWord, "");
        boolean centred = round && joint.plan().diameter().isPresent();
        if (centred) {
          double off = joint.at().dot(across) - edge;
          readings.add(
              Math.abs(off) < BESIDE / 10
                  ? new Reading.Said(which + "across it", "on " + edgeWord)
                  : new Reading.Size(
                      which + "its middle, from " + edgeWord,
                      Math.abs(off),
                      "towards the " + sides.nearest(off > 0 ? across : across.negated())));
        } else {
          span(which + "across it", corners, p -> edge - p.dot(across), edgeWord, "");
        }
        askew |= !joint.plan().diameter().isPresent() && askew();
      }
      List<String> notes = new ArrayList<>();
      if (askew) {
        notes.add(
            "The mouth is no rectangle: its corners are "
                + Angle.degrees(corner().offSquare())
                + " off square. The lengths are those of its outermost corners; take its shape"
                + " from the full-size print.");
      }
      return new Mouth(List.copyOf(readings), List.copyOf(notes));
    }

    private void span(
        String what, List<Vec3> corners, ToDoubleFunction<Vec3> off, String from, String sense) {
      double least = corners.stream().mapToDouble(off).min().orElse(0);
      double most = corners.stream().mapToDouble(off).max().orElse(0);
      readings.add(new Reading.Span(what, least, most, from, sense));
    }

    private boolean askew() {
      return !corner().isSquare();
    }

    /** How far the corners of the mouth are off square. */
    private BenchAngle corner() {
      Vec3 cheek = onFace(joint.thick());
      Vec3 edge = onFace(joint.wide());
      return BenchAngle.of(Math.PI / 2 - cheek.angleTo(edge));
    }

    private Vec3 onFace(Vec3 step) {
      Vec3 n = joint.mouth().normal();
      return step.minus(joint.entry().times(step.dot(n) / joint.entry().dot(n)));
    }

    private List<Vec3> onMouth(Convex hole) {
      Plane mouth = joint.mouth();
      double rate = mouth.normal().dot(joint.entry());
      return hole.points().stream()
          .map(p -> p.minus(joint.entry().times(mouth.height(p) / rate)))
          .toList();
    }

    private double reach(Vec3 out) {
      return part.bodyCells().stream()
          .mapToDouble(c -> c.placed(part.frame()).reach(out))
          .max()
          .orElse(0);
    }

    /** The edge of the face beside the mortise, where the part is cut across there. */
    private double edge() {
      Plane here = Plane.through(joint.at(), along);
      double face = joint.mouth().offset();
      Vec3 n = joint.mouth().normal();
      double most = Double.NEGATIVE_INFINITY;
      for (Convex own : part.bodyCells()) {
        Optional<Convex> slice =
            own.placed(part.frame())
                .clipped(here.moved(BESIDE))
                .flatMap(c -> c.clipped(here.moved(-BESIDE).flipped()));
        if (slice.isPresent()) {
          for (Vec3 p : slice.get().points()) {
            if (n.dot(p) > face - joint.length()) {
              most = Math.max(most, p.dot(across));
            }
          }
        }
      }
      return Double.isInfinite(most) ? reach(across) : most;
    }
  }
}
