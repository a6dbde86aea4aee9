package dryfit.solid.fuzz;

import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import dryfit.solid.Csg;
import dryfit.solid.Extrusion;
import dryfit.solid.Turned;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Shapes such as chair parts and cutters have, near the origin, on a coarse grid where they can.
 */
final class RandomShapes {
  private static final String ORIGIN = "/fuzz";

  private final Random random;

  RandomShapes(Random random) {
    this.random = random;
  }

  /** A part up to about half a metre long. */
  Csg part() {
    return switch (random.nextInt(6)) {
      case 0, 1 -> box(20 + random.nextInt(500), 10 + random.nextInt(60), 10 + random.nextInt(60));
      case 2 -> ngon(10 + random.nextInt(40), 20 + random.nextInt(400));
      case 3 -> star(40 + random.nextInt(100), 10 + random.nextInt(60));
      case 4 -> turned(60 + random.nextInt(500), 8 + random.nextInt(30));
      default -> sawn(60 + random.nextInt(400));
    };
  }

  /** Something to cut with, of a size that fits the parts. */
  Csg.Leaf tool() {
    return switch (random.nextInt(5)) {
      case 0, 1 -> box(2 + random.nextInt(60), 2 + random.nextInt(40), 2 + random.nextInt(40));
      case 2 -> ngon(2 + random.nextInt(20), 5 + random.nextInt(120));
      case 3 -> star(6 + random.nextInt(40), 5 + random.nextInt(80));
      default -> turned(10 + random.nextInt(80), 3 + random.nextInt(20));
    };
  }

  /** A box about the origin, sides in half millimetres. */
  private Csg.Leaf box(double x, double y, double z) {
    Vec3 half = new Vec3(halves(x), halves(y), halves(z)).times(0.5);
    return Convex.box(new Box(half.negated(), half)).asLeaf(ORIGIN);
  }

  private double halves(double length) {
    return length + (random.nextInt(4) == 0 ? 0.5 : 0);
  }

  private Csg.Leaf ngon(double radius, double length) {
    int sides = 3 + random.nextInt(random.nextBoolean() ? 6 : 40);
    double phase = random.nextBoolean() ? 0 : random.nextDouble();
    List<Vec2> outline = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      double angle = phase + 2 * Math.PI * i / sides;
      outline.add(new Vec2(radius * Math.cos(angle), radius * Math.sin(angle)));
    }
    return Extrusion.of(outline, -length / 2, length / 2, Frame.CHAIR, ORIGIN);
  }

  /** An outline with inward corners, on half millimetres or anywhere. */
  private Csg.Leaf star(double radius, double height) {
    int sides = 5 + random.nextInt(10);
    boolean onGrid = random.nextBoolean();
    List<Vec2> outline = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      double angle = 2 * Math.PI * (i + 0.3 * random.nextDouble()) / sides;
      double r = radius * (0.35 + 0.65 * random.nextDouble());
      double x = r * Math.cos(angle);
      double y = r * Math.sin(angle);
      outline.add(onGrid ? new Vec2(Math.rint(2 * x) / 2, Math.rint(2 * y) / 2) : new Vec2(x, y));
    }
    try {
      return Extrusion.of(outline, -height / 2, height / 2, Frame.CHAIR, ORIGIN);
    } catch (IllegalArgumentException e) {
      // On the coarse grid a small star may fall onto itself.
      return box(radius, radius, height);
    }
  }

  private Csg.Leaf turned(double length, double radius) {
    int rings = 2 + random.nextInt(6);
    List<Turned.Ring> profile = new ArrayList<>();
    for (int i = 0; i < rings; i++) {
      double along = Math.rint(length * i / (rings - 1) - length / 2);
      double r = Math.rint(2 * radius * (0.4 + 0.6 * random.nextDouble())) / 2;
      profile.add(new Turned.Ring(along, r));
      if (i > 0 && i < rings - 1 && random.nextInt(4) == 0) {
        profile.add(new Turned.Ring(along, r + 1 + random.nextInt(4)));
      }
    }
    return Turned.of(profile, 4 * (1 + random.nextInt(6)), ORIGIN);
  }

  /** Sawn twice, from the top and from the side. */
  private Csg sawn(double length) {
    Frame side = new Frame(Vec3.ZERO, Vec3.RIGHT, Vec3.UP, Vec3.BACK.negated());
    return new Csg.Common(
        List.of(
            Extrusion.of(band(length, 18 + random.nextInt(20)), -60, 60, Frame.CHAIR, ORIGIN),
            Extrusion.of(band(length, 12 + random.nextInt(20)), -90, 90, side, ORIGIN)));
  }

  private List<Vec2> band(double length, double half) {
    int steps = 1 + random.nextInt(16);
    double bulge = random.nextInt(30);
    double turns = random.nextInt(3);
    List<Vec2> outline = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      outline.add(new Vec2(length * i / steps - length / 2, bulge * wave(i, steps, turns) - half));
    }
    for (int i = steps; i >= 0; i--) {
      outline.add(new Vec2(length * i / steps - length / 2, bulge * wave(i, steps, turns) + half));
    }
    return outline;
  }

  private static double wave(int i, int steps, double turns) {
    return Math.sin(turns * Math.PI * i / steps);
  }
}
