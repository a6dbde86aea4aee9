package dryfit.shop.setting;

import dryfit.fit.KnifeLine;
import dryfit.fit.SawSet;
import dryfit.fit.ShoulderAngles;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What a shoulder or another flat end is set out and sawn by. */
final class Shoulders {
  private Shoulders() {}

  static List<Reading> bevels(ShoulderAngles shoulder) {
    List<Reading> readings = new ArrayList<>();
    Stream.concat(shoulder.wide().stream(), shoulder.narrow().stream())
        .forEach(line -> line(readings, line));
    if (readings.isEmpty()) {
      readings.add(
          new Reading.Bevel(
              "against the side",
              shoulder.offSquare(),
              "the side",
              "",
              "long at the " + shoulder.longest()));
    }
    return readings;
  }

  private static void line(List<Reading> readings, KnifeLine line) {
    String faces = "on the " + line.face() + " and " + line.opposite();
    if (line.angle().isSquare()) {
      readings.add(new Reading.Said(faces, "square"));
      return;
    }
    String edge = "the " + line.longEdge() + " edge";
    readings.add(
        new Reading.Bevel(
            faces,
            line.angle(),
            edge,
            "the " + line.shortEdge() + " edge",
            "stock of the gauge on " + edge + ", which is the long one"));
    readings.add(new Reading.Size("that edge is longer by", line.longer(), ""));
  }

  static List<String> longest(ShoulderAngles shoulder) {
    boolean compound =
        shoulder.wide().isPresent()
            && Stream.concat(shoulder.wide().stream(), shoulder.narrow().stream())
                .noneMatch(line -> line.angle().isSquare());
    return compound
        ? List.of("The longest corner, which leads, is the " + shoulder.longest() + " one.")
        : List.of();
  }

  /** The stock lies flat, its end pointing away from whoever looks down on it. */
  static List<Reading> saw(SawSet saw) {
    List<Reading> readings = new ArrayList<>();
    readings.add(
        new Reading.Said(
            "stock", "flat, its " + saw.up() + " up, the end to be cut pointing away from you"));
    readings.add(
        saw.mitre().isSquare()
            ? new Reading.Said("mitre gauge", "square")
            : new Reading.Scale(
                "mitre gauge",
                saw.mitre(),
                "the long edge on your " + (saw.longOnRight() ? "right" : "left")));
    readings.add(
        saw.tilt().isSquare()
            ? new Reading.Said("blade", "square")
            : new Reading.Scale(
                "blade tilt",
                saw.tilt(),
                "so that the " + (saw.longUp() ? "upper" : "lower") + " face is the long one"));
    return readings;
  }
}
