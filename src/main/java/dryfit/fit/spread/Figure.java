package dryfit.fit.spread;

import dryfit.fit.compare.Datum;

/**
 * A figure that may spread.
 *
 * @param least what it may not be below; infinite if there is no such limit
 * @param most what it may not be above; infinite if there is no such limit
 */
record Figure(Datum datum, double least, double most, Site site) {}
