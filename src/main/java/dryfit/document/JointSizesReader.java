package dryfit.document;

import dryfit.document.Context.Bound;
import dryfit.document.JointPlan.Haunch;
import dryfit.document.JointPlan.Kind;
import dryfit.document.JointPlan.LengthIs;
import dryfit.document.JointPlan.Mitre;
import dryfit.document.JointPlan.Place;
import dryfit.document.JointSizes.Reach;
import dryfit.document.JointSizes.Row;
import dryfit.document.JointSizes.Step;
import dryfit.document.JointSizes.Wedges;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads what a joint of one kind needs beyond what all joints have. */
final class JointSizesReader {
  private static final List<String> LENGTHS = List.of("length", "length-is", "through", "proud");
  private static final List<String> PLACES =
      List.of("from-top", "from-bottom", "from-outside", "from-inside");
  private static final Map<String, LengthIs> LENGTH_IS = new LinkedHashMap<>();
  private static final Map<String, Boolean> AT_TOP = new LinkedHashMap<>();
  private static final Map<String, Boolean> ABOVE = new LinkedHashMap<>();
  private static final Map<String, Boolean> OUTSIDE = new LinkedHashMap<>();

  /** How wide a saw cut for a wedge is if the maker does not say, mm (common practice). */
  private static final double KERF = 1.5;

  /** Pilot hole for a screw in hardwood, share of its diameter (common practice, no source). */
  private static final double PILOT = 0.7;

  static {
    LENGTH_IS.put("along", LengthIs.ALONG_THE_TENON);
    LENGTH_IS.put("square", LengthIs.SQUARE_TO_THE_FACE);
    AT_TOP.put("top", true);
    AT_TOP.put("bottom", false);
    ABOVE.put("above", true);
    ABOVE.put("beside", false);
    OUTSIDE.put("outside", true);
    OUTSIDE.put("inside", false);
  }

  private final Context context;
  private final String name;
  private final Fields joint;

  /**
   * @param name of the joint
   */
  JointSizesReader(Context context, String name, Fields joint) {
    this.context = context;
    this.name = name;
    this.joint = joint;
  }

  /** The keys that belong to a kind, beside those of every joint. */
  static List<String> keys(Kind kind) {
    List<String> keys = new ArrayList<>();
    boolean leads = kind != Kind.LAP && kind != Kind.NOTCH && kind != Kind.SCREWED;
    if (leads && kind != Kind.GLUED) {
      keys.addAll(List.of("entry", "angled", "shoulder"));
    }
    switch (kind) {
      case MORTISE_AND_TENON -> {
        keys.addAll(List.of("thickness", "width"));
        keys.addAll(LENGTHS);
        keys.addAll(PLACES);
        keys.addAll(List.of("haunch", "mitre-with", "mitre-gap"));
        keys.addAll(List.of("twin", "wedges", "bare-faced", "stepped"));
      }
      case ROUND_TENON -> {
        keys.add("diameter");
        keys.addAll(LENGTHS);
        keys.addAll(PLACES);
        keys.add("wedges");
      }
      case HOUSING -> keys.add("depth");
      case LOOSE_TENON -> {
        keys.addAll(List.of("thickness", "width", "own-length", "twin"));
        keys.addAll(LENGTHS);
        keys.addAll(PLACES);
      }
      case DOWELS -> {
        keys.addAll(List.of("diameter", "own-length", "count", "spacing", "set"));
        keys.addAll(LENGTHS);
        keys.addAll(PLACES);
      }
      case BRIDLE -> keys.addAll(List.of("thickness", "proud", "from-outside", "from-inside"));
      case LAP -> keys.addAll(List.of("share", "keeps"));
      case NOTCH -> keys.addAll(List.of("across", "along"));
      case SCREWED ->
          keys.addAll(List.of("diameter", "length", "pilot", "head", "slot", "count", "spacing"));
      case GLUED, GROOVE -> {}
    }
    return keys;
  }

  /**
   * @param between whether the joint is between the ends of its part
   */
  JointSizes read(Kind kind, boolean between) {
    return switch (kind) {
      case MORTISE_AND_TENON ->
          new JointSizes.MortiseAndTenon(
              size("thickness"),
              size("width"),
              reach(),
              twin(),
              haunch(),
              mitre(),
              wedges(),
              step());
      case ROUND_TENON -> new JointSizes.RoundTenon(size("diameter"), reach(), wedges());
      case HOUSING -> new JointSizes.Housing(size("depth"));
      case LOOSE_TENON -> {
        Reach reach = reach();
        yield new JointSizes.LooseTenon(
            size("thickness"), size("width"), reach, ownLength(reach), twin());
      }
      case DOWELS -> {
        Reach reach = reach();
        double diameter = size("diameter");
        yield new JointSizes.Dowels(diameter, reach, ownLength(reach), dowelRow(diameter));
      }
      case BRIDLE ->
          new JointSizes.Bridle(size("thickness"), context.length(joint, "proud", Bound.ANY, 0));
      case LAP ->
          new JointSizes.Lap(share(), joint.wordIfAny("keeps", OUTSIDE).orElse(true), between);
      case NOTCH ->
          new JointSizes.Notch(
              context.needLength(joint, "across", Bound.NOT_NEGATIVE),
              context.needLength(joint, "along", Bound.NOT_NEGATIVE));
      case SCREWED -> screwed();
      case GLUED -> new JointSizes.Glued();
      case GROOVE -> throw new IllegalStateException("a groove follows from its panel");
    };
  }

  /** Where the tenon sits; a bare-faced one is flush with the face it has no shoulder at. */
  Place place() {
    refuseBoth("from-top", "from-bottom");
    refuseBoth("from-outside", "from-inside");
    Optional<Boolean> bare = joint.wordIfAny("bare-faced", OUTSIDE);
    if (bare.isPresent()) {
      refuseBoth("bare-faced", "from-outside");
      refuseBoth("bare-faced", "from-inside");
    }
    OptionalDouble flush = OptionalDouble.of(0);
    return new Place(
        context.lengthIfAny(joint, "from-top", Bound.NOT_NEGATIVE),
        context.lengthIfAny(joint, "from-bottom", Bound.NOT_NEGATIVE),
        bare.filter(b -> b).isPresent()
            ? flush
            : context.lengthIfAny(joint, "from-outside", Bound.NOT_NEGATIVE),
        bare.filter(b -> !b).isPresent()
            ? flush
            : context.lengthIfAny(joint, "from-inside", Bound.NOT_NEGATIVE));
  }

  private void refuseBoth(String one, String other) {
    if (joint.has(one) && joint.has(other)) {
      joint.conflict(
          "conflict",
          other,
          Problems.quoted(one) + " and " + Problems.quoted(other) + " place the tenon twice");
    }
  }

  // ---- lengths ----

  private double size(String key) {
    return context.needLength(joint, key, Bound.POSITIVE);
  }

  private Reach reach() {
    boolean through = joint.flag("through", false);
    LengthIs is = joint.wordIfAny("length-is", LENGTH_IS).orElse(LengthIs.ALONG_THE_TENON);
    OptionalDouble length = OptionalDouble.empty();
    if (!through) {
      length = OptionalDouble.of(size("length"));
    } else if (joint.has("length")) {
      joint.conflict(
          "conflict", "length", "a tenon that goes through has no length of its own; use “proud”");
    }
    if (joint.has("proud") && !through) {
      joint.conflict("conflict", "proud", "only a tenon that goes through stands proud");
    }
    return new Reach(length, is, through, context.length(joint, "proud", Bound.ANY, 0));
  }

  /** Into its own part as far as into the other, unless the maker says. */
  private double ownLength(Reach reach) {
    if (reach.through() && !joint.has("own-length")) {
      return size("own-length");
    }
    return context.length(joint, "own-length", Bound.POSITIVE, reach.length().orElse(Double.NaN));
  }

  // ---- more than one ----

  private Row twin() {
    Optional<Json> node = joint.node("twin");
    if (node.isEmpty()) {
      return Row.ONE;
    }
    if (!(node.get() instanceof Json.Obj)) {
      return new Row(2, context.length(node.get(), Bound.POSITIVE), true);
    }
    Fields twin =
        new Fields(context.problems(), node.get(), List.of("count", "gap", "set"), "twin tenons");
    return new Row(
        count(twin, 2, 2),
        context.needLength(twin, "gap", Bound.POSITIVE),
        twin.wordIfAny("set", ABOVE).orElse(true));
  }

  private Row dowelRow(double diameter) {
    int count = count(joint, 2, 1);
    double spacing = spacing(count);
    if (count == 1) {
      return Row.ONE;
    }
    if (spacing <= diameter) {
      joint.conflict("tenon-too-large", "spacing", "dowels set this close run into each other");
    }
    return new Row(count, spacing - diameter, joint.wordIfAny("set", ABOVE).orElse(true));
  }

  private double spacing(int count) {
    return count == 1 ? context.length(joint, "spacing", Bound.POSITIVE, 0) : size("spacing");
  }

  private int count(Fields fields, int otherwise, int least) {
    Optional<Json> node = fields.node("count");
    if (node.isEmpty()) {
      return otherwise;
    }
    double count = context.number(node.get(), Quantity.Kind.NUMBER, Bound.ANY);
    if (count != Math.rint(count) || count < least || count > Limits.row()) {
      context
          .problems()
          .add(
              "out-of-range",
              node.get().at(),
              node.get().shown(),
              "a whole number from " + least + " to " + Limits.row(),
              "this counts pieces: a whole number from " + least + " to " + Limits.row());
      return otherwise;
    }
    return (int) count;
  }

  // ---- shapes of a tenon ----

  private Optional<Haunch> haunch() {
    return joint
        .node("haunch")
        .map(
            node -> {
              if (!(node instanceof Json.Obj)) {
                return new Haunch(context.length(node, Bound.POSITIVE), true, false);
              }
              Fields haunch =
                  new Fields(context.problems(), node, List.of("deep", "at", "sloping"));
              return new Haunch(
                  context.needLength(haunch, "deep", Bound.POSITIVE),
                  haunch.wordIfAny("at", AT_TOP).orElse(true),
                  haunch.flag("sloping", false));
            });
  }

  private Optional<Mitre> mitre() {
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

  private Optional<Wedges> wedges() {
    Optional<Json> node = joint.node("wedges");
    if (node.isEmpty()) {
      return Optional.empty();
    }
    if (!joint.flag("through", false)) {
      joint.conflict("conflict", "wedges", "only a tenon that goes through can be wedged");
    }
    if (joint.has("twin")) {
      joint.conflict(
          "conflict", "wedges", "twin tenons are not wedged here; choose one of the two");
    }
    Fields wedges =
        new Fields(
            context.problems(),
            node.get(),
            List.of("count", "kerf", "deep", "angle", "flare"),
            "wedges");
    double angle =
        wedges
            .need("angle")
            .map(a -> context.number(a, Quantity.Kind.ANGLE, Bound.POSITIVE))
            .orElse(Double.NaN);
    if (angle > Math.toRadians(15)) {
      wedges.conflict(
          "out-of-range", "angle", "a wedge above 15 degrees does not hold; 3 to 8 is usual");
    }
    return Optional.of(
        new Wedges(
            count(wedges, 1, 1),
            context.length(wedges, "kerf", Bound.POSITIVE, KERF),
            context.needLength(wedges, "deep", Bound.POSITIVE),
            angle,
            context.lengthIfAny(wedges, "flare", Bound.NOT_NEGATIVE)));
  }

  private Optional<Step> step() {
    return joint
        .node("stepped")
        .map(
            node -> {
              Fields step =
                  new Fields(context.problems(), node, List.of("at", "by"), "a stepped shoulder");
              return new Step(
                  step.wordIfAny("at", OUTSIDE).orElse(true),
                  context.needLength(step, "by", Bound.POSITIVE));
            });
  }

  // ---- faces ----

  private double share() {
    Optional<Json> node = joint.node("share");
    double share = node.map(n -> context.number(n, Quantity.Kind.NUMBER, Bound.ANY)).orElse(0.5);
    if (share <= 0 || share >= 1) {
      joint.conflict("out-of-range", "share", "a share lies between 0 and 1; a half-lap has 0.5");
    }
    return share;
  }

  private JointSizes screwed() {
    double diameter = size("diameter");
    int count = count(joint, 1, 1);
    double spacing = spacing(count);
    return new JointSizes.Screwed(
        diameter,
        size("length"),
        context.length(joint, "pilot", Bound.POSITIVE, diameter * PILOT),
        context.length(joint, "head", Bound.NOT_NEGATIVE, 0),
        context.length(joint, "slot", Bound.NOT_NEGATIVE, 0),
        new Row(count, spacing, true));
  }
}
