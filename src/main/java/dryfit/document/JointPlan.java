package dryfit.document;

import dryfit.document.Design.FitPlan;
import dryfit.document.PartPlan.PartRef;
import dryfit.document.PartPlan.Spot;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A joint as the maker wrote it, numbers worked out. One plan may stand for several joints: both
 * ends of a part, both hands of a pair.
 *
 * @param thickness tenon thickness, across its cheeks (mortise and tenon)
 * @param width tenon width, the long side of its section (mortise and tenon)
 * @param length how far it goes in from the shoulder (mortise and tenon, round tenon); empty when
 *     {@code through}
 * @param lengthIs whether length is along the tenon or square to the face it enters
 * @param through goes right through and stands {@code proud}
 * @param diameter of a round tenon
 * @param depth how deep a whole end is let in (housing), square to the face
 * @param place where the tenon sits in the section of its part
 */
public record JointPlan(
    String name,
    String pointer,
    EndRef tenon,
    PartRef into,
    Kind kind,
    OptionalDouble thickness,
    OptionalDouble width,
    OptionalDouble length,
    LengthIs lengthIs,
    boolean through,
    double proud,
    OptionalDouble diameter,
    OptionalDouble depth,
    Entry entry,
    Place place,
    Optional<Haunch> haunch,
    Optional<Mitre> mitre,
    Shoulder shoulder,
    FitPlan fit,
    Role role) {

  /** The joint kinds. */
  public enum Kind {
    MORTISE_AND_TENON("mortise-and-tenon"),
    ROUND_TENON("round-tenon"),
    HOUSING("housing");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The word in the document. */
    public String word() {
      return word;
    }
  }

  /** What a length is measured along. */
  public enum LengthIs {
    ALONG_THE_TENON,
    SQUARE_TO_THE_FACE
  }

  /** The direction in which a tenon goes in. */
  public sealed interface Entry {
    record AlongThePart() implements Entry {}

    record SquareToTheFace() implements Entry {}

    record Along(Spot direction) implements Entry {}
  }

  /**
   * Where the tenon sits in its part's section, from the part's faces; what is empty is centred.
   * Top and bottom are across the part's width, outside and inside across its thickness.
   */
  public record Place(
      OptionalDouble fromTop,
      OptionalDouble fromBottom,
      OptionalDouble fromOutside,
      OptionalDouble fromInside) {}

  /** A short step of the tenon that fills the width up to the part's top or bottom edge. */
  public record Haunch(double deep, boolean atTop) {}

  /** The tip is mitred where it meets the tenon of another joint, with a gap between the two. */
  public record Mitre(String with, double gap) {}

  /** How the shoulder is cut. */
  public enum Shoulder {
    FLAT,
    SCRIBED,
    NONE
  }

  /** Whether the joint carries load or only places a part. */
  public enum Role {
    STRUCTURAL,
    LOCATING
  }

  /**
   * One end of a part, or both.
   *
   * @param hand which of a pair; {@code NONE} means each of them
   */
  public record EndRef(String part, Hand hand, End end, String pointer) {}

  /**
   * The ends of a part. Start and end are the order in which it is written; the others go by where
   * the end is in the chair; inner and outer by how far it is from the middle plane.
   */
  public enum End {
    START,
    END,
    BOTH,
    TOP,
    BOTTOM,
    FRONT,
    BACK,
    LEFT,
    RIGHT,
    INNER,
    OUTER
  }
}
