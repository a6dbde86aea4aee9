package dryfit.cli;

import java.io.BufferedReader;
import java.io.PrintStream;
import java.util.Optional;

/**
 * Where a command writes, and whom it may ask.
 *
 * @param out results
 * @param err what went wrong
 * @param terminal whether a person is watching, so that colour is of use
 * @param answers what a person types who can be asked; empty if there is none
 */
record Screen(
    PrintStream out, PrintStream err, boolean terminal, Optional<BufferedReader> answers) {}
