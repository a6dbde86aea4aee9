package dryfit.build;

import dryfit.build.MiddleLine.Sample;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The section's place at every corner of a drawn middle line. Where two straight pieces meet the
 * section lies in the plane half way between them, stretched as a mitre is; an upright one is
 * simply stood in that plane.
 *
 * @param rings from start to end, what is left longer included
 * @param directions of the straight pieces between the rings
 * @param first where the middle line starts, x along it, y along the width
 * @param last where it ends, likewise
 */
record BentRings(List<Ring> rings, List<Vec3> directions, Frame first, Frame last) {

  /**
   * One place of the section.
   *
   * @param wide so far does a millimetre of width take a corner, in the plane of the ring
   * @param thick so far does a millimetre of thickness
   * @param width of the section there, mm
   * @param thickness of the section there, mm
   */
  record Ring(Vec3 at, Vec3 wide, Vec3 thick, double width, double thickness) {
    Vec3 corner(double y, double z) {
      return at.plus(wide.times(y)).plus(thick.times(z));
    }
  }

  /**
   * @param atStart how much longer the start is left, straight on
   */
  static BentRings of(MiddleLine line, Carried carried, double atStart, double atEnd) {
    List<Sample> samples = new ArrayList<>(line.samples());
    Sample start = samples.get(0);
    Sample end = samples.get(samples.size() - 1);
    double half = line.length() / 2;
    if (atStart > 0) {
      samples.add(0, moved(start, -atStart));
    }
    if (atEnd > 0) {
      samples.add(moved(end, atEnd));
    }
    int middle =
        IntStream.range(1, samples.size() - 1)
            .boxed()
            .min(java.util.Comparator.comparingDouble(i -> Math.abs(samples.get(i).along() - half)))
            .orElse(0);

    // Straight pieces, and among them the true directions at both ends and in the middle.
    List<Vec3> all = new ArrayList<>();
    all.add(start.direction());
    for (int i = 0; i + 1 < samples.size(); i++) {
      if (i == middle) {
        all.add(samples.get(i).direction());
      }
      all.add(samples.get(i + 1).at().minus(samples.get(i).at()).unit());
    }
    all.add(end.direction());
    List<Vec3> widths = carried.along(all, middle + 1);
    Frame first = Frame.of(start.at(), start.direction(), widths.get(0));
    Frame last = Frame.of(end.at(), end.direction(), widths.get(widths.size() - 1));
    List<Vec3> directions = new ArrayList<>(all.subList(1, all.size() - 1));
    directions.remove(middle);
    List<Vec3> pieceWidths = new ArrayList<>(widths.subList(1, widths.size() - 1));
    pieceWidths.remove(middle);

    List<Ring> rings = new ArrayList<>();
    for (int i = 0; i < samples.size(); i++) {
      Sample s = samples.get(i);
      boolean atAnEnd = i == 0 || i == samples.size() - 1;
      Vec3 before = directions.get(Math.max(0, i - 1));
      Vec3 after = directions.get(Math.min(directions.size() - 1, i));
      Vec3 normal = atAnEnd ? s.direction() : before.plus(after).unit();
      double[] size = line.size(s.along());
      Vec3 d = directions.get(Math.min(directions.size() - 1, i));
      Vec3 y = pieceWidths.get(Math.min(pieceWidths.size() - 1, i));
      Vec3 z = d.cross(y);
      if (carried.upright()) {
        y = carried.at(normal);
        z = normal.cross(y);
      } else {
        y = y.minus(d.times(y.dot(normal) / d.dot(normal)));
        z = z.minus(d.times(z.dot(normal) / d.dot(normal)));
      }
      rings.add(new Ring(s.at(), y, z, size[0], size[1]));
    }
    return new BentRings(List.copyOf(rings), List.copyOf(directions), first, last);
  }

  private static Sample moved(Sample s, double by) {
    return new Sample(s.at().plus(s.direction().times(by)), s.direction(), s.along() + by);
  }
}
