package dryfit.build;

import dryfit.document.PartPlan.Opening;
import dryfit.document.PartPlan.Raised;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import dryfit.solid.Csg;
import dryfit.solid.Extrusion;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Polygon;

/** What is done to a flat board once it has its outline: openings and raised fields. */
final class Boards {
  private Boards() {}

  /**
   * Which faces are raised and where the board lies.
   *
   * @param low of the board along the page's z
   * @param high of the board
   * @param above whether the face towards +z is raised
   * @param below whether the face towards -z is raised
   */
  record Raising(double low, double high, boolean above, boolean below) {
    /** How much is taken off at a raised face. */
    double deep(double tongue) {
      return (high - low - tongue) / (above && below ? 2 : 1);
    }
  }

  /**
   * @param pageZ the direction in the chair that the page with its outline looks to
   * @param middle where the middle of its thickness lies in that direction
   */
  static Raising raising(Raised raised, double thickness, Vec3 pageZ, double middle, String name) {
    boolean above = true;
    boolean below = true;
    if (raised.face().isPresent()) {
      double facing =
          FaceNames.inChair(raised.face().get(), Vec3.ZERO, raised.pointer()).dot(pageZ);
      above = facing > 0.5;
      below = facing < -0.5;
      if (!above && !below) {
        throw Refusal.of(
            "absent-face",
            raised.pointer() + "/face",
            name + " has no wide face that looks to the " + raised.face().get(),
            "name one of its two wide faces");
      }
    }
    return new Raising(middle - thickness / 2, middle + thickness / 2, above, below);
  }

  /**
   * What is taken off round a board to raise its field.
   *
   * @param loop its outline in the page
   */
  static List<Csg> bevels(Raised raised, Raising at, List<Vec2> loop, Frame page, String name) {
    List<Csg> cuts = new ArrayList<>();
    if (at.above()) {
      cuts.add(bevel(raised, at, loop, page, true, name));
    }
    if (at.below()) {
      cuts.add(bevel(raised, at, loop, page, false, name));
    }
    return cuts;
  }

  private static Csg bevel(
      Raised raised, Raising at, List<Vec2> loop, Frame page, boolean above, String name) {
    List<Vec2> round = anticlockwise(loop);
    if (!above) {
      // Seen from its own side.
      Collections.reverse(round);
    }
    Vec3 up = above ? new Vec3(0, 0, 1) : new Vec3(0, 0, -1);
    double z = above ? at.high() : at.low();
    int n = round.size();
    List<Vec3> points = new ArrayList<>();
    List<Vec3> into = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Vec3 p = new Vec3(round.get(i).x(), round.get(i).y(), z);
      Vec3 q = new Vec3(round.get((i + 1) % n).x(), round.get((i + 1) % n).y(), z);
      points.add(page.place(p));
      into.add(page.turn(up.cross(q.minus(p).unit())));
    }
    EdgeRun run =
        new EdgeRun(
            points,
            into,
            Collections.nCopies(n, page.turn(up.negated())),
            Collections.nCopies(n, 0.0),
            true,
            0,
            0);
    EdgeProfile profile =
        EdgeProfile.bevel(at.deep(raised.tongue()), raised.flat(), raised.margin());
    return EdgeCutter.along(run, profile, raised.pointer())
        .orElseThrow(
            () ->
                Refusal.of(
                    "edge-too-tight",
                    raised.pointer() + "/margin",
                    "the outline of "
                        + name
                        + " turns too tightly, or is too small, for its margin all round",
                    "a smaller margin, or rounder corners"));
  }

  private static List<Vec2> anticlockwise(List<Vec2> loop) {
    double twice =
        IntStream.range(0, loop.size())
            .mapToDouble(
                i -> {
                  Vec2 a = loop.get(i);
                  Vec2 b = loop.get((i + 1) % loop.size());
                  return a.x() * b.y() - b.x() * a.y();
                })
            .sum();
    List<Vec2> out = new ArrayList<>(loop);
    if (twice < 0) {
      Collections.reverse(out);
    }
    return out;
  }

  // ---- openings ----

  /**
   * What is cut through a board for its openings.
   *
   * @param loop the board's outline
   * @param low where the cut starts along z of the page, outside the wood
   */
  static List<Csg> openings(
      List<Opening> openings, List<Vec2> loop, double low, double high, Frame page, String name) {
    Polygon board = LoopChecks.polygon(loop);
    List<Polygon> before = new ArrayList<>();
    List<Csg> cuts = new ArrayList<>();
    for (Opening opening : openings) {
      List<Vec2> hole = OutlineCurves.loop(opening.outline());
      LoopChecks.refuseCrossing(hole, name, opening.pointer());
      Polygon polygon = LoopChecks.polygon(hole);
      if (!board.contains(polygon) || board.getExteriorRing().intersects(polygon)) {
        throw Refusal.of(
            "opening-outside",
            opening.pointer(),
            "an opening of " + name + " comes out at its edge",
            "it must stay inside the outline, with wood all round");
      }
      if (before.stream().anyMatch(polygon::intersects)) {
        throw Refusal.of(
            "opening-outside",
            opening.pointer(),
            "two openings of " + name + " meet",
            "draw them as one, or leave wood between them");
      }
      before.add(polygon);
      cuts.add(Extrusion.of(hole, low, high, page, opening.pointer()));
    }
    return cuts;
  }
}
