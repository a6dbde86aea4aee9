package dryfit.shop.jig;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.JigKind;
import dryfit.document.Printing;
import dryfit.geometry.Frame;
import dryfit.geometry.Mesh;
import dryfit.geometry.Plane;
import dryfit.geometry.Rays;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import dryfit.solid.Overlap;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A jig held against the finished part it is for, and against the rules of printing. Everything is
 * measured on the two finished surfaces, as they would lie on the bench, and nothing on what was
 * planned.
 *
 * @param deepest how far the jig stands into the wood of its part, mm; touching counts as nothing
 * @param touching the area over which it touches its part, mm2
 * @param restsTouched how many of the faces it has to touch it does touch
 * @param guideTurn the greatest angle between a guide face and the wall of the mortise, the
 *     shoulder or the base that it stands for, radians
 * @param guideOff how far such a face is beside its wall, mm
 * @param boreTurn the greatest angle between a bore and the way into the mortise, radians
 * @param boreOff how far a bore's middle line is beside that of the mortise, across its cheeks, mm
 * @param faults what is wrong, in sentences; none if it is proved
 */
public record JigProof(
    double deepest,
    double touching,
    int restsTouched,
    double guideTurn,
    double guideOff,
    double boreTurn,
    double boreOff,
    List<String> faults) {

  /** The bars: guides and bores agree with the mortise within these. */
  public static final double TURN = Math.toRadians(0.01);

  public static final double OFF = 0.01;

  /** A rest that touches over less than this does not count as touched, mm2. */
  private static final double LEAST_TOUCH = 20;

  /** Two surfaces nearer than this touch: both stand on grids of their own, mm. */
  private static final double TOUCH = 2e-3;

  public JigProof {
    faults = List.copyOf(faults);
  }

  public boolean holds() {
    return faults.isEmpty();
  }

  /** Proves a jig of a chair. */
  public static JigProof of(Chair chair, Jig jig) {
    return new Prover(chair, jig).proof();
  }

  /** One proof being made. */
  private static final class Prover {
    private final Chair chair;
    private final Jig jig;
    private final List<String> faults = new ArrayList<>();

    Prover(Chair chair, Jig jig) {
      this.chair = chair;
      this.jig = jig;
    }

    JigProof proof() {
      Printing printing = chair.design().printing();
      for (JigPiece piece : jig.pieces()) {
        for (String fault : PrintRules.of(piece.mesh(), printing).faults(printing)) {
          faults.add(piece.name() + ": " + fault);
        }
      }
      double deepest = 0;
      double touching = 0;
      int rests = 0;
      if (jig.part() >= 0) {
        Part part = chair.parts().get(jig.part());
        double[] touchedOf = new double[jig.rests().size()];
        for (JigPiece piece : jig.pieces()) {
          deepest = Math.max(deepest, deepest(piece, part));
          touching += touching(piece, part, touchedOf);
        }
        for (double area : touchedOf) {
          rests += area >= leastTouch() ? 1 : 0;
        }
        fault(deepest > TOUCH, "it stands %.4f mm into the wood", deepest);
        fault(touching < leastTouch(), "it touches its part over %.1f mm2 only", touching);
        fault(rests < touchedOf.length, "it touches %.0f of its faces only", rests);
      }
      double[] guide = guides();
      fault(guide[0] > TURN, "a guide face is turned by %.4f degrees", Math.toDegrees(guide[0]));
      fault(guide[1] > OFF, "a guide face is %.4f mm off", guide[1]);
      double[] bore = bores();
      fault(bore[0] > TURN, "a bore is turned by %.4f degrees", Math.toDegrees(bore[0]));
      fault(bore[1] > OFF, "a bore is %.4f mm off", bore[1]);
      return new JigProof(deepest, touching, rests, guide[0], guide[1], bore[0], bore[1], faults);
    }

    private double leastTouch() {
      // The end of a gauge's tongue is as small as its hole.
      return jig.kind() == JigKind.DEPTH_GAUGE ? 4 : LEAST_TOUCH;
    }

    private void fault(boolean is, String form, double value) {
      if (is) {
        faults.add(String.format(Locale.ROOT, form, value));
      }
    }

    // ---- on its part ----

    /** By the convex cells of both, which know nothing of the kernel that made the surfaces. */
    private double deepest(JigPiece piece, Part part) {
      List<Convex> cells = piece.cells().stream().map(c -> c.placed(piece.on())).toList();
      return Overlap.between(cells, part.placedCells()).map(Overlap::depth).orElse(0.0);
    }

    /** The area of the jig's triangles whose middle touches the wood; by rest as well. */
    private double touching(JigPiece piece, Part part, double[] byRest) {
      Mesh mesh = piece.mesh().placed(piece.on());
      Rays wood = part.solid().rays().placed(part.frame());
      double sum = 0;
      for (int t = 0; t < mesh.triangleCount(); t++) {
        Vec3 a = mesh.point(mesh.corner(t, 0));
        Vec3 b = mesh.point(mesh.corner(t, 1));
        Vec3 c = mesh.point(mesh.corner(t, 2));
        Vec3 doubled = b.minus(a).cross(c.minus(a));
        if (doubled.length() < 1e-3) {
          continue;
        }
        Vec3 n = doubled.unit();
        double area = doubled.length() / 2;
        double share = touched(wood, a, b, c, n);
        sum += share * area;
        for (int r = 0; r < byRest.length; r++) {
          Plane rest = jig.rests().get(r);
          boolean in =
              n.angleTo(rest.normal().negated()) < TURN
                  && Math.abs(rest.height(a)) < TOUCH
                  && Math.abs(rest.height(b)) < TOUCH;
          byRest[r] += in ? share * area : 0;
        }
      }
      return sum;
    }

    /** The share of places spread over a triangle at which the wood begins. */
    private static double touched(Rays wood, Vec3 a, Vec3 b, Vec3 c, Vec3 n) {
      int touched = 0;
      int all = 0;
      for (int i = 0; i < 4; i++) {
        for (int j = 0; j < 4 - i; j++) {
          double u = (i + 1.0 / 3) / 4;
          double v = (j + 1.0 / 3) / 4;
          Vec3 p = a.plus(b.minus(a).times(u)).plus(c.minus(a).times(v));
          List<Rays.Hit> hits = wood.hits(p.minus(n), n);
          all++;
          touched +=
              hits.stream().anyMatch(h -> h.entering() && Math.abs(h.distance() - 1) < TOUCH)
                  ? 1
                  : 0;
        }
      }
      return (double) touched / all;
    }

    // ---- what leads the tool ----

    private double[] guides() {
      double turn = 0;
      double off = 0;
      for (Plane guide : jig.guides()) {
        Plane made = madeFace(guide);
        if (made == null) {
          faults.add("a guide face is not there");
          continue;
        }
        Plane wall = jig.kind() == JigKind.ANGLE_GUIDE ? wallOfWood(made) : shoulderOrOwn(guide);
        if (wall == null) {
          faults.add("no wall of the part stands in a guide face");
          continue;
        }
        turn = Math.max(turn, lines(made.normal(), wall.normal()));
        Vec3 near = made.normal().times(made.offset());
        Vec3 at = jig.joint() >= 0 ? joint().at() : near;
        Vec3 onMade = at.minus(made.normal().times(made.height(at)));
        off = Math.max(off, Math.abs(wall.height(onMade)));
      }
      return new double[] {turn, off};
    }

    private Joint joint() {
      return chair.joints().get(jig.joint());
    }

    private static double lines(Vec3 a, Vec3 b) {
      double angle = a.angleTo(b);
      return Math.min(angle, Math.PI - angle);
    }

    /** The largest flat face of the jig as made that stands for a planned one. */
    private Plane madeFace(Plane plan) {
      Plane best = null;
      double most = 0;
      for (JigPiece piece : jig.pieces()) {
        Mesh mesh = piece.mesh().placed(piece.on());
        for (int f = 0; f < mesh.faceCount(); f++) {
          double area = area(mesh, mesh.loops(f)[0]);
          Plane p = plane(mesh, f);
          boolean same =
              p.normal().angleTo(plan.normal()) < Math.toRadians(1)
                  && Math.abs(plan.height(mesh.point(mesh.loops(f)[0][0]))) < 0.5;
          if (same && area > most) {
            most = area;
            best = p;
          }
        }
      }
      return best;
    }

    /** The wall of the finished part's mortise that a face of the jig stands nearest to. */
    private Plane wallOfWood(Plane made) {
      Mesh wood = chair.parts().get(jig.part()).placedMesh();
      Plane best = null;
      double least = 1;
      for (int f = 0; f < wood.faceCount(); f++) {
        Plane p = plane(wood, f);
        int[] loop = wood.loops(f)[0];
        Vec3 at = wood.point(loop[0]);
        double far = Math.abs(made.height(at));
        // A wall of the mortise looks into the hole, as the guide face does.
        boolean wall =
            p.normal().angleTo(made.normal()) < Math.toRadians(1)
                && area(wood, loop) > 1
                && at.distance(joint().at()) < joint().length() + 80;
        if (wall && far < least) {
          least = far;
          best = p;
        }
      }
      return best;
    }

    /** A saw guide stands for the shoulder of the finished part; others for their own plan. */
    private Plane shoulderOrOwn(Plane guide) {
      if (jig.kind() != JigKind.SHOULDER_GUIDE) {
        return guide;
      }
      Mesh wood = chair.parts().get(jig.part()).placedMesh();
      Plane best = null;
      double most = 0;
      for (int f = 0; f < wood.faceCount(); f++) {
        Plane p = plane(wood, f);
        int[] loop = wood.loops(f)[0];
        double area = area(wood, loop);
        boolean shoulder =
            p.normal().angleTo(guide.normal()) < Math.toRadians(1)
                && Math.abs(guide.height(wood.point(loop[0]))) < 0.5;
        if (shoulder && area > most) {
          most = area;
          best = p;
        }
      }
      return best;
    }

    private double[] bores() {
      double turn = 0;
      double off = 0;
      for (Bore bore : jig.bores()) {
        Frame about = about(bore);
        List<Vec3> walls = new ArrayList<>();
        List<Vec3> corners = new ArrayList<>();
        double narrowest = Double.POSITIVE_INFINITY;
        Mesh mesh = jig.pieces().get(0).mesh().placed(jig.pieces().get(0).on());
        for (int f = 0; f < mesh.faceCount(); f++) {
          Plane p = plane(mesh, f);
          int[] loop = mesh.loops(f)[0];
          if (isWallOf(mesh, loop, p, bore, about)) {
            walls.add(p.normal());
            narrowest = Math.min(narrowest, Math.abs(p.height(bore.at())));
            for (int i : loop) {
              corners.add(about.local(mesh.point(i)));
            }
          }
        }
        if (walls.size() < 12) {
          faults.add("a bore has no wall");
          continue;
        }
        turn = Math.max(turn, againstWalls(axis(walls)));
        Vec3 middle = about.place(middle(corners));
        off = Math.max(off, besideMiddle(middle));
        fault(
            2 * narrowest < bore.drill() + Tolerances.contact(),
            "a bore is only %.3f mm across its flats",
            2 * narrowest);
      }
      return new double[] {turn, off};
    }

    private static Frame about(Bore bore) {
      Vec3 side = Math.abs(bore.axis().x()) < 0.6 ? Vec3.RIGHT : Vec3.BACK;
      Vec3 u = side.across(bore.axis()).unit();
      return new Frame(bore.at(), u, bore.axis().cross(u), bore.axis());
    }

    private static boolean isWallOf(Mesh mesh, int[] loop, Plane p, Bore bore, Frame about) {
      if (Math.abs(p.normal().dot(bore.axis())) > 0.05 || area(mesh, loop) < 1) {
        return false;
      }
      for (int i : loop) {
        Vec3 q = about.local(mesh.point(i));
        double r = Math.hypot(q.x(), q.y());
        if (r > 0.53 * bore.acrossFlats() || r < 0.47 * bore.acrossFlats()) {
          return false;
        }
      }
      return true;
    }

    /** The direction that all walls run along: the mean of the lines in which two of them meet. */
    private Vec3 axis(List<Vec3> walls) {
      Vec3 sum = Vec3.ZERO;
      int n = walls.size();
      for (int i = 0; i < n; i++) {
        for (int j = i + 1; j < n; j++) {
          Vec3 line = walls.get(i).cross(walls.get(j));
          if (line.length() > 0.7) {
            Vec3 way = line.unit();
            sum = sum.plus(way.dot(joint().entry()) < 0 ? way.negated() : way);
          }
        }
      }
      return sum.unit();
    }

    /** Halfway between the outermost corners: the middle of a ring, wherever its corners are. */
    private static Vec3 middle(List<Vec3> corners) {
      dryfit.geometry.Box box = dryfit.geometry.Box.around(corners);
      return new Vec3(box.middle().x(), box.middle().y(), 0);
    }

    /** The greatest angle between a line and the walls of the finished mortise. */
    private double againstWalls(Vec3 line) {
      Mesh wood = chair.parts().get(jig.part()).placedMesh();
      double most = -1;
      for (int f = 0; f < wood.faceCount(); f++) {
        Plane p = plane(wood, f);
        int[] loop = wood.loops(f)[0];
        if (area(wood, loop) > 1
            && Math.abs(p.normal().dot(joint().entry())) < 0.002
            && isOnHole(wood, loop)) {
          most = Math.max(most, Math.asin(Math.abs(p.normal().dot(line))));
        }
      }
      if (most < 0) {
        faults.add("the part has no mortise to hold a bore against");
      }
      return Math.max(0, most);
    }

    private boolean isOnHole(Mesh wood, int[] loop) {
      for (Convex hole : joint().mortise()) {
        boolean all = true;
        for (int i : loop) {
          Vec3 p = wood.point(i);
          all &= hole.planes().stream().allMatch(q -> q.height(p) < 0.01);
        }
        if (all) {
          return true;
        }
      }
      return false;
    }

    /** How far a place is beside the middle between the cheeks of the nearest mortise. */
    private double besideMiddle(Vec3 place) {
      double least = Double.POSITIVE_INFINITY;
      Vec3 thick = joint().thick();
      for (var tenon : joint().tenons()) {
        for (Convex hole : tenon.hole().stream().limit(1).toList()) {
          double middle = (hole.reach(thick) - hole.reach(thick.negated())) / 2;
          double beside = Math.abs(place.dot(thick) - middle);
          if (joint().plan().diameter().isPresent()) {
            Vec3 wide = joint().wide();
            double other = (hole.reach(wide) - hole.reach(wide.negated())) / 2;
            beside = Math.hypot(beside, place.dot(wide) - other);
          }
          least = Math.min(least, beside);
        }
      }
      return least;
    }

    private static Plane plane(Mesh mesh, int face) {
      int[] loop = mesh.loops(face)[0];
      return Plane.through(mesh.point(loop[0]), BedEdge.normal(mesh, loop));
    }

    private static double area(Mesh mesh, int[] loop) {
      Vec3 sum = Vec3.ZERO;
      Vec3 o = mesh.point(loop[0]);
      for (int i = 1; i + 1 < loop.length; i++) {
        sum = sum.plus(mesh.point(loop[i]).minus(o).cross(mesh.point(loop[i + 1]).minus(o)));
      }
      return sum.length() / 2;
    }
  }
}
