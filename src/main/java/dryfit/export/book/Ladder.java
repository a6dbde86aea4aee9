package dryfit.export.book;

import dryfit.export.paper.Ink;
import dryfit.export.paper.Ink.Align;
import dryfit.export.paper.Ink.Colour;
import dryfit.export.paper.Ink.Line;
import dryfit.export.paper.Ink.Words;
import dryfit.export.paper.Typeface;
import dryfit.geometry.Vec2;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Running dimensions: a row of numbers, each with a thin line to the place it belongs to. Numbers
 * that would touch are moved apart, and their lines bend.
 */
final class Ladder {
  /** Type of the numbers, mm. */
  static final double TYPE = 2.5;

  /** Least distance of two numbers, middle to middle, mm. */
  static final double STEP = 3.1;

  /** How far lines run before numbers begin, mm. */
  static final double RUN = 6;

  private static final double THIN = 0.1;

  private final List<Rung> rungs = new ArrayList<>();

  /** A number, and where it belongs on the paper. */
  private record Rung(double at, double edge, String text) {}

  /**
   * @param at place along the ladder on the paper, mm
   * @param edge where its line begins, across the ladder
   */
  void add(double at, double edge, String text) {
    for (int i = 0; i < rungs.size(); i++) {
      Rung known = rungs.get(i);
      if (known.text.equals(text) && Math.abs(known.at - at) < 0.5) {
        if (Math.abs(edge) > Math.abs(known.edge)) {
          rungs.set(i, new Rung(at, edge, text));
        }
        return;
      }
    }
    rungs.add(new Rung(at, edge, text));
  }

  /** How wide its widest number is, mm. */
  double textWidth() {
    return rungs.stream().mapToDouble(r -> Typeface.width(r.text, TYPE)).max().orElse(0);
  }

  /** From the edge of the drawing to the far end of the numbers, mm. */
  double depth() {
    return rungs.isEmpty() ? 0 : RUN + 1 + textWidth();
  }

  /** Lowest and highest place that its numbers take, type included. */
  double[] reach() {
    double[] places = places();
    return rungs.isEmpty()
        ? new double[] {0, 0}
        : new double[] {places[0] - STEP / 2, places[places.length - 1] + STEP / 2};
  }

  private void sort() {
    rungs.sort(Comparator.comparingDouble(Rung::at).thenComparing(Rung::text));
  }

  /** Where the numbers go: as near to their places as they can without touching. */
  private double[] places() {
    sort();
    int n = rungs.size();
    // Blocks of numbers that touch are put where their mean distance is nothing.
    List<double[]> blocks = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      blocks.add(new double[] {rungs.get(i).at, 1});
      while (blocks.size() > 1) {
        double[] last = blocks.get(blocks.size() - 1);
        double[] before = blocks.get(blocks.size() - 2);
        if (last[0] - before[0] >= STEP * (last[1] + before[1]) / 2) {
          break;
        }
        double count = last[1] + before[1];
        // Middle of the joined block, from what each number would like.
        double middle = (before[0] * before[1] + last[0] * last[1]) / count;
        blocks.remove(blocks.size() - 1);
        blocks.set(blocks.size() - 1, new double[] {middle, count});
      }
    }
    double[] out = new double[n];
    int at = 0;
    for (double[] block : blocks) {
      for (int k = 0; k < block[1]; k++) {
        out[at++] = block[0] + (k - (block[1] - 1) / 2) * STEP;
      }
    }
    return out;
  }

  /**
   * Numbers in a column to the right of a drawing.
   *
   * @param base where the drawing ends
   */
  void column(List<Ink> ink, double base) {
    double[] places = places();
    for (int i = 0; i < places.length; i++) {
      Rung r = rungs.get(i);
      leader(
          ink, new Vec2(r.edge, r.at), new Vec2(base + 1.5, r.at), new Vec2(base + RUN, places[i]));
      ink.add(new Words(new Vec2(base + RUN + 0.6, places[i] - 0.9), r.text, TYPE, Align.LEFT));
    }
  }

  /**
   * Numbers in a row below a drawing, read from the right.
   *
   * @param base where the drawing ends
   */
  void row(List<Ink> ink, double base) {
    double[] places = places();
    for (int i = 0; i < places.length; i++) {
      Rung r = rungs.get(i);
      leader(
          ink, new Vec2(r.at, r.edge), new Vec2(r.at, base - 1.5), new Vec2(places[i], base - RUN));
      ink.add(
          new Words(
              new Vec2(places[i] + 0.9, base - RUN - 0.6),
              r.text,
              TYPE,
              Align.RIGHT,
              Math.PI / 2,
              Colour.BLACK));
    }
  }

  private static void leader(List<Ink> ink, Vec2 from, Vec2 bend, Vec2 to) {
    ink.add(new Line(List.of(from, bend, to), false, THIN, Colour.GREY));
  }
}
