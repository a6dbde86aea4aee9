package dryfit.shop;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.document.BoardsPlan;
import dryfit.document.BoardsPlan.Bad;
import dryfit.document.BoardsPlan.Board;
import dryfit.document.Hand;
import dryfit.document.PartPlan;
import dryfit.shop.BoardLayout.Laid;
import dryfit.shop.BoardLayout.Left;
import dryfit.shop.BoardLayout.Mirroring;
import dryfit.shop.BoardLayout.PairNote;
import dryfit.shop.BoardLayout.Placed;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.DoublePredicate;
import java.util.stream.IntStream;

/**
 * Looks for a good layout: a first one with long parts first, then many small changes of it. A
 * change is kept that uses no more wood than what was kept a while ago, so that the search can
 * climb out of a hollow (late acceptance, Burke and Bykov 2017), and the best of all is the answer.
 * The changes come from a fixed seed and are counted, not timed, so the same chair is always laid
 * out alike.
 */
final class Nesting {
  /** How many parts are laid in all: enough for a good layout, and soon done. */
  private static final int LAID = 20_000;

  /** A change is held against what was kept so many changes ago. */
  private static final int AGO = 40;

  private static final int SEED = 7;

  /** Each edge of a strip that is glued to another is planed straight, mm; common practice. */
  private static final double JOINTING = 3;

  /** One part, or the two of a pair, laid one after the other. */
  private record Unit(List<Item> items, String pair) {}

  /** A thing to be cut out, and the words of the faces that may look up: the drawn, the other. */
  private record Item(BoardShape shape, String timber, String up, String under) {}

  private record Stock(Board board, String name, double planed) {}

  /** Ways to lay a shape: over or not, end for end or not. */
  private record Way(boolean over, boolean endForEnd) {}

  private static final List<Way> WAYS =
      List.of(
          new Way(false, false), new Way(true, false), new Way(false, true), new Way(true, true));

  /**
   * A shape laid in one way, ready to be tried.
   *
   * @param reach its greatest x
   */
  private record Ready(
      BoardShape shape, double turn, double offGrain, double reach, Strip.Cover cover) {}

  private final BoardsPlan plan;
  private final List<Stock> stock = new ArrayList<>();
  private final List<Unit> units = new ArrayList<>();
  private final Map<List<Object>, List<Ready>> ready = new HashMap<>();

  /** What is used up of each board by the layout that is being made; made empty for the next. */
  private final List<Strip> strips = new ArrayList<>();

  /** From the board's corner to that of the strips: a saw cut may run into the margin. */
  private final double inset;

  Nesting(Chair chair, BoardsPlan plan) {
    this.plan = plan;
    this.inset = plan.margin() - plan.kerf() / 2;
    for (Board board : plan.have()) {
      double planed = board.planed() ? board.thickness() : ThicknessClass.planed(board.thickness());
      for (int i = 1; i <= board.count(); i++) {
        String name = board.count() == 1 ? board.name() : board.name() + " " + i;
        stock.add(new Stock(board, name, planed));
      }
    }
    stock.sort(Comparator.comparingDouble(Stock::planed));
    for (Stock s : stock) {
      strips.add(new Strip(s.board().length() - 2 * inset, s.board().width() - 2 * inset));
    }
    units(chair);
    // Long ones are the hardest to find room for.
    units.sort(Comparator.comparingDouble((Unit u) -> -length(u.items().get(0).shape())));
  }

  private static double length(BoardShape shape) {
    return shape.rough().getEnvelopeInternal().getWidth();
  }

  private void units(Chair chair) {
    Map<String, List<Item>> pairs = new HashMap<>();
    for (Part part : chair.parts()) {
      if (CutList.isPiece(part)) {
        continue;
      }
      Blank blank = Blank.of(part, plan.allow());
      String timber = part.plan().common().timber();
      if (!strips(blank, timber)) {
        Item item =
            new Item(
                BoardShape.of(blank),
                timber,
                MortiseSteps.word(part, blank.up()),
                MortiseSteps.word(part, blank.up().negated()));
        if (part.hand() == Hand.NONE) {
          units.add(new Unit(List.of(item), ""));
        } else if (pairs.containsKey(part.name())) {
          pairs.get(part.name()).add(item);
        } else {
          List<Item> both = new ArrayList<>(List.of(item));
          pairs.put(part.name(), both);
          units.add(new Unit(both, part.name()));
        }
      }
    }
  }

  /** A flat board wider than any of ours is glued up from strips; whether this one is. */
  private boolean strips(Blank blank, String timber) {
    double widest =
        stock.stream()
            .filter(s -> s.board().timber().equals(timber))
            .filter(s -> s.planed() >= blank.rough().thickness())
            .mapToDouble(s -> s.board().width() - 2 * plan.margin())
            .max()
            .orElse(0);
    boolean flat =
        blank.part().plan() instanceof PartPlan.Panel
            || blank.part().plan() instanceof PartPlan.Seat;
    if (!flat || widest <= JOINTING || blank.rough().width() <= widest) {
      return false;
    }
    int n = (int) Math.ceil(blank.rough().width() / (widest - JOINTING));
    for (int i = 1; i <= n; i++) {
      BoardShape strip =
          BoardShape.rectangle(
              blank.part().label() + ", strip " + i + " of " + n,
              blank.rough().length(),
              blank.rough().width() / n + JOINTING,
              blank.rough().thickness());
      units.add(new Unit(List.of(new Item(strip, timber, "", "")), ""));
    }
    return true;
  }

  // ---- the search ----

  BoardLayout best() {
    SplittableRandom random = new SplittableRandom(SEED);
    int n = units.size();
    int[] order = IntStream.range(0, n).toArray();
    int[] ways = new int[n];
    Laying best = lay(order, ways);
    double kept = best.cost();
    double[] ago = new double[AGO];
    Arrays.fill(ago, kept);
    int changes = n == 0 || stock.isEmpty() ? 0 : LAID / n;
    for (int change = 0; change < changes; change++) {
      int[] otherOrder = order.clone();
      int[] otherWays = ways.clone();
      int a = random.nextInt(n);
      if (random.nextBoolean()) {
        int b = random.nextInt(n);
        otherOrder[a] = order[b];
        otherOrder[b] = order[a];
      } else {
        otherWays[a] = random.nextInt(WAYS.size());
      }
      Laying other = lay(otherOrder, otherWays);
      double cost = other.cost();
      if (cost <= kept || cost <= ago[change % AGO]) {
        kept = cost;
        order = otherOrder;
        ways = otherWays;
      }
      ago[change % AGO] = kept;
      best = cost < best.cost() ? other : best;
    }
    return best.done();
  }

  /** A layout by chance: any order, any way. */
  BoardLayout random(SplittableRandom random) {
    int n = units.size();
    int[] order = IntStream.range(0, n).toArray();
    int[] ways = new int[n];
    for (int i = 0; i < n; i++) {
      int j = random.nextInt(i, n);
      int k = order[i];
      order[i] = order[j];
      order[j] = k;
      ways[i] = random.nextInt(WAYS.size());
    }
    return lay(order, ways).done();
  }

  // ---- one layout ----

  private Laying lay(int[] order, int[] ways) {
    Laying laying = new Laying();
    for (int u : order) {
      laying.lay(units.get(u), u, WAYS.get(ways[u]));
    }
    return laying;
  }

  /** A shape and where on a board it lies. */
  private record Put(Item item, Way way, Ready ready, Strip.Spot spot) {}

  private final class Laying {
    private final List<List<Put>> placed = new ArrayList<>();
    private final List<PairNote> pairs = new ArrayList<>();
    private final List<Left> left = new ArrayList<>();

    Laying() {
      for (int b = 0; b < stock.size(); b++) {
        Strip strip = strips.get(b);
        strip.clear();
        for (Bad bad : stock.get(b).board().bad()) {
          strip.take(
              bad.from().u() - inset,
              bad.from().v() - inset,
              bad.to().u() - inset,
              bad.to().v() - inset);
        }
        placed.add(new ArrayList<>());
      }
    }

    void lay(Unit unit, int number, Way way) {
      if (unit.items().size() == 2) {
        for (int b = 0; b < stock.size(); b++) {
          if (bothOn(b, unit, number, way)) {
            return;
          }
        }
        pairs.add(new PairNote(unit.pair(), Mirroring.APART));
      }
      for (int i = 0; i < unit.items().size(); i++) {
        if (!anywhere(unit.items().get(i), List.of(number, i), way)) {
          left.add(new Left(unit.items().get(i).shape().label(), why(unit.items().get(i))));
        }
      }
    }

    private boolean anywhere(Item item, List<Integer> number, Way way) {
      for (int b = 0; b < stock.size(); b++) {
        if (takes(b, item) && put(b, item, number, way, turn -> true)) {
          return true;
        }
      }
      return false;
    }

    private boolean bothOn(int b, Unit unit, int number, Way way) {
      Item first = unit.items().get(0);
      Item second = unit.items().get(1);
      if (!takes(b, first)) {
        return false;
      }
      boolean sloping = stock.get(b).board().slope() != 0;
      String up = way.over() ? first.under() : first.up();
      // Mirrored grain along the board: the same face up. Sloping: the other one, end for end.
      boolean sameSide = second.up().equals(up);
      Way other = new Way(sloping == sameSide, way.endForEnd() != sloping);
      Set<Double> tried = new HashSet<>();
      while (put(b, first, List.of(number, 0), way, turn -> !tried.contains(turn))) {
        double turn = placed.get(b).get(placed.get(b).size() - 1).ready().turn();
        // A mirrored outline turns the mirrored way; one that is turned over is the same outline.
        double twin = sloping ? turn : -turn;
        if (put(b, second, List.of(number, 1), other, t -> Math.abs(t - twin) < SAME_TURN)) {
          pairs.add(
              new PairNote(unit.pair(), sloping ? Mirroring.TURNED_OVER : Mirroring.SAME_FACE_UP));
          return true;
        }
        takeBack(b);
        tried.add(turn);
      }
      return false;
    }

    private boolean takes(int b, Item item) {
      return stock.get(b).board().timber().equals(item.timber())
          && stock.get(b).planed() >= item.shape().thickness() - SAME;
    }

    private boolean put(
        int b, Item item, List<Integer> number, Way way, DoublePredicate turnIsRight) {
      Ready best = null;
      Strip.Spot spot = null;
      for (Ready r : ready(item, number, way, stock.get(b).board().slope())) {
        Strip.Spot found = turnIsRight.test(r.turn()) ? strips.get(b).room(r.cover()) : null;
        if (found != null && (spot == null || end(r, found) < end(best, spot))) {
          best = r;
          spot = found;
        }
      }
      if (spot == null) {
        return false;
      }
      strips.get(b).take(best.cover(), spot);
      placed.get(b).add(new Put(item, way, best, spot));
      return true;
    }

    private double end(Ready r, Strip.Spot spot) {
      return spot.column() + r.cover().low().length;
    }

    /** The last part of a board is taken off it again. */
    private void takeBack(int b) {
      placed.get(b).remove(placed.get(b).size() - 1);
      strips.get(b).takeBack();
    }

    private Left.Why why(Item item) {
      List<Stock> timber =
          stock.stream().filter(s -> s.board().timber().equals(item.timber())).toList();
      List<Integer> thick =
          IntStream.range(0, stock.size()).filter(b -> takes(b, item)).boxed().toList();
      if (timber.isEmpty()) {
        return Left.Why.NO_SUCH_TIMBER;
      } else if (thick.isEmpty()) {
        return Left.Why.TOO_THICK;
      }
      var size = item.shape().rough().getEnvelopeInternal();
      boolean small =
          thick.stream()
              .map(b -> stock.get(b).board())
              .anyMatch(
                  b ->
                      size.getWidth() <= b.length() - 2 * plan.margin()
                          && size.getHeight() <= b.width() - 2 * plan.margin());
      return small ? Left.Why.NO_ROOM : Left.Why.TOO_LARGE;
    }

    /** Wood used up; a part left over costs more than any board. */
    double cost() {
      double most = 0;
      double sum = 0;
      for (int b = 0; b < stock.size(); b++) {
        Board board = stock.get(b).board();
        most += board.length() * board.width();
        sum += used(b) * board.width();
      }
      long apart = pairs.stream().filter(p -> p.mirroring() == Mirroring.APART).count();
      return sum + left.size() * most + apart * most / 10;
    }

    private double used(int b) {
      double end = 0;
      for (Put put : placed.get(b)) {
        end = Math.max(end, x(put) + put.ready().reach());
      }
      return end > 0 ? Math.min(stock.get(b).board().length(), end + plan.kerf()) : 0;
    }

    /** How far a shape is moved along the board from where it was made ready. */
    private double x(Put put) {
      return inset + put.spot().column() * Strip.WIDE - put.ready().cover().x();
    }

    private Placed placed(Put put) {
      Ready ready = put.ready();
      BoardShape there = ready.shape().moved(x(put), inset + put.spot().y() - ready.cover().y());
      return new Placed(
          there.label(),
          BoardShape.points(there.net()),
          BoardShape.points(there.rough()),
          put.way().over() ? put.item().under() : put.item().up(),
          put.way().endForEnd(),
          ready.turn(),
          ready.offGrain());
    }

    BoardLayout done() {
      List<Laid> boards = new ArrayList<>();
      for (int b = 0; b < stock.size(); b++) {
        Stock s = stock.get(b);
        List<Placed> parts = placed.get(b).stream().map(this::placed).toList();
        boards.add(new Laid(s.board(), s.name(), s.planed(), parts, used(b)));
      }
      pairs.sort(Comparator.comparing(PairNote::name));
      return new BoardLayout(boards, pairs, left);
    }
  }

  /** A blank thicker than a board by less than this is no thicker, mm. */
  private static final double SAME = 0.01;

  /** Turns of a pair that differ by less than this differ by rounding only, rad. */
  private static final double SAME_TURN = 1e-6;

  /**
   * A shape laid in a way on a board of some slope: as it is drawn if its grain then is near enough
   * to the board's, and turned so far that it is.
   */
  private List<Ready> ready(Item item, List<Integer> number, Way way, double slope) {
    return ready.computeIfAbsent(
        List.of(number, way, slope),
        key -> {
          BoardShape laid = way.over() ? item.shape().turnedOver() : item.shape();
          laid = way.endForEnd() ? laid.turned(Math.PI) : laid;
          List<Double> turns = new ArrayList<>();
          double off = laid.grain() - slope;
          if (Math.abs(off) <= plan.grainWithin()) {
            turns.add(0.0);
          } else {
            turns.add(-off + Math.copySign(plan.grainWithin(), off));
          }
          if (off != 0) {
            turns.add(-off);
          }
          List<Ready> out = new ArrayList<>();
          for (double turn : turns) {
            BoardShape turned = turn == 0 ? laid : laid.turned(turn);
            out.add(
                new Ready(
                    turned,
                    turn,
                    Math.abs(turned.grain() - slope),
                    turned.rough().getEnvelopeInternal().getMaxX(),
                    Strip.Cover.of(BoardShape.points(turned.grown(plan.kerf() / 2)))));
          }
          return out;
        });
  }
}
