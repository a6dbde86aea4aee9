package dryfit.export;

import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.StringTokenizer;

/** Reads STL of both forms, by the layout alone: stored normals and attributes are left aside. */
public final class StlReader {
  private static final int HEADER = 84;
  private static final int TRIANGLE = 50;

  private StlReader() {}

  /**
   * The triangles in the order of the file, three corners each. A file is binary if its length is
   * what its count says.
   *
   * @throws UnsoundFile if it is neither form
   */
  public static List<Vec3> corners(byte[] file) {
    if (file.length >= HEADER) {
      ByteBuffer in = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
      long count = Integer.toUnsignedLong(in.getInt(HEADER - 4));
      if (file.length == HEADER + TRIANGLE * count) {
        return binary(in, (int) count);
      }
    }
    return ascii(new String(file, StandardCharsets.US_ASCII));
  }

  /**
   * The triangles as a mesh whose equal corners are one point; every triangle is a face of its own.
   *
   * @param corners three to a triangle
   */
  public static Mesh welded(List<Vec3> corners) {
    Map<Vec3, Integer> numbers = new LinkedHashMap<>();
    int[] triangles = new int[corners.size()];
    for (int i = 0; i < triangles.length; i++) {
      triangles[i] = numbers.computeIfAbsent(corners.get(i), p -> numbers.size());
    }
    double[] xyz = new double[3 * numbers.size()];
    int at = 0;
    for (Vec3 p : numbers.keySet()) {
      xyz[at++] = p.x();
      xyz[at++] = p.y();
      xyz[at++] = p.z();
    }
    int count = triangles.length / 3;
    int[][][] faces = new int[count][1][];
    int[] faceOf = new int[count];
    for (int t = 0; t < count; t++) {
      faces[t][0] = new int[] {triangles[3 * t], triangles[3 * t + 1], triangles[3 * t + 2]};
      faceOf[t] = t;
    }
    return new Mesh(xyz, faces, triangles, faceOf, new int[count], List.of(""));
  }

  private static List<Vec3> binary(ByteBuffer in, int count) {
    List<Vec3> corners = new ArrayList<>(3 * count);
    for (int t = 0; t < count; t++) {
      for (int corner = 1; corner <= 3; corner++) {
        int at = HEADER + TRIANGLE * t + 12 * corner;
        corners.add(point(in.getFloat(at), in.getFloat(at + 4), in.getFloat(at + 8)));
      }
    }
    return corners;
  }

  private static List<Vec3> ascii(String text) {
    StringTokenizer words = new StringTokenizer(text);
    if (!words.hasMoreTokens() || !words.nextToken().equals("solid")) {
      throw new UnsoundFile("this is not an STL file");
    }
    List<Vec3> corners = new ArrayList<>();
    boolean ended = false;
    while (words.hasMoreTokens()) {
      String word = words.nextToken();
      ended |= word.equals("endsolid");
      if (word.equals("vertex")) {
        corners.add(point(number(words), number(words), number(words)));
      }
    }
    if (!ended || corners.size() % 3 != 0) {
      throw new UnsoundFile("the STL text ends too early");
    }
    return corners;
  }

  private static float number(StringTokenizer words) {
    try {
      return Float.parseFloat(words.hasMoreTokens() ? words.nextToken() : "");
    } catch (NumberFormatException e) {
      throw new UnsoundFile("a corner in the STL text is not three numbers");
    }
  }

  private static Vec3 point(float x, float y, float z) {
    if (!Float.isFinite(x) || !Float.isFinite(y) || !Float.isFinite(z)) {
      throw new UnsoundFile("a corner in the STL file is not a place");
    }
    return new Vec3(x, y, z);
  }
}
