package dryfit.solid.jcsg;

import dryfit.geometry.MeshCheck;
import dryfit.geometry.MeshFailure;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Csg;
import eu.mihosoft.jcsg.CSG;
import eu.mihosoft.jcsg.Polygon;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Works an expression out with JCSG. A missing operand is the empty solid. */
final class Booleans {
  private final Leaves leaves;

  Booleans(Leaves leaves) {
    this.leaves = leaves;
  }

  /**
   * @throws MeshFailure if a leaf is not a closed solid or an answer cannot be true
   */
  Optional<Operand> evaluate(Csg what) {
    if (what instanceof Csg.Leaf leaf) {
      return leaf(leaf);
    }
    if (what instanceof Csg.Union union) {
      return union(present(union.of()));
    }
    if (what instanceof Csg.Common common) {
      return common(common.of());
    }
    Csg.Cut cut = (Csg.Cut) what;
    return evaluate(cut.from()).flatMap(from -> cut(from, present(cut.tools())));
  }

  private Optional<Operand> leaf(Csg.Leaf leaf) {
    List<String> problems = MeshCheck.problems(leaf.mesh());
    if (!problems.isEmpty()) {
      throw new MeshFailure("a shape to start from is not a closed solid: " + problems.get(0));
    }
    return Optional.ofNullable(Operand.of(leaves.polygons(leaf.mesh())));
  }

  private List<Operand> present(List<Csg> all) {
    List<Operand> out = new ArrayList<>();
    for (Csg csg : all) {
      evaluate(csg).ifPresent(out::add);
    }
    return out;
  }

  /** In halves, so that no polygon is cut again for every later operand. */
  private Optional<Operand> union(List<Operand> all) {
    if (all.size() < 2) {
      return all.stream().findFirst();
    }
    int half = all.size() / 2;
    Operand a = union(all.subList(0, half)).orElseThrow();
    Operand b = union(all.subList(half, all.size())).orElseThrow();
    if (!a.mayTouch(b)) {
      return together(List.of(a, b));
    }
    return checked(
        a.csg().union(b.csg()), Math.max(a.volume(), b.volume()), a.volume() + b.volume());
  }

  /** Only for solids that are apart. */
  private static Optional<Operand> together(List<Operand> apart) {
    List<Polygon> polygons = new ArrayList<>();
    for (Operand o : apart) {
      polygons.addAll(o.csg().getPolygons());
    }
    return Optional.ofNullable(Operand.of(polygons));
  }

  private Optional<Operand> common(List<Csg> of) {
    List<Operand> all = present(of);
    if (all.size() < of.size() || all.isEmpty()) {
      return Optional.empty();
    }
    Optional<Operand> sofar = Optional.of(all.get(0));
    for (Operand next : all.subList(1, all.size())) {
      sofar =
          sofar
              .filter(s -> s.mayOverlap(next))
              .flatMap(
                  s ->
                      checked(
                          s.csg().intersect(next.csg()), 0, Math.min(s.volume(), next.volume())));
    }
    return sofar;
  }

  private Optional<Operand> cut(Operand from, List<Operand> tools) {
    List<Operand> apart = apart(tools.stream().filter(from::mayOverlap).toList());
    if (apart.isEmpty()) {
      return Optional.of(from);
    }
    Operand tool = together(apart).orElseThrow();
    return checked(from.csg().difference(tool.csg()), from.volume() - tool.volume(), from.volume());
  }

  /** Joins those whose boxes meet, until the boxes of all that is left are apart. */
  private List<Operand> apart(List<Operand> tools) {
    List<Operand> out = new ArrayList<>();
    for (Operand tool : tools) {
      Operand whole = tool;
      for (int i = 0; i < out.size(); ) {
        if (out.get(i).mayTouch(whole)) {
          whole = union(List.of(out.remove(i), whole)).orElseThrow();
          i = 0;
        } else {
          i++;
        }
      }
      out.add(whole);
    }
    return out;
  }

  /** A volume outside what the operands allow means that JCSG went wrong without saying so. */
  private static Optional<Operand> checked(CSG result, double least, double most) {
    Optional<Operand> operand = Optional.ofNullable(Operand.of(result.getPolygons()));
    double volume = operand.map(Operand::volume).orElse(0.0);
    double slack =
        operand.map(o -> slack(o.box().size())).orElse(0.0) + Tolerances.volumeShare() * most;
    if (volume < Math.max(0, least) - slack || volume > most + slack) {
      throw new MeshFailure(
          "JCSG found a volume of "
              + volume
              + " mm^3 where only "
              + Math.max(0, least)
              + " to "
              + most
              + " is possible");
    }
    return operand;
  }

  /** The volume of a skin as thick as the weld all over a box. */
  static double slack(Vec3 size) {
    return 2
        * Tolerances.weld()
        * (size.x() * size.y() + size.y() * size.z() + size.z() * size.x());
  }
}
