package dryfit.build;

import dryfit.build.JointInstances.Instance;
import dryfit.document.Hand;
import dryfit.document.PartPlan;
import dryfit.document.PartPlan.Common;
import dryfit.document.PartPlan.Grain;
import dryfit.document.PartPlan.Placement;
import dryfit.document.PartPlan.Section;
import dryfit.document.PartPlan.Spot;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import dryfit.solid.Csg;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The pieces that joints bring with them: loose tenons, dowels, wedges. Each becomes a part of the
 * chair, named after its joint and numbered.
 */
final class Pieces {
  private final int before;
  private final List<Stock> stocks = new ArrayList<>();
  private final Map<String, Integer> numbers = new LinkedHashMap<>();

  /**
   * @param before how many parts come before them
   */
  Pieces(int before) {
    this.before = before;
  }

  List<Stock> all() {
    return List.copyOf(stocks);
  }

  /** A rod or a square piece; its own x runs along {@code axis}, from {@code from}. */
  int add(
      Instance of,
      String what,
      Convex shape,
      Vec3 from,
      Vec3 axis,
      double length,
      Section section,
      Vec3 wide) {
    Frame frame = Frame.of(from, axis, wide);
    Common common = common(of, what);
    Placement run = new Placement.Run(spot(from), spot(from.plus(axis.times(length))));
    PartPlan plan =
        section instanceof Section.Round round
            ? new PartPlan.Turned(
                common, run, List.of(new PartPlan.Station(0, round.diameter())), false, List.of())
            : new PartPlan.Straight(common, run, section, List.of(), 0);
    Csg leaf = shape.localTo(frame).asLeaf(common.pointer());
    stocks.add(
        new Stock(
            plan,
            of.hand(),
            frame,
            leaf,
            List.of(shape.localTo(frame)),
            0,
            length,
            of.tenoned().outside(),
            Vec3.RIGHT,
            Math.abs(axis.z()) < 0.5,
            List.of()));
    return before + stocks.size() - 1;
  }

  private Common common(Instance of, String what) {
    String base = slug(of.plan().name()) + "-" + what;
    int number = numbers.merge(base + of.hand().suffix(), 1, Integer::sum);
    return new Common(
        base + "-" + number,
        of.plan().pointer(),
        of.hand() != Hand.NONE,
        of.tenoned().plan().common().timber(),
        new Grain.AlongLength(),
        "");
  }

  private static Spot spot(Vec3 v) {
    return new Spot(v.x(), v.y(), v.z());
  }

  /** A joint's name as a part's name is written: small letters, digits and hyphens. */
  private static String slug(String name) {
    String plain = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    String trimmed = plain.replaceAll("^-+|-+$", "");
    return trimmed.isEmpty() ? "joint" : trimmed;
  }
}
