package dryfit.document;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Lays a variant over a document. The result is a tree like any other, in which what the variant
 * wrote still knows its place under {@code /variants}.
 */
final class Variants {
  /** What a patch must say to make a new thing and not to change one. */
  private static final Map<String, String> MAKES_NEW = Map.of("joints", "tenon", "parts", "form");

  private static final Map<String, String> ABSENT =
      Map.of("joints", "absent-joint", "parts", "absent-part");

  private final Json.Obj root;
  private final Problems problems;

  Variants(Json.Obj root, Problems problems) {
    this.root = root;
    this.problems = problems;
  }

  /** The variants of a document by name, as far as they are objects. */
  static Map<String, Json.Obj> of(Json.Obj root) {
    Map<String, Json.Obj> byName = new LinkedHashMap<>();
    members(root, "variants")
        .forEach(
            (name, node) -> {
              if (node instanceof Json.Obj object) {
                byName.put(name, object);
              }
            });
    return byName;
  }

  /** The document with the variant laid over it; faults of the variant itself are noted. */
  Json.Obj apply(Json.Obj variant) {
    Map<String, Json> merged = new LinkedHashMap<>(root.members());
    Map<String, Json> dimensions = new LinkedHashMap<>(members(root, "dimensions"));
    variant
        .members()
        .forEach(
            (key, patch) -> {
              if (MAKES_NEW.containsKey(key)) {
                things(key, patch).ifPresent(things -> merged.put(key, things));
              } else if (!key.equals("note")) {
                dimension(dimensions, key, patch);
              }
            });
    if (root.members().get("dimensions") instanceof Json.Obj object) {
      merged.put("dimensions", new Json.Obj(object.at(), dimensions));
    }
    return new Json.Obj(root.at(), merged);
  }

  /** The parts and joints that a variant takes out, and where it says so. */
  static Map<String, Json> removed(Json.Obj variant) {
    Map<String, Json> out = new LinkedHashMap<>();
    MAKES_NEW
        .keySet()
        .forEach(
            key ->
                members(variant, key)
                    .forEach(
                        (name, node) -> {
                          if (node instanceof Json.Null) {
                            out.put(name, node);
                          }
                        }));
    return out;
  }

  private void dimension(Map<String, Json> dimensions, String name, Json value) {
    Json before = dimensions.get(name);
    if (before == null) {
      problems.unknown("unknown-name", value.at(), name, dimensions.keySet(), "a dimension");
    } else if (before instanceof Json.Obj object) {
      Map<String, Json> members = new LinkedHashMap<>(object.members());
      members.put("value", value);
      dimensions.put(name, new Json.Obj(object.at(), members));
    } else {
      dimensions.put(name, value);
    }
  }

  /** The joints or parts with the patch of a variant. */
  private Optional<Json> things(String key, Json patch) {
    if (!(patch instanceof Json.Obj changes)) {
      problems.add(
          "wrong-type",
          patch.at(),
          patch.shown(),
          "an object { }",
          "the " + key + " of a variant are an object { }");
      return Optional.empty();
    }
    Map<String, Json> things = new LinkedHashMap<>(members(root, key));
    changes
        .members()
        .forEach(
            (name, change) -> {
              boolean makesNew =
                  change instanceof Json.Obj object
                      && object.members().containsKey(MAKES_NEW.get(key));
              if (!things.containsKey(name) && !makesNew) {
                problems.unknown(
                    ABSENT.get(key), change.at(), name, things.keySet(), "there to be changed");
              } else if (change instanceof Json.Null) {
                things.remove(name);
              } else {
                things.put(name, patched(things.get(name), change));
              }
            });
    Json.At at = root.members().get(key) instanceof Json.Obj object ? object.at() : changes.at();
    return Optional.of(new Json.Obj(at, things));
  }

  /** A merge patch: what it names it changes, what it names null it takes away (RFC 7386). */
  private static Json patched(Json before, Json patch) {
    if (!(patch instanceof Json.Obj changes)) {
      return patch;
    }
    Map<String, Json> members = new LinkedHashMap<>();
    Json.At at = patch.at();
    if (before instanceof Json.Obj object) {
      members.putAll(object.members());
      at = object.at();
    }
    changes
        .members()
        .forEach(
            (key, change) -> {
              if (change instanceof Json.Null) {
                members.remove(key);
              } else {
                members.put(key, patched(members.get(key), change));
              }
            });
    return new Json.Obj(at, members);
  }

  private static Map<String, Json> members(Json.Obj root, String key) {
    return root.members().get(key) instanceof Json.Obj object ? object.members() : Map.of();
  }

  /** Checks what is the same whichever variant is applied: that they are objects, and named. */
  static void check(Fields document) {
    Optional<Json.Obj> all = document.object("variants");
    if (all.isEmpty()) {
      return;
    }
    Problems problems = document.problems();
    if (all.get().members().size() > Limits.variants()) {
      problems.add(
          "too-large",
          all.get().at(),
          all.get().members().size() + " variants",
          "at most " + Limits.variants(),
          "a chair may have at most " + Limits.variants() + " variants");
    }
    Map<String, String> spelled = new LinkedHashMap<>();
    all.get()
        .members()
        .forEach(
            (name, node) -> {
              String other = spelled.putIfAbsent(name.strip().toLowerCase(Locale.ROOT), name);
              if (other != null) {
                problems.add(
                    "duplicate-name",
                    node.at(),
                    name,
                    "each name once",
                    Problems.quoted(name)
                        + " and "
                        + Problems.quoted(other)
                        + " differ only in capitals or spaces; nobody would tell them apart");
              }
              new Fields(
                  problems,
                  node,
                  node instanceof Json.Obj object
                      ? List.copyOf(object.members().keySet())
                      : List.of());
              if (!Names.fitsAny(name) || name.equals(Design.AS_DRAWN)) {
                problems.add(
                    "bad-name",
                    node.at(),
                    name,
                    "some words, at most 80 characters",
                    "a variant's name is at most 80 characters, not blank, and not “as drawn”");
              }
            });
  }
}
