package dryfit.solid.jcsg;

import dryfit.geometry.Box;
import dryfit.geometry.Vec3;
import eu.mihosoft.jcsg.CSG;
import eu.mihosoft.jcsg.Polygon;
import eu.mihosoft.jcsg.Vertex;
import java.util.ArrayList;
import java.util.List;

/** A solid in JCSG's form, never empty, with what the wrapper needs to know about it. */
record Operand(CSG csg, Box box, double volume) {
  static final String SHEET = "sheet";

  /** The operand of these polygons, or null if there are none. */
  static Operand of(List<Polygon> polygons) {
    List<Vec3> corners = new ArrayList<>();
    for (Polygon polygon : polygons) {
      for (Vertex v : polygon.vertices) {
        corners.add(new Vec3(v.pos.x(), v.pos.y(), v.pos.z()));
      }
    }
    if (corners.isEmpty()) {
      return null;
    }
    Box box = Box.around(corners);
    CSG csg = CSG.fromPolygons(polygons).optimization(CSG.OptType.NONE);
    return new Operand(csg, box, volume(fragments(polygons), box.middle()));
  }

  static double volume(List<Fragment> fragments, Vec3 middle) {
    return fragments.stream().mapToDouble(f -> f.volume(middle)).sum();
  }

  List<Fragment> fragments() {
    return fragments(csg.getPolygons());
  }

  private static List<Fragment> fragments(List<Polygon> polygons) {
    List<Fragment> out = new ArrayList<>();
    for (Polygon polygon : polygons) {
      int sheet = polygon.getStorage().<Integer>getValue(SHEET).orElseThrow();
      out.add(
          new Fragment(
              sheet,
              polygon.vertices.stream()
                  .map(v -> new Vec3(v.pos.x(), v.pos.y(), v.pos.z()))
                  .toList()));
    }
    return out;
  }

  /** Whether the boxes share more than a face. */
  boolean mayOverlap(Operand other) {
    return box.low().x() < other.box.high().x()
        && other.box.low().x() < box.high().x()
        && box.low().y() < other.box.high().y()
        && other.box.low().y() < box.high().y()
        && box.low().z() < other.box.high().z()
        && other.box.low().z() < box.high().z();
  }

  boolean mayTouch(Operand other) {
    return box.meets(other.box);
  }
}
