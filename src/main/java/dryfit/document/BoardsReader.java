package dryfit.document;

import dryfit.document.BoardsPlan.Allowance;
import dryfit.document.BoardsPlan.Bad;
import dryfit.document.BoardsPlan.Board;
import dryfit.document.Context.Bound;
import dryfit.document.PartPlan.Spot2;
import java.util.ArrayList;
import java.util.List;

/** Reads what is said about boards and blanks. */
final class BoardsReader {
  /** Further off, the grain of a part no longer follows the board in any sense. */
  private static final double MOST_OFF_GRAIN = Math.PI / 4;

  private static final int MOST_ALIKE = 50;

  private final Context context;

  BoardsReader(Context context) {
    this.context = context;
  }

  BoardsPlan read(Json node) {
    BoardsPlan usual = BoardsPlan.USUAL;
    Fields fields =
        new Fields(
            context.problems(),
            node,
            List.of("allow", "waste", "kerf", "margin", "grain-within", "have"),
            "the boards");
    double within =
        fields
            .node("grain-within")
            .map(n -> context.number(n, Quantity.Kind.ANGLE, Bound.NOT_NEGATIVE))
            .orElse(usual.grainWithin());
    if (within > MOST_OFF_GRAIN) {
      outOfRange(fields.node("grain-within").orElseThrow(), "at most 45 degrees");
    }
    List<Board> have = new ArrayList<>();
    for (Json item : fields.list("have")) {
      have.add(board(item, have.size()));
    }
    return new BoardsPlan(
        fields.node("allow").map(n -> allow(n, usual.allow())).orElse(usual.allow()),
        fields
            .node("waste")
            .map(n -> context.number(n, Quantity.Kind.NUMBER, Bound.NOT_NEGATIVE))
            .orElse(usual.waste()),
        context.length(fields, "kerf", Bound.NOT_NEGATIVE, usual.kerf()),
        context.length(fields, "margin", Bound.NOT_NEGATIVE, usual.margin()),
        within,
        have);
  }

  private Allowance allow(Json node, Allowance usual) {
    Fields fields =
        new Fields(
            context.problems(), node, List.of("length", "width", "thickness"), "an allowance");
    return new Allowance(
        context.length(fields, "length", Bound.NOT_NEGATIVE, usual.length()),
        context.length(fields, "width", Bound.NOT_NEGATIVE, usual.width()),
        context.length(fields, "thickness", Bound.NOT_NEGATIVE, usual.thickness()));
  }

  private Board board(Json node, int index) {
    Fields fields =
        new Fields(
            context.problems(),
            node,
            List.of(
                "name",
                "timber",
                "length",
                "width",
                "thickness",
                "planed",
                "slope",
                "count",
                "bad"),
            "a board");
    double length = context.needLength(fields, "length", Bound.POSITIVE);
    double width = context.needLength(fields, "width", Bound.POSITIVE);
    double thickness = context.needLength(fields, "thickness", Bound.POSITIVE);
    double slope =
        fields.node("slope").map(n -> context.numbers().number(n, Quantity.Kind.ANGLE)).orElse(0.0);
    if (Math.abs(slope) > MOST_OFF_GRAIN) {
      outOfRange(fields.node("slope").orElseThrow(), "at most 45 degrees");
    }
    List<Bad> bad = new ArrayList<>();
    for (Json item : fields.list("bad")) {
      bad.add(bad(item));
    }
    return new Board(
        fields.text("name", "board " + (index + 1)),
        fields.wordIfAny("timber", Timbers.byName()).orElse(context.timber()),
        length,
        width,
        thickness,
        fields.flag("planed", false),
        slope,
        count(fields),
        bad,
        node.pointer());
  }

  private int count(Fields fields) {
    if (!fields.has("count")) {
      return 1;
    }
    Json node = fields.node("count").orElseThrow();
    double count = context.number(node, Quantity.Kind.NUMBER, Bound.POSITIVE);
    if (count > MOST_ALIKE || count != Math.rint(count)) {
      outOfRange(node, "a whole number, at most " + MOST_ALIKE);
      return 1;
    }
    return (int) count;
  }

  private Bad bad(Json node) {
    Fields fields = new Fields(context.problems(), node, List.of("from", "to"), "a bad place");
    Spot2 from = corner(fields, "from");
    Spot2 to = corner(fields, "to");
    if (to.u() <= from.u() || to.v() <= from.v()) {
      context
          .problems()
          .add(
              "not-positive",
              node.at(),
              "from, to",
              "to beyond from in both directions",
              "a bad place runs from its near left corner to its far right one");
    }
    return new Bad(from, to);
  }

  private Spot2 corner(Fields fields, String key) {
    return fields
        .need(key)
        .map(n -> context.spot2(fields, n, Bound.ANY))
        .orElse(new Spot2(Double.NaN, Double.NaN));
  }

  private void outOfRange(Json node, String wanted) {
    context
        .problems()
        .add("out-of-range", node.at(), node.shown(), wanted, "this must be " + wanted);
  }
}
