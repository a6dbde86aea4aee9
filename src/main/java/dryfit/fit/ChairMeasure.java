package dryfit.fit;

import dryfit.geometry.Vec3;
import java.util.List;
import java.util.Optional;

/**
 * What is measured on the chair as a whole, once it is together.
 *
 * @param frames the seat, front and back frames that were found
 * @param stance how it stands; empty with fewer than three feet
 * @param level how the seat lies; empty if it has not four corners
 * @param grain the run of the grain in every part where it leaves the part's own line
 * @param mortises mortises near each other in one part, or run into each other
 */
public record ChairMeasure(
    List<FrameSquare> frames,
    Optional<Stance> stance,
    Optional<SeatLevel> level,
    List<GrainRun> grain,
    List<MortisePair> mortises) {
  /** Nothing measured. */
  public static final ChairMeasure NONE =
      new ChairMeasure(List.of(), Optional.empty(), Optional.empty(), List.of(), List.of());

  public ChairMeasure {
    frames = List.copyOf(frames);
    grain = List.copyOf(grain);
    mortises = List.copyOf(mortises);
  }

  /** A place that belongs to a named part. */
  public record Named(String part, Vec3 at) {}

  /**
   * The diagonals of a frame, from the middle of one leg to the middle of another.
   *
   * @param which {@code seat}, {@code front} or {@code back}
   * @param fromLeft from the front left, or from the left foot, mm
   * @param fromRight from the front right, or from the right foot, mm
   * @param shift how far the front, or the foot, has moved sideways against a square frame, mm
   * @param angle the same as an angle, radians
   */
  public record FrameSquare(
      String which, double fromLeft, double fromRight, double shift, double angle, Vec3 at) {
    public double difference() {
      return fromLeft - fromRight;
    }
  }

  /**
   * A foot: the lowest place of a leg.
   *
   * @param gap how far it is off the floor when the chair has come to rest, mm
   * @param trim what to take off so that the chair no longer rocks, mm
   */
  public record Foot(String part, Vec3 at, double gap, double trim) {}

  /**
   * How a chair stands.
   *
   * @param middle where its weight is, chair space
   * @param up which way is up once it rests on its feet, a unit direction in chair space
   * @param stands whether the weight is inside the feet
   */
  public record Stance(List<Foot> feet, Vec3 middle, Vec3 up, boolean stands) {
    public Stance {
      feet = List.copyOf(feet);
    }

    /** The greatest gap below a foot, mm. */
    public double rock() {
      return feet.stream().mapToDouble(Foot::gap).max().orElse(0);
    }
  }

  /**
   * The four corners of the seat above the floor on which the chair stands.
   *
   * @param corners front left, front right, back right, back left
   * @param heights of these, mm
   * @param sideways slope from left to right, radians; positive rises to the right
   * @param foreAft slope from front to back, radians; positive rises to the back
   */
  public record SeatLevel(
      List<Named> corners, List<Double> heights, double sideways, double foreAft) {
    public SeatLevel {
      corners = List.copyOf(corners);
      heights = List.copyOf(heights);
    }

    /** The greater difference between left and right, at the front or at the back, mm. */
    public double outOfLevel() {
      double front = heights.get(0) - heights.get(1);
      double back = heights.get(3) - heights.get(2);
      return Math.max(Math.abs(front), Math.abs(back));
    }
  }

  /**
   * The grain of a part against its own middle line.
   *
   * @param slope the greatest angle between them, radians
   * @param steepest where that is, chair space
   * @param fibre the shortest unbroken fibre through the middle line, mm; infinite if all run out
   *     at an end
   * @param shortest where that is
   */
  public record GrainRun(
      String part, String pointer, double slope, Vec3 steepest, double fibre, Vec3 shortest) {}

  /**
   * Two mortises in one part.
   *
   * @param wood between them, mm; below zero, how deep they run into each other
   * @param plug for mortises that meet: the block to leave in the first, as thickness, width,
   *     length; empty otherwise
   * @param first label of the joint whose mortise is cut first
   */
  public record MortisePair(
      String part, String first, String second, double wood, Vec3 at, List<Double> plug) {
    public MortisePair {
      plug = List.copyOf(plug);
    }
  }
}
