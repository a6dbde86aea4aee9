package dryfit.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Prisms whose corners, and more points on their faces and edges, are off by a little. */
class NearlyFlatHullTest {
  private static final double HALF = 10;

  @ParameterizedTest(name = "off by about {0} mm")
  @ValueSource(doubles = {0, 1e-9, 1e-8, 3e-8, 1e-7, 3e-7, 1e-6, 1e-5, 1e-4, 1e-3})
  void theHullClosesAndAPlaneThatGrazesItLeavesItWhole(double off) {
    for (int seed = 0; seed < 60; seed++) {
      Random r = new Random(seed);
      Vec3 x = random(r).unit();
      Vec3 y = random(r).across(x).unit();
      Vec3 z = x.cross(y);
      int sides = 4 + r.nextInt(12);
      List<Vec3> points = prism(r, x, y, z, sides, off);
      // Half of a regular polygon's sides times their triangles, stretched to 20 x 15.
      double volume = 2 * HALF * sides / 2 * 20 * 15 * Math.sin(2 * Math.PI / sides);
      double allowed = 1e-6 * volume + 10_000 * off;

      Convex hull = Convex.hull(points);
      assertThat(hull.volume()).as("seed " + seed).isCloseTo(volume, within(allowed));

      Plane grazing =
          new Plane(z.plus(random(r).times(off / 20)).unit(), HALF + (r.nextDouble() - 0.5) * off);
      Optional<Convex> cut = hull.clipped(grazing);
      assertThat(cut).as("seed " + seed).isPresent();
      assertThat(cut.orElseThrow().volume()).isCloseTo(volume, within(allowed));
    }
  }

  private static List<Vec3> prism(Random r, Vec3 x, Vec3 y, Vec3 z, int sides, double off) {
    List<Vec3> points = new ArrayList<>();
    for (int k = 0; k < sides; k++) {
      double turn = 2 * Math.PI * k / sides;
      Vec3 rim = x.times(20 * Math.cos(turn)).plus(y.times(15 * Math.sin(turn)));
      for (int level = -1; level <= 1; level++) {
        points.add(rim.plus(z.times(level * HALF)).plus(random(r).times(off)));
      }
      points.add(
          z.times(HALF)
              .plus(x.times(5 * r.nextDouble()))
              .plus(y.times(3 * r.nextDouble()))
              .plus(random(r).times(off)));
    }
    return points;
  }

  private static Vec3 random(Random r) {
    return new Vec3(r.nextDouble() - 0.5, r.nextDouble() - 0.5, r.nextDouble() - 0.5);
  }
}
