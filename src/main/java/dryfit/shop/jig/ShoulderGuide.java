package dryfit.shop.jig;

import dryfit.build.Part;
import dryfit.document.Hand;
import dryfit.document.JigKind;
import dryfit.document.JointPlan;
import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.BenchAngle;
import java.util.List;

/**
 * The shoulder guide: a square that lies on a wide face of the tenoned part with its fence down an
 * edge, and whose end stands in the plane of the shoulder, for the saw to run along. Where the
 * shoulder is square through the thickness the fence goes both ways, and the guide, turned over,
 * serves the other hand too. Printed on the outer side of its fence.
 */
final class ShoulderGuide {
  private static final double THICK = 12;
  private static final double LONG = 60;

  private ShoulderGuide() {}

  static Jig of(JigSite site) {
    Part part = site.tenoned();
    Vec3 length = part.lengthNear(site.joint().at());
    Vec3 n = site.joint().mouth().normal();
    if (site.joint().plan().tenon().end() == JointPlan.End.MIDDLE
        || part.isPiece()
        || JigSite.isRound(part)
        || Math.abs(n.dot(length)) < 0.7
        || site.joint().plan().shoulder() != JointPlan.Shoulder.FLAT) {
      throw new NoJig("it has no flat shoulder across the end of a part");
    }
    if (site.joint().plan().kind() == JointPlan.Kind.HOUSING) {
      throw new NoJig(
          "the whole end goes in and has no shoulder: mark its end from the housing, and saw to it");
    }
    // Away from the end, so that x runs from the shoulder into the part.
    Vec3 in = n.dot(length) > 0 ? length : length.negated();
    Frame own = part.frameNear(site.joint().at());
    boolean flat = part.blank().thickness() > part.blank().width();
    Vec3 face = flat ? own.y() : own.z();
    Vec3 edge = flat ? own.z() : own.y();
    Vec3 a = towards(face, site);
    Vec3 b = towards(edge, site);
    // The bed is the outer side of the fence; b goes down to it.
    Frame rough = Frame.of(site.joint().at(), in, b.negated().cross(in));
    Box within = new Box(new Vec3(2, -80, -80), new Vec3(LONG + 10, 80, 80));
    LocalWood wood = LocalWood.of(part, rough, within);
    Vec3 la = rough.localDirection(a);
    Vec3 lb = rough.localDirection(b);
    Plane pa = wood.facing(la);
    Plane pb = wood.facing(lb);
    if (pa.normal().dot(la) < 0.98
        || pb.normal().dot(lb) < 0.9
        || wood.faceIn(pa).orElse(List.of()).stream().mapToDouble(Vec3::x).max().orElse(0)
            < LONG * 0.6
        || wood.areaIn(pa) < Seat.LEAST_REST
        || wood.areaIn(pb) < Seat.LEAST_REST) {
      throw new NoJig(
          "the part has no flat face and edge beside its shoulder: knife the shoulder round from"
              + " the bevel setter or the drawing, and saw to the knife line");
    }
    Plane fa = rough.place(pa);
    Plane fb = rough.place(pb);
    // The frame of the bed stands square on the edge's face.
    Vec3 run = in.across(fb.normal()).unit();
    Frame on = Frame.of(onLine(site, fa, fb), run, fb.normal().negated().cross(run));
    Vec3 bedAt = on.origin().plus(fb.normal().times(THICK));
    Frame bed = new Frame(bedAt, on.x(), on.y(), on.z());
    JigShape shape = new JigShape(bed);
    Plane la2 = shape.local(fa);
    Plane lb2 = shape.local(fb);
    Plane shoulder = shape.local(site.joint().mouth().flipped());
    double slope = -shoulder.normal().dot(la2.normal());
    boolean turns =
        BenchAngle.of(Math.asin(Math.max(-1, Math.min(1, slope)))).isSquare()
            && Math.abs(la2.normal().dot(lb2.normal())) < 1e-4;
    double wide = wood.hull().reach(lb) + wood.hull().reach(lb.negated());
    double thick = wood.hull().reach(la) + wood.hull().reach(la.negated());
    double drop = Math.min(12, thick * 0.7);
    double over = turns ? THICK + drop : THICK;
    double strip = over + drop - 3;
    double slant = (strip + 3) * Math.abs(shoulder.normal().y() / shoulder.normal().x());
    List<String> words = words(site, part, turns, bed, n.angleTo(length));
    double end =
        Math.max(
            LONG,
            slant
                + Engraving.leastWidth(words, Engraving.mostLines(strip))
                + 10
                + Math.min(9, strip));
    Box big = new Box(new Vec3(-150, -150, 0), new Vec3(end, 150, THICK + wide));
    shape.add(big, shoulder, la2.flipped(), la2.moved(THICK));
    shape.add(
        new Box(big.low(), new Vec3(end, 150, THICK)),
        shoulder,
        la2.moved(-drop).flipped(),
        la2.moved(over));
    letters(shape, words, la2, shoulder, drop, over, end);
    String name = site.name(JigKind.SHOULDER_GUIDE, "");
    return new Jig(
        JigKind.SHOULDER_GUIDE,
        name,
        site.joint().tenoned(),
        site.number(),
        turns ? Hand.NONE : site.hand(),
        words,
        List.of(shape.piece(name, site.kernel(), site.printing().relief())),
        List.of(fa, fb),
        List.of(site.joint().mouth().flipped()),
        List.of(),
        turns ? List.of("turned over it serves the other hand") : List.of());
  }

  /** Of two opposite faces the one that looks to the outside, the front or up. */
  private static Vec3 towards(Vec3 face, JigSite site) {
    double side = Math.signum(Math.rint(site.joint().at().x()));
    double out = face.x() * side - 0.6 * face.y() + 0.3 * face.z();
    return out < 0 ? face.negated() : face;
  }

  /** Where the shoulder crosses the arris of face and edge. */
  private static Vec3 onLine(JigSite site, Plane face, Plane edge) {
    Vec3 line = face.normal().cross(edge.normal()).unit();
    Vec3 at = site.joint().at();
    Vec3 onFace = at.minus(face.normal().times(face.height(at)));
    Vec3 across = edge.normal().across(face.normal()).unit();
    Vec3 on = onFace.plus(across.times(edge.along(onFace, across)));
    double along = site.joint().mouth().along(on, line);
    return on.plus(line.times(along));
  }

  private static List<String> words(
      JigSite site, Part part, boolean turns, Frame bed, double angle) {
    List<String> words = site.letters(part, JigSite.degrees(Math.min(angle, Math.PI - angle)));
    if (turns) {
      words.addAll(List.of("BOTH", "HANDS"));
    }
    words.add(JigSite.upWord(bed.z()));
    return words;
  }

  private static void letters(
      JigShape shape,
      List<String> words,
      Plane face,
      Plane shoulder,
      double drop,
      double over,
      double end) {
    // On the bed: from the shoulder's slant to the square end, across the fence.
    double y = face.normal().y() * face.offset();
    double s = Math.signum(face.normal().y());
    double y0 = Math.min(y - s * drop, y + s * over) + 1.5;
    double y1 = Math.max(y - s * drop, y + s * over) - 1.5;
    double x0 = -150;
    for (double at : new double[] {y0, y1}) {
      x0 = Math.max(x0, shoulder.along(new Vec3(0, at, 0), Vec3.RIGHT));
    }
    double height = y1 - y0;
    Vec3 up = shape.bed().localDirection(JigSite.upOn(shape.bed().z())).across(Vec3.UP).unit();
    double arrow = Math.min(9, height);
    Engraving.arrow(
            new Vec3(end - 2 - arrow / 2, (y0 + y1) / 2, 0).minus(up.times(arrow * 0.4)),
            up,
            Vec3.UP.negated(),
            arrow * 0.8)
        .forEach(shape::cutLate);
    shape.engrave(
        words,
        new Panel(
            new Vec3(x0 + 2, y1, 0),
            Vec3.RIGHT,
            Vec3.BACK.negated(),
            end - x0 - 6 - arrow,
            height));
  }
}
