package dryfit.cli;

import java.io.PrintStream;

/**
 * Where a command writes.
 *
 * @param out results
 * @param err what went wrong
 * @param terminal whether a person is watching, so that colour is of use
 */
record Screen(PrintStream out, PrintStream err, boolean terminal) {}
