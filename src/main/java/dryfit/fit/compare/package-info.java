/**
 * Every figure of a fitted chair as one flat list, and what follows from laying such lists side by
 * side: comparing designs, running a dimension through a range.
 */
package dryfit.fit.compare;
