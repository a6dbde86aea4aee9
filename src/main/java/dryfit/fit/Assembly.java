package dryfit.fit;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Design;
import dryfit.document.Hand;
import dryfit.geometry.Box;
import dryfit.geometry.Mesh;
import dryfit.geometry.Rays;
import dryfit.geometry.Vec3;
import dryfit.measure.Length;
import dryfit.measure.Tolerances;
import dryfit.solid.AllCores;
import dryfit.solid.Convex;
import java.util.List;
import java.util.Locale;

/** The chair put together, with what every check needs of each part worked out once. */
final class Assembly {
  private final Chair chair;
  private final List<Placed> placed;

  private Assembly(Chair chair, List<Placed> placed) {
    this.chair = chair;
    this.placed = placed;
  }

  /**
   * One part where it stands in the chair.
   *
   * @param cells of the finished part
   * @param bodyCells of the part before mortises, tenons included
   */
  record Placed(
      Part part, Mesh mesh, Rays rays, Box bounds, List<Convex> cells, List<Convex> bodyCells) {

    static Placed of(Part part) {
      Mesh mesh = part.placedMesh();
      return new Placed(
          part,
          mesh,
          part.solid().rays().placed(part.frame()),
          mesh.bounds(),
          part.placedCells(),
          part.bodyCells().stream().map(c -> c.placed(part.frame())).toList());
    }
  }

  static Assembly of(Chair chair) {
    return new Assembly(chair, AllCores.map(chair.parts(), Assembly::work, Placed::of));
  }

  /** The left of a pair comes last: it takes over what was worked out for the right. */
  private static int work(Part part) {
    return part.hand() == Hand.LEFT ? 0 : part.solid().mesh().triangleCount();
  }

  Chair chair() {
    return chair;
  }

  List<Placed> parts() {
    return placed;
  }

  Placed part(int index) {
    return placed.get(index);
  }

  Placed tenoned(Joint joint) {
    return placed.get(joint.tenoned());
  }

  Placed mortised(Joint joint) {
    return placed.get(joint.mortised());
  }

  /** A length in the document's unit, for sentences. */
  String length(double mm) {
    return Length.print(mm, chair.design().unit().printed(), 64);
  }

  /** A small gap in the document's unit: hundredths of a millimetre or thousandths of an inch. */
  String gap(double mm) {
    Length.Unit unit = chair.design().unit().printed();
    return Length.decimal(mm, unit, unit == Length.Unit.MM ? 2 : 3);
  }

  /**
   * A length that is advised, up to the next tenth of a millimetre or 64th of an inch, so that it
   * is enough when printed. What is one already stays one: the last digits differ between the
   * hands.
   */
  String lengthUp(double mm) {
    double step = chair.design().unit() == Design.LengthUnit.IN ? Length.Unit.IN.mm() / 64 : 0.1;
    return length(Math.ceil((mm - Tolerances.contact()) / step) * step);
  }

  /** A volume in the document's unit: cubic centimetres or cubic inches. */
  String volume(double mm3) {
    return chair.design().unit() == Design.LengthUnit.IN
        ? String.format(Locale.ROOT, "%.2f in³", mm3 / Math.pow(Length.Unit.IN.mm(), 3))
        : String.format(Locale.ROOT, "%.1f cm³", mm3 / 1000);
  }

  /**
   * Which way a direction looks in the chair, in a maker's word. Sideways it is outside or inside,
   * so that it reads the same for both of a pair; in the middle plane it is a side.
   */
  static String facing(Vec3 d, Vec3 at) {
    double x = Math.abs(d.x());
    double y = Math.abs(d.y());
    double z = Math.abs(d.z());
    if (z >= x && z >= y) {
      return d.z() > 0 ? "top" : "bottom";
    }
    if (y >= x) {
      return d.y() > 0 ? "back" : "front";
    }
    if (Math.abs(at.x()) <= Tolerances.contact()) {
      return "side";
    }
    return (d.x() > 0) == (at.x() > 0) ? "outside" : "inside";
  }
}
