package dryfit.shop.template;

import dryfit.geometry.Vec2;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * What a template is longer at one end, so that it can be screwed down beyond the part.
 *
 * @param line the end of the part
 * @param waste what lies beyond it
 * @param screws two places along the waste
 */
record WasteEnd(List<Vec2> line, Region waste, List<Vec2> screws) {

  /** How far the waste reaches into the part, so that the two are one piece, mm. */
  private static final double ROOTED = 0.01;

  /**
   * All edges of the outline at the end that look out of it, and straight on from them.
   *
   * @param way -1 at the end with the lowest x, 1 at the other
   */
  static WasteEnd of(List<Vec2> outline, int way, double length) {
    int n = outline.size();
    int tip = 0;
    for (int i = 0; i < n; i++) {
      tip = way * outline.get(i).x() > way * outline.get(tip).x() ? i : tip;
    }
    List<Vec2> line = new ArrayList<>();
    for (int i = tip; looksOut(outline.get(i), outline.get((i + 1) % n)); i = (i + 1) % n) {
      line.add(outline.get((i + 1) % n));
    }
    Collections.reverse(line);
    line.add(outline.get(tip));
    for (int i = tip; looksOut(outline.get(i), outline.get((i + n - 1) % n)); i = (i + n - 1) % n) {
      line.add(outline.get((i + n - 1) % n));
    }
    double far = outline.get(tip).x() + way * length;
    Region waste = Region.empty();
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i + 1 < line.size(); i++) {
      Vec2 a = line.get(i);
      Vec2 b = line.get(i + 1);
      Vec2 in = new Vec2(-way * ROOTED, 0);
      waste =
          waste.with(
              Region.ofHulls(
                  List.of(
                      List.of(
                          a.plus(in), b.plus(in), new Vec2(far, a.y()), new Vec2(far, b.y())))));
      low = Math.min(low, Math.min(a.y(), b.y()));
      high = Math.max(high, Math.max(a.y(), b.y()));
    }
    List<Vec2> screws = new ArrayList<>();
    if (low < high) {
      for (double share : new double[] {0.35, 0.75}) {
        screws.add(new Vec2(far - way * (1 - share) * length, (low + high) / 2));
      }
    }
    return new WasteEnd(line, waste, screws);
  }

  /** An edge nearer to square across than to along the part. */
  private static boolean looksOut(Vec2 a, Vec2 b) {
    return Math.abs(b.y() - a.y()) > Math.abs(b.x() - a.x());
  }
}
