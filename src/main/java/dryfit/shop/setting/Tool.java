package dryfit.shop.setting;

/** What is set; in the order in which the settings of one joint or part are told. */
public enum Tool {
  BLANK("blank", ""),
  BEVEL_GAUGE("bevel", ""),
  SAW(
      "saw",
      "Saw: cut a test piece first, the part clamped or held against its stop, hands clear of the"
          + " blade's line, guard and splitter in place. The saw's manual comes before these"
          + " figures."),
  KNIFE("knife", ""),
  DRILL(
      "bore",
      "Drill: clamp the part, in a cradle where it is round or tapered; no gloves, sleeves and hair"
          + " tied back; back the bit out often. The manual of the drill or drill press comes"
          + " first."),
  DEPTH("depth", DRILL.caution),
  MARKING_GAUGE("gauge", ""),
  SPACER("spacer", ""),
  FOLLOWER_BIT(
      "follower",
      "Follower bit: saw close to the line first, rest the part on a table or start pin, feed"
          + " against the turn of the cutter, keep hands off the cutter's side and small parts in a"
          + " holder. The manuals of router and bit come first, with the depth of cut and the"
          + " speed that they allow.");

  private final String word;
  private final String caution;

  Tool(String word, String caution) {
    this.word = word;
    this.caution = caution;
  }

  /** A maker's word for it, short enough for a column of ten. */
  public String word() {
    return word;
  }

  /** What to keep in mind for the hands' sake; empty where nothing cuts by machine. */
  public String caution() {
    return caution;
  }
}
