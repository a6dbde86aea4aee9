package dryfit.fit.order;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.PartPlan;
import dryfit.geometry.Box;
import dryfit.geometry.Vec3;
import dryfit.solid.Cells;
import dryfit.solid.Convex;
import dryfit.solid.Distance;
import dryfit.solid.Overlap;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/** The parts of a chair as solids that can be moved, where they stand in the finished chair. */
final class Pieces {
  /**
   * Parts nearer than this are taken to hold each other, as a panel and its grooves do, mm; common
   * practice, no source. It only decides which orders are told first.
   */
  private static final double HOLDS = 1;

  private final Chair chair;
  private final List<Joint> holding;
  private final List<List<Convex>> cells;
  private final List<Box> bounds;
  private final BitSet[] beside;
  private final Groups groups;

  private Pieces(
      Chair chair, List<Joint> holding, List<List<Convex>> cells, BitSet[] beside, Groups groups) {
    this.chair = chair;
    this.holding = holding;
    this.cells = cells;
    this.bounds = cells.stream().map(Pieces::around).toList();
    this.groups = groups;
    this.beside = beside.length > 0 ? beside : besides();
  }

  static Pieces of(Chair chair) {
    List<List<Convex>> cells =
        new ArrayList<>(chair.parts().stream().map(Part::placedCells).toList());
    for (Joint j : chair.holding()) {
      // A tenon meant to be pressed in makes its own room, and so does a pin.
      makeRoom(cells, j.mortised(), j.tenon());
      if (j.plan().wedges().isPresent()) {
        // It is drawn with its wedges driven; until then its strips are straight and go through.
        // For the order it is the same whether they close up or the mortise is as wide all the way.
        makeRoom(cells, j.mortised(), drawnOut(j));
      }
      for (Part part : chair.parts()) {
        if (part.plan() instanceof PartPlan.Pin pin && pin.place().joint().equals(j.name())) {
          makeRoom(cells, j.mortised(), part.placedCells());
          makeRoom(cells, j.tenoned(), part.placedCells());
        }
      }
    }
    return new Pieces(chair, chair.holding(), List.copyOf(cells), new BitSet[0], new Groups(chair));
  }

  /** What the wood of a tenon sweeps on its way out. */
  private static List<Convex> drawnOut(Joint j) {
    Vec3 out = j.entry().times(-j.length());
    List<Convex> swept = new ArrayList<>();
    for (Convex cell : j.tenon()) {
      List<Vec3> corners = new ArrayList<>(cell.points());
      cell.points().forEach(p -> corners.add(p.plus(out)));
      swept.add(Convex.hull(corners));
    }
    return swept;
  }

  private static void makeRoom(List<List<Convex>> cells, int part, List<Convex> pressed) {
    if (Overlap.exists(pressed, cells.get(part))) {
      cells.set(part, Cells.minus(cells.get(part), pressed));
    }
  }

  /** The same chair with other cells for one part, which still holds what it holds. */
  Pieces with(int part, List<Convex> other) {
    List<List<Convex>> changed = new ArrayList<>(cells);
    changed.set(part, List.copyOf(other));
    return new Pieces(chair, holding, List.copyOf(changed), beside, groups);
  }

  /** The same chair with another joint in the place of one; the cells stay. */
  Pieces with(Joint one, Joint other) {
    List<Joint> changed = new ArrayList<>(holding);
    changed.replaceAll(j -> j.equals(one) ? other : j);
    return new Pieces(chair, List.copyOf(changed), cells, beside, groups);
  }

  /** The joints that hold these pieces together. */
  List<Joint> holding() {
    return holding;
  }

  Chair chair() {
    return chair;
  }

  Groups names() {
    return groups;
  }

  int count() {
    return cells.size();
  }

  List<Convex> cells(int part) {
    return cells.get(part);
  }

  /** The cells of all the parts of a group. */
  List<Convex> cells(BitSet group) {
    return group.stream().mapToObj(cells::get).flatMap(List::stream).toList();
  }

  Box bounds(int part) {
    return bounds.get(part);
  }

  /** The box around a group of at least one part. */
  Box bounds(BitSet group) {
    return group.stream().mapToObj(bounds::get).reduce(Box::with).orElseThrow();
  }

  /** The parts that hold a part: jointed to it or next to it. */
  BitSet beside(int part) {
    return beside[part];
  }

  /** Into how many pieces a group falls if it is held by nothing else. */
  int loose(BitSet group) {
    BitSet rest = (BitSet) group.clone();
    int pieces = 0;
    while (!rest.isEmpty()) {
      BitSet edge = new BitSet();
      edge.set(rest.nextSetBit(0));
      while (!edge.isEmpty()) {
        int next = edge.nextSetBit(0);
        edge.clear(next);
        if (rest.get(next)) {
          rest.clear(next);
          BitSet more = (BitSet) beside[next].clone();
          more.and(rest);
          edge.or(more);
        }
      }
      pieces++;
    }
    return pieces;
  }

  /** The joints with one part in each group, in the order of the chair. */
  List<Joint> between(BitSet one, BitSet other) {
    return holding.stream()
        .filter(
            j ->
                one.get(j.tenoned()) && other.get(j.mortised())
                    || one.get(j.mortised()) && other.get(j.tenoned()))
        .toList();
  }

  boolean jointed(int part) {
    return holding.stream().anyMatch(j -> j.tenoned() == part || j.mortised() == part);
  }

  /** Whether two parts claim the same wood as they stand. */
  boolean collide(int i, int k) {
    return bounds(i).meets(bounds(k)) && Overlap.exists(cells(i), cells(k));
  }

  private static Box around(List<Convex> cells) {
    return cells.stream().map(Convex::bounds).reduce(Box::with).orElseThrow();
  }

  private BitSet[] besides() {
    int n = cells.size();
    BitSet[] all = new BitSet[n];
    Arrays.setAll(all, i -> new BitSet(n));
    for (Joint j : holding) {
      all[j.tenoned()].set(j.mortised());
      all[j.mortised()].set(j.tenoned());
    }
    List<int[]> near =
        IntStream.range(0, n * n)
            .parallel()
            .filter(k -> k / n < k % n && !all[k / n].get(k % n) && near(k / n, k % n))
            .mapToObj(k -> new int[] {k / n, k % n})
            .toList();
    for (int[] pair : near) {
      all[pair[0]].set(pair[1]);
      all[pair[1]].set(pair[0]);
    }
    return all;
  }

  private boolean near(int i, int k) {
    Box room = bounds.get(i).grown(HOLDS);
    return room.meets(bounds.get(k))
        && Distance.between(
                cells.get(i).stream()
                    .filter(c -> bounds.get(k).grown(HOLDS).meets(c.bounds()))
                    .toList(),
                cells.get(k).stream().filter(c -> room.meets(c.bounds())).toList(),
                HOLDS)
            .isPresent();
  }
}
