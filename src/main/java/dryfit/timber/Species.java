package dryfit.timber;

import java.util.List;
import java.util.Optional;

/**
 * A kind of wood and the published averages for it. They are averages over many trees; a board in
 * the hand differs.
 *
 * @param key what a document calls it, such as {@code ash-white}
 * @param name its common name
 * @param specificGravity12 ovendry mass over the volume at 12 percent moisture content
 * @param radial change of a quartered width per unit of width and percent of moisture
 * @param tangential change of a flat-sawn width per unit of width and percent of moisture
 * @param source where the figures come from, and which of them were derived or not seen in print
 */
public record Species(
    String key,
    String name,
    double specificGravity12,
    double radial,
    double tangential,
    String source) {

  /**
   * @throws IllegalArgumentException if a text is blank, or a figure is not one that wood can have
   */
  public Species {
    if (key.isBlank() || name.isBlank() || source.isBlank()) {
      throw new IllegalArgumentException("a species needs a key, a name and a source");
    }
    // The heaviest woods sink (about 1.3); 1.5 is the wood substance itself, without pores.
    if (!(specificGravity12 > 0 && specificGravity12 < 1.5)) {
      throw new IllegalArgumentException(key + " has specific gravity " + specificGravity12);
    }
    if (!(radial > 0 && radial <= tangential && tangential < 0.01)) {
      throw new IllegalArgumentException(
          key + " moves by " + radial + " radial, " + tangential + " tangential");
    }
  }

  /** The keys of every species known, in the order of the table. */
  public static List<String> names() {
    return SpeciesTable.ALL.stream().map(Species::key).toList();
  }

  /** Every species known, in the order of the table. */
  public static List<Species> all() {
    return SpeciesTable.ALL;
  }

  /** The species with this key, or none. */
  public static Optional<Species> named(String key) {
    return SpeciesTable.ALL.stream().filter(s -> s.key.equals(key)).findFirst();
  }

  /** Density in kilograms per cubic metre at 12 percent moisture content. */
  public double density12() {
    return Density.at(12, specificGravity12);
  }

  /** The coefficient by which a width sawn this way moves. */
  public double coefficient(Sawn sawn) {
    return switch (sawn) {
      case FLAT -> tangential;
      case QUARTERED -> radial;
    };
  }
}
