package dryfit.export;

import dryfit.geometry.Mesh;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * STL, a list of triangles in millimetres. The format has no unit and no topology, so coordinates
 * are rounded to what it can hold before they come here (see {@link
 * dryfit.geometry.FloatGrid#snapped}); normals follow from the rounded corners.
 *
 * <p>Binary form: an 80-byte header, a little-endian count, then 50 bytes a triangle. Source: Paul
 * Bourke, "STL format", 1999.
 */
public final class StlWriter {
  private static final int HEADER = 80;
  private static final int TRIANGLE = 50;

  private StlWriter() {}

  /**
   * The binary form.
   *
   * @param meshes closed, each coordinate a float
   * @param name goes into the header as far as it has room
   */
  public static byte[] binary(List<Mesh> meshes, String name) {
    int count = meshes.stream().mapToInt(Mesh::triangleCount).sum();
    ByteBuffer out =
        ByteBuffer.allocate(HEADER + 4 + TRIANGLE * count).order(ByteOrder.LITTLE_ENDIAN);
    // A header that began with "solid" would be taken for the text form.
    byte[] title = ("binary STL, millimetres, " + plain(name)).getBytes(StandardCharsets.US_ASCII);
    out.put(title, 0, Math.min(title.length, HEADER));
    out.position(HEADER);
    out.putInt(count);
    for (Mesh mesh : meshes) {
      for (int t = 0; t < mesh.triangleCount(); t++) {
        for (float v : numbers(mesh, t)) {
          out.putFloat(v);
        }
        out.putShort((short) 0);
      }
    }
    return out.array();
  }

  /** The text form, every float with all the digits it needs to come back the same. */
  public static byte[] ascii(List<Mesh> meshes, String name) {
    StringBuilder text = new StringBuilder();
    text.append("solid ").append(plain(name)).append('\n');
    for (Mesh mesh : meshes) {
      for (int t = 0; t < mesh.triangleCount(); t++) {
        float[] v = numbers(mesh, t);
        text.append("facet normal").append(three(v, 0)).append("\nouter loop\n");
        for (int corner = 3; corner < 12; corner += 3) {
          text.append("vertex").append(three(v, corner)).append('\n');
        }
        text.append("endloop\nendfacet\n");
      }
    }
    text.append("endsolid ").append(plain(name)).append('\n');
    return text.toString().getBytes(StandardCharsets.US_ASCII);
  }

  private static String three(float[] v, int from) {
    return " " + v[from] + " " + v[from + 1] + " " + v[from + 2];
  }

  /** The name in letters that every reader knows, on one line. */
  private static String plain(String name) {
    String ascii = name.replaceAll("[^\\x20-\\x7e]", "-").strip();
    return ascii.isEmpty() ? "part" : ascii;
  }

  /** Normal and three corners of a triangle. */
  private static float[] numbers(Mesh mesh, int t) {
    double[] c = new double[9];
    float[] out = new float[12];
    for (int corner = 0; corner < 3; corner++) {
      var p = mesh.point(mesh.corner(t, corner));
      double[] xyz = {p.x(), p.y(), p.z()};
      for (int k = 0; k < 3; k++) {
        out[3 + 3 * corner + k] = (float) xyz[k];
        c[3 * corner + k] = out[3 + 3 * corner + k];
      }
    }
    double[] n = normal(c);
    for (int k = 0; k < 3; k++) {
      // Adding zero turns -0.0 into 0.0.
      out[k] = (float) n[k] + 0f;
    }
    return out;
  }

  private static double[] normal(double[] c) {
    double ux = c[3] - c[0];
    double uy = c[4] - c[1];
    double uz = c[5] - c[2];
    double vx = c[6] - c[0];
    double vy = c[7] - c[1];
    double vz = c[8] - c[2];
    double x = uy * vz - uz * vy;
    double y = uz * vx - ux * vz;
    double z = ux * vy - uy * vx;
    double length = Math.sqrt(x * x + y * y + z * z);
    return new double[] {x / length, y / length, z / length};
  }
}
