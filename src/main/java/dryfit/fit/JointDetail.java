package dryfit.fit;

import dryfit.geometry.Vec3;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/**
 * What is measured at a joint beyond the few figures of {@link JointFit}: every side by itself, and
 * where. Depends on nothing but the joint and its two parts. Where on each side a gap is least and
 * greatest takes many looks and no check asks for it: so it is looked for when it is first asked,
 * once, by whatever thread asks.
 */
public final class JointDetail {
  /** Nothing measured. */
  public static final JointDetail NONE =
      new JointDetail(() -> new Sides(List.of(), Optional.empty()), List.of(), Optional.empty());

  /** Gone once the sides are known, and with it all that it looks at. */
  private Supplier<Sides> look;

  private Sides sides;
  private final List<Wall> walls;
  private final Optional<Reveal> reveal;

  /**
   * What every side comes to.
   *
   * @param gaps one entry a side that anything faces
   * @param play empty where nothing holds the part sideways
   */
  record Sides(List<SideGap> gaps, Optional<Play> play) {
    Sides {
      gaps = List.copyOf(gaps);
    }

    private Sides mirrored() {
      return new Sides(
          gaps.stream()
              .map(g -> new SideGap(g.side(), g.least().mirrored(), g.greatest().mirrored()))
              .toList(),
          play);
    }
  }

  /**
   * @param look measures the sides; called once at most
   */
  JointDetail(Supplier<Sides> look, List<Wall> walls, Optional<Reveal> reveal) {
    this.look = look;
    this.walls = List.copyOf(walls);
    this.reveal = reveal;
  }

  private synchronized Sides sides() {
    if (sides == null) {
      sides = look.get();
      look = null;
    }
    return sides;
  }

  /** One entry a side that anything faces. */
  public List<SideGap> gaps() {
    return sides().gaps();
  }

  /** Wood left beside the mortise, one entry a side of its part, the thinnest first. */
  public List<Wall> walls() {
    return walls;
  }

  /** How far the joint lets its part swing; empty where nothing holds it sideways. */
  public Optional<Play> play() {
    return sides().play();
  }

  /** How the faces of the two parts stand to each other. */
  public Optional<Reveal> reveal() {
    return reveal;
  }

  /**
   * The same at the mirror image of the joint in the chair's middle plane. Words for sides are the
   * same there, for they say outside and inside.
   */
  JointDetail mirrored() {
    return new JointDetail(
        () -> sides().mirrored(),
        walls.stream()
            .map(w -> new Wall(w.face(), w.end(), w.left().mirrored(), w.way().mirrored()))
            .toList(),
        reveal.map(
            r ->
                new Reveal(
                    r.sides().stream()
                        .map(b -> new Setback(b.face(), b.by(), b.way().mirrored()))
                        .toList())));
  }

  /** A measure and where it was taken: chair space, and in the joint's own words. */
  public record Spot(double value, Vec3 at, String where) {
    Spot mirrored() {
      return new Spot(value, at.mirrored(), where);
    }
  }

  /**
   * The gap along one side of a joint, mm; negative where wood overlaps.
   *
   * @param side e.g. {@code outside cheek}, {@code upper edge}, {@code bottom}, {@code shoulder}
   */
  public record SideGap(String side, Spot least, Spot greatest) {}

  /**
   * Wood left between a mortise and a side of its part, mm.
   *
   * @param face the side in a maker's word
   * @param end whether it is an end of the part, where the grain is short
   * @param way from the mortise to the face, a unit direction; none between two mortises, or where
   *     nothing is left
   */
  public record Wall(String face, boolean end, Spot left, Vec3 way) {}

  /**
   * How far a part swings in a dry joint before its tenon touches both sides: the gap over the
   * length of the tenon, and so many times more at the far end of the part.
   *
   * @param acrossCheeks radians, in the plane square to the cheeks
   * @param acrossEdges radians, in the plane of the cheeks; empty for a round tenon
   * @param lever from the mouth to the far end of the part, mm
   */
  public record Play(double acrossCheeks, OptionalDouble acrossEdges, double lever) {
    /** How far the far end moves across the cheeks from one side to the other, mm. */
    public double swingAcrossCheeks() {
      return lever * Math.tan(acrossCheeks);
    }

    /** How far the far end moves across the edges from one side to the other, mm. */
    public OptionalDouble swingAcrossEdges() {
      return acrossEdges.isPresent()
          ? OptionalDouble.of(lever * Math.tan(acrossEdges.getAsDouble()))
          : OptionalDouble.empty();
    }
  }

  /**
   * How far the faces of the tenoned part stand back from those of the other, along the mouth, mm;
   * below zero they stand proud. A pair of faces that does not look the same way has no entry.
   */
  public record Reveal(List<Setback> sides) {
    public Reveal {
      sides = List.copyOf(sides);
    }
  }

  /**
   * One pair of faces.
   *
   * @param face the side in a maker's word
   * @param way the way the faces look along the mouth, a unit direction
   */
  public record Setback(String face, double by, Vec3 way) {}
}
