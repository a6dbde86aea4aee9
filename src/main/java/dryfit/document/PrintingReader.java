package dryfit.document;

import dryfit.document.Context.Bound;
import java.util.List;

/** Reads what jigs are made with. */
final class PrintingReader {
  private static final List<String> KEYS =
      List.of(
          "bed",
          "line",
          "hole-allowance",
          "slide-allowance",
          "relief",
          "guide-play",
          "guide-tilt",
          "pin");

  /** A bed smaller than this holds no jig, mm. */
  private static final double LEAST_BED = 100;

  private final Context context;

  PrintingReader(Context context) {
    this.context = context;
  }

  Printing read(Fields root) {
    Printing usual = Printing.USUAL;
    if (!root.has("printing")) {
      return usual;
    }
    Fields fields =
        new Fields(context.problems(), root.node("printing").orElseThrow(), KEYS, "the printing");
    double[] bed = {usual.bedX(), usual.bedY(), usual.bedZ()};
    fields.node("bed").ifPresent(node -> bed(fields, node, bed));
    return new Printing(
        bed[0],
        bed[1],
        bed[2],
        context.length(fields, "line", Bound.POSITIVE, usual.line()),
        context.length(fields, "hole-allowance", Bound.NOT_NEGATIVE, usual.holeAllowance()),
        context.length(fields, "slide-allowance", Bound.NOT_NEGATIVE, usual.slideAllowance()),
        context.length(fields, "relief", Bound.NOT_NEGATIVE, usual.relief()),
        context.length(fields, "guide-play", Bound.POSITIVE, usual.guidePlay()),
        fields
            .node("guide-tilt")
            .map(n -> context.number(n, Quantity.Kind.ANGLE, Bound.POSITIVE))
            .orElse(usual.guideTilt()),
        context.length(fields, "pin", Bound.POSITIVE, usual.pin()));
  }

  private void bed(Fields fields, Json node, double[] bed) {
    List<Json> items = context.exactly(fields, node, bed.length);
    for (int i = 0; i < items.size(); i++) {
      bed[i] = context.length(items.get(i), Bound.POSITIVE);
      if (bed[i] < LEAST_BED) {
        context
            .problems()
            .add(
                "out-of-range",
                items.get(i).at(),
                items.get(i).shown(),
                "at least 100 mm",
                "a bed of " + items.get(i).shown() + " is too small for any jig");
      }
    }
  }
}
