package dryfit.document;

import dryfit.document.Context.Bound;
import dryfit.document.PartPlan.Common;
import dryfit.document.PartPlan.Grain;
import dryfit.document.PartPlan.Outline;
import dryfit.document.PartPlan.Placement;
import dryfit.document.PartPlan.Section;
import dryfit.document.PartPlan.Station;
import dryfit.document.PartPlan.Taper;
import dryfit.document.PartPlan.View;
import dryfit.document.Quantity.Kind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads one part in any of its forms. */
final class PartReader {
  private static final Map<String, List<String>> KEYS = new LinkedHashMap<>();
  static final Map<String, View> VIEWS = new LinkedHashMap<>();
  static final Map<String, String> FACES = new LinkedHashMap<>();
  private static final List<String> COMMON =
      List.of("form", "pair", "timber", "grain", "edges", "oversize");

  static {
    KEYS.put(
        "straight",
        keys(
            List.of(
                PlacementReader.RUN,
                PlacementReader.BETWEEN,
                List.of("section", "turn", "tapers", "foot", "upper-end", "rebate", "rebates"))));
    KEYS.put(
        "sawn",
        keys(
            List.of(
                PlacementReader.STANDS,
                PlacementReader.BETWEEN,
                List.of("side", "front", "plan", "thickness", "turn", "foot", "upper-end"))));
    KEYS.put(
        "turned",
        keys(
            List.of(
                PlacementReader.RUN,
                PlacementReader.BETWEEN,
                List.of("diameter", "diameters", "smooth", "foot", "upper-end", "details"))));
    KEYS.put("bent", keys(List.of(PlacementReader.RUN, PlacementReader.BETWEEN, BentReader.KEYS)));
    KEYS.put(
        "panel",
        keys(
            List.of(
                List.of("thickness", "fills", "groove", "plane", "at", "outline"),
                List.of("raised", "openings"),
                PanelReader.LOOSE)));
    KEYS.put("seat", keys(List.of(SeatReader.SEAT)));
    KEYS.put("corner-block", keys(List.of(SeatReader.BLOCK)));
    KEYS.put("peg", keys(PinReader.pegKeys()));
    KEYS.put("wedge", keys(PinReader.wedgeKeys()));
    KEYS.put(
        "splat", keys(List.of(PlacementReader.RUN, PlacementReader.BETWEEN, SplatReader.KEYS)));
    VIEWS.put("plan", View.PLAN);
    VIEWS.put("side", View.SIDE);
    VIEWS.put("front", View.FRONT);
    for (String face :
        List.of("front", "back", "left", "right", "top", "bottom", "inside", "outside")) {
      FACES.put(face, face);
    }
  }

  private final Context context;

  PartReader(Context context) {
    this.context = context;
  }

  private static List<String> keys(List<List<String>> rows) {
    return Stream.concat(COMMON.stream(), rows.stream().flatMap(List::stream)).toList();
  }

  /** The part, or empty if not even its form can be told. */
  Optional<PartPlan> read(String name, Json node) {
    if (!Names.fitsPart(name)) {
      context
          .problems()
          .add(
              "bad-name",
              node.at(),
              name,
              "small letters, digits and hyphens",
              "a part's name is made of small letters, digits and hyphens, begins with a letter and"
                  + " has at most 80 of them");
    }
    Optional<String> form = form(node);
    if (form.isEmpty()) {
      return Optional.empty();
    }
    Fields part =
        new Fields(
            context.problems(), node, KEYS.get(form.get()), "a part of the form " + form.get());
    Common common = common(name, part);
    return switch (form.get()) {
      case "straight" -> Optional.of(straight(common, part));
      case "sawn" -> Optional.of(sawn(common, part));
      case "turned" -> Optional.of(turned(common, part));
      case "bent" -> Optional.of(new BentReader(context, common, part).read());
      case "splat" -> Optional.of(new SplatReader(context, common, part).read());
      case "seat" -> new SeatReader(context, common, part).seat();
      case "corner-block" -> Optional.of(new SeatReader(context, common, part).cornerBlock());
      case "peg" -> Optional.of(new PinReader(context, common, part).peg());
      case "wedge" -> Optional.of(new PinReader(context, common, part).wedge());
      default -> new PanelReader(context, common, part).read();
    };
  }

  private Optional<String> form(Json node) {
    // Until the form is known, so is which keys belong; hence every key passes here.
    List<String> any =
        node instanceof Json.Obj object ? List.copyOf(object.members().keySet()) : List.of();
    Fields fields = new Fields(context.problems(), node, any);
    Map<String, String> forms = new LinkedHashMap<>();
    KEYS.keySet().forEach(form -> forms.put(form, form));
    return fields.need("form").flatMap(form -> fields.word(form, forms));
  }

  private Common common(String name, Fields part) {
    String timber = context.timber();
    Optional<Json> own = part.node("timber");
    if (own.isPresent()) {
      timber = part.word(own.get(), Timbers.byName()).orElse(timber);
    }
    return new Common(
        name,
        part.self().pointer(),
        part.flag("pair", false),
        timber,
        grain(part),
        part.note(),
        new PartCutsReader(context, part).read(),
        new EdgeReader(context).read(part));
  }

  private Grain grain(Fields part) {
    Optional<Json> node = part.node("grain");
    if (node.isPresent() && node.get() instanceof Json.Arr) {
      return new Grain.Along(context.direction(part, node.get()));
    }
    Map<String, Grain> words = new LinkedHashMap<>();
    words.put("length", new Grain.AlongLength());
    words.put("chord", new Grain.AlongChord());
    return part.wordIfAny("grain", words).orElse(new Grain.AlongLength());
  }

  // ---- straight ----

  private PartPlan straight(Common common, Fields part) {
    Placement placement = new PlacementReader(context, part).runOrBetween();
    Section section =
        part.need("section")
            .map(node -> section(part, node))
            .orElse(new Section.Rectangle(Double.NaN, Double.NaN));
    List<Taper> tapers = new ArrayList<>();
    for (Json item : part.list("tapers")) {
      tapers.add(taper(item));
    }
    return new PartPlan.Straight(common, placement, section, tapers, turn(part));
  }

  private double turn(Fields part) {
    return part.node("turn").map(node -> context.number(node, Kind.ANGLE, Bound.ANY)).orElse(0.0);
  }

  Section section(Fields part, Json node) {
    if (node instanceof Json.Obj) {
      Fields round = new Fields(context.problems(), node, List.of("round"));
      return new Section.Round(context.needLength(round, "round", Bound.POSITIVE));
    }
    List<Json> items = context.exactly(part, node, 2);
    return items.isEmpty()
        ? new Section.Rectangle(Double.NaN, Double.NaN)
        : new Section.Rectangle(
            context.length(items.get(0), Bound.POSITIVE),
            context.length(items.get(1), Bound.POSITIVE));
  }

  private Taper taper(Json item) {
    Fields taper = new Fields(context.problems(), item, List.of("faces", "from", "to", "leaves"));
    List<String> faces = new ArrayList<>();
    for (Json face : taper.need("faces").map(taper::list).orElse(List.of())) {
      taper.word(face, FACES).ifPresent(faces::add);
    }
    return new Taper(
        faces,
        context.needLength(taper, "from", Bound.ANY),
        context.needLength(taper, "to", Bound.ANY),
        context.needLength(taper, "leaves", Bound.POSITIVE),
        item.pointer());
  }

  // ---- sawn ----

  private PartPlan sawn(Common common, Fields part) {
    Placement placement = new PlacementReader(context, part).standsOrBetween();
    OutlineReader outlines = new OutlineReader(context, part);
    Map<View, Outline> views = new LinkedHashMap<>();
    List<String> written = VIEWS.keySet().stream().filter(part::has).toList();
    for (String view : written) {
      outlines
          .read(part.node(view).orElseThrow())
          .ifPresent(outline -> views.put(VIEWS.get(view), outline));
    }
    checkViews(part, written);
    Optional<Double> thickness =
        part.node("thickness").map(node -> context.length(node, Bound.POSITIVE));
    return new PartPlan.Sawn(
        common,
        placement,
        Optional.ofNullable(views.get(View.SIDE)),
        Optional.ofNullable(views.get(View.FRONT)),
        Optional.ofNullable(views.get(View.PLAN)),
        thickness,
        turn(part));
  }

  private void checkViews(Fields part, List<String> written) {
    if (part.has("between") && part.has("front")) {
      part.conflict(
          "conflict", "front", "a sawn part between two others is drawn in plan or side view only");
    }
    switch (written.size()) {
      case 0 ->
          context
              .problems()
              .add(
                  "missing-value",
                  part.at(),
                  "no outline",
                  "side, front, plan",
                  "a sawn part needs an outline: side, front or plan, or two of them");
      case 1 -> part.need("thickness");
      case 2 -> {
        if (part.has("thickness")) {
          part.conflict(
              "conflict", "thickness", "two outlines give the thickness, so it is not written too");
        }
      }
      default ->
          part.conflict(
              "conflict", written.get(2), "a sawn part has one or two outlines, not three");
    }
  }

  // ---- turned ----

  private PartPlan turned(Common common, Fields part) {
    Placement placement = new PlacementReader(context, part).runOrBetween();
    List<Station> stations = List.of();
    if (part.has("diameters")) {
      if (part.has("diameter")) {
        part.conflict(
            "conflict", "diameter", "“diameter” and “diameters” say the same thing twice");
      }
      stations =
          new OutlineReader(context, part)
              .stations(part, "diameters").stream()
                  .map(station -> new Station(station.u(), station.v()))
                  .toList();
    } else if (part.has("diameter")) {
      stations = List.of(new Station(0, context.needLength(part, "diameter", Bound.POSITIVE)));
    } else {
      part.need("diameters");
    }
    return new PartPlan.Turned(
        common,
        placement,
        stations,
        part.flag("smooth", false),
        new DetailReader(context, part).read());
  }
}
