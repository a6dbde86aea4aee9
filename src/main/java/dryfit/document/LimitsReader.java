package dryfit.document;

import dryfit.document.Context.Bound;
import dryfit.document.MakerLimits.Written;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads the limits that the maker has set. */
final class LimitsReader {
  private final Context context;

  LimitsReader(Context context) {
    this.context = context;
  }

  MakerLimits read(Json.Obj root, Map<String, Json> joints) {
    Map<String, Map<FitLimit, Written>> ofJoints = new LinkedHashMap<>();
    joints.forEach(
        (name, node) -> {
          if (node instanceof Json.Obj joint && joint.members().containsKey("limits")) {
            ofJoints.put(name, limits(joint, true));
          }
        });
    return new MakerLimits(limits(root, false), ofJoints);
  }

  private Map<FitLimit, Written> limits(Json.Obj owner, boolean ofJoint) {
    Map<FitLimit, Written> out = new LinkedHashMap<>();
    Json node = owner.members().get("limits");
    if (node == null) {
      return out;
    }
    List<FitLimit> known =
        Arrays.stream(FitLimit.values()).filter(l -> l.ofJoint() || !ofJoint).toList();
    Fields fields =
        new Fields(
            context.problems(),
            node,
            known.stream().map(FitLimit::word).toList(),
            ofJoint ? "a joint's limits" : "the limits");
    for (FitLimit limit : known) {
      fields
          .node(limit.word())
          .ifPresent(
              value ->
                  out.put(
                      limit,
                      new Written(
                          context.number(value, limit.kind(), Bound.NOT_NEGATIVE),
                          value.pointer())));
    }
    String wall = FitLimit.LEAST_WALL.word();
    boolean twice =
        fields.has(wall)
            && owner.members().get("fit") instanceof Json.Obj fit
            && fit.members().containsKey(wall);
    if (twice) {
      fields.conflict("conflict", wall, "the least wall is written both in “fit” and in “limits”");
    }
    return out;
  }
}
