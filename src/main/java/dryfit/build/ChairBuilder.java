package dryfit.build;

import dryfit.build.JointInstances.Instance;
import dryfit.build.JointMaker.Made;
import dryfit.document.Design;
import dryfit.document.Hand;
import dryfit.document.JointPlan;
import dryfit.document.JointPlan.Shoulder;
import dryfit.document.PartCuts;
import dryfit.document.PartPlan;
import dryfit.document.PartPlan.PartRef;
import dryfit.document.Problem;
import dryfit.document.Quantity;
import dryfit.document.Reading;
import dryfit.geometry.Plane;
import dryfit.measure.Length;
import dryfit.solid.AllCores;
import dryfit.solid.Cells;
import dryfit.solid.Convex;
import dryfit.solid.Csg;
import dryfit.solid.Kernel;
import dryfit.solid.KernelFailure;
import dryfit.solid.Solid;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Builds a chair from its design.
 *
 * <ol>
 *   <li>Every part is placed, its ends left long where they meet another part.
 *   <li>Every joint is worked out in chair space: mouth, entry, tenon, mortise.
 *   <li>Tips that meet are mitred.
 *   <li>Parts are cut to their shoulders and get their tenons.
 *   <li>Panels are fitted into the openings that are now known.
 *   <li>Mortises and grooves are cut, each part in one go by the kernel.
 * </ol>
 */
public final class ChairBuilder {
  private final Design design;
  private final Shelf shelf;
  private final Joinery joinery;
  private final List<Problem> problems = new ArrayList<>();
  private final StockMaker stocks;

  /** Bodies before their edges are treated, of the parts that have any treated. */
  private final Map<String, Csg> sawn = new LinkedHashMap<>();

  private ChairBuilder(Design design, Shelf shelf) {
    this.design = design;
    this.shelf = shelf;
    this.joinery = new Joinery(shelf, design.joints());
    this.stocks = new StockMaker(design, shelf);
  }

  /**
   * The chair, or everything that keeps it from being built.
   *
   * @throws KernelFailure if a solid could not be made; the message names the part and, where that
   *     can be known, the joints
   */
  public static Reading<Chair> build(Design design, Kernel kernel) {
    return build(design, new Shelf(kernel));
  }

  /**
   * The same, taking from the shelf what was made before and leaving there what is made now. The
   * chair does not depend on what the shelf holds.
   *
   * @throws KernelFailure as above
   */
  public static Reading<Chair> build(Design design, Shelf shelf) {
    Reading<Chair> chair = new ChairBuilder(design, shelf).build();
    shelf.swept();
    return chair;
  }

  private Reading<Chair> build() {
    stocks.placeAll().forEach(this::refuse);
    Map<String, Stock> placed = new LinkedHashMap<>();
    stocks.all().forEach(s -> placed.put(key(s.name(), s.hand()), s));
    Map<String, Integer> indices = indices();

    Pieces pieces = new Pieces(indices.size());
    List<Made> made = joints(indices, pieces);
    List<Made> joints = new ArrayList<>();
    Set<String> refused = new HashSet<>();
    design.joints().forEach(plan -> refused.add(plan.name()));
    made.forEach(m -> refused.remove(m.joint().plan().name()));
    attempt(() -> joints.addAll(Mitres.cut(made, refused)));

    Map<String, Csg> bodies = bodies(placed, indices, joints);
    List<String> order = new ArrayList<>(indices.keySet());
    Map<String, List<Csg>> mortises = mortises(joints, order, placed);
    Map<String, List<Csg>> cuts = new LinkedHashMap<>();
    List<Joint> all = new ArrayList<>(joints.stream().map(Made::joint).toList());
    if (problems.isEmpty()) {
      beginOthers(placed, bodies, mortises);
      fillPanels(placed, bodies, cuts, indices, all);
      drivePins(joints, placed, bodies, cuts);
    }
    if (problems.isEmpty()) {
      cutNotches(placed, bodies, cuts);
    }
    if (!problems.isEmpty()) {
      joinery.awaitBegun();
      return new Reading.Refused<>(problems);
    }
    mortises.forEach((key, of) -> cuts.computeIfAbsent(key, k -> new ArrayList<>()).addAll(of));
    for (Stock piece : pieces.all()) {
      String key = key(piece.name(), piece.hand());
      order.add(key);
      placed.put(key, piece);
      bodies.put(key, shelf.canonical(piece.shape()));
    }
    List<Part> parts = parts(order, placed, bodies, cuts);
    return problems.isEmpty()
        ? new Reading.Accepted<>(new Chair(design, parts, unambiguous(all)))
        : new Reading.Refused<>(problems);
  }

  /** What became of a joint, made without a look at the others, or why there is none. */
  private record Alone(List<Made> made, boolean bringsPieces, Optional<Refusal> refusal) {}

  /**
   * Most joints need only their own parts; those that bring pieces are made in turn, to number
   * them.
   */
  private List<Made> joints(Map<String, Integer> indices, Pieces pieces) {
    JointInstances instances = new JointInstances(design, stocks);
    List<JointPlan> plans = design.joints().stream().filter(instances::canBeMade).toList();
    List<Alone> alone = AllCores.map(plans, plan -> alone(plan, instances, indices));
    List<Made> made = new ArrayList<>();
    for (int i = 0; i < plans.size(); i++) {
      Alone each = alone.get(i);
      JointPlan plan = plans.get(i);
      if (each.refusal().isPresent()) {
        refuse(each.refusal().get());
      } else if (each.bringsPieces()) {
        made.addAll(made(plan, instances, indices, pieces));
      } else {
        made.addAll(each.made());
      }
    }
    return made;
  }

  private Alone alone(JointPlan plan, JointInstances instances, Map<String, Integer> indices) {
    Pieces own = new Pieces(indices.size());
    try {
      List<Made> made = made(plan, instances, indices, own);
      return new Alone(made, !own.all().isEmpty(), Optional.empty());
    } catch (Refusal refusal) {
      return new Alone(List.of(), false, Optional.of(refusal));
    }
  }

  private List<Made> made(
      JointPlan plan, JointInstances instances, Map<String, Integer> indices, Pieces pieces) {
    List<Made> made = new ArrayList<>();
    for (Instance i : instances.of(plan)) {
      made.addAll(
          JointMaker.make(
              i,
              jointLabel(i),
              indices.get(key(i.tenoned().name(), i.tenoned().hand())),
              indices.get(key(i.mortised().name(), i.mortised().hand())),
              pieces));
    }
    return made;
  }

  private void attempt(Runnable step) {
    try {
      step.run();
    } catch (Refusal refusal) {
      refuse(refusal);
    }
  }

  private void refuse(Refusal refusal) {
    Problem p = refusal.problem();
    Length.Unit unit = design.unit().printed();
    Problem told =
        new Problem(
            p.code(),
            design.file(),
            p.line(),
            p.pointer(),
            Refusal.told(p.found(), unit),
            Refusal.told(p.allowed(), unit),
            p.nearest(),
            Refusal.told(p.message(), unit)
                + (p.code().equals("mortise-misses") ? belowZero() : ""));
    // What both hands share is told once.
    if (!problems.contains(told)) {
      problems.add(told);
    }
  }

  /** What misses its mark may only follow from a size that has slipped below zero. */
  private String belowZero() {
    return design.dimensions().stream()
        .filter(d -> d.value().kind() == Quantity.Kind.LENGTH && d.value().value() < 0)
        .findFirst()
        .map(
            d ->
                " See "
                    + d.pointer()
                    + " first: "
                    + d.name()
                    + " comes to "
                    + Length.print(d.value().value(), design.unit().printed(), 64)
                    + ".")
        .orElse("");
  }

  /** Every part's place in the chair: document order, right before left. */
  private Map<String, Integer> indices() {
    Map<String, Integer> out = new LinkedHashMap<>();
    for (PartPlan plan : design.parts()) {
      for (Hand hand : plan.common().pair() ? List.of(Hand.RIGHT, Hand.LEFT) : List.of(Hand.NONE)) {
        out.put(key(plan.name(), hand), out.size());
      }
    }
    return out;
  }

  // ---- bodies ----

  /** A body, the same before its edges are treated, or why there is none. */
  private record Tried(String key, Csg body, Csg sawn, Refusal refusal) {}

  private Map<String, Csg> bodies(
      Map<String, Stock> placed, Map<String, Integer> indices, List<Made> joints) {
    List<Tried> tried =
        AllCores.map(
            List.copyOf(placed.keySet()),
            key -> {
              try {
                Stock stock = placed.get(key);
                int index = indices.get(key);
                Csg body = shelf.canonical(body(stock.shape(), stock, index, joints));
                NothingLeft.refuseBody(
                    stock.name(),
                    stock.plan().common().pointer(),
                    joinery.cells(body, stock.hand()));
                if (stock.plan().common().edges().isEmpty()) {
                  return new Tried(key, body, body, null);
                }
                Csg before = shelf.canonical(body(stock.sawn(), stock, index, joints));
                return new Tried(key, body, before, null);
              } catch (Refusal refusal) {
                return new Tried(key, null, null, refusal);
              }
            });
    Map<String, Csg> bodies = new LinkedHashMap<>();
    for (Tried t : tried) {
      if (t.refusal() == null) {
        bodies.put(t.key(), t.body());
        if (!placed.get(t.key()).plan().common().edges().isEmpty()) {
          sawn.put(t.key(), t.sawn());
        }
      } else {
        refuse(t.refusal());
      }
    }
    return bodies;
  }

  /** A part's stock or, before its edges are treated, its sawn shape, with its ends and tenons. */
  private Csg body(Csg from, Stock stock, int index, List<Made> joints) {
    Csg shape = from;
    String origin = stock.plan().common().pointer();
    List<Csg> tenons = new ArrayList<>();
    boolean startDone = false;
    boolean endDone = false;
    for (Made m : joints) {
      if (m.joint().tenoned() != index) {
        continue;
      }
      boolean atEnd = m.joint().plan().tenon().end() != JointPlan.End.MIDDLE;
      startDone |= atEnd && m.of().atStart();
      endDone |= atEnd && !m.of().atStart();
      for (Plane plane : m.trim()) {
        shape = trimmed(shape, stock, m.of().atStart(), plane, origin);
      }
      if (m.joint().plan().shoulder() == Shoulder.SCRIBED) {
        shape = scribed(shape, stock, m, origin);
      }
      String pointer = m.joint().plan().pointer();
      shape =
          shape.minus(
              m.cutAway().stream()
                  .<Csg>map(c -> c.localTo(stock.frame()).asLeaf(pointer))
                  .toList());
      m.bodyTenon().forEach(c -> tenons.add(c.localTo(stock.frame()).asLeaf(pointer)));
    }
    for (Stock.ButtedEnd butt : stock.butted()) {
      if (butt.atStart() ? !startDone : !endDone) {
        shape = butted(shape, stock, butt, origin);
      }
    }
    return shape.plus(tenons);
  }

  private Csg butted(Csg shape, Stock stock, Stock.ButtedEnd butt, String origin) {
    Stock other = stocks.stock(butt.part(), butt.hand());
    return Meeting.of(stock, butt.atStart(), other)
        .map(m -> m.landing(other).flipped())
        .map(plane -> trimmed(shape, stock, butt.atStart(), plane, origin))
        .orElse(shape);
  }

  /** An end cut to a plane of chair space. */
  private static Csg trimmed(Csg shape, Stock stock, boolean atStart, Plane plane, String origin) {
    return Shapes.trimmed(
        shape, stock.frame().local(plane), p -> stock.isNearEnd(atStart, p), origin);
  }

  /** Coped: what is inside the other part goes, after the end is cut off in the middle of it. */
  private static Csg scribed(Csg shape, Stock stock, Made m, String origin) {
    Stock other = m.of().mortised();
    Joint j = m.joint();
    double out =
        CellRay.first(other.placedCells(), j.at().minus(j.entry()), j.entry())
            .map(CellRay.Entry::out)
            .orElse(1.0);
    Plane middle = j.mouth().moved(-out / 2 * -j.entry().dot(j.mouth().normal()));
    boolean outward = middle.normal().dot(stock.outward(j.atStart())) > 0;
    Csg shorter = trimmed(shape, stock, j.atStart(), outward ? middle : middle.flipped(), origin);
    return shorter.minus(
        List.of(Shapes.localTo(Shapes.placed(other.shape(), other.frame()), stock.frame())));
  }

  /** What is cut for the tenons of others, by the part that it is cut from, in its own frame. */
  private static Map<String, List<Csg>> mortises(
      List<Made> joints, List<String> order, Map<String, Stock> placed) {
    Map<String, List<Csg>> mortises = new LinkedHashMap<>();
    for (Made m : joints) {
      String into = order.get(m.joint().mortised());
      for (Convex tool : m.joint().mortise()) {
        mortises
            .computeIfAbsent(into, k -> new ArrayList<>())
            .add(tool.localTo(placed.get(into).frame()).asLeaf(m.joint().plan().pointer()));
      }
    }
    return mortises;
  }

  // ---- panels ----

  /** While panels are fitted, the solids of parts that frame none can be made. */
  private void beginOthers(
      Map<String, Stock> placed, Map<String, Csg> bodies, Map<String, List<Csg>> mortises) {
    Set<String> frame = new HashSet<>();
    for (PartPlan plan : design.parts()) {
      if (plan instanceof PartPlan.Panel panel && StockMaker.isLate(panel)) {
        around(panel).forEach(ref -> frame.add(ref.part()));
      }
    }
    if (frame.isEmpty()) {
      return;
    }
    bodies.forEach(
        (key, body) -> {
          Stock stock = placed.get(key);
          List<Csg> cuts = mortises.getOrDefault(key, List.of());
          if (!frame.contains(stock.name()) && stock.hand() != Hand.LEFT) {
            joinery.begin(() -> work(stock, body, cuts));
          }
        });
  }

  private static List<PartRef> around(PartPlan.Panel panel) {
    return panel.shape() instanceof PartPlan.PanelShape.DropsInto loose
        ? loose.parts()
        : ((PartPlan.PanelShape.Fills) panel.shape()).parts();
  }

  private void fillPanels(
      Map<String, Stock> placed,
      Map<String, Csg> bodies,
      Map<String, List<Csg>> cuts,
      Map<String, Integer> indices,
      List<Joint> joints) {
    for (PartPlan plan : design.parts()) {
      if (!(plan instanceof PartPlan.Panel panel) || !StockMaker.isLate(panel)) {
        continue;
      }
      for (Hand hand : plan.common().pair() ? List.of(Hand.RIGHT, Hand.LEFT) : List.of(Hand.NONE)) {
        attempt(() -> fillPanel(panel, hand, placed, bodies, cuts, indices, joints));
      }
    }
  }

  private void fillPanel(
      PartPlan.Panel panel,
      Hand hand,
      Map<String, Stock> placed,
      Map<String, Csg> bodies,
      Map<String, List<Csg>> cuts,
      Map<String, Integer> indices,
      List<Joint> joints) {
    List<PanelFiller.Around> around = new ArrayList<>();
    boolean loose = panel.shape() instanceof PartPlan.PanelShape.DropsInto;
    for (PartRef ref : around(panel)) {
      Hand of = ref.hand();
      if (of == Hand.NONE && placed.get(key(ref.part(), Hand.NONE)) == null) {
        of = hand == Hand.NONE ? Hand.RIGHT : hand;
      } else if (of != Hand.NONE && hand == Hand.LEFT) {
        of = of.other();
      }
      Stock stock = placed.get(key(ref.part(), of));
      around.add(
          new PanelFiller.Around(
              stock,
              joinery.cells(bodies.get(key(ref.part(), of)), stock.hand()).stream()
                  .map(c -> c.placed(stock.frame()))
                  .toList()));
    }
    if (loose) {
      Stock stock = DropIn.of(panel, hand, around);
      placed.put(key(panel.name(), hand), stock);
      bodies.put(key(panel.name(), hand), shelf.canonical(stock.shape()));
      return;
    }
    PanelFiller.Filled filled = PanelFiller.fill(panel, hand, around, shelf);
    placed.put(key(panel.name(), hand), filled.stock());
    bodies.put(key(panel.name(), hand), shelf.canonical(filled.stock().shape()));
    List<Convex> groove = Cells.of(filled.groove());
    int own = indices.get(key(panel.name(), hand));
    List<Optional<Joint>> grooves =
        AllCores.map(
            around,
            a ->
                GrooveMaker.of(
                    panel,
                    filled.stock(),
                    groove,
                    a,
                    design.fit(),
                    own,
                    indices.get(key(a.stock().name(), a.stock().hand()))));
    for (Optional<Joint> each : grooves) {
      each.ifPresent(joint -> joints.add(joint.labelled(handed(joint))));
    }
    for (PanelFiller.Around a : around) {
      cuts.computeIfAbsent(key(a.stock().name(), a.stock().hand()), k -> new ArrayList<>())
          .add(Shapes.localTo(filled.groove(), a.stock().frame()));
    }
  }

  // ---- pins and notches ----

  private void drivePins(
      List<Made> joints,
      Map<String, Stock> placed,
      Map<String, Csg> bodies,
      Map<String, List<Csg>> cuts) {
    for (PartPlan plan : design.parts()) {
      if (plan instanceof PartPlan.Pin pin) {
        attempt(
            () -> {
              for (PinMaker.Driven driven : PinMaker.of(pin, joints)) {
                String own = key(pin.name(), driven.stock().hand());
                placed.put(own, driven.stock());
                bodies.put(own, shelf.canonical(driven.stock().shape()));
                cut(cuts, driven.joint().of().mortised(), driven.holeInMortised());
                cut(cuts, driven.joint().of().tenoned(), driven.holeInTenoned());
              }
            });
      }
    }
  }

  private static void cut(Map<String, List<Csg>> cuts, Stock from, Csg hole) {
    cuts.computeIfAbsent(key(from.name(), from.hand()), k -> new ArrayList<>())
        .add(Shapes.localTo(hole, from.frame()));
  }

  private void cutNotches(
      Map<String, Stock> placed, Map<String, Csg> bodies, Map<String, List<Csg>> cuts) {
    Notches notches = new Notches(placed, bodies);
    for (Map.Entry<String, Stock> each : placed.entrySet()) {
      attempt(
          () -> {
            List<Csg> tools = notches.of(each.getValue());
            if (!tools.isEmpty()) {
              cuts.computeIfAbsent(each.getKey(), k -> new ArrayList<>()).addAll(tools);
            }
          });
    }
  }

  // ---- finished parts ----

  private List<Part> parts(
      List<String> order,
      Map<String, Stock> placed,
      Map<String, Csg> bodies,
      Map<String, List<Csg>> cuts) {
    List<Joinery.Work> work =
        AllCores.map(
            order,
            key -> work(placed.get(key), bodies.get(key), cuts.getOrDefault(key, List.of())));
    List<Solid> solids = joinery.solids(work);
    for (int i = 0; i < work.size(); i++) {
      Joinery.Work w = work.get(i);
      Solid solid = solids.get(i);
      Stock stock = placed.get(order.get(i));
      attempt(
          () ->
              NothingLeft.refuse(
                  stock.name(),
                  stock.plan().common().pointer(),
                  joinery.cells(w.body(), w.hand()),
                  w.cuts(),
                  solid));
    }
    if (!problems.isEmpty()) {
      return List.of();
    }
    return IntStream.range(0, order.size())
        .parallel()
        .mapToObj(i -> part(order.get(i), placed.get(order.get(i)), work.get(i), solids.get(i)))
        .toList();
  }

  private Joinery.Work work(Stock stock, Csg body, List<Csg> cuts) {
    return new Joinery.Work(
        label(stock), stock.hand(), body, cuts.stream().map(shelf::canonical).toList());
  }

  private Part part(String key, Stock stock, Joinery.Work work, Solid solid) {
    List<Convex> bodyCells = joinery.cells(work.body(), stock.hand());
    List<Convex> sawnCells =
        sawn.containsKey(key) ? joinery.cells(sawn.get(key), stock.hand()) : bodyCells;
    PartCuts.Oversize oversize = stock.plan().common().cuts().oversize();
    return new Part(
        stock.plan(),
        stock.hand(),
        work.label(),
        stock.frame(),
        work.body(),
        bodyCells,
        sawnCells,
        solid,
        stock
            .bent()
            .map(e -> e.blank(sawnCells, oversize))
            .orElseGet(() -> Part.Blank.around(sawnCells, oversize)),
        stock.grain(),
        stock.bent().map(BentEnds::bend));
  }

  private String label(Stock stock) {
    return stock.name() + handWord(stock.hand(), " ");
  }

  private String handed(Joint joint) {
    return joint.label() + handWord(joint.hand(), ", ");
  }

  private String jointLabel(Instance i) {
    return i.plan().name() + handWord(i.hand(), ", ");
  }

  private String handWord(Hand hand, String before) {
    if (hand == Hand.NONE) {
      return "";
    }
    boolean seated = design.labels() == Design.Labels.AS_SEATED;
    return before + (hand == Hand.RIGHT != seated ? "right" : "left");
  }

  /** Joints that would have the same name say which end of the part they are at. */
  private static List<Joint> unambiguous(List<Joint> joints) {
    return IntStream.range(0, joints.size())
        .mapToObj(
            i -> {
              Joint j = joints.get(i);
              long same = joints.stream().filter(o -> o.label().equals(j.label())).count();
              return same == 1 ? j : j.labelled(j.label() + (j.atStart() ? ", start" : ", end"));
            })
        .toList();
  }

  private static String key(String part, Hand hand) {
    return part + hand.suffix();
  }
}
