package dryfit.export;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.document.JointPlan;
import dryfit.document.JointSizes;
import dryfit.document.PartPlan;
import dryfit.fit.Slant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What only joints of one kind have to tell, as rows of a name and a text. */
final class KindText {
  private final Chair chair;
  private final TextStyle style;

  KindText(Chair chair, TextStyle style) {
    this.chair = chair;
    this.style = style;
  }

  /** A name and what is written after it. */
  record Row(String name, String text) {}

  List<Row> rows(Joint joint) {
    List<Row> out = new ArrayList<>();
    JointPlan plan = joint.plan();
    if (joint.tenons().size() > 1) {
      out.add(new Row("count", joint.tenons().size() + " " + several(plan.kind())));
    }
    plan.wedges().ifPresent(w -> out.add(new Row("wedges", wedges(w))));
    pegs(joint).ifPresent(text -> out.add(new Row("pegs", text)));
    JointSizes sizes = plan.sizes();
    if (sizes instanceof JointSizes.Lap lap) {
      out.add(new Row("share", percent(lap.share()) + " of the shared depth stays with the first"));
    } else if (sizes instanceof JointSizes.Groove groove) {
      out.add(
          new Row(
              "groove",
              style.length(groove.deep())
                  + " deep; tongue "
                  + style.length(groove.deep() - groove.gap())
                  + ", "
                  + style.gap(groove.gap())
                  + " left to move; not glued"));
    } else if (sizes instanceof JointSizes.Notch) {
      out.add(new Row("notch", "cheek is across the grain, edge along it; not glued"));
    } else if (sizes instanceof JointSizes.Screwed screwed) {
      out.add(new Row("screws", screws(screwed)));
    }
    Slant.of(chair, joint).ifPresent(slant -> angled(slant, out));
    return out;
  }

  private void angled(Slant s, List<Row> out) {
    if (s.leaningMortise()) {
      out.add(
          new Row(
              "angled",
              "mortise leans, tenon straight: fibres run whole; the tip is "
                  + style.gap(s.shift())
                  + " aside of square"));
    } else {
      out.add(
          new Row(
              "angled",
              "mortise square, tenon slants: "
                  + percent(s.wholeFibres())
                  + " of the fibres run whole, cheeks shift "
                  + style.gap(s.shift())
                  + "; needs stock of "
                  + style.length(s.stockNeeded())
                  + ", has "
                  + style.length(s.stockThere())));
    }
    String order = order(s);
    if (!order.isEmpty()) {
      out.add(new Row("order", order));
    }
  }

  private String order(Slant s) {
    String square =
        "with this clearance only a tenon of up to "
            + style.gap(s.squareEntry())
            + " goes in square to the face";
    return switch (s.order()) {
      case ANY -> "";
      case ALONG -> "it goes in along itself: " + square;
      case FRAMES_FIRST -> "put " + s.firstFrames() + " together first: " + square;
      case THIS_END_FIRST ->
          "put this end in first, along itself, and each hand by itself: "
              + square
              + "; what takes the other end goes on square afterwards";
      case OTHER_END_FIRST -> "put the other end in first, along itself; this one closes square";
      case FRAMES_MAY -> s.firstFrames() + " may go together first";
    };
  }

  private Optional<String> pegs(Joint joint) {
    List<String> told = new ArrayList<>();
    for (PartPlan plan : chair.design().parts()) {
      if (plan instanceof PartPlan.Peg peg && peg.place().joint().equals(joint.name())) {
        String drawn =
            peg.offset() > 0
                ? ", draws it up by " + style.gap(peg.offset())
                : ", in line in both parts";
        told.add(
            plan.name()
                + ": "
                + style.length(peg.diameter())
                + ", "
                + style.length(peg.place().fromShoulder())
                + " from the shoulder"
                + drawn);
      }
    }
    return told.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", told));
  }

  private String wedges(JointSizes.Wedges w) {
    return w.count()
        + (w.count() == 1 ? " wedge, " : " wedges, ")
        + style.gap(w.kerf() + w.swell())
        + " thick at the far face, across the grain; mortise opened by "
        + style.gap(w.flare().orElse(w.spread()))
        + " at each end, tenon spreads by "
        + style.gap(w.spread());
  }

  private String screws(JointSizes.Screwed s) {
    String slot = s.slot() > 0 ? ", slot " + style.length(s.slot()) + " across the grain" : "";
    return style.length(s.diameter())
        + " × "
        + style.length(s.length())
        + ", pilot "
        + style.length(s.pilot())
        + (s.head() > 0 ? ", head sunk " + style.length(s.head()) : "")
        + slot;
  }

  private static String several(JointPlan.Kind kind) {
    return switch (kind) {
      case DOWELS -> "dowels";
      case SCREWED -> "screws";
      default -> "tenons";
    };
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.0f %%", 100 * share);
  }
}
