package dryfit.document;

import dryfit.document.Context.Bound;
import dryfit.document.Design.FitPlan;
import dryfit.document.JointPlan.EndRef;
import dryfit.document.JointPlan.Entry;
import dryfit.document.JointPlan.Kind;
import dryfit.document.JointPlan.Role;
import dryfit.document.JointPlan.Shoulder;
import dryfit.document.PartPlan.PartRef;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads one joint of any kind. */
final class JointReader {
  private static final List<String> COMMON =
      List.of("tenon", "into", "kind", "fit", "limits", "role");
  private static final Map<String, Kind> KINDS = new LinkedHashMap<>();
  private static final Map<String, Shoulder> SHOULDERS = new LinkedHashMap<>();
  private static final Map<String, Role> ROLES = new LinkedHashMap<>();
  private static final Map<String, Entry> ANGLED = new LinkedHashMap<>();

  static {
    for (Kind kind : Kind.values()) {
      // A groove follows from its panel; nobody writes it.
      if (kind != Kind.GROOVE) {
        KINDS.put(kind.word(), kind);
      }
    }
    SHOULDERS.put("flat", Shoulder.FLAT);
    SHOULDERS.put("scribed", Shoulder.SCRIBED);
    SHOULDERS.put("none", Shoulder.NONE);
    ROLES.put("structural", Role.STRUCTURAL);
    ROLES.put("locating", Role.LOCATING);
    // A leaning mortise takes a tenon along its rail; a leaning tenon goes into a square mortise.
    ANGLED.put("mortise", new Entry.AlongThePart());
    ANGLED.put("tenon", new Entry.SquareToTheFace());
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
    List<String> keys = new ArrayList<>(COMMON);
    keys.addAll(JointSizesReader.keys(kind));
    Fields joint = new Fields(context.problems(), node, keys, "a " + kind.word() + " joint");
    Refs refs = new Refs(context);
    EndRef tenon =
        joint
            .need("tenon")
            .map(end -> refs.end(joint, end))
            .orElse(new EndRef("", Hand.NONE, JointPlan.End.BOTH, node.pointer()));
    if (tenon.end() == JointPlan.End.MIDDLE && !kind.mayBeBetweenTheEnds()) {
      joint.conflict("absent-end", "tenon", "a " + kind.word() + " joint is at an end of its part");
    } else if (tenon.end() != JointPlan.End.MIDDLE && kind == Kind.NOTCH) {
      joint.conflict(
          "absent-end", "tenon", "a post passes through its notch: write “middle” for the end");
    }
    PartRef into =
        joint
            .need("into")
            .map(part -> refs.part(joint, part))
            .orElse(new PartRef("", Hand.NONE, node.pointer()));
    boolean itself =
        tenon.part().equals(into.part())
            && (tenon.hand() == into.hand() || into.hand() == Hand.NONE)
            && context.parts().containsKey(into.part());
    if (itself) {
      context
          .problems()
          .add(
              "same-part",
              joint.node("into").map(Json::at).orElse(node.at()),
              into.part(),
              "another part",
              "a part cannot go into itself");
    }
    JointSizesReader sizes = new JointSizesReader(context, name, joint);
    return new JointPlan(
        name,
        node.pointer(),
        tenon,
        into,
        sizes.read(kind, tenon.end() == JointPlan.End.MIDDLE),
        entry(joint),
        sizes.place(),
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

  // ---- how it goes in ----

  private Entry entry(Fields joint) {
    Optional<Json> node = joint.node("entry");
    Optional<Entry> angled = joint.wordIfAny("angled", ANGLED);
    if (angled.isPresent()) {
      if (node.isPresent()) {
        joint.conflict("conflict", "angled", "“entry” and “angled” say the same thing twice");
      }
      return angled.get();
    }
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
