package dryfit.export.book;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.export.TextStyle;
import dryfit.export.paper.Ink;
import dryfit.fit.PartSides;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import dryfit.shop.Setout;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** All views of a part at one scale: each face that something is marked out on, two at least. */
final class PartDrawing {
  private static final List<String> PREFERRED = List.of("outside", "front", "top", "right");

  private PartDrawing() {}

  /**
   * The largest drawing that fits; or one for each view, where those come out larger by themselves.
   *
   * @param wide room on paper, mm
   * @param high room on paper, mm
   */
  static List<Block.Drawing> of(
      Chair chair,
      Setout setout,
      Map<String, String> letters,
      TextStyle style,
      double wide,
      double high) {
    PartSides sides = PartSides.of(chair, setout.part());
    List<PartView> views =
        sheets(setout, sides).stream()
            .map(sheet -> new PartView(setout, sides, sheet, letters, style))
            .toList();
    List<Block.Drawing> out = List.of();
    for (Scale scale : Scale.all(style.inches())) {
      out = List.of(laid(views, scale, setout.isUpright()));
      if (fit(out, wide, high)) {
        return out;
      }
      out = views.stream().map(v -> laid(List.of(v), scale, setout.isUpright())).toList();
      if (fit(out, wide, high)) {
        return out;
      }
    }
    return out;
  }

  private static boolean fit(List<Block.Drawing> drawings, double wide, double high) {
    return drawings.stream().allMatch(d -> d.width() <= wide && d.height() <= high);
  }

  /** What stands is drawn side by side, what lies one above the other. */
  private static Block.Drawing laid(List<PartView> views, Scale scale, boolean upright) {
    List<PartView.Laid> laid = views.stream().map(v -> v.at(scale.factor())).toList();
    List<Ink> ink = new ArrayList<>();
    double width = 0;
    double height = 0;
    if (upright) {
      height = laid.stream().mapToDouble(PartView.Laid::height).max().orElse(0);
      for (PartView.Laid l : laid) {
        put(ink, l, width, height - l.height());
        width += l.width();
      }
    } else {
      double total = laid.stream().mapToDouble(PartView.Laid::height).sum();
      width = laid.stream().mapToDouble(PartView.Laid::width).max().orElse(0);
      double y = total;
      for (PartView.Laid l : laid) {
        y -= l.height();
        put(ink, l, 0, y);
      }
      height = total;
    }
    return new Block.Drawing(
        "Drawn " + scale.word() + ". Dashed: mortises and tenons behind.",
        width,
        height,
        ink,
        scale.factor());
  }

  private static void put(List<Ink> ink, PartView.Laid laid, double x, double y) {
    ink.add(
        new Ink.Window(
            new Vec2(x, y),
            new Vec2(x + laid.width(), y + laid.height()),
            new Vec2(x, y),
            laid.ink()));
  }

  /** The frames to look from, in the part's own frame. */
  private static List<Frame> sheets(Setout setout, PartSides sides) {
    Part part = setout.part();
    List<Vec3> eyes = eyes(setout, sides);
    Vec3 x = new Vec3(1, 0, 0);
    List<Frame> out = new ArrayList<>();
    if (setout.isUpright()) {
      Vec3 up = part.frame().x().z() > 0 ? x : x.negated();
      eyes.forEach(eye -> out.add(Frame.of(Vec3.ZERO, up.cross(eye), up)));
      return out;
    }
    // The first view has its top up if it can; all others keep its left and right.
    Vec3 first = eyes.get(0);
    Vec3 up = upOn(part, first);
    Vec3 right = up.cross(first);
    eyes.forEach(
        eye -> {
          boolean behind = eye.dot(first) < -0.5;
          Vec3 way = behind ? right.negated() : right;
          out.add(Frame.of(Vec3.ZERO, way, eye.cross(way)));
        });
    return out;
  }

  private static Vec3 upOn(Part part, Vec3 eye) {
    Vec3 across = Math.abs(eye.y()) > 0.5 ? new Vec3(0, 0, 1) : new Vec3(0, 1, 0);
    Vec3 inChair = part.frame().turn(across);
    Vec3 want = Math.abs(inChair.z()) > 0.3 ? Vec3.UP : Vec3.BACK;
    return inChair.dot(want) < 0 ? across.negated() : across;
  }

  /** The face side first, then the face edge, then whatever else has a mortise in it. */
  private static List<Vec3> eyes(Setout setout, PartSides sides) {
    boolean wideFirst = setout.bounds().size().y() >= setout.bounds().size().z();
    Vec3 thick = new Vec3(0, 0, 1);
    Vec3 wide = new Vec3(0, 1, 0);
    List<Vec3> out = new ArrayList<>();
    for (Vec3 axis : wideFirst ? List.of(thick, wide) : List.of(wide, thick)) {
      boolean plus = isMarked(setout, axis);
      boolean minus = isMarked(setout, axis.negated());
      if (plus || !minus && isPreferred(setout, sides, axis)) {
        out.add(axis);
      } else {
        out.add(axis.negated());
      }
      if (plus && minus) {
        out.add(axis.negated());
      }
    }
    return out;
  }

  private static boolean isMarked(Setout setout, Vec3 face) {
    return setout.marks().stream()
        .anyMatch(m -> m.kind() == Setout.Kind.MORTISE && m.face().dot(face) > 0.5);
  }

  private static boolean isPreferred(Setout setout, PartSides sides, Vec3 axis) {
    return PREFERRED.contains(sides.nearest(setout.part().frame().turn(axis)));
  }
}
