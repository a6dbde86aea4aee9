package dryfit.shop.jig;

import dryfit.geometry.Vec3;

/**
 * A hole that guides a drill, in chair space.
 *
 * @param at a place on its middle line, in the mouth of the mortise
 * @param axis unit direction in which the drill goes
 * @param drill diameter of the drill, mm
 * @param acrossFlats of the hole as made, mm: its facets stand outside the circle of this diameter
 */
public record Bore(Vec3 at, Vec3 axis, double drill, double acrossFlats) {}
