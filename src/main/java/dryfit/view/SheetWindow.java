package dryfit.view;

import dryfit.fit.JointSection;
import dryfit.geometry.Vec2;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import javafx.scene.shape.ClosePath;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;

/**
 * The piece of a section that a sheet has room for, and where that is on the sheet. Both parts are
 * in it whole if they do not go on far; what does go on ends at the window's edge, which is wavy as
 * a freehand break line is (ISO 128-2 has it for the limit of a partial view; from memory).
 */
final class SheetWindow {
  /** Paper between the wood and the frame, pixels. */
  private static final double PAPER = 9;

  /** How much more than the joint's own surroundings may be shown, share of those. */
  private static final double MORE = 0.6;

  private static final double WAVE_HIGH = 1.6;
  private static final double WAVE_LONG = 17;
  private static final double WAVE_STEP = 2;

  private final double scale;
  private final double left;
  private final double top;
  private final double width;
  private final double height;

  private SheetWindow(Vec2 low, Vec2 high, double width, double height) {
    this.width = width;
    this.height = height;
    Vec2 size = high.minus(low);
    scale = Math.min((width - 2 * PAPER) / size.x(), (height - 2 * PAPER) / size.y());
    left = width / 2 - scale * (low.x() + high.x()) / 2;
    top = height / 2 + scale * (low.y() + high.y()) / 2;
  }

  static SheetWindow of(JointSection section, double width, double height) {
    List<Vec2> points = new ArrayList<>();
    for (JointSection.Cut cut : section.cuts()) {
      if (cut.role() != JointSection.Role.OTHER) {
        cut.outlines().forEach(points::addAll);
      }
    }
    Vec2 low = section.low();
    Vec2 high = section.high();
    Vec2 more = high.minus(low).times(MORE);
    Vec2 from = new Vec2(least(points, Vec2::x, low.x()), least(points, Vec2::y, low.y()));
    Vec2 to = new Vec2(most(points, Vec2::x, high.x()), most(points, Vec2::y, high.y()));
    Vec2 lowest =
        new Vec2(
            low.x() - from.x() <= more.x() ? from.x() : low.x(),
            low.y() - from.y() <= more.y() ? from.y() : low.y());
    Vec2 highest =
        new Vec2(
            to.x() - high.x() <= more.x() ? to.x() : high.x(),
            to.y() - high.y() <= more.y() ? to.y() : high.y());
    // So that an edge that ends there is seen to end.
    Vec2 margin = highest.minus(lowest).times(0.03);
    return new SheetWindow(lowest.minus(margin), highest.plus(margin), width, height);
  }

  private static double least(List<Vec2> points, ToDoubleFunction<Vec2> of, double at) {
    return Math.min(at, points.stream().mapToDouble(of).min().orElse(at));
  }

  private static double most(List<Vec2> points, ToDoubleFunction<Vec2> of, double at) {
    return Math.max(at, points.stream().mapToDouble(of).max().orElse(at));
  }

  /** Pixels from the left of the sheet. */
  double x(Vec2 at) {
    return left + scale * at.x();
  }

  /** Pixels from the top of the sheet. */
  double y(Vec2 at) {
    return top - scale * at.y();
  }

  /** All that wood may cover. */
  Path edge() {
    Path edge = new Path();
    for (double x = PAPER; x < width - PAPER; x += WAVE_STEP) {
      point(edge, x, PAPER + wave(x));
    }
    for (double y = PAPER; y < height - PAPER; y += WAVE_STEP) {
      point(edge, width - PAPER + wave(y), y);
    }
    for (double x = width - PAPER; x > PAPER; x -= WAVE_STEP) {
      point(edge, x, height - PAPER + wave(x));
    }
    for (double y = height - PAPER; y > PAPER; y -= WAVE_STEP) {
      point(edge, PAPER + wave(y), y);
    }
    edge.getElements().add(new ClosePath());
    edge.setFill(javafx.scene.paint.Color.BLACK);
    return edge;
  }

  /** Where wood of these outlines goes on beyond the window. */
  List<Path> breaks(List<List<Vec2>> outlines) {
    List<Path> lines = new ArrayList<>();
    for (double x : new double[] {PAPER, width - PAPER}) {
      for (double[] span : spans(outlines, this::x, this::y, x, height)) {
        lines.add(line(span, y -> x + wave(y), true));
      }
    }
    for (double y : new double[] {PAPER, height - PAPER}) {
      for (double[] span : spans(outlines, this::y, this::x, y, width)) {
        lines.add(line(span, x -> y + wave(x), false));
      }
    }
    return lines;
  }

  /** From where to where a line across the sheet runs in wood, within the window. */
  private static List<double[]> spans(
      List<List<Vec2>> outlines,
      ToDoubleFunction<Vec2> across,
      ToDoubleFunction<Vec2> along,
      double at,
      double length) {
    List<Double> met = new ArrayList<>();
    for (List<Vec2> outline : outlines) {
      for (int i = 0; i < outline.size(); i++) {
        Vec2 a = outline.get(i);
        Vec2 b = outline.get((i + 1) % outline.size());
        double from = across.applyAsDouble(a) - at;
        double to = across.applyAsDouble(b) - at;
        if (from < 0 != to < 0) {
          double share = from / (from - to);
          met.add(
              along.applyAsDouble(a) + share * (along.applyAsDouble(b) - along.applyAsDouble(a)));
        }
      }
    }
    met.sort(null);
    List<double[]> spans = new ArrayList<>();
    for (int i = 0; i + 1 < met.size(); i += 2) {
      double from = Math.max(PAPER, met.get(i));
      double to = Math.min(length - PAPER, met.get(i + 1));
      if (to > from) {
        spans.add(new double[] {from, to});
      }
    }
    return spans;
  }

  private static Path line(double[] span, DoubleUnaryOperator wavy, boolean upright) {
    Path line = new Path();
    for (double t = span[0]; t < span[1]; t += WAVE_STEP) {
      point(line, upright ? wavy.applyAsDouble(t) : t, upright ? t : wavy.applyAsDouble(t));
    }
    double end = span[1];
    point(line, upright ? wavy.applyAsDouble(end) : end, upright ? end : wavy.applyAsDouble(end));
    return line;
  }

  private static void point(Path path, double x, double y) {
    path.getElements().add(path.getElements().isEmpty() ? new MoveTo(x, y) : new LineTo(x, y));
  }

  private static double wave(double along) {
    return WAVE_HIGH * Math.sin(2 * Math.PI * along / WAVE_LONG);
  }
}
