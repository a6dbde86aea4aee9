package dryfit.shop.jig;

import dryfit.document.Printing;
import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import dryfit.solid.Kernel;
import java.util.ArrayList;
import java.util.List;

/**
 * A stick of a given length, printed lying down. One that is longer than the bed comes in pieces
 * that are halved together and joined by two rods: one in a round hole, which gives the length, and
 * one in a slot along the stick, which keeps it straight and takes no part in the length.
 */
final class Stick {
  static final double WIDE = 22;
  static final double THICK = 12;

  /** Shorter sticks have no room for letters, mm. */
  static final double LEAST = 14;

  private static final double LAP = 44;

  /** Room at the shoulders of the halving, so that only the round rod gives the length, mm. */
  private static final double ROOM = 0.4;

  private static final double SLOT = 2;

  private final Printing printing;
  private final Kernel kernel;
  private final double length;

  Stick(Printing printing, Kernel kernel, double length) {
    this.printing = printing;
    this.kernel = kernel;
    this.length = length;
  }

  /** How many pieces it takes on the bed. */
  int count() {
    double bed = Math.max(printing.bedX(), printing.bedY()) - 10;
    return length <= bed ? 1 : (int) Math.ceil((length - LAP) / (bed - LAP));
  }

  /**
   * The pieces.
   *
   * @param on its own frame in chair space: x along it from its start, z up off what it lies on
   * @param up direction of the arrow, chair space
   */
  List<JigPiece> pieces(String name, List<String> words, Frame on, Vec3 up, String upWord) {
    int count = count();
    double step = (length - LAP) / count;
    List<JigPiece> pieces = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      boolean first = i == 0;
      boolean last = i == count - 1;
      double x0 = i * step;
      double x1 = last ? length : (i + 1) * step + LAP;
      // Every other piece has its halvings on top, and is printed the other way up.
      boolean over = i % 2 == 1;
      Frame bed =
          over
              ? new Frame(
                  on.place(new Vec3(0, 0, THICK)), on.x(), on.y().negated(), on.z().negated())
              : on;
      JigShape shape = new JigShape(bed);
      double half = THICK / 2;
      shape.add(new Box(new Vec3(x0, -WIDE / 2, 0), new Vec3(x1, WIDE / 2, THICK)));
      if (!first) {
        halve(shape, x0 - 1, x0 + LAP + ROOM, half);
        rods(shape, x0 + LAP / 2, over, half);
      }
      if (!last) {
        halve(shape, x1 - LAP - ROOM, x1 + 1, half);
        rods(shape, x1 - LAP / 2, over, half);
      }
      double from = (first ? x0 : x0 + LAP) + 3;
      double to = (last ? x1 : x1 - LAP) - 3;
      letters(shape, words, count > 1 ? (i + 1) + "/" + count : "", from, to, up, upWord);
      String piece = count == 1 ? name : name + " " + (i + 1) + " of " + count;
      pieces.add(moved(shape, piece, x0));
    }
    return pieces;
  }

  private static void halve(JigShape shape, double from, double to, double half) {
    shape.cut(Convex.box(new Box(new Vec3(from, -WIDE, half), new Vec3(to, WIDE, THICK + 1))));
  }

  /** The round hole nearer to the start; the slot, in the upper piece only, further on. */
  private void rods(JigShape shape, double middle, boolean over, double half) {
    double round = printing.pin() + printing.holeAllowance();
    double apart = LAP / 2 - printing.pin() / 2 - 5;
    shape.bore(new Vec3(middle - apart, 0, 0), Vec3.UP, round, -2, half + 2, printing.relief());
    Vec3 second = new Vec3(middle + apart, 0, 0);
    if (over) {
      shape.bore(
          second.minus(Vec3.RIGHT.times(SLOT / 2)),
          Vec3.UP,
          round,
          -2,
          half + 2,
          printing.relief());
      shape.bore(
          second.plus(Vec3.RIGHT.times(SLOT / 2)), Vec3.UP, round, -2, half + 2, printing.relief());
      shape.cutLate(
          Convex.box(
              new Box(
                  second.plus(new Vec3(-SLOT / 2, -round / 2, -2)),
                  second.plus(new Vec3(SLOT / 2, round / 2, half + 2)))));
    } else {
      shape.bore(second, Vec3.UP, round, -2, half + 2, printing.relief());
    }
  }

  private void letters(
      JigShape shape,
      List<String> words,
      String which,
      double from,
      double to,
      Vec3 up,
      String upWord) {
    List<String> all = new ArrayList<>(words);
    if (!which.isEmpty()) {
      all.add(which);
    }
    all.add(upWord);
    Vec3 way = shape.bed().localDirection(up).across(Vec3.UP);
    Vec3 arrow = way.length() > 0.2 ? way.unit() : Vec3.RIGHT;
    double size = Math.min(9, (to - from) / 3);
    Engraving.arrow(
            new Vec3(to - size / 2 - 0.5, 0, THICK).minus(arrow.times(size * 0.4)),
            arrow,
            Vec3.UP,
            size * 0.8)
        .forEach(shape::cutLate);
    shape.engrave(
        all,
        new Panel(
            new Vec3(from, -WIDE / 2 + 1.5, THICK),
            Vec3.RIGHT,
            Vec3.BACK,
            to - from - size - 2,
            WIDE - 3));
  }

  /** Each piece lies near the middle of the bed, not where it is in the stick. */
  private JigPiece moved(JigShape shape, String name, double x0) {
    Frame back = new Frame(new Vec3(-x0, 0, 0), Vec3.RIGHT, Vec3.BACK, Vec3.UP);
    JigPiece piece = shape.piece(name, kernel, printing.relief());
    Frame bed = piece.on();
    return new JigPiece(
        name,
        piece.mesh().placed(back),
        piece.cells().stream().map(c -> c.placed(back)).toList(),
        new Frame(bed.place(new Vec3(x0, 0, 0)), bed.x(), bed.y(), bed.z()));
  }
}
