package dryfit.document;

import dryfit.document.Context.Bound;
import dryfit.document.Design.FitPlan;
import dryfit.document.JointPlan.EndRef;
import dryfit.document.JointPlan.Entry;
import dryfit.document.JointPlan.Haunch;
import dryfit.document.JointPlan.Kind;
import dryfit.document.JointPlan.LengthIs;
import dryfit.document.JointPlan.Mitre;
import dryfit.document.JointPlan.Place;
import dryfit.document.JointPlan.Role;
import dryfit.document.JointPlan.Shoulder;
import dryfit.document.PartPlan.PartRef;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads one joint of any kind. */
final class JointReader {
  private static final List<String> COMMON =
      List.of("tenon", "into", "kind", "entry", "shoulder", "fit", "limits", "role");
  private static final List<String> LENGTHS = List.of("length", "length-is", "through", "proud");
  private static final List<String> PLACES =
      List.of("from-top", "from-bottom", "from-outside", "from-inside");
  private static final Map<String, Kind> KINDS = new LinkedHashMap<>();
  private static final Map<String, LengthIs> LENGTH_IS = new LinkedHashMap<>();
  private static final Map<String, Shoulder> SHOULDERS = new LinkedHashMap<>();
  private static final Map<String, Role> ROLES = new LinkedHashMap<>();
  private static final Map<String, Boolean> HAUNCH_AT = new LinkedHashMap<>();

  static {
    for (Kind kind : Kind.values()) {
      KINDS.put(kind.word(), kind);
    }
    LENGTH_IS.put("along", LengthIs.ALONG_THE_TENON);
    LENGTH_IS.put("square", LengthIs.SQUARE_TO_THE_FACE);
    SHOULDERS.put("flat", Shoulder.FLAT);
    SHOULDERS.put("scribed", Shoulder.SCRIBED);
    SHOULDERS.put("none", Shoulder.NONE);
    ROLES.put("structural", Role.STRUCTURAL);
    ROLES.put("locating", Role.LOCATING);
    HAUNCH_AT.put("top", true);
    HAUNCH_AT.put("bottom", false);
  }

  private final Context context;

  JointReader(Context context) {
    this.context = context;
  }

  /** The joint, or empty if not even its kind can be told. */
  Optional<JointPlan> read(String name, Json node) {
    if (!Names.fitsAny(name)) {
      context
          .problems()
          .add(
              "bad-name",
              node.at(),
              name,
              "some words, at most 80 characters",
              "a joint's name is at most 80 characters and not blank");
    }
    return kind(node).map(kind -> read(name, node, kind));
  }

  private JointPlan read(String name, Json node, Kind kind) {
    Fields joint = new Fields(context.problems(), node, keys(kind), "a " + kind.word() + " joint");
    boolean tenoned = kind != Kind.HOUSING;
    boolean sawn = kind == Kind.MORTISE_AND_TENON;
    Refs refs = new Refs(context);
    EndRef tenon =
        joint
            .need("tenon")
            .map(end -> refs.end(joint, end))
            .orElse(new EndRef("", Hand.NONE, JointPlan.End.BOTH, node.pointer()));
    PartRef into =
        joint
            .need("into")
            .map(part -> refs.part(joint, part))
            .orElse(new PartRef("", Hand.NONE, node.pointer()));
    boolean through = tenoned && joint.flag("through", false);
    return new JointPlan(
        name,
        node.pointer(),
        tenon,
        into,
        kind,
        sizeIf(sawn, joint, "thickness"),
        sizeIf(sawn, joint, "width"),
        tenoned ? length(joint, through) : OptionalDouble.empty(),
        tenoned
            ? joint.wordIfAny("length-is", LENGTH_IS).orElse(LengthIs.ALONG_THE_TENON)
            : LengthIs.ALONG_THE_TENON,
        through,
        tenoned ? proud(joint, through) : 0,
        sizeIf(kind == Kind.ROUND_TENON, joint, "diameter"),
        sizeIf(kind == Kind.HOUSING, joint, "depth"),
        entry(joint),
        tenoned ? place(joint) : place(nothing(node)),
        sawn ? haunch(joint) : Optional.empty(),
        sawn ? mitre(name, joint) : Optional.empty(),
        joint.wordIfAny("shoulder", SHOULDERS).orElse(Shoulder.FLAT),
        fit(joint),
        joint.wordIfAny("role", ROLES).orElse(Role.STRUCTURAL));
  }

  private Optional<Kind> kind(Json node) {
    // Which keys belong depends on the kind; until it is known every key passes.
    if (!(node instanceof Json.Obj object) || !object.members().containsKey("kind")) {
      return Optional.of(Kind.MORTISE_AND_TENON);
    }
    return new Fields(context.problems(), node, object.members().keySet()).wordIfAny("kind", KINDS);
  }

  private static List<String> keys(Kind kind) {
    List<String> keys = new ArrayList<>(COMMON);
    switch (kind) {
      case MORTISE_AND_TENON -> {
        keys.addAll(List.of("thickness", "width"));
        keys.addAll(LENGTHS);
        keys.addAll(PLACES);
        keys.addAll(List.of("haunch", "mitre-with", "mitre-gap"));
      }
      case ROUND_TENON -> {
        keys.add("diameter");
        keys.addAll(LENGTHS);
        keys.addAll(PLACES);
      }
      case HOUSING -> keys.add("depth");
    }
    return keys;
  }

  private Fields nothing(Json node) {
    return new Fields(context.problems(), new Json.Obj(node.at(), Map.of()), List.of());
  }

  // ---- sizes ----

  private OptionalDouble sizeIf(boolean belongs, Fields joint, String key) {
    return belongs
        ? OptionalDouble.of(context.needLength(joint, key, Bound.POSITIVE))
        : OptionalDouble.empty();
  }

  private OptionalDouble length(Fields joint, boolean through) {
    if (!through) {
      return OptionalDouble.of(context.needLength(joint, "length", Bound.POSITIVE));
    }
    if (joint.has("length")) {
      joint.conflict(
          "conflict", "length", "a tenon that goes through has no length of its own; use “proud”");
    }
    return OptionalDouble.empty();
  }

  private double proud(Fields joint, boolean through) {
    if (joint.has("proud") && !through) {
      joint.conflict("conflict", "proud", "only a tenon that goes through stands proud");
    }
    return context.length(joint, "proud", Bound.ANY, 0);
  }

  private Place place(Fields joint) {
    refuseBoth(joint, "from-top", "from-bottom");
    refuseBoth(joint, "from-outside", "from-inside");
    return new Place(
        context.lengthIfAny(joint, "from-top", Bound.NOT_NEGATIVE),
        context.lengthIfAny(joint, "from-bottom", Bound.NOT_NEGATIVE),
        context.lengthIfAny(joint, "from-outside", Bound.NOT_NEGATIVE),
        context.lengthIfAny(joint, "from-inside", Bound.NOT_NEGATIVE));
  }

  private static void refuseBoth(Fields joint, String one, String other) {
    if (joint.has(one) && joint.has(other)) {
      joint.conflict(
          "conflict",
          other,
          Problems.quoted(one) + " and " + Problems.quoted(other) + " place the tenon twice");
    }
  }

  private Optional<Haunch> haunch(Fields joint) {
    return joint
        .node("haunch")
        .map(
            node -> {
              if (!(node instanceof Json.Obj)) {
                return new Haunch(context.length(node, Bound.POSITIVE), true);
              }
              Fields haunch = new Fields(context.problems(), node, List.of("deep", "at"));
              return new Haunch(
                  context.needLength(haunch, "deep", Bound.POSITIVE),
                  haunch.wordIfAny("at", HAUNCH_AT).orElse(true));
            });
  }

  private Optional<Mitre> mitre(String name, Fields joint) {
    if (!joint.has("mitre-with")) {
      if (joint.has("mitre-gap")) {
        joint.conflict("conflict", "mitre-gap", "a mitre gap goes only with “mitre-with”");
      }
      return Optional.empty();
    }
    String with = joint.needText("mitre-with");
    Json node = joint.node("mitre-with").orElseThrow();
    if (with.equals(name)) {
      context
          .problems()
          .add("cycle", node.at(), with, "another joint", "a tenon cannot be mitred with itself");
    } else if (node instanceof Json.Text && !context.joints().contains(with)) {
      context
          .problems()
          .unknown("absent-joint", node.at(), with, context.joints(), "a joint of this chair");
    }
    return Optional.of(new Mitre(with, context.length(joint, "mitre-gap", Bound.NOT_NEGATIVE, 1)));
  }

  // ---- how it goes in ----

  private Entry entry(Fields joint) {
    Optional<Json> node = joint.node("entry");
    if (node.isEmpty()) {
      return new Entry.AlongThePart();
    }
    if (node.get() instanceof Json.Arr) {
      return new Entry.Along(context.direction(joint, node.get()));
    }
    if (node.get() instanceof Json.Text text) {
      // “along the rail” and “square to the leg” are how a maker says it.
      if (text.value().startsWith("along the ")) {
        return new Entry.AlongThePart();
      } else if (text.value().startsWith("square to ")) {
        return new Entry.SquareToTheFace();
      }
    }
    Map<String, Entry> words = new LinkedHashMap<>();
    words.put("along", new Entry.AlongThePart());
    words.put("square", new Entry.SquareToTheFace());
    return joint.word(node.get(), words).orElse(new Entry.AlongThePart());
  }

  private FitPlan fit(Fields joint) {
    return joint.node("fit").map(node -> fit(node, context, context.fit())).orElse(context.fit());
  }

  /** A fit, whole or in part; what it leaves out stays as it was. */
  static FitPlan fit(Json node, Context context, FitPlan otherwise) {
    Fields fit =
        new Fields(
            context.problems(), node, List.of("cheek", "edge", "bottom", "least-wall"), "a fit");
    return new FitPlan(
        context.length(fit, "cheek", Bound.ANY, otherwise.cheek()),
        context.length(fit, "edge", Bound.ANY, otherwise.edge()),
        context.length(fit, "bottom", Bound.NOT_NEGATIVE, otherwise.bottom()),
        context.length(fit, "least-wall", Bound.NOT_NEGATIVE, otherwise.leastWall()));
  }
}
