/**
 * Lengths and angles as people write and read them, and the one home of every epsilon. Knows
 * nothing of chairs. Inside the program a length is a {@code double} in millimetres and an angle a
 * {@code double} in radians; this package is the edge where text becomes those and back.
 */
package dryfit.measure;
