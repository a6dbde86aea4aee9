package dryfit.document;

import dryfit.document.Context.Bound;
import dryfit.document.PartPlan.Placement;
import dryfit.document.PartPlan.Spot;
import dryfit.document.Quantity.Kind;
import dryfit.geometry.Lean;
import dryfit.geometry.Vec3;
import java.util.List;

/**
 * Reads a part that runs from a place at a rake and a splay, as a leg is written down: both are the
 * angles that the side view and the front view show, never one turn after another. They are
 * measured from plumb, or with {@code seat-slope} from the square of a seat that falls so far to
 * the back.
 */
final class LeaningRun {
  /** The keys that only this way of placing has. */
  static final List<String> KEYS = List.of("rake", "splay", "seat-slope", "to-z", "length");

  private static final double STEEPEST = Math.toRadians(80);

  private final Context context;
  private final Fields part;

  LeaningRun(Context context, Fields part) {
    this.context = context;
    this.part = part;
  }

  /** Whether the part is placed so. */
  static boolean isWritten(Fields part) {
    return KEYS.stream().anyMatch(part::has);
  }

  Placement read(Spot from) {
    if (part.has("to")) {
      part.conflict(
          "conflict", "to", "“to” says already how it leans, so rake and splay do not go with it");
      return new Placement.Run(from, from);
    }
    if (!part.has("rake") && !part.has("splay")) {
      missing("“rake” or “splay”");
    }
    double rake = angle("rake");
    double splay = angle("splay");
    double slope = angle("seat-slope");
    Vec3 up = new Vec3(0, Math.sin(slope), Math.cos(slope));
    // As it rises, a line whose foot stands forward and outside runs back and inward.
    Vec3 way = new Lean(rake, -splay).direction(up, Vec3.BACK);
    double along = along(from, way);
    Spot to =
        new Spot(
            from.x() + way.x() * along, from.y() + way.y() * along, from.z() + way.z() * along);
    return new Placement.Run(from, to);
  }

  /** How far it runs along its upward way, mm; below zero if it runs down. */
  private double along(Spot from, Vec3 way) {
    if (part.has("to-z") && part.has("length")) {
      part.conflict("conflict", "length", "“to-z” and “length” say the same thing twice");
      return Double.NaN;
    }
    if (part.has("length")) {
      double length = context.needLength(part, "length", Bound.ANY);
      notNothing("length", length);
      return length;
    }
    if (part.has("to-z")) {
      double rise = context.needLength(part, "to-z", Bound.ANY) - from.z();
      notNothing("to-z", rise);
      return rise / way.z();
    }
    missing("“to-z” or “length”");
    return Double.NaN;
  }

  private void notNothing(String key, double length) {
    if (length == 0) {
      Json node = part.node(key).orElseThrow();
      context
          .problems()
          .add(
              "not-positive",
              node.at(),
              node.shown(),
              "another height than it starts from",
              "with this the part has no length");
    }
  }

  private double angle(String key) {
    if (!part.has(key)) {
      return 0;
    }
    Json node = part.node(key).orElseThrow();
    double angle = context.number(node, Kind.ANGLE, Bound.ANY);
    if (Math.abs(angle) > STEEPEST) {
      context
          .problems()
          .add(
              "out-of-range",
              node.at(),
              node.shown(),
              "at most 80 degrees",
              "a part that leans further than 80 degrees lies; give it by “from” and “to”");
    }
    return Math.abs(angle) <= STEEPEST ? angle : 0;
  }

  private void missing(String what) {
    context
        .problems()
        .add(
            "missing-value",
            part.at(),
            "nothing",
            what,
            "a part that leans from a place needs " + what);
  }
}
