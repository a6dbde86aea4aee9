package dryfit.document;

import dryfit.document.Context.Bound;
import dryfit.document.PartPlan.Detail;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the beads, coves and fillets of a turning, in order along it. */
final class DetailReader {
  private static final Map<String, Detail.Kind> KINDS = new LinkedHashMap<>();

  static {
    KINDS.put("bead", Detail.Kind.BEAD);
    KINDS.put("cove", Detail.Kind.COVE);
    KINDS.put("fillet", Detail.Kind.FILLET);
  }

  private final Context context;
  private final Fields part;

  DetailReader(Context context, Fields part) {
    this.context = context;
    this.part = part;
  }

  List<Detail> read() {
    List<Detail> details = new ArrayList<>();
    for (Json item : part.list("details")) {
      Optional<Detail> detail = detail(item);
      if (detail.isPresent() && !details.isEmpty()) {
        Detail before = details.get(details.size() - 1);
        if (detail.get().at() - detail.get().wide() / 2 < before.at() + before.wide() / 2) {
          outOfRange(
              item,
              "further along than the one before",
              "this begins before the one written before it ends");
        }
      }
      detail.ifPresent(details::add);
    }
    return details;
  }

  private Optional<Detail> detail(Json item) {
    Fields outer = new Fields(context.problems(), item, KINDS.keySet(), "a detail of a turning");
    List<String> there = KINDS.keySet().stream().filter(outer::has).toList();
    if (there.isEmpty()) {
      outer.need("bead");
      return Optional.empty();
    }
    if (there.size() > 1) {
      outer.conflict("conflict", there.get(1), "each detail is one of bead, cove and fillet");
    }
    Detail.Kind kind = KINDS.get(there.get(0));
    Json node = outer.node(there.get(0)).orElseThrow();
    String size = kind == Detail.Kind.COVE ? "deep" : "high";
    Fields fields =
        new Fields(context.problems(), node, List.of("at", "wide", size), "a " + there.get(0));
    Detail detail =
        new Detail(
            kind,
            context.needLength(fields, "at", Bound.POSITIVE),
            context.needLength(fields, "wide", Bound.POSITIVE),
            context.needLength(fields, size, Bound.POSITIVE),
            node.pointer());
    if (kind != Detail.Kind.FILLET && detail.high() > detail.wide() / 2) {
      outOfRange(
          fields.node(size).orElse(node),
          "at most half of its width",
          "a round is at most a half circle, and this is more");
    }
    return Optional.of(detail);
  }

  private void outOfRange(Json node, String allowed, String what) {
    context.problems().add("out-of-range", node.at(), node.shown(), allowed, what);
  }
}
