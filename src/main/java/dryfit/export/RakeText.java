package dryfit.export;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.document.Hand;
import dryfit.fit.RakeAndSplay;
import dryfit.measure.Angle;
import dryfit.measure.BenchAngle;
import java.util.ArrayList;
import java.util.List;

/** How upright parts lean, in short lines; a pair once. Parts that stand plumb are left out. */
public final class RakeText {
  private final Chair chair;
  private final AngleText text;

  RakeText(Chair chair, TextStyle style) {
    this.chair = chair;
    this.text = new AngleText(style);
  }

  /** Every upright part that leans. */
  public static List<Told> told(Chair chair, TextStyle style) {
    return new RakeText(chair, style)
        .rows(RakeAndSplay.of(chair)).stream().map(Rows::told).toList();
  }

  List<List<String>> blocks(List<RakeAndSplay> uprights) {
    return rows(uprights).stream().map(Rows::lines).toList();
  }

  private List<Rows> rows(List<RakeAndSplay> uprights) {
    List<Rows> blocks = new ArrayList<>();
    for (RakeAndSplay one : uprights) {
      boolean plumb = one.floor().isPlumb() && one.seat().isEmpty();
      // The twin of a part is its mirror image and leans the same in these words.
      if (!plumb && one.part().hand() != Hand.LEFT) {
        blocks.add(block(one));
      }
    }
    return blocks;
  }

  private Rows block(RakeAndSplay one) {
    Part part = one.part();
    Rows rows = new Rows(part.name() + (part.hand() == Hand.NONE ? "" : ", both hands"));
    rows.add("", "against plumb");
    view(rows, one.floor());
    one.seat()
        .ifPresent(
            view -> {
              rows.add("", "against the square of the seat" + seatSlope());
              view(rows, view);
            });
    return rows;
  }

  private String seatSlope() {
    return RakeAndSplay.seat(chair)
        .map(
            seat ->
                ", "
                    + seat.part()
                    + ", which falls "
                    + Angle.degrees(Math.abs(seat.fallsBack()))
                    + (seat.fallsBack() < 0 ? " to the front" : " to the back"))
        .orElse("");
  }

  private void view(Rows rows, RakeAndSplay.View view) {
    if (view.isPlumb()) {
      rows.add("lean", "none");
      return;
    }
    rows.add("rake", share(view.lean().rake(), view.rakeFoot(), "side view"));
    rows.add("splay", share(view.lean().splay(), view.splayFoot(), "front view"));
    if (view.rakeFoot().isEmpty() || view.splayFoot().isEmpty()) {
      return;
    }
    BenchAngle whole = BenchAngle.of(view.lean().resultant());
    rows.add("one angle", text.readings(whole, "level"));
    rows.addAll(
        "sight",
        List.of(
            "over a line towards the " + view.foot(),
            "  "
                + Angle.degrees(Math.abs(view.lean().sightLine()))
                + " from the fore-aft line · "
                + Angle.degrees(Math.abs(view.lean().sightLineFromSide()))
                + " from the side-to-side line"));
    rows.add(
        "two turns",
        "first tip "
            + Angle.degrees(Math.abs(view.lean().turns().tip()))
            + " fore and aft, then swing "
            + Angle.degrees(Math.abs(view.lean().turns().swing()))
            + " sideways");
  }

  private String share(double angle, String foot, String view) {
    BenchAngle size = BenchAngle.of(angle);
    return foot.isEmpty()
        ? "none"
        : Angle.degrees(size.offSquare())
            + " · "
            + text.slope(size)
            + ", foot to the "
            + foot
            + ", as the "
            + view
            + " shows it";
  }
}
