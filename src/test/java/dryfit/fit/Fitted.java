package dryfit.fit;

import dryfit.build.Chair;
import dryfit.build.ChairBuilder;
import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.document.DocumentReader;
import dryfit.document.Reading;
import dryfit.solid.Kernel;
import dryfit.solid.exact.ExactKernel;
import java.nio.file.Path;
import java.util.List;

/** Fits small chairs written out in tests. */
public final class Fitted {
  private Fitted() {}

  private static final Kernel KERNEL = new ExactKernel();

  /** The dry fit of a document. */
  public static FitReport of(String json) {
    Document document = accepted(DocumentReader.read("test.json", json));
    Design design = accepted(document.design(Design.AS_DRAWN));
    Chair chair = accepted(ChairBuilder.build(design, KERNEL));
    return DryFit.of(chair);
  }

  /** A model as drawn. */
  static Chair chair(Path model) {
    Design design = accepted(accepted(DocumentReader.read(model)).design(Design.AS_DRAWN));
    return accepted(ChairBuilder.build(design, KERNEL));
  }

  private static <T> T accepted(Reading<T> reading) {
    if (reading instanceof Reading.Refused<T> refused) {
      throw new AssertionError("refused: " + refused.problems());
    }
    return ((Reading.Accepted<T>) reading).value();
  }

  /** The one joint with this label. */
  public static JointFit joint(FitReport report, String label) {
    List<JointFit> found =
        report.joints().stream().filter(j -> j.joint().label().equals(label)).toList();
    if (found.size() != 1) {
      throw new AssertionError(
          label
              + " is not one of "
              + report.joints().stream().map(j -> j.joint().label()).toList());
    }
    return found.get(0);
  }

  /** The ids of all findings. */
  public static List<String> checks(FitReport report) {
    return report.findings().stream().map(Finding::check).toList();
  }

  /**
   * A square frame of four legs and four rails, inches: legs {@code leg} square, rails {@code rail}
   * thick and 3 in high, set back by {@code setback} from the outside of the legs, all tenons
   * {@code tenon} thick, {@code length} long and 2 in wide, in the middle of the rails, no gaps at
   * the bottom.
   */
  public static String frame(
      String leg, String rail, String setback, String tenon, String length, String mitre) {
    return """
        { "format": "dryfit-chair/1", "name": "Frame", "about": "Demo data, invented.", "unit": "in",
          "timber": "ash-white",
          "fit": { "cheek": 0.004, "edge": 0.02, "bottom": 0, "least-wall": 0 },
          "dimensions": { "leg": "LEG", "rail": "RAIL", "setback": "SETBACK", "tenon": "TENON",
                          "length": "LENGTH" },
          "parts": {
            "front-leg": { "form": "straight", "pair": true, "section": ["leg", "leg"],
              "from": [8, 0, 0], "to": [8, 0, 18] },
            "back-leg": { "form": "straight", "pair": true, "section": ["leg", "leg"],
              "from": [8, 15, 0], "to": [8, 15, 18] },
            "front-rail": { "form": "straight", "section": [3, "rail"],
              "between": ["front-leg right", "front-leg left"], "top": 16, "outside": "setback" },
            "side-rail": { "form": "straight", "pair": true, "section": [3, "rail"],
              "between": ["front-leg", "back-leg"], "top": 16, "outside": "setback" }
          },
          "joints": {
            "front": { "tenon": "front-rail both", "into": "front-leg", "thickness": "tenon",
              "width": 2, "length": "length" MITRE },
            "side": { "tenon": "side-rail front", "into": "front-leg", "thickness": "tenon",
              "width": 2, "length": "length" },
            "rear": { "tenon": "side-rail back", "into": "back-leg", "thickness": "tenon",
              "width": 2, "length": "3/8 in" }
          } }
        """
        .replace("LEG", leg)
        .replace("RAIL", rail)
        .replace("SETBACK", setback)
        .replace("TENON", tenon)
        .replace("LENGTH", length)
        .replace("MITRE", mitre);
  }
}
