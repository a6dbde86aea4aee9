package dryfit.export;

import dryfit.build.Chair;
import dryfit.document.Design;
import dryfit.document.Hand;
import dryfit.fit.PartSides;
import dryfit.geometry.Vec3;
import dryfit.shop.template.GuideBush;
import dryfit.shop.template.Mark;
import dryfit.shop.template.Template;
import dryfit.shop.template.Template.Serves;
import dryfit.shop.template.Template.Shows;
import dryfit.shop.template.Wanted;
import java.util.ArrayList;
import java.util.List;

/** What is said on and beside a template. */
final class TemplateWords {
  private final Chair chair;
  private final Template template;
  private final TextStyle style;

  TemplateWords(Chair chair, Template template, TextStyle style) {
    this.chair = chair;
    this.template = template;
    this.style = style;
  }

  /** The face that is seen: {@code outside}. */
  static String seen(Chair chair, Template template) {
    return PartSides.of(chair, template.part()).nearest(template.looks());
  }

  private String behind() {
    return PartSides.of(chair, template.part()).nearest(template.looks().negated());
  }

  /** {@code back-leg, right and left}. */
  String who() {
    String name = template.part().name();
    return switch (template.serves()) {
      case ONE -> name;
      case BOTH_HANDS -> name + ", " + hand(Hand.RIGHT) + " and " + hand(Hand.LEFT);
      case THIS_HAND -> name + ", " + hand(template.part().hand()) + " only";
    };
  }

  private String hand(Hand hand) {
    boolean seated = chair.design().labels() == Design.Labels.AS_SEATED;
    return ((hand == Hand.RIGHT) != seated) ? "right" : "left";
  }

  /** {@code back-leg, right and left: outside face}. */
  String title() {
    return isTurning() ? who() : who() + ": " + seen(chair, template) + " face";
  }

  private boolean isTurning() {
    return template.shows() == Shows.TURNING;
  }

  private boolean isWide() {
    return template.high().y() - template.low().y() > TemplateInk.WIDE;
  }

  private String datum() {
    return end(template.datumLooks());
  }

  private String end(Vec3 looks) {
    return PartSides.of(chair, template.part()).nearest(looks);
  }

  /** How it is used, in the order in which it matters. */
  List<String> notes(Wanted wanted) {
    List<String> out = new ArrayList<>();
    out.add(
        "Print at 100 %. Before you cut, measure the bars of 100 mm and 4 in, across and up the"
            + " sheet. If one is off, the template is wrong.");
    hands(out);
    if (isTurning()) {
      out.add(
          "A stick for the lathe: prick each line on the edge of a stick, and turn to the"
              + " diameter beside it. "
              + places());
    } else {
      out.add(
          "Lay it on a flat face of the squared block, "
              + block()
              + ". Do not wrap it round a sawn curve: there it comes out too long.");
      out.add(places());
    }
    if (template.shows() == Shows.MARKS) {
      out.add(
          "Nothing is sawn to this outline: the sheet is for marking out, and shows the part as it"
              + " is when it is sawn to its other one.");
    } else if (wanted.bush().isPresent() && !isTurning()) {
      bush(out, wanted.bush().get());
    } else if (!isTurning()) {
      out.add(edge());
    }
    if (template.shows() == Shows.OUTLINE && !template.part().plan().common().edges().isEmpty()) {
      out.add(
          "The outline is that of the part before its edges are eased, chamfered or rounded: do"
              + " that last.");
    }
    if (template.shows() == Shows.BEND) {
      out.add(
          "This is the part as it is when it is bent, for the form and for checking. Wood springs"
              + " back: how much, only a trial with the same wood tells.");
    }
    if (template.shows() == Shows.OUTLINE) {
      out.add(sits());
    }
    if (template.marks().stream().anyMatch(Mark.Screw.class::isInstance)) {
      out.add(
          "Both ends go on as waste, "
              + style.length(wanted.waste())
              + " each: leave the blank so much longer, put screws only where the crossed"
              + " circles are, and cut the waste off last.");
    }
    out.add(legend());
    out.add(
        isTurning()
            ? "Stop the lathe before you hold a stick or a calliper to the work, and follow its"
                + " manual."
            : "Hold the work with screws or clamps, keep hands out of the way of the cutter, rout"
                + " with the grain in light passes, and follow the manual of the machine.");
    return out;
  }

  private void hands(List<String> out) {
    String face = seen(chair, template);
    if (isTurning()) {
      return;
    }
    if (template.serves() == Serves.BOTH_HANDS) {
      out.add(
          "You look at the "
              + face
              + " face. For the "
              + hand(Hand.RIGHT)
              + " lay it on with the print up; for the "
              + hand(Hand.LEFT)
              + " turn it over, print against the wood. Mark the hand on the wood first.");
    } else if (template.serves() == Serves.THIS_HAND) {
      out.add(
          "You look at the "
              + face
              + " face of the "
              + hand(template.part().hand())
              + " one. It does not serve the other hand as it lies.");
    } else {
      out.add("You look at the " + face + " face. Lay it on with the print up.");
    }
  }

  private String block() {
    Vec3 size = template.part().blank().net().size();
    return style.bare(size.x())
        + " × "
        + style.bare(size.y())
        + " × "
        + style.length(size.z())
        + " without allowances";
  }

  private String places() {
    return "Numbers along the part are "
        + (style.inches() ? "inches" : "millimetres")
        + " from its "
        + datum()
        + " end"
        + (isWide() ? ", then from its " + end(template.up().negated()) + " edge" : "")
        + ".";
  }

  private static String edge() {
    return "The edge of the black line, not its middle, is the true edge: the whole width of the"
        + " line is waste. Cut it all away and stop where it ends.";
  }

  private void bush(List<String> out, GuideBush b) {
    out.add(
        "The black line is the edge of a template for a guide bush of "
            + style.length(b.outside())
            + " and a cutter of "
            + style.length(b.cutter())
            + ": it stands back "
            + style.length(b.offset())
            + " from the part all round, and openings are so much larger. Not for a bearing. The"
            + " dashed line is the part itself. Cut the black line all away, to its edge towards"
            + " the template.");
    long corners = template.marks().stream().filter(Mark.TightCorner.class::isInstance).count();
    if (corners > 0) {
      out.add(
          "In "
              + corners
              + (corners == 1 ? " inside corner" : " inside corners")
              + " the cutter leaves wood, as much as is written there: finish with a chisel.");
    }
  }

  private String sits() {
    String face = seen(chair, template);
    return switch (template.sits()) {
      case EITHER_FACE ->
          "With a follower bit the template may sit on the "
              + face
              + " face, print up, or on the "
              + behind()
              + " face, print against the wood"
              + (template.serves() == Serves.BOTH_HANDS
                  ? " (the other way about for the " + hand(Hand.LEFT) + ")"
                  : "")
              + ".";
      case SEEN_FACE ->
          "With a follower bit the template must sit on the "
              + face
              + " face: the "
              + behind()
              + " face is not flat.";
      case FACE_BEHIND ->
          "With a follower bit the template must sit on the "
              + behind()
              + " face, print against the wood: the "
              + face
              + " face does not stay flat.";
      case OFFCUTS ->
          "Both of these faces are sawn to the other outline first. Tape the offcuts back in their"
              + " places, so that the block is square again, and lay the template on them: a"
              + " follower bit needs them as far as the template reaches.";
    };
  }

  private String legend() {
    List<String> parts = new ArrayList<>();
    if (has(Mark.Mouth.class)) {
      parts.add("fine whole lines are mortises and holes in the face that is seen");
    }
    if (has(Mark.Inside.class) || has(Mark.Mouth.class)) {
      parts.add("dashed lines are mortises and holes cut from an edge or from behind");
    }
    if (has(Mark.FlatArea.class) || has(Mark.FlatEdge.class)) {
      parts.add("grey is where another part lands: keep it flat, take nothing off after fitting");
    }
    if (has(Mark.Depth.class)) {
      parts.add("grey lines in the hollow are as deep as is written on them");
    }
    parts.add("lines of dashes and dots are middles");
    String text = String.join("; ", parts) + ".";
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }

  private boolean has(Class<? extends Mark> kind) {
    return template.marks().stream().anyMatch(kind::isInstance);
  }
}
