package dryfit.geometry;

/**
 * What a closed mesh would measure and weigh at density 1.
 *
 * @param volume cubic millimetres; negative if the mesh is inside out
 * @param area square millimetres
 * @param centre centre of mass
 * @param xx moment of inertia about the axis through the centre along x, mm^5; likewise {@code yy},
 *     {@code zz}
 * @param xy off-diagonal of the inertia tensor, minus the integral of x y; likewise {@code yz},
 *     {@code zx}
 */
public record MassProperties(
    double volume,
    double area,
    Vec3 centre,
    double xx,
    double yy,
    double zz,
    double xy,
    double yz,
    double zx) {

  /**
   * By the divergence theorem: each triangle with the middle of the bounding box makes a signed
   * tetrahedron, whose moments are polynomials of its corners. Summed with Neumaier's compensation,
   * so that a part of many small faces loses nothing.
   *
   * @param mesh closed; of an empty mesh everything is zero
   */
  public static MassProperties of(Mesh mesh) {
    if (mesh.isEmpty()) {
      return new MassProperties(0, 0, Vec3.ZERO, 0, 0, 0, 0, 0, 0);
    }
    Vec3 middle = mesh.bounds().middle();
    Sum volume = new Sum();
    Sum area = new Sum();
    Sum[] first = sums(3);
    Sum[] second = sums(6);
    for (int t = 0; t < mesh.triangleCount(); t++) {
      Vec3 a = mesh.point(mesh.corner(t, 0)).minus(middle);
      Vec3 b = mesh.point(mesh.corner(t, 1)).minus(middle);
      Vec3 c = mesh.point(mesh.corner(t, 2)).minus(middle);
      double six = a.dot(b.cross(c));
      Vec3 s = a.plus(b).plus(c);
      volume.add(six / 6);
      area.add(b.minus(a).cross(c.minus(a)).length() / 2);
      first[0].add(six * s.x() / 24);
      first[1].add(six * s.y() / 24);
      first[2].add(six * s.z() / 24);
      second[0].add(six * moment(a.x(), b.x(), c.x(), a.x(), b.x(), c.x()));
      second[1].add(six * moment(a.y(), b.y(), c.y(), a.y(), b.y(), c.y()));
      second[2].add(six * moment(a.z(), b.z(), c.z(), a.z(), b.z(), c.z()));
      second[3].add(six * moment(a.x(), b.x(), c.x(), a.y(), b.y(), c.y()));
      second[4].add(six * moment(a.y(), b.y(), c.y(), a.z(), b.z(), c.z()));
      second[5].add(six * moment(a.z(), b.z(), c.z(), a.x(), b.x(), c.x()));
    }
    double v = volume.value();
    Vec3 offset =
        v == 0
            ? Vec3.ZERO
            : new Vec3(first[0].value() / v, first[1].value() / v, first[2].value() / v);
    double x2 = second[0].value() - v * offset.x() * offset.x();
    double y2 = second[1].value() - v * offset.y() * offset.y();
    double z2 = second[2].value() - v * offset.z() * offset.z();
    return new MassProperties(
        v,
        area.value(),
        middle.plus(offset),
        y2 + z2,
        z2 + x2,
        x2 + y2,
        -(second[3].value() - v * offset.x() * offset.y()),
        -(second[4].value() - v * offset.y() * offset.z()),
        -(second[5].value() - v * offset.z() * offset.x()));
  }

  /**
   * The integral of u w over a tetrahedron with a corner at zero, divided by six times its volume.
   */
  private static double moment(double ua, double ub, double uc, double wa, double wb, double wc) {
    return (ua * wa + ub * wb + uc * wc + (ua + ub + uc) * (wa + wb + wc)) / 120;
  }

  private static Sum[] sums(int n) {
    Sum[] out = new Sum[n];
    java.util.Arrays.setAll(out, i -> new Sum());
    return out;
  }

  private static final class Sum {
    private double total;
    private double lost;

    void add(double term) {
      double next = total + term;
      lost += Math.abs(total) >= Math.abs(term) ? (total - next) + term : (term - next) + total;
      total = next;
    }

    double value() {
      return total + lost;
    }
  }
}
