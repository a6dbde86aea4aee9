package dryfit.fit;

import dryfit.measure.BenchAngle;

/**
 * A line that a knife follows across two opposite faces of a member: one of the two that make a
 * shoulder.
 *
 * @param face the face it is knifed on, in a word
 * @param opposite the face opposite, where the line runs the same way
 * @param longEdge the edge of these faces at which the member is longer; a bevel gauge with its
 *     stock on that edge encloses the sharp angle in the wood
 * @param shortEdge the other edge, which encloses the blunt angle
 * @param angle how far the line is off square
 * @param longer by how much the member is longer at the one edge than at the other, mm
 */
public record KnifeLine(
    String face,
    String opposite,
    String longEdge,
    String shortEdge,
    BenchAngle angle,
    double longer) {}
