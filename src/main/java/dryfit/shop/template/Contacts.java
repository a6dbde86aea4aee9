package dryfit.shop.template;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.document.PartPlan;
import dryfit.geometry.Box;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import dryfit.solid.FaceContact;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where other parts lie flat against a part: there its faces have to stay flat. */
final class Contacts {
  private Contacts() {}

  /** Less than this is an edge that happens to touch, mm². */
  private static final double LEAST = 20;

  /** A face counts as seen or as edge-on if it is within 25 degrees of that, cosine and sine. */
  private static final double NEAR = Math.sin(Math.toRadians(25));

  record Contact(Part other, FaceContact at) {}

  static List<Contact> of(Chair chair, Part part) {
    List<Contact> out = new ArrayList<>();
    List<Convex> own = part.placedCells();
    Box bounds = around(own).grown(Tolerances.contact());
    for (Part other : chair.parts()) {
      // A round part beds in its bore, not on the face.
      if (!other.label().equals(part.label())
          && !other.isPiece()
          && !(other.plan() instanceof PartPlan.Turned)) {
        List<Convex> cells = other.placedCells();
        if (around(cells).meets(bounds)) {
          FaceContact.largest(own, cells)
              .filter(c -> c.area() > LEAST)
              .ifPresent(c -> out.add(new Contact(other, c)));
        }
      }
    }
    return out;
  }

  private static Box around(List<Convex> cells) {
    return Box.around(cells.stream().flatMap(c -> c.points().stream()).toList());
  }

  /** As it is drawn on a face: an area if it lies in it, a line if it is seen edge-on. */
  static Optional<Mark> mark(Contact contact, Face face) {
    // The plane looks out of the other part, so into this one.
    Vec3 looks = contact.at().plane().normal().negated();
    double facing = looks.dot(face.looks());
    List<List<Vec2>> pieces =
        contact.at().pieces().stream()
            .map(p -> face.flat(p.stream().map(face.part().frame()::local).toList()))
            .toList();
    String about = contact.other().name();
    if (facing > 1 - NEAR) {
      return Optional.of(new Mark.FlatArea(about, Region.ofHulls(pieces).cleaned().loops()));
    }
    if (Math.abs(facing) > NEAR) {
      return Optional.empty();
    }
    Vec3 own = face.part().frame().localDirection(looks);
    Vec2 square = face.flat(own);
    Vec2 along = new Vec2(-square.y(), square.x());
    Vec2 from = pieces.get(0).get(0);
    Vec2 to = from;
    for (List<Vec2> piece : pieces) {
      for (Vec2 p : piece) {
        from = p.dot(along) < from.dot(along) ? p : from;
        to = p.dot(along) > to.dot(along) ? p : to;
      }
    }
    return Optional.of(new Mark.FlatEdge(about, from, to));
  }
}
