/**
 * What the small errors of a maker's cuts add up to: for every gap, wall, set-back and diagonal the
 * worst case, the range that holds 95 of 100 chairs, the chance to be beyond its limit, and the
 * cuts it comes from.
 *
 * <p>A size that is known to lie within ±a, and nothing else, is taken as equally likely all over
 * that range, with a standard deviation of a/√3: JCGM 100:2008 (the GUM), 4.3.7.
 */
package dryfit.fit.spread;
