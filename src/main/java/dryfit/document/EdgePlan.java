package dryfit.document;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What is done to some edges of a part.
 *
 * @param which edges
 * @param faces for {@link Which#BETWEEN} the two faces that meet there: front, back, left, right,
 *     top, bottom, inside, outside; round for the round face of a turned part; any as the second
 * @param size mm: across the flat of an eased edge, along both faces of a chamfer, the radius of a
 *     round-over
 * @param from where it begins, along the part from its start
 * @param to where it ends
 */
public record EdgePlan(
    Which which,
    List<String> faces,
    Shape shape,
    double size,
    OptionalDouble from,
    OptionalDouble to,
    OptionalDouble leaveEnds,
    String pointer) {
  public EdgePlan {
    faces = List.copyOf(faces);
  }

  /** The word for every face that meets the one named first. */
  public static final String ANY = "any";

  /** The word for the face of a turned part or a rod that goes round. */
  public static final String ROUND = "round";

  /** Which edges are meant. */
  public enum Which {
    BETWEEN,
    ALL_LONG,
    ALL
  }

  /** What becomes of an edge. */
  public enum Shape {
    EASED,
    CHAMFER,
    ROUND_OVER
  }
}
