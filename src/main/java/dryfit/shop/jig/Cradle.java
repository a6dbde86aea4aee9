package dryfit.shop.jig;

import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.JigKind;
import dryfit.document.JointPlan;
import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A bed for a part. As a cradle it holds the mortised part so that the way into the mortise is
 * plumb, under a drill; as a caul it lies on the far side of the mortised part, its outer face
 * square to the line of the clamp, which so goes through the joint. Printed on its flat face; the
 * part is laid in from above, so nothing of it reaches over the part.
 */
final class Cradle {
  private static final double LONG = 72;
  private static final double PAD = 60;
  private static final double WALL = 8;
  private static final double BASE = 8;

  /** A clamp pulls at most so far off square to the face under the caul, radians. */
  private static final double CLAMP_LEANS = Math.toRadians(35);

  /** A face that looks along the part by more than this is its end: cosine. */
  private static final double ENDS = 0.7;

  private final JigSite site;
  private final JigKind kind;
  private final Vec3 down;
  private final Vec3 through;

  /**
   * @param down unit direction to the flat face, chair space
   * @param through a place on the line that is to be square to it
   */
  private Cradle(JigSite site, JigKind kind, Vec3 down, Vec3 through) {
    this.site = site;
    this.kind = kind;
    this.down = down;
    this.through = through;
  }

  static Jig cradle(JigSite site) {
    if (site.holes().isEmpty()) {
      throw new NoJig("nothing is bored for it");
    }
    return new Cradle(site, JigKind.CRADLE, site.joint().entry(), site.joint().at()).make();
  }

  /** The clamp pulls along the line from this end of the tenoned part to its other end. */
  static Jig caul(JigSite site) {
    Joint joint = site.joint();
    if (joint.plan().tenon().end() == JointPlan.End.MIDDLE || site.tenoned().isPiece()) {
      throw new NoJig("no clamp pulls along its part");
    }
    Optional<Joint> other =
        site.chair().joints().stream()
            .filter(j -> j.tenoned() == joint.tenoned() && j.atStart() != joint.atStart())
            .filter(j -> j.plan().tenon().end() != JointPlan.End.MIDDLE)
            .findFirst();
    Vec3 from =
        other.map(Joint::at).orElseThrow(() -> new NoJig("its part has no joint at its other end"));
    Vec3 line = joint.at().minus(from).unit();
    return new Cradle(site, JigKind.CAUL, line, joint.at()).make();
  }

  private Jig make() {
    Part part = site.mortised();
    Vec3 length = part.lengthNear(through);
    Vec3 across = length.across(down);
    if (across.length() < 0.5) {
      throw new NoJig("the part stands on its end there");
    }
    Frame rough = Frame.of(through, across, down.negated().cross(across));
    double half = kind == JigKind.CAUL ? PAD / 2 : LONG / 2;
    Box near = new Box(new Vec3(-half - 1, -90, -200), new Vec3(half + 1, 90, 60));
    LocalWood wood = LocalWood.of(part, rough, near);
    Convex hull = wood.hull();
    double x0 = -Math.min(half, end(wood, Vec3.RIGHT.negated()));
    double x1 = Math.min(half, end(wood, Vec3.RIGHT));
    if (x1 - x0 < 25) {
      throw new NoJig("there is too little of the part to lie on");
    }
    double lowest = -hull.reach(Vec3.UP.negated());
    Plane under = wood.facing(Vec3.UP.negated());
    if (kind == JigKind.CAUL && under.normal().angleTo(Vec3.UP.negated()) > CLAMP_LEANS) {
      throw new NoJig("the clamp would slide on the face behind it");
    }
    double highEnd = highEnd(hull, x0, x1);
    double tall = hull.reach(Vec3.UP) - lowest;
    double top = highEnd + Math.min(12, 0.34 * Math.max(6, tall - (highEnd - lowest)));
    double bottom = lowest - BASE;
    double y0 = -side(hull, Vec3.BACK.negated(), x0, x1);
    double y1 = side(hull, Vec3.BACK, x0, x1);
    Frame bed = new Frame(rough.place(new Vec3(0, 0, bottom)), rough.x(), rough.y(), rough.z());
    JigShape shape = new JigShape(bed);
    double height = top - bottom;
    shape.add(new Box(new Vec3(x0, y0, 0), new Vec3(x1, y1, height)));
    LocalWood there =
        LocalWood.of(part, bed, new Box(new Vec3(x0 - 1, -90, -1), new Vec3(x1 + 1, 90, 260)));
    Plane lies = there.facing(Vec3.UP.negated());
    boolean face = there.areaIn(lies) >= Seat.LEAST_REST;
    if (!face && there.areaTowards(Vec3.UP.negated()) < Seat.LEAST_REST) {
      throw new NoJig(
          kind == JigKind.CAUL
              ? "the part is hollow behind the joint: clamp over an offcut sawn to its curve"
              : "the part is hollow under it and would rock: bore with the angle guide, or lay the"
                  + " part on an offcut sawn to its curve");
    }
    shape.cut(there.swept(400));
    List<String> words = words();
    letters(shape, words, x0, x1, y0, y1, height);
    String name = site.name(kind, "");
    JigPiece piece = shape.piece(name, site.kernel(), site.printing().relief());
    if (!PrintRules.of(piece.mesh(), site.printing()).faults(site.printing()).isEmpty()) {
      throw new NoJig(
          "beside the edge of the part a wall would be left that is too thin to print: "
              + (kind == JigKind.CAUL ? "clamp over a flat offcut" : "bore with the angle guide"));
    }
    return new Jig(
        kind,
        name,
        site.joint().mortised(),
        site.number(),
        site.hand(),
        words,
        List.of(piece),
        face ? List.of(bed.place(lies)) : List.of(),
        List.of(new Plane(down, down.dot(bed.origin()))),
        List.of(),
        List.of(note(x0, x1)));
  }

  private List<String> words() {
    return kind == JigKind.CAUL
        ? site.letters(site.mortised(), "CLAMP", clampAngle(), JigSite.upWord(down))
        : site.letters(
            site.mortised(), "PLUMB", JigSite.degrees(site.joint().lean()), JigSite.upWord(down));
  }

  private String clampAngle() {
    double angle = down.angleTo(site.joint().mouth().normal().negated());
    return JigSite.degrees(Math.min(angle, Math.PI - angle));
  }

  private String note(double x0, double x1) {
    return kind == JigKind.CAUL
        ? "centre the clamp on the crossed lines"
        : String.format(
            Locale.ROOT,
            "the drill goes in over the crossed lines, %s from one end of the cradle and %s from"
                + " the other",
            JigLength.told(-x0, site.chair().design()),
            JigLength.told(x1, site.chair().design()));
  }

  /**
   * How far out the block goes: to a wall beside the wood, or, under a part that is wider than a
   * cradle, to where there is wood all along, so that no sliver of a wall is left.
   */
  private static double side(Convex hull, Vec3 out, double x0, double x1) {
    double most = PAD / 2 + 20;
    if (hull.reach(out) + WALL <= most) {
      return hull.reach(out) + WALL;
    }
    double least = most;
    for (double x : new double[] {x0, x1}) {
      least = Math.min(least, slice(hull, x).map(c -> c.reach(out)).orElse(most) - 0.5);
    }
    return least;
  }

  /** How far the wood goes in full along the part: a slanting end counts from where it begins. */
  private static double end(LocalWood wood, Vec3 out) {
    if (!wood.endsTowards(out)) {
      return wood.hull().reach(out);
    }
    double least = wood.hull().reach(out);
    for (Plane p : wood.hull().planes()) {
      if (p.normal().dot(out) > ENDS) {
        for (Vec3 corner : wood.faceIn(p).orElse(List.of())) {
          least = Math.min(least, corner.dot(out));
        }
      }
    }
    return least;
  }

  /** What stands within half a millimetre of a place along the part. */
  private static Optional<Convex> slice(Convex hull, double x) {
    return hull.clipped(new Plane(Vec3.RIGHT, x + 0.5))
        .flatMap(c -> c.clipped(new Plane(Vec3.RIGHT.negated(), 0.5 - x)));
  }

  /** How high the underside of the wood is at the end of the jig where it is higher. */
  private static double highEnd(Convex hull, double x0, double x1) {
    double most = Double.NEGATIVE_INFINITY;
    for (double x : new double[] {x0 + 1, x1 - 1}) {
      most = Math.max(most, slice(hull, x).map(c -> -c.reach(Vec3.UP.negated())).orElse(most));
    }
    return most;
  }

  private void letters(
      JigShape shape,
      List<String> words,
      double x0,
      double x1,
      double y0,
      double y1,
      double height) {
    double deep = 0.6;
    shape.cutLate(
        Engraving.groove(new Vec3(x0, 0, 0), new Vec3(x1, 0, 0), Vec3.UP.negated(), deep));
    shape.cutLate(
        Engraving.groove(new Vec3(0, y0, 0), new Vec3(0, y1, 0), Vec3.UP.negated(), deep));
    for (double x : new double[] {x0, x1}) {
      Vec3 out = Vec3.RIGHT.times(Math.signum(x));
      shape.cutLate(Engraving.groove(new Vec3(x, 0, -1), new Vec3(x, 0, height + 1), out, deep));
    }
    for (double y : new double[] {y0, y1}) {
      Vec3 out = Vec3.BACK.times(Math.signum(y));
      shape.cutLate(Engraving.groove(new Vec3(0, y, -1), new Vec3(0, y, height + 1), out, deep));
    }
    // On the flat face, in the larger halves on both sides of the middle line.
    double arrow = 8;
    Vec3 up = shape.bed().localDirection(JigSite.upOn(down)).across(Vec3.UP).unit();
    Vec3 middle = new Vec3(x1 - arrow / 2 - 3, y0 / 2, 0);
    Engraving.arrow(middle.minus(up.times(arrow * 0.4)), up, Vec3.UP.negated(), arrow * 0.8)
        .forEach(shape::cutLate);
    int split = Math.max(1, (words.size() + 1) / 2);
    shape.engrave(
        words.subList(0, split),
        new Panel(
            new Vec3(x0 + 2.5, y1 - 2.5, 0),
            Vec3.RIGHT,
            Vec3.BACK.negated(),
            x1 - x0 - 5,
            y1 - 4.5));
    shape.engrave(
        words.subList(split, words.size()),
        new Panel(
            new Vec3(x0 + 2.5, -2, 0),
            Vec3.RIGHT,
            Vec3.BACK.negated(),
            x1 - x0 - 8 - arrow,
            -y0 - 4.5));
  }
}
