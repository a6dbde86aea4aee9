package dryfit.view;

import dryfit.export.picture.Camera;
import dryfit.export.picture.Figure;
import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import dryfit.measure.Length;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What stands beside the chair on paper: a sitter of light wood, or a rule in light and dark. */
final class PaperScale {
  private static final String LIGHT = "maple";
  private static final String DARK = "oak";

  /** Flats round a limb: so many that no line of ink is drawn between two of them. */
  private static final int FLATS = 32;

  /** Height of the numbers, mm, and how much of the rule's width the widest may take. */
  private static final double NUMBER = 21;

  private static final double WIDEST = 0.9;

  private static final Font FONT = new Font(Font.SANS_SERIF, Font.BOLD, 12);

  private PaperScale() {}

  static List<Figure> figures(Scale scale, Box chair) {
    List<Figure> figures = new ArrayList<>();
    if (scale instanceof Scale.Sits sits) {
      for (Limb limb : Limb.of(sits, chair)) {
        figures.add(figure(capsule(limb), LIGHT, limb.middle()));
      }
    } else if (scale instanceof Scale.Rule rule) {
      double step = ScaleFigure.step(rule.unit());
      long bands = Math.round(ScaleFigure.height(rule.unit(), chair) / step);
      for (int band = 0; band < bands; band++) {
        Vec3 low = foot(chair).plus(new Vec3(0, 0, band * step));
        Mesh mesh = box(low, low.plus(new Vec3(ScaleFigure.RULE, ScaleFigure.RULE, step)));
        figures.add(figure(mesh, band % 2 == 0 ? LIGHT : DARK, low));
      }
    }
    return figures;
  }

  private static Vec3 foot(Box chair) {
    return new Vec3(chair.low().x() - ScaleFigure.ASIDE, chair.low().y(), 0);
  }

  private static Figure figure(Mesh mesh, String timber, Vec3 at) {
    return new Figure(mesh, timber, "scale", Frame.of(at, Vec3.UP, Vec3.RIGHT), false);
  }

  /** Writes how high each band of a rule ends, on its front where that is seen. */
  static void number(
      BufferedImage picture, Camera camera, Length.Unit unit, Box chair, PaperInk behind) {
    if (camera.eye().y() >= foot(chair).y()) {
      return;
    }
    Camera.Sheet sheet = camera.sheet(picture.getWidth(), picture.getHeight());
    double step = ScaleFigure.step(unit);
    Graphics2D pen = picture.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    pen.setColor(new Color(0x2b241b));
    for (int band = 1; band * step <= ScaleFigure.height(unit, chair) + 1; band++) {
      Vec3 at = foot(chair).plus(new Vec3(ScaleFigure.RULE / 2, 0, band * step - 14));
      if (camera.depth(at) < 1 || !behind.isSeen(at, camera.eye())) {
        continue;
      }
      double pixels = sheet.scale() / camera.depth(at);
      String text = Long.toString(band * (unit == Length.Unit.IN ? 2L : 100L));
      Font usual = FONT.deriveFont((float) (NUMBER * pixels));
      double most = WIDEST * ScaleFigure.RULE * pixels;
      double fits = Math.min(1, most / pen.getFontMetrics(usual).stringWidth(text));
      float high = (float) (fits * NUMBER * pixels);
      pen.setFont(FONT.deriveFont(high));
      double wide = pen.getFontMetrics().getStringBounds(text, pen).getWidth();
      pen.drawString(text, (float) (sheet.x(at) - wide / 2), (float) sheet.y(at) + 0.36f * high);
    }
    pen.dispose();
  }

  private static Mesh box(Vec3 low, Vec3 high) {
    double[] xyz = new double[24];
    for (int i = 0; i < 8; i++) {
      xyz[3 * i] = (i & 1) == 0 ? low.x() : high.x();
      xyz[3 * i + 1] = (i & 2) == 0 ? low.y() : high.y();
      xyz[3 * i + 2] = (i & 4) == 0 ? low.z() : high.z();
    }
    int[][] sides = {
      {0, 2, 3, 1}, {4, 5, 7, 6}, {0, 1, 5, 4}, {2, 6, 7, 3}, {0, 4, 6, 2}, {1, 3, 7, 5}
    };
    return mesh(xyz, List.of(sides));
  }

  /** A cylinder with half a ball at each end, stretched as the limb is. */
  private static Mesh capsule(Limb limb) {
    Vec3 along = limb.to().minus(limb.from());
    Vec3 axis = along.length() > 0 ? along.unit() : Vec3.UP;
    Vec3 side = (Math.abs(axis.x()) > 0.8 ? Vec3.UP : Vec3.RIGHT).across(axis).unit();
    Frame frame = Frame.of(limb.middle(), axis, side);
    int rings = FLATS / 2;
    double[] xyz = new double[3 * (2 + rings * FLATS)];
    put(xyz, 0, limb, frame.place(new Vec3(-along.length() / 2 - limb.radius(), 0, 0)));
    put(xyz, 1, limb, frame.place(new Vec3(along.length() / 2 + limb.radius(), 0, 0)));
    for (int r = 0; r < rings; r++) {
      // As many rings round the one end as round the other; the middle stretch lies between.
      double turn = Math.PI * (r + 0.5) / rings;
      double end = (r < rings / 2 ? -0.5 : 0.5) * along.length();
      for (int k = 0; k < FLATS; k++) {
        double round = 2 * Math.PI * k / FLATS;
        double wide = limb.radius() * Math.sin(turn);
        put(
            xyz,
            2 + r * FLATS + k,
            limb,
            frame.place(
                new Vec3(
                    end - limb.radius() * Math.cos(turn),
                    wide * Math.cos(round),
                    wide * Math.sin(round))));
      }
    }
    List<int[]> faces = new ArrayList<>();
    for (int k = 0; k < FLATS; k++) {
      int next = (k + 1) % FLATS;
      faces.add(new int[] {0, 2 + next, 2 + k});
      int last = 2 + (rings - 1) * FLATS;
      faces.add(new int[] {1, last + k, last + next});
      for (int r = 0; r + 1 < rings; r++) {
        int a = 2 + r * FLATS;
        int b = a + FLATS;
        faces.add(new int[] {a + k, a + next, b + next, b + k});
      }
    }
    return mesh(xyz, faces);
  }

  private static void put(double[] xyz, int number, Limb limb, Vec3 p) {
    Vec3 middle = limb.middle();
    xyz[3 * number] = middle.x() + limb.wide() * (p.x() - middle.x());
    xyz[3 * number + 1] = middle.y() + limb.deep() * (p.y() - middle.y());
    xyz[3 * number + 2] = p.z();
  }

  /** Flat faces without holes, each anticlockwise seen from outside. */
  private static Mesh mesh(double[] xyz, List<int[]> loops) {
    int[][][] faces = new int[loops.size()][][];
    List<int[]> triangles = new ArrayList<>();
    List<Integer> faceOf = new ArrayList<>();
    for (int f = 0; f < faces.length; f++) {
      int[] loop = loops.get(f);
      faces[f] = new int[][] {loop};
      for (int i = 1; i + 1 < loop.length; i++) {
        triangles.add(new int[] {loop[0], loop[i], loop[i + 1]});
        faceOf.add(f);
      }
    }
    return new Mesh(
        xyz,
        faces,
        triangles.stream().flatMapToInt(Arrays::stream).toArray(),
        faceOf.stream().mapToInt(Integer::intValue).toArray(),
        new int[faces.length],
        List.of(""));
  }
}
