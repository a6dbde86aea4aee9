package dryfit.shop.jig;

import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Lines of letters as grooves. A groove has the section of a V with a right angle, so that neither
 * side of it hangs over more than 45 degrees, whichever way the face lies on the bed.
 */
final class Engraving {
  /** Letters smaller than this are no longer read in plastic, mm (common practice, no source). */
  static final double LEAST = 3.6;

  private static final double MOST = 6;

  /** From the foot of one line to that of the next, over the height of a letter. */
  private static final double LEADING = 1.5;

  /** A groove begins so far outside the face, mm. */
  private static final double SPARE = 0.25;

  private Engraving() {}

  /** How deep a groove of letters so high is; its width is twice that. */
  private static double depth(double letter) {
    return Math.min(0.5, letter / 9);
  }

  /** How wide a panel must be for a line, at the smallest letters. */
  static double leastWidth(List<String> words, int lines) {
    double low = 0;
    for (String word : words) {
      low = Math.max(low, StrokeFont.width(word));
    }
    double unit = LEAST / StrokeFont.HIGH;
    for (double w = low; ; w += 1) {
      if (wrapped(words, w).size() <= lines) {
        return w * unit + 1;
      }
    }
  }

  /** How many lines of the smallest letters a panel so high takes. */
  static int mostLines(double height) {
    return (int) Math.floor((height + (LEADING - 1) * LEAST) / (LEADING * LEAST));
  }

  /** The words in lines no wider than {@code width}, in units of the letters' field. */
  static List<String> wrapped(List<String> words, double width) {
    List<String> lines = new ArrayList<>();
    for (String word : words) {
      int last = lines.size() - 1;
      String longer = last < 0 ? "" : lines.get(last) + " " + word;
      if (last >= 0 && StrokeFont.width(longer) <= width) {
        lines.set(last, longer);
      } else {
        lines.add(word);
      }
    }
    return lines;
  }

  /** Grooves of words on a panel, as large as they fit; nothing if they do not fit at all. */
  static Optional<List<Convex>> of(List<String> words, Panel panel) {
    for (double letter = MOST; letter >= LEAST - 1e-9; letter -= 0.2) {
      double unit = letter / StrokeFont.HIGH;
      List<String> lines = wrapped(words, panel.width() / unit);
      double high = letter * (1 + LEADING * (lines.size() - 1));
      boolean fits =
          high <= panel.height()
              && lines.stream().allMatch(l -> StrokeFont.width(l) * unit <= panel.width());
      if (fits) {
        return Optional.of(lines(lines, panel, letter, (panel.height() - high) / 2));
      }
    }
    return Optional.empty();
  }

  private static List<Convex> lines(List<String> lines, Panel panel, double letter, double margin) {
    double unit = letter / StrokeFont.HIGH;
    List<Convex> grooves = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      double foot = margin + letter * LEADING * (lines.size() - 1 - i);
      double left = (panel.width() - StrokeFont.width(lines.get(i)) * unit) / 2;
      for (Vec2[] s : StrokeFont.strokes(lines.get(i))) {
        grooves.add(
            groove(
                panel.at(left + s[0].x() * unit, foot + s[0].y() * unit),
                panel.at(left + s[1].x() * unit, foot + s[1].y() * unit),
                panel.out(),
                depth(letter)));
      }
    }
    return grooves;
  }

  /** An arrow on a panel from a place along a direction in its plane. */
  static List<Convex> arrow(Vec3 from, Vec3 direction, Vec3 out, double length) {
    Vec3 tip = from.plus(direction.times(length));
    Vec3 side = out.cross(direction);
    Vec3 back = tip.minus(direction.times(length * 0.3));
    double depth = depth(LEAST + 1);
    return List.of(
        groove(from, tip, out, depth),
        groove(tip, back.plus(side.times(length * 0.22)), out, depth),
        groove(tip, back.minus(side.times(length * 0.22)), out, depth));
  }

  /** A straight groove in a face, its ends sloped like its sides. */
  static Convex groove(Vec3 from, Vec3 to, Vec3 out, double depth) {
    Vec3 along = to.minus(from).unit();
    Vec3 side = out.cross(along);
    double wide = depth + SPARE;
    Vec3 high = out.times(SPARE);
    Vec3 a = from.minus(along.times(wide)).plus(high);
    Vec3 b = to.plus(along.times(wide)).plus(high);
    return Convex.hull(
        List.of(
            a.plus(side.times(wide)),
            a.minus(side.times(wide)),
            b.plus(side.times(wide)),
            b.minus(side.times(wide)),
            from.minus(out.times(depth)),
            to.minus(out.times(depth))));
  }
}
