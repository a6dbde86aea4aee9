package dryfit.export;

import dryfit.export.paper.Typeface;
import dryfit.geometry.Vec2;
import dryfit.shop.BoardLayout.Placed;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What is written on the parts of a drawn board: the name and how it lies where that can be read on
 * the part, otherwise a number that is told below the board.
 *
 * @param names one for each part, in its order
 */
record BoardNames(List<Name> names) {
  /** Type that is read at arm's length, mm (common practice, no source). */
  static final double LEAST = 2.2;

  private static final double MOST = 2.8;

  BoardNames {
    names = List.copyOf(names);
  }

  /**
   * The name of a part.
   *
   * @param number what stands on the part instead of the text; 0 if the text itself does
   * @param at the middle of what is written, drawn mm from the board's corner
   */
  record Name(String text, int number, double size, Vec2 at) {
    String written() {
      return number == 0 ? text : Integer.toString(number);
    }
  }

  /**
   * The names on one board.
   *
   * @param used how many numbers other boards of the drawing have taken
   */
  static BoardNames of(List<Placed> parts, double scale, int used) {
    List<Name> names = new ArrayList<>();
    int numbers = used;
    for (Placed part : parts) {
      Name name = name(part, scale);
      names.add(name.size >= LEAST ? name : new Name(name.text, ++numbers, LEAST, name.at));
    }
    return new BoardNames(names);
  }

  private static Name name(Placed part, double scale) {
    List<Vec2> net = part.net().stream().map(p -> p.times(scale)).toList();
    double x0 = net.stream().mapToDouble(Vec2::x).min().orElse(0);
    double x1 = net.stream().mapToDouble(Vec2::x).max().orElse(0);
    double x = (x0 + x1) / 2;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    // Half way up the outline there, so that the name of a curved part lies on it.
    for (int i = 0; i < net.size(); i++) {
      Vec2 a = net.get(i);
      Vec2 b = net.get((i + 1) % net.size());
      if (a.x() <= x != b.x() <= x) {
        double y = a.y() + (b.y() - a.y()) * (x - a.x()) / (b.x() - a.x());
        low = Math.min(low, y);
        high = Math.max(high, y);
      }
    }
    String lies = BoardWords.lies(part);
    String text = part.label() + (lies.isEmpty() ? "" : " · " + lies);
    double room = 0.96 * (x1 - x0) / Typeface.width(text, 1);
    return new Name(
        text, 0, Math.min(MOST, Math.min(room, high - low)), new Vec2(x, (low + high) / 2));
  }

  /** How many parts have a number. */
  int numbers() {
    return (int) names.stream().filter(n -> n.number > 0).count();
  }

  /** What the numbers mean, in lines no longer than {@code wide}. */
  List<String> legend(double size, double wide) {
    String all =
        names.stream()
            .filter(n -> n.number > 0)
            .map(n -> n.number + " " + n.text)
            .collect(Collectors.joining("; "));
    return all.isEmpty() ? List.of() : Typeface.lines(all, size, wide);
  }
}
