package dryfit.fit;

import dryfit.geometry.Vec3;
import java.util.List;
import java.util.Optional;

/**
 * Something the maker should know before the cut.
 *
 * @param check stable id of the check, e.g. {@code parts-collide}
 * @param parts labels of the parts concerned
 * @param joints labels of the joints concerned
 * @param measured what was measured, in {@code unit}
 * @param limit what is allowed, in {@code unit}
 * @param margin how far inside the limit it is; negative when it fails
 * @param unit {@code mm}, {@code deg}, {@code mm3} or {@code mm2}
 * @param source where the limit comes from
 * @param message one sentence a maker understands, with what to change and by how much; lengths in
 *     the document's unit
 * @param pointer the place in the document to change
 * @param at where in the chair, mm
 * @param waived the maker's written reason for accepting it
 */
public record Finding(
    String check,
    Severity severity,
    List<String> parts,
    List<String> joints,
    double measured,
    double limit,
    double margin,
    String unit,
    Source source,
    String message,
    String pointer,
    Vec3 at,
    Optional<String> waived) {

  public Finding {
    parts = List.copyOf(parts);
    joints = List.copyOf(joints);
  }

  /** How much it matters. */
  public enum Severity {
    /** The chair cannot be built like this. */
    STOPS,
    /** Look at this before cutting. */
    LOOK,
    /** For your information. */
    KNOW
  }

  Finding waivedBecause(String reason) {
    return new Finding(
        check,
        severity,
        parts,
        joints,
        measured,
        limit,
        margin,
        unit,
        source,
        message,
        pointer,
        at,
        Optional.of(reason));
  }

  /** Whether this keeps the chair from being built. */
  public boolean stopsTheBuild() {
    return severity == Severity.STOPS && waived.isEmpty();
  }

  /** Whether it would, had the maker not accepted it: then the chair fits only because of that. */
  public boolean wouldStopTheBuild() {
    return severity == Severity.STOPS && waived.isPresent();
  }
}
