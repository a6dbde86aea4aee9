package dryfit.app;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The kinds of chair that can be begun from a few answers. */
public enum Family {
  STOOL("stool", "four straight legs, a level seat, no back"),
  SIDE_CHAIR("side-chair", "a back with slats, no arms"),
  ARMCHAIR("armchair", "a back with slats, and arms on the front legs"),
  BENCH("bench", "a long seat for two or three, no back");

  private final String word;
  private final String about;

  Family(String word, String about) {
    this.word = word;
    this.about = about;
  }

  /** What it is called where words are typed. */
  public String word() {
    return word;
  }

  /** What it looks like, in a few words. */
  public String about() {
    return about;
  }

  /** The family of that word. */
  public static Optional<Family> named(String word) {
    return Arrays.stream(values()).filter(f -> f.word.equals(word)).findFirst();
  }

  /** All words in order. */
  public static List<String> words() {
    return Arrays.stream(values()).map(Family::word).toList();
  }
}
