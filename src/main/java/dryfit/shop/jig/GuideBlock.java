package dryfit.shop.jig;

import dryfit.document.JigKind;
import dryfit.document.Printing;
import dryfit.geometry.Frame;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Length;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The angle guide: a block that sits on the mortised face, with its fence against an edge of the
 * part. For the chisel it has a slot whose two sides stand in the planes of the mortise's cheeks
 * and whose closed end stands in the plane of its end; for the drill it has bores along the way in.
 * It is printed on its top, so that nothing that touches wood lies on the bed.
 */
final class GuideBlock {
  /** Wall round a bore, mm. */
  private static final double BORE_WALL = 6;

  /** Wood between two bores beside each other, mm: an edge that a drill does not wander over. */
  private static final double BETWEEN = 2.5;

  private final JigSite site;
  private final boolean drill;
  private final double high;
  private final Frame bed;

  private GuideBlock(JigSite site, boolean drill) {
    this.site = site;
    this.drill = drill;
    Printing p = site.printing();
    double cos = Math.cos(site.joint().lean());
    double length = Math.max(LEAST, GuidePlay.lengthFor(p.guidePlay(), p.guideTilt()));
    this.high = Math.min(length, MOST) * cos;
    Vec3 down = site.joint().mouth().normal().negated();
    this.bed =
        Frame.of(site.joint().at().minus(down.times(high)), site.along(), down.cross(site.along()));
  }

  private static final double LEAST = 20;

  /** A drill has to reach through the guide and still as deep as the mortise, mm. */
  private static final double MOST = 60;

  static Jig forChisel(JigSite site) {
    if (site.isRound()) {
      throw new NoJig("a round hole is not chopped");
    }
    return new GuideBlock(site, false).make();
  }

  static Jig forDrill(JigSite site) {
    return new GuideBlock(site, true).make();
  }

  private Jig make() {
    if (site.holes().isEmpty()) {
      throw new NoJig("nothing is cut into a face for it");
    }
    if (site.joint().lean() > JigSite.STEEPEST) {
      throw new NoJig("it goes in at more than 45 degrees off square");
    }
    List<Convex> holes = site.holes().stream().map(h -> h.localTo(bed)).toList();
    Vec3 entry = bed.localDirection(site.joint().entry());
    Vec3 thick = bed.localDirection(site.joint().thick());
    Vec3 wide = bed.localDirection(site.joint().wide());
    Plan plan = plan(holes, entry, wide);
    JigShape shape = new JigShape(bed);
    plan.seat.build(shape, plan.x0, plan.x1, plan.y0, plan.y1);
    List<Plane> guides = new ArrayList<>();
    List<Bore> bores = new ArrayList<>();
    for (Convex hole : holes) {
      if (drill) {
        bores(shape, hole, entry, thick, wide, bores);
      } else {
        slot(shape, hole, entry, thick, plan, guides);
      }
    }
    sightLines(shape, plan);
    lettering(shape, plan);
    List<String> notes = notes();
    String what = drill ? "drill" : "chisel";
    String name = site.name(JigKind.ANGLE_GUIDE, what);
    JigPiece piece = shape.piece(name, site.kernel(), site.printing().relief());
    return new Jig(
        JigKind.ANGLE_GUIDE,
        name,
        site.joint().mortised(),
        site.number(),
        site.hand(),
        words(),
        List.of(piece),
        plan.seat.rests().stream().map(bed::place).toList(),
        guides.stream().map(bed::place).toList(),
        bores,
        notes);
  }

  private List<String> words() {
    return site.letters(
        site.mortised(),
        drill ? "DRILL" : "CHISEL",
        JigSite.degrees(site.joint().lean()),
        JigSite.upWord(site.joint().mouth().normal()));
  }

  // ---- how large ----

  /** The rectangle of the block, and its top for the lettering. */
  private record Plan(
      Seat seat, double x0, double x1, double y0, double y1, Panel top, Vec3 open) {}

  private Plan plan(List<Convex> holes, Vec3 entry, Vec3 wide) {
    double[] foot = {1e9, -1e9, 1e9, -1e9};
    double halfHole = 0;
    for (Convex hole : holes) {
      for (double z : new double[] {0, high}) {
        for (Vec3 p : outline(hole, entry, z)) {
          foot[0] = Math.min(foot[0], p.x());
          foot[1] = Math.max(foot[1], p.x());
          foot[2] = Math.min(foot[2], p.y());
          foot[3] = Math.max(foot[3], p.y());
          halfHole = z == high ? Math.max(halfHole, Math.abs(p.y())) : halfHole;
        }
      }
    }
    double wall = drill ? BORE_WALL : JigSite.WALL;
    double x0 = foot[0] - wall;
    double x1 = foot[1] + wall;
    double y0 = foot[2] - wall;
    double y1 = foot[3] + wall;
    double half = Math.max(Math.max(-x0, x1), 32);
    Seat seat = Seat.of(site.mortised(), bed, high, half, halfHole);
    int s = seat.side();
    // Room beside the slot for at least three lines of letters.
    double strip = 3 * 1.5 * Engraving.LEAST + 2;
    double outer =
        Math.max(seat.outer(-half, half, JigSite.WALL), (s > 0 ? foot[3] : -foot[2]) + strip + 3);
    if (seat.flat().isEmpty()) {
      double reach = seat.saddleReach() + JigSite.WALL;
      y0 = Math.min(y0, Math.max(-reach, -45));
      y1 = Math.max(y1, Math.min(reach, 45));
    }
    if (s > 0) {
      y1 = Math.max(y1, outer);
    } else {
      y0 = Math.min(y0, -outer);
    }
    double inner = (s > 0 ? foot[3] : -foot[2]) + 1.5;
    double stripHigh = (s > 0 ? y1 : -y0) - inner - 1.5;
    int lines = Math.max(1, Engraving.mostLines(stripHigh));
    double arrow = Math.min(10, stripHigh);
    double width = Engraving.leastWidth(words(), lines) + arrow + 9;
    double more = Math.max(0, width - (x1 - x0)) / 2;
    x0 -= more;
    x1 += more;
    Panel top =
        s > 0
            ? new Panel(
                new Vec3(x0 + 2, y1 - 1.5, 0),
                Vec3.RIGHT,
                Vec3.BACK.negated(),
                x1 - x0 - 4,
                stripHigh)
            : new Panel(
                new Vec3(x0 + 2, y0 + 1.5 + stripHigh, 0),
                Vec3.RIGHT,
                Vec3.BACK.negated(),
                x1 - x0 - 4,
                stripHigh);
    Seat wider = Seat.of(site.mortised(), bed, high, Math.max(-x0, x1) + 1, halfHole);
    Seat kept =
        wider.side() == s && wider.fence().isPresent() == seat.fence().isPresent() ? wider : seat;
    boolean across = Math.abs(wide.y()) > Math.abs(wide.x());
    double sense = across ? -s * Math.signum(wide.y()) : Math.signum(wide.x());
    return new Plan(kept, x0, x1, y0, y1, top, wide.times(sense));
  }

  /** The section of a hole followed along the entry to a height. */
  private static List<Vec3> outline(Convex hole, Vec3 entry, double z) {
    return hole.points().stream().map(p -> p.plus(entry.times((z - p.z()) / entry.z()))).toList();
  }

  // ---- what leads the tool ----

  private void slot(
      JigShape shape, Convex hole, Vec3 entry, Vec3 thick, Plan plan, List<Plane> guides) {
    double t0 = -hole.reach(thick.negated());
    double t1 = hole.reach(thick);
    double end = -hole.reach(plan.open.negated());
    double far = end + 400;
    double start = -300;
    double past = high + (plan.seat.flat().isPresent() ? 1 : 40);
    List<Vec3> loop = new ArrayList<>();
    for (double[] c : new double[][] {{t0, end}, {t1, end}, {t1, far}, {t0, far}}) {
      loop.add(thick.times(c[0]).plus(plan.open.times(c[1])).plus(entry.times(start)));
    }
    // Ended level, for a leaning end would leave a floor in the slot.
    Convex.prism(loop, entry.times(600)).clipped(new Plane(Vec3.UP, past)).ifPresent(shape::cut);
    // Seen from the block, its faces look into the slot.
    guides.add(new Plane(thick, t0));
    guides.add(new Plane(thick.negated(), -t1));
    guides.add(new Plane(plan.open, end));
  }

  private void bores(
      JigShape shape, Convex hole, Vec3 entry, Vec3 thick, Vec3 wide, List<Bore> bores) {
    Printing p = site.printing();
    double t = hole.reach(thick) + hole.reach(thick.negated());
    double w = hole.reach(wide) + hole.reach(wide.negated());
    double diameter = site.isRound() ? t : drillFor(t);
    double round = diameter + p.holeAllowance();
    Vec3 middle =
        thick
            .times((hole.reach(thick) - hole.reach(thick.negated())) / 2)
            .plus(wide.times((hole.reach(wide) - hole.reach(wide.negated())) / 2));
    double span = site.isRound() ? 0 : Math.max(0, w - t);
    int count = site.isRound() ? 1 : 1 + (int) Math.floor(span / (round + BETWEEN) + 1e-9);
    for (int i = 0; i < count; i++) {
      double along = count == 1 ? 0 : -span / 2 + span * i / (count - 1);
      Vec3 on = middle.plus(wide.times(along));
      Vec3 at = on.plus(entry.times((high - on.z()) / entry.z()));
      shape.bore(at, entry, round, -3, high + 40, p.relief());
      bores.add(new Bore(bed.place(at), bed.turn(entry), diameter, round));
    }
  }

  /** The largest common drill that is no thicker than the mortise. */
  private double drillFor(double thick) {
    double step =
        site.chair().design().unit().printed() == Length.Unit.MM ? 0.5 : Length.Unit.IN.mm() / 16;
    return Math.max(step, Math.floor(thick / step + 1e-6) * step);
  }

  // ---- what is written on it ----

  /** Grooves down the ends and sides at the middle of the mortise, to set on knifed lines. */
  private void sightLines(JigShape shape, Plan plan) {
    double deep = 0.6;
    Vec3[][] lines = {
      {new Vec3(plan.x0, 0, high), Vec3.RIGHT.negated()},
      {new Vec3(plan.x1, 0, high), Vec3.RIGHT},
      {new Vec3(0, plan.y0, high), Vec3.BACK.negated()},
      {new Vec3(0, plan.y1, high), Vec3.BACK}
    };
    for (Vec3[] line : lines) {
      Vec3 up = line[0].minus(Vec3.UP.times(Math.min(10, high / 2)));
      shape.cutLate(Engraving.groove(up, line[0].plus(Vec3.UP.times(20)), line[1], deep));
    }
  }

  private void lettering(JigShape shape, Plan plan) {
    Panel top = plan.top;
    double arrow = Math.min(10, top.height());
    Vec3 n = site.joint().mouth().normal();
    Vec3 up = bed.localDirection(JigSite.upOn(n)).across(Vec3.UP).unit();
    Vec3 middle = top.at(top.width() - arrow / 2 - 1, top.height() / 2);
    Engraving.arrow(middle.minus(up.times(arrow * 0.4)), up, Vec3.UP.negated(), arrow * 0.8)
        .forEach(shape::cutLate);
    shape.engrave(
        words(),
        new Panel(top.corner(), top.along(), top.up(), top.width() - arrow - 4, top.height()));
  }

  private List<String> notes() {
    Printing p = site.printing();
    GuidePlay play = new GuidePlay(p.guidePlay(), high / Math.cos(site.joint().lean()));
    double deep = site.joint().inWood() + site.joint().plan().fit().bottom();
    return List.of(
        String.format(
            Locale.ROOT,
            "with %s of play the tool can tip %s and be %s off at the bottom",
            JigLength.fine(p.guidePlay(), site.chair().design()),
            JigSite.told(play.tilt()),
            JigLength.fine(play.offAt(deep), site.chair().design())));
  }
}
