package dryfit.document;

import dryfit.document.Context.Bound;
import dryfit.document.PartPlan.Bow;
import dryfit.document.PartPlan.Common;
import dryfit.document.PartPlan.Opening;
import dryfit.document.PartPlan.Outline;
import dryfit.document.PartPlan.Path;
import dryfit.document.PartPlan.Placement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a splat, and the openings that boards are pierced with. */
final class SplatReader {
  static final List<String> KEYS =
      List.of("thickness", "outline", "edge", "openings", "rise", "toward");

  private final Context context;
  private final Common common;
  private final Fields part;

  SplatReader(Context context, Common common, Fields part) {
    this.context = context;
    this.common = common;
    this.part = part;
  }

  PartPlan read() {
    Placement placement = new PlacementReader(context, part).runOrBetween();
    double thickness = context.needLength(part, "thickness", Bound.POSITIVE);
    Optional<Bow> bow =
        part.has("rise") || part.has("toward")
            ? Optional.of(BentReader.bow(context, part))
            : Optional.empty();
    OutlineReader outlines = new OutlineReader(context, part);
    Optional<Outline> outline = Optional.empty();
    Optional<Path> edge = Optional.empty();
    if (part.has("edge")) {
      if (part.has("outline")) {
        part.conflict("conflict", "outline", "“edge” and “outline” say the same thing twice");
      }
      edge = outlines.edge(part.node("edge").orElseThrow());
    } else {
      outline = part.need("outline").flatMap(outlines::read);
    }
    return new PartPlan.Splat(
        common, placement, thickness, outline, edge, openings(context, part), bow);
  }

  /** The openings of a board; none if it has none. */
  static List<Opening> openings(Context context, Fields part) {
    List<Opening> openings = new ArrayList<>();
    OutlineReader outlines = new OutlineReader(context, part);
    for (Json item : part.list("openings")) {
      outlines.read(item).ifPresent(o -> openings.add(new Opening(o, item.pointer())));
    }
    return openings;
  }
}
