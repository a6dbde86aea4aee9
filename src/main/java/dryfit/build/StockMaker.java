package dryfit.build;

import dryfit.document.Design;
import dryfit.document.Hand;
import dryfit.document.JointPlan.EndRef;
import dryfit.document.PartCuts.Foot;
import dryfit.document.PartCuts.Head;
import dryfit.document.PartPlan;
import dryfit.document.PartPlan.Grain;
import dryfit.document.PartPlan.PartRef;
import dryfit.document.PartPlan.Placement;
import dryfit.document.PartPlan.Spot;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.AllCores;
import dryfit.solid.Cells;
import dryfit.solid.Convex;
import dryfit.solid.Csg;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Places every part, those that run between others after these. A pair is placed on the right and
 * mirrored. Ends that will be cut to a face are left {@link #LONG} longer.
 */
final class StockMaker {
  /** How much longer an end is left that will be cut to the face it meets, mm. */
  static final double LONG = 150;

  private final Design design;
  private final Shelf shelf;
  private final double middleY;
  private final Map<String, Stock> done = new LinkedHashMap<>();
  private final Set<String> refused = new HashSet<>();

  /**
   * @param shelf what was sawn before; its kernel makes surfaces on which edges are looked for
   */
  StockMaker(Design design, Shelf shelf) {
    this.design = design;
    this.shelf = shelf;
    this.middleY = middleY(design);
  }

  /** Half way between the foremost and the rearmost place that any part is given. */
  private static double middleY(Design design) {
    double front = Double.POSITIVE_INFINITY;
    double back = Double.NEGATIVE_INFINITY;
    for (PartPlan plan : design.parts()) {
      if (placement(plan) instanceof Placement.Run run) {
        front = Math.min(front, Math.min(run.from().y(), run.to().y()));
        back = Math.max(back, Math.max(run.from().y(), run.to().y()));
      } else if (placement(plan) instanceof Placement.StandsAt stands) {
        front = Math.min(front, stands.at().y());
        back = Math.max(back, stands.at().y());
      }
    }
    return front <= back ? (front + back) / 2 : 0;
  }

  /** The part placed so far; the right-hand one if a pair is meant without a hand. */
  Stock stock(PartRef ref) {
    Hand hand = ref.hand();
    if (hand == Hand.NONE && plan(ref.part()).common().pair()) {
      hand = Hand.RIGHT;
    }
    return stock(ref.part(), hand);
  }

  Stock stock(String part, Hand hand) {
    Stock stock = done.get(key(part, hand));
    if (stock == null) {
      throw new IllegalStateException(part + hand.suffix() + " is not placed");
    }
    return stock;
  }

  boolean isPlaced(String part) {
    return !refused.contains(part);
  }

  /** All parts, the right hand of a pair before the left, in document order. */
  List<Stock> all() {
    return design.parts().stream()
        .filter(p -> !isLate(p))
        .filter(p -> isPlaced(p.name()))
        .flatMap(
            p ->
                p.common().pair()
                    ? List.of(stock(p.name(), Hand.RIGHT), stock(p.name(), Hand.LEFT)).stream()
                    : List.of(stock(p.name(), Hand.NONE)).stream())
        .toList();
  }

  /** Whether a part can only be made when the others, or their joints, are. */
  static boolean isLate(PartPlan plan) {
    return plan instanceof PartPlan.Pin
        || plan instanceof PartPlan.Panel panel
            && !(panel.shape() instanceof PartPlan.PanelShape.Drawn);
  }

  /** Places all parts; the document has already refused parts placed in a circle. */
  List<Refusal> placeAll() {
    List<Refusal> refusals = new java.util.ArrayList<>();
    List<PartPlan> waiting = design.parts();
    while (!waiting.isEmpty()) {
      List<PartPlan> next = waiting.stream().filter(plan -> !ready(plan)).toList();
      List<PartPlan> now = waiting.stream().filter(this::ready).toList();
      for (PartPlan plan : now) {
        if (needs(plan).stream().anyMatch(refused::contains)) {
          refused.add(plan.name());
        }
      }
      // None of these looks at another of them.
      List<PartPlan> sound = now.stream().filter(plan -> isPlaced(plan.name())).toList();
      for (Placed each : AllCores.map(sound, this::placed)) {
        if (isLate(each.plan())) {
          done.put(key(each.plan().name(), hand(each.plan())), null);
        } else if (each.refusal() == null) {
          each.stocks().forEach(s -> done.put(key(s.name(), s.hand()), s));
        } else {
          refused.add(each.plan().name());
          refusals.add(each.refusal());
        }
      }
      if (next.size() == waiting.size()) {
        throw new IllegalStateException("parts placed in a circle: " + next.get(0).name());
      }
      waiting = next;
    }
    return refusals;
  }

  private boolean ready(PartPlan plan) {
    return needs(plan).stream()
        .allMatch(
            name ->
                refused.contains(name)
                    || done.containsKey(key(name, Hand.NONE))
                    || done.containsKey(key(name, Hand.RIGHT)));
  }

  private static List<String> needs(PartPlan plan) {
    if (plan instanceof PartPlan.CornerBlock block) {
      return List.of(block.first().part(), block.second().part());
    }
    return placement(plan) instanceof Placement.Between between
        ? List.of(between.first().part(), between.second().part())
        : List.of();
  }

  private static Placement placement(PartPlan plan) {
    if (plan instanceof PartPlan.Straight straight) {
      return straight.placement();
    } else if (plan instanceof PartPlan.Sawn sawn) {
      return sawn.placement();
    } else if (plan instanceof PartPlan.Turned turned) {
      return turned.placement();
    } else if (plan instanceof PartPlan.Bent bent) {
      return run(bent.course());
    } else if (plan instanceof PartPlan.Splat splat) {
      return splat.placement();
    } else if (plan instanceof PartPlan.Panel panel
        && panel.shape() instanceof PartPlan.PanelShape.Drawn drawn) {
      return new Placement.StandsAt(drawn.at());
    } else if (plan instanceof PartPlan.Seat seat) {
      return new Placement.StandsAt(seat.at());
    }
    return null;
  }

  /** The hand a part is made for first. */
  private static Hand hand(PartPlan plan) {
    return plan.common().pair() ? Hand.RIGHT : Hand.NONE;
  }

  /** A part where it stands, right and left; or why it cannot; or neither, if it comes later. */
  private record Placed(PartPlan plan, List<Stock> stocks, Refusal refusal) {}

  private Placed placed(PartPlan plan) {
    if (isLate(plan)) {
      return new Placed(plan, List.of(), null);
    }
    Hand hand = hand(plan);
    try {
      Stock stock = EdgeWork.treated(make(plan, hand), shelf.kernel());
      return new Placed(
          plan, hand == Hand.RIGHT ? List.of(stock, stock.mirrored()) : List.of(stock), null);
    } catch (Refusal refusal) {
      return new Placed(plan, List.of(), refusal);
    }
  }

  private Stock make(PartPlan plan, Hand hand) {
    if (plan instanceof PartPlan.Straight straight) {
      double w = width(straight.section());
      double t = thickness(straight.section());
      Line line = line(straight.placement(), plan, hand, w, t, 0);
      Frame frame = turned(frame(line), straight.turn());
      return finish(
          plan,
          hand,
          frame,
          line,
          (l, r) ->
              RebateCut.of(StraightForm.shape(straight, frame, line, l, r), plan, frame, line));
    } else if (plan instanceof PartPlan.Turned turned) {
      double d = turned.stations().stream().mapToDouble(PartPlan.Station::diameter).max().orElse(0);
      Line line = line(turned.placement(), plan, hand, d, d, 0);
      return finish(
          plan, hand, frame(line), line, (l, r) -> TurnedForm.shape(turned, line.length(), l, r));
    } else if (plan instanceof PartPlan.Sawn sawn) {
      if (sawn.placement() instanceof Placement.Between) {
        // Across an outline it is as it is drawn; the other way it has its thickness.
        double thick = sawn.thickness().orElse(0.0);
        double high = sawn.side().isEmpty() ? thick : 0;
        double across = sawn.plan().isEmpty() ? thick : 0;
        Line line = line(sawn.placement(), plan, hand, high, across, SawnForm.bow(sawn));
        Frame frame = turned(frame(line), sawn.turn());
        double outwardSign = Math.signum(frame.z().dot(line.outside()));
        double end = SawnForm.reach(sawn);
        Line own = line.endingAt(end);
        return finish(
            plan, hand, frame, own, (l, r) -> SawnForm.between(sawn, outwardSign, l, r, shelf));
      }
      return standing(plan, hand, SawnForm.standing(sawn, shelf).turned(sawn.turn()));
    } else if (plan instanceof PartPlan.Panel panel) {
      return standing(plan, hand, PanelForm.drawn(panel));
    } else if (plan instanceof PartPlan.Bent bent) {
      return bent(bent, hand);
    } else if (plan instanceof PartPlan.Splat splat) {
      return splat(splat, hand);
    } else if (plan instanceof PartPlan.Seat seat) {
      return standing(plan, hand, SeatForm.drawn(seat));
    } else if (plan instanceof PartPlan.CornerBlock block) {
      return standing(
          plan, hand, CornerBlockForm.of(block, stock(block.first()), stock(block.second())));
    }
    throw new IllegalStateException("unknown form " + plan);
  }

  private Stock bent(PartPlan.Bent plan, Hand hand) {
    PartPlan.Section first = plan.sections().get(0).section();
    Line line = line(run(plan.course()), plan, hand, width(first), thickness(first), 0);
    Frame frame = turned(frame(line), plan.upright() ? 0 : plan.turn());
    BentForm.Made made =
        BentForm.make(
            BentForm.wanted(plan, frame, line),
            cutAt(plan, hand, line, true),
            cutAt(plan, hand, line, false));
    return stock(plan, hand, frame, made.shape(), 0, line.length(), line).bent(made.ends());
  }

  private static Placement run(PartPlan.Course course) {
    if (course instanceof PartPlan.Course.Through through) {
      List<Spot> points = through.points();
      return new Placement.Run(points.get(0), points.get(points.size() - 1));
    }
    return ((PartPlan.Course.Bowed) course).placement();
  }

  private Stock splat(PartPlan.Splat plan, Hand hand) {
    Line line = line(plan.placement(), plan, hand, SplatForm.width(plan), plan.thickness(), 0);
    Frame frame = frame(line);
    SplatForm.Made made =
        SplatForm.make(
            plan, frame, line, cutAt(plan, hand, line, true), cutAt(plan, hand, line, false));
    Stock flat = stock(plan, hand, frame, made.shape(), 0, line.length(), line);
    return made.bent().map(flat::bent).orElse(flat);
  }

  /** A shape with ends left longer by so much. */
  private interface Shaper {
    Csg shape(double longerAtStart, double longerAtEnd);
  }

  /**
   * The middle line of a part.
   *
   * @param butted the parts its ends are cut to, first and second, or none
   */
  record Line(Vec3 from, Vec3 to, boolean lies, Vec3 outside, List<Stock.ButtedEnd> butted) {
    double length() {
      return from.distance(to);
    }

    Line endingAt(double length) {
      Vec3 end = from.plus(to.minus(from).unit().times(length));
      return new Line(from, end, lies, outside, List.of(butted.get(0)));
    }
  }

  private Line line(
      Placement placement, PartPlan plan, Hand hand, double width, double thickness, double bow) {
    if (placement instanceof Placement.Run run) {
      Vec3 from = vec(run.from());
      Vec3 to = vec(run.to());
      if (from.distance(to) <= Tolerances.coincident()) {
        throw Refusal.of(
            "not-positive",
            plan.common().pointer()
                + (plan instanceof PartPlan.Bent b && b.course() instanceof PartPlan.Course.Through
                    ? "/along"
                    : "/to"),
            plan.name() + " starts and ends in the same place",
            "the two places must differ");
      }
      Vec3 d = to.minus(from).unit();
      boolean lies = Math.abs(d.z()) < Math.sqrt(0.5);
      return new Line(from, to, lies, outside(from.midway(to), d, lies), List.of());
    }
    Placement.Between between = (Placement.Between) placement;
    Stock first = stock(between.first());
    Stock second = stock(between.second());
    AxisLine axis =
        AxisLine.of(
            new AxisLine.Wanted(
                plan.name(),
                plan.common().pointer(),
                hand,
                between,
                width,
                thickness,
                bow,
                middleY),
            first,
            second);
    return new Line(
        axis.first(),
        axis.second(),
        between.level().isPresent(),
        axis.outside(),
        List.of(
            new Stock.ButtedEnd(true, first.name(), first.hand()),
            new Stock.ButtedEnd(false, second.name(), second.hand())));
  }

  /** Outside: away from the middle of the chair, square to the part. */
  private Vec3 outside(Vec3 middle, Vec3 d, boolean lies) {
    if (lies) {
      Vec3 side = Vec3.UP.cross(d).unit();
      double away = side.dot(new Vec3(middle.x(), middle.y() - middleY, 0));
      return away < 0 ? side.negated() : side;
    }
    Vec3 side = Vec3.RIGHT.across(d).unit();
    if (Math.abs(middle.x()) > Tolerances.contact()) {
      return middle.x() < 0 ? side.negated() : side;
    }
    Vec3 back = Vec3.BACK.across(d).unit();
    return middle.y() < middleY ? back.negated() : back;
  }

  private static Frame frame(Line line) {
    return Frame.of(line.from(), line.to().minus(line.from()), line.lies() ? Vec3.UP : Vec3.RIGHT);
  }

  static Frame turned(Frame f, double turn) {
    if (turn == 0) {
      return f;
    }
    Vec3 y = f.y().times(Math.cos(turn)).plus(f.z().times(Math.sin(turn)));
    return Frame.of(f.origin(), f.x(), y);
  }

  private Stock finish(PartPlan plan, Hand hand, Frame frame, Line line, Shaper shaper) {
    double longAtStart = cutAt(plan, hand, line, true) ? LONG : 0;
    double longAtEnd = cutAt(plan, hand, line, false) ? LONG : 0;
    Optional<Foot> foot = plan.common().cuts().foot();
    Optional<Head> head = plan.common().cuts().head();
    boolean rises = line.from().z() < line.to().z();
    if (foot.isPresent()) {
      String what = "the lower end of " + plan.name();
      refuseLevel(plan, foot.get().pointer(), line, (rises ? longAtStart : longAtEnd) > 0, what);
      longAtStart = rises ? LONG : longAtStart;
      longAtEnd = rises ? longAtEnd : LONG;
    }
    if (head.isPresent()) {
      String what = "the upper end of " + plan.name();
      refuseLevel(plan, head.get().pointer(), line, (rises ? longAtEnd : longAtStart) > 0, what);
      longAtStart = rises ? longAtStart : LONG;
      longAtEnd = rises ? LONG : longAtEnd;
    }
    Csg shape = shaper.shape(longAtStart, longAtEnd);
    double start = 0;
    double end = line.length();
    if (foot.isPresent()) {
      shape = FootCut.of(shape, foot.get(), frame, plan);
      double x = FootCut.plane(foot.get()).along(frame.origin(), frame.x());
      start = rises ? x : start;
      end = rises ? end : x;
    }
    if (head.isPresent()) {
      double top = Math.max(line.from().z(), line.to().z());
      shape = HeadCut.of(shape, head.get(), top, frame, plan);
      double x = HeadCut.plane(head.get(), top).along(frame.origin(), frame.x());
      start = rises ? start : x;
      end = rises ? x : end;
    }
    return stock(plan, hand, frame, shape, start, end, line);
  }

  private static void refuseLevel(
      PartPlan plan, String pointer, Line line, boolean meetsAPart, String what) {
    if (meetsAPart || line.lies()) {
      throw Refusal.of(
          "conflict",
          pointer,
          meetsAPart
              ? what + " goes into another part and cannot be cut level too"
              : plan.name() + " lies, and no end of it is cut level",
          "leave it out");
    }
  }

  private boolean cutAt(PartPlan plan, Hand hand, Line line, boolean start) {
    if (line.butted().stream().anyMatch(b -> b.atStart() == start)) {
      return true;
    }
    return design.joints().stream()
        .map(j -> j.tenon())
        .filter(t -> t.part().equals(plan.name()))
        .anyMatch(t -> EndNames.names(t.end(), start, line.from(), line.to()) && handed(t, hand));
  }

  private static boolean handed(EndRef ref, Hand hand) {
    return ref.hand() == Hand.NONE || hand != Hand.NONE;
  }

  private Stock standing(PartPlan plan, Hand hand, StandingShape shape) {
    boolean lies = Math.abs(shape.frame().x().z()) < 0.5;
    Vec3 outside = outside(shape.middle(), shape.frame().x(), lies);
    Line line =
        new Line(
            shape.frame().place(new Vec3(shape.start(), 0, 0)),
            shape.frame().place(new Vec3(shape.end(), 0, 0)),
            lies,
            outside,
            List.of());
    Csg made =
        plan.common()
            .cuts()
            .foot()
            .map(foot -> FootCut.of(shape.shape(), foot, shape.frame(), plan))
            .orElse(shape.shape());
    Optional<Head> head = plan.common().cuts().head();
    if (head.isPresent()) {
      double top = Math.max(line.from().z(), line.to().z());
      made = HeadCut.of(made, head.get(), top, shape.frame(), plan);
    }
    return stock(plan, hand, shape.frame(), made, shape.start(), shape.end(), line);
  }

  private static Stock stock(
      PartPlan plan, Hand hand, Frame frame, Csg shape, double start, double end, Line line) {
    List<Convex> cells = Cells.of(shape);
    Stock stock =
        new Stock(
            plan,
            hand,
            frame,
            shape,
            cells,
            start,
            end,
            line.outside(),
            Vec3.RIGHT,
            line.lies(),
            line.butted());
    return stock.withGrain(grain(plan, stock));
  }

  private static Vec3 grain(PartPlan plan, Stock stock) {
    Grain grain = plan.common().grain();
    if (grain instanceof Grain.Along along) {
      return stock.frame().localDirection(vec(along.direction())).unit();
    } else if (grain instanceof Grain.AlongChord) {
      return stock.frame().localDirection(stock.endPoint(false).minus(stock.endPoint(true))).unit();
    }
    return Vec3.RIGHT;
  }

  static Vec3 vec(Spot s) {
    return new Vec3(s.x(), s.y(), s.z());
  }

  static double width(PartPlan.Section section) {
    return section instanceof PartPlan.Section.Rectangle r
        ? r.width()
        : ((PartPlan.Section.Round) section).diameter();
  }

  static double thickness(PartPlan.Section section) {
    return section instanceof PartPlan.Section.Rectangle r
        ? r.thickness()
        : ((PartPlan.Section.Round) section).diameter();
  }

  private PartPlan plan(String name) {
    return design.parts().stream()
        .filter(p -> p.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no part " + name));
  }

  private static String key(String part, Hand hand) {
    return part + hand.suffix();
  }
}
