package dryfit.export.paper;

import dryfit.export.paper.Ink.Align;
import dryfit.export.paper.Ink.Colour;
import dryfit.export.paper.Ink.Line;
import dryfit.export.paper.Ink.Words;
import dryfit.export.paper.Page.Paper;
import dryfit.geometry.Vec2;
import java.util.ArrayList;
import java.util.List;

/**
 * A drawing at full size on sheets that are joined: neighbours overlap, and crosses in the overlap
 * are printed on both. Rows have letters from the top, columns numbers from the left. Each sheet
 * has its name, its neighbours, and bars to check the printer by. A sheet on which nothing would be
 * drawn is left out.
 */
public final class Tiles {
  /** What printers cannot reach at the edge of a sheet, and a little more, mm. */
  static final double EDGE = 8;

  /** How far neighbours overlap, mm. */
  public static final double OVERLAP = 10;

  private static final double FOOT = CheckBars.DEEP + 2;
  private static final double SIDE = CheckBars.DEEP + 2;
  private static final double CROSS = 4;
  private static final double TYPE = 2.8;

  private final Drawing drawing;
  private final double pageWide;
  private final double pageHigh;
  private final int columns;
  private final int rows;
  private final Vec2 start;
  private final boolean[][] used;

  private Tiles(Drawing drawing, double pageWide, double pageHigh) {
    this.drawing = drawing;
    this.pageWide = pageWide;
    this.pageHigh = pageHigh;
    this.columns = count(drawing.size().x(), wide());
    this.rows = count(drawing.size().y(), high());
    double coveredWide = columns * stepX() + OVERLAP;
    double coveredHigh = rows * stepY() + OVERLAP;
    // The drawing lies in the middle of its sheets.
    this.start =
        new Vec2(
            drawing.low().x() - (coveredWide - drawing.size().x()) / 2,
            drawing.high().y() + (coveredHigh - drawing.size().y()) / 2);
    this.used = new boolean[rows][columns];
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        used[r][c] = isUsed(r, c);
      }
    }
  }

  /** On sheets upright or lying, whichever takes fewer. */
  public static Tiles of(Drawing drawing, Paper paper) {
    Tiles upright = new Tiles(drawing, paper.width(), paper.height());
    Tiles lying = new Tiles(drawing, paper.height(), paper.width());
    return upright.count() <= lying.count() ? upright : lying;
  }

  private static int count(double size, double window) {
    return Math.max(1, (int) Math.ceil((size - OVERLAP) / (window - OVERLAP)));
  }

  private double wide() {
    return pageWide - 2 * EDGE - SIDE;
  }

  private double high() {
    return pageHigh - 2 * EDGE - FOOT;
  }

  private double stepX() {
    return wide() - OVERLAP;
  }

  private double stepY() {
    return high() - OVERLAP;
  }

  private Vec2 low(int row, int column) {
    return new Vec2(start.x() + column * stepX(), start.y() - row * stepY() - high());
  }

  private boolean isUsed(int row, int column) {
    Vec2 low = low(row, column);
    // What is only in the overlap is on the neighbour too.
    Vec2 in = new Vec2(OVERLAP / 2, OVERLAP / 2);
    Vec2 high = low.plus(new Vec2(wide(), high()));
    return InkPlaces.anyWithin(drawing.ink(), low.plus(in), high.minus(in));
  }

  /** How many sheets there are. */
  public int count() {
    int count = 0;
    for (boolean[] row : used) {
      for (boolean one : row) {
        count += one ? 1 : 0;
      }
    }
    return count;
  }

  private static String name(int row, int column) {
    return String.valueOf((char) ('A' + row % 26)).repeat(1 + row / 26) + (column + 1);
  }

  /**
   * The sheets, row by row.
   *
   * @param title stands on each
   */
  public List<Page> pages(String title) {
    List<Page> out = new ArrayList<>();
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        if (used[r][c]) {
          out.add(page(r, c, title));
        }
      }
    }
    return out;
  }

  private Page page(int row, int column, String title) {
    List<Ink> ink = new ArrayList<>();
    Vec2 at = new Vec2(EDGE + SIDE, EDGE + FOOT);
    Vec2 far = at.plus(new Vec2(wide(), high()));
    Vec2 shift = at.minus(low(row, column));
    ink.add(drawing.at(at, far, shift));
    ink.add(new Ink.Window(at, far, shift, crosses()));
    border(ink, row, column, at, far);
    ink.addAll(CheckBars.across(new Vec2(EDGE + SIDE, EDGE)));
    ink.addAll(CheckBars.up(new Vec2(EDGE, EDGE + FOOT)));
    double x = EDGE + SIDE + CheckBars.LONG + 4;
    List<String> words = words(row, column, title, (pageWide - EDGE - x) / (TYPE * 0.52));
    for (int i = 0; i < words.size(); i++) {
      ink.add(new Words(new Vec2(x, EDGE + FOOT - 4 - i * 4), words.get(i), TYPE, Align.LEFT));
    }
    return new Page(pageWide, pageHigh, ink);
  }

  private List<String> words(int row, int column, String title, double letters) {
    List<String> out = new ArrayList<>();
    out.add(title.length() <= letters ? title : title.substring(0, (int) letters - 1) + "…");
    out.add("Sheet " + name(row, column) + (count() == 1 ? "" : " of " + count()));
    out.add("Full size: print at 100 %, do not fit to the page");
    return out;
  }

  private boolean has(int row, int column) {
    return row >= 0 && column >= 0 && row < rows && column < columns && used[row][column];
  }

  /** The edge of the drawing's window; dashed where the paper is cut off and laid over another. */
  private void border(List<Ink> ink, int row, int column, Vec2 at, Vec2 far) {
    Vec2 upperLeft = new Vec2(at.x(), far.y());
    Vec2 lowerRight = new Vec2(far.x(), at.y());
    side(ink, upperLeft, far, false);
    side(ink, lowerRight, far, false);
    side(ink, at, upperLeft, has(row, column - 1));
    side(ink, at, lowerRight, has(row + 1, column));
    if (has(row, column - 1)) {
      String text = "cut here, lay over " + name(row, column - 1);
      Vec2 place = new Vec2(at.x() - 0.9, far.y() - 3);
      ink.add(new Words(place, text, 2.6, Align.RIGHT, Math.PI / 2, Colour.BLACK));
    }
    if (has(row + 1, column)) {
      String text = "cut here, lay over " + name(row + 1, column);
      Vec2 place = new Vec2(far.x() - 3, at.y() - 2.6);
      ink.add(new Words(place, text, 2.6, Align.RIGHT, 0, Colour.BLACK));
    }
  }

  private static void side(List<Ink> ink, Vec2 from, Vec2 to, boolean cut) {
    ink.add(
        cut
            ? new Line(List.of(from, to), false, 0.2, Colour.GREY, List.of(3.0, 1.5))
            : Line.of(from, to, 0.1, Colour.PALE));
  }

  /** Two on each side that two sheets share, in the middle of the overlap. */
  private List<Ink> crosses() {
    List<Ink> out = new ArrayList<>();
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        Vec2 low = low(r, c);
        for (double share : new double[] {0.25, 0.75}) {
          if (has(r, c) && has(r, c - 1)) {
            cross(out, low.plus(new Vec2(OVERLAP / 2, high() * share)));
          }
          if (has(r, c) && has(r + 1, c)) {
            cross(out, low.plus(new Vec2(wide() * share, OVERLAP / 2)));
          }
        }
      }
    }
    return out;
  }

  private static void cross(List<Ink> out, Vec2 at) {
    Vec2 x = new Vec2(CROSS, 0);
    Vec2 y = new Vec2(0, CROSS);
    out.add(Line.of(at.minus(x), at.plus(x), 0.15, Colour.BLUE));
    out.add(Line.of(at.minus(y), at.plus(y), 0.15, Colour.BLUE));
  }

  /** Where sheets overlap, on the drawing: lower left and upper right corners. */
  public List<Vec2[]> seams() {
    List<Vec2[]> out = new ArrayList<>();
    Vec2 low = low(rows - 1, 0);
    Vec2 high = low(0, columns - 1).plus(new Vec2(wide(), high()));
    for (int c = 1; c < columns; c++) {
      double x = low(0, c).x();
      out.add(new Vec2[] {new Vec2(x, low.y()), new Vec2(x + OVERLAP, high.y())});
    }
    for (int r = 1; r < rows; r++) {
      double y = low(r - 1, 0).y();
      out.add(new Vec2[] {new Vec2(low.x(), y), new Vec2(high.x(), y + OVERLAP)});
    }
    return out;
  }

  /** The whole drawing with its sheets over it, their names in them. */
  public Drawing map(double scale) {
    List<Ink> ink = new ArrayList<>(drawing.scaled(scale).ink());
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        if (used[r][c]) {
          Vec2 a = low(r, c).times(scale);
          Vec2 b = low(r, c).plus(new Vec2(wide(), high())).times(scale);
          List<Vec2> loop = List.of(a, new Vec2(b.x(), a.y()), b, new Vec2(a.x(), b.y()));
          ink.add(new Line(loop, true, 0.15, Colour.BLUE));
          Vec2 corner = new Vec2(a.x() + 1.2 + OVERLAP * scale, b.y() - 4.4 - OVERLAP * scale);
          ink.add(new Words(corner, name(r, c), 4, Align.LEFT, 0, Colour.BLUE));
        }
      }
    }
    Vec2 low = low(rows - 1, 0);
    Vec2 high = low(0, columns - 1).plus(new Vec2(wide(), high()));
    return new Drawing(ink, low.times(scale), high.times(scale));
  }

  /** How much room the sheets take when they are joined, mm. */
  public Vec2 covered() {
    return new Vec2(columns * stepX() + OVERLAP, rows * stepY() + OVERLAP);
  }
}
