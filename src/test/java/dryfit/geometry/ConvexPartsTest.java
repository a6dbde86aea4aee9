package dryfit.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class ConvexPartsTest {

  @Test
  void aConvexOutlineIsOnePart() {
    ConvexParts parts = ConvexParts.of(loop(0, 0, 10, 0, 10, 5, 10, 10, 0, 10, 0, 5));
    assertThat(parts.parts()).hasSize(1);
    assertThat(parts.parts().get(0)).hasSize(4);
    assertFills(parts, 100);
  }

  @Test
  void anLIsTwoPartsAndAPlusIsThree() {
    ConvexParts ell = ConvexParts.of(loop(0, 0, 40, 0, 40, 10, 10, 10, 10, 60, 0, 60));
    assertThat(ell.parts()).hasSize(2);
    assertFills(ell, 900);
    ConvexParts plus =
        ConvexParts.of(
            loop(1, 0, 2, 0, 2, 1, 3, 1, 3, 2, 2, 2, 2, 3, 1, 3, 1, 2, 0, 2, 0, 1, 1, 1));
    assertThat(plus.parts()).hasSize(3);
    assertFills(plus, 5);
  }

  @Test
  void eitherWayRoundGivesTheSameParts() {
    List<Vec2> ell = loop(0, 0, 40, 0, 40, 10, 10, 10, 10, 60, 0, 60);
    List<Vec2> back = new ArrayList<>(ell);
    Collections.reverse(back);
    assertThat(ConvexParts.of(back).parts()).hasSameSizeAs(ConvexParts.of(ell).parts());
    assertFills(ConvexParts.of(back), 900);
  }

  @Test
  void repeatedPointsAreDroppedAndPointsInLineKept() {
    ConvexParts parts = ConvexParts.of(loop(0, 0, 5, 0, 5, 0, 10, 0, 10, 10, 0, 10, 0, 0));
    assertThat(parts.outline()).hasSize(5);
    assertThat(parts.triangles()).hasSize(3);
    assertFills(parts, 100);
  }

  @Test
  void randomStarsAreFilledExactly() {
    Random random = new Random(3);
    for (int round = 0; round < 300; round++) {
      int n = 3 + random.nextInt(60);
      List<Vec2> star = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        double angle = 2 * Math.PI * i / n;
        double radius = 5 + Math.rint(random.nextDouble() * 8) * 12;
        star.add(new Vec2(radius * Math.cos(angle), radius * Math.sin(angle)));
      }
      assertFills(ConvexParts.of(star), area(star));
    }
  }

  @Test
  void aCombWithManyPointsInLineIsFilled() {
    List<Vec2> comb = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      comb.add(new Vec2(2 * i, 0));
      comb.add(new Vec2(2 * i + 1, 0));
    }
    for (int i = 11; i >= 0; i--) {
      comb.add(new Vec2(2 * i + 1, 9));
      comb.add(new Vec2(2 * i, 9));
      if (i > 0) {
        comb.add(new Vec2(2 * i, 1));
        comb.add(new Vec2(2 * i - 1, 1));
      }
    }
    ConvexParts parts = ConvexParts.of(comb);
    assertFills(parts, 12 * 9 + 11);
    assertThat(parts.parts()).hasSizeLessThanOrEqualTo(4 * 13);
  }

  @Test
  void outlinesWithoutAnInsideAreRefused() {
    assertRefused(loop(0, 0, 10, 10, 10, 0, 0, 10));
    assertRefused(loop(0, 0, 10, 0, 20, 0));
    assertRefused(loop(0, 0, 10, 0));
    assertRefused(loop(0, 0, 10, 0, 10, 10, 5, 0, 0, 10));
    assertRefused(loop(0, 0, 10, 0, 10, 10, 10, -5));
  }

  private static void assertRefused(List<Vec2> outline) {
    assertThatThrownBy(() -> ConvexParts.of(outline)).isInstanceOf(IllegalArgumentException.class);
  }

  private static void assertFills(ConvexParts parts, double area) {
    List<Vec2> points = parts.outline();
    assertThat(parts.triangles()).hasSize(points.size() - 2);
    double triangles = 0;
    Set<Integer> used = new TreeSet<>();
    for (int[] t : parts.triangles()) {
      double each = area(pick(points, t));
      assertThat(each).isPositive();
      triangles += each;
      for (int p : t) {
        used.add(p);
      }
    }
    assertThat(used).hasSize(points.size());
    assertThat(triangles).isCloseTo(area, within(1e-9 * area));
    double whole = 0;
    for (int[] part : parts.parts()) {
      List<Vec2> loop = pick(points, part);
      whole += area(loop);
      for (int i = 0; i < part.length; i++) {
        assertThat(
                Ears.turn(
                    loop.get(i), loop.get((i + 1) % part.length), loop.get((i + 2) % part.length)))
            .isEqualTo(1);
      }
    }
    assertThat(whole).isCloseTo(area, within(1e-9 * area));
  }

  private static List<Vec2> pick(List<Vec2> points, int[] numbers) {
    List<Vec2> out = new ArrayList<>();
    for (int i : numbers) {
      out.add(points.get(i));
    }
    return out;
  }

  private static double area(List<Vec2> loop) {
    double sum = 0;
    for (int i = 0; i < loop.size(); i++) {
      sum += loop.get(i).cross(loop.get((i + 1) % loop.size()));
    }
    return sum / 2;
  }

  private static List<Vec2> loop(double... xy) {
    List<Vec2> out = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      out.add(new Vec2(xy[i], xy[i + 1]));
    }
    return out;
  }
}
