package dryfit.export;

import dryfit.fit.JointDetail;
import dryfit.fit.JointDetail.Play;
import dryfit.fit.JointDetail.Setback;
import dryfit.fit.JointDetail.SideGap;
import dryfit.fit.JointDetail.Spot;
import dryfit.fit.JointDetail.Wall;
import dryfit.measure.Angle;
import java.util.ArrayList;
import java.util.List;

/** What is measured side by side at a joint, as rows of text: told only when all is asked for. */
final class DetailText {
  private DetailText() {}

  /** One row: what it is, and the figures. */
  record Row(String name, String text) {}

  static List<Row> rows(JointDetail detail, TextStyle style) {
    List<Row> out = new ArrayList<>();
    for (SideGap gap : detail.gaps()) {
      out.add(new Row(out.isEmpty() ? "sides" : "", gap.side() + " " + range(gap, style)));
    }
    List<String> walls = new ArrayList<>();
    for (Wall wall : detail.walls()) {
      String end = wall.end() ? " end" : "";
      walls.add(
          wall.face() + end + " " + length(style, wall.left().value()) + at(wall.left().where()));
    }
    out.add(new Row("walls", String.join(" · ", walls)));
    detail.play().ifPresent(p -> out.add(new Row("play", play(p, style))));
    detail.reveal().ifPresent(r -> out.add(new Row("set back", reveal(r.sides(), style))));
    return out;
  }

  /** A length that is not broken between its number and its unit. */
  private static String length(TextStyle style, double mm) {
    return style.length(mm).replace(' ', JointText.KEEP);
  }

  private static String range(SideGap gap, TextStyle style) {
    String least = style.gap(gap.least().value());
    String greatest = style.gap(gap.greatest().value());
    return least.equals(greatest)
        ? least
        : spot(gap.least(), least) + " to " + spot(gap.greatest(), greatest);
  }

  private static String spot(Spot spot, String value) {
    return value + at(spot.where());
  }

  private static String at(String where) {
    return where.isEmpty() ? "" : " (" + where + ")";
  }

  private static String play(Play play, TextStyle style) {
    String text =
        Angle.degrees(play.acrossCheeks())
            + " across the cheeks, the far end swings "
            + length(style, play.swingAcrossCheeks());
    return play.acrossEdges().isPresent()
        ? text
            + " · "
            + Angle.degrees(play.acrossEdges().getAsDouble())
            + " across the edges, "
            + length(style, play.swingAcrossEdges().orElseThrow())
        : text;
  }

  private static String reveal(List<Setback> sides, TextStyle style) {
    List<String> out = new ArrayList<>();
    for (Setback s : sides) {
      out.add(s.face() + " " + length(style, Math.abs(s.by())) + (s.by() < 0 ? " proud" : ""));
    }
    return String.join(" · ", out);
  }
}
