package dryfit.document;

import dryfit.document.JointPlan.Haunch;
import dryfit.document.JointPlan.Kind;
import dryfit.document.JointPlan.LengthIs;
import dryfit.document.JointPlan.Mitre;
import java.util.Optional;
import java.util.OptionalDouble;

/** The sizes of a joint, as far as its kind has them. Millimetres, radians. */
public sealed interface JointSizes {

  Kind kind();

  /**
   * How far something goes in.
   *
   * @param length from the shoulder; empty when it goes through
   * @param lengthIs whether length is along the tenon or square to the face it enters
   * @param through goes right through and stands {@code proud}
   */
  record Reach(OptionalDouble length, LengthIs lengthIs, boolean through, double proud) {}

  /**
   * Two or more tenons in place of one.
   *
   * @param gap between neighbours
   * @param above one above the other, across the part's width; else side by side, across its
   *     thickness
   */
  record Row(int count, double gap, boolean above) {
    /** A single tenon. */
    public static final Row ONE = new Row(1, 0, true);

    /** How much room {@code count} of a size take, mm. */
    public double span(double size) {
      return count * size + (count - 1) * gap;
    }
  }

  /**
   * Wedges driven into the end of a through tenon.
   *
   * @param kerf width of the saw cut each goes into
   * @param deep how far the cuts go from the far face of the wood towards the shoulder
   * @param angle of one wedge, point to head
   * @param flare how much the mortise is opened at the far face, at each of its two ends; empty for
   *     just as much as the wedges spread the tenon
   */
  record Wedges(int count, double kerf, double deep, double angle, OptionalDouble flare) {
    /** How much thicker a wedge is at the far face than at its point, mm. */
    public double swell() {
      return deep * Math.tan(angle);
    }

    /** How far the wedges push the tenon's end out, to each side, mm. */
    public double spread() {
      return count * swell() / 2;
    }
  }

  /**
   * A shoulder that is longer at one face: let into the other part by so much.
   *
   * @param outside at the outside face of the part, else at its inside face
   */
  record Step(boolean outside, double by) {}

  /**
   * @param thickness across the cheeks
   * @param width the long side of its section
   */
  record MortiseAndTenon(
      double thickness,
      double width,
      Reach reach,
      Row row,
      Optional<Haunch> haunch,
      Optional<Mitre> mitre,
      Optional<Wedges> wedges,
      Optional<Step> step)
      implements JointSizes {
    @Override
    public Kind kind() {
      return Kind.MORTISE_AND_TENON;
    }
  }

  /** A round tenon in a bored hole. */
  record RoundTenon(double diameter, Reach reach, Optional<Wedges> wedges) implements JointSizes {
    @Override
    public Kind kind() {
      return Kind.ROUND_TENON;
    }
  }

  /** A whole end let in, {@code depth} square to the face. */
  record Housing(double depth) implements JointSizes {
    @Override
    public Kind kind() {
      return Kind.HOUSING;
    }
  }

  /**
   * A tenon that is a piece of its own, in a mortise in each part.
   *
   * @param own how far it goes into the part that is named as tenoned
   */
  record LooseTenon(double thickness, double width, Reach reach, double own, Row row)
      implements JointSizes {
    @Override
    public Kind kind() {
      return Kind.LOOSE_TENON;
    }
  }

  /**
   * Dowels in holes in both parts.
   *
   * @param own how far they go into the part that is named as tenoned
   * @param row how many, and the room between two of them
   */
  record Dowels(double diameter, Reach reach, double own, Row row) implements JointSizes {
    @Override
    public Kind kind() {
      return Kind.DOWELS;
    }
  }

  /**
   * A tenon as wide as its part in a mortise that is open at the end of the other.
   *
   * @param proud how far it stands out of the far side
   */
  record Bridle(double thickness, double proud) implements JointSizes {
    @Override
    public Kind kind() {
      return Kind.BRIDLE;
    }
  }

  /**
   * Two parts that lie across each other, each cut away where the other lies.
   *
   * @param share how much of the shared depth stays with the part named as tenoned, above 0, below
   *     1
   * @param outside whether that part keeps its outside (or, lying flat, its top) face
   * @param across whether it goes on beyond the other part
   */
  record Lap(double share, boolean outside, boolean across) implements JointSizes {
    @Override
    public Kind kind() {
      return Kind.LAP;
    }
  }

  /**
   * A board cut round a post that passes it.
   *
   * @param across room at each side of the post, across the grain of the board
   * @param along room along its grain
   */
  record Notch(double across, double along) implements JointSizes {
    @Override
    public Kind kind() {
      return Kind.NOTCH;
    }
  }

  /**
   * A face screwed to a face: clearance holes through the part named first, pilot holes in the
   * other.
   *
   * @param diameter of the screw's shank
   * @param length of the screw below its head
   * @param pilot diameter of the pilot hole
   * @param head how deep the head is sunk
   * @param slot how much longer than wide the clearance hole is, so that the board can move
   * @param row how many, and how far apart from middle to middle
   */
  record Screwed(double diameter, double length, double pilot, double head, double slot, Row row)
      implements JointSizes {
    @Override
    public Kind kind() {
      return Kind.SCREWED;
    }
  }

  /** A face glued to a face. */
  record Glued() implements JointSizes {
    @Override
    public Kind kind() {
      return Kind.GLUED;
    }
  }

  /**
   * The edge of a panel in its groove. It follows from the panel and is never written as a joint.
   *
   * @param deep depth of the groove
   * @param gap room left at its bottom
   * @param slack room at each face
   */
  record Groove(double deep, double gap, double slack) implements JointSizes {
    @Override
    public Kind kind() {
      return Kind.GROOVE;
    }
  }
}
