package dryfit.shop.template;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.document.PartPlan;
import dryfit.document.PartPlan.Sawn;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import dryfit.shop.template.Template.Serves;
import dryfit.shop.template.Template.Shows;
import dryfit.shop.template.Template.Sits;
import java.util.ArrayList;
import java.util.List;

/** Draws one part on one of its faces. */
final class Drawer {
  /** Width of the line round a template, mm: seen well, and not too thick for a knife. */
  static final double LINE = 0.35;

  /** Faces that differ by no more than this are one to a maker, mm. */
  private static final double SAME = 0.02;

  /** A face with less than this share of the outline flat is no face to lie a template on. */
  private static final double FLAT_ENOUGH = 0.5;

  private final Chair chair;
  private final Face face;
  private final Wanted wanted;
  private final Part part;
  private final List<Mark> marks = new ArrayList<>();

  Drawer(Chair chair, Face face, Wanted wanted) {
    this.chair = chair;
    this.face = face;
    this.wanted = wanted;
    this.part = face.part();
  }

  /**
   * The drawing, as if it served this part alone.
   *
   * @throws NoTemplate if nothing is left of it once it stands back for the bush
   */
  Template drawn(Shows shows) throws NoTemplate {
    Region outline = outline();
    List<Region> mouths = mouths();
    marks.addAll(PegHoles.of(chair, face, outline));
    for (Contacts.Contact contact : Contacts.of(chair, part)) {
      Contacts.mark(contact, face).ifPresent(marks::add);
    }
    if (shows == Shows.OUTLINE) {
      marks.addAll(Creases.of(face, outline, mouths));
    }
    Forms.marks(part, face, wanted, outline).forEach(marks::add);
    middle(outline);
    if (shows != Shows.TURNING) {
      grain(outline);
    }
    Region edge = shows == Shows.OUTLINE ? withWaste(outline) : outline;
    if (wanted.bush().isPresent() && shows == Shows.OUTLINE) {
      edge = bushed(edge, outline, wanted.bush().get());
    }
    Vec3 low = part.blank().net().low();
    Vec3 high = part.blank().net().high();
    boolean fromHigh = datumIsHigh();
    return new Template(
        part,
        Serves.ONE,
        shows,
        face.looks(),
        face.up(),
        outline.loops(),
        edge.loops(),
        edge.grown(LINE / 2).loops(),
        LINE,
        corner(false),
        corner(true),
        face.flat(fromHigh ? high : low).x(),
        fromHigh ? part.frame().x() : part.frame().x().negated(),
        marks,
        sits(outline));
  }

  /** The part as it is seen, its openings left, its mortises not cut, its edges not treated. */
  private Region outline() {
    List<List<Vec2>> cells = part.sawnCells().stream().map(c -> face.flat(c.points())).toList();
    Region notches = Holes.notches(chair, part, face);
    Region all = Region.ofHulls(cells);
    return (notches.isEmpty() ? all : all.without(notches)).largest().cleaned();
  }

  private List<Region> mouths() {
    List<Region> seen = new ArrayList<>();
    for (Holes.Hole hole : Holes.of(chair, part)) {
      double facing = hole.plane().normal().dot(face.out());
      String about = hole.joint().name();
      // Within 45 degrees of the way one looks a mouth is seen as one.
      if (Math.abs(facing) > Math.sqrt(0.5) && !hole.mouth().isEmpty()) {
        Region mouth = Holes.mouth(hole, face);
        marks.add(new Mark.Mouth(about, mouth.loops(), facing > 0));
        if (facing > 0) {
          seen.add(mouth);
        }
        cross(mouth);
      } else {
        marks.add(new Mark.Inside(about, Holes.drawn(hole, face).loops()));
        Vec3 at = part.frame().local(hole.joint().at());
        double deep = hole.joint().length();
        marks.add(
            new Mark.Middle(
                face.flat(at.minus(hole.entry().times(6))),
                face.flat(at.plus(hole.entry().times(deep)))));
      }
    }
    return seen;
  }

  /** A cross over the middle of a mouth. */
  private void cross(Region mouth) {
    Vec2 low = mouth.low();
    Vec2 high = mouth.high();
    Vec2 at = low.plus(high).times(0.5);
    marks.add(new Mark.Middle(new Vec2(low.x() - 3, at.y()), new Vec2(high.x() + 3, at.y())));
    marks.add(new Mark.Middle(new Vec2(at.x(), low.y() - 3), new Vec2(at.x(), high.y() + 3)));
  }

  /** The line that an outline is alike on both sides of. */
  private void middle(Region outline) {
    double y = (outline.low().y() + outline.high().y()) / 2;
    double shift = -2 * y;
    List<Vec2> over =
        outline.loops().get(0).stream().map(p -> new Vec2(p.x(), -p.y() - shift)).toList();
    if (isSame(outline.filled(), Region.of(over))) {
      marks.add(
          new Mark.Middle(new Vec2(outline.low().x() - 5, y), new Vec2(outline.high().x() + 5, y)));
    }
  }

  /** Whether two regions differ only by the grid they are joined on. */
  static boolean isSame(Region a, Region b) {
    return a.differing(b).size() <= SAME * a.edgeLength();
  }

  private void grain(Region outline) {
    Vec2 way = face.flat(part.grain());
    if (way.length() > Math.sqrt(0.5)) {
      marks.add(new Mark.Grain(outline.middle(), way.times(1 / way.length())));
    }
  }

  private Region withWaste(Region outline) {
    if (wanted.waste() <= 0 || !hasEnds()) {
      return outline;
    }
    Region whole = outline;
    for (int way : new int[] {-1, 1}) {
      WasteEnd end = WasteEnd.of(outline.loops().get(0), way, wanted.waste());
      if (end.line().size() > 1) {
        marks.add(new Mark.End(end.line()));
      }
      end.screws().forEach(s -> marks.add(new Mark.Screw(s)));
      whole = whole.with(end.waste());
    }
    return whole.largest().cleaned();
  }

  /** A board with an outline all round has no ends to be screwed through. */
  private boolean hasEnds() {
    return !(part.plan() instanceof PartPlan.Seat) && !(part.plan() instanceof PartPlan.Panel);
  }

  private Region bushed(Region edge, Region outline, GuideBush bush) throws NoTemplate {
    double radius = bush.cutter() / 2;
    Region left = outline.rolled(radius).rolled(-radius).without(outline);
    for (Region piece : left.pieces()) {
      double out = depth(piece, outline);
      if (out > NOTICED) {
        marks.add(new Mark.TightCorner(piece.middle(), out));
      }
    }
    Region back = edge.grown(-bush.offset());
    if (back.isEmpty()) {
      throw new NoTemplate(
          part.name() + " is too narrow for a template that stands back so far for the bush");
    }
    return back.largest();
  }

  /** Wood that stands out of a corner less than this is taken off by the first stroke of a file. */
  private static final double NOTICED = 0.3;

  private static double depth(Region piece, Region outline) {
    return piece.loops().get(0).stream().mapToDouble(outline::distanceToEdge).max().orElse(0);
  }

  /** Uprights are measured from their foot, all else from the start. */
  private boolean datumIsHigh() {
    return part.frame().x().z() < -Math.sqrt(0.5);
  }

  private Vec2 corner(boolean high) {
    Vec2 a = face.flat(part.blank().net().low());
    Vec2 b = face.flat(part.blank().net().high());
    return high
        ? new Vec2(Math.max(a.x(), b.x()), Math.max(a.y(), b.y()))
        : new Vec2(Math.min(a.x(), b.x()), Math.min(a.y(), b.y()));
  }

  /** Whether most of one of the two faces this way is left of the block. */
  static boolean hasFlatFaces(Face face) {
    List<List<Vec2>> cells =
        face.part().sawnCells().stream().map(c -> face.flat(c.points())).toList();
    double least = FLAT_ENOUGH * Region.ofHulls(cells).size();
    return Math.max(flat(face), flat(new Face(face.part(), face.out().negated()))) > least;
  }

  private Sits sits(Region outline) {
    if (isSawnFirst()) {
      return Sits.EITHER_FACE;
    }
    double size = outline.size();
    boolean front = flat(face) > FLAT_ENOUGH * size;
    boolean behind = flat(new Face(part, face.out().negated())) > FLAT_ENOUGH * size;
    if (front && behind) {
      return Sits.EITHER_FACE;
    }
    return front ? Sits.SEEN_FACE : behind ? Sits.FACE_BEHIND : Sits.OFFCUTS;
  }

  /** Whether it is the first of two outlines, sawn while the block is square. */
  private boolean isSawnFirst() {
    if (!(part.plan() instanceof Sawn sawn)
        || sawn.plan().isEmpty()
        || sawn.side().isEmpty() && sawn.front().isEmpty()) {
      return false;
    }
    return Math.abs(face.looks().z()) < Math.sqrt(0.5);
  }

  /** How much of the face of the block is still there when the part is finished, mm². */
  private static double flat(Face face) {
    Mesh mesh = face.part().solid().mesh();
    double twice = 0;
    for (int t = 0; t < mesh.triangleCount(); t++) {
      Vec3 a = mesh.point(mesh.corner(t, 0));
      Vec3 b = mesh.point(mesh.corner(t, 1));
      Vec3 c = mesh.point(mesh.corner(t, 2));
      double least = Math.min(a.dot(face.out()), Math.min(b.dot(face.out()), c.dot(face.out())));
      if (least >= face.reach() - SAME) {
        twice += b.minus(a).cross(c.minus(a)).length();
      }
    }
    return twice / 2;
  }
}
