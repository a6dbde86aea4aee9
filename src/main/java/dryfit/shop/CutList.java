package dryfit.shop;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.document.BoardsPlan;
import dryfit.document.PartPlan;
import dryfit.geometry.MassProperties;
import dryfit.timber.Species;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The blanks of a chair, by timber and by the thickness they are cut from.
 *
 * @param groups by timber in the order of the parts, thin before thick; long blanks first
 * @param pieces what is not cut from a board: dowels, loose tenons, pegs and wedges
 */
public record CutList(BoardsPlan plan, List<Group> groups, List<Row> pieces) {

  public CutList {
    groups = List.copyOf(groups);
    pieces = List.copyOf(pieces);
  }

  /**
   * Blanks that are alike: one part, or a pair.
   *
   * @param name of the part, without left and right
   * @param count two for a pair
   * @param boardFeet of one blank at its class's thickness, not rounded
   * @param mass of one finished part, kg; NaN if its timber is not known
   * @param volume of one finished part, mm^3
   */
  public record Row(
      String name,
      boolean pair,
      int count,
      String timber,
      Blank.Size finished,
      Blank.Size rough,
      double boardFeet,
      double volume,
      double mass) {}

  /**
   * Blanks from boards of one kind.
   *
   * @param from what they are sawn from; none if they have to be glued up to their thickness
   */
  public record Group(String timber, Optional<ThicknessClass> from, List<Row> rows) {
    public Group {
      rows = List.copyOf(rows);
    }

    /** How many blanks there are. */
    public int count() {
      return rows.stream().mapToInt(Row::count).sum();
    }

    /** Board feet of all blanks, not rounded. */
    public double boardFeet() {
      return rows.stream().mapToDouble(r -> r.count() * r.boardFeet()).sum();
    }

    /** Cubic metres of all blanks at the thickness they are sawn from. */
    public double cubicMetres() {
      return BoardMeasure.cubicMetres(boardFeet());
    }

    /** Kilograms of all blanks at their own thickness; NaN if the timber is not known. */
    public double mass() {
      double volume = rows.stream().mapToDouble(r -> r.count() * r.rough().volume()).sum();
      return CutList.mass(timber, volume);
    }
  }

  /** Board feet of all blanks, not rounded. */
  public double boardFeet() {
    return groups.stream().mapToDouble(Group::boardFeet).sum();
  }

  /** Kilograms of the finished chair, pieces too; NaN if a timber is not known. */
  public double mass() {
    double boards =
        groups.stream()
            .flatMap(g -> g.rows().stream())
            .mapToDouble(r -> r.count() * r.mass())
            .sum();
    return boards + pieces.stream().mapToDouble(r -> r.count() * r.mass()).sum();
  }

  /** The cut list of a chair. */
  public static CutList of(Chair chair, BoardsPlan plan) {
    Map<String, List<Row>> byTimber = new LinkedHashMap<>();
    for (Row row : rows(chair.parts().stream().filter(p -> !isPiece(p)).toList(), plan)) {
      byTimber.computeIfAbsent(row.timber(), t -> new ArrayList<>()).add(row);
    }
    List<Group> groups = new ArrayList<>();
    byTimber.forEach(
        (timber, rows) -> {
          for (ThicknessClass c : ThicknessClass.ALL) {
            add(groups, timber, Optional.of(c), rows);
          }
          add(groups, timber, Optional.empty(), rows);
        });
    return new CutList(
        plan, groups, rows(chair.parts().stream().filter(CutList::isPiece).toList(), plan));
  }

  private static void add(
      List<Group> groups, String timber, Optional<ThicknessClass> from, List<Row> rows) {
    List<Row> own =
        rows.stream()
            .filter(r -> ThicknessClass.thatLeaves(r.rough().thickness()).equals(from))
            .sorted(Comparator.comparingDouble((Row r) -> -r.rough().length()))
            .toList();
    if (!own.isEmpty()) {
      groups.add(new Group(timber, from, own));
    }
  }

  /** Whether a part is made from an offcut or a rod, not from a blank of its own. */
  static boolean isPiece(Part part) {
    return part.isPiece() || part.plan() instanceof PartPlan.Pin;
  }

  /** A row for every part name; of alike parts of one name one row. */
  private static List<Row> rows(List<Part> parts, BoardsPlan plan) {
    Map<List<Object>, List<Blank>> alike = new LinkedHashMap<>();
    for (Part part : parts) {
      Blank blank = Blank.of(part, plan.allow());
      Blank.Size f = blank.finished();
      List<Object> key =
          List.of(part.name(), tenth(f.length()), tenth(f.width()), tenth(f.thickness()));
      alike.computeIfAbsent(key, k -> new ArrayList<>()).add(blank);
    }
    return alike.values().stream().map(CutList::row).toList();
  }

  /** Sizes that differ by less than shows are one size. */
  private static long tenth(double mm) {
    return Math.round(mm * 10);
  }

  private static Row row(List<Blank> alike) {
    Blank one = alike.get(0);
    Part part = one.part();
    String timber = part.plan().common().timber();
    double volume = MassProperties.of(part.solid().mesh()).volume();
    Blank.Size rough = one.rough();
    double nominal =
        ThicknessClass.thatLeaves(rough.thickness())
            .map(ThicknessClass::rough)
            .orElse(rough.thickness());
    return new Row(
        part.name(),
        part.plan().common().pair(),
        alike.size(),
        timber,
        one.finished(),
        rough,
        BoardMeasure.boardFeet(rough.length(), rough.width(), nominal),
        volume,
        mass(timber, volume));
  }

  private static double mass(String timber, double volume) {
    return Species.named(timber).map(Species::density12).orElse(Double.NaN) * volume / CUBIC_METRE;
  }

  private static final double CUBIC_METRE = 1e9; // mm^3
}
