package dryfit.fit;

import java.util.Locale;

/** Four legs and the rails of a seat, inches, written out for tests: demo data. */
final class Stood {
  private Stood() {}

  /** A leg 1-1/2 in square: where its middle stands, how high its foot is, and its name. */
  record Leg(String name, double x, double y, double foot) {}

  /**
   * A seat whose legs stand where they are told; the rails' tops are at 16 in.
   *
   * @param more other parts, each with a comma before it
   */
  static String seat(Leg frontLeft, Leg frontRight, Leg backRight, Leg backLeft, String more) {
    StringBuilder parts = new StringBuilder();
    Leg[] legs = {frontLeft, frontRight, backRight, backLeft};
    for (Leg leg : legs) {
      parts.append(
          String.format(
              Locale.ROOT,
              "\"%s\": { \"form\": \"straight\", \"section\": [1.5, 1.5],"
                  + " \"from\": [%.9f, %.9f, %.9f], \"to\": [%.9f, %.9f, 17] },%n",
              leg.name,
              leg.x,
              leg.y,
              leg.foot,
              leg.x,
              leg.y));
    }
    StringBuilder joints = new StringBuilder();
    String[] rails = {"front-rail", "right-rail", "back-rail", "left-rail"};
    for (int i = 0; i < 4; i++) {
      String from = legs[i].name;
      String to = legs[(i + 1) % 4].name;
      parts.append(
          String.format(
              Locale.ROOT,
              "\"%s\": { \"form\": \"straight\", \"section\": [3, 0.75],"
                  + " \"between\": [\"%s\", \"%s\"], \"top\": 16 }%s%n",
              rails[i],
              from,
              to,
              i < 3 ? "," : more));
      joints.append(joint(rails[i], "start", from)).append(",\n");
      joints.append(joint(rails[i], "end", to)).append(i < 3 ? ",\n" : "\n");
    }
    return "{ \"format\": \"dryfit-chair/1\", \"name\": \"Seat\", \"about\": \"Demo data,"
        + " invented.\", \"unit\": \"in\", \"timber\": \"ash-white\", \"parts\": {"
        + parts
        + "}, \"joints\": {"
        + joints
        + "} }";
  }

  private static String joint(String rail, String end, String leg) {
    return "\""
        + rail
        + " to "
        + leg
        + "\": { \"tenon\": \""
        + rail
        + " "
        + end
        + "\", \"into\": \""
        + leg
        + "\", \"thickness\": 0.25, \"width\": 2, \"length\": 0.5 }";
  }
}
