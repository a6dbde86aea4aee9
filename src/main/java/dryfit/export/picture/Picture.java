package dryfit.export.picture;

import dryfit.export.paper.PngWriter;
import dryfit.geometry.Box;
import dryfit.geometry.Vec3;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A picture of a chair on paper: wood in two lights, ink lines, its shadow on the floor. Drawn by
 * hand into memory, without any display or font, so that the same chair gives the same bytes.
 */
public final class Picture {
  /** Samples along each side of a pixel. */
  private static final int FINE = 2;

  /** Share of the picture the chair may fill. */
  private static final double FILLED = 0.84;

  /** Greatest width or height, pixels. */
  public static final int LARGEST = 4000;

  /** Least width or height, pixels. */
  public static final int SMALLEST = 64;

  private final List<Figure> figures;
  private final List<Mark> marks;

  public Picture(List<Figure> figures, List<Mark> marks) {
    this.figures = List.copyOf(figures);
    this.marks = List.copyOf(marks);
  }

  /**
   * The camera that has the whole chair in the picture.
   *
   * @throws IllegalArgumentException if there is nothing to look at
   */
  public Camera camera(View view, double aspect) {
    List<Vec3> points = new ArrayList<>();
    for (Figure f : figures) {
      for (int i = 0; i < f.mesh().pointCount(); i++) {
        points.add(f.mesh().point(i));
      }
    }
    if (points.isEmpty()) {
      throw new IllegalArgumentException("there is nothing to draw");
    }
    return Camera.fitting(view, points, aspect, FILLED);
  }

  /** The picture as the bytes of a PNG file. */
  public byte[] png(View view, int width, int height) {
    return PngWriter.bytes(draw(camera(view, (double) width / height), width, height));
  }

  /**
   * Draws the chair as {@code camera} sees it.
   *
   * @throws IllegalArgumentException if a side is not within {@link #SMALLEST} and {@link #LARGEST}
   */
  public BufferedImage draw(Camera camera, int width, int height) {
    if (Math.min(width, height) < SMALLEST || Math.max(width, height) > LARGEST) {
      throw new IllegalArgumentException("a picture of " + width + " by " + height + " pixels");
    }
    Camera.Sheet sheet = camera.sheet(FINE * width, FINE * height);
    Canvas canvas = new Canvas(FINE * width, FINE * height);
    List<Surface> surfaces = figures.parallelStream().map(f -> new Surface(f.mesh())).toList();
    Lights lights = Lights.behind(camera);
    for (int i = 0; i < surfaces.size(); i++) {
      fill(sheet, canvas, lights, i, surfaces.get(i));
    }
    // Lines keep their look from a small picture to a large one.
    double thick = FINE * Math.max(0.75, Math.min(2.4, height / 800.0));
    InkLines lines = new InkLines(sheet, canvas, thick);
    surfaces.forEach(lines::draw);
    MarkPen.Inks red = new MarkPen(sheet, thick).draw(marks);
    return develop(new Developer(sheet, canvas, figures, red, shadow(surfaces, camera, lights)));
  }

  private GroundShadow shadow(List<Surface> surfaces, Camera camera, Lights lights) {
    boolean seen = camera.eye().z() > 0 && lights.towardsKey().z() > 0.2;
    if (!seen) {
      return null;
    }
    Box bounds = figures.stream().map(f -> f.mesh().bounds()).reduce(Box::with).orElseThrow();
    return new GroundShadow(surfaces, bounds, lights.towardsKey());
  }

  private static BufferedImage develop(Developer developer) {
    int width = developer.sheet().width() / FINE;
    int height = developer.sheet().height() / FINE;
    int[] pixels = new int[width * height];
    IntStream.range(0, height)
        .parallel()
        .forEach(y -> developer.row(y, FINE, pixels, y * width, width));
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    image.setRGB(0, 0, width, height, pixels, 0, width);
    return image;
  }

  private static void fill(
      Camera.Sheet sheet, Canvas canvas, Lights lights, int number, Surface s) {
    int points = s.xyz.length / 3;
    double[] x = new double[points];
    double[] y = new double[points];
    double[] w = new double[points];
    for (int i = 0; i < points; i++) {
      Vec3 p = new Vec3(s.xyz[3 * i], s.xyz[3 * i + 1], s.xyz[3 * i + 2]);
      x[i] = sheet.x(p);
      y[i] = sheet.y(p);
      w[i] = 1 / sheet.camera().depth(p);
    }
    Canvas.Corner[] corner = new Canvas.Corner[3];
    for (int t = 0; t < s.triangleCount(); t++) {
      boolean before = true;
      for (int k = 0; k < 3; k++) {
        int p = s.triangles[3 * t + k];
        int n = 9 * t + 3 * k;
        float nx = s.cornerNormals[n];
        float ny = s.cornerNormals[n + 1];
        float nz = s.cornerNormals[n + 2];
        before &= w[p] > 0;
        corner[k] =
            new Canvas.Corner(x[p], y[p], w[p], lights.key(nx, ny, nz), lights.upward(nx, ny, nz));
      }
      if (before) {
        canvas.fill(number, corner[0], corner[1], corner[2]);
      }
    }
  }
}
