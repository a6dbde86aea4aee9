package dryfit.shop.setting;

import dryfit.measure.BenchAngle;

/**
 * One thing that is read off a tool or a rule while it is set. Lengths in millimetres, angles in
 * radians; which way it goes is said in words, and no words hold a number that has a unit.
 */
public sealed interface Reading {
  /** What is read, in a few words. */
  String what();

  /** Which way it goes, in words; empty if there is nothing to say. */
  String sense();

  /**
   * An angle that a bevel gauge is set to.
   *
   * @param edge from which edge or face {@link BenchAngle#fromLongEdge} is read
   * @param opposite from which {@link BenchAngle#fromShortEdge} is read; empty if that is not of
   *     use
   */
  record Bevel(String what, BenchAngle angle, String edge, String opposite, String sense)
      implements Reading {}

  /** An angle on a scale, which may show 0 or 90 where it is square. */
  record Scale(String what, BenchAngle angle, String sense) implements Reading {}

  /**
   * A line drawn at an angle from another line.
   *
   * @param angle radians, 0 to pi/2
   * @param from the other line
   */
  record Line(String what, double angle, String from, String sense) implements Reading {}

  /** A length in millimetres. */
  record Size(String what, double mm, String sense) implements Reading {}

  /**
   * A stretch, in millimetres.
   *
   * @param origin from where both are measured
   */
  record Span(String what, double from, double to, String origin, String sense)
      implements Reading {}

  /** How many. */
  record Count(String what, int number, String sense) implements Reading {}

  /** Nothing but words. */
  record Said(String what, String sense) implements Reading {}
}
