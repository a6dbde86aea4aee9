package dryfit.document;

import dryfit.document.Design.JigPlan;
import dryfit.document.Design.Measurement;
import dryfit.document.Design.Waiver;
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

  static {
    for (String hand : List.of("both", "left", "right")) {
      HANDS.put(hand, hand);
    }
  }

  private final Context context;
  private final Refs refs;

  ListsReader(Context context) {
    this.context = context;
    this.refs = new Refs(context);
  }

  List<Measurement> measured(Fields root) {
    List<Measurement> list = new ArrayList<>();
    for (Json item : root.list("measured")) {
      Fields fields =
          new Fields(
              context.problems(),
              item,
              List.of("part", "joint", "what", "value", "on"),
              "a measurement");
      if (!fields.has("joint")) {
        fields.need("part");
      } else if (fields.has("part")) {
        fields.conflict("conflict", "joint", "a measurement is of a part or a joint, not both");
      }
      String part = part(fields, "part");
      String joint = joint(fields);
      String what = fields.needWords("what");
      Optional<Quantity> value = fields.need("value").flatMap(context.numbers()::quantity);
      String on = date(fields);
      value.ifPresent(
          quantity -> list.add(new Measurement(part, joint, what, quantity, on, item.pointer())));
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
              fields.needWords("check"),
              joint(fields),
              part(fields, "part"),
              fields.needWords("because"),
              item.pointer()));
    }
    return list;
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
