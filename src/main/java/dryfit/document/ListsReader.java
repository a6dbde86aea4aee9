package dryfit.document;

import dryfit.document.Design.JigPlan;
import dryfit.document.Design.Measurement;
import dryfit.document.Design.Waiver;
import dryfit.document.Quantity.Kind;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads what was measured, what is waived, and which jigs are wanted. */
final class ListsReader {
  private static final Map<String, String> HANDS = new LinkedHashMap<>();
  private static final Map<String, Hand> ONE_HAND = new LinkedHashMap<>();

  static {
    for (String hand : List.of("both", "left", "right")) {
      HANDS.put(hand, hand);
    }
    ONE_HAND.put("both", Hand.NONE);
    ONE_HAND.put("left", Hand.LEFT);
    ONE_HAND.put("right", Hand.RIGHT);
  }

  private static Map<String, String> words(List<String> all) {
    Map<String, String> words = new LinkedHashMap<>();
    all.forEach(word -> words.put(word, word));
    return words;
  }

  private final Context context;
  private final Refs refs;

  ListsReader(Context context) {
    this.context = context;
    this.refs = new Refs(context);
  }

  /** A lean is an angle, all else a length; what is made of wood is larger than nothing. */
  private void held(String what, Quantity value, Json at) {
    Kind wanted = what.startsWith("lean") ? Kind.ANGLE : Kind.LENGTH;
    if (value.kind() != wanted && value.kind() != Kind.NUMBER) {
      boolean length = wanted == Kind.LENGTH;
      context
          .problems()
          .add(
              "wrong-kind",
              at.at(),
              at.shown(),
              length ? "a length" : "an angle",
              "a \u201c"
                  + what
                  + "\u201d is "
                  + (length ? "a length, such as 17.6 mm" : "an angle, such as 4.5 deg")
                  + ", and this is "
                  + at.shown());
    } else if (wanted == Kind.LENGTH && !MAY_BE_NONE.contains(what) && value.value() <= 0) {
      context
          .problems()
          .add(
              "not-positive",
              at.at(),
              at.shown(),
              "above zero",
              "a \u201c" + what + "\u201d of " + at.shown() + " is no wood; it must be above zero");
    }
  }

  /** Sizes that tell where a part stands, and not how large it is. */
  private static final List<String> MAY_BE_NONE = List.of("proud", Measurement.GAP);

  List<Measurement> measured(Fields root) {
    List<Measurement> list = new ArrayList<>();
    for (Json item : root.list("measured")) {
      Fields fields =
          new Fields(
              context.problems(),
              item,
              List.of("part", "joint", "frame", "what", "hand", "at", "value", "on"),
              "a measurement");
      List<String> subjects =
          List.of("part", "joint", "frame").stream().filter(fields::has).toList();
      if (subjects.isEmpty()) {
        fields.need("part");
      } else if (subjects.size() > 1) {
        fields.conflict(
            "conflict", subjects.get(1), "a measurement is of a part, a joint or a frame, not two");
      }
      for (String key : List.of("hand", "at")) {
        if (fields.has(key) && !fields.has("joint")) {
          fields.conflict(
              "conflict", key, "only a measurement at a joint has a \u201c" + key + "\u201d");
        }
      }
      String part = part(fields, "part");
      String joint = joint(fields);
      String frame = fields.wordIfAny("frame", words(Measurement.FRAMES)).orElse("");
      Hand hand = fields.wordIfAny("hand", ONE_HAND).orElse(Hand.NONE);
      String at = fields.wordIfAny("at", words(Measurement.SIDES)).orElse("");
      String what = fields.needWords("what");
      Optional<Json> written = fields.need("value");
      Optional<Quantity> value = written.flatMap(context.numbers()::quantity);
      value.ifPresent(quantity -> held(what, quantity, written.get()));
      if (fields.has("at") && !what.isEmpty() && !what.equals(Measurement.GAP)) {
        fields.conflict(
            "conflict",
            "at",
            "only a \u201c" + Measurement.GAP + "\u201d is measured at one side of a joint");
      }
      String on = date(fields);
      value.ifPresent(
          quantity ->
              list.add(
                  new Measurement(
                      part, joint, frame, what, hand, at, quantity, on, item.pointer())));
    }
    return list;
  }

  List<Waiver> waived(Fields root) {
    List<Waiver> list = new ArrayList<>();
    for (Json item : root.list("waived")) {
      Fields fields =
          new Fields(
              context.problems(), item, List.of("check", "joint", "part", "because"), "a waiver");
      list.add(
          new Waiver(
              check(fields),
              joint(fields),
              part(fields, "part"),
              fields.needWords("because"),
              item.pointer()));
    }
    return list;
  }

  private String check(Fields fields) {
    String check = fields.needWords("check");
    Optional<Json> node = fields.node("check").filter(Json.Text.class::isInstance);
    if (node.isPresent() && !check.isBlank() && !Checks.ids().contains(check)) {
      context
          .problems()
          .unknown("unknown-word", node.get().at(), check, Checks.ids(), "a check of the fit");
    }
    return check;
  }

  List<JigPlan> jigs(Fields root) {
    List<JigPlan> list = new ArrayList<>();
    for (Json item : root.list("jigs")) {
      Fields fields =
          new Fields(
              context.problems(), item, List.of("kind", "joint", "from", "to", "hand"), "a jig");
      list.add(
          new JigPlan(
              fields
                  .need("kind")
                  .flatMap(node -> fields.word(node, JigKind.byWord()))
                  .map(JigKind::word)
                  .orElse(""),
              joint(fields),
              part(fields, "from"),
              part(fields, "to"),
              fields.wordIfAny("hand", HANDS).orElse("both"),
              item.pointer()));
    }
    return list;
  }

  private String part(Fields fields, String key) {
    return fields.node(key).map(node -> refs.loosely(fields, node)).orElse("");
  }

  private String joint(Fields fields) {
    String name = fields.text("joint", "");
    Optional<Json> node = fields.node("joint").filter(Json.Text.class::isInstance);
    if (node.isPresent() && !context.joints().contains(name)) {
      context
          .problems()
          .unknown(
              "absent-joint", node.get().at(), name, context.joints(), "a joint of this chair");
    }
    return name;
  }

  private String date(Fields fields) {
    String on = fields.text("on", "");
    Optional<Json> node = fields.node("on").filter(Json.Text.class::isInstance);
    if (node.isPresent()) {
      try {
        return LocalDate.parse(on).toString();
      } catch (DateTimeException e) {
        context
            .problems()
            .add(
                "not-a-date",
                node.get().at(),
                on,
                "a date such as 2026-03-02",
                Problems.quoted(on) + " is not a date; write year-month-day, such as 2026-03-02");
      }
    }
    return on;
  }
}
