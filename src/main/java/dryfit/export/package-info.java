/**
 * Values in, bytes out: STL, PNG, JSON and the report for the terminal. Nothing here knows a
 * terminal or a window.
 *
 * <p>What reaches the disk goes through {@link dryfit.export.SafeFile}: written beside its target,
 * read back, checked, and only then moved into place, so that a file with its final name is always
 * whole.
 */
package dryfit.export;
