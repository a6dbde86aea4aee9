package dryfit.fit.order;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Hand;
import dryfit.fit.order.Mark.Wrong;
import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import dryfit.solid.Cells;
import dryfit.solid.Convex;
import dryfit.solid.Overlap;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Tries every part end for end and turned about its length, in its own place, in its twin's and in
 * that of every part like it, and keeps the ways in which it would go in without being the same.
 */
final class Orientations {
  /** A tenon that fills less of its mortise than this share of what it should is not in it. */
  private static final double IN = 0.65;

  /** So much of the wood about a mortise must be there for it to be one. */
  private static final double AROUND = 0.8;

  /** How much wood about a mortise is looked at, mm. */
  private static final double WALL = 4;

  /** A section whose sides differ by less than this share may be turned by quarters. */
  private static final double SQUARE = 0.8;

  /** What differs by less than this is the same to the hand, mm; common practice, no source. */
  private static final double SAME = 0.5;

  /** Parts whose sections differ by more than this, mm, nobody takes for one another. */
  private static final double LIKE = 12;

  /**
   * A part that stands out of its place by more than this share of its length is seen at once:
   * nobody glues it in so; common practice, no source.
   */
  private static final double SEEN = 0.25;

  private final Pieces pieces;
  private final Chair chair;

  private Orientations(Pieces pieces) {
    this.pieces = pieces;
    this.chair = pieces.chair();
  }

  /** The parts that can be put in wrong, in the order of the chair. */
  static List<Mark> marks(Pieces pieces) {
    Orientations all = new Orientations(pieces);
    return IntStream.range(0, pieces.count())
        .parallel()
        .mapToObj(all::mark)
        .flatMap(Optional::stream)
        .toList();
  }

  private Optional<Mark> mark(int part) {
    if (touching(part).findAny().isEmpty()) {
      return Optional.empty();
    }
    List<Wrong> wrong = new ArrayList<>(wrong(part, part));
    OptionalInt twin = twin(part);
    if (twin.isPresent()) {
      wrong.addAll(wrong(part, twin.getAsInt()));
    }
    List<Integer> elsewhere =
        IntStream.range(0, pieces.count())
            .filter(k -> isLike(part, k) && !wrong(part, k).isEmpty())
            .boxed()
            .toList();
    return wrong.isEmpty() && elsewhere.isEmpty()
        ? Optional.empty()
        : Optional.of(new Mark(part, wrong, elsewhere));
  }

  /**
   * The ways in which a part goes into a place without being what belongs there. Two ways that come
   * to the same, as any turns of a round part do, are told once; and in the place of a part that it
   * could well stand in for nothing is wrong that is not wrong in its own.
   */
  private List<Wrong> wrong(int part, int place) {
    Vec3 size = box(part).size();
    boolean square = Math.min(size.y(), size.z()) >= SQUARE * Math.max(size.y(), size.z());
    List<Wrong> wrong = new ArrayList<>();
    List<List<Convex>> seen = new ArrayList<>();
    for (int k = part == place ? 1 : 0; k < 8; k++) {
      Wrong way = new Wrong(k >= 4, k % 4, part != place);
      if (!square && k % 2 == 1) {
        continue;
      }
      Optional<List<Convex>> there = goesIn(part, place, way);
      if (there.isEmpty() || seen.stream().anyMatch(s -> !differs(s, there.get()))) {
        continue;
      }
      boolean differs =
          differs(pieces.cells(place), there.get()) || differs(there.get(), pieces.cells(place));
      if (!differs && part != place) {
        return List.of();
      }
      if (differs) {
        seen.add(there.get());
        wrong.add(way);
      }
    }
    return wrong;
  }

  /** Whether a part of another name has as many joints of each kind and nearly the same section. */
  private boolean isLike(int part, int other) {
    Part own = chair.parts().get(part);
    Part its = chair.parts().get(other);
    if (own.name().equals(its.name())
        || tenons(part) != tenons(other)
        || touching(part).count() != touching(other).count()) {
      return false;
    }
    Vec3 a = box(part).size();
    Vec3 b = box(other).size();
    return Math.abs(Math.max(a.y(), a.z()) - Math.max(b.y(), b.z())) < LIKE
        && Math.abs(Math.min(a.y(), a.z()) - Math.min(b.y(), b.z())) < LIKE;
  }

  private long tenons(int part) {
    return touching(part).filter(j -> j.tenoned() == part).count();
  }

  private OptionalInt twin(int part) {
    Part own = chair.parts().get(part);
    return IntStream.range(0, pieces.count())
        .filter(
            k ->
                own.hand() != Hand.NONE
                    && chair.parts().get(k).name().equals(own.name())
                    && chair.parts().get(k).hand() == own.hand().other())
        .findFirst();
  }

  private Stream<Joint> touching(int part) {
    return chair.holding().stream().filter(j -> j.tenoned() == part || j.mortised() == part);
  }

  /** The part as it then stands; empty if it does not go in. */
  private Optional<List<Convex>> goesIn(int part, int place, Wrong way) {
    List<Convex> own = chair.parts().get(part).solid().cells();
    Frame home = chair.parts().get(place).frame();
    List<Vec3> from = middles(part);
    List<Vec3> to = middles(place);
    Set<Frame> tried = new LinkedHashSet<>();
    for (int k = 0; k < from.size(); k++) {
      Frame turned = turned(home, way, from.get(k), to.get(k));
      if (tried.add(turned)) {
        List<Convex> there = own.stream().map(c -> c.placed(turned)).toList();
        if (!standsOut(there, place) && goesIn(there, place)) {
          return Optional.of(there);
        }
      }
    }
    return Optional.empty();
  }

  private boolean standsOut(List<Convex> there, int place) {
    Box right = pieces.bounds(place);
    Box found = there.stream().map(Convex::bounds).reduce(Box::with).orElseThrow();
    Vec3 low = right.low().minus(found.low());
    Vec3 high = found.high().minus(right.high());
    double out =
        Stream.of(low.x(), low.y(), low.z(), high.x(), high.y(), high.z())
            .mapToDouble(d -> d)
            .max()
            .orElseThrow();
    return out > SEEN * right.size().length();
  }

  private Box box(int part) {
    return chair.parts().get(part).solid().cells().stream()
        .map(Convex::bounds)
        .reduce(Box::with)
        .orElseThrow();
  }

  /**
   * Places about which a part may be turned, own frame: between its tenons, its joints, its ends.
   */
  private List<Vec3> middles(int part) {
    Frame frame = chair.parts().get(part).frame();
    List<Vec3> tenons =
        chair.holding().stream()
            .filter(j -> j.tenoned() == part)
            .map(j -> frame.local(j.at()))
            .toList();
    List<Vec3> joints = touching(part).map(j -> frame.local(j.at())).toList();
    Vec3 middle = box(part).middle();
    return List.of(
        tenons.isEmpty() ? middle : Box.around(tenons).middle(),
        Box.around(joints).middle(),
        middle);
  }

  private static Frame turned(Frame home, Wrong way, Vec3 from, Vec3 to) {
    Vec3 x = way.endForEnd() ? home.x().negated() : home.x();
    Vec3 y =
        switch (way.quarters()) {
          case 0 -> home.y();
          case 1 -> home.z();
          case 2 -> home.y().negated();
          default -> home.z().negated();
        };
    Frame about = new Frame(Vec3.ZERO, x, y, x.cross(y));
    return new Frame(home.place(to).minus(about.turn(from)), x, y, x.cross(y));
  }

  /** Whether it stands in nobody's way there and its tenons and mortises meet their partners. */
  private boolean goesIn(List<Convex> there, int place) {
    Box room = there.stream().map(Convex::bounds).reduce(Box::with).orElseThrow();
    for (int k = 0; k < pieces.count(); k++) {
      if (k != place && room.meets(pieces.bounds(k)) && Overlap.exists(there, pieces.cells(k))) {
        return false;
      }
    }
    return touching(place).allMatch(j -> meets(there, place, j));
  }

  /** Whether there is a tenon in the mortise, or wood all round the tenon, as there should be. */
  private boolean meets(List<Convex> there, int place, Joint j) {
    List<Convex> about = j.tenoned() == place ? j.mortise() : List.of(around(j));
    double right = Cells.volume(Cells.common(pieces.cells(place), about));
    double found = Cells.volume(Cells.common(there, about));
    return found >= (j.tenoned() == place ? IN : AROUND) * right;
  }

  /** A square block about a mortise, as deep. */
  private static Convex around(Joint j) {
    Frame frame = new Frame(j.at(), j.entry(), j.thick(), j.entry().cross(j.thick()));
    Box box =
        Box.around(
            j.mortise().stream().flatMap(c -> c.points().stream()).map(frame::local).toList());
    return Convex.box(
            new Box(
                box.low().minus(new Vec3(0, WALL, WALL)), box.high().plus(new Vec3(0, WALL, WALL))))
        .placed(frame);
  }

  /** Whether some piece of what should be there is missing, by more than the hand feels. */
  private static boolean differs(List<Convex> right, List<Convex> there) {
    for (Convex cell : right) {
      double missing = cell.volume() - Cells.volume(Cells.common(List.of(cell), there));
      double skin = SAME * 2 * cell.volume() / cell.thickness();
      if (missing > skin) {
        return true;
      }
    }
    return false;
  }
}
