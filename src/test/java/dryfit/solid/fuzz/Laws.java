package dryfit.solid.fuzz;

import dryfit.geometry.FloatGrid;
import dryfit.geometry.Frame;
import dryfit.geometry.MassProperties;
import dryfit.geometry.Mesh;
import dryfit.geometry.MeshCheck;
import dryfit.geometry.Vec3;
import dryfit.solid.Cells;
import dryfit.solid.Csg;
import dryfit.solid.Kernel;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What must hold for any part A and cutters B, whatever they are. Every result is also held to be
 * closed, in doubles and in floats.
 */
public final class Laws {
  /** How far apart two sums of the same volumes may be, by rounding alone. */
  private static final double SUMS = 1e-9;

  /**
   * How far a corner may be from where it was asked for, mm: kernels may round shapes to a grid of
   * 2^-14 mm, which moves a corner by up to half a step along each axis.
   */
  private static final double MOVED = Math.sqrt(3) * 0x1p-15;

  /** The library for trees of planes is slow: every so many pairs it is asked too. */
  private static final int ASKED = 5;

  private final Kernel kernel;
  private final RandomPair pair;
  private final Map<String, String> broken = new LinkedHashMap<>();
  private int operations;

  private Laws(Kernel kernel, RandomPair pair) {
    this.kernel = kernel;
    this.pair = pair;
  }

  /**
   * What came of a trial.
   *
   * @param operations how many expressions were evaluated
   * @param broken each broken law, in a word, with what was seen
   */
  public record Outcome(int operations, Map<String, String> broken) {}

  /** Tries all laws on a pair. */
  public static Outcome tried(Kernel kernel, RandomPair pair) {
    Laws laws = new Laws(kernel, pair);
    laws.all();
    return new Outcome(laws.operations, laws.broken);
  }

  /** The volume of a corner's play all over the surface of the leaves, mm^3. */
  static double slack(Csg what) {
    return Moving.leaves(what).stream().mapToDouble(l -> area(l.mesh())).sum() * MOVED + 1e-6;
  }

  private static double area(Mesh mesh) {
    return MassProperties.of(mesh).area();
  }

  private void all() {
    Csg part = pair.part();
    Csg tools = pair.cutters();
    Csg off = new Csg.Common(List.of(part, tools));
    Csg rest = part.minus(pair.tools());
    Measured a = measured("part", part);
    Measured b = measured("tools", tools);
    Measured joined = measured("union", part.plus(pair.tools()));
    Measured common = measured("common", off);
    Measured cut = measured("cut", rest);
    Measured again = measured("put together", rest.plus(List.of(off)));
    Measured nothing = measured("nothing", new Csg.Common(List.of(rest, off)));
    double both = a.volume + b.volume;
    same(
        "union and common make both",
        both,
        joined.volume + common.volume,
        bound(a, b, joined, common));
    same(
        "cut and common make the part",
        a.volume,
        cut.volume + common.volume,
        bound(a, b, cut, common));
    same("put together it is the part", a.volume, again.volume, bound(a, b, again));
    if (!a.rounded && !again.rounded) {
      same("put together it has the part's surface", a.area, again.area, SUMS * (a.area + b.area));
    }
    same("cut and common share nothing", 0, nothing.volume, 0);
    moved(rest, cut, Moving.shift(new Vec3(12.5, -40, 7)), "slid", 0);
    Frame quarter = new Frame(Vec3.ZERO, Vec3.UP, Vec3.BACK.negated(), Vec3.RIGHT);
    moved(rest, cut, quarter, "turned by quarters", 0);
    Frame anyhow = Frame.of(new Vec3(3, 1, 4), new Vec3(3, 5, 8), new Vec3(-2, 7, 1));
    moved(rest, cut, anyhow, "turned", 2 * slack(rest));
    same("cells of the cut", Cells.volume(Cells.of(rest)), cut.volume, slack(rest) + bound(cut));
    same(
        "cells of the common",
        Cells.volume(Cells.of(off)),
        common.volume,
        slack(off) + bound(common));
    if (pair.seed() % ASKED == 0) {
      double size = CommonsRegions.of(rest).getSize();
      same("tree of planes of the cut", size, cut.volume, slack(rest) + bound(cut));
    }
  }

  private void moved(Csg what, Measured before, Frame by, String how, double more) {
    Measured after = measured(how, Moving.placed(what, by));
    same("the same when " + how, before.volume, after.volume, bound(before, after) + more);
    if (more == 0 && !before.rounded && !after.rounded) {
      same("as many faces when " + how, before.faces, after.faces, 0);
      same("as many shells when " + how, before.shells, after.shells, 0);
      same("as many handles when " + how, before.genus, after.genus, 0);
    }
  }

  /**
   * How far a sum over these may be off by rounding: a billionth, and for each that was handed over
   * in floats half a float step all over its surface.
   */
  private static double bound(Measured... all) {
    double sum = 0;
    for (Measured each : all) {
      sum += SUMS * Math.abs(each.volume);
      if (each.rounded) {
        sum += each.area * Math.sqrt(3) * Math.ulp((float) each.reach) / 2;
      }
    }
    return sum;
  }

  /**
   * What a result measures.
   *
   * @param rounded whether all corners are floats, as a kernel leaves them if the triangles would
   *     not survive rounding; corners all on the grid of shapes do not count
   * @param reach the greatest coordinate
   */
  private record Measured(
      double volume, double area, int faces, int shells, int genus, boolean rounded, double reach) {
    static final Measured NOTHING = new Measured(0, 0, 0, 0, 0, false, 0);

    static Measured of(Mesh mesh) {
      MassProperties mass = MassProperties.of(mesh);
      boolean floats = true;
      boolean grid = true;
      double reach = 0;
      for (double v : mesh.coordinates()) {
        floats &= v == (float) v;
        grid &= v * 0x1p14 == Math.rint(v * 0x1p14);
        reach = Math.max(reach, Math.abs(v));
      }
      return new Measured(
          mass.volume(),
          mass.area(),
          mesh.faceCount(),
          MeshCheck.shells(mesh),
          MeshCheck.genus(mesh),
          floats && !grid,
          reach);
    }
  }

  private Measured measured(String name, Csg what) {
    operations++;
    Mesh mesh;
    try {
      mesh = kernel.evaluate(what);
    } catch (RuntimeException e) {
      broken.put("an answer for " + name, e.toString());
      return Measured.NOTHING;
    }
    if (mesh.isEmpty()) {
      return Measured.NOTHING;
    }
    List<String> problems = MeshCheck.problems(mesh);
    if (!problems.isEmpty()) {
      broken.put("closed: " + name, problems.toString());
    } else {
      floats(name, mesh);
    }
    return Measured.of(mesh);
  }

  private void floats(String name, Mesh mesh) {
    try {
      Mesh snapped = FloatGrid.snapped(mesh);
      List<String> problems = snapped.isEmpty() ? List.of() : MeshCheck.problemsAsFloats(snapped);
      if (!problems.isEmpty()) {
        broken.put("closed in floats: " + name, problems.toString());
      }
    } catch (RuntimeException e) {
      broken.put("closed in floats: " + name, e.toString());
    }
  }

  private void same(String law, double expected, double found, double bound) {
    if (!(Math.abs(expected - found) <= bound)) {
      broken.put(
          law,
          String.format(
              Locale.ROOT,
              "%s is not %s: off by %.3g, allowed %.3g",
              found,
              expected,
              found - expected,
              bound));
    }
  }
}
