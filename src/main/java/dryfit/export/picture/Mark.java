package dryfit.export.picture;

import dryfit.geometry.Vec3;

/**
 * A place to look at, ringed in red.
 *
 * @param at where, chair space, mm
 * @param label a few words or a number beside it; may be empty
 */
public record Mark(Vec3 at, String label) {}
