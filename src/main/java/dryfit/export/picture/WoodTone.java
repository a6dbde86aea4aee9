package dryfit.export.picture;

/**
 * The colour of a timber in a picture, our own choice by eye.
 *
 * @param red 0 to 1
 * @param green 0 to 1
 * @param blue 0 to 1
 * @param figure how strongly the growth rings show, 0 to 1
 * @param ring distance between rings, mm
 */
public record WoodTone(double red, double green, double blue, double figure, double ring) {

  /** The tone for a species key of a document; a plain light wood for one that is not known. */
  public static WoodTone of(String timber) {
    String wood = timber.contains("-") ? timber.substring(0, timber.indexOf('-')) : timber;
    return switch (wood) {
      case "ash" -> tone(0xEAD6B0, 0.20, 5.5);
      case "basswood" -> tone(0xEAD9B5, 0.07, 5);
      case "beech" -> tone(0xDDB488, 0.08, 4);
      case "birch" -> tone(0xE3C596, 0.08, 5);
      case "butternut" -> tone(0xC29A6B, 0.16, 6);
      case "cherry" -> tone(0xBF7C4F, 0.11, 5);
      case "douglas" -> tone(0xDBA570, 0.26, 4.5);
      case "elm" -> tone(0xC69E72, 0.18, 5);
      case "hickory" -> tone(0xD4B183, 0.18, 5);
      case "locust" -> tone(0xC2A45A, 0.18, 5);
      case "mahogany" -> tone(0xA55B38, 0.09, 6);
      case "maple" -> tone(0xE9D2A8, 0.06, 4.5);
      case "oak" -> tone(0xCBA36D, 0.20, 5);
      case "teak" -> tone(0xB2824A, 0.14, 5.5);
      case "walnut" -> tone(0x7C563B, 0.20, 5.5);
      case "yellow" -> tone(0xD9CC97, 0.10, 5.5);
      default -> tone(0xDCC097, 0.12, 5);
    };
  }

  private static WoodTone tone(int rgb, double figure, double ring) {
    return new WoodTone(
        (rgb >> 16 & 255) / 255.0, (rgb >> 8 & 255) / 255.0, (rgb & 255) / 255.0, figure, ring);
  }
}
