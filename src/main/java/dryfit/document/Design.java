package dryfit.document;

import dryfit.measure.Length;
import java.util.List;

/**
 * A chair document with one variant applied and every expression worked out. Lengths in
 * millimetres, angles in radians. Everything carries the JSON pointer it came from. Order is the
 * document's.
 *
 * @param file the name of the file it was read from, for messages
 * @param variant the variant applied, or {@link #AS_DRAWN}
 * @param timber key of a species, e.g. {@code ash-white}
 * @param limits what the maker wants measures held against, where that is not the usual
 * @param boards the wood that the parts are cut from
 * @param printing what jigs are made with
 * @param accuracy how far off the maker's cuts may be
 */
public record Design(
    String file,
    String name,
    String about,
    LengthUnit unit,
    Labels labels,
    String variant,
    String timber,
    FitPlan fit,
    List<Dimension> dimensions,
    List<PartPlan> parts,
    List<JointPlan> joints,
    List<Waiver> waived,
    List<Measurement> measured,
    List<JigPlan> jigs,
    MakerLimits limits,
    BoardsPlan boards,
    Printing printing,
    Accuracy accuracy) {

  /** The name of the chair without any variant. */
  public static final String AS_DRAWN = "as drawn";

  /** The same design, its lengths told in another unit than the document's. */
  public Design toldIn(LengthUnit other) {
    return new Design(
        file,
        name,
        about,
        other,
        labels,
        variant,
        timber,
        fit,
        dimensions,
        parts,
        joints,
        waived,
        measured,
        jigs,
        limits,
        boards,
        printing,
        accuracy);
  }

  public Design {
    dimensions = List.copyOf(dimensions);
    parts = List.copyOf(parts);
    joints = List.copyOf(joints);
    waived = List.copyOf(waived);
    measured = List.copyOf(measured);
    jigs = List.copyOf(jigs);
  }

  /** A design that leaves limits and boards as they usually are. */
  public Design(
      String file,
      String name,
      String about,
      LengthUnit unit,
      Labels labels,
      String variant,
      String timber,
      FitPlan fit,
      List<Dimension> dimensions,
      List<PartPlan> parts,
      List<JointPlan> joints,
      List<Waiver> waived,
      List<Measurement> measured,
      List<JigPlan> jigs) {
    this(
        file,
        name,
        about,
        unit,
        labels,
        variant,
        timber,
        fit,
        dimensions,
        parts,
        joints,
        waived,
        measured,
        jigs,
        MakerLimits.NONE,
        BoardsPlan.USUAL,
        Printing.USUAL,
        Accuracy.USUAL);
  }

  /** The unit a document is written in and printed in. */
  public enum LengthUnit {
    MM(Length.Unit.MM),
    IN(Length.Unit.IN);

    private final Length.Unit printed;

    LengthUnit(Length.Unit printed) {
      this.printed = printed;
    }

    /** The unit of a document whose lengths are printed in a unit. */
    public static LengthUnit of(Length.Unit printed) {
      return printed == Length.Unit.IN ? IN : MM;
    }

    /** The same unit for printing lengths in it. */
    public Length.Unit printed() {
      return printed;
    }
  }

  /** How printed left and right are meant. */
  public enum Labels {
    AS_YOU_FACE_IT,
    AS_SEATED
  }

  /**
   * A named value.
   *
   * @param formula the expression it is worked out from, or empty for a plain value
   * @param from least allowed value, NaN if none
   * @param to greatest allowed value, NaN if none
   * @param step step of a slider, NaN if none
   */
  public record Dimension(
      String name,
      Quantity value,
      String formula,
      String note,
      double from,
      double to,
      double step,
      double accuracy,
      String pointer) {}

  /**
   * The maker's fit: planned gaps of a joint, millimetres.
   *
   * @param cheek gap at each cheek
   * @param edge gap at each edge of the tenon
   * @param bottom gap at the bottom of the mortise
   * @param leastWall least wood to leave beside a mortise
   */
  public record FitPlan(double cheek, double edge, double bottom, double leastWall) {}

  /** A finding the maker accepts, and why; {@code joint} and {@code part} may be empty. */
  public record Waiver(String check, String joint, String part, String because, String pointer) {}

  /**
   * What the maker found on the real part; value in millimetres or radians.
   *
   * @param part what it was found on, or empty
   * @param joint or at which joint, or empty
   * @param frame or on which frame of four legs: seat, front, back; or empty
   * @param hand which of a pair of joints; {@code NONE} for both
   * @param at at which edge of a shoulder, a {@link #SIDES side}; empty for its middle
   */
  public record Measurement(
      String part,
      String joint,
      String frame,
      String what,
      Hand hand,
      String at,
      Quantity value,
      String on,
      String pointer) {
    /** The frames of four legs whose diagonals can be measured. */
    public static final List<String> FRAMES = List.of("seat", "front", "back");

    /** What is measured at the middle or at one edge of a shoulder. */
    public static final String GAP = "shoulder gap";

    /** The edges of a shoulder: as the chair stands, not as the part lies on the bench. */
    public static final List<String> SIDES =
        List.of("top", "bottom", "front", "back", "outside", "inside");
  }

  /**
   * How far off either way what the maker cuts may be. Common practice, no source.
   *
   * @param length of every length, mm
   * @param angle of every shoulder and of every mortise that is chopped or milled, radians
   * @param bored of every hole that is bored for a round tenon, radians
   * @param fit of the size of a tenon or a mortise, thickness and width, mm
   */
  public record Accuracy(double length, double angle, double bored, double fit) {
    /**
     * A sixty-fourth of an inch, a tenth of a degree, half a degree, and a tenth of a millimetre. A
     * shoulder is pared to a knifed line; one that strays by the width of that line, a tenth of a
     * millimetre, over the width of a rail, some 60 mm, is out by a tenth of a degree. A hole has
     * no such line: it is bored past a bevel, which an eye follows to about half a degree.
     */
    public static final Accuracy USUAL =
        new Accuracy(25.4 / 64, Math.toRadians(0.1), Math.toRadians(0.5), 0.1);
  }

  /** A jig the maker wants. */
  public record JigPlan(
      String kind, String joint, String from, String to, String hand, String pointer) {}
}
