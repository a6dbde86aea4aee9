package dryfit.shop.jig;

import dryfit.build.Part;
import dryfit.document.JigKind;
import dryfit.geometry.Frame;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import java.util.List;
import java.util.Locale;

/**
 * The height stick of a joint: it lies on the mortised face, one end flush with an end of the part,
 * and its other end is where the mortise begins. Only an end that is square to the part's length is
 * used; a stick cannot be set to any other.
 */
final class HeightStick {
  private HeightStick() {}

  static Jig of(JigSite site) {
    if (site.holes().isEmpty()) {
      throw new NoJig("nothing is cut into a face for it");
    }
    Part part = site.mortised();
    if (JigSite.isRound(part)) {
      throw new NoJig("the part is round");
    }
    if (part.bend().isPresent()) {
      throw new NoJig("the part is bent");
    }
    Vec3 along = part.frame().x();
    Vec3 n = site.joint().mouth().normal();
    if (Math.abs(along.dot(n)) > Math.sin(Math.toRadians(3))) {
      throw new NoJig("the mortised face does not run along the part");
    }
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    Vec3 line = along.across(n).unit();
    for (Convex hole : site.holes()) {
      for (Vec3 p : onMouth(hole, site)) {
        low = Math.min(low, p.dot(line));
        high = Math.max(high, p.dot(line));
      }
    }
    double start = end(part, line, -1);
    double stop = end(part, line, 1);
    double fromStart = Double.isNaN(start) ? Double.POSITIVE_INFINITY : low - start;
    double fromStop = Double.isNaN(stop) ? Double.POSITIVE_INFINITY : stop - high;
    boolean atStart = fromStart <= fromStop;
    double length = Math.min(fromStart, fromStop);
    if (Double.isInfinite(length)) {
      throw new NoJig("no end of the part is square to its length");
    }
    if (length < Stick.LEAST) {
      throw new NoJig("it would be shorter than its lettering");
    }
    Vec3 x = atStart ? line : line.negated();
    double from = atStart ? start : -stop;
    Vec3 at = site.joint().at();
    Vec3 origin = at.plus(x.times(from - at.dot(x)));
    Frame on = Frame.of(origin, x, n.cross(x));
    Stick stick = new Stick(site.printing(), site.kernel(), length);
    List<String> words = site.letters(part, JigLength.engraved(length, site.chair().design()));
    String name = site.name(JigKind.HEIGHT_STICK, "");
    Vec3 arrow = JigSite.upOn(n);
    return new Jig(
        JigKind.HEIGHT_STICK,
        name,
        site.joint().mortised(),
        site.number(),
        site.hand(),
        words,
        stick.pieces(name, words, on, arrow, JigSite.upWord(n)),
        List.of(site.joint().mouth()),
        List.of(Plane.through(origin, x.negated()), Plane.through(origin.plus(x.times(length)), x)),
        List.of(),
        List.of(
            String.format(
                Locale.ROOT,
                "%s from the %s of the part to the mortise",
                JigLength.told(length, site.chair().design()),
                atStart ? "start" : "other end")));
  }

  private static List<Vec3> onMouth(Convex hole, JigSite site) {
    Vec3 entry = site.joint().entry();
    Plane mouth = site.joint().mouth();
    return hole.points().stream()
        .map(p -> p.minus(entry.times(mouth.height(p) / mouth.normal().dot(entry))))
        .toList();
  }

  /** Where the part ends along a line, if it ends square to it; otherwise NaN. */
  private static double end(Part part, Vec3 line, int sense) {
    Vec3 out = line.times(sense);
    double most = Double.NEGATIVE_INFINITY;
    List<Convex> cells = part.bodyCells().stream().map(c -> c.placed(part.frame())).toList();
    for (Convex cell : cells) {
      most = Math.max(most, cell.reach(out));
    }
    for (Convex cell : cells) {
      for (Plane p : cell.planes()) {
        if (p.normal().angleTo(out) < Math.toRadians(0.05)
            && p.offset() > most - 10 * Tolerances.contact()) {
          return sense * most;
        }
      }
    }
    return Double.NaN;
  }
}
