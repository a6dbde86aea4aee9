package dryfit.shop;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.document.BoardsPlan;
import dryfit.document.BoardsPlan.Bad;
import dryfit.document.BoardsPlan.Board;
import dryfit.document.Hand;
import dryfit.document.PartPlan;
import dryfit.geometry.Vec2;
import dryfit.shop.BoardLayout.Laid;
import dryfit.shop.BoardLayout.Left;
import dryfit.shop.BoardLayout.Mirroring;
import dryfit.shop.BoardLayout.PairNote;
import dryfit.shop.BoardLayout.Placed;
import java.util.ArrayList;
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
 * Looks for a good layout: a first one with long parts first, then many small changes of it, of
 * which those that use less wood are kept. The changes come from a fixed seed and are counted, not
 * timed, so the same chair is always laid out alike.
 */
final class Nesting {
  private static final int CHANGES = 150;
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

  /** A shape laid in one way, ready to be tried. */
  private record Ready(BoardShape shape, double turn, double offGrain, Strip.Cover cover) {}

  private final BoardsPlan plan;
  private final List<Stock> stock = new ArrayList<>();
  private final List<Unit> units = new ArrayList<>();
  private final Map<List<Object>, List<Ready>> ready = new HashMap<>();

  Nesting(Chair chair, BoardsPlan plan) {
    this.plan = plan;
    for (Board board : plan.have()) {
      double planed = board.planed() ? board.thickness() : ThicknessClass.planed(board.thickness());
      for (int i = 1; i <= board.count(); i++) {
        String name = board.count() == 1 ? board.name() : board.name() + " " + i;
        stock.add(new Stock(board, name, planed));
      }
    }
    stock.sort(Comparator.comparingDouble(Stock::planed));
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
    BoardLayout best = lay(order, ways);
    for (int change = 0; change < CHANGES && n > 0 && !stock.isEmpty(); change++) {
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
      BoardLayout other = lay(otherOrder, otherWays);
      if (cost(other) <= cost(best)) {
        best = other;
        order = otherOrder;
        ways = otherWays;
      }
    }
    return best;
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
    return lay(order, ways);
  }

  /** Wood used up; a part left over costs more than any board. */
  private static double cost(BoardLayout layout) {
    double most =
        layout.boards().stream().mapToDouble(b -> b.board().length() * b.board().width()).sum();
    long apart = layout.pairs().stream().filter(p -> p.mirroring() == Mirroring.APART).count();
    return layout.usedArea() + layout.left().size() * most + apart * most / 10;
  }

  // ---- one layout ----

  private BoardLayout lay(int[] order, int[] ways) {
    Laying laying = new Laying();
    for (int u : order) {
      laying.lay(units.get(u), u, WAYS.get(ways[u]));
    }
    return laying.done();
  }

  private final class Laying {
    private final List<Strip> strips = new ArrayList<>();
    private final List<List<Placed>> placed = new ArrayList<>();
    private final double[] used = new double[stock.size()];
    private final List<PairNote> pairs = new ArrayList<>();
    private final List<Left> left = new ArrayList<>();

    /** From the board's corner to that of the strips: a saw cut may run into the margin. */
    private final double inset = plan.margin() - plan.kerf() / 2;

    Laying() {
      for (Stock s : stock) {
        Strip strip = new Strip(s.board().length() - 2 * inset, s.board().width() - 2 * inset);
        for (Bad bad : s.board().bad()) {
          strip.take(
              bad.from().u() - inset,
              bad.from().v() - inset,
              bad.to().u() - inset,
              bad.to().v() - inset);
        }
        strips.add(strip);
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
        double turn = placed.get(b).get(placed.get(b).size() - 1).turn();
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
      BoardShape there =
          best.shape()
              .moved(
                  inset + spot.column() * Strip.WIDE - best.cover().x(),
                  inset + spot.y() - best.cover().y());
      placed
          .get(b)
          .add(
              new Placed(
                  there.label(),
                  BoardShape.points(there.net()),
                  BoardShape.points(there.rough()),
                  way.over() ? item.under() : item.up(),
                  way.endForEnd(),
                  best.turn(),
                  best.offGrain()));
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

    BoardLayout done() {
      List<Laid> boards = new ArrayList<>();
      for (int b = 0; b < stock.size(); b++) {
        Stock s = stock.get(b);
        double end =
            placed.get(b).stream()
                .flatMap(p -> p.rough().stream())
                .mapToDouble(Vec2::x)
                .max()
                .orElse(0);
        used[b] = end > 0 ? Math.min(s.board().length(), end + plan.kerf()) : 0;
        boards.add(new Laid(s.board(), s.name(), s.planed(), placed.get(b), used[b]));
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
                    Strip.Cover.of(BoardShape.points(turned.grown(plan.kerf() / 2)))));
          }
          return out;
        });
  }
}
