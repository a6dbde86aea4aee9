package dryfit.document;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One thing in which two documents differ. Spaces, the order of keys and the way a number is
 * written are no difference.
 *
 * @param section the key it stands under, such as {@code dimensions}, {@code parts}, {@code joints}
 * @param name the name of the dimension, part, joint or variant, and of the key in it where both
 *     have it; empty where the section has none
 * @param mine what the first document says there, as written; empty if it says nothing
 * @param theirs the same of the second
 */
public record Difference(
    String section, String name, Optional<String> mine, Optional<String> theirs) {
  /** All differences, in the order of the first document, then what only the second has. */
  public static List<Difference> between(Document mine, Document theirs) {
    List<Difference> out = new ArrayList<>();
    Map<String, Json> left = mine.root().members();
    Map<String, Json> right = theirs.root().members();
    for (String section : keys(left, right)) {
      Json one = left.get(section);
      Json other = right.get(section);
      add(out, section, "", mine, one, theirs, other);
    }
    return out;
  }

  private static void add(
      List<Difference> out,
      String section,
      String name,
      Document mine,
      Json one,
      Document theirs,
      Json other) {
    boolean absent = name.isEmpty() && (one == null || other == null);
    if (one instanceof Json.Obj && other instanceof Json.Obj
        || absent && (one instanceof Json.Obj || other instanceof Json.Obj)) {
      Map<String, Json> ones = members(one);
      Map<String, Json> others = members(other);
      for (String key : keys(ones, others)) {
        String within = (name + " " + key).strip();
        add(out, section, within, mine, ones.get(key), theirs, others.get(key));
      }
    } else if (!same(one, other)) {
      out.add(new Difference(section, name, written(mine, one), written(theirs, other)));
    }
  }

  private static Optional<String> written(Document document, Json node) {
    return Optional.ofNullable(node)
        .map(n -> document.text().substring(n.at().start(), n.at().end()));
  }

  private static Set<String> keys(Map<String, Json> one, Map<String, Json> other) {
    Set<String> keys = new LinkedHashSet<>(one.keySet());
    keys.addAll(other.keySet());
    return keys;
  }

  private static Map<String, Json> members(Json node) {
    return node instanceof Json.Obj object ? object.members() : Map.of();
  }

  /** Whether two nodes say the same; null stands for nothing. */
  private static boolean same(Json one, Json other) {
    if (one instanceof Json.Obj a && other instanceof Json.Obj b) {
      return keys(a.members(), b.members()).stream()
          .allMatch(key -> same(a.members().get(key), b.members().get(key)));
    } else if (one instanceof Json.Arr a && other instanceof Json.Arr b) {
      boolean same = a.items().size() == b.items().size();
      for (int i = 0; same && i < a.items().size(); i++) {
        same = same(a.items().get(i), b.items().get(i));
      }
      return same;
    } else if (one instanceof Json.Num a && other instanceof Json.Num b) {
      return a.text().equals(b.text())
          || new BigDecimal(a.text()).compareTo(new BigDecimal(b.text())) == 0;
    } else if (one instanceof Json.Text a && other instanceof Json.Text b) {
      return a.value().equals(b.value());
    } else if (one instanceof Json.Bool a && other instanceof Json.Bool b) {
      return a.value() == b.value();
    }
    return one instanceof Json.Null ? other instanceof Json.Null : one == other;
  }
}
