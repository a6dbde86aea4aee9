package dryfit.fit;

import dryfit.measure.BenchAngle;

/**
 * What to set on a saw for a shoulder or an end, with the stock flat on the table, its end pointing
 * away from whoever looks down on it. The tilt is that of the blade, and in a compound cut it is
 * less than the line on the stock's edge shows.
 *
 * @param up the face that looks up
 * @param mitre how far the gauge is turned from where it makes a square cut
 * @param tilt how far the blade is tilted from upright
 * @param longOnRight whether the longer edge is on the right hand of that person; means nothing
 *     where the mitre is square
 * @param longUp whether the upper face is the longer one; means nothing where the tilt is none
 */
public record SawSet(
    String up, BenchAngle mitre, BenchAngle tilt, boolean longOnRight, boolean longUp) {}
