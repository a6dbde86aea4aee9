package dryfit.export.paper;

import dryfit.export.paper.Ink.Align;
import dryfit.export.paper.Ink.Colour;
import dryfit.export.paper.Ink.Line;
import dryfit.export.paper.Ink.Words;
import dryfit.geometry.Vec2;
import java.util.ArrayList;
import java.util.List;

/**
 * Bars of 100 mm and of 4 in, from the middle of a fine tick to the middle of the other, by which
 * one sees whether a printer has kept the size, along the paper and across it.
 */
public final class CheckBars {
  private CheckBars() {}

  /** Room across two bars, mm. */
  static final double DEEP = 14;

  /** Room along them. */
  static final double LONG = 102;

  private static final double[] LENGTHS = {100, 4 * 25.4};
  private static final String[] NAMES = {"100 mm", "4 in"};
  private static final double TYPE = 2.6;
  private static final double TICK = 3;

  /** To the right of a place, one above the other. */
  public static List<Ink> across(Vec2 at) {
    List<Ink> out = new ArrayList<>();
    for (int i = 0; i < LENGTHS.length; i++) {
      Vec2 from = new Vec2(at.x(), at.y() + 2 + i * DEEP / 2);
      Vec2 to = new Vec2(from.x() + LENGTHS[i], from.y());
      bar(out, from, to, new Vec2(0, TICK / 2));
      Vec2 words = new Vec2((from.x() + to.x()) / 2, from.y() + 0.8);
      out.add(new Words(words, name(i), TYPE, Align.MIDDLE));
    }
    return out;
  }

  /** Up from a place, side by side. */
  public static List<Ink> up(Vec2 at) {
    List<Ink> out = new ArrayList<>();
    for (int i = 0; i < LENGTHS.length; i++) {
      Vec2 from = new Vec2(at.x() + 4.5 + i * DEEP / 2, at.y());
      Vec2 to = new Vec2(from.x(), from.y() + LENGTHS[i]);
      bar(out, from, to, new Vec2(TICK / 2, 0));
      Vec2 words = new Vec2(from.x() - 0.8, (from.y() + to.y()) / 2);
      out.add(new Words(words, name(i), TYPE, Align.MIDDLE, Math.PI / 2, Colour.BLACK));
    }
    return out;
  }

  private static String name(int i) {
    return NAMES[i] + ", tick to tick";
  }

  private static void bar(List<Ink> out, Vec2 from, Vec2 to, Vec2 tick) {
    out.add(Line.of(from, to, 0.2, Colour.BLACK));
    out.add(Line.of(from.minus(tick), from.plus(tick), 0.12, Colour.BLACK));
    out.add(Line.of(to.minus(tick), to.plus(tick), 0.12, Colour.BLACK));
  }
}
