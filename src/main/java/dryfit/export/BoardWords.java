package dryfit.export;

import dryfit.shop.BoardLayout;
import dryfit.shop.BoardLayout.Left;
import dryfit.shop.BoardLayout.PairNote;
import dryfit.shop.BoardLayout.Placed;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A board layout in words. */
final class BoardWords {
  private BoardWords() {}

  /** What is left over, and how pairs lie. */
  static List<String> notes(BoardLayout layout) {
    List<String> out = new ArrayList<>();
    layout.left().forEach(l -> out.add("DOES NOT FIT: " + l.label() + ": " + why(l)));
    layout.pairs().forEach(p -> out.add(pair(p)));
    return out;
  }

  private static String why(Left left) {
    return switch (left.why()) {
      case NO_SUCH_TIMBER -> "there is no board of its timber.";
      case TOO_THICK -> "every board of its timber is too thin when planed.";
      case TOO_LARGE -> "it is longer or wider than every board that is thick enough.";
      case NO_ROOM -> "the boards that are thick enough are used up.";
    };
  }

  private static String pair(PairNote note) {
    return switch (note.mirroring()) {
      case SAME_FACE_UP ->
          note.name()
              + ": mark both with the same face up, one outline the mirror of the other, so that"
              + " their end grain mirrors.";
      case TURNED_OVER ->
          note.name()
              + ": one is turned over and end for end, because the board's grain slopes: so it runs"
              + " out the same way in both. Their end grain then curves opposite ways.";
      case APART ->
          note.name()
              + ": there is no room for both on one board; look for two boards that match before"
              + " you cut.";
    };
  }

  /** {@code inside up, end for end, turned 1.9°}. */
  static String lies(Placed part) {
    List<String> words = new ArrayList<>();
    if (!part.up().isEmpty()) {
      words.add(part.up() + " up");
    }
    if (part.endForEnd()) {
      words.add("end for end");
    }
    if (Math.abs(part.turn()) > Math.toRadians(0.05)) {
      words.add(String.format(Locale.ROOT, "turned %.1f°", Math.abs(Math.toDegrees(part.turn()))));
    }
    return String.join(", ", words);
  }

  static String yielded(BoardLayout layout) {
    return String.format(
        Locale.ROOT, "Yield: %.0f %% of the wood used up becomes parts.", layout.yielded() * 100);
  }
}
