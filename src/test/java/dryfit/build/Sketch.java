package dryfit.build;

import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.document.DocumentReader;
import dryfit.document.Hand;
import dryfit.document.Problem;
import dryfit.document.Reading;
import dryfit.geometry.Box;
import dryfit.geometry.MassProperties;
import dryfit.solid.Convex;
import dryfit.solid.Kernel;
import dryfit.solid.jcsg.JcsgKernel;
import java.util.List;

/**
 * Small frames to build and measure, all demo data. Sizes are in millimetres and chosen so that
 * what comes of them can be worked out by hand.
 *
 * <p>Legs are 40 square and 400 high. The front legs stand at x = ±180, y = 20, so their outside
 * faces are at x = ±200, their inside faces at ±160, their front at y = 0, their back at y = 40.
 * The back legs stand at y = 300, from 280 to 320.
 */
final class Sketch {
  private Sketch() {}

  static final Kernel KERNEL = new JcsgKernel();

  /** The four legs, back ones as wide apart as the front ones. */
  static final String SQUARE_LEGS = legs(180);

  /** The back legs 30 nearer to the middle on each side: over 240 the side rails turn 1 in 8. */
  static final String TRAPEZOID_LEGS = legs(150);

  /** A rail between the front legs, its face 5 back from theirs, its top at 380. */
  static final String FRONT_RAIL =
      """
      "front-rail": { "form": "straight", "section": [60, 20],
        "between": ["front-leg right", "front-leg left"], "top": 380, "outside": 5 }""";

  /** A pair of rails between front and back legs, likewise. */
  static final String SIDE_RAIL =
      """
      "side-rail": { "form": "straight", "pair": true, "section": [60, 20],
        "between": ["front-leg", "back-leg"], "top": 380, "outside": 5 }""";

  private static String legs(int back) {
    return """
        "front-leg": { "form": "straight", "pair": true, "section": [40, 40],
          "from": [180, 20, 0], "to": [180, 20, 400] },
        "back-leg": { "form": "straight", "pair": true, "section": [40, 40],
          "from": [%d, 300, 0], "to": [%d, 300, 400] }"""
        .formatted(back, back);
  }

  static String text(String parts, String joints) {
    return """
        { "format": "dryfit-chair/1", "name": "Sketch", "about": "Demo data.", "unit": "mm",
          "timber": "ash-white",
          "parts": { %s },
          "joints": { %s } }"""
        .formatted(parts, joints);
  }

  static Chair chair(String parts, String joints) {
    return chair(parts, joints, KERNEL);
  }

  static Chair chair(String parts, String joints, Kernel kernel) {
    Reading<Chair> built = build(parts, joints, kernel);
    if (built instanceof Reading.Accepted<Chair> chair) {
      return chair.value();
    }
    throw new AssertionError(((Reading.Refused<Chair>) built).problems().toString());
  }

  /** The problems of a frame that the document's reader accepts and the builder must refuse. */
  static List<Problem> problems(String parts, String joints) {
    return problems(text(parts, joints));
  }

  /** The same of a whole text. */
  static List<Problem> problems(String text) {
    if (build(text, KERNEL) instanceof Reading.Refused<Chair> refused) {
      return refused.problems();
    }
    throw new AssertionError("it was built");
  }

  private static Reading<Chair> build(String parts, String joints, Kernel kernel) {
    return build(text(parts, joints), kernel);
  }

  private static Reading<Chair> build(String text, Kernel kernel) {
    Reading<Document> read = DocumentReader.read("sketch.json", text);
    if (read instanceof Reading.Refused<Document> refused) {
      throw new AssertionError(refused.problems().toString());
    }
    Document document = ((Reading.Accepted<Document>) read).value();
    Design design = ((Reading.Accepted<Design>) document.design(Design.AS_DRAWN)).value();
    return ChairBuilder.build(design, kernel);
  }

  static Part part(Chair chair, String name, Hand hand) {
    return chair.parts().stream()
        .filter(p -> p.name().equals(name) && p.hand() == hand)
        .findFirst()
        .orElseThrow();
  }

  static Part part(Chair chair, String name) {
    return part(chair, name, Hand.NONE);
  }

  static Joint joint(Chair chair, String name, Hand hand) {
    return chair.joints().stream()
        .filter(j -> j.name().equals(name) && j.hand() == hand)
        .findFirst()
        .orElseThrow();
  }

  /** Where the finished part is in the chair. */
  static Box bounds(Part part) {
    return part.placedMesh().bounds();
  }

  static double volume(Part part) {
    return MassProperties.of(part.solid().mesh()).volume();
  }

  static double volume(List<Convex> cells) {
    return cells.stream().mapToDouble(Convex::volume).sum();
  }
}
