package dryfit.timber;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Reads {@code species.csv}: one species a line, six fields split at the first five commas, so that
 * the source at the end may hold commas. Lines that start with {@code #} are remarks.
 */
final class SpeciesTable {
  /** The table that ships with the program, read once. */
  static final List<Species> ALL = shipped();

  private SpeciesTable() {}

  private static List<Species> shipped() {
    try (InputStream in = SpeciesTable.class.getResourceAsStream("species.csv")) {
      if (in == null) {
        throw new IllegalStateException("species.csv is not in the program");
      }
      return read(
          new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)).lines().toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The species of a table, in its order.
   *
   * @throws IllegalArgumentException naming the line, if one is not a species or its key is taken
   */
  static List<Species> read(List<String> lines) {
    Set<String> keys = new HashSet<>();
    return lines.stream()
        .filter(line -> !line.isBlank() && !line.startsWith("#"))
        .map(
            line -> {
              Species species = species(line);
              if (!keys.add(species.key())) {
                throw new IllegalArgumentException("twice in the table: " + species.key());
              }
              return species;
            })
        .toList();
  }

  private static Species species(String line) {
    String[] field = line.split(",", 6);
    if (field.length < 6) {
      throw new IllegalArgumentException("not a species: " + line);
    }
    try {
      return new Species(
          field[0].strip(),
          field[1].strip(),
          Double.parseDouble(field[2]),
          Double.parseDouble(field[3]),
          Double.parseDouble(field[4]),
          field[5].strip());
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException("not a number in: " + line, e);
    }
  }
}
