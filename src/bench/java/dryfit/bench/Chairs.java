package dryfit.bench;

import dryfit.build.Chair;
import dryfit.build.ChairBuilder;
import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.document.DocumentReader;
import dryfit.document.Reading;
import dryfit.solid.Kernel;
import java.nio.file.Path;

/** Chairs to be built, read as a maker's would be. */
final class Chairs {
  /** Spindles in a row: as many as rails of a bearable length hold. */
  private static final int ROW = 50;

  private Chairs() {}

  /** A chair from the folder of models; {@code root} is the project's folder. */
  static Document model(Path root, String name) {
    return sound(DocumentReader.read(root.resolve("models").resolve(name + ".json")));
  }

  static Design design(Document document) {
    return sound(document.design(Design.AS_DRAWN));
  }

  static Chair built(Design design, Kernel kernel) {
    return sound(ChairBuilder.build(design, kernel));
  }

  static <T> T sound(Reading<T> reading) {
    if (reading instanceof Reading.Accepted<T> accepted) {
      return accepted.value();
    }
    throw new IllegalStateException(((Reading.Refused<T>) reading).problems().get(0).message());
  }

  /**
   * Rows of turned spindles between two rails: demo data, invented, to see how the work grows.
   *
   * @param count how many spindles, even
   */
  static Document spindles(int count) {
    StringBuilder parts = new StringBuilder();
    StringBuilder joints = new StringBuilder();
    for (int i = 0; i < count / 2; i++) {
      int row = i / (ROW / 2);
      if (i % (ROW / 2) == 0) {
        int half = Math.min(count - row * ROW, ROW) * 12 + 12;
        rail(parts, "low-rail-" + row, half, 80 * row, 100);
        rail(parts, "high-rail-" + row, half, 80 * row, 500);
      }
      String name = "spindle-" + i;
      parts.append(
          """
          "%s": {"form": "turned", "pair": true, "between": ["low-rail-%d", "high-rail-%d"],
            "x": %d, "diameters": [[0, 9], [130, 13], [260, 11], [376, 9]]},
          """
              .formatted(name, row, row, 12 + 24 * (i % (ROW / 2))));
      for (String end : new String[] {"bottom low", "top high"}) {
        String[] words = end.split(" ");
        joints.append(
            """
            "%s %s": {"tenon": "%s %s", "into": "%s-rail-%d", "kind": "round-tenon",
              "diameter": 8, "length": 12},
            """
                .formatted(name, words[0], name, words[0], words[1], row));
      }
    }
    return sound(
        DocumentReader.read(
            "spindles",
            """
            {"format": "dryfit-chair/1", "name": "Spindles", "about": "Demo data, invented.",
             "unit": "mm", "timber": "ash-white", "parts": {%s}, "joints": {%s}}
            """
                .formatted(withoutLastComma(parts), withoutLastComma(joints))));
  }

  private static void rail(StringBuilder parts, String name, int half, int y, int z) {
    parts.append(
        """
        "%s": {"form": "straight", "from": [%d, %d, %d], "to": [%d, %d, %d], "section": [24, 24]},
        """
            .formatted(name, half, y, z, -half, y, z));
  }

  private static String withoutLastComma(StringBuilder text) {
    return text.substring(0, text.lastIndexOf(","));
  }
}
