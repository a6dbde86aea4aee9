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
 * @param sizes what its kind needs
 * @param place where the tenon sits in the section of its part
 */
public record JointPlan(
    String name,
    String pointer,
    EndRef tenon,
    PartRef into,
    JointSizes sizes,
    Entry entry,
    Place place,
    Shoulder shoulder,
    FitPlan fit,
    Role role) {

  /** The joint kinds. */
  public enum Kind {
    MORTISE_AND_TENON("mortise-and-tenon"),
    ROUND_TENON("round-tenon"),
    HOUSING("housing"),
    LOOSE_TENON("loose-tenon"),
    DOWELS("dowels"),
    BRIDLE("bridle"),
    LAP("lap"),
    NOTCH("notch"),
    SCREWED("screwed"),
    GLUED("glued"),
    GROOVE("groove");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The word in the document. */
    public String word() {
      return word;
    }

    /** Whether a joint of this kind may be anywhere along its part, not only at an end. */
    public boolean mayBeBetweenTheEnds() {
      return this == LAP || this == NOTCH || this == SCREWED || this == GLUED;
    }
  }

  public Kind kind() {
    return sizes.kind();
  }

  /** Across the cheeks of one tenon; empty where a kind has no such size. */
  public OptionalDouble thickness() {
    if (sizes instanceof JointSizes.MortiseAndTenon s) {
      return OptionalDouble.of(s.thickness());
    } else if (sizes instanceof JointSizes.LooseTenon s) {
      return OptionalDouble.of(s.thickness());
    } else if (sizes instanceof JointSizes.Bridle s) {
      return OptionalDouble.of(s.thickness());
    }
    return OptionalDouble.empty();
  }

  /** The long side of one tenon's section; empty where a kind has no such size. */
  public OptionalDouble width() {
    if (sizes instanceof JointSizes.MortiseAndTenon s) {
      return OptionalDouble.of(s.width());
    } else if (sizes instanceof JointSizes.LooseTenon s) {
      return OptionalDouble.of(s.width());
    }
    return OptionalDouble.empty();
  }

  /** Of a round tenon or a dowel. */
  public OptionalDouble diameter() {
    if (sizes instanceof JointSizes.RoundTenon s) {
      return OptionalDouble.of(s.diameter());
    } else if (sizes instanceof JointSizes.Dowels s) {
      return OptionalDouble.of(s.diameter());
    }
    return OptionalDouble.empty();
  }

  /** How deep a whole end is let in, square to the face. */
  public OptionalDouble depth() {
    return sizes instanceof JointSizes.Housing s
        ? OptionalDouble.of(s.depth())
        : OptionalDouble.empty();
  }

  /** How far it goes into the other part; empty where that follows from the parts. */
  public Optional<JointSizes.Reach> reach() {
    if (sizes instanceof JointSizes.MortiseAndTenon s) {
      return Optional.of(s.reach());
    } else if (sizes instanceof JointSizes.RoundTenon s) {
      return Optional.of(s.reach());
    } else if (sizes instanceof JointSizes.LooseTenon s) {
      return Optional.of(s.reach());
    } else if (sizes instanceof JointSizes.Dowels s) {
      return Optional.of(s.reach());
    }
    return Optional.empty();
  }

  /** How far it goes in from the shoulder; empty when it goes through. */
  public OptionalDouble length() {
    return reach().map(JointSizes.Reach::length).orElse(OptionalDouble.empty());
  }

  public LengthIs lengthIs() {
    return reach().map(JointSizes.Reach::lengthIs).orElse(LengthIs.ALONG_THE_TENON);
  }

  /** Whether it comes out at the far side. */
  public boolean through() {
    boolean always =
        sizes instanceof JointSizes.Bridle
            || sizes instanceof JointSizes.Lap
            || sizes instanceof JointSizes.Notch;
    return always || reach().filter(JointSizes.Reach::through).isPresent();
  }

  /** How far it stands out at the far side. */
  public double proud() {
    return sizes instanceof JointSizes.Bridle bridle
        ? bridle.proud()
        : reach().map(JointSizes.Reach::proud).orElse(0.0);
  }

  /** How many tenons, dowels or screws, and how they stand to one another. */
  public JointSizes.Row row() {
    if (sizes instanceof JointSizes.MortiseAndTenon s) {
      return s.row();
    } else if (sizes instanceof JointSizes.LooseTenon s) {
      return s.row();
    } else if (sizes instanceof JointSizes.Dowels s) {
      return s.row();
    } else if (sizes instanceof JointSizes.Screwed s) {
      return s.row();
    }
    return JointSizes.Row.ONE;
  }

  public Optional<Haunch> haunch() {
    return sizes instanceof JointSizes.MortiseAndTenon s ? s.haunch() : Optional.empty();
  }

  public Optional<Mitre> mitre() {
    return sizes instanceof JointSizes.MortiseAndTenon s ? s.mitre() : Optional.empty();
  }

  public Optional<JointSizes.Wedges> wedges() {
    if (sizes instanceof JointSizes.MortiseAndTenon s) {
      return s.wedges();
    }
    return sizes instanceof JointSizes.RoundTenon r ? r.wedges() : Optional.empty();
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

  /**
   * A short step of the tenon that fills the width up to the part's top or bottom edge.
   *
   * @param sloping full depth beside the tenon, running out to nothing at the part's edge, so that
   *     it does not show there
   */
  public record Haunch(double deep, boolean atTop, boolean sloping) {}

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
   * the end is in the chair; inner and outer by how far it is from the middle plane. Middle is no
   * end: somewhere between the two.
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
    OUTER,
    MIDDLE
  }
}
