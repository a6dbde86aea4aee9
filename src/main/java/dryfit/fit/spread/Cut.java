package dryfit.fit.spread;

import dryfit.fit.compare.Datum;

/**
 * A size that may come out other than planned, on its own.
 *
 * @param subject the part, the joint or the dimension
 * @param what which size of it; empty for a dimension
 * @param kind what it measures
 * @param accuracy how far off it may be at the most, either way: mm, radians or a plain number
 */
public record Cut(String subject, String what, Datum.Kind kind, double accuracy) {}
