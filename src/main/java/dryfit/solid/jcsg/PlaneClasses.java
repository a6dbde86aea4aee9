package dryfit.solid.jcsg;

import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.List;

/** Which sheets lie in one plane, whichever side they face. */
final class PlaneClasses {
  private final List<Sheet> sheets;
  private final int[] parent;

  PlaneClasses(List<Sheet> sheets) {
    this.sheets = sheets;
    this.parent = new int[sheets.size()];
    for (int i = 0; i < parent.length; i++) {
      parent[i] = i;
      for (int j = 0; j < i; j++) {
        if (root(j) != root(i) && coplanar(sheets.get(i), sheets.get(j))) {
          int a = root(i);
          int b = root(j);
          parent[Math.max(a, b)] = Math.min(a, b);
        }
      }
    }
  }

  /** The first sheet that lies in the same plane; it stands for the class. */
  int root(int sheet) {
    int r = sheet;
    while (parent[r] != r) {
      r = parent[r];
    }
    return r;
  }

  /** The normal of the class. */
  Vec3 normal(int sheet) {
    return sheets.get(root(sheet)).plane().normal();
  }

  private static boolean coplanar(Sheet a, Sheet b) {
    double cosine = Math.abs(a.plane().normal().dot(b.plane().normal()));
    // Cheap first: planes a thousandth apart are never one.
    return cosine > 0.999999 && within(a, b.plane()) && within(b, a.plane());
  }

  private static boolean within(Sheet sheet, Plane plane) {
    for (Vec3 p : sheet.corners()) {
      if (Math.abs(plane.height(p)) > Tolerances.weld()) {
        return false;
      }
    }
    return true;
  }
}
