package dryfit.solid.exact;

import java.util.List;

/**
 * The rims of all faces of the result, one corner after another. Corner {@code c} stands at {@code
 * point.at[c]} and starts a rim edge that ends at corner {@code next(c)} and lies in the plane of
 * its face and in plane {@code line.at[c]}.
 */
final class Surface {
  final List<Face> faces;

  /** The loops of face f are {@code loopOf.at[f]} to {@code loopOf.at[f + 1]}. */
  final IntList loopOf = new IntList();

  /** The corners of loop l are {@code cornerOf.at[l]} to {@code cornerOf.at[l + 1]}. */
  final IntList cornerOf = new IntList();

  final IntList point = new IntList();
  final IntList line = new IntList();

  /** The loop of each corner and the face of each loop. */
  final IntList loopAt = new IntList();

  final IntList faceAt = new IntList();

  Surface(List<Face> faces) {
    this.faces = faces;
  }

  static Surface of(List<Face> faces) {
    Surface s = new Surface(faces);
    for (Face f : faces) {
      s.startFace();
      for (int l = 0; l < f.loops().length; l++) {
        s.startLoop();
        for (int i = 0; i < f.loops()[l].length; i++) {
          s.add(f.loops()[l][i], f.lines()[l][i]);
        }
      }
    }
    s.finish();
    return s;
  }

  void startFace() {
    loopOf.add(cornerOf.size);
  }

  void startLoop() {
    faceAt.add(loopOf.size - 1);
    cornerOf.add(point.size);
  }

  void add(int p, int l) {
    loopAt.add(cornerOf.size - 1);
    point.add(p);
    line.add(l);
  }

  void finish() {
    loopOf.add(cornerOf.size);
    cornerOf.add(point.size);
  }

  int corners() {
    return point.size;
  }

  int face(int corner) {
    return faceAt.at[loopAt.at[corner]];
  }

  int next(int corner) {
    int loop = loopAt.at[corner];
    return corner + 1 < cornerOf.at[loop + 1] ? corner + 1 : cornerOf.at[loop];
  }

  int before(int corner) {
    int loop = loopAt.at[corner];
    return corner > cornerOf.at[loop] ? corner - 1 : cornerOf.at[loop + 1] - 1;
  }

  /** This with points put into edges and corners left out. */
  Surface changed(IntList[] into, boolean[] without) {
    Surface s = new Surface(faces);
    int loop = 0;
    for (int f = 0; f < faces.size(); f++) {
      s.startFace();
      for (; loop < loopOf.at[f + 1]; loop++) {
        s.startLoop();
        for (int c = cornerOf.at[loop]; c < cornerOf.at[loop + 1]; c++) {
          if (!without[point.at[c]]) {
            s.add(point.at[c], line.at[c]);
          }
          for (int k = 0; into[c] != null && k < into[c].size; k++) {
            s.add(into[c].at[k], line.at[c]);
          }
        }
      }
    }
    s.finish();
    return s;
  }

  /**
   * The loops of a face, as whatever numbers the corners were given.
   *
   * @param middle for each corner a number to follow it, or -1
   */
  int[][] loops(int face, int[] number, int[] middle) {
    int first = loopOf.at[face];
    int[][] out = new int[loopOf.at[face + 1] - first][];
    IntList loop = new IntList();
    for (int l = 0; l < out.length; l++) {
      loop.clear();
      for (int c = cornerOf.at[first + l]; c < cornerOf.at[first + l + 1]; c++) {
        loop.add(number[c]);
        if (middle[c] >= 0) {
          loop.add(middle[c]);
        }
      }
      out[l] = loop.toArray();
    }
    return out;
  }
}
