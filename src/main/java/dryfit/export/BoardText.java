package dryfit.export;

import dryfit.document.BoardsPlan.Board;
import dryfit.geometry.Vec2;
import dryfit.shop.BoardLayout;
import dryfit.shop.BoardLayout.Laid;
import dryfit.shop.BoardLayout.Placed;
import dryfit.shop.BoardMeasure;
import java.util.Locale;

/** A board layout as text for a terminal of eighty columns. */
public final class BoardText {
  private BoardText() {}

  /** Boards with what is cut from them, in the order of their left ends. */
  public static String of(BoardLayout layout, TextStyle style) {
    StringBuilder out = new StringBuilder();
    for (Laid laid : layout.boards()) {
      if (laid.parts().isEmpty()) {
        continue;
      }
      wrapped(out, "", style.bold(title(laid, style)));
      for (Placed part : laid.parts()) {
        double from = part.rough().stream().mapToDouble(Vec2::x).min().orElse(0);
        double to = part.rough().stream().mapToDouble(Vec2::x).max().orElse(0);
        String where = style.bare(from) + " to " + style.bare(to);
        String lies = BoardWords.lies(part);
        wrapped(out, "  ", part.label() + (lies.isEmpty() ? "" : ", " + lies) + ": " + where);
      }
      wrapped(out, "  ", "used up to " + style.length(laid.used()));
      out.append('\n');
    }
    BoardWords.notes(layout).forEach(note -> wrapped(out, "", note));
    wrapped(out, "", BoardWords.yielded(layout));
    return out.toString();
  }

  static String title(Laid laid, TextStyle style) {
    Board b = laid.board();
    return laid.name()
        + ": "
        + style.bare(b.length())
        + " × "
        + style.bare(b.width())
        + " × "
        + style.length(b.thickness())
        + String.format(
            Locale.ROOT,
            ", %.0f board feet by tally",
            BoardMeasure.tally(b.length(), b.width(), b.thickness()));
  }

  private static void wrapped(StringBuilder out, String indent, String text) {
    Wrapped.lines(indent, indent + "  ", text).forEach(line -> out.append(line).append('\n'));
  }
}
