package dryfit.shop.setting;

import dryfit.document.Hand;
import java.util.List;
import java.util.OptionalInt;

/**
 * What one tool is set to for one cut or one place of one part.
 *
 * @param tool what is set
 * @param part index in {@link dryfit.build.Chair#parts} of the part it is done on
 * @param joint index in {@link dryfit.build.Chair#joints}; empty if it is for no one joint
 * @param hand the hand it is for; none for what is no pair
 * @param where the cut or the place, in words: {@code shoulder at the front end}
 * @param readings in the order they are set
 * @param notes whole sentences, without numbers that have a unit
 */
public record Setting(
    Tool tool,
    int part,
    OptionalInt joint,
    Hand hand,
    String where,
    List<Reading> readings,
    List<String> notes) {
  public Setting {
    readings = List.copyOf(readings);
    notes = List.copyOf(notes);
  }

  /** What to keep in mind for the hands' sake; empty where nothing cuts by machine. */
  public String caution() {
    return tool.caution();
  }
}
