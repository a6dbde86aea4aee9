package dryfit.bench;

import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import dryfit.solid.Csg;
import dryfit.solid.Extrusion;
import dryfit.solid.Turned;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The solids that every engine is asked for, in one place so that all get the same. Demo data,
 * invented; the volumes are worked out by hand.
 */
public final class Shapes {
  private Shapes() {}

  /**
   * A solid to be made.
   *
   * @param volume what it must come to, mm^3; NaN if nobody has worked it out
   */
  public record Shape(Csg solid, double volume) {}

  /** By name, in the order they are told. */
  public static Map<String, Shape> all() {
    Map<String, Shape> all = new LinkedHashMap<>();
    all.put("leg", new Shape(leg(), 1_210_120));
    all.put("arm", new Shape(arm(), 810_000));
    all.put("arm-with-hole", new Shape(armWithHole(), 810_000 - 30 * ngon(8, 64)));
    all.put("plate-10", new Shape(plate(5, 2), 3_000_000 - 10 * 20 * ngon(12, 32)));
    all.put("plate-50", new Shape(plate(10, 5), 3_000_000 - 50 * 20 * ngon(12, 32)));
    all.put("turned-leg", new Shape(turnedLeg(), Double.NaN));
    return Collections.unmodifiableMap(all);
  }

  /** Area of a regular polygon whose corners are at a radius. */
  private static double ngon(double radius, int sides) {
    return sides / 2.0 * radius * radius * Math.sin(2 * Math.PI / sides);
  }

  /** A square leg with two mortises that meet inside and a leaning one. */
  private static Csg leg() {
    double angle = Math.toRadians(9);
    Frame lean =
        new Frame(
            new Vec3(0, 22, 600),
            Vec3.RIGHT,
            new Vec3(0, Math.cos(angle), Math.sin(angle)),
            new Vec3(0, -Math.sin(angle), Math.cos(angle)));
    return box(new Vec3(0, 0, 320), 44, 44, 640)
        .minus(
            List.of(
                box(new Vec3(0, 20, 380), 12, 30, 60),
                box(new Vec3(20, 0, 380), 30, 12, 60),
                Convex.box(around(Vec3.ZERO, 12, 30, 25)).placed(lean).asLeaf("/leaning")));
  }

  private static Csg.Leaf box(Vec3 middle, double x, double y, double z) {
    return Convex.box(around(middle, x, y, z)).asLeaf("/box");
  }

  private static Box around(Vec3 middle, double x, double y, double z) {
    Vec3 half = new Vec3(x / 2, y / 2, z / 2);
    return new Box(middle.minus(half), middle.plus(half));
  }

  /** An arm sawn from the top and from the side, sixty points along each edge. */
  private static Csg arm() {
    Frame side = new Frame(Vec3.ZERO, Vec3.RIGHT, Vec3.UP, Vec3.BACK.negated());
    List<Vec2> plan = new ArrayList<>();
    List<Vec2> elevation = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      double x = 450.0 * i / 59;
      plan.add(new Vec2(x, -30 + 25 * Math.sin(Math.PI * x / 450)));
      elevation.add(new Vec2(x, -20 + 15 * Math.sin(x / 150)));
    }
    for (int i = 59; i >= 0; i--) {
      double x = 450.0 * i / 59;
      plan.add(new Vec2(x, 30 + 25 * Math.sin(Math.PI * x / 450)));
      elevation.add(new Vec2(x, 10 + 15 * Math.sin(x / 150)));
    }
    return new Csg.Common(
        List.of(
            Extrusion.of(plan, -60, 60, Frame.CHAIR, "/plan"),
            Extrusion.of(elevation, -80, 80, side, "/side")));
  }

  private static Csg armWithHole() {
    return arm().minus(List.of(round(200, 40, 8, 64, -100, 100)));
  }

  private static Csg.Leaf round(double x, double y, double r, int sides, double z0, double z1) {
    List<Vec2> outline = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      double angle = 2 * Math.PI * i / sides;
      outline.add(new Vec2(x + r * Math.cos(angle), y + r * Math.sin(angle)));
    }
    return Extrusion.of(outline, z0, z1, Frame.CHAIR, "/round");
  }

  private static Csg plate(int across, int deep) {
    List<Csg> holes = new ArrayList<>();
    for (int i = 0; i < across; i++) {
      for (int j = 0; j < deep; j++) {
        double x = 500.0 * (i + 0.5) / across - 250;
        double y = 300.0 * (j + 0.5) / deep - 150;
        holes.add(round(x, y, 12, 32, -20, 20));
      }
    }
    return box(Vec3.ZERO, 500, 300, 20).minus(holes);
  }

  /** Six hundred faces round it, and two mortises. */
  private static Csg turnedLeg() {
    List<Turned.Ring> rings =
        IntStream.rangeClosed(0, 25)
            .mapToObj(i -> new Turned.Ring(640.0 * i / 25, 18 + 5 * Math.sin(i / 3.0)))
            .toList();
    return Turned.of(rings, 24, "/turned")
        .minus(List.of(box(new Vec3(400, 15, 0), 30, 30, 10), box(new Vec3(200, 0, 15), 30, 10, 30)));
  }
}
